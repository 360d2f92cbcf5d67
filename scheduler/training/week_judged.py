"""A week laid out for its judge."""

from collections.abc import Iterable, Mapping, Sequence

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Movement, Role
from scheduler.reasons import Figure, reason
from scheduler.sources import CP
from scheduler.training.rulebook import Rulebook
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import Breach, Invariant, Slot, WeekRequest


class JudgedWeek:
    """The slots of a week beside what they are judged by."""

    def __init__(
        self,
        slots: Sequence[Slot],
        *,
        request: WeekRequest,
        library: Library,
        rulebook: Rulebook,
    ) -> None:
        """Look the movements up once; slots whose movement is unknown are judged as that only."""
        self.request = request
        self.rulebook = rulebook
        self.movements: Mapping[str, Movement] = library.movements
        self.unknown = [slot for slot in slots if slot.movement_key not in self.movements]
        self.slots = [slot for slot in slots if slot.movement_key in self.movements]
        self.main = [slot for slot in self.slots if slot.is_main]
        self.upkeep = [s for s in self.slots if not s.is_main and self.of(s).role is Role.MAIN]
        self.judged = [slot for slot in self.slots if not self._stands(slot)]

    def of(self, slot: Slot) -> Movement:
        """Return the movement of a slot."""
        return self.movements[slot.movement_key]

    def sets(self, slots: Iterable[Slot]) -> int:
        """Return the sets of some slots [sets]."""
        return sum(slot.sets for slot in slots)

    def _stands(self, slot: Slot) -> bool:
        """Tell whether a slot was sent before what is judged now was known."""
        request = self.request
        return slot in request.kept or (
            request.open_from is not None and slot.on < request.open_from
        )


def breach(invariant: Invariant, code: WeekReason, **figures: Figure) -> Breach:
    return Breach(invariant=invariant, why=reason(code, CP, **figures))


def figures_of(slot: Slot) -> dict[str, Figure]:
    return {
        "on": slot.on.isoformat(),
        "direction": slot.direction.value,
        "movement": slot.movement_key,
    }
