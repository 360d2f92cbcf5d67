"""Turn picks into the slots of a session, in the order in which they are trained, and back."""

from collections.abc import Iterable, Sequence

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Role
from scheduler.training.week_days import PUSH_ORDER
from scheduler.training.week_places import Pick, Place
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import Slot


def slots_of(picks: Sequence[Pick]) -> tuple[Slot, ...]:
    """Return the slots of one day: pairs, upkeep, accessory; of two partners the push first."""
    ordered = sorted(
        picks,
        key=lambda pick: (
            pick.place.pair is None,
            pick.is_accessory,
            pick.place.pair or _order_of_partners(pick),
            pick.is_pull,
        ),
    )
    return tuple(
        Slot(
            on=pick.place.on,
            letter=pick.place.letter,
            position=position,
            pair=pick.place.pair,
            direction=pick.place.direction,
            movement_key=pick.movement.key,
            quality=pick.quality,
            sets=pick.sets,
            arms=pick.arms,
        )
        for position, pick in enumerate(ordered, start=1)
    )


def _order_of_partners(pick: Pick) -> int:
    direction = pick.place.direction
    return PUSH_ORDER.index(direction if direction.is_push else direction.partner)


def is_upkeep_slot(slot: Slot, library: Library) -> bool:
    """Tell whether a slot is upkeep: a main movement outside the pairs."""
    movement = library.movements.get(slot.movement_key)
    return slot.pair is None and movement is not None and movement.role is Role.MAIN


def picks_of(slots: Iterable[Slot], *, shelf: Shelf) -> tuple[Pick, ...]:
    """Return the picks of slots that stand; a movement that left the library counts no more."""
    found: list[Pick] = []
    for slot in slots:
        movement = shelf.any_movement(slot.movement_key)
        if movement is None or (movement.role is Role.ACCESSORY and slot.is_main):
            continue
        place = Place(
            on=slot.on,
            letter=slot.letter,
            pair=slot.pair,
            direction=slot.direction,
            chain=movement.chain,
            arm=movement.arm,
        )
        found.append(
            Pick(
                place=place,
                movement=movement,
                arms=slot.arms,
                quality=slot.quality,
                sets=slot.sets,
            )
        )
    return tuple(found)
