"""Which of several fitting movements an attentive coach would take first."""

from collections.abc import Sequence

from scheduler.catalogue.values import Joint, Movement
from scheduler.training.permissions import strength_of_pair, takes_no_load
from scheduler.training.week_places import Pick, Place
from scheduler.training.week_shelf import Shelf


def best_of(
    fitting: Sequence[Movement], *, place: Place, shelf: Shelf, taken: Sequence[Pick]
) -> Movement:
    """Return the movement that an attentive coach would take first (CP).

    Not what loads an eased region; not a second movement that the grip ends on a beginner's day;
    what is wanted by name, else the rung nearest below it; what the stage's standards name, then
    those of the stages behind; not what the week has already; a firm hold before rings; a hold
    that takes a load where the pair's quality is one of loaded holds; the rung that belongs to
    the stage; what was not trained lately; the library's order. A light day stands between full
    ones: it spares the grip at every stage, and leaves the standards to them.
    """
    request = shelf.request
    week = [pick.movement.key for pick in taken]
    last_used = {
        entry.movement_key: entry.last_used_on.toordinal()
        for entry in sorted(request.history, key=lambda entry: entry.last_used_on)
    }
    is_grip_spent = place.is_light or (
        request.stage <= shelf.rulebook.weeks.grip_spared_to_stage.value
        and any(
            pick.place.on == place.on and pick.movement.limiting_joint is Joint.GRIP
            for pick in taken
        )
    )
    stage = request.stage_for(place.direction)
    named_in = {
        standard.movements[0]: named
        for named, standards in sorted(shelf.rulebook.standards.items())
        for standard in standards
        if named <= stage
    }

    def order(numbered: tuple[int, Movement]) -> tuple[float, ...]:
        number, movement = numbered
        rung = len(shelf.easier_than(movement, direction=place.direction))
        return (
            shelf.is_eased(movement, direction=place.direction),
            is_grip_spent and movement.limiting_joint is Joint.GRIP,
            0 if place.is_light else shelf.rungs_to_wanted(movement),
            0 if place.is_light else stage - named_in.get(movement.key, 0),
            week.count(movement.key),
            movement.is_unstable,
            takes_no_load(movement) and _wants_loaded_holds(place, stage=stage, shelf=shelf),
            abs(rung - _rung_of_stage(movement, stage=stage, shelf=shelf)),
            last_used.get(movement.key, 0),
            number,
        )

    return min(enumerate(fitting), key=order)[1]


def _wants_loaded_holds(place: Place, *, stage: int, shelf: Shelf) -> bool:
    """Tell whether a place trains a quality whose holds are loaded."""
    if place.is_light or shelf.request.is_first_two_weeks:
        return False
    quality = strength_of_pair(stage=stage, is_first_pair=place.pair == 1, rulebook=shelf.rulebook)
    return shelf.rulebook.quality(quality).is_hold_loaded


def _rung_of_stage(movement: Movement, *, stage: int, shelf: Shelf) -> int:
    """Return how far up a ladder a stage begins [rungs]: one for each stage with this arm behind.

    The first two weeks begin at the bottom (CH).
    """
    if shelf.request.is_first_two_weeks:
        return 0
    rows = shelf.rulebook.stages.rows
    first = next((row.number for row in rows if movement.arm in row.arms), stage)
    return max(0, stage - first)
