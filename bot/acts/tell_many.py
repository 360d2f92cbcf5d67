"""The coach's words to everybody or to a group: shown with the count, sent by a tap."""

import re
from collections.abc import Mapping, Sequence
from typing import Any

from bot.acts import tell_athlete
from bot.acts.coach_dues import CoachDue
from bot.acts.find_athlete import folded
from bot.acts.set_group import EVERYBODY, groups_of, known_group
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_messages
from bot.wording import tell_many as words
from bot.wording.pages import pieces_of
from storage.queries import care, due, people
from storage.records.people import Athlete, Person

SEND, LEAVE = "coach.tell_many", "coach.tell_many_not"
DONE = CoachDue.MANY_TOLD
TOLD = "coach.told_many"

Pairs = Sequence[tuple[Person, Athlete]]


def command(turn: Turn, coach: Person, text: str, event: Wrote) -> Outcome:
    """``/tell all …``, ``/tell GROUP …``, else ``/tell NAME …``."""
    pairs = people.athletes_of(turn.tx, coach.id)
    found = _addressed(text, groups_of(pairs))
    if found is None:
        return tell_athlete.command(turn, coach, text, event)
    group, said = found
    if not said:
        turn.say(coach, words.text_missing(turn.tongue(coach)))
        return Outcome.NOT_UNDERSTOOD
    meant = [pair for pair in pairs if not group or pair[1].group_name == group]
    return _ask(turn, coach, meant, group=group, text=said, message_id=event.message_id)


def _addressed(text: str, groups: Sequence[str]) -> tuple[str, str] | None:
    """Return the group ("" for everybody) and the text behind it; None for one athlete."""
    spaces = list(re.finditer(r"\S+", text))
    if spaces and folded(spaces[0].group()) in EVERYBODY:
        return "", text[spaces[0].end() :].strip()
    for taken in range(len(spaces), 0, -1):
        group = known_group(text[: spaces[taken - 1].end()], groups)
        if group is not None:
            return group, text[spaces[taken - 1].end() :].strip()
    return None


def _ask(
    turn: Turn, coach: Person, meant: Pairs, *, group: str, text: str, message_id: int
) -> Outcome:
    tongue = turn.tongue(coach)
    reached = [person for person, _ in meant if _is_reached(person)]
    if not reached:
        turn.say(coach, words.nobody(tongue))
        return Outcome.COMMAND
    about = {"athletes": [one.id for one, _ in meant], "text": text, "message": message_id}
    turn.say(
        coach,
        words.ask(
            tongue,
            group=group,
            text=text,
            names=[one.name for one in reached],
            unreached=[one.name for one, _ in meant if not _is_reached(one)],
        ),
        taps=[
            [
                Tap(words.send_label(tongue, len(reached)), SEND, about),
                Tap(words.not_now_label(tongue), LEAVE),
            ]
        ],
    )
    return Outcome.ASKED


def send(turn: Turn, coach: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Send to each of those who were shown and are still this coach's; never a second time."""
    tongue, text = turn.tongue(coach), str(arguments["text"])
    is_new = due.take(
        turn.tx,
        person_id=coach.id,
        kind=DONE,
        subject=f"{coach.chat_id}:{arguments['message']}",
        due_at=turn.now,
        now=turn.now,
    )
    if not is_new:
        turn.say(coach, words.sent_before(tongue))
        return Outcome.STALE_TAP
    shown = set(arguments["athletes"])
    own = [one for one, _ in people.athletes_of(turn.tx, coach.id) if one.id in shown]
    reached = [one for one in own if _send_one(turn, coach, one, text)]
    unreached = [one.name for one in own if one not in reached]
    said = words.sent(tongue, text=text, count=len(reached), unreached=unreached)
    turn.answer_tap(coach, event.message_id, said)
    return Outcome.PASSED_ON


def leave(turn: Turn, coach: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Nothing is sent."""
    turn.answer_tap(coach, event.message_id, words.not_sent(turn.tongue(coach)))
    return Outcome.COMMAND


def _send_one(turn: Turn, coach: Person, person: Person, text: str) -> bool:
    """Write to one; what they asked stays unanswered, since a round letter answers nobody."""
    tongue = turn.tongue(person)
    pieces = [
        coach_messages.from_coach(tongue, coach=coach.name, text=piece)
        for piece in pieces_of(text, most=tell_athlete.PIECE_UNITS)
    ]
    if not all(tell_athlete.tell(turn, person, piece) for piece in pieces):
        return False
    care.write_audit(turn.tx, at=turn.now, what=TOLD, athlete_id=person.id, actor_id=coach.id)
    return True


def _is_reached(person: Person) -> bool:
    return person.chat_id is not None and not person.is_blocked


TAPS = {SEND: send, LEAVE: leave}
