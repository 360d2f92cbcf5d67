"""What the made-up Spanish reader knows is what the bot says: a reworded text is found here."""

from pathlib import Path

import pytest
from babel.messages.pofile import read_po

from demo_scenario.spanish_screen import BUTTONS, TEXTS

CATALOGUE = Path(__file__).parents[2] / "bot" / "wording" / "catalogue" / "messages_es.po"
MADE_OF_PARTS = {"banda ligera", "banda media", "banda fuerte"}
"""A template with the band's name in it."""


@pytest.fixture(scope="module")
def said() -> str:
    with CATALOGUE.open("rb") as file:
        found = [one.string for one in read_po(file)]
    return "\n".join(
        text for one in found for text in ([one] if isinstance(one, str) else one or ())
    )


@pytest.mark.parametrize("known", sorted({*TEXTS, *BUTTONS} - MADE_OF_PARTS))
def test_the_bot_says_what_the_spanish_reader_looks_for(known: str, said: str) -> None:
    assert known in said
