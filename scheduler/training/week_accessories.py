"""The one accessory that closes a session."""

from collections.abc import Sequence

from scheduler.catalogue.values import Demand, Joint, Movement, Tempo
from scheduler.training.gaps import sets_after_share
from scheduler.training.values import Quality
from scheduler.training.week_days import DayPlan
from scheduler.training.week_places import Pick, Place
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import DayLetter

SHOULDER_DAYS = frozenset({DayLetter.A, DayLetter.B})
TURNS_A_WEEK = 3  # [places] ch: the next week begins where a three-day week ended


def choose_accessory(
    day: DayPlan, *, today: Sequence[Pick], week: Sequence[Pick], shelf: Shelf
) -> Pick | None:
    """Choose a day's accessory, or none: another family and joint each day, in turn (CP).

    Days A and B look after shoulder and shoulder blade, the others after elbow, forearm and
    wrist. Nothing that loads an eased region; no grip work on a beginner's day that the grip ends.
    """
    offered = shelf.accessories
    fitting = [
        (number, movement)
        for number, movement in enumerate(offered)
        if movement.tempo is not Tempo.DYNAMIC
        and shelf.obstacle(movement, direction=movement.direction, on=day.on) is None
        and not shelf.is_eased(movement, direction=movement.direction)
    ]
    if not fitting or not today:
        return None
    used = [pick.movement for pick in week if pick.is_accessory]
    start = shelf.request.plan_week * TURNS_A_WEEK
    is_grip_spent = shelf.request.stage <= shelf.rulebook.weeks.grip_spared_to_stage.value and any(
        pick.movement.limiting_joint is Joint.GRIP for pick in today
    )

    looks_after_shoulder = day.letter in SHOULDER_DAYS

    def order(numbered: tuple[int, Movement]) -> tuple[int, ...]:
        number, movement = numbered
        return (
            movement.key not in shelf.request.pinned,
            (movement.limiting_joint is Joint.SHOULDER) is not looks_after_shoulder,
            is_grip_spent and Demand.GRIP in movement.demands,
            sum(other.key == movement.key for other in used),
            sum(other.family == movement.family for other in used),
            sum(other.limiting_joint is movement.limiting_joint for other in used),
            (number - start) % len(offered),
        )

    movement = min(fitting, key=order)[1]
    sets = shelf.rulebook.weeks.accessory_sets.whole
    return extra_pick(movement, day=day, sets=sets, shelf=shelf)


def extra_pick(movement: Movement, *, day: DayPlan, sets: int, shelf: Shelf) -> Pick:
    """Return work outside the pairs: easy endurance, ``sets`` [sets] cut by the week's share."""
    place = Place(
        on=day.on,
        letter=day.letter,
        pair=None,
        direction=movement.direction,
        chain=movement.chain,
        arm=movement.arm,
    )
    return Pick(
        place=place,
        movement=movement,
        arms=shelf.arms(movement, direction=movement.direction),
        quality=Quality.MUSCULAR_ENDURANCE,
        sets=sets_after_share(sets=sets, share=shelf.request.sets_share),
    )
