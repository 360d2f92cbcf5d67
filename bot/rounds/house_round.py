"""The house's own round: forgetting what need not be kept, and owning up to an outage."""

from collections.abc import Callable, Mapping, Sequence
from datetime import datetime, timedelta

from bot.acts.coach_dues import CoachDue
from bot.turn import Turn
from bot.wording import outage
from bot.wording.outage import LateFacts
from scheduler.calendar.lateness import UNNOTICED
from scheduler.calendar.values import DueKind
from storage import buttons, inbox, outbox
from storage.queries import due, leaving, people, retention
from storage.records.people import Person
from storage.records.wire import MessageKind

FORGET_EVERY = timedelta(hours=24)  # [h] ch: once a day is enough for what is kept seven days
FORGOT = "forgot"
SENT = "sent"
COACHS_DUES = frozenset({DueKind.DIGEST.value, DueKind.ALERT.value})
RAW_EMPTY_BEFORE, TEXTS_EMPTY_BEFORE = "raw_empty_before", "texts_empty_before"


def sweep(turn: Turn) -> None:
    """Empty what an erasure left in other people's chats, where anything may be left."""
    if leaving.is_sweeping_due(turn.tx):
        leaving.sweep(turn.tx, at=turn.now)


def forget(turn: Turn) -> None:
    """Forget what need not be kept, once a day."""
    last = due.mark(turn.tx, FORGOT)
    if last is None or turn.now - last >= FORGET_EVERY:
        _forget(turn)
        due.set_mark(turn.tx, FORGOT, at=turn.now)


STEPS: Mapping[str, Callable[[Turn], None]] = {"sweep": sweep, "forget": forget}
"""What the house owes nobody in particular, each by the reference of its fault and by itself."""


def _forget(turn: Turn) -> None:
    """Empty what need not be kept, and remember how far that is done: not all, every day."""
    tx, now, kept = turn.tx, turn.now, inbox.RAW_KEPT
    inbox.forget_raw(tx, now=now, since=due.mark(tx, RAW_EMPTY_BEFORE))
    due.set_mark(tx, RAW_EMPTY_BEFORE, at=inbox.forgotten_until(tx, now=now))
    buttons.forget_buttons(tx, now=now)
    outbox.forget_texts(tx, now=now, kept=kept, since=due.mark(tx, TEXTS_EMPTY_BEFORE))
    due.set_mark(tx, TEXTS_EMPTY_BEFORE, at=outbox.forgotten_until(tx, now=now, kept=kept))
    retention.forget_readings(tx, now=now)
    retention.forget_remarks(tx, now=now)
    retention.forget_captions(tx, now=now)
    retention.forget_drafts(tx, now=now)
    retention.forget_file_drafts(tx, now=now)
    retention.forget_words(tx, now=now)


def tell_no_copy(turn: Turn, why: str) -> None:
    """Tell every owner that today's copy of the database could not be made."""
    for person in people.owners(turn.tx):
        text = outage.no_copy(turn.tongue(person), why=why)
        turn.say(person, text, kind=MessageKind.NOTICE)


def ids_to_tell(turn: Turn) -> tuple[int, ...]:
    """Return who hears of an outage: every owner and every coach, each once."""
    told = (*people.owners(turn.tx), *people.coaches(turn.tx))
    return tuple(dict.fromkeys(person.id for person in told))


def tell_outage(turn: Turn, person_id: int, since: datetime, *, began_at: datetime) -> None:
    """Tell one of them from when to when nothing was sent or read, and what was late.

    An owner hears of everybody, a coach of the own athletes and of what was due to themselves.
    Of an outage each hears once, also where the round that told it did not come to its end.
    """
    is_news = due.take(
        turn.tx,
        person_id=person_id,
        kind=CoachDue.OUTAGE_TOLD,
        subject=since.isoformat(),
        due_at=began_at,
        now=turn.now,
    )
    if not is_news:
        return
    person = people.person(turn.tx, person_id)
    rows = due.late(turn.tx, handled_from=began_at, due_before=began_at - UNNOTICED)
    if not person.is_owner:
        team = {one.id for one, _ in people.athletes_of(turn.tx, person_id)} | {person_id}
        rows = tuple(row for row in rows if row[0] in team)
    _report(turn, person, rows, since=since, until=began_at)


def _report(
    turn: Turn,
    person: Person,
    rows: Sequence[tuple[int, str, str]],
    *,
    since: datetime,
    until: datetime,
) -> None:
    found: dict[tuple[str, bool], list[str]] = {}
    for person_id, kind, outcome in rows:
        if not _is_practice(turn, person_id, kind):
            name = people.person(turn.tx, person_id).name
            found.setdefault((kind, outcome == SENT), []).append(name)
    late = [LateFacts(kind, is_sent, tuple(names)) for (kind, is_sent), names in found.items()]
    text = outage.report(turn.tongue(person), person.zone, since=since, until=until, late=late)
    turn.say(person, text, kind=MessageKind.NOTICE)


def _is_practice(turn: Turn, person_id: int, kind: str) -> bool:
    """Tell whether something was due to a coach's second self, who is counted nowhere."""
    athlete = people.athlete(turn.tx, person_id)
    return athlete is not None and athlete.is_practice and kind not in COACHS_DUES
