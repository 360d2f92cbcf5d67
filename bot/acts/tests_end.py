"""The end of a round of tests: what was found, for both, and the stage that it suggests."""

from collections.abc import Sequence
from datetime import date

from bot.acts.find_athlete import subject_of
from bot.acts.tests_card import arms_done, facts_of
from bot.acts.tests_course import Course
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_tests
from bot.wording import tests_found as words
from bot.wording.movement_names import movement_name
from bot.wording.reason_figures import word
from bot.wording.tongue import Tongue
from scheduler.reasons import Decision
from scheduler.training.baseline_course import arms_open, is_over, results_of
from scheduler.training.baseline_start import baseline_start, open_tests, shown_by
from scheduler.training.baseline_values import BaselineTest, Ended, TestedSet
from scheduler.training.tested_sets import change_between
from storage.queries import care, first_tests, people
from storage.records.first_tests import AttemptRecord, RoundEnd
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

KIND = "tests_stage"


def finish(turn: Turn, person: Person, athlete: Athlete, course: Course) -> None:
    """Close a round and tell both what it found."""
    end = RoundEnd.DONE if is_over(course.plan, course.attempts) else RoundEnd.LAPSED
    first_tests.close_round(turn.tx, course.round.id, at=turn.now, end=end)
    suggested = _suggested(turn, athlete, course)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="tests.done",
        athlete_id=person.id,
        reasons=suggested.reasons if suggested else (),
        after={"round": course.round.id, "end": end.value}
        | ({"suggests": suggested.value} if suggested else {}),
    )
    _tell_athlete(turn, person, athlete, course)
    _tell_coach(turn, person, athlete, course, suggested)


def _suggested(turn: Turn, athlete: Athlete, course: Course) -> Decision[int] | None:
    """Return the stage that the results suggest; None where they only count for the checklist."""
    is_looked_for = course.round.why.is_first or course.round.stage_then == 1
    if not is_looked_for:
        return None
    return baseline_start(
        course.plan,
        results_of(course.plan, course.attempts),
        profile=athlete.profile.facts,
        rulebook=turn.house.rulebook,
    )


def _tell_athlete(turn: Turn, person: Person, athlete: Athlete, course: Course) -> None:
    tongue, coach = turn.tongue(person), people.person(turn.tx, athlete.coach_id)
    lines = [
        words.line_found(
            tongue, facts_of(turn, course.plan.tests, test), arms_done(course.of(test.key))
        )
        for test in course.plan.tests
        if any(one.value is not None for one in course.of(test.key))
    ]
    text = words.found(
        tongue,
        lines,
        changes=_changes(turn, tongue, course),
        coach=coach.name,
        is_again=not course.round.why.is_first,
    )
    turn.say(person, text, kind=MessageKind.NOTICE)


def _tell_coach(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    course: Course,
    suggested: Decision[int] | None,
) -> None:
    coach = people.person(turn.tx, athlete.coach_id)
    tongue = turn.tongue(coach)
    said = (
        coach_tests.suggests(tongue, stage=suggested.value, now=athlete.stage)
        if suggested
        else coach_tests.no_suggestion(tongue)
    )
    turn.say(
        coach,
        coach_tests.results(
            tongue,
            name=person.name,
            tests=[_result(turn, course, test) for test in course.plan.tests],
            by_coach=[word(tongue, key) for _, key in sorted(course.plan.by_coach)],
            changes=_changes(turn, tongue, course),
            suggestion=said,
        ),
        kind=MessageKind.NOTICE,
        taps=_taps(turn, coach, person, athlete, course, suggested),
        subject=subject_of(person),
    )


def _taps(
    turn: Turn,
    coach: Person,
    person: Person,
    athlete: Athlete,
    course: Course,
    suggested: Decision[int] | None,
) -> TapRows:
    """Offer the suggested stage as a decision, where it is another than the present one."""
    tongue = turn.tongue(coach)
    rows = [[Tap(coach_tests.open_label(tongue), "coach.who", {"athlete": person.id})]]
    for earlier in care.proposals(turn.tx, [person.id], kind=KIND):
        care.answer_proposal(turn.tx, earlier.id, at=turn.now, answer="superseded")
    if suggested is None or suggested.value == athlete.stage:
        return rows
    proposal = care.propose(
        turn.tx,
        athlete_id=person.id,
        kind=KIND,
        facts={
            "stage": suggested.value,
            "from_stage": athlete.stage,
            "round": course.round.id,
            "reasons": [why.model_dump(mode="json") for why in suggested.reasons],
        },
        at=turn.now,
    )
    about = {"proposal": proposal.id}
    set_it = Tap(coach_tests.set_label(tongue, suggested.value), "proposal.accept", about)
    leave_it = Tap(coach_tests.leave_label(tongue, athlete.stage), "proposal.decline", about)
    return [[set_it, leave_it], *rows]


def _result(turn: Turn, course: Course, test: BaselineTest) -> coach_tests.ResultFacts:
    mine = course.of(test.key)
    result = next((r for r in results_of(course.plan, course.attempts) if r.key == test.key), None)
    shown = shown_by(course.plan, result) if result is not None else ()
    skipped = next((one.why for one in mine if one.ended is Ended.SKIPPED), None)
    is_tried = any(one.ended is not Ended.SKIPPED for one in mine)
    return coach_tests.ResultFacts(
        test=facts_of(turn, course.plan.tests, test),
        arms=arms_done(mine) if is_tried else (),
        reserve=next((one.reserve for one in mine if one.reserve is not None), None),
        shows=tuple(
            coach_tests.ShownFacts(stage=one.stage, at=one.at, is_shown=one in shown)
            for one in test.shows
        ),
        skipped_because=skipped,
    )


def _changes(turn: Turn, tongue: Tongue, course: Course) -> list[str]:
    """Compare each test with the latest earlier one of the same arm and resistance."""
    if course.round.why.is_first:
        return []
    before = _earlier_sets(turn, course)
    lines = []
    for test in course.plan.tests:
        facts = facts_of(turn, course.plan.tests, test)
        for record in course.of(test.key):
            now = tested_set(record)
            was = next((one for one in before if now is not None and _is_alike(one, now)), None)
            if now is None or was is None:
                continue
            decided = change_between(was, now, rulebook=turn.house.rulebook)
            line = words.change_found(
                tongue,
                facts,
                side=now.side,
                was=was.value,
                now=now.value,
                is_real=decided.value if decided is not None else None,
            )
            lines.append(line)
    return lines


def _earlier_sets(turn: Turn, course: Course) -> list[TestedSet]:
    """Return what earlier rounds tested, the latest first."""
    rounds = first_tests.rounds(turn.tx, course.round.athlete_id)
    records = [
        record
        for one in rounds
        if one.id != course.round.id
        for record in reversed(first_tests.attempts_of(turn.tx, one.id))
    ]
    return [found for record in records if (found := tested_set(record)) is not None]


def tested_set(record: AttemptRecord) -> TestedSet | None:
    """Return an attempt as a tested set; None where it hurt or nothing was done."""
    if record.ended is not Ended.DONE or record.value is None:
        return None
    return TestedSet(
        on=record.on,
        movement_key=record.movement_key,
        measure=record.measure,
        side=record.side,
        value=record.value,
        rung=record.rung,
        reserve=record.reserve,
    )


def _is_alike(one: TestedSet, other: TestedSet) -> bool:
    place = (other.movement_key, other.side, other.rung)
    return (one.movement_key, one.side, one.rung) == place


def say_more_to_come(turn: Turn, person: Person, course: Course, *, next_on: date | None) -> None:
    """Say which tests are still to come, and when."""
    names = _names_to_come(turn.tongue(person), course)
    if names:
        text = words.more_to_come(turn.tongue(person), next_on=next_on, names=names)
        turn.say(person, text)


def _names_to_come(tongue: Tongue, course: Course) -> Sequence[str]:
    """Name what is still open of what may be tested: what an earlier test rules out never comes."""
    results = results_of(course.plan, course.attempts)
    ready = [
        test
        for day in course.plan.days
        for test in open_tests(course.plan, results, day=day.number).value
        if arms_open(test, course.attempts)
    ]
    return list(dict.fromkeys(movement_name(tongue, test.movement_key) for test in ready))
