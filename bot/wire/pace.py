"""How fast we may send: the platform's published limits, kept before it has to tell us."""

from datetime import datetime, timedelta

from pydantic import BaseModel


class _Bucket(BaseModel):
    tokens: float
    filled_at: datetime


class Pace:
    """Two kinds of buckets: one for all chats, one for each chat."""

    OVERALL_PER_S = 30.0  # [messages/s] botapi: about 30 a second in all
    CHAT_PER_S = 1.0  # [messages/s] botapi: about one a second in a chat
    CHAT_BURST = 3.0  # [messages] ch: a short burst is tolerated; a reply is one to three messages

    def __init__(self, *, is_on: bool = True) -> None:
        """Start with full buckets; ``is_on=False`` lets everything pass (benchmarks)."""
        self._is_on = is_on
        self._all: _Bucket | None = None
        self._chats: dict[int, _Bucket] = {}

    def room(self, *, now: datetime) -> int:
        """Return how many messages may leave now."""
        if not self._is_on:
            return int(self.OVERALL_PER_S) * 1000
        self._all = _filled(self._all, now, self.OVERALL_PER_S, self.OVERALL_PER_S)
        return int(self._all.tokens)

    def next_room_at(self, *, now: datetime) -> datetime:
        """Return when the next message may leave, whatever its chat."""
        missing = max(0.0, 1.0 - self._all.tokens) if self._all and self._is_on else 0.0
        return now + timedelta(seconds=missing / self.OVERALL_PER_S)

    def chat_free_at(self, chat_id: int, *, now: datetime) -> datetime:
        """Return from when this chat may get its next message: ``now`` when it may at once."""
        if not self._is_on:
            return now
        chat = self._chat(chat_id, now)
        return now + timedelta(seconds=max(0.0, 1.0 - chat.tokens) / self.CHAT_PER_S)

    def spend(self, chat_id: int, *, now: datetime) -> None:
        """Count one message that leaves now."""
        if self._is_on:
            self._all = _filled(self._all, now, self.OVERALL_PER_S, self.OVERALL_PER_S)
            self._all.tokens -= 1
            self._chat(chat_id, now).tokens -= 1

    def _chat(self, chat_id: int, now: datetime) -> _Bucket:
        filled = _filled(self._chats.get(chat_id), now, self.CHAT_PER_S, self.CHAT_BURST)
        self._chats[chat_id] = filled
        return filled


def _filled(bucket: _Bucket | None, now: datetime, per_s: float, most: float) -> _Bucket:
    if bucket is None:
        return _Bucket(tokens=most, filled_at=now)
    gained = max(0.0, (now - bucket.filled_at).total_seconds()) * per_s
    bucket.tokens = min(most, bucket.tokens + gained)
    bucket.filled_at = now
    return bucket
