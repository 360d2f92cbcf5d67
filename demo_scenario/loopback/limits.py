"""How fast a bot may send: buckets that refill with the clock they are given.

The platform publishes about 30 messages a second in all, about one a second in a chat with short
bursts let through, and 20 a minute in a group. It does not publish how long a burst may be.
"""

import math
from dataclasses import dataclass, field
from datetime import datetime

OVERALL_PER_S = 30.0  # [messages/s] botapi: bots FAQ, broadcasting
OVERALL_BURST = 30  # [messages] botapi: one second's worth of the same figure
CHAT_PER_S = 1.0  # [messages/s] botapi: bots FAQ, sending to one chat
CHAT_BURST = 5  # [messages] CH: botapi says "short bursts" without a number
GROUP_PER_S = 20 / 60  # [messages/s] botapi: bots FAQ, 20 a minute in one group
GROUP_BURST = 20  # [messages] botapi: one minute's worth of the same figure
_ROUNDING = 1e-6  # [messages] binary fractions of a second must not cost a whole message


@dataclass(slots=True)
class _Bucket:
    per_s: float
    burst: int
    tokens: float
    filled_at_s: float

    def refill(self, now_s: float) -> None:
        elapsed_s = max(0.0, now_s - self.filled_at_s)
        self.tokens = min(float(self.burst), self.tokens + elapsed_s * self.per_s)
        self.filled_at_s = now_s

    def wait_s(self) -> float:
        missing = 1.0 - _ROUNDING - self.tokens
        return max(0.0, missing / self.per_s)


@dataclass(slots=True)
class RateLimits:
    """One bucket for all chats and one for each; ``are_on`` false lets everything through."""

    are_on: bool = True
    chat_burst: int = CHAT_BURST
    _overall: _Bucket | None = None
    _of_chat: dict[int, _Bucket] = field(default_factory=dict)

    def retry_after_s(self, chat_id: int, now: datetime, *, messages: int = 1) -> int:
        """Take room for ``messages`` and return 0, or take nothing and return whole seconds.

        An album takes as many as it has items, and may leave the buckets in debt: it is one call,
        and the platform does not cut it in two.
        """
        if not self.are_on:
            return 0
        now_s = now.timestamp()
        buckets = (self._overall_bucket(now_s), self._chat_bucket(chat_id, now_s))
        for bucket in buckets:
            bucket.refill(now_s)
        wait_s = max(bucket.wait_s() for bucket in buckets)
        if wait_s > 0:
            return max(1, math.ceil(wait_s - _ROUNDING))
        for bucket in buckets:
            bucket.tokens -= messages
        return 0

    def _overall_bucket(self, now_s: float) -> _Bucket:
        if self._overall is None:
            self._overall = _Bucket(OVERALL_PER_S, OVERALL_BURST, OVERALL_BURST, now_s)
        return self._overall

    def _chat_bucket(self, chat_id: int, now_s: float) -> _Bucket:
        bucket = self._of_chat.get(chat_id)
        if bucket is None:
            per_s, burst = (
                (GROUP_PER_S, GROUP_BURST) if chat_id < 0 else (CHAT_PER_S, self.chat_burst)
            )
            bucket = self._of_chat[chat_id] = _Bucket(per_s, burst, burst, now_s)
        return bucket
