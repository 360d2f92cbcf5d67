"""An athlete's season as calendar entries: training days, events, breaks, days away."""

from collections.abc import Iterator
from datetime import date, datetime, timedelta

from bot.acts.checklist import local_today
from bot.acts.export_data import may_be_told
from bot.acts.season import season_of
from bot.exports.calendar_file import CalendarEntry, CalendarFacts
from bot.turn import Turn
from bot.wording import exporting as words
from bot.wording.tongue import Tongue
from scheduler.training.season_values import SeasonWeek, SeasonWeekKind
from storage.queries import own_data
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import SessionState

A_DAY = timedelta(days=1)
SHOWN_BACK = timedelta(days=28)  # [days] ch: what was trained lately stands beside what comes
SHOWN_STATES = frozenset({SessionState.PLANNED, SessionState.SENT, SessionState.TRAINED})


def season_facts(turn: Turn, person: Person, athlete: Athlete, *, tongue: Tongue) -> CalendarFacts:
    """Gather the entries, in the reader's words."""
    today = local_today(turn, person)
    sessions = [
        one
        for one in own_data.sessions(turn.tx, person.id, since=today - SHOWN_BACK)
        if one.state in SHOWN_STATES
    ]
    lasts = timedelta(minutes=athlete.profile.minutes)
    drawn = [
        CalendarEntry(
            uid=f"session-{one.id}@holdwell",
            summary=words.training_day(tongue, one.letter),
            starts=datetime.combine(one.on, athlete.session_at),
            lasts=lasts,
            is_busy=True,
        )
        for one in sessions
    ]
    last_drawn = max((one.on for one in sessions), default=today)
    ahead = _ahead(turn, person, athlete, tongue, after=max(last_drawn, today))
    return CalendarFacts(
        name=words.calendar_name(tongue),
        zone=person.zone,
        made_at=turn.now,
        entries=(*drawn, *ahead, *_marked_days(person, athlete, tongue, today)),
    )


def _ahead(
    turn: Turn, person: Person, athlete: Athlete, tongue: Tongue, *, after: date
) -> Iterator[CalendarEntry]:
    """Yield the days on which the season means to train, in weeks that are not drawn yet."""
    if athlete.state not in {AthleteState.TRAINING, AthleteState.PAUSED}:
        return
    season = season_of(turn, athlete, today=local_today(turn, person)).value
    for week in season.weeks:
        for on in _days(week, athlete):
            if on <= after or (athlete.paused_until is not None and on < athlete.paused_until):
                continue
            minutes = min(athlete.profile.minutes, week.session_min_most or athlete.profile.minutes)
            yield CalendarEntry(
                uid=f"day-{person.id}-{on.isoformat()}@holdwell",
                summary=words.training_ahead(tongue),
                about=words.may_move(tongue),
                starts=datetime.combine(on, athlete.session_at),
                lasts=timedelta(minutes=minutes),
                is_tentative=True,
            )


def _days(week: SeasonWeek, athlete: Athlete) -> list[date]:
    if week.kind is SeasonWeekKind.BREAK:
        return []
    days = [week.monday + timedelta(days=weekday) for weekday in sorted(athlete.profile.weekdays)]
    return [on for on in days if on not in week.days_off][: week.days_most]


def _marked_days(
    person: Person, athlete: Athlete, tongue: Tongue, today: date
) -> Iterator[CalendarEntry]:
    """Yield whole days: events, days of competing and away, and a break that is on."""
    profile = athlete.profile
    for event in profile.all_events:
        yield CalendarEntry(
            uid=f"event-{person.id}-{event.on.isoformat()}@holdwell",
            summary=words.event(
                tongue, event.name if may_be_told(event.name) else "", is_main=event.is_main
            ),
            starts=event.on,
            lasts=A_DAY,
        )
    spans = [
        *(("competing", one, words.competing(tongue)) for one in profile.in_season),
        *(("away", one, words.away(tongue)) for one in profile.travels),
    ]
    for kind, span, summary in spans:
        yield CalendarEntry(
            uid=f"{kind}-{person.id}-{span.first.isoformat()}@holdwell",
            summary=summary,
            starts=span.first,
            lasts=timedelta(days=span.days),
        )
    if athlete.paused_until is not None and athlete.paused_until > today:
        yield CalendarEntry(
            uid=f"break-{person.id}-{athlete.paused_until.isoformat()}@holdwell",
            summary=words.pause(tongue),
            starts=today,
            lasts=athlete.paused_until - today,
        )
