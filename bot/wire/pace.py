"""How fast we may send: the platform's published limits, kept before it has to tell us."""

from collections import deque
from datetime import datetime, timedelta

from pydantic import BaseModel

SECOND = timedelta(seconds=1)
LEAST = timedelta(microseconds=1)  # the finest step of an instant, so that a wait is long enough


class _Bucket(BaseModel):
    tokens: float
    filled_at: datetime


class Pace:
    """A bucket and a window of one second for all chats, and a bucket for each chat.

    The window keeps every second, wherever it begins, at the published number. The small bucket
    spreads a burst, so that messages that bunch up on their way still fit. What the process
    before this one sent is unknown, so everything begins nearly empty.
    """

    OVERALL_PER_S = 30.0  # [messages/s] botapi: about 30 a second in all
    OVERALL_BURST = 10.0  # [messages] ch: a third of a second's worth may leave at once
    CHAT_PER_S = 1.0  # [messages/s] botapi: about one a second in a chat
    CHAT_BURST = 3.0  # [messages] ch: a short burst is tolerated; a reply is one to three messages
    ROOM_WHEN_OFF = 1000  # [messages] ch: more than a sender ever has in flight

    def __init__(self, *, is_on: bool = True) -> None:
        """Know of nothing that was sent; ``is_on=False`` lets everything pass (benchmarks)."""
        self._is_on = is_on
        self._begun_at: datetime | None = None
        self._all: _Bucket | None = None
        self._chats: dict[int, _Bucket] = {}
        self._latest: deque[datetime] = deque(maxlen=int(self.OVERALL_PER_S))

    def room(self, *, now: datetime) -> int:
        """Return how many messages may leave now."""
        if not self._is_on:
            return self.ROOM_WHEN_OFF
        in_window = sum(1 for at in self._latest if at > now - SECOND)
        return min(int(self._overall(now).tokens), int(self.OVERALL_PER_S) - in_window)

    def next_room_at(self, *, now: datetime) -> datetime:
        """Return when the next message may leave, whatever its chat."""
        if not self._is_on:
            return now
        free_at = _full_at(self._overall(now), self.OVERALL_PER_S, now)
        if len(self._latest) == self._latest.maxlen:
            free_at = max(free_at, self._latest[0] + SECOND)
        return free_at

    def busy_chats(self, *, now: datetime) -> dict[int, datetime]:
        """Return the chats that may get nothing now, each with when it may again."""
        if not self._is_on:
            return {}
        busy = {}
        for chat_id in tuple(self._chats):
            chat = self._chat(chat_id, now)
            if chat.tokens < 1.0:
                busy[chat_id] = _full_at(chat, self.CHAT_PER_S, now)
            elif chat.tokens >= self.CHAT_BURST:
                del self._chats[chat_id]  # as good as one that was never written to
        return busy

    def spend(self, chat_id: int, *, now: datetime, messages: int = 1) -> None:
        """Count what leaves now. An album is not cut in two: it may leave the buckets in debt."""
        if self._is_on:
            self._overall(now).tokens -= messages
            self._chat(chat_id, now).tokens -= messages
            self._latest.extend([now] * messages)

    def _overall(self, now: datetime) -> _Bucket:
        self._all = self._filled(self._all, now, self.OVERALL_PER_S, self.OVERALL_BURST)
        return self._all

    def _chat(self, chat_id: int, now: datetime) -> _Bucket:
        known = self._chats.get(chat_id)
        chat = self._chats[chat_id] = self._filled(known, now, self.CHAT_PER_S, self.CHAT_BURST)
        return chat

    def _filled(self, bucket: _Bucket | None, now: datetime, per_s: float, most: float) -> _Bucket:
        if self._begun_at is None:
            self._begun_at = now
        if bucket is None:
            bucket = _Bucket(tokens=1.0, filled_at=self._begun_at)
        gained = max(0.0, (now - bucket.filled_at).total_seconds()) * per_s
        bucket.tokens = min(most, bucket.tokens + gained)
        bucket.filled_at = max(bucket.filled_at, now)
        return bucket


def _full_at(bucket: _Bucket, per_s: float, now: datetime) -> datetime:
    """Return when the bucket holds a whole message, rounded up: nobody leaves before their time."""
    missing = 1.0 - bucket.tokens
    return now if missing <= 0 else now + timedelta(seconds=missing / per_s) + LEAST
