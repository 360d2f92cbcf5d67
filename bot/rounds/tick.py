"""One round: what is due for whom, each person apart, so that one fault stops nobody else."""

from collections.abc import Callable
from datetime import datetime, timedelta

from sqlmodel import Session

from bot.rounds import athlete_round, coach_round, house_round
from bot.turn import Turn
from bot.writer import log_fault
from scheduler.calendar.lateness import stood_still
from storage.database import Database
from storage.queries import due, people
from storage.records.people import AthleteState

LAST_ROUND = "last_round"
FIRST_LOOK_BACK = timedelta(minutes=1)  # [min] ch: a new house owes nothing from before

MakeTurn = Callable[[Session, datetime], Turn]


def run(database: Database, now: datetime, make_turn: MakeTurn) -> None:
    """Do everything that is due by ``now``; what was done is marked and never done twice."""
    with database.transaction() as tx:
        since = due.mark(tx, LAST_ROUND) or now - FIRST_LOOK_BACK
        states = (AthleteState.TRAINING, AthleteState.PAUSED, AthleteState.WAITS_FOR_COACH)
        athlete_ids = [person.id for person, _ in people.athletes_in(tx, *states)]
        coach_ids = [coach.id for coach in people.coaches(tx)]
    for athlete_id in athlete_ids:
        _apart(database, now, make_turn, athlete_id, since, athlete_round.go)
    for coach_id in coach_ids:
        _apart(database, now, make_turn, coach_id, since, coach_round.go)
    with database.transaction() as tx:
        turn = make_turn(tx, now)
        if stood_still(last_round_utc=since, now_utc=now).value:
            house_round.tell_outage(turn, since=since)
        house_round.go(turn)
        due.set_mark(tx, LAST_ROUND, at=now)


def _apart(
    database: Database,
    now: datetime,
    make_turn: MakeTurn,
    person_id: int,
    since: datetime,
    go: Callable[[Turn, int, datetime], None],
) -> None:
    try:
        with database.transaction() as tx:
            go(make_turn(tx, now), person_id, since)
    except Exception as fault:  # noqa: BLE001 (one person's fault never stops the round)
        log_fault(f"P{person_id}", fault)
