"""Every call that reached the server, in order: what was asked, and what came of it."""

from collections import deque
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any


@dataclass(slots=True)
class RecordedRequest:
    """One call. ``status`` is what the client was answered, ``None`` while or when it was not.

    ``is_accepted`` says that the platform carried it out, whether or not the client heard;
    ``fault`` names the planned fault that struck it.
    """

    number: int
    at: datetime
    method: str
    params: Mapping[str, Any]
    file_names: Mapping[str, str]
    status: int | None = None
    description: str = ""
    is_accepted: bool = False
    fault: str = ""


@dataclass(slots=True)
class RequestLog:
    """The calls so far; ``keep_last`` bounds how many are kept, for long runs."""

    keep_last: int | None = None
    received: int = 0
    in_flight: int = 0
    _kept: deque[RecordedRequest] = field(init=False)

    def __post_init__(self) -> None:
        """Make room."""
        self._kept = deque(maxlen=self.keep_last)

    def __iter__(self) -> Iterator[RecordedRequest]:
        """Go through the kept calls, oldest first."""
        return iter(tuple(self._kept))

    def open(
        self,
        method: str,
        params: Mapping[str, Any],
        file_names: Mapping[str, str],
        at: datetime,
    ) -> RecordedRequest:
        """Record a call that has arrived."""
        self.received += 1
        self.in_flight += 1
        record = RecordedRequest(self.received, at, method, params, file_names)
        self._kept.append(record)
        return record

    def close(self) -> None:
        """Note that a call has been dealt with."""
        self.in_flight -= 1

    def of(self, method: str) -> tuple[RecordedRequest, ...]:
        """Return the kept calls of one method."""
        return tuple(each for each in self._kept if each.method.lower() == method.lower())
