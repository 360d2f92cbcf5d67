"""The queue of updates that a bot fetches, and what an offset confirms.

Numbers start at random and count up; after a week without any the next is random again. Updates
are kept for a day. Both are the platform's, and follow the clock that the platform is given.
"""

import random
from collections import deque
from collections.abc import Callable, Collection
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

KEPT_FOR = timedelta(hours=24)  # [h] botapi: getting updates
RANDOM_AGAIN_AFTER = timedelta(days=7)  # [days] botapi: Update, update_id
LIMIT_MAX = 100  # [updates] botapi: getUpdates, limit
KINDS_ON_REQUEST = frozenset(  # botapi: getUpdates, allowed_updates
    {"chat_member", "message_reaction", "message_reaction_count"}
)
FIRST_ID_MIN, FIRST_ID_MAX = 100_000_000, 999_999_999  # [1] CH: nine digits, as seen in practice
OFFSET_AHEAD_MAX = 10  # [updates] from memory: an offset further ahead confirms nothing


@dataclass(frozen=True, slots=True)
class PendingUpdate:
    """One update that is not confirmed yet."""

    update_id: int
    arrived_at: datetime
    body: dict[str, Any]


@dataclass(slots=True)
class UpdateQueue:
    """Updates in order, oldest first."""

    now: Callable[[], datetime]
    chance: random.Random
    on_arrival: Callable[[], None]
    allowed: frozenset[str] | None = None
    confirmed: int = 0
    forgotten: int = 0
    _pending: deque[PendingUpdate] = field(default_factory=deque)
    _next_id: int = 0
    _last_at: datetime | None = None

    def __len__(self) -> int:
        """Count the updates that no offset has confirmed."""
        return len(self._pending)

    def add(self, kind: str, body: dict[str, Any]) -> int | None:
        """Queue an update and return its number; ``None`` when its kind is not wanted."""
        if not self.is_wanted(kind):
            return None
        return self.inject({kind: body})

    def inject(self, body: dict[str, Any]) -> int:
        """Queue a body as it is, malformed or huge, and return its number.

        A body that brings its own ``update_id`` is shown with that one.
        """
        at = self.now()
        self._forget_old(at)
        if self._last_at is None or at - self._last_at >= RANDOM_AGAIN_AFTER:
            self._next_id = self.chance.randint(FIRST_ID_MIN, FIRST_ID_MAX)
        update_id, self._next_id, self._last_at = self._next_id, self._next_id + 1, at
        self._pending.append(PendingUpdate(update_id, at, {"update_id": update_id, **body}))
        self.on_arrival()
        return update_id

    def is_wanted(self, kind: str) -> bool:
        """Say whether updates of this kind are queued at present."""
        return kind in self.allowed if self.allowed else kind not in KINDS_ON_REQUEST

    def allow(self, kinds: Collection[str]) -> None:
        """Choose what is queued from now on; none named means the platform's default."""
        self.allowed = frozenset(kinds) or None

    def confirm(self, offset: int) -> None:
        """Forget everything below ``offset``; a negative one keeps that many from the end."""
        if offset < 0:
            self._drop(len(self._pending) + offset)
        elif offset <= self._next_id + OFFSET_AHEAD_MAX:
            while self._pending and self._pending[0].update_id < offset:
                self._drop(1)

    def confirm_all(self) -> None:
        """Forget everything, as when a bot asks to drop what is pending."""
        self._drop(len(self._pending))

    def page(self, limit: int) -> list[dict[str, Any]]:
        """Return the oldest updates, at most ``limit``; they stay until confirmed."""
        self._forget_old(self.now())
        size = min(limit, len(self._pending))
        return [self._pending[place].body for place in range(size)]

    def _drop(self, number: int) -> None:
        for _ in range(number):
            self._pending.popleft()
            self.confirmed += 1

    def _forget_old(self, at: datetime) -> None:
        while self._pending and at - self._pending[0].arrived_at > KEPT_FOR:
            self._pending.popleft()
            self.forgotten += 1
