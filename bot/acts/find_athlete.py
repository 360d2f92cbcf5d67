"""Which of a coach's athletes is meant, by a part of the name; nobody else's are ever found."""

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any

from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_names
from storage.queries import people
from storage.records.people import Athlete, Person

NEAR_CUTOFF = 0.6  # [ratio] ch: difflib's own default; "Anna" is near "Hanna"
NEAR_MOST = 3  # [names] ch
PRACTICE_WORDS = frozenset({"practice", "practica"})
CHOICES_MOST = 12  # [buttons] ch: who needs more has to write more of the name


@dataclass(frozen=True)
class Named:
    """An athlete of this coach, and what was written after the name."""

    person: Person
    athlete: Athlete
    rest: str


def athletes_for(turn: Turn, coach: Person) -> tuple[tuple[Person, Athlete], ...]:
    """Return whom the coach may name: own athletes, those of coaches stood in for, oneself.

    Oneself only while a practice athlete is there, who is counted nowhere.
    """
    return (*team_for(turn, coach), *people.athletes_of(turn.tx, coach.id, is_practice=True))


def team_for(turn: Turn, coach: Person) -> tuple[tuple[Person, Athlete], ...]:
    """Return the coach's own athletes, and those of coaches for whom they stand in."""
    own = people.athletes_of(turn.tx, coach.id)
    lent = [
        pair
        for other in people.coaches_covered_by(turn.tx, coach.id)
        for pair in people.athletes_of(turn.tx, other.id)
    ]
    return (*own, *lent)


def by_id(turn: Turn, coach: Person, athlete_id: int) -> tuple[Person, Athlete] | None:
    """Return the athlete with this id, if the coach may see them."""
    athlete = people.athlete(turn.tx, athlete_id)
    if athlete is None or (athlete.is_practice and athlete_id != coach.id):
        return None
    if athlete.coach_id != coach.id:
        other = people.person(turn.tx, athlete.coach_id)
        if other.stand_in_id != coach.id:
            return None
    return people.person(turn.tx, athlete_id), athlete


def named(
    turn: Turn,
    coach: Person,
    text: str,
    *,
    act: str,
    example: str,
    has_rest: bool,
    known: tuple[tuple[Person, Athlete], ...] | None = None,
) -> Named | Outcome:
    """Find whom a command is about; nobody or several is said, with buttons that go on.

    ``act`` is the tap that continues with ``athlete`` and ``rest``; ``has_rest`` tells that
    words after the name belong to the command; ``known`` are those who may be meant, where these
    are others than the coach's own and those lent to them.
    """
    if not text.strip():
        turn.say(coach, coach_names.name_missing(turn.tongue(coach), example=example))
        return Outcome.NOT_UNDERSTOOD
    if known is None:
        known = athletes_for(turn, coach)
    asked, rest = _split(text, [person.name for person, _ in known], has_rest=has_rest)
    found = _matches(asked, known)
    if len(found) == 1:
        return Named(person=found[0][0], athlete=found[0][1], rest=rest)
    if found:
        _ask_which(turn, coach, asked, rest, found, act=act)
        return Outcome.ASKED
    near = _near(asked, [person.name for person, _ in known])
    turn.say(coach, coach_names.nobody(turn.tongue(coach), asked=asked, near=near))
    return Outcome.NOT_UNDERSTOOD


def tapped(turn: Turn, coach: Person, arguments: Mapping[str, Any]) -> Named | Outcome:
    """Find whom a button is about; a coach who lost the athlete is told so."""
    found = by_id(turn, coach, int(arguments["athlete"]))
    if found is None:
        turn.say(coach, coach_names.not_yours(turn.tongue(coach)))
        return Outcome.STALE_TAP
    return Named(person=found[0], athlete=found[1], rest=str(arguments.get("rest", "")))


def _ask_which(
    turn: Turn,
    coach: Person,
    asked: str,
    rest: str,
    found: tuple[tuple[Person, Athlete], ...],
    *,
    act: str,
) -> None:
    tongue = turn.tongue(coach)
    taps = [
        [
            Tap(
                coach_names.choice(tongue, name=person.name, stage=athlete.stage),
                act,
                {"athlete": person.id, "rest": rest},
            )
        ]
        for person, athlete in found[:CHOICES_MOST]
    ]
    turn.say(coach, coach_names.which(tongue, asked=asked, count=len(found)), taps=taps)


def _split(text: str, names: list[str], *, has_rest: bool) -> tuple[str, str]:
    """Split a name from what follows: after the first word only whole words of a name count."""
    if not has_rest:
        return " ".join(text.split()), ""
    words = list(re.finditer(r"\S+", text))
    taken = 1
    while taken < len(words):
        so_far = [folded(word.group()) for word in words[: taken + 1]]
        if not any(_continues(so_far, folded(name).split()) for name in names):
            break
        taken += 1
    asked = " ".join(word.group() for word in words[:taken])
    return asked, text[words[taken - 1].end() :].strip()


def _continues(asked: list[str], name: list[str]) -> bool:
    first, *more = asked
    return any(
        first in word and name[place + 1 : place + 1 + len(more)] == more
        for place, word in enumerate(name)
    )


def _matches(
    asked: str, known: tuple[tuple[Person, Athlete], ...]
) -> tuple[tuple[Person, Athlete], ...]:
    wanted = folded(asked)
    exact = tuple(pair for pair in known if folded(pair[0].name) == wanted)
    if exact:
        return exact
    own = tuple(pair for pair in known if pair[1].is_practice and wanted in PRACTICE_WORDS)
    return own or tuple(pair for pair in known if wanted in folded(pair[0].name))


def _near(asked: str, names: list[str]) -> list[str]:
    by_fold: dict[str, str] = {}
    for name in names:
        for part in (folded(name), *folded(name).split()):
            by_fold.setdefault(part, name)
    close = get_close_matches(folded(asked), list(by_fold), n=NEAR_MOST, cutoff=NEAR_CUTOFF)
    return list(dict.fromkeys(by_fold[part] for part in close))


def folded(text: str) -> str:
    """Write a name so that case, accents and doubled spaces make no difference."""
    plain = unicodedata.normalize("NFKD", " ".join(text.split())).casefold()
    return "".join(letter for letter in plain if not unicodedata.combining(letter))


def subject_of(person: Person) -> str:
    """Return the subject that every message to a coach about one athlete carries."""
    return f"athlete:{person.id}"


def subject_id(subject: str | None) -> int | None:
    """Return which athlete a message was about, if it was about one."""
    kind, _, number = (subject or "").partition(":")
    return int(number) if kind == "athlete" and number.isdecimal() else None
