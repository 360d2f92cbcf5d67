"""Somebody with a phone: notices what is new, and does things at their own time."""

import heapq
import random
from abc import ABC, abstractmethod
from collections.abc import Callable
from datetime import datetime, timedelta
from itertools import count

from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.phone import Phone

Act = Callable[[], object]


class Player(ABC):
    """One person of the demo; everything random about them comes from their own seed."""

    def __init__(self, phone: Phone, *, name: str, chance: random.Random) -> None:
        """Begin with nothing to do."""
        self.phone = phone
        self.name = name
        self.chance = chance
        self.now: datetime | None = None
        self.puzzled: list[str] = []
        self._order = count()
        self._plans: list[tuple[datetime, int, Act]] = []

    def at(self, when: datetime, act: Act) -> None:
        """Plan to do something."""
        heapq.heappush(self._plans, (when, next(self._order), act))

    def soon(self, act: Act, *, least_s: int, most_s: int) -> None:
        """Plan to do something in a little while [s from now]."""
        if self.now is None:
            raise RuntimeError(f"{self.name} has not looked at the phone yet")
        self.at(self.now + timedelta(seconds=self.chance.randint(least_s, most_s)), act)

    def next_at(self) -> datetime | None:
        """Return when this person does something next."""
        return self._plans[0][0] if self._plans else None

    def act(self, now: datetime) -> bool:
        """Do the first thing that is due; False when nothing is."""
        self.now = now
        if not self._plans or self._plans[0][0] > now:
            return False
        heapq.heappop(self._plans)[2]()
        return True

    def look(self, now: datetime) -> None:
        """Read what is new."""
        self.now = now
        for message in self.phone.news():
            self.read(message)

    @abstractmethod
    def read(self, message: ShownMessage) -> None:
        """React to one new message."""

    def puzzle_over(self, message: ShownMessage) -> None:
        """Remember a message with buttons that this person would not know how to answer."""
        self.puzzled.append(message.text)
