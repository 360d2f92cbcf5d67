"""A vignette as one line of a file: history, open question, message, and what is expected."""

from enum import StrEnum
from pathlib import Path
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError, model_validator

from scheduler.located_yaml import WrongFileError
from scheduler.pain.values import Level, Side, Site, Urgency


class Kind(StrEnum):
    """What a vignette is."""

    RED_FLAG = "red_flag"
    ORDINARY = "ordinary"
    HARMLESS = "harmless"


class QuestionKind(StrEnum):
    """Which question stands open in the chat."""

    PAIN = "pain"
    MORNING = "morning"
    RED_FLAG_LIST = "red_flag_list"
    CHEST = "chest"
    RESERVE = "reserve"
    EFFORT = "effort"


class _Line(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class Trainee(_Line):
    """Who says it; ``age`` [years], ``stage`` 1 to 5."""

    age: int = Field(default=34, ge=10, le=100)
    stage: int = Field(default=1, ge=1, le=5)


class Scored(_Line):
    """A number that was reported, after a session or on the morning after."""

    days_ago: int = Field(ge=0, le=400)
    at: Literal["session", "morning"]
    site: Site
    side: Side = Side.BOTH
    score: int = Field(ge=0, le=10)


class Sent(_Line):
    """A text that was sent."""

    days_ago: int = Field(ge=0, le=400)
    at: Literal["message"]
    say: str
    site: Site | None = None
    side: Side | None = None
    score: int | None = None


class Open(_Line):
    """The question that stands open."""

    kind: QuestionKind
    site: Site | None = None
    side: Side | None = None


class Expected(_Line):
    """What is expected right after the message, before any later answer."""

    level: Level
    urgency: Urgency | None = None
    asks: bool = False
    kind: Kind

    @model_validator(mode="before")
    @classmethod
    def _level_by_name(cls, data: object) -> object:
        if isinstance(data, dict) and isinstance(data.get("level"), str):
            names = {level.name.lower(): level for level in Level}
            if data["level"] not in names:
                raise ValueError("level: one of " + ", ".join(names))
            return {**data, "level": names[data["level"]]}
        return data


Event = Annotated[Scored | Sent, Field(discriminator="at")]


class Vignette(_Line):
    """One line."""

    id: str
    language: Literal["en", "es"] = "en"
    athlete: Trainee = Trainee()
    history: tuple[Event, ...] = ()
    question: Open | None = None
    say: str
    expect: Expected
    why: str = ""


def read_vignettes(path: Path) -> tuple[Vignette, ...]:
    """Read a file, one JSON object a line; a wrong line is refused with its number."""
    try:
        lines = path.read_text(encoding="utf-8").splitlines()
    except (OSError, UnicodeDecodeError) as fault:
        raise WrongFileError([f"{path.name}: a readable UTF-8 text file is expected"]) from fault
    found, problems = [], []
    for number, line in enumerate(lines, 1):
        if not line.strip():
            continue
        try:
            found.append(Vignette.model_validate_json(line))
        except ValidationError as fault:
            problems += _problems(fault, f"{path.name}, line {number}")
    if not found and not problems:
        problems = [f"{path.name}: at least one line with a JSON object is expected"]
    if problems:
        raise WrongFileError(problems)
    return tuple(found)


def _problems(fault: ValidationError, where: str) -> list[str]:
    """Say field and what is expected, one line a problem."""
    return [
        f"{where}: {'.'.join(str(part) for part in one['loc']) or 'the line'}: {one['msg']}"
        for one in fault.errors()
    ]
