"""A message that could not be handled: its raw text goes to the coach, and the person is told."""

import json
from collections.abc import Iterator
from typing import Any

from bot.acts.emergency_number import number_for
from bot.acts.find_athlete import subject_of
from bot.turn import Turn
from bot.wording import plain
from storage.queries import care, people
from storage.records.people import Person
from storage.records.wire import MessageKind, Received

WORDS_MOST = 3000  # [characters] botapi: a message holds 4096 UTF-16 units, names included


def tell(turn: Turn, received: Received, reference: str) -> None:
    """Tell everybody whom a set-aside update concerns."""
    person = (
        people.person_in_chat(turn.tx, received.chat_id) if received.chat_id is not None else None
    )
    words = words_of(received.raw)
    athlete = people.athlete(turn.tx, person.id) if person else None
    if person is None or athlete is None:
        if person is not None:
            said = plain.set_aside_to_coach_self(turn.tongue(person), reference=reference)
            turn.say(person, said, kind=MessageKind.SAFETY)
        for owner in people.owners(turn.tx):
            _say_aside(turn, owner, person.name if person else "?", words, reference)
        return
    coach = people.person(turn.tx, athlete.coach_id)
    care.pass_on(turn.tx, athlete_id=person.id, words=words, at=turn.now)
    _say_aside(turn, coach, person.name, words, reference, subject=subject_of(person))
    turn.say(
        person,
        plain.set_aside_to_person(
            turn.tongue(person),
            coach=coach.name,
            reference=reference,
            number=number_for(turn, person, coach),
        ),
        kind=MessageKind.SAFETY,
    )


def words_of(raw: str | None) -> str:
    """Find what the person said in a raw update, however broken it is; else show it as it is.

    Of a tap it is what stood on the button: the message that it hangs under is our own.
    """
    try:
        tree = json.loads(raw or "")
    except ValueError:
        return (raw or "")[:WORDS_MOST]
    tap = tree.get("callback_query") if isinstance(tree, dict) else None
    said = _first_text(tree) if tap is None else _label_of(tap)
    return (said or json.dumps(tree, ensure_ascii=False))[:WORDS_MOST]


def _label_of(tap: Any) -> str | None:
    """Find the label of the tapped button under the message that the tap brought along."""
    wanted = tap.get("data") if isinstance(tap, dict) else None
    alike = (one for one in _dicts(tap) if wanted and one.get("callback_data") == wanted)
    label = next((one.get("text") for one in alike), None)
    return label if isinstance(label, str) else None


def _dicts(node: Any) -> Iterator[dict[str, Any]]:
    if isinstance(node, dict):
        yield node
    if isinstance(node, dict | list):
        for part in node.values() if isinstance(node, dict) else node:
            yield from _dicts(part)


def _first_text(node: Any) -> str | None:
    if isinstance(node, dict):
        for key in ("text", "caption"):
            if isinstance(node.get(key), str):
                return str(node[key])
        return next((found for part in node.values() if (found := _first_text(part))), None)
    return None


def _say_aside(
    turn: Turn, to: Person, name: str, words: str, reference: str, *, subject: str | None = None
) -> None:
    turn.say(
        to,
        plain.set_aside_to_coach(turn.tongue(to), name=name, words=words, reference=reference),
        kind=MessageKind.ALERT,
        subject=subject,
    )
