"""An athlete trains a displayed session with the body they have, and remembers what they did."""

from collections.abc import Sequence

from bot.wording.movement_names import name_of
from bot.wording.tongue import tongue_of
from demo_scenario.eye import SeenItem, SeenSession, Unit
from demo_scenario.hidden import Effort, HiddenBody
from demo_scenario.team import BANDS
from demo_scenario.typing_habits import DoneItem
from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Movement
from scheduler.pain.values import Side

BAND_RANKS = {band.key: band.rank for band in BANDS}
EXTRA_EAGER_EVERY = 2  # [items] ch: the over-eager go beyond in every second item


def train(
    session: SeenSession, *, body: HiddenBody, library: Library, goes_beyond: float
) -> tuple[list[DoneItem], dict[str, float]]:
    """Train item by item; return what was done and what the athlete believes was left, by name."""
    done, left = [], {}
    for place, seen in enumerate(session.items):
        eager = goes_beyond if place % EXTRA_EAGER_EVERY == 0 else 0.0
        movement = _named(seen, library)
        if movement is None:
            continue
        efforts = _efforts(seen, movement, body=body, eager=eager)
        body.end_exercise(movement)
        done.append(
            DoneItem(
                seen=seen,
                both=_values(efforts[Side.BOTH]),
                left=_values(efforts[Side.LEFT]),
                right=_values(efforts[Side.RIGHT]),
            )
        )
        last = [each[-1] for each in efforts.values() if each]
        weakest = min(last, key=lambda effort: effort.left)
        left[seen.name] = body.guess_left(weakest, measure=movement.measure)
    return done, left


def _named(seen: SeenItem, library: Library) -> Movement | None:
    return movement_named(seen.name, library)


def movement_named(name: str, library: Library) -> Movement | None:
    """Return the movement that the screen names, in English or in Spanish."""
    found = library.named(name)
    if found:
        return found[0]
    spanish = tongue_of("es")
    return next((one for one in library.movements.values() if name_of(spanish, one) == name), None)


def _efforts(
    seen: SeenItem, movement: Movement, *, body: HiddenBody, eager: float
) -> dict[Side, list[Effort]]:
    arms = {"L": Side.LEFT, "R": Side.RIGHT}
    sides = [arms[arm] for arm in seen.arms] or [Side.BOTH]
    efforts: dict[Side, list[Effort]] = {Side.BOTH: [], Side.LEFT: [], Side.RIGHT: []}
    for _ in range(seen.sets):
        for side in sides:
            efforts[side].append(
                body.do_set(
                    movement,
                    target=seen.target,
                    stop_with=seen.stop_with,
                    load_kg=seen.load_kg,
                    band_rank=BAND_RANKS.get(seen.band or "", 1),
                    side=side,
                    eager=eager,
                )
            )
    return efforts


def _values(efforts: Sequence[Effort]) -> tuple[int, ...]:
    return tuple(effort.done for effort in efforts)


def session_effort(done: Sequence[DoneItem], left: dict[str, float]) -> int:
    """Return how hard the session felt, 0 to 10: harder, the less was left and the more missed."""
    if not done:
        return 0
    misses = sum(min(one.values) < one.seen.target for one in done)
    spare = [left[one.seen.name] / (20 if one.seen.unit is not Unit.REPS else 4) for one in done]
    tiredness = 1 - min(1.0, sum(spare) / len(spare))
    return max(2, min(10, round(4 + 3 * tiredness + misses)))
