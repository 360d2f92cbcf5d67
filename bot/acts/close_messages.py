"""A message that was passed on and needs no answer leaves the roster by the coach's tap."""

from collections.abc import Mapping
from typing import Any

from bot.acts.about_athlete import about_tapped
from bot.acts.find_athlete import Named, subject_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import unanswered as words
from storage.queries import care
from storage.records.people import Person

CLOSE, REOPEN = "coach.no_answer", "coach.no_answer_back"
CLOSED, REOPENED = "messages.closed", "messages.reopened"


def tap_for(turn: Turn, coach: Person, person: Person) -> Tap | None:
    """Return the button, where messages of the athlete wait; it closes those seen, no later one."""
    waiting = care.unanswered(turn.tx, [person.id])
    if not waiting:
        return None
    label = words.close_label(turn.tongue(coach))
    return Tap(label, CLOSE, {"athlete": person.id, "messages": [one.id for one in waiting]})


@about_tapped
def close(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Close the messages that the coach had before them; one that came since stays."""
    person, tongue = found.person, turn.tongue(coach)
    shown = set(arguments["messages"])
    ids = [one.id for one in care.unanswered(turn.tx, [person.id]) if one.id in shown]
    if not ids:
        turn.say(coach, words.answered_before(tongue, name=person.name))
        return Outcome.STALE_TAP
    care.set_answered(turn.tx, ids, at=turn.now)
    _record(turn, coach, person, CLOSED, ids)
    about = {"athlete": person.id, "messages": ids}
    turn.say(
        coach,
        words.closed(tongue, name=person.name, count=len(ids)),
        taps=[[Tap(words.reopen_label(tongue), REOPEN, about)]],
        subject=subject_of(person),
    )
    return Outcome.COMMAND


@about_tapped
def reopen(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Put them back onto the roster."""
    ids = [int(one) for one in arguments["messages"]]
    care.set_answered(turn.tx, care.messages_of(turn.tx, found.person.id, ids), at=None)
    _record(turn, coach, found.person, REOPENED, ids)
    said = words.reopened(turn.tongue(coach), name=found.person.name)
    turn.say(coach, said, subject=subject_of(found.person))
    return Outcome.COMMAND


def _record(turn: Turn, coach: Person, person: Person, what: str, ids: list[int]) -> None:
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=what,
        athlete_id=person.id,
        actor_id=coach.id,
        after={"messages": ids},
    )


TAPS = {CLOSE: close, REOPEN: reopen}
