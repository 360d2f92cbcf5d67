"""An ok or a thank-you asks nothing of the coach; anything else does."""

import pytest

from bot.reading.courtesies import is_courtesy


@pytest.mark.parametrize("text", ["ok", "Thanks!", "thank you so much", "👍", "cool 💪", "thx"])
def test_courtesies_trouble_nobody(text):
    assert is_courtesy(text)


@pytest.mark.parametrize(
    "text",
    [
        "yes",
        "ok?",
        "ok 8",
        "thanks, my wrist hurts",
        "no",
        "see you thursday",
        "ok ok ok ok ok ok ok",
    ],
)
def test_what_may_be_an_answer_or_more_is_no_courtesy(text):
    assert not is_courtesy(text)
