"""A wish to stop that says nothing else, in both languages."""

import pytest

from bot.reading.stop_wishes import is_stop_wish


@pytest.mark.parametrize(
    "text",
    [
        *("I want to stop", "stop", "I quit", "i'd like to leave", "how can I leave?"),
        *("I don't want to continue", "quiero dejarlo", "quiero darme de baja", "lo dejo"),
        *("no quiero seguir", "quiero parar de entrenar", "¿cómo puedo cancelar?"),
    ],
)
def test_wish_to_stop_is_read(text):
    assert is_stop_wish(text)


@pytest.mark.parametrize(
    "text",
    [
        *("I want to stop living", "i want to stop everything", "quiero dejarlo todo"),
        *("stopped at 38", "I want to stop because my wrist hurts", "para mañana", "no stop"),
        *("I want to stop, 45 40 38", "quiero dejar de vivir"),
    ],
)
def test_wish_with_more_in_it_is_for_a_person(text):
    assert not is_stop_wish(text)
