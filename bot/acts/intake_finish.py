"""The end of the intake: begin, or wait until the coach has looked."""

from collections.abc import Mapping, Sequence
from datetime import date, datetime, time, timedelta
from typing import Any

from bot.acts import close_session, draw_week, find_athlete, give_back, guided_tests, hold_for_look
from bot.acts.checklist import local_today
from bot.acts.emergency_number import number_for
from bot.acts.intake_profile import kept_answers, profile_of
from bot.acts.intake_steps import SIGNS, waits_for_coach
from bot.acts.places import places_of
from bot.acts.tell_athlete import tell
from bot.acts.timing import timing_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import intake_end as words
from bot.wording.coach_pain import PlaceFacts
from bot.wording.tongue import Tongue
from scheduler.calendar.due import session_due
from scheduler.calendar.values import PlannedSession
from scheduler.calendar.wall_time import monday_of
from storage import buttons
from storage.queries import care, people, training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import OffBecause, SessionState
from storage.records.wire import MessageKind

EVENING_LEAST = time(20, 0)  # [wall time] ch: when the reminder of an unanswered session comes
EVENING_MOST = time(22, 0)  # [wall time] ch
EVENING_AFTER_H = 2  # [h] ch: time to train before a reminder is kind
PRIVATE = frozenset({"guardian", "injury"})  # in the profile, where they can be erased
LOOK_AHEAD = timedelta(days=6)  # [days] ch: this week at most


def finish(turn: Turn, person: Person, athlete: Athlete, answers: Mapping[str, Any]) -> None:
    """Save what was answered, and let the training begin unless a person must look first."""
    # What the coach told before the link was opened is no answer of the intake, and stays.
    profile = profile_of(answers).model_copy(update={"told_bests": athlete.profile.told_bests})
    at = time.fromisoformat(answers["session_at"])
    person = people.change_person(turn.tx, person.id, zone=answers["zone"])
    athlete = people.change_athlete(
        turn.tx, person.id, profile=profile, session_at=at, evening_at=evening_for(at)
    )
    if person.chat_id is not None:
        buttons.end_dialog(turn.tx, person.chat_id)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="intake.finished",
        athlete_id=person.id,
        actor_id=person.id,
        after={key: one for key, one in kept_answers(answers).items() if key not in PRIVATE},
    )
    coach = people.person(turn.tx, athlete.coach_id)
    if waits_for_coach(profile.screen_yes):
        _wait(turn, person, coach, answers)
    else:
        first = begin_training(turn, person, athlete, coach)
        _tell_begun(turn, person, coach, answers, first)


def evening_for(session_at: time) -> time:
    """Return when the evening of a session's day begins, for the reminder."""
    hour = min(session_at.hour + EVENING_AFTER_H, EVENING_MOST.hour)
    later = session_at.replace(hour=hour) if hour < EVENING_MOST.hour else EVENING_MOST
    return max(EVENING_LEAST, later)


def begin_training(turn: Turn, person: Person, athlete: Athlete, coach: Person) -> datetime:
    """Begin: state, start date, the present week; returns when the first session comes (UTC)."""
    today = local_today(turn, person)
    athlete = people.change_athlete(
        turn.tx,
        person.id,
        state=AthleteState.TRAINING,
        started_on=today,
        stage_since=today,
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="stage.start",
        athlete_id=person.id,
        after={"stage": athlete.stage},
    )
    draw_week.draw(turn, person, athlete, monday=monday_of(today))
    has_tests = guided_tests.open_first(turn, person, athlete)
    first = _first_session(turn, person, athlete)
    local = first.astimezone(timing_of(person, athlete).zone)
    text = words.begins(
        turn.tongue(person),
        coach=coach.name,
        on=local.date(),
        at=athlete.session_at,
        is_now=first <= turn.now,
        has_tests=has_tests,
        number=number_for(turn, people.person(turn.tx, person.id), coach),
    )
    turn.say(person, text, kind=MessageKind.SAFETY)
    return first


def _first_session(turn: Turn, person: Person, athlete: Athlete) -> datetime:
    """Find when the first session goes out; one whose evening is already here is called off."""
    today = local_today(turn, person)
    timing = timing_of(person, athlete)
    planned = training.sessions_between(turn.tx, person.id, first=today, last=today + LOOK_AHEAD)
    for session in planned:
        if session.state is not SessionState.PLANNED:
            continue
        planned_session = PlannedSession(session_id=session.id, local_date=session.on)
        due = session_due(planned_session, person_id=person.id, timing=timing)
        if due.useful_until_utc is None or due.useful_until_utc > turn.now:
            return due.due_at_utc
        close_session.call_off(turn, session, OffBecause.STARTED_LATER)
    on = _next_week_day(today, athlete.profile.weekdays)
    next_planned = PlannedSession(session_id=0, local_date=on)
    return session_due(next_planned, person_id=person.id, timing=timing).due_at_utc


def _next_week_day(today: date, weekdays: tuple[int, ...]) -> date:
    return monday_of(today) + timedelta(days=7 + min(weekdays))


def _tell_begun(
    turn: Turn, person: Person, coach: Person, answers: Mapping[str, Any], first: datetime
) -> None:
    if coach.id == person.id:
        return
    tongue = turn.tongue(coach)
    lines = _lines(turn, tongue, person, answers)
    text = words.coach_begins(
        tongue, name=person.name, on=_local_date(turn, person, first), lines=lines
    )
    _say_to_coach(turn, coach, person, text, [_open_tap(turn, coach, person)])


def _lines(turn: Turn, tongue: Tongue, person: Person, answers: Mapping[str, Any]) -> list[str]:
    """List the answers for the coach, and what was reported as hurting meanwhile."""
    return [
        *words.answer_lines(tongue, kept_answers(answers)),
        *(words.hurts_line(tongue, one) for one in _places(turn, person)),
    ]


def _wait(turn: Turn, person: Person, coach: Person, answers: Mapping[str, Any]) -> None:
    people.change_athlete(turn.tx, person.id, state=AthleteState.WAITS_FOR_COACH)
    screen = answers["screen"]
    say_waits(turn, person, coach, screen)
    has_signs = bool(set(SIGNS) & set(screen))
    theirs = turn.tongue(coach)
    text = words.coach_waits(
        theirs,
        name=person.name,
        screen=screen,
        has_signs=has_signs,
        lines=_lines(turn, theirs, person, answers),
    )
    taps = [_open_tap(turn, coach, person), _let_start_tap(turn, coach, person, is_guardian=False)]
    _say_to_coach(turn, coach, person, text, taps)


def say_waits(turn: Turn, person: Person, coach: Person, screen: Sequence[str]) -> None:
    """Tell the athlete that the coach looks first, and what to do about what was named."""
    tongue = turn.tongue(person)
    if set(SIGNS) & set(screen):
        text = words.signs(tongue, number=number_for(turn, person, coach))
        turn.say(person, text, kind=MessageKind.SAFETY)
    turn.say(person, words.waits(tongue, coach=coach.name), kind=MessageKind.SAFETY)
    if "hurts_now" in screen and not _places(turn, person):
        turn.say(person, words.pain_now(tongue, coach=coach.name), kind=MessageKind.SAFETY)


def _places(turn: Turn, person: Person) -> tuple[PlaceFacts, ...]:
    athlete = people.athlete(turn.tx, person.id)
    return places_of(turn, athlete) if athlete is not None else ()


def wait_for_guardian(turn: Turn, person: Person, athlete: Athlete, contact: str) -> None:
    """An athlete under 18: nothing more is asked until the coach has spoken with the guardian."""
    people.change_athlete(
        turn.tx,
        person.id,
        state=AthleteState.WAITS_FOR_COACH,
        profile=athlete.profile.model_copy(update={"is_adult": False, "guardian": contact}),
    )
    care.write_audit(
        turn.tx, at=turn.now, what="intake.minor", athlete_id=person.id, actor_id=person.id
    )
    coach = people.person(turn.tx, athlete.coach_id)
    text = words.guardian_waits(turn.tongue(person), coach=coach.name)
    turn.say(person, text, kind=MessageKind.SAFETY)
    text = words.coach_guardian(turn.tongue(coach), name=person.name, contact=contact)
    taps = [_open_tap(turn, coach, person), _let_start_tap(turn, coach, person, is_guardian=True)]
    _say_to_coach(turn, coach, person, text, taps)


def start_after_look(turn: Turn, coach: Person, named: find_athlete.Named) -> Outcome:
    """The coach has looked at the answers: record it, say it, begin."""
    person, athlete = named.person, named.athlete
    is_held = hold_for_look.is_held(turn, person)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="athlete.confirmed",
        athlete_id=person.id,
        actor_id=coach.id,
        before={"state": athlete.state.value},
        after={"state": AthleteState.TRAINING.value},
    )
    tell(turn, person, words.let_start_told(turn.tongue(person), coach=coach.name))
    if is_held:
        text = hold_for_look.go_on(turn, coach, named)
    else:
        own_coach = people.person(turn.tx, athlete.coach_id)
        first = begin_training(turn, person, athlete, own_coach)
        on = _local_date(turn, person, first)
        text = words.started_to_coach(turn.tongue(coach), name=person.name, on=on)
    held = give_back.held_line(turn, coach, named)
    text = f"{text}\n{held}" if held else text
    turn.say(coach, text, subject=find_athlete.subject_of(person))
    return Outcome.COMMAND


def waiting_athlete(
    turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped
) -> find_athlete.Named | Outcome:
    """Find the athlete of a button, if the coach may and if they still wait."""
    found = find_athlete.tapped(turn, coach, arguments)
    if isinstance(found, Outcome) or found.athlete.state is AthleteState.WAITS_FOR_COACH:
        return found
    turn.say(coach, words.no_longer_waits(turn.tongue(coach), name=found.person.name))
    return Outcome.STALE_TAP


def _local_date(turn: Turn, person: Person, at: datetime) -> date:
    return at.astimezone(timing_of(people.person(turn.tx, person.id)).zone).date()


def _open_tap(turn: Turn, coach: Person, person: Person) -> Tap:
    return Tap(words.open_label(turn.tongue(coach)), "coach.who", {"athlete": person.id})


def _let_start_tap(turn: Turn, coach: Person, person: Person, *, is_guardian: bool) -> Tap:
    text = words.let_start_label(turn.tongue(coach), is_guardian=is_guardian)
    return Tap(text, "coach.let_start", {"athlete": person.id, "is_guardian": is_guardian})


def _say_to_coach(turn: Turn, coach: Person, person: Person, text: str, taps: list[Tap]) -> None:
    turn.say(
        coach,
        text,
        kind=MessageKind.NOTICE,
        subject=find_athlete.subject_of(person),
        taps=[[tap] for tap in taps],
    )
