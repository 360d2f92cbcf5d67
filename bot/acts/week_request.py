"""What the drawing of a week asks, gathered from what is stored."""

from collections.abc import Sequence, Set
from datetime import date, timedelta
from typing import Any

from bot.acts import pain_picture
from bot.acts.dose_today import pulls_done, returning, weeks_trained
from bot.acts.injuries import banned_hangs, held_directions
from bot.acts.own_standards import counts_from
from bot.acts.places_used import REMEMBERED, in_use
from bot.acts.training_elsewhere import hard_days_of
from bot.turn import Turn
from scheduler.calendar.wall_time import monday_of
from scheduler.catalogue.values import Direction, Role
from scheduler.pain.left_out import left_out_for
from scheduler.pain.picture import PainPicture
from scheduler.reasons import Decision, Reason
from scheduler.training.coach_plan import CoachPlan, moved_weekdays
from scheduler.training.dose_facts import is_new_to_pulling
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.volume import WeekKind, share_after_missed_weeks
from scheduler.training.week_readiness import can_pull_dynamically, not_yet, shown_by
from scheduler.training.week_values import DayLetter, Slot, WeekRequest
from storage.queries import history, training
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord, SessionState, WeekRecord

TRAINED_COUNTS = timedelta(weeks=26)  # [weeks] ch: as far as the estimate remembers
WEEKS_COUNTED = timedelta(weeks=26)  # [weeks] ch: far beyond any count to the next lighter one
FIRST_WEEKS = 2  # [weeks] ch: two sets, effort about half

SENT_STATES = {SessionState.TRAINED, SessionState.MISSED}


def week_request(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    *,
    monday: date,
    sessions: Sequence[SessionRecord],
    is_lighter: bool,
) -> WeekRequest:
    """Gather everything that the drawing of one week depends on.

    ``sessions`` are those of the last weeks and of this one, the earliest first.
    """
    past = [session for session in sessions if session.on < monday]
    weeks = training.weeks(turn.tx, person.id, since=monday - REMEMBERED)
    back = returning(turn, athlete, on=monday).value
    picture = pain_picture.picture_of(turn, athlete)
    lighter_share = 1 - turn.house.rulebook.lighter.cut.value if is_lighter else 1.0
    missed_share = cut_after_misses(turn, past, monday=monday).value
    held = _held_back(turn, picture) | held_directions(turn, athlete)
    return WeekRequest(
        stage=athlete.stage,
        week_start=monday,
        days_a_week=len(athlete.profile.weekdays),
        session_min=athlete.profile.minutes,
        equipment=athlete.profile.facts.equipment,
        rested=picture.rested,
        eased=picture.eased,
        is_inversion_ok=athlete.profile.may_invert,
        plan_week=weeks_trained(athlete, monday) + 1,
        stage_week=max(0, (monday - athlete.stage_since).days // 7) + 1,
        next_letter=next_letter(turn, person.id, monday),
        last_ordinary_sets=_last_ordinary_sets(weeks, past),
        sets_share=min(lighter_share, back.share_of_sets, missed_share),
        is_first_two_weeks=weeks_trained(athlete, monday) < FIRST_WEEKS,
        wanted=_wanted(turn, athlete, picture),
        held_at_stage_one=held,
        has_upkeep=athlete.profile.has_upkeep,
        can_pull_dynamically=_can_pull_dynamically(turn, athlete, monday=monday),
        not_yet=_not_yet(turn, athlete, past, monday=monday),
        hard_days=hard_days_of(turn, person, athlete, monday=monday),
        pull_exposures_to_go=_pull_exposures_to_go(turn, person, athlete, monday=monday),
        **_planned(turn, athlete, past, monday=monday, picture=picture, held=held),
    )


def with_plan(
    turn: Turn, athlete: Athlete, request: WeekRequest, *, past: Sequence[SessionRecord]
) -> WeekRequest:
    """Return the request as another plan of the coach would have it; the rest stands."""
    picture = pain_picture.picture_of(turn, athlete)
    held = request.held_at_stage_one
    monday = request.week_start
    planned = _planned(turn, athlete, past, monday=monday, picture=picture, held=held)
    return request.model_copy(update=planned)


def _planned(
    turn: Turn,
    athlete: Athlete,
    past: Sequence[SessionRecord],
    *,
    monday: date,
    picture: PainPicture,
    held: frozenset[Direction],
) -> dict[str, Any]:
    """Return everything of a request that hangs on the coach's plan."""
    changed = athlete.profile.coach_plan
    return {
        "weekdays": moved_weekdays(
            sorted(day + 1 for day in athlete.profile.weekdays),
            week_start=monday,
            moves=changed.moves,
        ),
        "history": in_use(turn, past, monday=monday, picture=picture, changed=changed),
        "pinned": changed.pinned,
        "banned": banned_hangs(turn, athlete) | changed.banned,
        "allowed_by_coach": _allowed(turn, changed, held),
    }


def _allowed(turn: Turn, changed: CoachPlan, held: frozenset[Direction]) -> frozenset[str]:
    """Return what an override permits; a held direction is only ever given back by itself."""
    library = turn.house.library.movements
    return frozenset(
        key
        for key in changed.allowed
        if key in library and not held & {library[key].direction, library[key].stands_in_for}
    )


def cut_after_misses(turn: Turn, past: Sequence[SessionRecord], *, monday: date) -> Decision[float]:
    """Decide the share of the sets [fraction] after two weeks with half the items missed."""
    count = turn.house.rulebook.volume.missed_weeks.whole
    weeks = [monday - timedelta(weeks=back) for back in range(count, 0, -1)]
    shares = [share for week in weeks if (share := _missed_share(past, week)) is not None]
    return share_after_missed_weeks(shares, rulebook=turn.house.rulebook)


def _missed_share(past: Sequence[SessionRecord], monday: date) -> float | None:
    """Return the share of a week's sent main items that was not done [0-1]; None if none was."""
    items = [
        item
        for session in past
        if monday <= session.on < monday + timedelta(days=7) and session.state in SENT_STATES
        for item in session.items
        if item.pair is not None and item.dose is not None and not item.is_left_out
    ]
    return sum(not item.sets for item in items) / len(items) if items else None


def kinds_of_past(turn: Turn, athlete_id: int, *, before: date) -> tuple[WeekKind, ...]:
    """Return what the latest weeks before a Monday were, the earliest first."""
    since = before - WEEKS_COUNTED
    weeks = [
        week for week in training.weeks(turn.tx, athlete_id, since=since) if week.monday < before
    ]
    days = training.trained_days(turn.tx, athlete_id, before=before, since=since)
    trained = {monday_of(day) for day in days}
    return tuple(_kind_of(week, trained) for week in weeks)


def _kind_of(week: WeekRecord, trained: Set[date]) -> WeekKind:
    if week.kind is SeasonWeekKind.BREAK:
        return WeekKind.MISSED
    if week.is_lighter:
        return WeekKind.LIGHTER
    if week.sets_share < 1:
        return WeekKind.RETURNING
    return WeekKind.ORDINARY if week.monday in trained else WeekKind.MISSED


def _wanted(turn: Turn, athlete: Athlete, picture: PainPicture) -> frozenset[str]:
    """Return the movements that the stage's standards ask for, but for what hurts now."""
    library = turn.house.library.movements
    keys = (row.movements[0] for row in turn.house.rulebook.standards.get(athlete.stage, ()))
    return frozenset(
        key
        for key in keys
        if key in library and not pain_picture.touches(picture.no_step, library[key])
    )


def _can_pull_dynamically(turn: Turn, athlete: Athlete, *, monday: date) -> bool:
    """Ask for strict pull-ups only where the stage has anything dynamic."""
    rulebook = turn.house.rulebook
    if not rulebook.stage(athlete.stage).has_dynamic:
        return False
    keys = rulebook.stages.extras.strict_pull_movements
    since = counts_from(athlete, today=monday)
    exposures = history.exposures(turn.tx, athlete.person_id, keys, since=since)
    return can_pull_dynamically(exposures, rulebook=rulebook).value


def _not_yet(
    turn: Turn, athlete: Athlete, past: Sequence[SessionRecord], *, monday: date
) -> frozenset[str]:
    """Return the movements that are beyond the athlete today.

    Half a year back what was trained counts; longer ago it begins a rung lower (ch).
    """
    rulebook = turn.house.rulebook
    done = [one for session in past for item in session.items if (one := item.exposure(session.on))]
    shown = shown_by(done, rulebook=rulebook)
    trained = history.movements_trained(
        turn.tx, athlete.person_id, since=monday - TRAINED_COUNTS, before=monday
    )
    return not_yet(
        shown.model_copy(update={"trained": shown.trained | trained}),
        profile=athlete.profile.facts,
        weeks_trained=weeks_trained(athlete, monday),
        library=turn.house.library,
        rulebook=rulebook,
    )


def _pull_exposures_to_go(turn: Turn, person: Person, athlete: Athlete, *, monday: date) -> int:
    """Count the careful first exposures of pulling for repetitions that are still ahead."""
    rules, facts = turn.house.rulebook, athlete.profile.facts
    back = returning(turn, athlete, on=monday).value
    if not is_new_to_pulling(facts, returning=back, rulebook=rules):
        return 0
    done = pulls_done(turn, person, before=monday)
    return max(0, rules.guards.pull_exposures.whole - done)


def _held_back(turn: Turn, picture: PainPicture) -> frozenset[Direction]:
    """Return the directions that come back one step lower after a clinician's look (ch).

    They keep to stage 1's row, straight arms and endurance, for as long as the return lasts.
    """
    held: set[Direction] = set()
    for one in picture.returns:
        if not one.is_one_step_back:
            continue
        if one.region is None:
            return frozenset(Direction)
        spared = left_out_for(one.region.site, one.region.arm)
        held |= {
            movement.direction
            for movement in turn.house.library.movements.values()
            if movement.role is Role.MAIN and pain_picture.touches(spared, movement)
        }
    return frozenset(held)


def next_letter(turn: Turn, athlete_id: int, monday: date) -> DayLetter:
    """Return whose turn it is of days A, B and C when a week begins."""
    before = training.week_before(turn.tx, athlete_id, monday)
    return DayLetter.A if before is None else DayLetter(before.next_letter)


def shares_of(
    turn: Turn, athlete: Athlete, sessions: Sequence[SessionRecord], *, monday: date
) -> tuple[Reason, ...]:
    """Return why a week has fewer sets beside the season: a return, or weeks half missed."""
    back = returning(turn, athlete, on=monday)
    past = [session for session in sessions if session.on < monday]
    missed = cut_after_misses(turn, past, monday=monday)
    return (*(back.reasons if back.value.share_of_sets < 1 else ()), *missed.reasons)


def _last_ordinary_sets(
    weeks: Sequence[WeekRecord], past: Sequence[SessionRecord]
) -> dict[Direction, int]:
    """Count the planned sets of each direction in the last week that was an ordinary one."""
    for week in reversed(weeks):
        mine = [session for session in past if session.week_id == week.id]
        if (
            week.is_lighter
            or week.sets_share < 1
            or not any(one.state is SessionState.TRAINED for one in mine)
        ):
            continue
        sets: dict[Direction, int] = {}
        for session in mine:
            for item in session.items:
                if item.pair is not None:
                    sets[item.direction] = sets.get(item.direction, 0) + item.planned_sets
        return sets
    return {}


def kept_slots(sessions: Sequence[SessionRecord]) -> tuple[Slot, ...]:
    """Return what is sent or done this week as slots: it stands and counts."""
    return tuple(
        Slot(
            on=session.on,
            letter=DayLetter(session.letter),
            position=item.position,
            pair=item.pair,
            direction=item.direction,
            movement_key=item.movement_key,
            quality=item.quality,
            sets=item.planned_sets,
            arms=frozenset(item.arms),
        )
        for session in sessions
        if session.state is not SessionState.PLANNED
        for item in session.items
        if not item.is_left_out
    )
