"""Which of an athlete's doses have stood still for two months or more, and why they do."""

from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts.checklist import local_today
from bot.acts.show_why import decided
from bot.turn import Turn
from bot.wording import coach_plan as words
from scheduler.catalogue.values import Movement, Role
from scheduler.reasons import Reason
from scheduler.training.stood_still import is_told_between, stood_still
from scheduler.training.values import Dose, Exposure
from storage.queries import history
from storage.records.people import Person

LOOKED_BACK = timedelta(weeks=26)  # [weeks] ch: as far as the estimate remembers


@dataclass(frozen=True)
class Still:
    """One dose that stands still: how long, what was decided of it last, what keeps it."""

    movement: Movement
    dose: Dose
    since: date
    reasons: tuple[Reason, ...]


def still_of(turn: Turn, athlete_id: int, *, today: date) -> tuple[Still, ...]:
    """Return which main movements stand still, the longest first."""
    by_key: dict[str, list[Exposure]] = {}
    for one in history.all_exposures(turn.tx, athlete_id, since=today - LOOKED_BACK):
        by_key.setdefault(one.dose.movement_key, []).append(one)
    found = []
    for key, done in by_key.items():
        decision = stood_still(done, on=today)
        movement = turn.house.library.movements.get(key)
        is_main = movement is not None and movement.role is Role.MAIN
        if decision.value is not None and movement is not None and is_main:
            why = (*decision.reasons, *_kept_by(turn, athlete_id, key))
            found.append(Still(movement, done[-1].dose, decision.value, why))
    return tuple(sorted(found, key=lambda one: (one.since, one.movement.key)))


def _kept_by(turn: Turn, athlete_id: int, key: str) -> tuple[Reason, ...]:
    """Return why the latest decision kept the dose, and what it takes to go on."""
    for one in decided(turn, athlete_id):
        if one.movement.key == key:
            return (*one.reasons[:1], *([one.not_more] if one.not_more else []))
    return ()


def still_lines(
    turn: Turn,
    coach: Person,
    person: Person,
    *,
    today: date | None = None,
    first: date | None = None,
) -> tuple[str, ...]:
    """Say to the coach what stands still of an athlete, a line each; from ``first`` on: as news."""
    today = today or local_today(turn, person)
    return tuple(
        words.still_line(turn.tongue(coach), one.movement, one.dose, since=one.since, today=today)
        for one in still_of(turn, person.id, today=today)
        if first is None or is_told_between(since=one.since, first=first, last=today)
    )
