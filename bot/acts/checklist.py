"""The checklist to move up, from what is stored."""

from datetime import date, timedelta

from bot.acts import pain_picture
from bot.turn import Turn
from scheduler.calendar.wall_time import local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.catalogue.values import Role
from scheduler.training.gates import Checklist, GateFacts, checklist
from scheduler.training.sides import SideRatio, side_ratio
from scheduler.training.values import Exposure, StageState
from storage.queries import care, training
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord, SessionState

ADHERENCE_WINDOW = timedelta(weeks=4)  # [weeks] ch: the checklist's span for sessions kept
PAIN_WINDOW = timedelta(days=14)  # [days] ch: the checklist's span for pain


def checklist_of(turn: Turn, person: Person, athlete: Athlete) -> Checklist:
    """Draw up the checklist of an athlete as of today."""
    today = local_today(turn, person)
    sessions = training.sessions_between(
        turn.tx, person.id, first=today - ADHERENCE_WINDOW, last=today
    )
    picture = pain_picture.picture_of(turn, athlete)
    facts = GateFacts(
        state=StageState(
            stage=athlete.stage,
            entered_on=athlete.stage_since,
            is_re_earned=athlete.stage_is_re_earned,
        ),
        on=today,
        profile=athlete.profile.facts,
        exposures=training.all_exposures(turn.tx, person.id),
        sessions_sent=_count_sent(sessions),
        sessions_done=_count_done(sessions),
        worst_pain=pain_picture.worst_score_since(turn, athlete, turn.now - PAIN_WINDOW),
        has_something_rested=not picture.rested.is_empty,
        has_open_alert=bool(care.open_alerts(turn.tx, athlete_id=person.id)),
        side_ratios=side_ratios(turn, person),
    )
    return checklist(facts, rulebook=turn.house.rulebook)


def side_ratios(turn: Turn, person: Person) -> tuple[SideRatio, ...]:
    """Return how the arms compare in each main movement that was done arm by arm often enough."""
    enough = turn.house.rulebook.gates.sides_sessions.whole
    library = turn.house.library.movements
    by_movement: dict[str, list[Exposure]] = {}
    for exposure in training.all_exposures(turn.tx, person.id):
        movement = library.get(exposure.dose.movement_key)
        if movement is None or movement.role is Role.ACCESSORY:
            continue
        by_movement.setdefault(exposure.dose.movement_key, []).append(exposure)
    ratios = (
        side_ratio(exposures, rulebook=turn.house.rulebook) for exposures in by_movement.values()
    )
    return tuple(ratio for ratio in ratios if ratio is not None and ratio.sessions >= enough)


def _count_sent(sessions: tuple[SessionRecord, ...]) -> int:
    counted = {SessionState.SENT, SessionState.TRAINED, SessionState.MISSED}
    return sum(session.state in counted for session in sessions)


def _count_done(sessions: tuple[SessionRecord, ...]) -> int:
    return sum(session.state is SessionState.TRAINED for session in sessions)


def local_today(turn: Turn, person: Person) -> date:
    """Return the person's own date."""
    return local_date_of(turn.now, zone_named(person.zone))
