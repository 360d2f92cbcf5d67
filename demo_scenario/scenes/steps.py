"""What a scene is made of: one thing after another that a person does on their phone.

Days count from the Monday on which the demo begins; hours are the person's own wall time.
"""

from dataclasses import dataclass
from datetime import time

WAIT_S = 25  # [s] ch: for the answer to come and be read


@dataclass(frozen=True, slots=True)
class Write:
    """Write a text; ``on``: as an answer to the newest message that says so."""

    text: str
    on: str = ""


@dataclass(frozen=True, slots=True)
class Tap:
    """Tap the newest button that begins like this, under a message that says ``on``.

    An empty label is the first button of that message. ``if_there``: pass over what is not there.
    """

    label: str
    on: str = ""
    if_there: bool = False


@dataclass(frozen=True, slots=True)
class Film:
    """Send a clip, or several pictures at once where there are several captions."""

    captions: tuple[str, ...] = ("",)


@dataclass(frozen=True, slots=True)
class Picture:
    """Send a picture."""

    caption: str = ""


@dataclass(frozen=True, slots=True)
class Speak:
    """Send a voice note."""


@dataclass(frozen=True, slots=True)
class SendFile:
    """Send a file of one's own."""

    name: str
    content: str
    caption: str = ""


@dataclass(frozen=True, slots=True)
class SendBack:
    """Send a file that came back, with one place changed."""

    name: str
    old: str
    new: str
    caption: str


@dataclass(frozen=True, slots=True)
class Wait:
    """Do nothing for a while [s]."""

    seconds: int


Step = Write | Tap | Film | Picture | Speak | SendFile | SendBack | Wait


@dataclass(frozen=True, slots=True)
class Scene:
    """One scene: on the first of these days on which its first step can be done."""

    who: str
    days: tuple[int, ...]
    at: time
    steps: tuple[Step, ...]

    @property
    def first_day(self) -> int:
        """Return the first day on which it is tried."""
        return self.days[0]


@dataclass(frozen=True, slots=True)
class Silence:
    """Days on which somebody neither trains nor answers."""

    who: str
    first_day: int
    last_day: int


@dataclass(frozen=True, slots=True)
class Late:
    """Trains on a day and writes it down on the next, at the hour of the session."""

    who: str
    day: int


@dataclass(frozen=True, slots=True)
class Outage:
    """The process is down: the owner's wall time and how long [min]."""

    day: int
    at: time
    minutes: int


def scene(who: str, day: int | tuple[int, ...], at: str, *steps: Step | str) -> Scene:
    """Write a scene in a line: a text stands for writing it."""
    hour, _, minute = at.partition(":")
    return Scene(
        who=who,
        days=(day,) if isinstance(day, int) else day,
        at=time(int(hour), int(minute)),
        steps=tuple(Write(one) if isinstance(one, str) else one for one in steps),
    )
