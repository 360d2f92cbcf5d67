"""Drawing a week, and drawing anew what is still ahead when something changes."""

from collections.abc import Sequence, Set
from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts.checklist import local_today
from bot.acts.lighter_signals import signals_of
from bot.acts.open_days import open_weekdays
from bot.acts.places_used import REMEMBERED
from bot.acts.season import season_week
from bot.acts.week_request import (
    kept_slots,
    kinds_of_past,
    next_letter,
    shares_of,
    week_request,
)
from bot.turn import Turn
from scheduler.calendar.wall_time import due_instant, monday_of
from scheduler.calendar.zones import zone_named
from scheduler.reasons import Decision, Reason
from scheduler.training.coach_changes import with_changes
from scheduler.training.season_drawing import drawn_as
from scheduler.training.season_reasons import SeasonReason
from scheduler.training.season_values import SeasonWeek, SeasonWeekKind
from scheduler.training.training_reasons import VolumeReason
from scheduler.training.volume import lighter_week
from scheduler.training.week_values import DayLetter, Session, Slot, WeekDraft, WeekRequest
from scheduler.training.weeks import draw_week
from storage.queries import training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import SessionRecord, SessionState, WeekRecord

BUILDING = {SeasonWeekKind.ORDINARY, SeasonWeekKind.LIGHTER, SeasonWeekKind.BAND_ONLY}
TURN_LETTERS = (DayLetter.A, DayLetter.B, DayLetter.C)


@dataclass(frozen=True)
class Asked:
    """What a week is to be drawn from; ``request`` None where no day of it is trained."""

    request: WeekRequest | None
    season: SeasonWeek
    is_lighter: bool
    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class Drafted:
    """A week as it would be drawn now; ``kept_days`` are sent or over, and stand."""

    asked: Asked
    request: WeekRequest | None
    draft: WeekDraft
    kept_days: frozenset[date]

    @property
    def fresh(self) -> tuple[Session, ...]:
        """The days that are still to be sent."""
        return tuple(one for one in self.draft.sessions if one.on not in self.kept_days)


def draw(turn: Turn, person: Person, athlete: Athlete, *, monday: date) -> bool:
    """Draw the week that begins on ``monday`` unless it is drawn; False when it was."""
    if athlete.state is not AthleteState.TRAINING or training.week(turn.tx, person.id, monday):
        return False
    found = drafted(turn, person, athlete, monday=monday)
    asked, draft = found.asked, found.draft
    week = training.add_week(
        turn.tx,
        athlete_id=person.id,
        monday=monday,
        stage=athlete.stage,
        is_lighter=asked.is_lighter,
        kind=kind_of(asked),
        sets_share=asked.request.sets_share if asked.request else 1.0,
        next_letter=_letter_after(draft, next_letter(turn, person.id, monday)).value,
        relaxations=tuple(relaxation.why for relaxation in draft.relaxations),
        reasons=(*asked.reasons, *draft.reasons),
        at=turn.now,
    )
    _save(turn, person, week.id, draft.sessions)
    return True


def kind_of(asked: Asked) -> SeasonWeekKind:
    """Return what a week is for: one that the body makes lighter is a lighter one."""
    is_ordinary = asked.season.kind is SeasonWeekKind.ORDINARY
    return SeasonWeekKind.LIGHTER if asked.is_lighter and is_ordinary else asked.season.kind


def redraw(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Draw anew what is planned and not sent, this week and the next: sent sessions stand."""
    today = local_today(turn, person)
    for monday in (monday_of(today), monday_of(today) + timedelta(days=7)):
        week = training.week(turn.tx, person.id, monday)
        if week is None:
            continue
        training.forget_planned(turn.tx, week.id, from_date=date.min)
        if athlete.state is not AthleteState.TRAINING:
            continue
        found = drafted(turn, person, athlete, monday=monday)
        asked, draft = found.asked, found.draft
        training.change_week(
            turn.tx,
            week.id,
            stage=athlete.stage,
            kind=kind_of(asked),
            relaxations=tuple(relaxation.why for relaxation in draft.relaxations),
            reasons=(*asked.reasons, *draft.reasons),
            drawn_at=turn.now,
        )
        _save(turn, person, week.id, found.fresh)


def drafted(turn: Turn, person: Person, athlete: Athlete, *, monday: date) -> Drafted:
    """Draw a week as it would be drawn now, and write nothing: what is sent of it stands."""
    today = local_today(turn, person)
    week = training.week(turn.tx, person.id, monday)
    sessions = tuple(
        one
        for one in training.sessions_between(
            turn.tx, person.id, first=monday - REMEMBERED, last=monday + timedelta(days=6)
        )
        if one.on < monday or one.state is not SessionState.PLANNED
    )
    this_week = [session for session in sessions if session.on >= monday]
    is_sent_today = any(session.on == today for session in this_week)
    is_over = is_sent_today or _is_hour_past(turn, person, athlete, today)
    first_open = today + timedelta(days=1) if week is not None and is_over else today
    asked = _asked(turn, person, athlete, monday=monday, sessions=sessions, drawn=week)
    kept_days = frozenset(session.on for session in this_week)
    open_from = max(first_open, monday)
    request = asked.request and asked.request.model_copy(
        update={"kept": kept_slots(this_week), "open_from": open_from}
    )
    if week is not None:
        request = _with_room(request, monday=monday, kept=kept_days, open_from=open_from)
    return Drafted(
        asked=asked,
        request=request,
        draft=_draft(turn, athlete, request),
        kept_days=kept_days,
    )


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


def _draft(turn: Turn, athlete: Athlete, request: WeekRequest | None) -> WeekDraft:
    """Draw a week with what the coach changed in it; one without a day to train is empty."""
    if request is None:
        return WeekDraft(sessions=(), relaxations=(), reasons=())
    library, rulebook = turn.house.library, turn.house.rulebook
    draft = draw_week(request, library=library, rulebook=rulebook)
    if not draft.sessions:
        # Nothing was left to draw: what such a week does not hold was not given way to anything.
        return draft.model_copy(update={"relaxations": ()})
    plan = athlete.profile.coach_plan
    return with_changes(draft, plan=plan, request=request, library=library, rulebook=rulebook)


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


def _save(turn: Turn, person: Person, week_id: int, sessions: tuple[Session, ...]) -> None:
    for session in sessions:
        session_id = training.add_session(
            turn.tx,
            athlete_id=person.id,
            week_id=week_id,
            on=session.on,
            letter=session.letter.value,
            minutes=round(session.minutes),
            state=SessionState.PLANNED,
        )
        for slot in session.slots:
            _save_slot(turn, session_id, slot)


def _save_slot(turn: Turn, session_id: int, slot: Slot) -> None:
    training.add_item(
        turn.tx,
        session_id=session_id,
        position=slot.position,
        pair=slot.pair,
        direction=slot.direction,
        role=turn.house.library.movements[slot.movement_key].role,
        movement_key=slot.movement_key,
        quality=slot.quality,
        planned_sets=slot.sets,
        arms=tuple(sorted(slot.arms)),
    )


def _letter_after(draft: WeekDraft, planned: DayLetter) -> DayLetter:
    """Return whose turn it is after this week: the letter behind the last of A, B, C."""
    turned = [one.letter for one in draft.sessions if one.letter in TURN_LETTERS]
    if not turned:
        return planned
    return TURN_LETTERS[(TURN_LETTERS.index(turned[-1]) + 1) % len(TURN_LETTERS)]
