"""The list of erasures beside a database: ids and instants, so that no copy brings anybody back.

The same list stands in the database. This file outlives it: where the database itself is lost, an
older copy is put back, and whoever was erased since is erased from it again.
"""

import os
from collections.abc import Iterable
from contextlib import suppress
from datetime import datetime
from pathlib import Path

from storage.private_file import OWNER_ONLY
from storage.records.leaving import Erasure

ENDING = ".erased"
WHOLE, PART = "whole", "athlete"


def list_beside(file: Path) -> Path:
    """Return where the list of a database lies."""
    return file.with_name(file.name + ENDING)


def write_list(place: Path, erasures: Iterable[Erasure]) -> None:
    """Write the list anew, as a whole or not at all."""
    lines = [
        f"{one.person_id} {one.erased_at.isoformat()} {WHOLE if one.is_whole else PART}\n"
        for one in in_order(erasures)
    ]
    part = place.with_name(f".{place.name}.part")
    with suppress(FileNotFoundError):
        part.unlink()
    with os.fdopen(os.open(part, os.O_CREAT | os.O_EXCL | os.O_WRONLY, OWNER_ONLY), "w") as opened:
        opened.writelines(lines)
        opened.flush()
        os.fsync(opened.fileno())
    part.replace(place)


def read_list(place: Path) -> tuple[Erasure, ...]:
    """Read a list; a missing file is an empty one, and a torn line is passed over."""
    try:
        lines = place.read_text().splitlines()
    except (OSError, UnicodeDecodeError):
        return ()
    found = []
    for line in lines:
        with suppress(ValueError):
            number, at, extent = line.split(" ")
            found.append(
                Erasure(
                    person_id=int(number),
                    erased_at=datetime.fromisoformat(at),
                    is_whole=extent == WHOLE,
                )
            )
    return tuple(found)


def in_order(erasures: Iterable[Erasure]) -> list[Erasure]:
    """Return each erasure once, the earliest first."""
    known = {(one.erased_at, one.person_id): one for one in erasures}
    return [known[key] for key in sorted(known)]
