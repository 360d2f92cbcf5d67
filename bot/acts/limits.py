"""What an athlete can do now, movement by movement, and what of it has really changed."""

from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts import capacity
from bot.turn import Turn
from bot.wording.limits import Change, Limit
from scheduler.catalogue.values import Movement
from scheduler.training.capacity import Capacity
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.real_change import likely_range, real_change
from scheduler.training.tries import reference_of
from scheduler.training.values import Quality, Rung
from storage.queries import training
from storage.records.people import Athlete

LATELY = timedelta(days=21)  # [days] ch: what was not trained for longer is not claimed
COMPARED = timedelta(days=28)  # [days] ch: four weeks, as the checklist looks back
LOOKS_LEAST = 3  # [uncensored observations] ch: fewer say little


def limits_of(turn: Turn, athlete: Athlete, *, today: date) -> tuple[Limit, ...]:
    """Return what the main movements of the last weeks come to, those of the standards first."""
    found = []
    for movement in lately_trained(turn, athlete, today=today):
        seen = _seen(turn, athlete, movement, before=today + timedelta(days=1))
        if seen is not None and (limit := _limit(seen, movement)) is not None:
            found.append(limit)
    return tuple(found)


def changes_of(turn: Turn, athlete: Athlete, *, first: date, last: date) -> tuple[Change, ...]:
    """Return what changed by more than chance, and had not by the day before ``first``."""
    found = []
    for movement in lately_trained(turn, athlete, today=last):
        change = _change(turn, athlete, movement, on=last)
        if change is not None and _change(turn, athlete, movement, on=first) is None:
            found.append(change)
    return tuple(sorted(found, key=lambda one: -abs(one.now / one.was - 1)))


def lately_trained(turn: Turn, athlete: Athlete, *, today: date) -> tuple[Movement, ...]:
    """Return the main movements that were done in the last weeks, the standards' own first."""
    sessions = training.sessions_between(
        turn.tx, athlete.person_id, first=today - LATELY, last=today
    )
    done = {
        item.movement_key: None
        for session in reversed(sessions)
        for item in session.items
        if item.pair is not None and item.sets
    }
    library = turn.house.library.movements
    rows = turn.house.rulebook.standards.get(athlete.stage, ())
    wanted = {key for row in rows for key in row.movements}
    keys = sorted(done, key=lambda key: key not in wanted)
    return tuple(library[key] for key in keys if key in library)


@dataclass(frozen=True)
class _Seen:
    facts: DoseFacts
    rung: Rung
    known: Capacity


def _seen(
    turn: Turn, athlete: Athlete, movement: Movement, *, before: date, rung: Rung | None = None
) -> _Seen | None:
    """Return the weaker arm's capacity before a day, at a resistance or at the latest one."""
    known = capacity.seen(turn, athlete.person_id, movement, before=before)
    if not known.own:
        return None
    facts = DoseFacts(
        movement=movement,
        quality=Quality.MUSCULAR_ENDURANCE,
        profile=athlete.profile.facts,
        planned_sets=1,
        weeks_trained=0,
    )
    at = rung or known.own[-1].dose.rung
    reference_kg = reference_of(at, facts=facts)
    arms = capacity.capacities(turn, known, facts=facts, reference_kg=reference_kg)
    if not arms or min(one.observations for one in arms) < LOOKS_LEAST:
        return None
    weaker = min(arms, key=lambda one: one.level.mean)
    return _Seen(facts=facts, rung=at, known=weaker)


def _limit(seen: _Seen, movement: Movement) -> Limit | None:
    least, most = likely_range(seen.known)
    values = [
        capacity.value_at_rung(value, rung=seen.rung, facts=seen.facts)
        for value in (least, seen.known.value, most)
    ]
    if values[0] <= 0:
        return None
    return Limit(
        movement=movement, rung=seen.rung, likely=values[1], least=values[0], most=values[2]
    )


def _change(turn: Turn, athlete: Athlete, movement: Movement, *, on: date) -> Change | None:
    now = _seen(turn, athlete, movement, before=on + timedelta(days=1))
    if now is None:
        return None
    before = _seen(turn, athlete, movement, before=on - COMPARED, rung=now.rung)
    if before is None or not real_change(before.known, now.known).value:
        return None
    was = capacity.value_at_rung(before.known.value, rung=now.rung, facts=now.facts)
    value = capacity.value_at_rung(now.known.value, rung=now.rung, facts=now.facts)
    if min(was, value) <= 0:
        return None
    return Change(movement=movement, rung=now.rung, was=was, now=value)
