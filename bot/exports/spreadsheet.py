"""Comma-separated files that a spreadsheet opens as a table and never runs."""

import csv
import io
from collections.abc import Sequence
from datetime import date, datetime

RUNS = ("=", "+", "-", "@", "\t", "\r", "\n", "\0")
"""owaspcsv: a cell that begins so may be run as a formula; owaspasvs 1.2.10 adds the null."""
WIDE = ("＝", "＋", "－", "＠")
"""ch: the same signs in full width, which East Asian spreadsheets take for the plain ones."""
BOM = "\ufeff"
"""ch: without it a common spreadsheet takes UTF-8 for another encoding and breaks names."""

Cell = str | int | float | bool | date | datetime | None
Table = Sequence[Sequence[Cell]]


def table_bytes(head: Sequence[str], rows: Table, *, decimal_mark: str) -> bytes:
    """Write a table with its headings, as RFC 4180 has it, in UTF-8 with a byte order mark.

    Text is quoted and numbers are not, so that they stay numbers. Who writes numbers with a
    comma gets semicolons between cells, as their spreadsheet expects.
    """
    written = io.StringIO(newline="")
    separator = ";" if decimal_mark == "," else ","
    writer = csv.writer(written, delimiter=separator, quoting=csv.QUOTE_MINIMAL)
    writer.writerow(head)
    for row in rows:
        writer.writerow([_cell(one, decimal_mark) for one in row])
    return (BOM + written.getvalue()).encode()


def defused(words: str) -> str:
    """Put an apostrophe before words that a spreadsheet could run; everything else stays.

    Spaces before such a sign do not make it harmless everywhere, so they are looked past. A null
    has no place in a text file and is dropped.
    """
    said = words.replace("\0", "")
    is_risky = said.startswith(("\t", "\r", "\n")) or said.lstrip().startswith((*RUNS, *WIDE))
    return f"'{said}" if is_risky else said


def _cell(value: Cell, decimal_mark: str) -> str:
    match value:
        case None:
            return ""
        case bool():
            return "yes" if value else "no"
        case int():
            return str(value)
        case float():
            return f"{value:.6g}".replace(".", decimal_mark)
        case datetime():
            return f"{value:%Y-%m-%d %H:%M}"
        case date():
            return value.isoformat()
        case str():
            return defused(value)
