"""Drawing a week, and drawing anew what is still ahead when something changes."""

from datetime import date, timedelta

from bot.acts.checklist import local_today
from bot.acts.week_request import REMEMBERED, is_lighter_due, kept_slots, week_request
from bot.turn import Turn
from scheduler.calendar.wall_time import due_instant, monday_of
from scheduler.calendar.zones import zone_named
from scheduler.training.week_values import DayLetter, Session, Slot, WeekDraft
from scheduler.training.weeks import draw_week
from storage.queries import training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import SessionState

TURN_LETTERS = (DayLetter.A, DayLetter.B, DayLetter.C)


def draw(turn: Turn, person: Person, athlete: Athlete, *, monday: date) -> bool:
    """Draw the week that begins on ``monday`` unless it is drawn; False when it was."""
    if athlete.state is not AthleteState.TRAINING or training.week(turn.tx, person.id, monday):
        return False
    today = local_today(turn, person)
    lighter = is_lighter_due(turn, person, athlete, monday=monday)
    sessions = training.sessions_between(
        turn.tx, person.id, first=monday - REMEMBERED, last=monday + timedelta(days=6)
    )
    request = week_request(
        turn, person, athlete, monday=monday, sessions=sessions, is_lighter=lighter.value
    ).model_copy(update={"open_from": max(today, monday)})
    draft = draw_week(request, library=turn.house.library, rulebook=turn.house.rulebook)
    week = training.add_week(
        turn.tx,
        athlete_id=person.id,
        monday=monday,
        stage=athlete.stage,
        is_lighter=lighter.value,
        sets_share=request.sets_share,
        next_letter=_letter_after(draft, request.next_letter).value,
        relaxations=tuple(relaxation.why for relaxation in draft.relaxations),
        reasons=(*lighter.reasons, *draft.reasons),
        at=turn.now,
    )
    _save(turn, person, week.id, draft.sessions)
    return True


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
        sessions = training.sessions_between(
            turn.tx, person.id, first=monday - REMEMBERED, last=monday + timedelta(days=6)
        )
        this_week = [session for session in sessions if session.on >= monday]
        is_sent_today = any(session.on == today for session in this_week)
        is_over_today = is_sent_today or _is_hour_past(turn, person, athlete, today)
        first_open = today + timedelta(days=1) if is_over_today else today
        request = week_request(
            turn, person, athlete, monday=monday, sessions=sessions, is_lighter=week.is_lighter
        ).model_copy(update={"kept": kept_slots(this_week), "open_from": max(first_open, monday)})
        draft = draw_week(request, library=turn.house.library, rulebook=turn.house.rulebook)
        kept_days = {session.on for session in this_week}
        fresh = tuple(one for one in draft.sessions if one.on not in kept_days)
        training.change_week(
            turn.tx,
            week.id,
            stage=athlete.stage,
            relaxations=tuple(relaxation.why for relaxation in draft.relaxations),
            reasons=draft.reasons,
            drawn_at=turn.now,
        )
        _save(turn, person, week.id, fresh)


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
