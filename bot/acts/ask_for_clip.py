"""Asking an athlete for a clip: switched on by the coach, once a week at most, and kindly."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any

from bot.acts import find_athlete, pain_picture
from bot.acts.about_athlete import about_tapped
from bot.acts.clip_item import ASKED
from bot.acts.find_athlete import Named, subject_of
from bot.acts.item_facts import sent_items
from bot.acts.tell_athlete import tell
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import clips as words
from bot.wording.movement_names import name_of
from scheduler.calendar.wall_time import monday_of
from scheduler.pain.values import Level
from scheduler.training.season_values import SeasonWeekKind
from storage.queries import care, clips, due, people, training
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord
from storage.records.wire import MessageKind

SET = "clips.asking"
KIND = "clip_ask"
EVERY = timedelta(days=7)  # [days] ch: at most one a week outside tests
ASK = re.compile(
    r"\s*(?:ask|pedir)\s+(?P<which>on|off|sí|si|no)(?!\w)\s*(?P<who>.*)", re.IGNORECASE | re.DOTALL
)
ASK_AT_ALL = re.compile(r"\s*(?:ask|pedir)\b", re.IGNORECASE)
EASY_WEEKS = frozenset(
    {
        SeasonWeekKind.LIGHTER,
        SeasonWeekKind.RETURNING,
        SeasonWeekKind.TAPER,
        SeasonWeekKind.EASY_AFTER,
        SeasonWeekKind.BREAK,
    }
)
NEVER = datetime.min.replace(tzinfo=UTC)


@dataclass(frozen=True)
class AskedFor:
    """What stood behind the command: on or off, and for whom; ``is_on`` None is a slip."""

    is_on: bool | None
    who: str


def asked_in(text: str) -> AskedFor | None:
    """Read ``ask on NAME``; None where the command says something else."""
    found = ASK.match(text)
    if found is not None:
        return AskedFor(is_on=found["which"].lower() not in {"off", "no"}, who=found["who"].strip())
    return AskedFor(is_on=None, who="") if ASK_AT_ALL.match(text) else None


def switch(turn: Turn, coach: Person, asked: AskedFor) -> Outcome:
    """Switch it for one athlete, on record, and tell them."""
    if asked.is_on is None:
        turn.say(coach, words.usage(turn.tongue(coach)))
        return Outcome.NOT_UNDERSTOOD
    act = "clip.ask_on" if asked.is_on else "clip.ask_off"
    found = find_athlete.named(
        turn, coach, asked.who, act=act, example=words.ASK_EXAMPLE, has_rest=False
    )
    return found if isinstance(found, Outcome) else change(turn, coach, found, is_on=asked.is_on)


@about_tapped
def picked_on(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The athlete was chosen among several of that name."""
    return change(turn, coach, found, is_on=True)


@about_tapped
def picked_off(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The athlete was chosen among several of that name."""
    return change(turn, coach, found, is_on=False)


def change(turn: Turn, coach: Person, named: Named, *, is_on: bool) -> Outcome:
    """Keep it in the profile; switching it again takes it back."""
    tongue, profile, person = turn.tongue(coach), named.athlete.profile, named.person
    if profile.asks_for_clips is is_on:
        turn.say(coach, words.asking_same(tongue, name=person.name, is_on=is_on))
        return Outcome.NOT_UNDERSTOOD
    new = profile.model_copy(update={"asks_for_clips": is_on})
    people.change_athlete(turn.tx, person.id, profile=new)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=SET,
        athlete_id=person.id,
        actor_id=coach.id,
        before={"is_on": not is_on},
        after={"is_on": is_on},
    )
    tell(turn, person, words.asking_to_athlete(turn.tongue(person), coach=coach.name, is_on=is_on))
    turn.say(
        coach,
        words.asking(tongue, name=person.name, is_on=is_on),
        subject=subject_of(person),
    )
    return Outcome.COMMAND


def ask_if_due(turn: Turn, person: Person, athlete: Athlete, session_id: int) -> None:
    """Ask for one main item of a session just sent; a clip of this week is enough."""
    if (
        not athlete.profile.asks_for_clips
        or pain_picture.picture_of(turn, athlete).level > Level.NONE
    ):
        return
    session = training.session(turn.tx, session_id)
    week = training.week_of(turn.tx, session.week_id)
    if week.is_lighter or week.kind in EASY_WEEKS:
        return
    item = _longest_unseen(turn, person, [one for one in sent_items(session) if one.pair])
    if item is None or clips.has_any_since(turn.tx, person.id, since=turn.now - EVERY):
        return
    is_new = due.take(
        turn.tx,
        person_id=person.id,
        kind=KIND,
        subject=monday_of(session.on).isoformat(),
        due_at=turn.now,
        now=turn.now,
    )
    if is_new:
        coach = people.person(turn.tx, athlete.coach_id)
        movement = turn.house.library.movements[item.movement_key]
        name = name_of(turn.tongue(person), movement)
        turn.say(
            person,
            words.please_film(turn.tongue(person), coach=coach.name, item=name),
            kind=MessageKind.NOTICE,
            subject=f"{ASKED}:{item.id}",
            useful_until=turn.now + timedelta(hours=12),
        )


def _longest_unseen(turn: Turn, person: Person, items: list[ItemRecord]) -> ItemRecord | None:
    """Return the item whose movement was shown longest ago, never before all."""
    shown = clips.last_by_movement(turn.tx, person.id)
    return min(items, key=lambda one: shown.get(one.movement_key, NEVER), default=None)


TAPS = {"clip.ask_on": picked_on, "clip.ask_off": picked_off}
