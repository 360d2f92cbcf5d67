"""An athlete who trains is held until the coach has looked, and goes on where they were."""

from bot.acts import close_session, draw_week
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named
from bot.turn import Turn
from bot.wording import settings as words
from scheduler.calendar.wall_time import monday_of
from storage.queries import care, people
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import OffBecause

HELD = "settings.waits"
SINCE_THEN = (HELD, "athlete.confirmed", "athlete.away_too_long")
"""What says why an athlete waits: the newest of these decides."""


def hold(turn: Turn, person: Person, athlete: Athlete) -> Athlete:
    """Hold an athlete: what is out is called off, nothing is planned until the coach has looked."""
    if athlete.state is AthleteState.WAITS_FOR_COACH:
        return athlete
    close_session.call_off_open(turn, person, OffBecause.WAITS_FOR_COACH)
    held = people.change_athlete(turn.tx, person.id, state=AthleteState.WAITS_FOR_COACH)
    draw_week.redraw(turn, person, held)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=HELD,
        athlete_id=person.id,
        actor_id=person.id,
        before={"state": athlete.state.value},
        after={"state": held.state.value},
    )
    return held


def is_held(turn: Turn, person: Person) -> bool:
    """Tell whether an athlete who waits was training before, and stage and start are kept."""
    newest = care.audit_of(turn.tx, person.id, most=1, what=SINCE_THEN)
    return bool(newest) and newest[0].what == HELD


def go_on(turn: Turn, coach: Person, named: Named) -> str:
    """Go on after the coach's look, in a break where one runs; return what the coach is told."""
    person, today = named.person, local_today(turn, named.person)
    until = named.athlete.paused_until
    is_on_break = until is not None and until > today
    state = AthleteState.PAUSED if is_on_break else AthleteState.TRAINING
    athlete = people.change_athlete(turn.tx, person.id, state=state)
    if not draw_week.draw(turn, person, athlete, monday=monday_of(today)):
        draw_week.redraw(turn, person, athlete)
    return words.goes_on_to_coach(turn.tongue(coach), name=person.name)
