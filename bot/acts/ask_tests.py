"""The coach asks for guided tests, with the next session or in a lighter week, or takes it back."""

from collections.abc import Mapping
from typing import Any

from bot.acts import guided_tests, record_results, send_session
from bot.acts.about_athlete import about_tapped, entries
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.acts.tell_athlete import tell
from bot.acts.tests_card import facts_of
from bot.acts.tests_course import Course, course_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_tests as words
from bot.wording import tests_found as athlete_words
from bot.wording.reasons import say_reason
from scheduler.training.baseline_course import arms_open
from scheduler.training.baseline_reasons import BaselineReason
from scheduler.training.baseline_values import BaselinePlan
from storage.queries import care, first_tests, training
from storage.records.first_tests import Begins, RoundEnd, TestsWhy
from storage.records.people import AthleteState, Person

SHOWN_ALREADY = frozenset(
    {
        BaselineReason.TWO_DAYS,
        BaselineReason.TEST_ASKED,
        BaselineReason.HEAVIER_LOAD,
        BaselineReason.LIGHTER_LOAD,
        BaselineReason.NOTHING_TO_TEST,
    }
)
"""Reasons that the list of tests says already."""


def show(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Show what would be tested and when, or how far the tests are that are on."""
    tongue, person = turn.tongue(coach), named.person
    if named.athlete.state is not AthleteState.TRAINING:
        turn.say(coach, words.not_training(tongue, name=person.name), subject=subject_of(person))
        return Outcome.NOT_UNDERSTOOD
    course = course_of(turn, person.id)
    if course is not None:
        return _show_open(turn, coach, named, course)
    planned = guided_tests.plan_for(turn, named.athlete, why=TestsWhy.COACH)
    whys = [say_reason(tongue, one) for one in planned.reasons if one.code not in SHOWN_ALREADY]
    turn.say(
        coach,
        words.would_test(
            tongue,
            name=person.name,
            lines=_lines(turn, coach, planned.value),
            whys=list(dict.fromkeys(whys)),
        ),
        taps=_when_taps(turn, coach, person) if planned.value.days else (),
        subject=subject_of(person),
    )
    return Outcome.COMMAND


def _lines(turn: Turn, coach: Person, plan: BaselinePlan) -> list[str]:
    tongue = turn.tongue(coach)
    return [
        words.test_line(tongue, facts_of(turn, plan.tests, test), day=day.number)
        for day in plan.days
        for test in day.tests
    ]


def _when_taps(turn: Turn, coach: Person, person: Person) -> TapRows:
    tongue, about = turn.tongue(coach), {"athlete": person.id}
    return [
        [Tap(words.next_label(tongue), "coach.tests_ask", {**about, "begins": Begins.NEXT.value})],
        [
            Tap(
                words.lighter_label(tongue),
                "coach.tests_ask",
                {**about, "begins": Begins.LIGHTER.value},
            )
        ],
    ]


def _show_open(turn: Turn, coach: Person, named: Named, course: Course) -> Outcome:
    tongue, person = turn.tongue(coach), named.person
    done = sum(not arms_open(test, course.attempts) for test in course.plan.tests)
    turn.say(
        coach,
        words.is_open(
            tongue,
            name=person.name,
            done=done,
            of=len(course.plan.tests),
            is_in_lighter_week=course.round.begins is Begins.LIGHTER,
        ),
        taps=[[_call_off_tap(turn, coach, person)]],
        subject=subject_of(person),
    )
    return Outcome.COMMAND


def _call_off_tap(turn: Turn, coach: Person, person: Person) -> Tap:
    text = words.call_off_label(turn.tongue(coach))
    return Tap(text, "coach.tests_off", {"athlete": person.id})


@about_tapped
def ask(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Open the round; the athlete is told, and it can be taken back."""
    person, athlete = found.person, found.athlete
    if athlete.state is not AthleteState.TRAINING or course_of(turn, person.id) is not None:
        return show(turn, coach, found) and Outcome.STALE_TAP
    begins = Begins(arguments["begins"])
    opened = guided_tests.open_round(
        turn, person, athlete, why=TestsWhy.COACH, begins=begins, opened_by_id=coach.id
    )
    if opened is None:
        return show(turn, coach, found) and Outcome.STALE_TAP
    is_lighter = begins is Begins.LIGHTER
    text = athlete_words.asked_by_coach(
        turn.tongue(person), coach=coach.name, is_in_lighter_week=is_lighter
    )
    tell(turn, person, text)
    turn.say(
        coach,
        words.asked(turn.tongue(coach), name=person.name, is_in_lighter_week=is_lighter),
        taps=[[_call_off_tap(turn, coach, person)]],
        subject=subject_of(person),
    )
    return Outcome.COMMAND


@about_tapped
def call_off(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Take the tests back: what was tested so far stays on record and counts."""
    person, tongue = found.person, turn.tongue(coach)
    course = course_of(turn, person.id)
    if course is None:
        turn.say(coach, words.nothing_open(tongue, name=person.name), subject=subject_of(person))
        return Outcome.STALE_TAP
    first_tests.close_round(turn.tx, course.round.id, at=turn.now, end=RoundEnd.CALLED_OFF)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="tests.called_off",
        athlete_id=person.id,
        actor_id=coach.id,
        before={"round": course.round.id},
    )
    tell(turn, person, athlete_words.called_off(turn.tongue(person), coach=coach.name))
    _give_session_back(turn, found)
    turn.say(coach, words.called_off(tongue, name=person.name), subject=subject_of(person))
    return Outcome.COMMAND


def _give_session_back(turn: Turn, named: Named) -> None:
    """A day of tests that is out goes back to what was planned, or is closed with what was done."""
    person, athlete = named.person, named.athlete
    for session in training.open_sessions(turn.tx, person.id):
        if not session.is_test_day:
            continue
        if session.has_results:
            record_results.go_on(turn, person, session.id)
        elif guided_tests.convert_back(turn, session) and session.on == local_today(turn, person):
            send_session.send(turn, person, athlete, session.id, useful_until=None)


command, picked = entries(show, act="coach.tests", example=words.EXAMPLE, has_rest=False)

TAPS = {
    "coach.tests": picked,
    "coach.tests_ask": ask,
    "coach.tests_off": call_off,
}
