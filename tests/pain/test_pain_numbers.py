"""Numbers in an answer about pain: every way of saying them, the highest counts (CHOSEN)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.reading.pain_numbers import is_row_of_figures, pain_numbers, says_worse
from scheduler.pain.values import Level
from tests.pain.histories import level, report, session
from tests.pain.histories import morning as morning_of


# PUBLISHED serlin1995: whole numbers 0-10. CHOSEN: a half counts upward, of several the highest,
# out of bounds and several are asked again
@pytest.mark.parametrize(
    ("said", "score", "must_ask"),
    [
        ("4", 4, False),
        ("4/10", 4, False),
        ("seven out of ten", 7, False),
        ("un 8", 8, False),
        ("0,5", 1, True),
        ("five and a half", 6, True),
        ("4 y medio", 5, True),
        ("was 8 at its worst, more like 3 now", 8, True),
        ("4 without tablets, 1 with", 4, True),
        ("2 today, set 3 was fine", 2, False),
        ("3 again, third day, 2 weeks now", 3, False),
        ("-1", None, True),
        ("14", None, True),
        ("nada, 0", 0, False),
        ("nothing", 0, False),
    ],
)
def test_what_counts_of_an_answer(said, score, must_ask):
    found = pain_numbers(said)
    assert found is not None
    assert (found.score, found.must_ask) == (score, must_ask)


@pytest.mark.parametrize("said", ["fine", "hurts on one side", "nothing dramatic", "3x8 @ 20kg"])
def test_a_text_of_its_own_has_no_number_by_chance(said):
    assert pain_numbers(said, is_asked=False) is None


@pytest.mark.parametrize(
    ("said", "is_row"),
    [
        ("45 40 38", True),
        ("8, 8, 7", True),
        ("5-6", False),
        ("5 or so, was 6", False),
        ("45", True),
    ],
)
def test_a_row_of_figures_is_no_answer(said, is_row):
    assert is_row_of_figures(said) is is_row


@pytest.mark.parametrize(
    ("said", "worse"),
    [("bit worse than last night", True), ("peor que ayer", True), ("much better", False)],
)
def test_a_morning_in_words_may_say_that_it_has_not_settled(said, worse):
    assert says_worse(said) is worse


def test_a_worse_morning_without_a_number_is_eased():
    # CHOSEN: words that it has not settled count as an unsettled morning
    worse = morning_of(0, None).model_copy(update={"is_worse": True})
    assert level(session(0), report(0, 2), worse) is Level.EASE
    assert level(session(0), report(0, 2), morning_of(0, None)) is Level.WATCH


@given(st.text(max_size=200))
def test_no_text_upsets_it(said):
    found = pain_numbers(said)
    assert found is None or found.score is None or 0 <= found.score <= 10
    is_row_of_figures(said)
