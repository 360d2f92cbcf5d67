"""The house's own round: forgetting what need not be kept, and owning up to an outage."""

from datetime import datetime, timedelta

from bot.acts import take_clip
from bot.turn import Turn
from bot.wording import outage
from storage import buttons, inbox, outbox
from storage.queries import due, people
from storage.records.wire import MessageKind

FORGET_EVERY = timedelta(hours=24)  # [h] ch: once a day is enough for what is kept seven days
FORGOT = "forgot"
RAW_EMPTY_BEFORE, TEXTS_EMPTY_BEFORE = "raw_empty_before", "texts_empty_before"


def go(turn: Turn) -> None:
    """Do what the house owes nobody in particular."""
    last = due.mark(turn.tx, FORGOT)
    if last is None or turn.now - last >= FORGET_EVERY:
        _forget(turn)
        due.set_mark(turn.tx, FORGOT, at=turn.now)


def _forget(turn: Turn) -> None:
    """Empty what need not be kept, and remember how far that is done: not all, every day."""
    tx, now, kept = turn.tx, turn.now, inbox.RAW_KEPT
    inbox.forget_raw(tx, now=now, since=due.mark(tx, RAW_EMPTY_BEFORE))
    due.set_mark(tx, RAW_EMPTY_BEFORE, at=inbox.forgotten_until(tx, now=now))
    buttons.forget_buttons(tx, now=now)
    take_clip.forget(turn, now=now)
    outbox.forget_texts(tx, now=now, kept=kept, since=due.mark(tx, TEXTS_EMPTY_BEFORE))
    due.set_mark(tx, TEXTS_EMPTY_BEFORE, at=outbox.forgotten_until(tx, now=now, kept=kept))


def tell_outage(turn: Turn, *, since: datetime) -> None:
    """Tell every coach and owner from when to when nothing was sent or read."""
    told = {person.id: person for person in (*people.coaches(turn.tx), *people.owners(turn.tx))}
    for person in told.values():
        text = outage.stood_still(turn.tongue(person), person.zone, since=since, until=turn.now)
        turn.say(person, text, kind=MessageKind.NOTICE)
