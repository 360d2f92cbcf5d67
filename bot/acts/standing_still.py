"""Which of an athlete's doses have stood still for two months or more, and why they do."""

from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts.show_why import decided
from bot.turn import Turn
from scheduler.catalogue.values import Movement
from scheduler.reasons import Reason
from scheduler.training.stood_still import stood_still
from scheduler.training.values import Dose, Exposure
from storage.queries import history

LOOKED_BACK = timedelta(weeks=26)  # [weeks] ch: as far as the estimate remembers


@dataclass(frozen=True)
class Still:
    """One dose that stands still: how long, what was decided of it last, what keeps it."""

    movement: Movement
    dose: Dose
    since: date
    reasons: tuple[Reason, ...]


def still_of(turn: Turn, athlete_id: int, *, today: date) -> tuple[Still, ...]:
    """Return what stands still, the longest first."""
    by_key: dict[str, list[Exposure]] = {}
    for one in history.all_exposures(turn.tx, athlete_id, since=today - LOOKED_BACK):
        by_key.setdefault(one.dose.movement_key, []).append(one)
    found = []
    for key, done in by_key.items():
        decision = stood_still(done, on=today)
        movement = turn.house.library.movements.get(key)
        if decision.value is not None and movement is not None:
            why = (*decision.reasons, *_kept_by(turn, athlete_id, key))
            found.append(Still(movement, done[-1].dose, decision.value, why))
    return tuple(sorted(found, key=lambda one: (one.since, one.movement.key)))


def _kept_by(turn: Turn, athlete_id: int, key: str) -> tuple[Reason, ...]:
    """Return why the latest decision kept the dose, and what it takes to go on."""
    for one in decided(turn, athlete_id):
        if one.movement.key == key:
            return (*one.reasons[:1], *([one.not_more] if one.not_more else []))
    return ()
