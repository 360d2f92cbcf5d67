"""What a place of the week belongs to: COMMON PRACTICE that an eased movement comes back.

One step down while something hurts, no further from week to week, and back when it is over.
"""

from datetime import timedelta
from typing import Any

import pytest
from hypothesis import given, settings

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Arm, Chain, Demand, Direction, Tempo
from scheduler.pain.values import LeftOut, Side
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import Neighbour
from scheduler.training.week_history import PlaceUsed, is_swapped, movements_in_use
from scheduler.training.week_values import MovementInUse, WeekDraft, WeekRequest
from scheduler.training.weeks import draw_week
from tests.training.any_week import MONDAY, left_outs, requests

LIBRARY = default_library()
RULEBOOK = default_rulebook()
NOTHING = LeftOut()
PUSH = Direction.HORIZONTAL_PUSH
# the ladder of the library, the easiest first
WALL, INCLINE, KNEELING, FLOOR, FEET_UP = [m.key for m in LIBRARY.ladder("push_up_hold")]
WRISTS = LeftOut(
    demands=frozenset((Demand.WRIST_EXTENSION, side) for side in (Side.LEFT, Side.RIGHT))
)
STAY, HARDER, EASIER = Neighbour.STAY, Neighbour.HARDER, Neighbour.EASIER


def uses(*trained: tuple[str, Neighbour]) -> list[PlaceUsed]:
    """One session a week, the last in the week before MONDAY."""
    return [
        PlaceUsed(
            on=MONDAY - timedelta(weeks=len(trained) - number),
            pair=1,
            direction=PUSH,
            movement_key=key,
            asked=asked,
        )
        for number, (key, asked) in enumerate(trained)
    ]


def own(
    *trained: tuple[str, Neighbour], eased: LeftOut = NOTHING, no_step: LeftOut = NOTHING
) -> MovementInUse:
    (found,) = movements_in_use(
        uses(*trained), week_start=MONDAY, library=LIBRARY, eased=eased, no_step=no_step
    )
    return found


@pytest.mark.parametrize(
    ("trained", "belongs_to"),
    [
        ([(FLOOR, STAY)], FLOOR),
        ([(FLOOR, HARDER)], FEET_UP),
        ([(FLOOR, EASIER)], KNEELING),
        ([(FLOOR, EASIER), (KNEELING, STAY)], KNEELING),
        ([(FLOOR, STAY), (KNEELING, STAY)], FLOOR),
        ([(FLOOR, STAY), (KNEELING, STAY), (KNEELING, HARDER)], FLOOR),
        ([(FLOOR, STAY), (KNEELING, EASIER)], KNEELING),
        ([(FLOOR, EASIER), (INCLINE, STAY)], KNEELING),
        ([(INCLINE, HARDER), (KNEELING, HARDER)], FLOOR),
        ([(FLOOR, HARDER), (FLOOR, STAY)], FLOOR),
    ],
    ids=[
        "as it is",
        "a step up is asked",
        "a step down is asked",
        "a step down was taken",
        "an easier one stood in",
        "a stand-in does not climb past what it stands in for",
        "even the stand-in was too hard",
        "a step down was asked and then eased",
        "two steps up",
        "a step up was taken back",
    ],
)
def test_place_belongs_to_its_own_movement(
    trained: list[tuple[str, Neighbour]], belongs_to: str
) -> None:
    assert own(*trained).movement_key == belongs_to


def test_nothing_harder_comes_in_while_what_it_loads_hurts() -> None:
    assert own((FLOOR, HARDER), no_step=WRISTS).movement_key == FLOOR
    assert own((FLOOR, STAY), (KNEELING, STAY), no_step=WRISTS).movement_key == KNEELING


def test_eased_place_is_drawn_from_its_own_movement() -> None:
    trained = [(FLOOR, STAY), (KNEELING, STAY)]
    assert own(*trained, eased=WRISTS, no_step=WRISTS).movement_key == FLOOR


def test_weeks_count_from_the_first_rung_and_anew_with_another_family() -> None:
    assert own((INCLINE, HARDER), (KNEELING, STAY), (KNEELING, STAY)).weeks == 3
    assert own(("handle_push_up_hold", STAY), (FLOOR, STAY)).weeks == 1


def test_movements_from_this_week_or_gone_from_the_library_are_passed_over() -> None:
    used = [*uses((FLOOR, STAY), ("gone", STAY)), PlaceUsed(
        on=MONDAY, pair=1, direction=PUSH, movement_key=WALL
    )]  # fmt: skip
    (found,) = movements_in_use(
        used, week_start=MONDAY, library=LIBRARY, eased=NOTHING, no_step=NOTHING
    )
    assert found.movement_key == FLOOR


@pytest.mark.parametrize(
    ("key", "swapped"), [(KNEELING, True), (FLOOR, False), (FEET_UP, False), ("gone", False)]
)
def test_easier_one_of_the_places_own_is_swapped(key: str, *, swapped: bool) -> None:
    history = (own((FLOOR, STAY)),)
    facts: dict[str, Any] = {"direction": PUSH, "history": history, "library": LIBRARY}
    assert is_swapped(key, pair=1, **facts) is swapped
    assert not is_swapped(key, pair=2, **facts)


def used_in(week: WeekDraft) -> list[PlaceUsed]:
    return [
        PlaceUsed(
            on=slot.on,
            pair=slot.pair,
            direction=slot.direction,
            movement_key=slot.movement_key,
        )
        for slot in week.slots
        if slot.pair is not None
    ]


@settings(max_examples=80, deadline=None)
@given(requests, left_outs.filter(lambda eased: not eased.is_empty))
def test_five_weeks_of_the_same_ease_are_one_step_down_and_then_back(
    request: WeekRequest, eased: LeftOut
) -> None:
    calm = request.model_copy(update={"eased": NOTHING, "rested": NOTHING, "hard_days": ()})
    used: list[PlaceUsed] = []
    own_in: dict[Place, str] = {}
    for week in range(7):
        is_eased = 1 <= week <= 5
        now = eased if is_eased else NOTHING
        monday = MONDAY + timedelta(weeks=week)
        history = movements_in_use(used, week_start=monday, library=LIBRARY, eased=now, no_step=now)
        asked = calm.model_copy(update={"week_start": monday, "eased": now, "history": history})
        drawn = used_in(draw_week(asked, library=LIBRARY, rulebook=RULEBOOK))
        own_before = dict(own_in)
        for slot in drawn:
            place, key = place_of(slot), slot.movement_key
            own_key = own_before.get(place)
            if own_key is None or key not in ladder_keys(own_key):
                own_in[place] = harder_of(own_in.get(place), key)  # new this week
                continue
            one_below = fitting_below(own_key, calm)[:1] if is_eased else []
            assert key in {own_key, *one_below}
        used += drawn


Place = tuple[int, Direction, Chain, Arm, bool]


def place_of(slot: PlaceUsed) -> Place:
    movement = LIBRARY.movements[slot.movement_key]
    is_dynamic = movement.tempo is Tempo.DYNAMIC
    return (slot.pair, slot.direction, movement.chain, movement.arm, is_dynamic)


def harder_of(own_key: str | None, key: str) -> str:
    """The higher rung, where one place has two in its first week; else the new movement."""
    keys = ladder_keys(key)
    return max(own_key, key, key=keys.index) if own_key in keys and own_key else key


def ladder_keys(key: str) -> list[str]:
    return [movement.key for movement in LIBRARY.ladder(key)]


def fitting_below(key: str, request: WeekRequest) -> list[str]:
    """The easier rungs that the athlete may take, the nearest first."""
    out = request.banned | request.not_yet
    ladder = LIBRARY.ladder(key)
    return [
        movement.key
        for movement in reversed(ladder[: ladder_keys(key).index(key)])
        if movement.fits(request.equipment) and movement.key not in out
    ]
