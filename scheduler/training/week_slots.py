"""Turn picks into the slots of a session, in the order in which they are trained, and back."""

from collections.abc import Iterable, Sequence

from scheduler.catalogue.values import Role
from scheduler.training.week_places import Pick, Place
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import Slot


def slots_of(picks: Sequence[Pick]) -> tuple[Slot, ...]:
    """Return the slots of one day: first pair, second pair, accessory; in a pair the push first."""
    ordered = sorted(
        picks,
        key=lambda pick: (
            pick.place.pair is None,
            pick.place.pair or 0,
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
