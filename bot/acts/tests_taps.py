"""Taps on a day of tests: begin, a figure, that hurt, skip, another day, what was left, change."""

from collections.abc import Mapping
from typing import Any

from bot.acts import (
    close_session,
    guided_tests,
    pain_ask,
    record_results,
    tests_card,
    tests_record,
)
from bot.acts.still_open import still_open_session
from bot.acts.tests_course import Course, course_of, tests_of_session
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import guided_tests as words
from bot.wording import tests_found
from scheduler.pain.values import Side
from scheduler.training.baseline_course import arms_open
from scheduler.training.baseline_values import BaselineTest, Ended
from scheduler.training.values import ReserveAnswer
from storage import buttons
from storage.queries import care, people, training
from storage.records.people import Athlete, Person
from storage.records.training import OffBecause, SessionRecord

Arguments = Mapping[str, Any]


def start(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """Begin, or go on where it stopped."""
    found = _session(turn, person, arguments)
    if found is None:
        return Outcome.STALE_TAP
    record_results.go_on(turn, person, found.id)
    return Outcome.ANSWERED


def value(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A figure was tapped."""
    about = _about(turn, person, arguments)
    if about is None:
        return Outcome.STALE_TAP
    athlete, session, course, test = about
    side = Side(arguments["side"])
    if side not in arms_open(test, course.attempts):
        return _behind(turn, person)
    tests_record.record(
        turn,
        athlete,
        session,
        test,
        side=side,
        ended=Ended.DONE,
        value=float(arguments["value"]),
        message_id=event.message_id,
    )
    go_on(turn, person, session.id, edit=event.message_id, done_key=test.key)
    return Outcome.RECORDED


def hurt(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """It hurt: this test is over, and the place is asked for."""
    about = _about(turn, person, arguments)
    if about is None:
        return Outcome.STALE_TAP
    athlete, session, course, test = about
    if not arms_open(test, course.attempts):
        pain_ask.ask_where(turn, person, session_id=session.id)
        return Outcome.SAFETY
    side = Side(arguments["side"])
    tests_record.record(
        turn, athlete, session, test, side=side, ended=Ended.HURT, message_id=event.message_id
    )
    told = tests_card.told_line(turn, person, athlete, session, test.key)
    turn.answer_tap(person, event.message_id, told)
    pain_ask.ask_where(turn, person, session_id=session.id)
    return Outcome.SAFETY


def skip(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """Leave a test out: why, by a tap."""
    about = _about(turn, person, arguments)
    if about is None:
        return Outcome.STALE_TAP
    athlete, session, course, test = about
    if not arms_open(test, course.attempts):
        return _behind(turn, person)
    tongue = turn.tongue(person)
    tests = tests_of_session(turn, athlete, course, session)
    taps = [
        [Tap(words.reason_label(tongue, why), "tests.skipped", {**arguments, "why": why})]
        for why in words.REASONS
    ]
    text = words.why_skip(tongue, tests_card.facts_of(turn, tests, test))
    if event.message_id is None:
        turn.say(person, text, taps=taps)
    else:
        turn.change(person, event.message_id, text, taps=taps)
    return Outcome.ANSWERED


def skipped(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """The reason was tapped; what could not be done at all is a result of nothing."""
    about = _about(turn, person, arguments)
    if about is None:
        return Outcome.STALE_TAP
    athlete, session, course, test = about
    why = str(arguments["why"])
    could_not = why == "could_not"
    for side in arms_open(test, course.attempts):
        tests_record.record(
            turn,
            athlete,
            session,
            test,
            side=side,
            ended=Ended.DONE if could_not else Ended.SKIPPED,
            value=0.0 if could_not else None,
            why=why,
            message_id=event.message_id,
        )
    go_on(turn, person, session.id, edit=event.message_id, done_key=test.key)
    return Outcome.RECORDED


def stop(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """The rest on another day: what was done stands."""
    session = _session(turn, person, arguments)
    if session is None:
        return Outcome.STALE_TAP
    stop_today(turn, person, session)
    return Outcome.ANSWERED


def stop_today(turn: Turn, person: Person, session: SessionRecord) -> None:
    """Ask no further test today; without a result the day is called off."""
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="tests.stopped",
        athlete_id=person.id,
        actor_id=person.id,
        before={"session": session.id},
    )
    if session.has_results:
        because = OffBecause.TESTS_STOPPED
        training.change_session(turn.tx, session.id, called_off_because=because)
        record_results.go_on(turn, person, session.id)
        return
    close_session.call_off(turn, session, OffBecause.TESTS_STOPPED)
    if person.chat_id is not None:
        buttons.close_question(turn.tx, person.chat_id)
    athlete = people.athlete(turn.tx, person.id)
    on = guided_tests.next_day(turn, athlete, after=session.on) if athlete is not None else None
    turn.say(person, tests_found.stopped(turn.tongue(person), next_on=on))


def left(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """What was left when the set ended; a second tap corrects the first."""
    about = _about(turn, person, arguments)
    if about is None:
        return Outcome.STALE_TAP
    _, session, course, test = about
    answer = None
    if "left" in arguments:
        answer = ReserveAnswer(left=arguments["left"], is_at_least=arguments["top"])
    tests_record.set_reserve(turn, course, test.key, answer)
    go_on(turn, person, session.id, edit=event.message_id, done_key=test.key)
    return Outcome.ANSWERED


def change(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A figure was wrong: ask this test again, on its own card."""
    about = _about(turn, person, arguments)
    if about is None:
        return Outcome.STALE_TAP
    _, session, course, test = about
    if any(one.ended is Ended.HURT for one in course.of(test.key)):
        turn.say(person, words.stays_closed(turn.tongue(person)))
        return Outcome.STALE_TAP
    tests_record.take_back(turn, course, test.key)
    if session.called_off_because is OffBecause.TESTS_STOPPED:
        training.change_session(turn.tx, session.id, called_off_because=None)
    tests_card.ask_again(turn, person, session, test, message_id=event.message_id)
    return Outcome.ANSWERED


def go_on(
    turn: Turn, person: Person, session_id: int, *, edit: int | None, done_key: str | None
) -> None:
    """Ask what is next of the tests; behind the last one the session's own questions."""
    session = training.session(turn.tx, session_id)
    if tests_card.ask(turn, person, session, edit_message_id=edit, done_key=done_key):
        return
    if not session.has_results:
        _nothing_done(turn, person, session)
        return
    record_results.go_on(turn, person, session_id)


def _nothing_done(turn: Turn, person: Person, session: SessionRecord) -> None:
    """Every test of the day was left out: there was no training to ask about."""
    close_session.call_off(turn, session, OffBecause.TESTS_STOPPED)
    if person.chat_id is not None:
        buttons.close_question(turn.tx, person.chat_id)
    athlete = people.athlete(turn.tx, person.id)
    if athlete is not None:
        guided_tests.after_session(turn, person, athlete, session)


def _session(turn: Turn, person: Person, arguments: Arguments) -> SessionRecord | None:
    return still_open_session(turn, person, int(arguments["session"]))


def _about(
    turn: Turn, person: Person, arguments: Arguments
) -> tuple[Athlete, SessionRecord, Course, BaselineTest] | None:
    """Look at the facts again: the session, the round and the test must still stand."""
    session = _session(turn, person, arguments)
    athlete = people.athlete(turn.tx, person.id)
    course = course_of(turn, person.id)
    if session is None or athlete is None:
        return None
    test = course.test(str(arguments["key"])) if course is not None else None
    if course is None or test is None:
        _behind(turn, person)
        return None
    return athlete, session, course, test


def _behind(turn: Turn, person: Person) -> Outcome:
    turn.say(person, words.no_test_now(turn.tongue(person)))
    return Outcome.STALE_TAP


TAPS = {
    "tests.start": start,
    "tests.value": value,
    "tests.hurt": hurt,
    "tests.skip": skip,
    "tests.skipped": skipped,
    "tests.stop": stop,
    "tests.left": left,
    "tests.change": change,
}
