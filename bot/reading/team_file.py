"""A team as a table that a spreadsheet wrote: names, stages, groups and best sets, line by line.

The first line names the columns: ``name``; ``stage`` [1-5] and ``group`` where wanted; every other
column is headed by a movement of the library, and holds one best set of it: seconds (``45`` or
``1:05``), repetitions or metres, with the weight behind an @ where there is one (``60 @ 12``).
"""

import csv
import io
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from difflib import get_close_matches
from enum import StrEnum
from unicodedata import category, combining, normalize

from scheduler.catalogue.values import Equipment, Loading, Measure, Movement
from scheduler.training.loads import WEIGHTS
from scheduler.training.values import Best, Rung

NAME_MOST = 60  # [characters] ch: a roster line must hold it
GROUP_MOST = 30  # [characters] ch: it stands on a button
ROWS_MOST = 200  # [lines] ch: three teams of sixty
SECONDS_MOST = 900.0  # [s] ch: a longer hold is no strength any more
REPS_MOST = 150.0  # [repetitions] ch
METRES_MOST = 500.0  # [m] ch
LOAD_MOST_KG = 200.0  # [kg] ch: in each hand, or added to the body
STAGE_FIRST, STAGE_LAST = 1, 5
NAME_WORDS = frozenset({"name", "names", "athlete", "nombre", "atleta"})
STAGE_WORDS = frozenset({"stage", "etapa", "fase"})
GROUP_WORDS = frozenset({"group", "grupo"})
DELIMITERS = (";", ",", "\t")
VALUE = re.compile(
    r"(?:(?P<minutes>\d{1,2}):(?P<seconds>[0-5]\d)|(?P<number>\d+(?:[.,]\d+)?))"
    r"\s*(?:s|sec|reps?|m|kg)?\s*(?:@\s*(?P<load>\d+(?:[.,]\d+)?)\s*(?:kg)?)?",
    re.IGNORECASE,
)
MARKS = ((b"\xef\xbb\xbf", "utf-8-sig"), (b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"))


class Wrong(StrEnum):
    """What is wrong with a file, a column or a line."""

    NOT_TEXT = "not_text"
    SPREADSHEET = "spreadsheet"
    EMPTY = "empty"
    TOO_MANY = "too_many"
    NO_NAME_COLUMN = "no_name_column"
    COLUMN_TWICE = "column_twice"
    UNKNOWN_COLUMN = "unknown_column"
    BAND_COLUMN = "band_column"
    QUOTES = "quotes"
    CELLS = "cells"
    NO_NAME = "no_name"
    NAME_LONG = "name_long"
    NAME_TWICE = "name_twice"
    KNOWN = "known"
    STAGE = "stage"
    GROUP = "group"
    VALUE = "value"
    BOUNDS = "bounds"
    LOAD_MISSING = "load_missing"
    LOAD_NOT_TAKEN = "load_not_taken"


@dataclass(frozen=True)
class Fault:
    """One thing that is wrong: in which line [from 1], what stands there, and near names."""

    line: int
    wrong: Wrong
    shown: str = ""
    column: str = ""
    near: tuple[str, ...] = ()
    most: float = 0.0


@dataclass(frozen=True)
class TeamRow:
    """One athlete to invite, as the line says."""

    line: int
    name: str
    stage: int = 1
    group: str = ""
    bests: Mapping[str, Best] = field(default_factory=dict)


@dataclass(frozen=True)
class TeamFile:
    """The lines that are right, and what is wrong with the others; nothing is guessed."""

    rows: tuple[TeamRow, ...] = ()
    faults: tuple[Fault, ...] = ()


@dataclass(frozen=True)
class _Columns:
    name: int
    stage: int | None
    group: int | None
    movements: Mapping[int, Movement]
    count: int


def read_team(
    content: bytes, *, movements: Mapping[str, Movement], known_names: Sequence[str]
) -> TeamFile:
    """Read a team file; ``known_names`` are on the roster already and are not invited again."""
    text = _text_of(content)
    if isinstance(text, Wrong):
        return TeamFile(faults=(Fault(1, text),))
    delimiter, lines = _cells_of(text)
    table: list[tuple[int, list[str]]] = []
    broken: list[Fault] = []
    for line, cells in _table(lines, delimiter):
        if cells is None:
            broken.append(Fault(line, Wrong.QUOTES))
        elif any(cells):
            table.append((line, cells))
    if not table:
        return TeamFile(faults=(*broken, Fault(1, Wrong.EMPTY)))
    columns = _columns(*table[0], movements=movements)
    if isinstance(columns, tuple):
        return TeamFile(faults=columns)
    if len(table) == 1:
        return TeamFile(faults=(*broken, Fault(table[0][0], Wrong.EMPTY)))
    if len(table) - 1 > ROWS_MOST:
        return TeamFile(faults=(Fault(table[ROWS_MOST + 1][0], Wrong.TOO_MANY, most=ROWS_MOST),))
    return _rows(table[1:], columns, broken, known_names)


def _rows(
    table: Sequence[tuple[int, list[str]]],
    columns: _Columns,
    broken: Sequence[Fault],
    known_names: Sequence[str],
) -> TeamFile:
    rows: list[TeamRow] = []
    faults = list(broken)
    known, seen = {folded(name) for name in known_names}, set[str]()
    for line, cells in table:
        found = _row(line, cells, columns)
        if isinstance(found, TeamRow):
            key = folded(found.name)
            if key in known:
                found = (Fault(line, Wrong.KNOWN, found.name),)
            elif key in seen:
                found = (Fault(line, Wrong.NAME_TWICE, found.name),)
            seen.add(key)
        if isinstance(found, TeamRow):
            rows.append(found)
        else:
            faults += found
    return TeamFile(rows=tuple(rows), faults=tuple(sorted(faults, key=lambda one: one.line)))


def _text_of(content: bytes) -> str | Wrong:
    """Decode as spreadsheets write: with or without a mark in front, else as Windows does."""
    if content.startswith((b"PK\x03\x04", b"\xd0\xcf\x11\xe0")):
        return Wrong.SPREADSHEET
    if not content.strip():
        return Wrong.EMPTY
    for mark, coding in MARKS:
        if content.startswith(mark):
            return content.decode(coding, errors="replace")
    if b"\x00" in content:
        return Wrong.NOT_TEXT
    try:
        return content.decode()
    except UnicodeDecodeError:
        return content.decode("cp1252", errors="replace")


def _cells_of(text: str) -> tuple[str, str]:
    """Find what parts the cells: as the first line says (``sep=;``), or as its head parts best."""
    head, _, rest = text.partition("\n")
    said = head.strip().casefold()
    if said.startswith("sep=") and len(head.strip()) == len("sep=;"):
        # The line stays counted, so that numbers agree with what the coach sees.
        return head.strip()[-1], f"\n{rest}"
    first = next((line for line in text.splitlines() if line.strip()), "")
    counts = {one: len(next(csv.reader([first], delimiter=one), [])) for one in DELIMITERS}
    return max(DELIMITERS, key=lambda one: counts[one]), text


def _table(text: str, delimiter: str) -> Iterator[tuple[int, list[str] | None]]:
    """Yield each row with the number of the line it begins in; None where the quotes are off."""
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
    while True:
        line = reader.line_num + 1
        try:
            cells = next(reader)
        except StopIteration:
            return
        except csv.Error:
            yield line, None
        else:
            yield line, [_tidied(cell) for cell in cells]


def _tidied(cell: str) -> str:
    """Write a cell in one line, without what no keyboard writes."""
    kept = (sign for sign in cell if sign.isspace() or category(sign) != "Cc")
    return " ".join("".join(kept).split())


def _columns(
    line: int, head: Sequence[str], *, movements: Mapping[str, Movement]
) -> _Columns | tuple[Fault, ...]:
    by_name = {folded(alias): one for one in movements.values() for alias in one.aliases}
    by_name |= {folded(one.name): one for one in movements.values()}
    by_name |= {folded(key): one for key, one in movements.items()}
    by_name |= {folded(key.replace("_", " ")): one for key, one in movements.items()}
    place: dict[str, int] = {}
    bests: dict[int, Movement] = {}
    faults: list[Fault] = []
    for at, cell in enumerate(head):
        word = folded(cell)
        kind = _kind(word)
        movement = by_name.get(word)
        if not word:
            continue
        if kind is not None and kind not in place:
            place[kind] = at
        elif kind is not None or movement in bests.values():
            faults.append(Fault(line, Wrong.COLUMN_TWICE, cell))
        elif movement is None:
            faults.append(Fault(line, Wrong.UNKNOWN_COLUMN, cell, near=_near(word, movements)))
        elif _is_banded(movement):
            faults.append(Fault(line, Wrong.BAND_COLUMN, cell))
        else:
            bests[at] = movement
    if "name" not in place:
        faults.insert(0, Fault(line, Wrong.NO_NAME_COLUMN, ", ".join(head)))
    if faults:
        return tuple(faults)
    return _Columns(place["name"], place.get("stage"), place.get("group"), bests, len(head))


def _kind(word: str) -> str | None:
    kinds = {"name": NAME_WORDS, "stage": STAGE_WORDS, "group": GROUP_WORDS}
    return next((kind for kind, words in kinds.items() if word in words), None)


def _near(word: str, movements: Mapping[str, Movement]) -> tuple[str, ...]:
    names = {folded(one.name): one.name for one in movements.values()}
    return tuple(names[one] for one in get_close_matches(word, list(names), n=2))


def _is_banded(movement: Movement) -> bool:
    """Tell whether a band is the resistance: which one it was, a table of kilograms cannot say."""
    if movement.loading is Loading.EXTERNAL:
        return not any(choice & WEIGHTS for choice in movement.equipment)
    has_band = any(Equipment.BAND in choice for choice in movement.equipment)
    return movement.loading is Loading.ASSISTED and has_band


def _row(line: int, cells: Sequence[str], columns: _Columns) -> TeamRow | tuple[Fault, ...]:
    if len(cells) > columns.count and any(cells[columns.count :]):
        return (Fault(line, Wrong.CELLS, str(len(cells)), most=columns.count),)
    faults: list[Fault] = []
    name = _cell(cells, columns.name)
    if not name:
        faults.append(Fault(line, Wrong.NO_NAME))
    elif len(name) > NAME_MOST:
        faults.append(Fault(line, Wrong.NAME_LONG, name, most=NAME_MOST))
    stage = _stage(_cell(cells, columns.stage))
    if stage is None:
        faults.append(Fault(line, Wrong.STAGE, _cell(cells, columns.stage)))
    group = _cell(cells, columns.group)
    if len(group) > GROUP_MOST:
        faults.append(Fault(line, Wrong.GROUP, group, most=GROUP_MOST))
    bests: dict[str, Best] = {}
    for at, movement in columns.movements.items():
        said = _cell(cells, at)
        found = _best(line, said, movement) if said else None
        if isinstance(found, Fault):
            faults.append(found)
        elif found is not None:
            bests[movement.key] = found
    return tuple(faults) or TeamRow(line, name, stage or STAGE_FIRST, group, bests)


def _cell(cells: Sequence[str], at: int | None) -> str:
    return cells[at] if at is not None and at < len(cells) else ""


def _stage(said: str) -> int | None:
    if not said:
        return STAGE_FIRST
    found = re.fullmatch(r"(\d)(?:[.,]0+)?", said)
    stage = int(found[1]) if found else 0
    return stage if STAGE_FIRST <= stage <= STAGE_LAST else None


def _best(line: int, said: str, movement: Movement) -> Best | Fault:
    found = VALUE.fullmatch(said)
    is_clock = found is not None and found["minutes"] is not None
    if found is None or (is_clock and not movement.measure.is_time):
        return Fault(line, Wrong.VALUE, said, movement.name)
    value = (
        60.0 * int(found["minutes"]) + int(found["seconds"])
        if is_clock
        else _number(found["number"])
    )
    load_kg = _number(found["load"]) if found["load"] else None
    most = _most(movement.measure)
    if not 0 < value <= most:
        return Fault(line, Wrong.BOUNDS, said, movement.name, most=most)
    if load_kg is not None and not 0 < load_kg <= LOAD_MOST_KG:
        return Fault(line, Wrong.BOUNDS, said, movement.name, most=LOAD_MOST_KG)
    if load_kg is None and movement.loading is Loading.EXTERNAL:
        return Fault(line, Wrong.LOAD_MISSING, said, movement.name)
    if load_kg is not None and movement.loading not in {Loading.EXTERNAL, Loading.BODYWEIGHT_PLUS}:
        return Fault(line, Wrong.LOAD_NOT_TAKEN, said, movement.name)
    return Best(value=value, rung=Rung(load_kg=load_kg))


def _number(said: str) -> float:
    return float(said.replace(",", "."))


def _most(measure: Measure) -> float:
    if measure.is_time:
        return SECONDS_MOST
    return METRES_MOST if measure is Measure.CARRY_M else REPS_MOST


def folded(text: str) -> str:
    """Write a name so that case, accents and doubled spaces make no difference."""
    plain = normalize("NFKD", " ".join(text.split())).casefold()
    return "".join(letter for letter in plain if not combining(letter))
