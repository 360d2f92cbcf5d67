"""Any athlete's week: what may never give way holds, and what gave way is recorded.

The judge (`check_week`) shares no rule with the drawing, so each is held against the other. No
number of a published source is checked here; the invariants are COMMON PRACTICE, their figures
(push : pull 0.7-1.1, one free day, sets a direction, weeks a movement stays) are the rulebook's.
"""

from datetime import timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.catalogue.library import default_library
from scheduler.pain.values import LeftOut
from scheduler.training.rulebook import default_rulebook
from scheduler.training.week_check import check_week
from scheduler.training.week_values import (
    RELAXABLE_AS,
    MovementInUse,
    WeekDraft,
    WeekRequest,
)
from scheduler.training.weeks import draw_week
from tests.training.any_week import MONDAY, MOVEMENTS, left_outs, requests, rest_of_week

LIBRARY = default_library()
RULEBOOK = default_rulebook()


def drawn(request: WeekRequest) -> WeekDraft:
    return draw_week(request, library=LIBRARY, rulebook=RULEBOOK)


def in_use_after(week: WeekDraft, *, weeks: int) -> tuple[MovementInUse, ...]:
    return tuple(
        MovementInUse(
            pair=slot.pair,
            direction=slot.direction,
            chain=MOVEMENTS[slot.movement_key].chain,
            arm=MOVEMENTS[slot.movement_key].arm,
            movement_key=slot.movement_key,
            weeks=weeks,
            last_used_on=slot.on - timedelta(days=7),
        )
        for slot in week.slots
        if slot.pair is not None
    )


def assert_holds_or_says_so(week: WeekDraft, request: WeekRequest) -> None:
    breaches = check_week(week, request=request, library=LIBRARY, rulebook=RULEBOOK)
    never = [breach for breach in breaches if not breach.invariant.may_give_way]
    assert never == []
    recorded = {gone.what for gone in week.relaxations}
    for breach in breaches:
        assert RELAXABLE_AS[breach.invariant] & recorded, breach
    broken = frozenset[object]().union(*(RELAXABLE_AS[breach.invariant] for breach in breaches))
    assert recorded <= broken


@settings(max_examples=250, deadline=None)
@given(requests)
def test_every_week_keeps_what_never_gives_way_and_records_what_gave(request: WeekRequest) -> None:
    assert_holds_or_says_so(drawn(request), request)


@settings(max_examples=120, deadline=None)
@given(requests, requests, st.integers(0, 9))
def test_every_next_week_does_so_with_the_movements_in_use(
    before: WeekRequest, request: WeekRequest, weeks: int
) -> None:
    history = in_use_after(drawn(before), weeks=weeks)
    request = request.model_copy(update={"history": history})
    assert_holds_or_says_so(drawn(request), request)


@settings(max_examples=120, deadline=None)
@given(requests, left_outs, left_outs, st.integers(0, 7))
def test_every_rest_of_a_week_is_drawn_again_around_what_stands(
    request: WeekRequest, rested: LeftOut, eased: LeftOut, days: int
) -> None:
    first = drawn(request)
    open_from = MONDAY + timedelta(days=days)
    kept = tuple(slot for slot in first.slots if slot.on < open_from)
    again = rest_of_week(
        request,
        kept=kept,
        open_from=open_from,
        rested=rested,
        eased=eased,
    )
    assert tuple(slot for slot in again.slots if slot.on < open_from) == kept
    assert_holds_or_says_so(
        again,
        request.model_copy(
            update={"kept": kept, "open_from": open_from, "rested": rested, "eased": eased}
        ),
    )


@settings(max_examples=60, deadline=None)
@given(requests)
def test_the_same_request_gives_the_same_week(request: WeekRequest) -> None:
    assert drawn(request) == drawn(request)
