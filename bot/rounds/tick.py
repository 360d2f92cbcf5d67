"""One round: what is due for whom, each person apart, so that one fault stops nobody else.

A round pauses behind each person, so that whoever writes meanwhile does not wait for all of it.
What is done is done in each person's own transaction and marked there: a round that a crash ends
is done again from its beginning, and does nothing twice.
"""

from collections.abc import Callable, Generator, Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta
from functools import partial

from sqlmodel import Session

from bot.acts import leave
from bot.acts.athlete_week import NOTHING, Gathered
from bot.rounds import athlete_round, coach_round, house_round
from bot.turn import Turn
from bot.writer import log_fault
from scheduler.calendar.lateness import stood_still
from storage.database import Database
from storage.queries import due, leaving, people

LAST_ROUND = "last_round"
FIRST_LOOK_BACK = timedelta(minutes=1)  # [min] ch: a new house owes nothing from before

MakeTurn = Callable[[Session, datetime], Turn]
Now = Callable[[], datetime]


def run(database: Database, now: datetime, make_turn: MakeTurn) -> None:
    """Do everything that is due by ``now`` in one go."""
    for _ in steps(database, lambda: now, make_turn):
        pass


def steps(database: Database, now: Now, make_turn: MakeTurn) -> Iterator[None]:
    """Do everything that is due, and yield behind each person.

    Each person's time is that of their own turn: what they wrote while the round went on is not
    in its future. The next round looks back to where this one began.
    """
    began_at = now()
    with database.transaction() as tx:
        since = due.mark(tx, LAST_ROUND) or began_at - FIRST_LOOK_BACK
        athlete_ids = people.ids_of_athletes_in(tx, *athlete_round.STATES)
        coach_ids = people.ids_of_coaches(tx)
        leaving_ids = [wish.person_id for wish in leaving.wishes(tx)]
    for athlete_id in athlete_ids:
        _apart(database, now(), make_turn, athlete_id, since, athlete_round.go)
        yield
    for coach_id in coach_ids:
        gathered = yield from _gathered(database, now, make_turn, coach_id, since)
        go = partial(coach_round.go, gathered=gathered)
        _apart(database, now(), make_turn, coach_id, since, go)
        yield
    for person_id in leaving_ids:
        _apart(database, now(), make_turn, person_id, since, _leave)
        yield
    if stood_still(last_round_utc=since, now_utc=began_at).value:
        tell_outage = partial(house_round.tell_outage, began_at=began_at)
        for person_id in _to_tell(database, now(), make_turn):
            _apart(database, now(), make_turn, person_id, since, tell_outage)
            yield
    for reference, step in house_round.STEPS.items():
        _alone(database, now(), make_turn, reference, step)
        yield
    # Last and by itself: its fault stops nothing, and such a round gives no sign of life.
    with database.transaction() as tx:
        due.set_mark(tx, LAST_ROUND, at=began_at)


def _to_tell(database: Database, now: datetime, make_turn: MakeTurn) -> tuple[int, ...]:
    """Return who hears of an outage; nobody where even that cannot be looked up."""
    found: list[int] = []
    _alone(
        database,
        now,
        make_turn,
        "outage",
        lambda turn: found.extend(house_round.ids_to_tell(turn)),
    )
    return tuple(found)


def _alone(
    database: Database,
    now: datetime,
    make_turn: MakeTurn,
    reference: str,
    go: Callable[[Turn], None],
) -> None:
    """Do one thing of the house's own; its fault keeps nothing else from being done."""
    try:
        with database.transaction() as tx:
            go(make_turn(tx, now))
    except Exception as fault:  # noqa: BLE001 (what the house owes is done again next round)
        log_fault(reference, fault)


def _leave(turn: Turn, person_id: int, _since: datetime) -> None:
    leave.finish(turn, person_id)


def _gathered(
    database: Database, now: Now, make_turn: MakeTurn, coach_id: int, since: datetime
) -> Generator[None, None, Gathered]:
    """Gather a due digest in steps; what could not be gathered is looked up when it is written."""

    @contextmanager
    def open_turn() -> Iterator[Turn]:
        with database.transaction() as tx:
            yield make_turn(tx, now())

    try:
        return (yield from coach_round.gather(open_turn, coach_id, since))
    except Exception as fault:  # noqa: BLE001 (one person's fault never stops the round)
        log_fault(f"P{coach_id}", fault)
        return NOTHING


def _apart(
    database: Database,
    now: datetime,
    make_turn: MakeTurn,
    person_id: int,
    since: datetime,
    go: Callable[[Turn, int, datetime], None],
) -> None:
    """Do what one person's round asks for; a fault of theirs never stops the round."""
    _alone(database, now, make_turn, f"P{person_id}", lambda turn: go(turn, person_id, since))
