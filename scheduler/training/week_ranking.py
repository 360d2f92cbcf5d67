"""Which of several fitting movements an attentive coach would take first."""

from collections.abc import Sequence

from scheduler.catalogue.values import Joint, Movement
from scheduler.training.week_places import Pick, Place
from scheduler.training.week_shelf import Shelf


def best_of(
    fitting: Sequence[Movement], *, place: Place, shelf: Shelf, taken: Sequence[Pick]
) -> Movement:
    """Return the movement that an attentive coach would take first (CP).

    Not what loads an eased region; not a second movement that the grip ends on a beginner's day;
    what a standard or an event asks for; not what the week has already; what belongs to this
    stage rather than an earlier one; what the standards of the stages behind have shown; what was
    not trained lately; the lowest rung.
    """
    request = shelf.request
    week = [pick.movement.key for pick in taken]
    last_used = {
        entry.movement_key: entry.last_used_on.toordinal()
        for entry in sorted(request.history, key=lambda entry: entry.last_used_on)
    }
    is_grip_spent = request.stage <= shelf.rulebook.weeks.grip_spared_to_stage.value and any(
        pick.place.on == place.on and pick.movement.limiting_joint is Joint.GRIP for pick in taken
    )

    shown = {
        standard.movements[0]
        for stage in range(1, request.stage)
        for standard in shelf.rulebook.standards.get(stage, ())
    }

    def order(numbered: tuple[int, Movement]) -> tuple[float, ...]:
        number, movement = numbered
        return (
            shelf.is_eased(movement, direction=place.direction),
            is_grip_spent and movement.limiting_joint is Joint.GRIP,
            movement.key not in request.wanted,
            week.count(movement.key),
            -movement.least_stage,
            movement.key not in shown,
            last_used.get(movement.key, 0),
            len(shelf.easier_than(movement, direction=place.direction)),
            number,
        )

    return min(enumerate(fitting), key=order)[1]
