"""Somebody with a phone: notices what is new, and does things at their own time."""

import heapq
import random
from abc import ABC, abstractmethod
from collections.abc import Callable
from datetime import datetime, timedelta
from itertools import count

from demo_scenario.acting import is_meant
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.phone import Phone
from demo_scenario.scenes.steps import Scene

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
        self.stumbled: list[str] = []
        self.scene: Scene | None = None
        self.scene_place = 0
        self.old_phones: list[Phone] = []
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
            if not is_meant(self.scene, self.scene_place, message):
                self.read(message)

    def change_phone(self, phone: Phone) -> None:
        """Go on with another phone; the old one keeps what it shows."""
        self.old_phones.append(self.phone)
        self.phone = phone

    @property
    def phones(self) -> tuple[Phone, ...]:
        """Every phone, the oldest first."""
        return (*self.old_phones, self.phone)

    def sees(self) -> tuple[ShownMessage, ...]:
        """Return everything on every phone, as it stands on the screens."""
        return tuple(message for phone in self.phones for message in phone.person.sees())

    def sees_from_bot(self) -> tuple[ShownMessage, ...]:
        """Return what came from the bot."""
        return tuple(message for message in self.sees() if message.is_from_bot)

    @abstractmethod
    def read(self, message: ShownMessage) -> None:
        """React to one new message."""

    def puzzle_over(self, message: ShownMessage) -> None:
        """Remember a message with buttons that this person would not know how to answer."""
        if self.scene is None:
            self.puzzled.append(message.text)
