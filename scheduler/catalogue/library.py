"""The movement library: read from its files, checked, and asked by key, cell, name or ladder."""

import re
from collections.abc import Iterable, Mapping
from functools import cache, cached_property
from importlib import resources
from types import MappingProxyType
from typing import Annotated

from pydantic import BaseModel, ConfigDict, SkipValidation

from scheduler.catalogue.findings import Finding
from scheduler.catalogue.known_movements import KnownMovements
from scheduler.catalogue.lint import Cell, errors_in, findings_in
from scheduler.catalogue.names import folded
from scheduler.catalogue.refusal import refusal_line
from scheduler.catalogue.values import Arm, Chain, Direction, Movement, Role
from scheduler.located_yaml import Located, WrongFileError, read_with_lines

KEY_LINE = re.compile(r"^ *- key: *(\w+) *$", re.MULTILINE)
"""How a movement begins in the package's own files, so that they need not be parsed twice."""


class MovementFile(BaseModel):
    """What one file of the library holds."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    movements: tuple[Movement, ...]


class Library(BaseModel):
    """Every movement, in the order of the files, and the ways to find one.

    Going through ``movements`` gives those in force; a key also finds one that was removed.
    """

    model_config = ConfigDict(frozen=True)

    movements: Annotated[Mapping[str, Movement], SkipValidation]

    def cell(self, direction: Direction, chain: Chain, arm: Arm) -> tuple[Movement, ...]:
        """Return the main movements of a cell; stand-ins from other cells are not among them."""
        return self._cells.get((direction, chain, arm), ())

    def accessories(self) -> tuple[Movement, ...]:
        """Return the movements that count for nothing but themselves."""
        return tuple(m for m in self.movements.values() if m.role is Role.ACCESSORY)

    def stand_ins(self, direction: Direction) -> tuple[Movement, ...]:
        """Return the movements of other directions that are declared to count for this one."""
        return tuple(m for m in self.movements.values() if m.stands_in_for is direction)

    def named(self, text: str) -> tuple[Movement, ...]:
        """Return the movements that ``text`` names: none, one, or those that share an alias.

        A key or a name goes before an alias. Spelling habits do not count (see ``folded``).
        """
        return self._named.get(folded(text), ())

    def easier_of(self, movement: Movement) -> Movement | None:
        """Return the easier neighbour; None on the lowest rung."""
        return self.movements.get(movement.easier) if movement.easier else None

    def harder_of(self, movement: Movement) -> Movement | None:
        """Return the harder neighbour; None on the highest rung."""
        return self.movements.get(movement.harder) if movement.harder else None

    def is_in_force(self, key: str) -> bool:
        """Tell whether a movement may be planned; one that was removed may not."""
        known = self.movements
        return known.is_in_force(key) if isinstance(known, KnownMovements) else key in known

    def successor_of(self, key: str) -> Movement | None:
        """Return what stands in a movement's place: itself, the next easier one, else a harder.

        None where nothing of its ladder is in force.
        """
        movement = self.movements.get(key)
        for step in (self.easier_of, self.harder_of):
            found, seen = movement, set[str]()
            while found is not None and found.key not in seen:
                if self.is_in_force(found.key):
                    return found
                seen.add(found.key)
                found = step(found)
        return None

    def ladder(self, key: str) -> tuple[Movement, ...]:
        """Return the whole ladder that ``key`` stands on, the easiest first.

        Raises:
            KeyError: the library has no movement of that key.

        """
        lowest = self.movements[key]
        while (below := self.easier_of(lowest)) is not None:
            lowest = below
        rungs = [lowest]
        while (above := self.harder_of(rungs[-1])) is not None:
            rungs.append(above)
        return tuple(rungs)

    def findings(self) -> tuple[Finding, ...]:
        """Return what the checks have to say; in a library that was read, only notices."""
        return findings_in(tuple(self.movements.values()))

    @cached_property
    def _cells(self) -> Mapping[Cell, tuple[Movement, ...]]:
        cells: dict[Cell, tuple[Movement, ...]] = {}
        for movement in self.movements.values():
            if movement.role is Role.MAIN:
                cell = (movement.direction, movement.chain, movement.arm)
                cells[cell] = (*cells.get(cell, ()), movement)
        return cells

    @cached_property
    def _named(self) -> Mapping[str, tuple[Movement, ...]]:
        named: dict[str, tuple[Movement, ...]] = {}
        for movement in self.movements.values():
            for alias in dict.fromkeys(folded(alias) for alias in movement.aliases):
                named[alias] = (*named.get(alias, ()), movement)
        own = {folded(m.key): (m,) for m in self.movements.values()}
        own |= {folded(m.name): (m,) for m in self.movements.values()}
        return {**named, **own}


def read_library(texts: Mapping[str, str]) -> Library:
    """Read and check a library from its files' names and texts.

    Raises:
        WrongFileError: with one line a problem, each with file, line, field, expected value.

    """
    files = _read_files(texts)
    places = {
        movement.key: (file, number)
        for file in files
        for number, movement in enumerate(file.value.movements)
    }
    movements = tuple(movement for file in files for movement in file.value.movements)
    if errors := errors_in(movements):
        raise WrongFileError(
            [refusal_line(e, place=_place(e, places=places, files=files)) for e in errors]
        )
    return Library(movements=MappingProxyType({m.key: m for m in movements}))


def read_beside(
    text: str, *, file_name: str, others: Mapping[str, tuple[Movement, ...]]
) -> tuple[Movement, ...]:
    """Read one file and check it together with what the other files hold.

    Raises:
        WrongFileError: with one line a problem; of another file the movement is named.

    """
    file = read_with_lines(text, MovementFile, file_name=file_name)
    own = {movement.key: (file, n) for n, movement in enumerate(file.value.movements)}
    all_movements = tuple(m for each in others.values() for m in each) + file.value.movements
    if errors := errors_in(all_movements):
        at = {m.key: name for name, each in others.items() for m in each}
        raise WrongFileError(
            [
                refusal_line(
                    e,
                    place=f"{at[e.movement]} (not changed)"
                    if e.movement in at and e.movement not in own
                    else _place(e, places=own, files=(file,)),
                )
                for e in errors
            ]
        )
    return file.value.movements


def library_of(
    files: Mapping[str, tuple[Movement, ...]], *, known: Iterable[Movement] = ()
) -> Library:
    """Put a library together from files that were checked; ``known`` can still be looked up."""
    in_force = {movement.key: movement for each in files.values() for movement in each}
    return Library(movements=KnownMovements(in_force, known))


@cache
def packaged_texts() -> Mapping[str, str]:
    """Return the files that come with the package, by name."""
    folder = resources.files("scheduler.catalogue") / "movements"
    return MappingProxyType(
        {
            entry.name: entry.read_text(encoding="utf-8")
            for entry in sorted(folder.iterdir(), key=lambda entry: entry.name)
            if entry.name.endswith(".yaml")
        }
    )


@cache
def packaged_movements() -> Mapping[str, tuple[Movement, ...]]:
    """Return what each file of the package holds; the library's check has passed them."""
    by_key = default_library().movements
    return MappingProxyType(
        {
            name: tuple(by_key[key] for key in KEY_LINE.findall(text))
            for name, text in packaged_texts().items()
        }
    )


@cache
def default_library() -> Library:
    """Return the library that comes with the package, read once."""
    return read_library(packaged_texts())


def _read_files(texts: Mapping[str, str]) -> tuple[Located[MovementFile], ...]:
    """Read every file, so that one refusal names the problems of all of them."""
    files: list[Located[MovementFile]] = []
    problems: list[str] = []
    for file_name, text in texts.items():
        try:
            files.append(read_with_lines(text, MovementFile, file_name=file_name))
        except WrongFileError as wrong:
            problems.extend(wrong.problems)
    if problems:
        raise WrongFileError(problems)
    return tuple(files)


def _place(
    error: Finding,
    *,
    places: Mapping[str, tuple[Located[MovementFile], int]],
    files: tuple[Located[MovementFile], ...],
) -> str:
    """Return file and line of a finding; of the whole library when no movement is at fault."""
    if error.movement not in places:
        return f"{', '.join(file.file_name for file in files) or 'no files'} line 1"
    file, number = places[error.movement]
    return f"{file.file_name} line {file.line_of('movements', number, error.field)}"
