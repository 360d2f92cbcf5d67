"""One person's phone: what is new on it, and the only ways to answer."""

from dataclasses import dataclass, field, replace
from itertools import islice

from demo_scenario.loopback.chats import StoredMessage
from demo_scenario.loopback.person import Person
from demo_scenario.loopback.screen import ShownMessage, shown

GLANCE = 14  # [messages] ch: what a person scrolls through when the phone buzzes


@dataclass(slots=True)
class Phone:
    """A person's phone; it notices what the bot sent or changed since the last look."""

    person: Person
    _seen: dict[int, str] = field(default_factory=dict)
    _looked_at: tuple[tuple[int, int], ...] = ()

    def glance(self) -> tuple[ShownMessage, ...]:
        """Return the bottom of the chat as it stands on the screen, oldest first."""
        return shown(replace(self.person.chat, messages=dict(self._bottom())))

    def _bottom(self) -> list[tuple[int, StoredMessage]]:
        return list(islice(reversed(self.person.chat.messages.items()), GLANCE))[::-1]

    def news(self) -> list[ShownMessage]:
        """Return the bot's messages that are new, or read differently than before."""
        state = tuple((number, len(stored.revisions)) for number, stored in self._bottom())
        if state == self._looked_at:
            return []
        self._looked_at = state
        fresh = []
        for message in self.glance():
            if not message.is_from_bot:
                continue
            reads = f"{message.text}|{message.buttons}"
            if self._seen.get(message.message_id) != reads:
                self._seen[message.message_id] = reads
                fresh.append(message)
        return fresh

    def message(self, message_id: int) -> ShownMessage | None:
        """Return a message that is still on the screen."""
        return next((one for one in self.glance() if one.message_id == message_id), None)

    def tap(self, message_id: int, label: str) -> bool:
        """Tap a button by what it says; False when it is not there any more."""
        message = self.message(message_id)
        if message is None:
            return False
        try:
            data = message.data_of(label)
        except LookupError:
            return False
        self.person.tap(message_id, data)
        return True

    def write(self, text: str) -> int:
        """Write a message."""
        return self.person.write(text)
