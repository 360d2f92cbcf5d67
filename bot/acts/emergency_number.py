"""The emergency number that safety texts name: said by the coach, played back, on record."""

import re

from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import coach_safety as words
from storage.queries import care, people
from storage.records.people import Person

NUMBER = re.compile(r"\+?\d{2,6}")  # [digits] cp: emergency numbers are short


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/emergency 112``: what athletes are told to call; without a number, what it is now."""
    tongue = turn.tongue(coach)
    said = text.strip()
    if not said:
        turn.say(coach, words.number_now(tongue, coach.emergency_number))
        return Outcome.COMMAND
    if NUMBER.fullmatch(said) is None:
        turn.say(coach, words.number_unclear(tongue))
        return Outcome.NOT_UNDERSTOOD
    people.change_person(turn.tx, coach.id, emergency_number=said)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="coach.emergency_number",
        athlete_id=None,
        actor_id=coach.id,
        before={"number": coach.emergency_number},
        after={"number": said},
    )
    turn.say(coach, words.number_set(tongue, said))
    return Outcome.COMMAND
