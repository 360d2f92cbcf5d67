"""What an old injury holds back: given back by the coach, each direction with a reason."""

from collections.abc import Mapping
from typing import Any

from bot.acts import ask_why, draw_week
from bot.acts.about_athlete import about_tapped, entries
from bot.acts.find_athlete import Named, subject_of
from bot.acts.injuries import outcome_of
from bot.acts.tell_athlete import tell
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_settings as words
from scheduler.catalogue.values import Direction
from scheduler.training.baseline_values import IntakeOutcome
from storage.queries import care, people
from storage.records.people import Person

ACT = "coach.giveback"
GIVEN_BACK = "injury.given_back"
HANGS, ALL = "hangs", "all"


def ask(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Show what is held, with a button for each; a reason comes first."""
    tongue, outcome = turn.tongue(coach), outcome_of(turn, named.athlete).value
    if not outcome.held and outcome.may_hang:
        turn.say(coach, words.nothing_held(tongue, name=named.person.name))
        return Outcome.COMMAND
    if not named.rest.strip():
        what = words.to_give_back(tongue, name=named.person.name)
        return ask_why.ask_in_words(turn, coach, named, act=ACT, what=what)
    turn.say(
        coach,
        words.which_to_lift(tongue, name=named.person.name),
        taps=[[_tap(turn, coach, named, key)] for key in _keys(outcome)],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def held_line(turn: Turn, coach: Person, named: Named) -> str:
    """Say to the coach what is held, empty where nothing is."""
    outcome = outcome_of(turn, named.athlete).value
    keys = _keys(outcome)
    if not keys or not named.athlete.profile.screen_yes:
        return ""
    return words.held(turn.tongue(coach), [key for key in keys if key != ALL])


def _keys(outcome: IntakeOutcome) -> list[str]:
    held = [direction.value for direction in Direction if direction in outcome.held]
    hangs = [] if outcome.may_hang else [HANGS]
    every = [*held, *hangs]
    return [*every, ALL] if len(every) > 1 else every


def _tap(turn: Turn, coach: Person, named: Named, key: str) -> Tap:
    arguments = {"athlete": named.person.id, "what": key, "why": named.rest.strip()}
    return Tap(words.lift_label(turn.tongue(coach), key), "coach.giveback_one", arguments)


@about_tapped
def give_back(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Give one direction back, or the hangs, or all; plan anew, tell both."""
    what, profile = str(arguments["what"]), found.athlete.profile
    lifted = set(Direction) if what == ALL else {Direction(what)} if what != HANGS else set()
    new = profile.model_copy(
        update={
            "lifted": profile.lifted | lifted,
            "are_hangs_lifted": profile.are_hangs_lifted or what in {HANGS, ALL},
        }
    )
    if new == profile:
        turn.say(coach, words.nothing_held(turn.tongue(coach), name=found.person.name))
        return Outcome.STALE_TAP
    athlete = people.change_athlete(turn.tx, found.person.id, profile=new)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=GIVEN_BACK,
        athlete_id=found.person.id,
        actor_id=coach.id,
        words=str(arguments["why"]),
        before={"held": sorted(outcome_of(turn, found.athlete).value.held)},
        after={"held": sorted(outcome_of(turn, athlete).value.held), "what": what},
    )
    draw_week.redraw(turn, found.person, athlete)
    told = words.lifted_to_athlete(turn.tongue(found.person), coach=coach.name, what=what)
    tell(turn, found.person, told)
    turn.say(
        coach,
        words.lifted(turn.tongue(coach), name=found.person.name, what=what),
        subject=subject_of(found.person),
    )
    return Outcome.COMMAND


# ``/giveback NAME reason``: then a button for each direction that is held.
command, picked = entries(ask, act=ACT, example=words.EXAMPLE_OF_GIVING_BACK)
TAPS = {ACT: picked, "coach.giveback_one": give_back}
