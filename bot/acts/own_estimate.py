"""What an athlete may well do in one set, from what was done lately: to judge what is plausible."""

import math
from collections.abc import Sequence

from bot.acts import capacity
from bot.acts.tested import tested_of
from bot.reading.known import Estimate
from bot.turn import Turn
from scheduler.training.capacity import Capacity, noise_variance
from scheduler.training.capacity_reading import decrement_factor
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.tries import reference_of
from scheduler.training.values import AthleteProfile, Dose, Exposure, Quality
from storage.queries import people
from storage.records.training import ItemRecord

SPREAD_LOG_UNKNOWN = 0.35  # [log units] ch: one exposure says little; about a third up or down
SPREAD_LOG_LEAST = 0.2  # [log units] ch: a good day is no slip of the thumb
SETS_REMEMBERED = 4  # [exposures] ch: what was done lately says what is plausible today
LOOKS_MOST = 8  # [exposures] ch: the reader needs no more; every reply folds them
LOOKS_LEAST = 2  # [uncensored observations] ch: with fewer the best of late says as much


def estimate_for(
    turn: Turn, athlete_id: int, item: ItemRecord, *, history: Sequence[Exposure]
) -> Estimate | None:
    """Return the athlete's own best single set of an item, None where nothing was done lately.

    The one place where the reader's estimate comes from: the capacity, where enough was seen of
    it, of the stronger arm, for a fresh set; else the best of late. ``history`` are the exposures
    of the session's movements, the oldest first: nothing is read for it but the tests, once.
    """
    alike = [one for one in history if one.dose.movement_key == item.movement_key]
    if item.dose is not None:
        found = _by_capacity(turn, athlete_id, item.dose, alike[-LOOKS_MOST:])
        if found is not None:
            return found
    return _by_best(alike)


def _by_best(alike: Sequence[Exposure]) -> Estimate | None:
    values = [
        done.value + (exposure.reserve.left if exposure.reserve else 0.0)
        for exposure in alike[-SETS_REMEMBERED:]
        for done in exposure.sets[:1]
        if done.rung is None or done.rung == exposure.dose.rung
    ]
    if not values:
        return None
    return Estimate(likely=max(values), spread_log=SPREAD_LOG_UNKNOWN)


def _by_capacity(
    turn: Turn, athlete_id: int, dose: Dose, alike: Sequence[Exposure]
) -> Estimate | None:
    movement = turn.house.library.movements[dose.movement_key]
    tested = tested_of(turn, athlete_id, [movement.key], before=None)
    body = _body(turn, athlete_id) if alike or tested else None
    if body is None:
        return None
    known = capacity.Known(
        own=tuple(alike),
        kin=tuple((movement, one) for one in alike),
        tested=tuple((movement, one) for one in tested),
    )
    facts = DoseFacts(
        movement=movement,
        quality=Quality.MUSCULAR_ENDURANCE,
        profile=body,
        planned_sets=1,
        weeks_trained=0,
    )
    reference_kg = reference_of(dose.rung, facts=facts)
    arms = capacity.capacities(turn, known, facts=facts, reference_kg=reference_kg)
    if not arms or max(one.observations for one in arms) < LOOKS_LEAST:
        return None
    stronger = max(arms, key=lambda one: one.level.mean)
    last_set = capacity.value_at_rung(stronger.value, rung=dose.rung, facts=facts)
    if last_set <= 0:
        return None
    fresh = last_set / decrement_factor(known.own, rulebook=turn.house.rulebook)
    return Estimate(likely=fresh, spread_log=_spread(turn, stronger))


def _body(turn: Turn, athlete_id: int) -> AthleteProfile | None:
    """Return the facts of an athlete, read at most once a turn."""
    if athlete_id not in turn.bodies:
        athlete = people.athlete(turn.tx, athlete_id)
        if athlete is None:
            return None
        turn.bodies[athlete_id] = athlete.profile.facts
    return turn.bodies[athlete_id]


def _spread(turn: Turn, known: Capacity) -> float:
    """Return how far a single set may lie from the estimate [log units]."""
    noise = noise_variance(reserve=0, rules=turn.house.rulebook.capacity)
    return max(SPREAD_LOG_LEAST, math.sqrt(known.level.variance + noise))
