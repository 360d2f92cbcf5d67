"""The owner names who hears a coach's alerts when the coach does not answer."""

from bot.acts.find_athlete import folded
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import stand_in as words
from storage.queries import care, people
from storage.records.people import Person
from storage.records.wire import MessageKind

NOBODY = frozenset({"nobody", "none", "nadie", "-"})


def command(turn: Turn, owner: Person, text: str, _event: Wrote) -> Outcome:
    """``/standin COACH NAME``: NAME is told of COACH's alerts that stay unseen; or ``nobody``."""
    tongue = turn.tongue(owner)
    coaches = people.coaches(turn.tx)
    if not text.strip():
        turn.say(owner, words.how(tongue, [one.name for one in coaches]))
        return Outcome.COMMAND
    found = _pair(text, coaches)
    if found is None:
        turn.say(owner, words.not_clear(tongue, [one.name for one in coaches]))
        return Outcome.NOT_UNDERSTOOD
    coach, other = found
    if other is not None and other.id == coach.id:
        turn.say(owner, words.not_oneself(tongue, coach.name))
        return Outcome.NOT_UNDERSTOOD
    people.change_person(turn.tx, coach.id, stand_in_id=other.id if other else None)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="coach.stand_in",
        athlete_id=None,
        actor_id=owner.id,
        before={"coach": coach.id, "stand_in": coach.stand_in_id},
        after={"coach": coach.id, "stand_in": other.id if other else None},
    )
    turn.say(owner, words.named(tongue, coach.name, other.name if other else ""))
    if coach.id != owner.id:
        turn.say(
            coach,
            words.told_coach(turn.tongue(coach), other.name if other else ""),
            kind=MessageKind.NOTICE,
        )
    if other is not None and other.id != owner.id:
        said = words.told_stand_in(turn.tongue(other), coach.name)
        turn.say(other, said, kind=MessageKind.NOTICE)
    return Outcome.COMMAND


def _pair(text: str, coaches: tuple[Person, ...]) -> tuple[Person, Person | None] | None:
    """Split a text into two names wherever exactly one split names two coaches."""
    parts = text.split()
    found: set[tuple[int, int | None]] = set()
    for cut in range(1, len(parts)):
        first, second = " ".join(parts[:cut]), " ".join(parts[cut:])
        coach = _one(first, coaches)
        if coach is None:
            continue
        if folded(second) in NOBODY:
            found.add((coach.id, None))
        elif (other := _one(second, coaches)) is not None:
            found.add((coach.id, other.id))
    if len(found) != 1:
        return None
    coach_id, other_id = found.pop()
    by_id = {one.id: one for one in coaches}
    return by_id[coach_id], None if other_id is None else by_id[other_id]


def _one(name: str, coaches: tuple[Person, ...]) -> Person | None:
    wanted = folded(name)
    exact = [one for one in coaches if folded(one.name) == wanted]
    alike = exact or [one for one in coaches if wanted in folded(one.name)]
    return alike[0] if len(alike) == 1 else None
