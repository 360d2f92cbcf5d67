"""What a movement trains in its place of the week."""

from collections.abc import Sequence

from scheduler.catalogue.values import Loading, Measure, Movement, Tempo
from scheduler.training.permissions import Slot as PlaceInStage
from scheduler.training.permissions import quality_for
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Quality
from scheduler.training.week_places import HARD, SPACED, Pick, Place
from scheduler.training.week_shelf import Shelf

TAKES_A_MAXIMUM = frozenset({Loading.EXTERNAL, Loading.BODYWEIGHT_PLUS})
"""Where a maximal effort makes sense: a load that can be stepped up, no help, firm hold (CP)."""


def quality_of(movement: Movement, *, place: Place, shelf: Shelf, taken: Sequence[Pick]) -> Quality:
    """Return what a movement trains in its place.

    A movement that a leave standard of the stage names is trained in the hardest quality whose
    range holds the standard (CH): that is what brings it there. Else what stage and pair give;
    where general strength begins, a movement that bears part of the body (a push-up, a row under
    a bar) is trained for strength endurance, since it gets harder by repetitions first (CH). On
    a day without a free day to the next hard pulling, pulls take the hardest easy quality.
    """
    stage = shelf.request.stage_for(place.direction, movement.direction)
    quality = _quality_of_standard(movement, stage=stage, rulebook=shelf.rulebook)
    if quality is None or place.is_light:
        quality = _quality_of_place(movement, place=place, stage=stage, shelf=shelf, taken=taken)
    if quality in HARD and not place.may_be_hard:
        return hardest_easy_quality(stage=stage, rulebook=shelf.rulebook)
    return quality


def _quality_of_standard(movement: Movement, *, stage: int, rulebook: Rulebook) -> Quality | None:
    """Return the hardest strength quality whose range holds the stage's standard, if one does."""
    takes_no_load = movement.loading is Loading.NONE and movement.tempo is Tempo.STATIC
    if takes_no_load:
        return None
    permitted = rulebook.stage(stage).qualities
    for standard in rulebook.standards.get(stage, ()):
        if movement.key not in standard.movements or movement.measure is not standard.measure:
            continue
        for quality in (
            Quality.GENERAL_STRENGTH,
            Quality.STRENGTH_ENDURANCE,
            Quality.MUSCULAR_ENDURANCE,
        ):
            row = rulebook.quality(quality)
            bounds = row.hold_s if movement.measure.is_time else row.reps
            targets = [column.target.value for column in standard.columns.values()]
            is_held = bounds is not None and all(target in bounds for target in targets)
            if quality in permitted and is_held:
                return quality
    return None


def _quality_of_place(
    movement: Movement, *, place: Place, stage: int, shelf: Shelf, taken: Sequence[Pick]
) -> Quality:
    rulebook = shelf.rulebook
    gains_by_reps = (
        stage == rulebook.quality(Quality.GENERAL_STRENGTH).from_stage.whole
        and movement.measure is Measure.REPS
        and _bears_part_of_the_body(movement, rulebook=rulebook)
    )
    own = {place.direction, movement.direction}
    same = [pick for pick in taken if pick.directions & own]
    most = rulebook.stages.extras.maximal_exposures_a_week.whole
    is_maximal_taken = (
        sum(pick.quality is Quality.MAXIMAL_STRENGTH for pick in same) >= most
        or _has_hard_neighbour(place, same, shelf=shelf)
        or movement.loading not in TAKES_A_MAXIMUM
        or movement.is_unstable
    )
    in_stage = PlaceInStage(
        stage=stage,
        weeks_in_stage=shelf.request.stage_week - 1,
        is_first_pair=place.pair == 1 and not place.is_light and not gains_by_reps,
        is_maximal_taken=is_maximal_taken,
    )
    return quality_for(movement, slot=in_stage, rulebook=rulebook).value


def _bears_part_of_the_body(movement: Movement, *, rulebook: Rulebook) -> bool:
    share = movement.bodyweight_share
    is_partial = share is not None and share < rulebook.weeks.partial_body_share.value
    return movement.loading is Loading.NONE or (
        movement.loading is Loading.BODYWEIGHT_PLUS and is_partial
    )


def hardest_easy_quality(*, stage: int, rulebook: Rulebook) -> Quality:
    """Return the hardest quality that a stage permits and that needs no free day around it."""
    permitted = rulebook.stage(stage).qualities
    if Quality.STRENGTH_ENDURANCE in permitted:
        return Quality.STRENGTH_ENDURANCE
    return Quality.MUSCULAR_ENDURANCE


def _has_hard_neighbour(place: Place, same: Sequence[Pick], *, shelf: Shelf) -> bool:
    gap = shelf.rulebook.weeks.free_days_between_hard.whole
    days = [pick.place.on for pick in same if pick.quality in SPACED]
    days += [hard.on for hard in shelf.request.hard_days if place.direction in hard.directions]
    return any(abs((place.on - day).days) <= gap for day in days)
