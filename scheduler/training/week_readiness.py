"""What an athlete has shown, and what is therefore still beyond them."""

from collections.abc import Iterable, Sequence

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Arm, Chain, Loading, Measure, Movement, Role
from scheduler.reasons import Decision, reason
from scheduler.training.rulebook import Rulebook
from scheduler.training.standards import BaselineSet
from scheduler.training.training_reasons import PermissionReason
from scheduler.training.values import AthleteProfile, Exposure, Quality, SetDone

WEEKS_A_MONTH = 365.25 / 12 / 7  # [weeks/month] by definition


def can_pull_dynamically(exposures: Iterable[Exposure], *, rulebook: Rulebook) -> Decision[bool]:
    """Decide whether dynamic pulls are open: strict pull-ups without help were shown once (CH).

    Shown means ``strict_pull_sets`` [sets] of ``strict_pull_reps`` [repetitions] or more, in
    position, in one session, with no band and no help, of a movement that counts as strict.
    """
    extras = rulebook.stages.extras
    figures = {"sets": extras.strict_pull_sets.whole, "reps": extras.strict_pull_reps.whole}
    is_shown = any(
        _strict_sets(one, least_reps=extras.strict_pull_reps.whole) >= figures["sets"]
        for one in exposures
        if one.dose.movement_key in extras.strict_pull_movements
    )
    code = PermissionReason.PERMITTED if is_shown else PermissionReason.DYNAMIC_PULL_NOT_YET
    return Decision(
        value=is_shown, reasons=(reason(code, extras.strict_pull_reps.source, **figures),)
    )


def _strict_sets(exposure: Exposure, *, least_reps: int) -> int:
    return sum(
        one.value >= least_reps and one.is_in_position and not _has_help(one, exposure)
        for one in exposure.sets
    )


def _has_help(one: SetDone, exposure: Exposure) -> bool:
    rung = one.rung or exposure.dose.rung
    return rung.band is not None or rung.assist_kg is not None


class Shown(BaseModel):
    """Keys of the movements that an athlete trained, and of those done at their row's bottom."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    trained: frozenset[str] = frozenset()
    at_bottom: frozenset[str] = frozenset()


def shown_by(
    exposures: Iterable[Exposure], *, tests: Iterable[BaselineSet] = (), rulebook: Rulebook
) -> Shown:
    """Return what exposures and tests show.

    At the bottom: one set in position as long, or of as many repetitions, as the least of the
    row it was asked in, and never fewer repetitions than general strength asks. A test is held
    to muscular endurance's seconds. A test below that shows nothing.
    """
    trained = set()
    at_bottom = set()
    for one in exposures:
        dose = one.dose
        trained.add(dose.movement_key)
        least = _bottom(dose.measure, quality=dose.quality, rulebook=rulebook)
        if any(done.value >= least and done.is_in_position for done in one.sets):
            at_bottom.add(dose.movement_key)
    for test in tests:
        quality = _quality_of_test(test.measure)
        if test.value >= _bottom(test.measure, quality=quality, rulebook=rulebook):
            at_bottom.add(test.movement_key)
    return Shown(trained=frozenset(trained | at_bottom), at_bottom=frozenset(at_bottom))


def _quality_of_test(measure: Measure) -> Quality:
    is_reps = measure is Measure.REPS
    return Quality.GENERAL_STRENGTH if is_reps else Quality.MUSCULAR_ENDURANCE


def _bottom(measure: Measure, *, quality: Quality, rulebook: Rulebook) -> float:
    """Return the least of a row [repetitions, s or m] that shows a movement."""
    row = rulebook.quality(quality)
    if measure is Measure.REPS:
        return max(row.reps.least, rulebook.quality(Quality.GENERAL_STRENGTH).reps.least)
    least_s = 0.0 if row.hold_s is None else row.hold_s.least
    pace = rulebook.steps.carry_pace_m_per_s.value if measure is Measure.CARRY_M else 1.0
    return least_s * pace


def not_yet(
    shown: Shown,
    *,
    profile: AthleteProfile,
    weeks_trained: int,
    library: Library,
    rulebook: Rulebook,
) -> frozenset[str]:
    """Return the keys of the main movements that are beyond an athlete today (CH).

    A newcomer begins on the first ``open_rungs`` rungs of a ladder, counted among what they
    own; the next one opens when the one below it was done at its row's bottom. Anybody lifts
    (nearly) the whole body with bent arms, as in a pull-up or a dip, only after the next easier
    rung was done so, or an assisted form where the ladder has none. What was trained stays open.

    Parameters
    ----------
    shown: what exposures and tests show (:func:`shown_by`).
    profile: with the equipment and ``training_age_months`` [months] at the start.
    weeks_trained: [weeks] since, which make a newcomer's months.

    """
    months = profile.training_age_months + weeks_trained / WEEKS_A_MONTH
    is_new = months < rulebook.start.newcomer_under_months.value
    owned = {
        movement.key: movement
        for movement in library.movements.values()
        if movement.role is Role.MAIN and movement.fits(profile.equipment)
    }
    open_rungs = rulebook.weeks.open_rungs.whole if is_new else len(owned)
    return frozenset(
        movement.key
        for movement in owned.values()
        if not _is_open(
            movement,
            ladder=[one for one in library.ladder(movement.key) if one.key in owned],
            owned=tuple(owned.values()),
            shown=shown,
            open_rungs=open_rungs,
            rulebook=rulebook,
        )
    )


def _is_open(
    movement: Movement,
    *,
    ladder: Sequence[Movement],
    owned: Sequence[Movement],
    shown: Shown,
    open_rungs: int,
    rulebook: Rulebook,
) -> bool:
    rung = ladder.index(movement)
    if any(one.key in shown.trained for one in ladder[rung:]):
        return True
    is_below_shown = rung > 0 and ladder[rung - 1].key in shown.at_bottom
    if _lifts_the_body(movement, rulebook=rulebook):
        peers = [one for one in owned if _is_of_the_same_kind(one, movement)]
        is_lifted = any(
            one.key in shown.trained and _lifts_the_body(one, rulebook=rulebook) for one in peers
        )
        is_helped = rung == 0 and any(
            one.key in shown.at_bottom and one.loading is Loading.ASSISTED for one in peers
        )
        return is_lifted or is_helped or is_below_shown
    return rung < open_rungs or is_below_shown


def _lifts_the_body(movement: Movement, *, rulebook: Rulebook) -> bool:
    share = movement.bodyweight_share
    is_whole = share is not None and share >= rulebook.weeks.partial_body_share.value
    return movement.chain is Chain.CLOSED and movement.arm is Arm.BENT and is_whole


def _is_of_the_same_kind(one: Movement, other: Movement) -> bool:
    def kind(movement: Movement) -> tuple[str, ...]:
        return (movement.direction, movement.chain, movement.arm, movement.measure)

    return kind(one) == kind(other)
