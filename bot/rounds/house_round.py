"""The house's own round: forgetting what need not be kept, and owning up to an outage."""

from datetime import datetime, timedelta

from bot.turn import Turn
from bot.wording import outage
from storage import buttons, inbox, outbox
from storage.queries import due, people
from storage.records.wire import MessageKind

FORGET_EVERY = timedelta(hours=24)  # [h] ch: once a day is enough for what is kept seven days
FORGOT = "forgot"


def go(turn: Turn) -> None:
    """Do what the house owes nobody in particular."""
    last = due.mark(turn.tx, FORGOT)
    if last is None or turn.now - last >= FORGET_EVERY:
        inbox.forget_raw(turn.tx, now=turn.now)
        buttons.forget_buttons(turn.tx, now=turn.now)
        outbox.forget_texts(turn.tx, now=turn.now, kept=inbox.RAW_KEPT)
        due.set_mark(turn.tx, FORGOT, at=turn.now)


def tell_outage(turn: Turn, *, since: datetime) -> None:
    """Tell every coach and owner from when to when nothing was sent or read."""
    told = {person.id: person for person in (*people.coaches(turn.tx), *people.owners(turn.tx))}
    for person in told.values():
        text = outage.stood_still(turn.tongue(person), person.zone, since=since, until=turn.now)
        turn.say(person, text, kind=MessageKind.NOTICE)
