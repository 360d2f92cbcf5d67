"""What the reader may look at: the sessions at hand, the open question, what was answered last."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.acts.checklist import local_today
from bot.acts.item_facts import known_session, sent_items
from bot.acts.session_card import reported_at
from bot.acts.still_open import ANSWERS_TAKEN
from bot.events import Wrote
from bot.reading.days import find_day
from bot.reading.known import Expects, ItemResult, OpenQuestion, ReadingContext, Reserve, SetResult
from bot.reading.marking import tokenise
from bot.reading.reply import read
from bot.reading.values import Asked, Correction, Reading
from bot.turn import Turn
from storage.queries import rounds, training
from storage.records import wire
from storage.records.people import Person
from storage.records.training import ItemRecord, SessionOutline, SessionRecord, SessionState

OPEN_MOST = 3  # [sessions] ch: further back a number without a day is not meant
MISSED_MEANT = timedelta(days=2)  # [d] ch: results for a missed day need no name so long
EXPECTED = {
    "reserve": Expects.RESERVE,
    "effort": Expects.EFFORT,
    "pain": Expects.PAIN,
    "pain.score": Expects.PAIN,
    "pain.place": Expects.PAIN,
    "morning": Expects.PAIN,
}


@dataclass(frozen=True)
class AtHand:
    """The sessions that a message may be about.

    ``session`` is the one that bare numbers are for, ``others`` those that a name or a day may
    mean, ``answered`` the one with the latest answer, which a correction is about.
    """

    session: SessionRecord | None
    others: tuple[SessionRecord, ...]
    answered: SessionRecord | None

    @property
    def all(self) -> tuple[SessionRecord, ...]:
        """Every session at hand, each once."""
        found = (self.session, *self.others, self.answered)
        return tuple({one.id: one for one in found if one is not None}.values())

    def session_with(self, ref: str) -> SessionRecord | None:
        """Return the session that a reading is about."""
        return next((one for one in self.all if str(one.id) == ref), None)


def at_hand(turn: Turn, person: Person, event: Wrote, question: wire.OpenQuestion | None) -> AtHand:
    """Find the sessions that a message may be about."""
    open_now = training.open_sessions(turn.tx, person.id)[:OPEN_MOST]
    past = _past(turn, person)
    edited = _edited(turn, event)
    asked = _asked_about(turn, question)
    session = edited or asked or (open_now[0] if open_now else None)
    today = local_today(turn, person)
    blank = ReadingContext(language=person.language, local_date=today)
    named, _ = find_day(tokenise(event.text, blank), today)
    meant = [
        training.session(turn.tx, one.id)
        for one in past
        if one.on == named or (one.state is SessionState.MISSED and one.on >= today - MISSED_MEANT)
    ]
    others = tuple(one for one in (*open_now, *meant) if session is None or one.id != session.id)
    answered = edited or _answered(turn, (*open_now, *others), past)
    return AtHand(session=session, others=others, answered=answered)


def _answered(
    turn: Turn, read: Sequence[SessionRecord], past: Sequence[SessionOutline]
) -> SessionRecord | None:
    """Return the session with the latest answer, among what is open and what is past."""
    whole = {one.id: one for one in read}
    answers = {one.id: _answered_at(one) for one in read}
    answers |= {one.id: one.answered_at for one in past}
    told = {session_id: at for session_id, at in answers.items() if at is not None}
    if not told:
        return None
    latest = max(told, key=lambda session_id: told[session_id])
    return whole.get(latest) or training.session(turn.tx, latest)


def _answered_at(session: SessionRecord) -> datetime | None:
    return max((reported_at(item) for item in latest_items(session)), default=None)


def read_at_hand(
    turn: Turn,
    person: Person,
    text: str,
    found: AtHand,
    question: wire.OpenQuestion | None,
) -> Reading:
    """Read a message; a correction may be about a session that is closed, results may not."""
    usual = tuple(one for one in (found.session, *found.others) if one is not None)
    if found.answered is not None and all(one.id != found.answered.id for one in usual):
        context = _context(turn, person, found, (*found.others, found.answered), question)
        reading = read(text, context)
        if isinstance(reading, Correction) or _asks_which_correction(reading):
            return reading
    return read(text, _context(turn, person, found, found.others, question))


def _asks_which_correction(reading: Reading) -> bool:
    return isinstance(reading, Asked) and all(isinstance(o, Correction) for o in reading.options)


def _past(turn: Turn, person: Person) -> list[SessionOutline]:
    """Return what is closed and still takes answers, the latest first, in outline."""
    today = local_today(turn, person)
    sessions = rounds.outlines(turn.tx, person.id, first=today - ANSWERS_TAKEN, last=today)
    closed = {SessionState.TRAINED, SessionState.MISSED}
    return [one for one in reversed(sessions) if one.state in closed and not one.is_open]


def _edited(turn: Turn, event: Wrote) -> SessionRecord | None:
    if not event.is_edit:
        return None
    items = training.items_of_message(turn.tx, chat_id=event.chat_id, message_id=event.message_id)
    if not items:
        return None
    return training.session(turn.tx, training.item(turn.tx, items[0])[1])


def _asked_about(turn: Turn, question: wire.OpenQuestion | None) -> SessionRecord | None:
    """Return the session whose item was asked about: a number to change may be of a past day."""
    if question is None or question.kind != "item":
        return None
    return training.session(turn.tx, int(question.subject["session"]))


def _context(
    turn: Turn,
    person: Person,
    found: AtHand,
    others: Iterable[SessionRecord],
    question: wire.OpenQuestion | None,
) -> ReadingContext:
    subject = question.subject if question else {}
    item_ref = str(subject["item"]) if "item" in subject else None
    expects = EXPECTED.get(question.kind) if question else None
    known = {one.id for one in others} | ({found.session.id} if found.session else set())
    has_last = found.answered is not None and found.answered.id in known
    tongue = turn.tongue(person)
    return ReadingContext(
        session=known_session(turn, tongue, found.session) if found.session else None,
        others=tuple(known_session(turn, tongue, other) for other in others),
        asked_ref=_asked_ref(question, found.session),
        question=OpenQuestion(expects=expects, item_ref=item_ref) if expects else None,
        last=_last_results(found.answered) if has_last else (),
        earlier=_earlier_results(found.answered) if has_last else (),
        decimal_mark="," if tongue.decimal_mark == "," else ".",
        unit=tongue.units,
        language=person.language,
        local_date=local_today(turn, person),
    )


def _asked_ref(question: wire.OpenQuestion | None, session: SessionRecord | None) -> str | None:
    """Name the item that bare numbers are for: the one asked about, or the only one left.

    Step by step it is the next one, also while something about it, or another thing, is asked.
    """
    if question is not None and question.kind == "item":
        return str(question.subject["item"])
    left = [item for item in sent_items(session) if not item.is_reported] if session else []
    is_one_meant = len(left) == 1 or (session is not None and session.is_step_by_step)
    return str(left[0].id) if left and is_one_meant else None


def _last_results(session: SessionRecord | None) -> tuple[ItemResult, ...]:
    """Return what the latest message recorded, the latest item last."""
    return tuple(_as_result(item) for item in latest_items(session)) if session else ()


def _earlier_results(session: SessionRecord | None) -> tuple[ItemResult, ...]:
    """Return what the session had before its latest message."""
    if session is None:
        return ()
    latest = {item.id for item in latest_items(session)}
    before = [item for item in sent_items(session) if item.sets and item.id not in latest]
    return tuple(_as_result(item) for item in before)


def latest_items(session: SessionRecord) -> Sequence[ItemRecord]:
    """Return the items that the latest answer was about."""
    reported = [item for item in sent_items(session) if item.sets]
    latest = max((reported_at(item) for item in reported), default=None)
    return [item for item in reported if reported_at(item) == latest]


def _as_result(item: ItemRecord) -> ItemResult:
    return ItemResult(
        ref=str(item.id),
        sets=tuple(
            SetResult(
                number=one.number,
                value=one.done.value,
                side=one.done.side,
                load_kg=one.done.rung.load_kg if one.done.rung else None,
                is_as_planned=one.is_as_planned,
            )
            for one in item.sets
        ),
        reserve=Reserve(left=item.reserve.left, is_at_least=item.reserve.is_at_least)
        if item.reserve
        else None,
    )
