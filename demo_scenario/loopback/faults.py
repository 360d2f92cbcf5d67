"""What may go wrong on the way: faults that a test asks for, call by call.

A fault strikes the next ``times`` calls that match its method and chat (``None`` matches any, and
``times=None`` strikes until it is lifted). Delays add up; of the others the oldest strikes alone.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any


@dataclass(frozen=True, slots=True, kw_only=True)
class Delayed:
    """The call is taken up ``delay_s`` real seconds late; ``after``: accepted, and answered late.

    A client that gives up meanwhile has sent nothing, or (``after``) has sent without knowing.
    """

    delay_s: float
    after: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class GatewayFailure:
    """A gateway answers with an HTML page; ``is_accepted`` says whether the call went through."""

    status: int = 502
    is_accepted: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Refusal:
    """The platform refuses with this status and description, and the parameters if any."""

    status: int
    description: str
    parameters: dict[str, Any] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FloodWait:
    """The platform answers 429 and asks for ``retry_after_s`` whole seconds."""

    retry_after_s: int


@dataclass(frozen=True, slots=True, kw_only=True)
class DroppedBefore:
    """The connection breaks before the platform has accepted the call."""


@dataclass(frozen=True, slots=True, kw_only=True)
class DroppedAfter:
    """The platform accepts the call, and the connection breaks before the answer."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NotJson:
    """The answer has status 200 and a body that is no JSON."""

    body: str = "<html><body>Service page</body></html>"
    is_accepted: bool = False


Break = GatewayFailure | Refusal | FloodWait | DroppedBefore | DroppedAfter | NotJson
Fault = Delayed | Break


@dataclass(frozen=True, slots=True)
class Strike:
    """What strikes one call: delays in seconds, and the break if any."""

    before_s: float = 0.0
    after_s: float = 0.0
    broken: Break | None = None

    @property
    def name(self) -> str:
        """Name it for the record; empty for nothing."""
        if self.broken is not None:
            return type(self.broken).__name__
        return Delayed.__name__ if self.before_s or self.after_s else ""


NOTHING = Strike()


@dataclass(slots=True)
class PlannedFault:
    """A fault, whom it strikes, and how often it still will."""

    fault: Fault
    method: str | None
    chat_id: int | None
    times_left: int | None
    struck: int = 0

    def matches(self, method: str, chat_id: int | None) -> bool:
        """Say whether this fault strikes a call of ``method`` for ``chat_id``."""
        return (
            (self.method is None or self.method == method)
            and (self.chat_id is None or self.chat_id == chat_id)
            and (self.times_left is None or self.times_left > 0)
        )

    def strike(self) -> None:
        """Count one call."""
        self.struck += 1
        if self.times_left is not None:
            self.times_left -= 1


@dataclass(slots=True)
class FaultPlan:
    """The faults still to come, oldest first."""

    _planned: list[PlannedFault] = field(default_factory=list)

    def add(
        self,
        fault: Fault,
        *,
        times: int | None = 1,
        method: str | None = None,
        chat_id: int | None = None,
    ) -> PlannedFault:
        """Plan ``fault`` for the next ``times`` matching calls."""
        planned = PlannedFault(fault, method.lower() if method else None, chat_id, times)
        self._planned.append(planned)
        return planned

    def lift(self, planned: Iterable[PlannedFault] | None = None) -> None:
        """Take these faults back, or all of them."""
        gone = None if planned is None else {id(each) for each in planned}
        self._planned = [
            each for each in self._planned if gone is not None and id(each) not in gone
        ]

    def strike(self, method: str, chat_id: int | None) -> Strike:
        """Return what strikes one call; it is used up."""
        if not self._planned:
            return NOTHING
        before_s, after_s, broken = 0.0, 0.0, None
        for planned in self._planned:
            if not planned.matches(method.lower(), chat_id):
                continue
            if isinstance(planned.fault, Delayed):
                if planned.fault.after:
                    after_s += planned.fault.delay_s
                else:
                    before_s += planned.fault.delay_s
            elif broken is None:
                broken = planned.fault
            else:
                continue
            planned.strike()
        self._planned = [each for each in self._planned if each.times_left != 0]
        return Strike(before_s, after_s, broken)
