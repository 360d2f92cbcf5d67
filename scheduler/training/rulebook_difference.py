"""Which numbers of two rulebooks differ, by the way to them, and which movements one names."""

from collections.abc import Iterator, Mapping
from typing import Any

from pydantic import BaseModel, ConfigDict

from scheduler.training.rulebook import Rulebook


class ChangedNumber(BaseModel):
    """One place of a rulebook before and after; None where it was not there."""

    model_config = ConfigDict(frozen=True)

    place: str
    before: str | None
    after: str | None


def differing(before: Rulebook, after: Rulebook) -> tuple[ChangedNumber, ...]:
    """Return what differs between two rulebooks, in the order of the file."""
    old = dict(_flat(before.model_dump(mode="json")))
    new = dict(_flat(after.model_dump(mode="json")))
    return tuple(
        ChangedNumber(place=place, before=old.get(place), after=new.get(place))
        for place in {**old, **new}
        if old.get(place) != new.get(place)
    )


def movements_named(rulebook: Rulebook) -> Mapping[str, tuple[str, ...]]:
    """Return which movements a rulebook names, by the place where any one of them is enough."""
    named = {
        f"standards.{stage}.{row.key}": row.movements
        for stage, rows in rulebook.standards.items()
        for row in rows
    }
    extras = rulebook.stages.extras.strict_pull_movements
    return {**named, "stages.extras.strict_pull_movements": extras}


def _flat(node: Any, place: str = "") -> Iterator[tuple[str, str]]:
    """Go through a tree of values; an entry with a key or a number of its own is named by it."""
    if isinstance(node, Mapping):
        for key, value in node.items():
            yield from _flat(value, f"{place}.{key}" if place else str(key))
    elif isinstance(node, list) and any(isinstance(one, Mapping) for one in node):
        for at, value in enumerate(node):
            name = value.get("key", value.get("number", at)) if isinstance(value, Mapping) else at
            yield from _flat(value, f"{place}.{name}")
    elif node is not None:
        text = ", ".join(str(one) for one in node) if isinstance(node, list) else str(node)
        yield place, text
