"""What other training loads, and which of its days our week keeps away from.

The table of words and the directions are COMMON PRACTICE; hard from an effort of 7 is CHOSEN.
"""

from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.reading.words import PHRASES, Mark
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Demand, Direction, Equipment, Role
from scheduler.training.other_training import (
    Load,
    OtherTraining,
    RegularTraining,
    hard_days,
    is_hard,
    is_known,
    tags_of,
)
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import Quality
from scheduler.training.week_values import HardDay, WeekRequest
from scheduler.training.weeks import draw_week
from tests.training.any_week import MONDAY, requests

LIBRARY = default_library()
RULEBOOK = default_rulebook()
PUSH, PULL, OVERHEAD, GRIP = Load.PUSH, Load.PULL, Load.OVERHEAD, Load.GRIP
SUNDAY_BEFORE = MONDAY - timedelta(days=1)
UNSAID = {"class", "clase", "training with team", "partido"}


def told(*tags: Load, on: date = MONDAY, effort: float | None = None) -> OtherTraining:
    return OtherTraining(on=on, tags=frozenset(tags), effort=effort)


def days_of(
    *reported: OtherTraining, regular: tuple[RegularTraining, ...] = ()
) -> dict[date, set[Direction]]:
    found = hard_days(reported, regular, week_start=MONDAY, rulebook=RULEBOOK)
    return {day.on: set(day.directions) for day in found}


@pytest.mark.parametrize(
    ("name", "loads"),
    [
        ("climbing", {PULL, GRIP}),
        ("Bouldering, 90 min", {PULL, GRIP}),
        ("escalé", {PULL, GRIP}),
        ("swam", {OVERHEAD, PULL}),
        ("natación", {OVERHEAD, PULL}),
        ("rowing", {PULL, GRIP}),
        ("remo con barra", {PULL, GRIP}),
        ("boxing", {PUSH}),
        ("class: 30 push-ups", {PUSH}),
        ("class: 30 pull-ups", {PULL, GRIP}),
        ("clase: 30 dominadas y 40 flexiones", {PULL, GRIP, PUSH}),
        ("yoga", {PUSH}),
        ("volleyball", {OVERHEAD}),
        ("tennis", {OVERHEAD}),
        ("balonmano", {OVERHEAD}),
        ("water polo", {OVERHEAD, PULL}),
        ("ran", set()),
        ("ciclismo", set()),
        ("quidditch", set()),
        ("class", set()),
        ("", set()),
    ],
)
def test_words_for_an_activity_say_what_it_loads(name: str, loads: set[Load]) -> None:
    assert tags_of(name) == loads


def test_word_inside_another_word_is_not_read() -> None:
    assert tags_of("grand pianist") == frozenset()  # holds "ran" and "pian"
    assert not is_known("orange")


def test_every_word_that_the_reader_takes_for_an_activity_is_known_or_says_nothing() -> None:
    words = set(PHRASES[Mark.ACTIVITY].split("|"))
    assert {word for word in words if not is_known(word)} == UNSAID


@pytest.mark.parametrize(
    ("tags", "directions"),
    [
        ({PULL}, {Direction.VERTICAL_PULL, Direction.HORIZONTAL_PULL}),
        ({GRIP}, {Direction.VERTICAL_PULL, Direction.HORIZONTAL_PULL, Direction.UPWARD_PULL}),
        ({PUSH}, {Direction.HORIZONTAL_PUSH, Direction.DOWNWARD_PUSH}),
        ({OVERHEAD}, {Direction.VERTICAL_PUSH}),
    ],
)
def test_hard_day_tires_the_directions_of_what_it_loads(
    tags: set[Load], directions: set[Direction]
) -> None:
    assert days_of(told(*tags, effort=9)) == {MONDAY: directions}


@pytest.mark.parametrize(
    ("tags", "effort", "hard"),
    [
        ({PUSH}, 7, True),
        ({PUSH}, 6.5, False),
        ({PULL}, 6.5, False),
        ({PULL}, None, True),
        ({GRIP}, None, True),
        ({PUSH, OVERHEAD}, None, False),
        (set(), 10, False),
    ],
)
def test_effort_of_seven_is_hard_and_pulling_without_a_word_of_effort_too(
    tags: set[Load], effort: float | None, *, hard: bool
) -> None:
    assert is_hard(told(*tags, effort=effort), rulebook=RULEBOOK) is hard


def test_days_around_the_week_count_as_far_as_a_free_day_reaches() -> None:
    # DERIVED: one free day between, so the Sunday before and the Monday after, and no further
    around = [MONDAY + timedelta(days=offset) for offset in (-2, -1, 0, 6, 7, 8)]
    assert list(days_of(*(told(PULL, on=on) for on in around))) == around[1:5]


def test_regular_hard_day_comes_every_week_and_an_easy_one_does_not_count() -> None:
    sunday = RegularTraining(weekday=7, tags=frozenset({GRIP}), is_hard=True)
    easy = RegularTraining(weekday=3, tags=frozenset({GRIP}))
    assert list(days_of(regular=(sunday, easy))) == [SUNDAY_BEFORE, MONDAY + timedelta(days=6)]


def test_report_of_the_same_kind_holds_before_what_is_regular() -> None:
    climbing = RegularTraining(weekday=1, tags=frozenset({PULL, GRIP}), is_hard=True)
    next_monday = MONDAY + timedelta(days=7)
    assert list(days_of(told(PULL, effort=3), regular=(climbing,))) == [next_monday]
    assert list(days_of(told(PUSH, effort=3), regular=(climbing,))) == [MONDAY, next_monday]


def pulled_hard_or_hung(request: WeekRequest, on: date) -> list[str]:
    week = draw_week(request, library=LIBRARY, rulebook=RULEBOOK)
    easy = {Quality.MUSCULAR_ENDURANCE, Quality.STRENGTH_ENDURANCE}
    return [
        slot.movement_key
        for slot in week.slots
        if slot.on == on
        and (
            Demand.TRACTION in LIBRARY.movements[slot.movement_key].demands
            or (
                not slot.direction.is_push
                and slot.quality not in easy
                and LIBRARY.movements[slot.movement_key].role is Role.MAIN
            )
        )
    ]


@settings(max_examples=150, deadline=None)
@given(
    requests,
    st.integers(-1, 6),
    st.sets(st.sampled_from([PULL, GRIP]), min_size=1),
    st.sampled_from([None, 7.0, 10.0]),
)
def test_no_hang_and_no_hard_pull_on_the_day_after_hard_pulling_elsewhere(
    request: WeekRequest, day: int, tags: set[Load], effort: float | None
) -> None:
    on = MONDAY + timedelta(days=day)
    found = hard_days([told(*tags, on=on, effort=effort)], (), week_start=MONDAY, rulebook=RULEBOOK)
    request = request.model_copy(update={"hard_days": found})
    assert pulled_hard_or_hung(request, on + timedelta(days=1)) == []


@pytest.mark.parametrize(("day", "training_day"), [(-1, 1), (1, 3)], ids=["Sunday", "same week"])
def test_without_the_class_that_day_would_pull_hard_or_hang(day: int, training_day: int) -> None:
    usual: dict[str, Any] = {
        "stage": 4,
        "week_start": MONDAY,
        "weekdays": (1, 3, 5),
        "session_min": 60,
        "equipment": frozenset(Equipment),
        "plan_week": 9,
        "stage_week": 6,
    }
    on = MONDAY + timedelta(days=training_day - 1)
    climb = [told(PULL, GRIP, on=MONDAY + timedelta(days=day))]
    kept_away = hard_days(climb, (), week_start=MONDAY, rulebook=RULEBOOK)
    assert pulled_hard_or_hung(WeekRequest(**usual), on)
    assert pulled_hard_or_hung(WeekRequest(**usual, hard_days=kept_away), on) == []


def test_hard_days_are_values_that_the_week_takes() -> None:
    (found,) = hard_days([told(PULL)], (), week_start=MONDAY, rulebook=RULEBOOK)
    assert isinstance(found, HardDay)
    assert found.has_pull
