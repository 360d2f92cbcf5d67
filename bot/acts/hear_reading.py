"""What an athlete wrote, read and acted on: recorded, asked, corrected, or passed on."""

from bot.acts import (
    cant_today,
    change_result,
    choose_reading,
    hear_pain,
    pass_on,
    record_results,
)
from bot.acts.item_facts import known_session, sent_items
from bot.acts.other_training import record_activities
from bot.acts.session_card import next_step
from bot.acts.show_plan import send_early
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.reading.known import Expects, ItemResult, OpenQuestion, ReadingContext, Reserve, SetResult
from bot.reading.red_flags import RedFlagReading
from bot.reading.reply import read
from bot.reading.values import (
    Asked,
    CantToday,
    Correction,
    NotUnderstood,
    OtherTraining,
    PassedOn,
    Reading,
    Recorded,
    SessionNow,
    Told,
)
from bot.turn import Turn
from bot.wording import asking
from scheduler.calendar.wall_time import local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.training.values import ReserveAnswer
from storage import buttons
from storage.queries import training
from storage.records import wire
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord, SessionRecord

SESSIONS_REMEMBERED = 3  # [sessions] ch: further back a number without a day is not meant
EXPECTED = {
    "reserve": Expects.RESERVE,
    "effort": Expects.EFFORT,
    "pain": Expects.PAIN,
    "pain.score": Expects.PAIN,
    "morning": Expects.PAIN,
}


def hear(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, *, flags: RedFlagReading
) -> Outcome:
    """Read a message in its context, and act on every part of it."""
    is_flagged = bool(flags.candidates)
    sessions = training.open_sessions(turn.tx, person.id)[:SESSIONS_REMEMBERED]
    session = _edited_session(turn, event) or (sessions[0] if sessions else None)
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    reading = read(event.text, _context(turn, person, sessions, session, question))
    if flags.is_private:
        # Figures and pain are kept; the words go nowhere from here.
        event = event.model_copy(update={"text": ""})
    outcome = _act(turn, person, athlete, event, reading, session, is_flagged=is_flagged)
    hurt = hear_pain.hear(turn, person, athlete, reading.pains, event, question)
    if reading.activities and not isinstance(reading, OtherTraining):
        record_activities(turn, person, reading.activities)
    return Outcome.ANSWERED if hurt and outcome is Outcome.PASSED_ON else outcome


def pass_on_words(turn: Turn, person: Person, event: Wrote) -> Outcome:
    """Nothing is asked of this athlete now: what they write is for the coach."""
    return pass_on.words(turn, person, event)


def _context(
    turn: Turn,
    person: Person,
    sessions: tuple[SessionRecord, ...],
    session: SessionRecord | None,
    question: wire.OpenQuestion | None,
) -> ReadingContext:
    others = tuple(one for one in sessions if session is None or one.id != session.id)
    subject = question.subject if question else {}
    item_ref = str(subject["item"]) if "item" in subject else None
    expects = EXPECTED.get(question.kind) if question else None
    return ReadingContext(
        session=known_session(turn, session) if session else None,
        others=tuple(known_session(turn, other) for other in others),
        asked_ref=_asked_ref(question, session),
        question=OpenQuestion(expects=expects, item_ref=item_ref) if expects else None,
        last=_last_results(session),
        language=person.language,
        local_date=local_date_of(turn.now, zone_named(person.zone)),
    )


def _asked_ref(question: wire.OpenQuestion | None, session: SessionRecord | None) -> str | None:
    """Name the item that bare numbers are for: the one asked about, or the only one left."""
    if question is not None and question.kind == "item":
        return str(question.subject["item"])
    left = [item for item in sent_items(session) if not item.is_reported] if session else []
    return str(left[0].id) if len(left) == 1 else None


def _last_results(session: SessionRecord | None) -> tuple[ItemResult, ...]:
    """Return what the latest message recorded, the latest item last."""
    if session is None:
        return ()
    reported = [item for item in sent_items(session) if item.sets]
    reported.sort(key=lambda item: max(one.reported_at for one in item.sets))
    if not reported:
        return ()
    latest = max(one.reported_at for one in reported[-1].sets)
    return tuple(
        _as_result(item) for item in reported if max(one.reported_at for one in item.sets) == latest
    )


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


def _edited_session(turn: Turn, event: Wrote) -> SessionRecord | None:
    if not event.is_edit:
        return None
    items = training.items_of_message(turn.tx, chat_id=event.chat_id, message_id=event.message_id)
    if not items:
        return None
    return training.session(turn.tx, training.item(turn.tx, items[0])[1])


def _act(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    event: Wrote,
    reading: Reading,
    session: SessionRecord | None,
    *,
    is_flagged: bool,
) -> Outcome:
    match reading:
        case Recorded():
            return _record(turn, person, event, reading, is_flagged=is_flagged)
        case Told():
            return _told(turn, person, event, reading, session, is_flagged=is_flagged)
        case Asked():
            return choose_reading.ask(turn, person, reading, event)
        case Correction():
            return change_result.correct(turn, person, reading, session, event)
        case CantToday():
            return cant_today.said(turn, person, reading, session)
        case SessionNow():
            return send_early(turn, person, athlete)
        case OtherTraining():
            return _other_training(turn, person, reading)
        case NotUnderstood() | PassedOn():
            return _nothing_to_record(turn, person, event, reading, is_flagged=is_flagged)


def _other_training(turn: Turn, person: Person, reading: OtherTraining) -> Outcome:
    record_activities(turn, person, reading.activities)
    turn.say(person, asking.activities_noted(turn.tongue(person), reading.activities))
    return Outcome.OTHER_TRAINING


def _record(
    turn: Turn, person: Person, event: Wrote, reading: Recorded, *, is_flagged: bool
) -> Outcome:
    if event.is_edit:
        for item_id in training.items_of_message(
            turn.tx, chat_id=event.chat_id, message_id=event.message_id
        ):
            training.take_back_sets(turn.tx, item_id, at=turn.now)
    record_results.record(
        turn,
        person,
        int(reading.session_ref),
        reading.items,
        assumptions=reading.assumptions,
        effort=reading.effort,
        message_id=event.message_id,
    )
    if reading.asks_coach and not is_flagged:
        pass_on.words(turn, person, event)
    return Outcome.CORRECTED if event.is_edit else Outcome.RECORDED


def _told(
    turn: Turn,
    person: Person,
    event: Wrote,
    told: Told,
    session: SessionRecord | None,
    *,
    is_flagged: bool,
) -> Outcome:
    """Take effort or reserve said in words; pain is heard by the caller."""
    if session is not None and session.is_open:
        done = False
        if told.effort is not None:
            training.change_session(turn.tx, session.id, effort=round(told.effort))
            done = True
        item = next_step(session).item
        if told.reserve is not None and item is not None:
            answer = ReserveAnswer(left=told.reserve.left, is_at_least=told.reserve.is_at_least)
            training.change_item(turn.tx, item.id, reserve=answer, is_reserve_asked=True)
            done = True
        if done:
            record_results.go_on(turn, person, session.id)
            return Outcome.ANSWERED
    if told.pains or is_flagged:
        return Outcome.ANSWERED
    return pass_on.words(turn, person, event)


def _nothing_to_record(
    turn: Turn,
    person: Person,
    event: Wrote,
    reading: NotUnderstood | PassedOn,
    *,
    is_flagged: bool,
) -> Outcome:
    """Pain and red flags were heard already; anything else is explained or passed on."""
    if is_flagged or reading.pains:
        return Outcome.ANSWERED
    if isinstance(reading, PassedOn) or not reading.example:
        return pass_on.words(turn, person, event)
    turn.say(person, asking.not_understood(turn.tongue(person), reading.example))
    return Outcome.NOT_UNDERSTOOD
