"""A question how a movement is done: only where the message is that question alone."""

import pytest

from bot.reading.how_questions import movement_asked


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("how do I do the push-up hold", "push-up hold"),
        ("What is a scapular pull?", "scapular pull"),
        ("como se hace la plancha", "plancha"),
        ("¿Qué es la suspensión en barra?", "suspension en barra"),
        ("hey, how does a wall slide work?", "wall slide"),
        ("explain the wall slide please", "wall slide"),
    ],
)
def test_name_of_the_movement_is_found(text, name):
    assert movement_asked(text) == name


@pytest.mark.parametrize(
    "text",
    [
        *("what's up", "how do I do the hang? my wrist hurts", "when do I do the push-up hold"),
        *("45 40 38", "the push-up hold was hard", "how do I do it. it hurts"),
    ],
)
def test_anything_else_is_no_such_question(text):
    assert movement_asked(text) is None
