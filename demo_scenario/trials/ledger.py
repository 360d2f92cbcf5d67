"""What the people did, in order: what the database is held against afterwards."""

import json
from collections import defaultdict
from collections.abc import Collection
from dataclasses import dataclass, field
from typing import Any

from demo_scenario.loopback.person import Person
from demo_scenario.trials.typed_results import Typed


@dataclass
class Ledger:
    """Everything that was written and tapped, by chat, and what of it must have been recorded."""

    acts: dict[int, list[str]] = field(default_factory=lambda: defaultdict(list))
    typed: dict[int, Typed] = field(default_factory=dict)
    efforts: dict[int, int] = field(default_factory=dict)
    planned: list[int] = field(default_factory=list)
    gave_up: list[str] = field(default_factory=list)

    def write(self, person: Person, text: str) -> None:
        """Let a person write, and note it."""
        message_id = person.write(text)
        self.acts[person.chat_id].append(f"{message_id} {text}")

    def tap(self, person: Person, label: str, *, but: Collection[str] = ()) -> str:
        """Let a person tap the latest button that reads ``label``, ``but`` for tokens; note it."""
        message_id, data = next(
            (message.message_id, button.data)
            for message in reversed(person.sees_from_bot())
            for row in message.buttons
            for button in row
            if button.text == label and button.data is not None and button.data not in but
        )
        person.tap(message_id, data)
        self.acts[person.chat_id].append(f"tap {data}")
        return data

    @property
    def count(self) -> int:
        """Count everything that was written and tapped."""
        return sum(len(acts) for acts in self.acts.values())


def act_in(raw: str | None) -> str:
    """Return a stored update in the form in which the ledger keeps it."""
    tree: dict[str, Any] = json.loads(raw or "{}")
    query = tree.get("callback_query")
    if query is not None:
        return f"tap {query['data']}"
    message = tree["message"]
    return f"{message['message_id']} {message['text']}"
