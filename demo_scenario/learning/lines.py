"""Lines written for the reader: what a careful reader made of each, its language, its words."""

import hashlib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from bot.reading.red_flag_learnt import Group

GROUPS: Mapping[str, Group] = {
    "emergency": Group.EMERGENCY,
    "crisis": Group.CRISIS,
    "today": Group.CLINICIAN,
    "soon": Group.CLINICIAN,
    "tingle": Group.CLINICIAN,
    "ordinary": Group.HARMLESS,
    "harmless": Group.HARMLESS,
}
OWN_LINES = Path(__file__).parent / "lines"
FIELDS = 3


@dataclass(frozen=True)
class Line:
    """One message and what it carries; ``label`` is finer than its group."""

    label: str
    language: str
    text: str

    @property
    def group(self) -> Group:
        """The group that the label belongs to."""
        return GROUPS[self.label]


class WrongLineError(Exception):
    """A line cannot be read; the message says which and what is expected."""


def lines_in(folder: Path) -> list[Line]:
    """Read every ``.tsv`` of a folder, each line once, in an order that does not change.

    Raises:
        WrongLineError: where a line has not three fields, or an unknown label.

    """
    found = [line for file in sorted(folder.glob("*.tsv")) for line in lines_of(file)]
    return list(dict.fromkeys(found))


def digest_of(lines: Iterable[Line]) -> str:
    """Return a digest of lines and their labels: other lines, another digest."""
    whole = "\n".join(f"{one.group}\t{one.text}" for one in lines)
    return hashlib.sha256(whole.encode()).hexdigest()


def lines_of(file: Path) -> Iterator[Line]:
    """Read one file."""
    for number, raw in enumerate(file.read_text(encoding="utf-8").splitlines(), 1):
        fields = raw.split("\t")
        if len(fields) != FIELDS or fields[0] not in GROUPS:
            raise WrongLineError(
                f"{file.name}, line {number}: expected LABEL, LANGUAGE and message with tabs "
                f"between, LABEL one of {', '.join(GROUPS)}"
            )
        yield Line(*fields)
