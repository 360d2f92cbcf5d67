"""The morning after: one question a place, and what the answer settles."""

from collections.abc import Mapping
from datetime import date, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from bot.acts import open_answer, pain_consequences, pain_picture, pain_report
from bot.acts.open_question import open_question
from bot.acts.pain_taps import score_taps
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import pain as words
from scheduler.calendar.wall_time import local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.pain.picture import AskKind
from scheduler.pain.values import Level, Region, Side, Site
from storage import buttons
from storage.queries import people
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

NOON = 12  # [h] ch: from here nobody is wished a good morning
ANSWERED_WITHIN = timedelta(days=2)  # [d] ch: later a morning is over, and pain is told anew


def owed(turn: Turn, person: Person, athlete: Athlete) -> tuple[tuple[str, date], ...]:
    """Return the mornings that want a question: a subject, and the day of the report."""
    zone = zone_named(person.zone)
    report = open_answer.latest_open(turn, athlete)
    if report is not None and open_answer.stops_all(turn, athlete, report):
        return _waiting(turn, athlete, report_on=local_date_of(report.at_utc, zone), zone=zone)
    days = {
        local_date_of(ask.since_utc, zone)
        for ask in pain_picture.picture_of(turn, athlete).asks
        if ask.kind is AskKind.MORNING
    }
    return tuple((day.isoformat(), day) for day in sorted(days))


def _waiting(
    turn: Turn, athlete: Athlete, *, report_on: date, zone: ZoneInfo
) -> tuple[tuple[str, date], ...]:
    """Ask on every day of training, since no session comes to ask before, until it is answered."""
    today = local_date_of(turn.now, zone)
    before = today - timedelta(days=1)
    is_due = today.weekday() in athlete.profile.weekdays or before == report_on
    return ((f"place:{today.isoformat()}", before),) if is_due and report_on < today else ()


def ask(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Ask for the first place that waits; what a report itself still lacks goes first."""
    report = open_answer.latest_open(turn, athlete)
    if report is not None:
        open_answer.ask(turn, person, athlete, report)
        return
    region = _next_region(turn, athlete)
    if region is not None:
        _ask_for(turn, person, region, edit=None)


def tapped(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """A number was tapped."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    asked_at = arguments.get("asked_at")
    if asked_at and turn.now - datetime.fromisoformat(asked_at) > ANSWERED_WITHIN:
        turn.say(person, words.too_late_to_say(turn.tongue(person)))
        return Outcome.STALE_TAP
    answer(
        turn,
        person,
        athlete,
        site=Site(arguments["site"]),
        side=Side(arguments["side"]),
        score=arguments["score"],
        must_ask=False,
        edit=event.message_id,
    )
    return Outcome.SAFETY


def answer(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    *,
    site: Site,
    side: Side,
    score: int | None,
    must_ask: bool,
    is_worse: bool = False,
    edit: int | None = None,
) -> None:
    """Record the answer, follow what it changes, and ask on or say how it stands."""
    before = pain_picture.picture_of(turn, athlete)
    pain_report.add_morning(
        turn,
        athlete,
        site=site,
        side=side,
        score=score,
        must_ask=must_ask,
        is_worse=is_worse,
    )
    said = words.said(turn.tongue(person), site, side, score)
    after = pain_consequences.follow(turn, person, athlete, before, words_said=said)
    region = _next_region(turn, athlete)
    if region is not None:
        _ask_for(turn, person, region, edit=edit)
        return
    if person.chat_id is not None:
        buttons.close_question(turn.tx, person.chat_id)
    coach = people.person(turn.tx, athlete.coach_id)
    tongue = turn.tongue(person)
    shown = after.region(site, side)
    if shown is None or shown.level is Level.NONE:
        text = words.morning_fine(tongue)
    elif person.id in turn.advised:
        text = words.noted(tongue, shown)
    else:
        text = words.outcome(tongue, shown, coach=coach.name)
    if edit is not None:
        turn.change(person, edit, text)
    else:
        turn.say(person, text, kind=MessageKind.SAFETY)


def _next_region(turn: Turn, athlete: Athlete) -> Region | None:
    asks = pain_picture.picture_of(turn, athlete).asks
    return next((one.region for one in asks if one.kind is AskKind.MORNING and one.region), None)


def _ask_for(turn: Turn, person: Person, region: Region, *, edit: int | None) -> None:
    tongue = turn.tongue(person)
    about = {
        "site": region.site.value,
        "side": region.arm.value,
        "asked_at": turn.now.isoformat(),
    }
    is_morning = turn.now.astimezone(zone_named(person.zone)).hour < NOON
    text = words.morning(tongue, region.site, region.arm, is_morning=is_morning)
    taps = score_taps(about, act="morning.score")
    if edit is not None:
        turn.change(person, edit, text, taps=taps)
    else:
        turn.say(person, text, kind=MessageKind.QUESTION, taps=taps)
    open_question(turn, person, "morning", about)


TAPS = {"morning.score": tapped}
