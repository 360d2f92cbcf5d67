"""What of the library one athlete may take this week, and what stands against the rest."""

from collections.abc import Mapping
from datetime import date
from functools import cached_property

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Arm, Chain, Demand, Direction, Movement, Role, Sides
from scheduler.pain.values import LeftOut, Side
from scheduler.training.permissions import PermissionFacts, permits
from scheduler.training.rulebook import Rulebook
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import BOTH_ARMS, WeekRequest


def arms_without(left_out: LeftOut, movement: Movement, direction: Direction) -> frozenset[Side]:
    """Return the arms that may do ``movement`` where it counts for ``direction``.

    A stand-in goes when either its own direction or the one it stands in for is left out.
    """
    sound = left_out.arms_allowed(movement) - {
        side for left_direction, side in left_out.directions if left_direction is direction
    }
    return sound if movement.sides is Sides.EACH or sound == BOTH_ARMS else frozenset()


class Shelf:
    """One athlete's view of the library for one week."""

    def __init__(self, *, request: WeekRequest, library: Library, rulebook: Rulebook) -> None:
        """Look at ``library`` through what ``request`` and ``rulebook`` allow."""
        self.request = request
        self.rulebook = rulebook
        self._library = library
        self._main = {m.key: m for m in library.movements.values() if m.role is Role.MAIN}
        self._accessories = tuple(library.accessories())
        self._permitted: dict[tuple[str, int, bool], bool] = {}

    @cached_property
    def _cells(self) -> Mapping[tuple[Direction, Chain, Arm], tuple[Movement, ...]]:
        cells: dict[tuple[Direction, Chain, Arm], list[Movement]] = {}
        for movement in self._main.values():
            counts_for = {movement.direction}
            if movement.stands_in_for is not None:
                counts_for.add(movement.stands_in_for)
            for direction in counts_for:
                cells.setdefault((direction, movement.chain, movement.arm), []).append(movement)
        return {cell: tuple(movements) for cell, movements in cells.items()}

    @property
    def has_upkeep(self) -> bool:
        """Tell whether the week holds upkeep: asked by the coach, in a stage without bent arms."""
        row = self.rulebook.stage(self.request.stage)
        return self.request.has_upkeep and Arm.BENT not in row.arms

    @property
    def accessories(self) -> tuple[Movement, ...]:
        """The accessory movements, in the library's order."""
        return self._accessories

    def movement(self, key: str) -> Movement | None:
        """Return a main movement, or None when the library no longer has it."""
        return self._main.get(key)

    def any_movement(self, key: str) -> Movement | None:
        """Return a movement, accessories included, or None when the library has it no more."""
        return self._library.movements.get(key)

    def in_cell(self, direction: Direction, chain: Chain, arm: Arm) -> tuple[Movement, ...]:
        """Return the movements that count for a direction in a cell, stand-ins included."""
        return self._cells.get((direction, chain, arm), ())

    def obstacle(
        self, movement: Movement, *, direction: Direction, on: date, is_upkeep: bool = False
    ) -> WeekReason | None:
        """Return what stands against a movement on a day, the most telling first, or None."""
        if not self.arms(movement, direction=direction):
            return WeekReason.NOTHING_RESTED
        if not movement.fits(self.request.equipment):
            return WeekReason.NOTHING_OWNED
        if Demand.INVERSION in movement.demands and not self.request.is_inversion_ok:
            return WeekReason.INVERTED
        if movement.key in self.request.banned:
            return WeekReason.BANNED
        if not self._is_permitted(movement, direction=direction, is_upkeep=is_upkeep):
            return WeekReason.NOTHING_PERMITTED
        if movement.key in self.request.not_yet_for_now:
            return WeekReason.NOT_YET
        if Demand.TRACTION in movement.demands and self.is_after_hard_pulling(on):
            return WeekReason.HANG_AFTER_HARD_PULLING
        return None

    def arms(self, movement: Movement, *, direction: Direction) -> frozenset[Side]:
        """Return the arms that may do the movement with what is rested."""
        return arms_without(self.request.rested, movement, direction)

    def is_eased(self, movement: Movement, *, direction: Direction) -> bool:
        """Tell whether the movement loads a region that is eased."""
        eased = self.request.eased
        if eased.is_empty:
            return False
        return arms_without(eased, movement, direction) != BOTH_ARMS

    def is_after_hard_pulling(self, on: date) -> bool:
        """Tell whether there was hard pulling elsewhere on the day before."""
        return any(hard.has_pull and (on - hard.on).days == 1 for hard in self.request.hard_days)

    def easier_than(self, movement: Movement, *, direction: Direction) -> tuple[Movement, ...]:
        """Return the easier neighbours down the ladder that count for the direction."""
        found: list[Movement] = []
        key = movement.easier
        while key is not None and (below := self._main.get(key)) is not None and below not in found:
            if direction in {below.direction, below.stands_in_for}:
                found.append(below)
            key = below.easier
        return tuple(found)

    def rungs_to_wanted(self, movement: Movement) -> int:
        """Return how many rungs above a movement one is wanted [rungs]; many when none is."""
        rungs = 0
        above: Movement | None = movement
        while above is not None and above.key not in self.request.wanted:
            rungs += 1
            above = self._main.get(above.harder) if above.harder is not None else None
        return rungs if above is not None else len(self._main)

    def ladder_of(self, movement: Movement) -> frozenset[str]:
        """Return the keys of a movement and of everything easier or harder along its ladder."""
        return ladder_of(movement, self._main)

    def _is_permitted(
        self, movement: Movement, *, direction: Direction, is_upkeep: bool = False
    ) -> bool:
        stage = self.request.stage_for(direction, movement.direction)
        key = (movement.key, stage, is_upkeep)
        if key not in self._permitted:
            facts = PermissionFacts(
                stage=stage,
                has_strict_pulls=self.request.can_pull_dynamically,
                has_upkeep=is_upkeep,
                is_overridden=movement.key in self.request.allowed_by_coach,
            )
            self._permitted[key] = permits(movement, facts=facts, rulebook=self.rulebook).value
        return self._permitted[key]


def ladder_of(movement: Movement, movements: Mapping[str, Movement]) -> frozenset[str]:
    """Return the keys of a movement and of everything easier or harder along its ladder."""
    seen = {movement.key}
    ahead = [movement]
    while ahead:
        step = ahead.pop()
        for key in (step.easier, step.harder):
            neighbour = movements.get(key) if key is not None else None
            if neighbour is not None and neighbour.key not in seen:
                seen.add(neighbour.key)
                ahead.append(neighbour)
    return frozenset(seen)
