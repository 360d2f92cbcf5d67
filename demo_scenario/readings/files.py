"""Read a file of messages, and refuse a wrong line with its number and what is expected."""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from pydantic import BaseModel, ValidationError

from demo_scenario.readings.lines import ContextLine, ExpectLine, MessageLine, PlaceLine
from scheduler.located_yaml import WrongFileError

ModelT = TypeVar("ModelT", bound=BaseModel)
PROBLEMS_MOST = 20  # [problems] ch: enough to mend before the next try


@dataclass(frozen=True)
class Case:
    """A message, the place where it arrives, and the reading that is expected."""

    number: int
    where: str
    place: PlaceLine
    say: str
    expect: ExpectLine


def load(file: Path) -> list[Case]:
    """Return the messages of a file.

    Raises:
        WrongFileError: one line a problem: file, line, field, what is expected.

    """
    try:
        text = file.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as fault:
        raise WrongFileError([f"{file}: expected a file of UTF-8 text ({fault})"]) from fault
    return cases(text, file_name=file.name)


def cases(text: str, *, file_name: str) -> list[Case]:
    """Return the messages of a text of one JSON object a line; empty lines are passed over."""
    places: dict[str, PlaceLine] = {}
    found: list[Case] = []
    problems: list[str] = []
    for number, line in enumerate(text.split("\n"), start=1):
        if not line.strip():
            continue
        try:
            case = _line(line, number, places)
        except _BadLineError as fault:
            problems += [f"{file_name} line {number}, {one}" for one in fault.problems]
        else:
            found += [case] if case else []
    if problems:
        raise WrongFileError(problems[:PROBLEMS_MOST])
    if not found:
        raise WrongFileError([f'{file_name}: expected at least one line with "in" and "say"'])
    return found


class _BadLineError(Exception):
    def __init__(self, *problems: str) -> None:
        super().__init__(*problems)
        self.problems = problems


def _line(line: str, number: int, places: dict[str, PlaceLine]) -> Case | None:
    """Return the message on a line, None where the line names a place."""
    try:
        tree = json.loads(line)
    except ValueError as fault:
        raise _BadLineError(f"expected one JSON object ({fault})") from fault
    if not isinstance(tree, dict) or not {"context", "in"} & set(tree):
        raise _BadLineError('expected an object with "context" and "is", or "in" and "say"')
    if "context" in tree:
        known = _checked(ContextLine, tree)
        _check_numbers(known.place)
        places[known.context] = known.place
        return None
    said = _checked(MessageLine, tree)
    if said.place not in places:
        raise _BadLineError(f'in: expected a context named on a line before, not "{said.place}"')
    return Case(number, said.place, places[said.place], said.say, said.expect)


def _checked(model: type[ModelT], tree: Mapping[str, object]) -> ModelT:
    try:
        return model.model_validate(tree)
    except ValidationError as fault:
        raise _BadLineError(
            *(
                f"{'.'.join(str(step) for step in one['loc'])}: {one['msg']}"
                for one in fault.errors()
            )
        ) from fault


def _check_numbers(place: PlaceLine) -> None:
    """Refuse a number of an item that no session has."""
    sessions = [*([place.session] if place.session else []), *place.others]
    known = {item.number for session in sessions for item in session.items}
    asked: dict[str, list[int | None]] = {
        "asked_item": [place.asked_item],
        "question.item": [place.question.item if place.question else None],
        "recorded": [one.item for one in place.recorded],
        "before": [one.item for one in place.before],
    }
    for field, numbers in asked.items():
        if missing := [n for n in numbers if n is not None and n not in known]:
            raise _BadLineError(
                f"is.{field}: expected the number of an item of a session, not {missing[0]}"
            )
