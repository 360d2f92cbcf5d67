"""Any week that an athlete may ask for, for the properties of weeks."""

from collections.abc import Sequence
from datetime import date, timedelta

from hypothesis import strategies as st

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Demand, Direction, Equipment
from scheduler.pain.values import LeftOut, Side
from scheduler.training.week_values import DayLetter, HardDay, Slot, WeekDraft, WeekRequest
from scheduler.training.weeks import draw_week
from tests.training.athletes import RULEBOOK

LIBRARY = default_library()
MOVEMENTS = LIBRARY.movements
MONDAY = date(2026, 3, 2)
ARMS = st.sampled_from([Side.LEFT, Side.RIGHT])

left_outs = st.builds(
    LeftOut,
    demands=st.frozensets(st.tuples(st.sampled_from(Demand), ARMS), max_size=4),
    directions=st.frozensets(st.tuples(st.sampled_from(Direction), ARMS), max_size=2),
    everything=st.sampled_from([False] * 9 + [True]),
)
hard_days = st.builds(
    HardDay,
    on=st.integers(-1, 6).map(lambda days: MONDAY + timedelta(days=days)),
    directions=st.frozensets(st.sampled_from(Direction), min_size=1, max_size=2),
)
requests = st.builds(
    WeekRequest,
    stage=st.integers(1, 5),
    week_start=st.just(MONDAY),
    weekdays=st.one_of(
        st.just(()),
        st.lists(st.integers(1, 7), min_size=1, max_size=5, unique=True).map(tuple),
    ),
    days_a_week=st.integers(1, 5),
    session_min=st.integers(15, 90),
    equipment=st.frozensets(st.sampled_from(Equipment)),
    rested=st.one_of(st.just(LeftOut()), left_outs),
    eased=st.one_of(st.just(LeftOut()), left_outs),
    is_inversion_ok=st.booleans(),
    plan_week=st.integers(1, 12),
    stage_week=st.integers(1, 12),
    next_letter=st.sampled_from([DayLetter.A, DayLetter.B, DayLetter.C]),
    last_ordinary_sets=st.dictionaries(st.sampled_from(Direction), st.integers(0, 10)),
    sets_share=st.sampled_from([1.0, 1.0, 0.85, 0.7, 0.6, 0.5]),
    is_first_two_weeks=st.booleans(),
    pull_exposures_to_go=st.integers(0, 2),
    can_pull_dynamically=st.booleans(),
    has_upkeep=st.booleans(),
    held_at_stage_one=st.frozensets(st.sampled_from(Direction), max_size=1),
    hard_days=st.lists(hard_days, max_size=2).map(tuple),
    banned=st.frozensets(st.sampled_from(sorted(MOVEMENTS)), max_size=3),
    not_yet=st.frozensets(st.sampled_from(sorted(MOVEMENTS)), max_size=9),
)


def rest_of_week(
    request: WeekRequest, *, kept: Sequence[Slot], open_from: date, rested: LeftOut, eased: LeftOut
) -> WeekDraft:
    """Draw again what is neither past nor sent, after something was left out in the week."""
    changed = {"kept": tuple(kept), "open_from": open_from, "rested": rested, "eased": eased}
    return draw_week(request.model_copy(update=changed), library=LIBRARY, rulebook=RULEBOOK)
