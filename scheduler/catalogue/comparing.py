"""What a changed library adds, changes and takes away, and what a key may not change."""

from collections.abc import Iterator, Mapping

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Movement

LASTING = ("direction", "chain", "arm", "role", "measure", "sides", "family")
"""What makes a movement the one that was trained: what was recorded would else mean another."""


class Changed(BaseModel):
    """One movement before and after, and the fields that differ."""

    model_config = ConfigDict(frozen=True)

    before: Movement
    after: Movement
    fields: tuple[str, ...]


class LibraryDifference(BaseModel):
    """What is added, changed and removed, each in the order of the files."""

    model_config = ConfigDict(frozen=True)

    added: tuple[Movement, ...] = ()
    changed: tuple[Changed, ...] = ()
    removed: tuple[Movement, ...] = ()

    @property
    def is_empty(self) -> bool:
        """True when both mean the same."""
        return not (self.added or self.changed or self.removed)

    @property
    def keys(self) -> frozenset[str]:
        """What was there and is no longer the same."""
        changed = {one.before.key for one in self.changed}
        return frozenset(changed | {one.key for one in self.removed})


def compare(before: Mapping[str, Movement], after: Mapping[str, Movement]) -> LibraryDifference:
    """Compare two sets of movements by key; what was only looked up is in neither."""
    old, new = dict(before.items()), dict(after.items())
    return LibraryDifference(
        added=tuple(one for key, one in new.items() if key not in old),
        removed=tuple(one for key, one in old.items() if key not in new),
        changed=tuple(
            Changed(before=old[key], after=one, fields=tuple(_differing(old[key], one)))
            for key, one in new.items()
            if key in old and old[key] != one
        ),
    )


def lasting_changes(difference: LibraryDifference) -> tuple[tuple[Changed, str], ...]:
    """Return every change of a field that a key may not change."""
    return tuple(
        (one, field) for one in difference.changed for field in one.fields if field in LASTING
    )


def _differing(before: Movement, after: Movement) -> Iterator[str]:
    for field in Movement.model_fields:
        if getattr(before, field) != getattr(after, field):
            yield field
