"""What a stage permits, and which quality a slot of the week gets."""

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Arm, Loading, Movement, Role, Tempo
from scheduler.reasons import Decision, Reason, reason
from scheduler.sources import CH, CP
from scheduler.training.repetition_maximum import Equation, one_repetition_maximum
from scheduler.training.rulebook import Rulebook
from scheduler.training.stage_rules import StageRow
from scheduler.training.training_reasons import PermissionReason
from scheduler.training.values import Quality


class PermissionFacts(BaseModel):
    """What a permission asks besides the movement.

    ``stage`` [1-5]; ``has_strict_pulls``: the strict pull-ups that open dynamic pulls were shown;
    ``has_upkeep``: the coach lets bent-arm work that is trained elsewhere go on;
    ``is_overridden``: a coach's recorded override for this movement.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    stage: int
    has_strict_pulls: bool = False
    has_upkeep: bool = False
    is_overridden: bool = False


class Slot(BaseModel):
    """Where in the week a movement stands.

    ``weeks_in_stage`` [weeks, whole, 0 in the first]; ``is_first_pair``: the day's main pair;
    ``is_maximal_taken``: this direction has had its one maximal exposure this week.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    stage: int
    weeks_in_stage: int
    is_first_pair: bool
    is_maximal_taken: bool = False


def permits(movement: Movement, *, facts: PermissionFacts, rulebook: Rulebook) -> Decision[bool]:
    """Decide whether a stage permits a movement; the first thing that forbids it is the reason.

    Accessories are outside the arm rule (CP). A coach's recorded override permits anything and
    says so; upkeep permits bent arms, and nothing else that the stage does not.
    """
    row = rulebook.stage(facts.stage)
    against = _forbidden_by(movement, facts=facts, row=row, rulebook=rulebook)
    if facts.is_overridden and against:
        return Decision(
            value=True,
            reasons=(reason(PermissionReason.OVERRIDDEN, CH, stage=facts.stage), *against),
        )
    if against and against[0].code == PermissionReason.ARM_NOT_YET and facts.has_upkeep:
        upkeep = reason(PermissionReason.UPKEEP, CH, stage=facts.stage)
        return Decision(value=len(against) == 1, reasons=(*against[1:], upkeep))
    if against:
        return Decision(value=False, reasons=against)
    return Decision(
        value=True, reasons=(reason(PermissionReason.PERMITTED, row.source, stage=facts.stage),)
    )


def _forbidden_by(
    movement: Movement, *, facts: PermissionFacts, row: StageRow, rulebook: Rulebook
) -> tuple[Reason, ...]:
    is_accessory = movement.role is Role.ACCESSORY
    is_dynamic = movement.tempo is Tempo.DYNAMIC
    is_pull = not movement.direction.is_push
    extras = rulebook.stages.extras
    checks = (
        (PermissionReason.ARM_NOT_YET, movement.arm not in row.arms and not is_accessory),
        (PermissionReason.MOVEMENT_NOT_YET, movement.least_stage > facts.stage),
        (PermissionReason.DYNAMIC_NOT_YET, is_dynamic and not row.has_dynamic),
        (PermissionReason.UNSTABLE_NOT_YET, movement.is_unstable and not row.has_unstable),
    )
    found = [reason(code, row.source, stage=facts.stage) for code, forbids in checks if forbids]
    if is_dynamic and is_pull and row.has_dynamic and not facts.has_strict_pulls:
        found.append(
            reason(
                PermissionReason.DYNAMIC_PULL_NOT_YET,
                extras.strict_pull_reps.source,
                sets=extras.strict_pull_sets.whole,
                reps=extras.strict_pull_reps.whole,
            )
        )
    return tuple(found)


def straight_arm_share(*, stage: int, rulebook: Rulebook) -> float:
    """Return the least share of the main sets that straight-arm work keeps [fraction, 0-1]."""
    return rulebook.stage(stage).straight_arm_share.value


def quality_for(movement: Movement, *, slot: Slot, rulebook: Rulebook) -> Decision[Quality]:
    """Decide which quality a slot trains with a movement.

    The day's first pair gets the hardest quality that the stage permits and the movement can
    carry; the second pair the one below it (CP). A hold that takes no load stays in muscular
    endurance, since the rows above it are for loaded holds. Dynamic movements are trained fresh
    in their first weeks of stage 4, then in rounds on a clock. In stage 5 a direction has one
    maximal exposure a week; its others are general strength, which with its reserve lies at about
    70-80 % of the one-repetition maximum (:func:`other_exposure_reps`).
    """
    if movement.role is Role.ACCESSORY:
        return _quality(Quality.MUSCULAR_ENDURANCE, PermissionReason.QUALITY_OF_ACCESSORY, CP)
    if movement.tempo is Tempo.DYNAMIC:
        return _dynamic_quality(slot, rulebook=rulebook)
    if takes_no_load(movement):
        return _quality(Quality.MUSCULAR_ENDURANCE, PermissionReason.QUALITY_OF_UNLOADED_HOLD, CH)
    return _strength_quality(movement, slot=slot, rulebook=rulebook)


def _dynamic_quality(slot: Slot, *, rulebook: Rulebook) -> Decision[Quality]:
    fresh_weeks = rulebook.stages.extras.fresh_weeks_of_dynamic
    first = rulebook.quality(Quality.REPEATED_EFFORT).from_stage.whole
    is_fresh = slot.stage <= first and slot.weeks_in_stage < fresh_weeks.whole
    quality = Quality.DYNAMIC_FRESH if is_fresh else Quality.REPEATED_EFFORT
    code = (
        PermissionReason.QUALITY_OF_FRESH_DYNAMIC
        if is_fresh
        else PermissionReason.QUALITY_OF_ROUNDS
    )
    found = reason(
        code,
        fresh_weeks.source,
        weeks_in_stage=slot.weeks_in_stage,
        fresh_weeks=fresh_weeks.whole,
    )
    return Decision(value=quality, reasons=(found,))


def takes_no_load(movement: Movement) -> bool:
    """Tell whether a movement is a hold that no load can be added to."""
    return movement.loading is Loading.NONE and movement.tempo is Tempo.STATIC


def _strength_quality(movement: Movement, *, slot: Slot, rulebook: Rulebook) -> Decision[Quality]:
    """Take the rung of the quality ladder that stage, arm and pair give."""
    top = _hardest_strength(slot.stage, rulebook=rulebook)
    if top is Quality.MAXIMAL_STRENGTH:
        is_maximal = slot.is_first_pair and movement.arm is Arm.BENT and not slot.is_maximal_taken
        if is_maximal:
            return _quality(top, PermissionReason.QUALITY_OF_MAXIMAL_SLOT, CH)
        return _quality(Quality.GENERAL_STRENGTH, PermissionReason.QUALITY_OF_STAGE, CH)
    quality = strength_of_pair(
        stage=slot.stage, is_first_pair=slot.is_first_pair, rulebook=rulebook
    )
    if quality is top:
        return _quality(top, PermissionReason.QUALITY_OF_STAGE, CH)
    return _quality(quality, PermissionReason.QUALITY_OF_SECOND_PAIR, CP)


LADDER = (
    Quality.MUSCULAR_ENDURANCE,
    Quality.STRENGTH_ENDURANCE,
    Quality.GENERAL_STRENGTH,
    Quality.MAXIMAL_STRENGTH,
)
"""The qualities of strength from the lightest to the heaviest."""


def strength_of_pair(*, stage: int, is_first_pair: bool, rulebook: Rulebook) -> Quality:
    """Return the strength that a pair trains beside the one maximal exposure.

    The hardest of the stage in the first pair, the one below it in the second (CP); what is
    maximal is decided movement by movement (:func:`quality_for`), and beside it comes general
    strength.
    """
    top = _hardest_strength(stage, rulebook=rulebook)
    if top is Quality.MAXIMAL_STRENGTH:
        return Quality.GENERAL_STRENGTH
    if is_first_pair or top is Quality.MUSCULAR_ENDURANCE:
        return top
    return LADDER[LADDER.index(top) - 1]


def other_exposure_reps(*, rulebook: Rulebook) -> tuple[int, int]:
    """Return the least and most repetitions of a direction's other exposures in stage 5.

    Those of general strength that lie, with the reserve asked, inside
    ``maximal_other_exposures`` [share of the one-repetition maximum] by epley1985: to failure
    goes what is done and what is left. Five repetitions with two left would be 81 %.
    """
    row = rulebook.quality(Quality.GENERAL_STRENGTH)
    shares = rulebook.stages.extras.maximal_other_exposures
    reserves = row.reserve_reps
    most_left = reserves.least if reserves.most is None else reserves.most
    inside = [
        reps
        for reps in range(int(row.reps.least), int(row.reps.most or row.reps.least) + 1)
        if _share_of_maximum(reps + reserves.least) in shares
        and _share_of_maximum(reps + most_left) in shares
    ]
    return inside[0], inside[-1]


def _share_of_maximum(reps_to_failure: float) -> float:
    return 1 / one_repetition_maximum(load_kg=1, reps=reps_to_failure, equation=Equation.EPLEY)


def _hardest_strength(stage: int, *, rulebook: Rulebook) -> Quality:
    permitted = rulebook.stage(stage).qualities
    return [quality for quality in LADDER if quality in permitted][-1]


def _quality(quality: Quality, code: PermissionReason, source: str) -> Decision[Quality]:
    return Decision(value=quality, reasons=(reason(code, source, quality=quality.value),))
