"""Everyone who has the app: who joins, and which groups there are."""

from collections.abc import Iterator

from demo_scenario.loopback.chats import Chat, ChatKind, User, membership_json
from demo_scenario.loopback.person import Person
from demo_scenario.loopback.platform_state import LoopbackPlatform


class People:
    """Everyone who has the app."""

    def __init__(self, platform: LoopbackPlatform) -> None:
        """Start with nobody."""
        self._platform = platform
        self._by_id: dict[int, Person] = {}

    def __getitem__(self, chat_id: int) -> Person:
        """Return a person by chat id."""
        return self._by_id[chat_id]

    def __iter__(self) -> Iterator[Person]:
        """Go through everyone, in the order they were added."""
        return iter(self._by_id.values())

    def add(
        self,
        chat_id: int,
        first_name: str,
        language_code: str | None = "en",
        *,
        has_started: bool = True,
    ) -> Person:
        """Add a person; one who has not started the bot cannot be written to until they write."""
        if chat_id <= 0 or chat_id in self._platform.chats:
            raise ValueError(f"{chat_id} must be positive and new")
        user: User = {"id": chat_id, "is_bot": False, "first_name": first_name}
        if language_code is not None:
            user["language_code"] = language_code
        chat = Chat(chat_id, ChatKind.PRIVATE, first_name, user, has_started=has_started)
        self._platform.chats[chat_id] = chat
        person = self._by_id[chat_id] = Person(self._platform, user, chat)
        return person

    def make_group(self, chat_id: int, title: str, *, by: Person) -> int | None:
        """Make a group with the bot in it; return the number of the update that says so."""
        if chat_id >= 0 or chat_id in self._platform.chats:
            raise ValueError(f"{chat_id} must be negative and new")
        chat = Chat(chat_id, ChatKind.SUPERGROUP, title, has_started=True)
        self._platform.chats[chat_id] = chat
        return self._platform.updates.add(
            "my_chat_member",
            membership_json(
                chat, self._platform.bot, by.user, self._platform.now(), old="left", new="member"
            ),
        )
