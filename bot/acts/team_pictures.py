"""The team's picture with the digest, and each athlete's, ten at a time."""

from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any

from bot.acts import apart, find_athlete, history_picture
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import ALBUM_MOST, Shot, Tap, Turn
from bot.wording import pictures as picture_words
from bot.wording import team_picture as words
from bot.wording.team_picture import TeamMember
from storage.records.people import Person
from storage.records.wire import MessageKind

MORE = "coach.more_pictures"


def send(
    turn: Turn,
    coach: Person,
    members: Sequence[TeamMember],
    *,
    first: date,
    last: date,
    until: datetime,
    shots: Mapping[int, Shot] | None = None,
) -> None:
    """Send the team's picture, and an album of those who need a look; others by a button.

    ``shots`` are pictures that were gathered before, by athlete; the rest is gathered now.
    """
    if not members:
        return
    ordered = [one.roster.athlete_id for one in words.in_order(members)]
    looks = sum(one.needs_a_look for one in members)
    shown = ordered[: min(ALBUM_MOST, looks)]
    others = ordered[len(shown) :]
    tongue = turn.tongue(coach)
    team = Shot(
        picture=words.picture(tongue, members, first=first, last=last),
        caption=words.caption(tongue, members, first=first, last=last),
    )
    taps = [[Tap(picture_words.more_label(tongue), MORE, {"athletes": others})]] if others else []
    turn.send_picture(coach, team, kind=MessageKind.DIGEST, taps=taps, useful_until=until)
    found = [
        shot
        for one in shown
        if (shot := shots.get(one) if shots is not None else _shot(turn, coach, one)) is not None
    ]
    _send_group(turn, coach, found, kind=MessageKind.DIGEST, until=until)


def more(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Send the next ten, looked at again: who is no longer the coach's is left out."""
    waiting = [int(one) for one in arguments.get("athletes", ())]
    found: list[Shot] = []
    while waiting and len(found) < ALBUM_MOST:
        shot = _shot(turn, coach, waiting.pop(0))
        if shot is not None:
            found.append(shot)
    tongue = turn.tongue(coach)
    if not found:
        turn.say(coach, picture_words.no_more(tongue))
        return Outcome.COMMAND
    _send_group(turn, coach, found, kind=MessageKind.REPLY, until=None)
    if waiting:
        turn.say(
            coach,
            picture_words.left(tongue, len(waiting)),
            taps=[[Tap(picture_words.more_label(tongue), MORE, {"athletes": waiting})]],
        )
    return Outcome.COMMAND


def _shot(turn: Turn, coach: Person, athlete_id: int) -> Shot | None:
    pair = find_athlete.by_id(turn, coach, athlete_id)
    if pair is None:
        return None
    return apart.looked_up(
        turn,
        f"P{athlete_id}-picture",
        lambda: history_picture.foremost_shot(turn, coach, *pair),
    )


def _send_group(
    turn: Turn,
    coach: Person,
    shots: Sequence[Shot],
    *,
    kind: MessageKind,
    until: datetime | None,
) -> None:
    if len(shots) == 1:
        turn.send_picture(coach, shots[0], kind=kind, useful_until=until)
    else:
        turn.send_album(coach, shots, kind=kind, useful_until=until)


TAPS = {MORE: more}
