"""Whatever a coach changes in a week: nothing that is left out comes back, nothing unowned comes.

No number of a published source is checked here; what the coach may override and what never is
CHOSEN, what is left out is COMMON PRACTICE.
"""

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Direction, Role
from scheduler.pain.values import LeftOut
from scheduler.training.coach_changes import obstacle_to, with_changes
from scheduler.training.coach_plan import (
    Ban,
    CoachPlan,
    DayMove,
    ItemChange,
    Pin,
    PlanChange,
    StandingSwap,
    moved_weekdays,
    still_of_use,
)
from scheduler.training.permissions import PermissionFacts, permits
from scheduler.training.rulebook import default_rulebook
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import WeekDraft, WeekRequest
from scheduler.training.weeks import draw_week
from tests.training.any_week import MONDAY, MOVEMENTS, left_outs, requests

LIBRARY, RULEBOOK = default_library(), default_rulebook()
KEYS = st.sampled_from(sorted(MOVEMENTS))
overrides = st.booleans()
pins = st.builds(Pin, movement_key=KEYS, is_override=overrides)
bans = st.builds(Ban, movement_key=KEYS)
swaps = st.builds(StandingSwap, was=KEYS, movement_key=KEYS, is_override=overrides)
items = st.builds(
    ItemChange,
    on=st.integers(0, 6).map(lambda days: MONDAY + timedelta(days=days)),
    pair=st.sampled_from([1, 2, None]),
    direction=st.sampled_from(Direction),
    was=KEYS,
    movement_key=KEYS,
    is_override=overrides,
)
plans = st.builds(
    CoachPlan, entries=st.lists(st.one_of(pins, bans, swaps, items), max_size=12).map(tuple)
)


def changed_week(request: WeekRequest, plan: CoachPlan) -> tuple[WeekDraft, WeekRequest]:
    """Draw as the acts do: pins, bans and overrides in the request, then the places."""
    held = request.held_at_stage_one
    asked = request.model_copy(
        update={
            "pinned": plan.pinned,
            "banned": request.banned | plan.banned,
            "allowed_by_coach": frozenset(
                key
                for key in plan.allowed
                if not held & {MOVEMENTS[key].direction, MOVEMENTS[key].stands_in_for}
            ),
        }
    )
    draft = draw_week(asked, library=LIBRARY, rulebook=RULEBOOK)
    changed = with_changes(draft, plan=plan, request=asked, library=LIBRARY, rulebook=RULEBOOK)
    return changed, asked


def assert_nothing_left_out_comes(week: WeekDraft, request: WeekRequest) -> None:
    for slot in week.slots:
        movement = MOVEMENTS[slot.movement_key]
        assert slot.arms, slot
        assert slot.arms <= request.rested.arms_allowed(movement), slot
        assert not any((slot.direction, arm) in request.rested.directions for arm in slot.arms)


@settings(max_examples=80, deadline=None)
@given(request=requests, plan=plans, rested=left_outs)
def test_nothing_rested_returns_whatever_the_coach_pins_swaps_or_overrides(
    request: WeekRequest, plan: CoachPlan, rested: LeftOut
):
    asked = request.model_copy(update={"rested": rested})
    week, asked = changed_week(asked, plan)
    assert_nothing_left_out_comes(week, asked)


@settings(max_examples=40, deadline=None)
@given(request=requests, plan=plans)
def test_nothing_unowned_banned_or_held_comes_by_a_change(request: WeekRequest, plan: CoachPlan):
    week, asked = changed_week(request, plan)
    for slot in week.slots:
        movement = MOVEMENTS[slot.movement_key]
        assert movement.fits(asked.equipment)
        assert movement.key not in asked.banned
        if asked.held_at_stage_one & {slot.direction, movement.direction}:
            facts = PermissionFacts(stage=1, has_upkeep=asked.has_upkeep and slot.pair is None)
            assert permits(movement, facts=facts, rulebook=RULEBOOK).value


@settings(max_examples=40, deadline=None)
@given(request=requests, plan=plans)
def test_a_change_puts_no_movement_beside_itself(request: WeekRequest, plan: CoachPlan):
    week, asked = changed_week(request, plan)
    drawn = draw_week(asked, library=LIBRARY, rulebook=RULEBOOK)
    for session, before in zip(week.sessions, drawn.sessions, strict=True):
        for slot, old in zip(session.slots, before.slots, strict=True):
            if slot.movement_key != old.movement_key:
                keys = [one.movement_key for one in session.slots]
                assert keys.count(slot.movement_key) == 1


def _request(**facts: object) -> WeekRequest:
    base = WeekRequest(
        stage=1,
        week_start=MONDAY,
        weekdays=(1, 3, 5),
        session_min=60,
        equipment=frozenset().union(
            *(choice for m in MOVEMENTS.values() for choice in m.equipment)
        ),
    )
    return base.model_copy(update=facts)


def test_a_change_is_put_into_its_place_with_arms_quality_and_minutes_of_its_own():
    request = _request()
    slot = draw_week(request, library=LIBRARY, rulebook=RULEBOOK).slots[0]
    other = next(
        movement
        for movement in MOVEMENTS.values()
        if movement.role is Role.MAIN
        and movement.direction is slot.direction
        and movement.key not in {one.movement_key for one in _slots(request)}
        and obstacle_to(movement, slot=slot, request=request, library=LIBRARY, rulebook=RULEBOOK)
        is None
    )
    change = ItemChange(
        on=slot.on,
        pair=slot.pair,
        direction=slot.direction,
        was=slot.movement_key,
        movement_key=other.key,
    )
    week, _ = changed_week(request, CoachPlan(entries=(change,)))
    assert week.slots[0].movement_key == other.key
    assert week.slots[0].sets == slot.sets
    assert any(one.code == WeekReason.CHANGED_BY_COACH for one in week.reasons)


def _slots(request: WeekRequest):
    return draw_week(request, library=LIBRARY, rulebook=RULEBOOK).slots


def test_what_was_sent_is_not_changed_by_the_drawing():
    request = _request()
    sent = _slots(request)[:4]
    change = StandingSwap(was=sent[0].movement_key, movement_key="push_up_hold")
    kept = request.model_copy(update={"kept": sent})
    week, _ = changed_week(kept, CoachPlan(entries=(change,)))
    assert week.slots[: len(sent)] == sent


def test_a_moved_day_keeps_the_number_of_days_and_stays_in_its_week():
    # DERIVED: Wednesday (3) moved to Saturday (6): Monday, Friday, Saturday
    move = DayMove(on=MONDAY + timedelta(days=2), to=MONDAY + timedelta(days=5))
    assert moved_weekdays((1, 3, 5), week_start=MONDAY, moves=[move]) == (1, 5, 6)
    next_week = MONDAY + timedelta(days=7)
    assert moved_weekdays((1, 3, 5), week_start=next_week, moves=[move]) == (1, 3, 5)
    with pytest.raises(ValueError, match="one week"):
        DayMove(on=MONDAY, to=MONDAY + timedelta(days=7))


def test_a_change_and_its_reverse_leave_the_plan_as_it_was():
    plan = CoachPlan(entries=(Ban(movement_key="bar_hang"),))
    change = PlanChange(remove=(Ban(movement_key="bar_hang"),), add=(Pin(movement_key="bar_hang"),))
    assert change.fits(plan)
    done = change.done_to(plan)
    assert not change.fits(done)
    assert change.reverse.done_to(done) == plan


def test_days_long_over_are_forgotten_and_standing_entries_stay():
    # CHOSEN: kept for ten weeks, as far as the drawing of a week looks back
    old = ItemChange(
        on=MONDAY - timedelta(weeks=11),
        pair=1,
        direction=Direction.VERTICAL_PULL,
        was="bar_hang",
        movement_key="band_hang",
    )
    pin = Pin(movement_key="bar_hang")
    plan = CoachPlan(entries=(old, pin))
    assert still_of_use(plan, today=MONDAY).entries == (pin,)
