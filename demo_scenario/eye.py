"""How a person reads the screen: the items of a session as displayed, and what a button says."""

import re
from dataclasses import dataclass
from enum import StrEnum

from demo_scenario.loopback.screen import ShownMessage

ITEM = re.compile(r"^(?P<number>\d+)\. (?P<name>.+?)$")
DOSE = re.compile(
    r"^\s*(?P<sets>\d+) × (?P<target>\d+) (?P<unit>s|m|reps?)(?P<more>.*?)"
    r", (?:stop with (?:about )?(?P<left>\d+(?:\.\d+)?) |a try of your checklist)"
)
LOAD = re.compile(r"(?:plus |más )?(?P<kg>\d+(?:[.,]\d+)?) kg(?: a hand| on the body)?")
BAND = re.compile(r"(?P<band>\w+) band")
ALL_AS_PLANNED = "All as planned"


class Unit(StrEnum):
    """What is counted, as displayed."""

    SECONDS = "s"
    METRES = "m"
    REPS = "reps"


@dataclass(frozen=True, slots=True)
class SeenItem:
    """One item of a session as displayed; ``load_kg`` [kg], ``stop_with`` [s or reps]."""

    number: int
    name: str
    sets: int
    target: int
    unit: Unit
    load_kg: float | None
    band: str | None
    arms: tuple[str, ...]
    stop_with: float
    is_extra: bool


@dataclass(frozen=True, slots=True)
class SeenSession:
    """A session as displayed."""

    message_id: int
    heading: str
    items: tuple[SeenItem, ...]
    text: str


def see_session(message: ShownMessage) -> SeenSession | None:
    """Read a session off the screen; None when the message is none, or is answered already."""
    if ALL_AS_PLANNED not in labels(message):
        return None
    lines = message.text.split("\n")
    items: list[SeenItem] = []
    is_extra = False
    for line, below in zip(lines, [*lines[1:], ""], strict=True):
        if line.startswith(("Pair ", "Block ", "Extra")):
            is_extra = line.startswith("Extra")
        found, dose = ITEM.match(line), DOSE.match(below)
        if found and dose:
            items.append(_item(found, dose, is_extra=is_extra))
    return SeenSession(
        message_id=message.message_id, heading=lines[0], items=tuple(items), text=message.text
    )


def _item(found: re.Match[str], dose: re.Match[str], *, is_extra: bool) -> SeenItem:
    more = dose["more"]
    load, band = LOAD.search(more), BAND.search(more)
    unit = dose["unit"]
    return SeenItem(
        number=int(found["number"]),
        name=found["name"],
        sets=int(dose["sets"]),
        target=int(dose["target"]),
        unit=Unit.REPS if unit.startswith("rep") else Unit(unit),
        load_kg=float(load["kg"].replace(",", ".")) if load else None,
        band=band["band"] if band else None,
        arms=_arms(more),
        stop_with=float(dose["left"] or 0),
        is_extra=is_extra,
    )


def _arms(more: str) -> tuple[str, ...]:
    if "left arm only" in more:
        return ("L",)
    if "right arm only" in more:
        return ("R",)
    return ("L", "R") if "each arm" in more else ()


def labels(message: ShownMessage) -> tuple[str, ...]:
    """Return what the buttons under a message say, row by row."""
    return tuple(button.text for row in message.buttons for button in row)


def label_at_most(message: ShownMessage, value: float) -> str | None:
    """Return the number button nearest below ``value``: "15", or the last "20+"."""
    numbers = {
        float(label.rstrip("+")): label
        for label in labels(message)
        if label.rstrip("+").replace(".", "", 1).isdigit()
    }
    below = [number for number in numbers if number <= value]
    if not numbers:
        return None
    return numbers[max(below)] if below else numbers[min(numbers)]
