"""What somebody's next text answers: one open question a chat."""

from collections.abc import Mapping
from typing import Any

from bot.turn import Turn
from storage import buttons
from storage.records.people import Person


def open_question(turn: Turn, person: Person, kind: str, subject: Mapping[str, Any]) -> None:
    """Let the next text be the answer, as well as a tap."""
    if person.chat_id is not None:
        buttons.ask(
            turn.tx,
            chat_id=person.chat_id,
            person_id=person.id,
            kind=kind,
            subject=dict(subject),
            now=turn.now,
        )
