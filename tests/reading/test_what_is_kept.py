"""What a reading keeps beside the results: assumptions, options, the athlete's own units.

All figures CHOSEN but the pound, which is PUBLISHED: 0.45359237 kg by international agreement
of 1959.
"""

from bot.reading.reply import read
from bot.reading.values import Asked, AssumptionCode, Correction, NotUnderstood, Recorded
from scheduler.pain.values import Side
from tests.reading.team import PLACES


def _codes(text, place):
    reading = read(text, PLACES[place])
    assert isinstance(reading, Recorded)
    return [assumption.code for assumption in reading.assumptions]


def test_a_load_not_mentioned_is_the_planned_one_and_is_shown():
    reading = read("8 8 7", PLACES["press"])
    assert isinstance(reading, Recorded)
    (taken,) = reading.assumptions
    assert taken.code is AssumptionCode.LOAD_AS_PLANNED
    assert taken.figures == {"load_kg": 16}


def test_a_load_that_was_said_is_not_an_assumption():
    assert _codes("18kg 8 8 7", "press") == []


def test_done_is_shown_as_taken_from_the_plan():
    assert _codes("done", "hang") == [AssumptionCode.AS_PLANNED]


def test_a_slip_in_a_name_is_shown():
    assert AssumptionCode.NAME_GUESSED in _codes("hagn 45 40 38", "day")


def test_left_said_first_is_shown_only_where_no_arm_was_named():
    assert AssumptionCode.LEFT_SAID_FIRST in _codes("30/25", "sides")
    assert AssumptionCode.LEFT_SAID_FIRST not in _codes("L 30 R 25", "sides")


def test_a_rounded_figure_is_shown_as_about():
    assert AssumptionCode.ABOUT in _codes("~45 40 38", "hang")


def test_bare_loads_are_in_the_athletes_own_unit():
    pounds = PLACES["press"].model_copy(update={"unit": "lb"})
    reading = read("8 8 7 @ 40", pounds)
    assert isinstance(reading, Recorded)
    # DERIVED: 40 lb x 0.45359237 kg = 18.14 kg, rounded to 10 g
    assert {s.load_kg for s in reading.items[0].sets} == {18.14}


def test_options_hold_the_results_and_the_question_holds_the_pain():
    reading = read("45 40, left wrist 4/10", PLACES["hang"])
    assert isinstance(reading, Asked)
    assert [(pain.side, pain.score) for pain in reading.pains] == [(Side.LEFT, 4)]
    assert all(not option.pains for option in reading.options)


def test_an_option_says_that_it_was_cut_short():
    reading = read("45 40", PLACES["hang"])
    assert isinstance(reading, Asked)
    (option,) = reading.options
    assert isinstance(option, Recorded)
    assert option.items[0].is_stopped
    assert [s.value for s in option.items[0].sets] == [45, 40]


def test_one_figure_for_three_sets_offers_stopped_and_the_same_in_all():
    reading = read("45", PLACES["hang"])
    assert isinstance(reading, Asked)
    rows = [
        [s.value for s in option.items[0].sets]
        for option in reading.options
        if isinstance(option, Recorded)
    ]
    assert rows == [[45], [45, 45, 45]]


def test_the_same_old_figure_twice_is_asked_about():
    last = PLACES["after"].last[0]
    twice = last.model_copy(
        update={"sets": tuple(s.model_copy(update={"value": 48}) for s in last.sets[:2])}
    )
    reading = read("38 not 48", PLACES["after"].model_copy(update={"last": (twice,)}))
    assert isinstance(reading, Asked)
    assert [o.changes[0].number for o in reading.options if isinstance(o, Correction)] == [1, 2]


def test_what_fits_nothing_is_answered_with_an_example_of_today():
    reading = read("1e9 40 38", PLACES["hang"])
    assert isinstance(reading, NotUnderstood)
    assert reading.example == "1) 40 40 37\n2) 8 8 7"


def test_words_that_nothing_read_are_kept_for_the_coach():
    reading = read("8 8 7 bar slippery", PLACES["press"])
    assert isinstance(reading, Recorded)
    assert reading.unread == "bar slippery"


def test_too_many_ways_to_read_a_message_record_nothing():
    reading = read("16x8 " * 12, PLACES["press"])
    assert not isinstance(reading, Recorded)
