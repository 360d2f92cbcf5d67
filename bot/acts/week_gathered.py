"""What a week is drawn from: what stands of it, the season, the body, and everything else."""

from collections.abc import Sequence, Set
from dataclasses import dataclass, replace
from datetime import date, timedelta

from bot.acts.checklist import local_today
from bot.acts.lighter_signals import signals_of
from bot.acts.open_days import open_weekdays
from bot.acts.places_used import REMEMBERED
from bot.acts.season import season_week
from bot.acts.week_request import kept_slots, kinds_of_past, shares_of, week_request, with_plan
from bot.turn import Turn
from scheduler.calendar.wall_time import due_instant
from scheduler.calendar.zones import zone_named
from scheduler.reasons import Decision, Reason
from scheduler.training.season_drawing import drawn_as
from scheduler.training.season_reasons import SeasonReason
from scheduler.training.season_values import SeasonWeek, SeasonWeekKind
from scheduler.training.training_reasons import VolumeReason
from scheduler.training.volume import lighter_week
from scheduler.training.week_values import WeekRequest
from storage.queries import training
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord, SessionState, WeekRecord

BUILDING = {SeasonWeekKind.ORDINARY, SeasonWeekKind.LIGHTER, SeasonWeekKind.BAND_ONLY}


@dataclass(frozen=True)
class Asked:
    """What a week is to be drawn from; ``request`` None where no day of it is trained.

    ``usual`` is the same week without its season.
    """

    request: WeekRequest | None
    usual: WeekRequest
    season: SeasonWeek
    is_lighter: bool
    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class GatheredWeek:
    """Everything for one week: ``request`` leaves room for what stands (``kept_days``).

    ``sessions`` are those of the last weeks and what stands of this one; ``drawn`` None where
    the week was not drawn yet.
    """

    monday: date
    sessions: tuple[SessionRecord, ...]
    drawn: WeekRecord | None
    asked: Asked
    request: WeekRequest | None

    @property
    def kept_days(self) -> frozenset[date]:
        """The days that are sent or over."""
        return frozenset(one.on for one in self.sessions if one.on >= self.monday)


def gathered_week(turn: Turn, person: Person, athlete: Athlete, *, monday: date) -> GatheredWeek:
    """Gather what a week would be drawn from now."""
    drawn = training.week(turn.tx, person.id, monday)
    sessions = tuple(
        one
        for one in training.sessions_between(
            turn.tx, person.id, first=monday - REMEMBERED, last=monday + timedelta(days=6)
        )
        if one.on < monday or one.state is not SessionState.PLANNED
    )
    asked = _asked(turn, person, athlete, monday=monday, sessions=sessions, drawn=drawn)
    week = GatheredWeek(monday=monday, sessions=sessions, drawn=drawn, asked=asked, request=None)
    return replace(week, request=_with_what_stands(turn, person, athlete, week))


def replanned(turn: Turn, person: Person, athlete: Athlete, like: GatheredWeek) -> GatheredWeek:
    """Return the same week with another plan of the coach; nothing else is looked up again."""
    usual = with_plan(
        turn, athlete, like.asked.usual, past=[one for one in like.sessions if one.on < like.monday]
    )
    request = drawn_as(like.asked.season, usual=usual).value
    week = replace(like, asked=replace(like.asked, usual=usual, request=request))
    return replace(week, request=_with_what_stands(turn, person, athlete, week))


def _with_what_stands(
    turn: Turn, person: Person, athlete: Athlete, week: GatheredWeek
) -> WeekRequest | None:
    """Return the request with what was sent, and with the days that are still open."""
    today, monday = local_today(turn, person), week.monday
    this_week = [session for session in week.sessions if session.on >= monday]
    is_sent_today = any(session.on == today for session in this_week)
    is_over = is_sent_today or _is_hour_past(turn, person, athlete, today)
    first_open = today + timedelta(days=1) if week.drawn is not None and is_over else today
    open_from = max(first_open, monday)
    request = week.asked.request and week.asked.request.model_copy(
        update={"kept": kept_slots(this_week), "open_from": open_from}
    )
    if week.drawn is None:
        return request
    return _with_room(request, monday=monday, kept=week.kept_days, open_from=open_from)


def _asked(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    *,
    monday: date,
    sessions: Sequence[SessionRecord],
    drawn: WeekRecord | None = None,
) -> Asked:
    """Ask the season what the week is for, the body whether it must be lighter, then the rest."""
    season = season_week(turn, athlete, monday=monday)
    lighter = _lighter(turn, athlete, season.value, sessions, monday=monday, drawn=drawn)
    usual = week_request(
        turn, person, athlete, monday=monday, sessions=sessions, is_lighter=lighter.value
    )
    shares = shares_of(turn, athlete, sessions, monday=monday)
    return Asked(
        request=drawn_as(season.value, usual=usual).value,
        usual=usual,
        season=season.value,
        is_lighter=lighter.value,
        reasons=(*_season_reasons(season, is_lighter=lighter.value), *lighter.reasons, *shares),
    )


def _season_reasons(season: Decision[SeasonWeek], *, is_lighter: bool) -> tuple[Reason, ...]:
    """Return why the season has the week so; one that the body makes lighter is not as usual."""
    usual = SeasonReason.ORDINARY_WEEK
    return tuple(one for one in season.reasons if not (is_lighter and one.code == usual))


def _lighter(
    turn: Turn,
    athlete: Athlete,
    season: SeasonWeek,
    sessions: Sequence[SessionRecord],
    *,
    monday: date,
    drawn: WeekRecord | None,
) -> Decision[bool]:
    """Decide whether the week is a lighter one: by the season's count, or by what the body says.

    A week that was drawn stays what it was.
    """
    if drawn is not None:
        return Decision(value=drawn.is_lighter, reasons=())
    if season.kind not in BUILDING or season.sets_share < 1:
        return Decision(value=season.kind in BUILDING, reasons=())
    signals = signals_of(turn, athlete.person_id, sessions, monday=monday)
    found = lighter_week(
        past=kinds_of_past(turn, athlete.person_id, before=monday),
        stage=athlete.stage,
        signals=signals,
        rulebook=turn.house.rulebook,
    )
    is_by_signals = any(one.code == VolumeReason.LIGHTER_BY_SIGNALS for one in found.reasons)
    return Decision(value=is_by_signals, reasons=found.reasons if is_by_signals else ())


def _with_room(
    request: WeekRequest | None, *, monday: date, kept: Set[date], open_from: date
) -> WeekRequest | None:
    """Leave no more days open than the week has sessions left; the days that stand are kept."""
    if request is None:
        return None
    still = open_weekdays(
        request.weekdays,
        monday=monday,
        kept=kept,
        open_from=open_from,
        days_a_week=request.days_a_week,
    )
    stand = {day.isoweekday() for day in kept}
    if not still and not stand:
        return None  # without a weekday the rule would choose days by itself
    return request.model_copy(update={"weekdays": tuple(sorted({*still, *stand}))})


def _is_hour_past(turn: Turn, person: Person, athlete: Athlete, today: date) -> bool:
    """Tell whether today's session hour is over: what is drawn now would come too late."""
    hour = due_instant(local_date=today, wall_time=athlete.session_at, zone=zone_named(person.zone))
    return turn.now >= hour
