"""Drawing a week, and drawing anew what is still ahead when something changes."""

from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts.checklist import local_today
from bot.acts.week_gathered import Asked, GatheredWeek, gathered_week, replanned
from bot.acts.week_request import next_letter
from bot.turn import Turn
from scheduler.calendar.wall_time import monday_of
from scheduler.training.coach_changes import with_changes
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.week_values import DayLetter, Session, Slot, WeekDraft, WeekRequest
from scheduler.training.weeks import draw_week
from storage.queries import training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import SessionState

TURN_LETTERS = (DayLetter.A, DayLetter.B, DayLetter.C)


@dataclass(frozen=True)
class Drafted:
    """A week as it would be drawn now, from what was gathered for it."""

    week: GatheredWeek
    draft: WeekDraft

    @property
    def asked(self) -> Asked:
        """What it was drawn from, before what stands."""
        return self.week.asked

    @property
    def request(self) -> WeekRequest | None:
        """What it was drawn from, with what stands; None where no day of it is trained."""
        return self.week.request

    @property
    def fresh(self) -> tuple[Session, ...]:
        """The days that are still to be sent."""
        return tuple(one for one in self.draft.sessions if one.on not in self.week.kept_days)


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


def drafted(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    *,
    monday: date,
    like: GatheredWeek | None = None,
) -> Drafted:
    """Draw a week as it would be drawn now, and write nothing: what is sent of it stands.

    ``like`` is what was gathered for it with another plan of the coach.
    """
    week = (
        gathered_week(turn, person, athlete, monday=monday)
        if like is None
        else replanned(turn, person, athlete, like)
    )
    return Drafted(week=week, draft=_draft(turn, athlete, week.request))


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
