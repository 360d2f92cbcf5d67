"""What an athlete wrote, read and acted on: recorded, asked, corrected, or passed on."""

from bot.acts import (
    cant_today,
    change_result,
    choose_reading,
    hear_pain,
    pass_on,
    record_results,
    remarks,
    tests_talk,
)
from bot.acts.other_training import record_activities
from bot.acts.reading_context import AtHand, at_hand, read_at_hand
from bot.acts.session_card import Step, next_step
from bot.acts.show_plan import send_early
from bot.events import SentMedia, Wrote
from bot.outcomes import Outcome
from bot.reading.courtesies import is_courtesy
from bot.reading.red_flags import RedFlagReading
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
from scheduler.training.values import ReserveAnswer
from storage import buttons
from storage.queries import training
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord


def hear(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, *, flags: RedFlagReading
) -> Outcome:
    """Read a message in its context, and act on every part of it."""
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    if event.is_edit:
        question = None  # it says anew what it said before, and answers nothing asked since
    found = at_hand(turn, person, event, question)
    tested = _on_test_day(turn, person, athlete, event, found, flags)
    if tested is not None:
        return tested
    reading = read_at_hand(turn, person, event.text, found, question)
    reading = reading.model_copy(update={"pains": hear_pain.meant(reading, flags, event.text)})
    if flags.is_private:
        # Figures and pain are kept; the words go nowhere from here.
        event = event.model_copy(update={"text": ""})
    if flags.candidates and not isinstance(reading, Recorded | CantToday):
        outcome = Outcome.SAFETY  # nothing else is asked or said beside a red flag
    else:
        outcome = _act(turn, person, athlete, event, reading, found, flags)
    hurt = hear_pain.hear(
        turn, person, athlete, reading.pains, event, question, may_ask=not flags.candidates
    )
    if reading.activities and not isinstance(reading, OtherTraining):
        record_activities(turn, person, reading.activities)
    return Outcome.ANSWERED if hurt and outcome is Outcome.PASSED_ON else outcome


def _on_test_day(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    event: Wrote,
    found: AtHand,
    flags: RedFlagReading,
) -> Outcome | None:
    """Let an open test hear first; None on any other day, and for what is no answer to it."""
    if found.session is None or not found.session.is_test_day:
        return None
    return tests_talk.hear(turn, person, athlete, event, found.session, flags=flags)


def hear_caption(
    turn: Turn, person: Person, athlete: Athlete, event: SentMedia, *, flags: RedFlagReading
) -> Outcome | None:
    """Act on results and pain that stand under a clip; None where the words were none.

    The clip itself, and the words under it, were passed on already.
    """
    if not event.caption:
        return None
    said = Wrote(
        chat_id=event.chat_id, at=event.at, message_id=event.message_id, text=event.caption
    )
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    found = at_hand(turn, person, said, question)
    if found.session is not None and found.session.is_test_day:
        return _on_test_day(turn, person, athlete, said, found, flags)
    reading = read_at_hand(turn, person, said.text, found, question)
    if isinstance(reading, PassedOn | NotUnderstood) and not reading.pains:
        return None
    return hear(turn, person, athlete, said, flags=flags)


def pass_on_words(turn: Turn, person: Person, event: Wrote) -> Outcome:
    """Nothing is asked of this athlete now: what they write is for the coach."""
    return pass_on.words(turn, person, event)


def _act(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    event: Wrote,
    reading: Reading,
    found: AtHand,
    flags: RedFlagReading,
) -> Outcome:
    session = found.session
    # What was answered as a question of medicine is not passed on a second time.
    is_flagged = bool(flags.candidates) or flags.asks_about_medicine
    match reading:
        case Recorded():
            return _record(turn, person, event, reading, found, flags)
        case Told():
            return _told(turn, person, event, reading, session, is_flagged=is_flagged)
        case Asked():
            if session is not None and not is_flagged:
                remarks.keep(turn, person, event, reading, on=session.on)
            return choose_reading.ask(turn, person, reading, event, found)
        case Correction():
            return change_result.correct(turn, person, reading, found.answered)
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
    turn: Turn,
    person: Person,
    event: Wrote,
    reading: Recorded,
    found: AtHand,
    flags: RedFlagReading,
) -> Outcome:
    if event.is_edit:
        named = {item.ref for item in reading.items}
        for item_id in training.items_of_message(
            turn.tx, chat_id=event.chat_id, message_id=event.message_id
        ):
            training.take_back_sets(turn.tx, item_id, at=turn.now)
            if str(item_id) not in named:
                training.change_item(turn.tx, item_id, reserve=None, is_reserve_asked=False)
    items = reading.items
    if len(items) > 1:
        items = choose_reading.without_asked(turn, person, items) or items
    record_results.record(
        turn,
        person,
        int(reading.session_ref),
        items,
        assumptions=reading.assumptions,
        effort=reading.effort,
        message_id=event.message_id,
        is_quiet=bool(flags.candidates),
        known=None if event.is_edit else found.session_with(reading.session_ref),
    )
    if reading.asks_coach and not flags.candidates and not flags.asks_about_medicine:
        pass_on.words(turn, person, event)
    elif not flags.candidates and not flags.asks_about_medicine:
        remarks.keep(turn, person, event, reading, on=reading.day)
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
        ask = next_step(session)
        if told.reserve is not None and ask.step is Step.RESERVE and ask.item is not None:
            answer = ReserveAnswer(left=told.reserve.left, is_at_least=told.reserve.is_at_least)
            training.change_item(turn.tx, ask.item.id, reserve=answer, is_reserve_asked=True)
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
    if isinstance(reading, PassedOn) and reading.language is not None and not is_flagged:
        return pass_on.words(turn, person, event, language=reading.language)
    if is_flagged or reading.pains:
        return Outcome.ANSWERED
    if event.is_edit and training.items_of_message(
        turn.tx, chat_id=event.chat_id, message_id=event.message_id
    ):
        turn.say(person, asking.edit_kept(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    if is_courtesy(event.text):
        return pass_on.words(turn, person, event)
    if isinstance(reading, PassedOn) or not reading.example:
        return pass_on.words(turn, person, event)
    turn.say(person, asking.not_understood(turn.tongue(person), reading.example))
    return Outcome.NOT_UNDERSTOOD
