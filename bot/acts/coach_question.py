"""The one question that is open in a coach's chat, so that the next text finds its meaning."""

from collections.abc import Mapping
from datetime import timedelta
from typing import Any

from bot.acts.open_question import open_question
from bot.turn import Turn
from storage import buttons
from storage.records.people import Person

FRESH = timedelta(hours=1)  # [h] ch: later the coach may have something else in mind, so ask


def ask(turn: Turn, coach: Person, kind: str, about: Mapping[str, Any]) -> None:
    """Make this the question that the coach's next text answers."""
    open_question(turn, coach, kind, about)


def close(turn: Turn, coach: Person) -> None:
    """Nothing is asked of the coach any more."""
    if coach.chat_id is not None:
        buttons.close_question(turn.tx, coach.chat_id)
