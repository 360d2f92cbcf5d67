"""An ok or a thank-you asks nothing of the coach; anything else does."""

import pytest

from bot.reading.courtesies import Courtesy, courtesy_of, is_courtesy


@pytest.mark.parametrize(
    "text",
    [
        "ok",
        "Thanks!",
        "thank you so much",
        "👍🏻",
        "❤️",
        "cool 💪",
        "thx",
        "thanks, felt great",
        "Good morning!",
        "gracias, me sentí genial",
        "muchas gracias",
        "buenos días",
        "Thanks, felt really good today, see you tomorrow",
    ],
)
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
        "thanks, felt great but my elbow is sore",
        "thanks, can we move friday",
        "will do the session tomorrow",
        "felt bad",
        "not great",
        "not good today",
        "that was tough",
        "gracias, pero me duele",
        "hoy no puedo, gracias",
        "me fue mal",
        "😢",
        "👍🤕",
        "спасибо",
        "thanks спина болит",
        "done",
        "ok " * 13,
    ],
)
def test_what_may_be_an_answer_or_more_is_no_courtesy(text):
    assert not is_courtesy(text)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Thanks Mara!", Courtesy.THANKS),
        ("thanks, felt great", Courtesy.CHEER),
        ("hola Mara", Courtesy.GREETING),
        ("ok", Courtesy.HEARD),
    ],
)
def test_small_talk_has_a_kind_and_may_hold_the_coach_s_name(text, kind):
    assert courtesy_of(text, coach="Mara") is kind


def test_done_is_small_talk_only_when_nothing_is_left_to_tell():
    assert courtesy_of("done") is None
    assert courtesy_of("done 👍", has_finished=True) is Courtesy.HEARD
