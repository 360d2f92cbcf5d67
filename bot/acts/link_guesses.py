"""Wrong links from one chat: after five within an hour it is not answered for a while."""

from datetime import timedelta

from bot.turn import Turn
from storage.queries import due

GUESSES_MOST = 5  # [wrong links] ch: a person with a torn link tries two or three times
SPAN = timedelta(hours=1)  # [h] ch


def is_shut_out(turn: Turn, chat_id: int) -> bool:
    """Tell whether the chat has guessed too often within the last hour."""
    return _recent(turn, chat_id) >= GUESSES_MOST


def note_wrong(turn: Turn, chat_id: int) -> bool:
    """Remember a wrong link; True when it was the last one that is answered."""
    ages = {name: due.mark(turn.tx, name) for name in _names(chat_id)}
    oldest = min(ages, key=lambda name: (ages[name] is not None, ages[name] or turn.now, name))
    due.set_mark(turn.tx, oldest, at=turn.now)
    turn.tx.flush()
    return is_shut_out(turn, chat_id)


def _recent(turn: Turn, chat_id: int) -> int:
    marks = (due.mark(turn.tx, name) for name in _names(chat_id))
    return sum(at is not None and turn.now - at < SPAN for at in marks)


def _names(chat_id: int) -> list[str]:
    # A chat has as many marks as it has tries: the oldest is overwritten, so they never pile up.
    return [f"wrong_link.{chat_id}.{n}" for n in range(GUESSES_MOST)]
