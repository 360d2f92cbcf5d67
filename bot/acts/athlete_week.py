"""What the digest says of one athlete's week: gathered athlete by athlete, between replies.

A digest for sixty is seconds of work. It is gathered in steps, each in a transaction of its own,
so that whoever writes meanwhile is answered; only what was gathered is then written as one.
"""

from collections.abc import Callable, Generator, Mapping
from contextlib import AbstractContextManager
from dataclasses import dataclass, field
from datetime import date, timedelta

from bot.acts import (
    apart,
    digest_days,
    history_picture,
    limits,
    pain_picture,
    team_members,
    week_figures,
)
from bot.acts.bests import Best, bests_between
from bot.acts.standing_still import still_lines
from bot.turn import ALBUM_MOST, Shot, Turn
from bot.wording import team_picture as team_words
from bot.wording.limits import Change
from bot.writer import log_fault
from scheduler.pain.values import Level
from storage.queries import people, training
from storage.records.people import Athlete, Person

DAY = timedelta(days=1)  # [days] definition
OpenTurn = Callable[[], AbstractContextManager[Turn]]


@dataclass(frozen=True)
class AthleteWeek:
    """One athlete's week: main sets done, bests, the largest real change, how pain stands,
    and the dose that has stood still longest, in words.

    ``is_known`` False: it could not be worked out. ``level`` None: not even how pain stands.
    """

    push: int = 0
    pull: int = 0
    bests: tuple[Best, ...] = ()
    change: Change | None = None
    level: Level | None = None
    still: str = ""
    is_known: bool = True


@dataclass(frozen=True)
class Gathered:
    """What was gathered for a coach's digest, by athlete; what is missing is gathered later."""

    on: date | None = None
    weeks: Mapping[int, AthleteWeek] = field(default_factory=dict)
    shots: Mapping[int, Shot] | None = None


NOTHING = Gathered()


def week_or_not(
    turn: Turn, coach: Person, person: Person, athlete: Athlete, *, first: date, last: date
) -> AthleteWeek:
    """Look at one athlete's week; where a fault forbids it, only at how pain stands.

    One athlete's fault never costs a coach the digest, which names who could not be worked out.
    """
    week = apart.looked_up(
        turn,
        f"P{person.id}-week",
        lambda: week_of(turn, coach, person, athlete, first=first, last=last),
    )
    if week is not None:
        return week
    level = apart.looked_up(
        turn, f"P{person.id}-level", lambda: pain_picture.picture_of(turn, athlete).level
    )
    return AthleteWeek(level=level, is_known=False)


def week_of(
    turn: Turn, coach: Person, person: Person, athlete: Athlete, *, first: date, last: date
) -> AthleteWeek:
    """Look at one athlete's week."""
    sessions = training.sessions_between(turn.tx, person.id, first=first, last=last)
    figures = week_figures.figures_of(turn, sessions)
    changes = limits.changes_of(turn, athlete, first=first, last=last)
    still = still_lines(turn, coach, person, today=last, first=first)
    return AthleteWeek(
        push=figures.push.done,
        pull=figures.pull.done,
        bests=tuple(bests_between(turn, turn.tongue(coach), person.id, first=first, last=last)),
        change=changes[0] if changes else None,
        level=pain_picture.picture_of(turn, athlete).level,
        still=still[0] if still else "",
    )


def levels_of(weeks: Mapping[int, AthleteWeek]) -> dict[int, Level]:
    """Return how pain stands, by athlete; who is not in it could not be worked out."""
    return {athlete_id: week.level for athlete_id, week in weeks.items() if week.level is not None}


def gather(open_turn: OpenTurn, coach_id: int, on: date) -> Generator[None, None, Gathered]:
    """Gather a coach's digest in steps; the pictures of those who need a look come last."""
    with open_turn() as turn:
        ids = [person.id for person, _ in people.athletes_of(turn.tx, coach_id)]
        first = digest_days.first_of(turn, people.person(turn.tx, coach_id), on)
    last = on - DAY
    weeks: dict[int, AthleteWeek] = {}
    for athlete_id in ids:
        with open_turn() as turn:
            coach, pair = people.person(turn.tx, coach_id), _pair(turn, athlete_id)
            if pair is not None:
                weeks[athlete_id] = week_or_not(turn, coach, *pair, first=first, last=last)
        yield
    with open_turn() as turn:
        coach = people.person(turn.tx, coach_id)
        members = team_members.members_of(
            turn,
            coach,
            levels_of(weeks),
            first=first,
            last=last,
        )
    yield
    shots: dict[int, Shot] = {}
    for member in [one for one in team_words.in_order(members) if one.needs_a_look][:ALBUM_MOST]:
        athlete_id = member.roster.athlete_id
        shot = _shot(open_turn, coach_id, athlete_id)
        if shot is not None:
            shots[athlete_id] = shot
        yield
    return Gathered(on=on, weeks=weeks, shots=shots)


def _shot(open_turn: OpenTurn, coach_id: int, athlete_id: int) -> Shot | None:
    try:
        with open_turn() as turn:
            coach, pair = people.person(turn.tx, coach_id), _pair(turn, athlete_id)
            return history_picture.foremost_shot(turn, coach, *pair) if pair else None
    except Exception as fault:  # noqa: BLE001 (one picture's fault never costs the digest)
        log_fault(f"P{athlete_id}-picture", fault)
        return None


def _pair(turn: Turn, athlete_id: int) -> tuple[Person, Athlete] | None:
    athlete = people.athlete(turn.tx, athlete_id)
    return None if athlete is None else (people.person(turn.tx, athlete_id), athlete)
