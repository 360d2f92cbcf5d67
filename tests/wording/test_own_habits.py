"""Numbers, dates and units as each person is used to them; records stay in kilograms."""

from datetime import date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.reading.units import POUND_KG, nearest_lb
from bot.wording import dates
from bot.wording.reasons import say_reason
from bot.wording.tongue import Tongue, tongue_of
from scheduler.reasons import Reason

MONDAY = date(2026, 3, 2)  # DERIVED: 1 January 2026 is a Thursday, 60 days on a Monday


@pytest.mark.parametrize(
    ("tongue", "said"),
    [
        (tongue_of("en"), "2.5"),
        (tongue_of("es"), "2,5"),  # PUBLISHED cldr: decimal sign of es
        (tongue_of("en", decimal_mark=","), "2,5"),
        (tongue_of("es", decimal_mark="."), "2.5"),
    ],
)
def test_the_decimal_mark_is_the_persons_own_before_the_languages(tongue: Tongue, said: str):
    assert tongue.number(2.5) == said
    assert tongue.say("{share}", share=2.5) == said


@pytest.mark.parametrize(
    ("language", "short", "weekday"),
    [
        ("en", "Mon 2 Mar", "Monday"),  # PUBLISHED cldr: abbreviated names of en and es
        ("es", "lun 2 mar", "lunes"),
    ],
)
def test_days_are_written_as_the_language_writes_them(language, short, weekday):
    tongue = tongue_of(language)
    assert dates.day(tongue, MONDAY) == short
    assert dates.weekday(tongue, MONDAY) == weekday
    assert dates.day_and_year(tongue, MONDAY) == f"{short} 2026"
    assert dates.moment(tongue, datetime(2026, 3, 2, 18, 5)) == f"{short}, 18:05"  # noqa: DTZ001
    assert dates.short_weekday(tongue, 0) == short[:3]


@pytest.mark.parametrize(
    ("load_kg", "said"),
    [
        # DERIVED from the international pound, 0.45359237 kg, to the nearest half pound
        (20.0, "44 lb"),
        (2.5, "5.5 lb"),
        (9.07, "20 lb"),
        (22.68, "50 lb"),
        (1.0, "2 lb"),
        (72.5, "160 lb"),
    ],
)
def test_loads_in_pounds_are_figures_that_weights_have(load_kg, said):
    assert tongue_of("en", units="lb").load(load_kg) == said


def test_several_loads_share_one_unit_and_the_own_mark():
    assert tongue_of("es").load(2.5, 20.0) == "2,5 / 20 kg"
    assert tongue_of("en", units="lb").load(2.5, 20.0) == "5.5 / 44 lb"


@given(pounds=st.integers(min_value=1, max_value=400).map(lambda halves: halves / 2))
def test_a_weight_bought_in_pounds_is_told_as_it_was_bought(pounds: float):
    assert nearest_lb(round(pounds * POUND_KG, 2)) == pounds


def test_a_reason_tells_its_loads_in_the_readers_unit():
    reason = Reason(
        code="dose.step_in_load",
        figures={"was_kg": 20.0, "load_kg": 22.5, "target": 30},
        source="ch",
    )
    # DERIVED: 20 / 0.45359237 = 44.09, 22.5 / 0.45359237 = 49.60, to the nearest half
    assert say_reason(tongue_of("en", units="lb"), reason) == (
        "Two good sessions at the top: from 44 lb to 49.5 lb, and 30 a set."
    )
