"""Upkeep on or off: bent-arm work that is done elsewhere goes on, a little, in our weeks."""

import re

from bot.acts import draw_week
from bot.acts.about_athlete import entries
from bot.acts.find_athlete import Named, subject_of
from bot.acts.tell_athlete import tell
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import coach_settings as words
from storage.queries import care, people
from storage.records.people import Person

SET = "upkeep.set"
ON_OR_OFF = re.compile(
    r"\s*(?P<which>on|off|s[ií]|no)\b[\s,.:;-]*(?P<why>.*)", re.IGNORECASE | re.DOTALL
)


def change(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Switch it, on record, and plan the coming weeks anew."""
    tongue, said = turn.tongue(coach), ON_OR_OFF.match(named.rest)
    if said is None or not said["why"].strip():
        turn.say(coach, words.upkeep_usage(tongue))
        return Outcome.NOT_UNDERSTOOD
    is_on, profile = said["which"].lower() not in {"off", "no"}, named.athlete.profile
    if profile.has_upkeep is is_on:
        turn.say(coach, words.upkeep_same(tongue, name=named.person.name, is_on=is_on))
        return Outcome.NOT_UNDERSTOOD
    new = profile.model_copy(update={"has_upkeep": is_on})
    athlete = people.change_athlete(turn.tx, named.person.id, profile=new)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=SET,
        athlete_id=named.person.id,
        actor_id=coach.id,
        words=said["why"].strip(),
        before={"is_on": not is_on},
        after={"is_on": is_on},
    )
    draw_week.redraw(turn, named.person, athlete)
    tongue_of_athlete = turn.tongue(named.person)
    text = words.upkeep_to_athlete(tongue_of_athlete, coach=coach.name, is_on=is_on)
    tell(turn, named.person, text)
    turn.say(
        coach,
        words.upkeep_set(tongue, name=named.person.name, is_on=is_on),
        subject=subject_of(named.person),
    )
    return Outcome.COMMAND


# ``/upkeep NAME on reason``.
command, picked = entries(change, act="coach.upkeep", example=words.UPKEEP_EXAMPLE)
TAPS = {"coach.upkeep": picked}
