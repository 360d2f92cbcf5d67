"""The people of a benchmark: what they write, how fast, and when all of it is answered."""

import asyncio
import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from demo_scenario.loopback.person import Person
from demo_scenario.loopback.platform_state import LoopbackPlatform

PATIENCE_S = 180.0  # [s] ch: a slow machine may take its time
LOOK_EVERY_S = 0.02  # [s] ch: fine enough for runs of seconds
ANSWERS = "sendMessage"


@dataclass
class Crowd:
    """People and the texts that each of them will write, in turns."""

    platform: LoopbackPlatform
    people: Sequence[Person]
    texts: Sequence[Sequence[str]]

    def in_turns(self, count: int) -> Iterator[tuple[Person, str]]:
        """Go round ``count`` times one message: everybody's next, and from the start again."""
        for number in range(count):
            turn, place = divmod(number, len(self.people))
            texts = self.texts[place]
            yield self.people[place], texts[turn % len(texts)]

    def write_all(self, count: int) -> None:
        """Write ``count`` messages at once."""
        for person, text in self.in_turns(count):
            person.write(text)

    async def write_at(self, per_s: float, count: int) -> None:
        """Write ``count`` messages, so many a second, on time again after a hiccup."""
        began_s = time.perf_counter()
        for number, (person, text) in enumerate(self.in_turns(count)):
            ahead_s = began_s + number / per_s - time.perf_counter()
            if ahead_s > 0:
                await asyncio.sleep(ahead_s)
            person.write(text)

    def sent(self) -> int:
        """Count the messages that the bot has sent so far."""
        return sum(
            request.method == ANSWERS and request.is_accepted for request in self.platform.requests
        )

    async def until_sent(self, count: int) -> bool:
        """Wait until the bot has sent ``count`` messages in all; False when it never does."""
        for _ in range(int(PATIENCE_S / LOOK_EVERY_S)):
            if self.sent() >= count:
                return True
            await asyncio.sleep(LOOK_EVERY_S)
        return False
