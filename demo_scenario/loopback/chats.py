"""Chats and the messages in them, as the platform keeps them."""

from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum
from typing import Any

from demo_scenario.loopback.entities import FormattedText
from demo_scenario.loopback.files import MediaKind, StoredFile
from demo_scenario.loopback.keyboards import Markup

User = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Content:
    """What a message says: formatted text (the caption where there is media), and the media."""

    words: FormattedText
    media: MediaKind | None = None
    file: StoredFile | None = None
    place_or_card: dict[str, Any] | None = None

    def as_json(self) -> dict[str, Any]:
        """Return the fields of a message that carry the content."""
        body: dict[str, Any] = {}
        if self.media is not None:
            body[self.media.value] = self.file.as_json() if self.file else self.place_or_card
        text, entities = (
            ("text", "entities")
            if self.media is None
            else (
                "caption",
                "caption_entities",
            )
        )
        if self.words.text:
            body[text] = self.words.text
        if self.words.entities:
            body[entities] = list(self.words.entities)
        return body

    def says_the_same_as(self, other: "Content") -> bool:
        """Compare what is read, not how it was written."""
        return (self.words.text, self.words.entities) == (other.words.text, other.words.entities)


@dataclass(frozen=True, slots=True)
class Revision:
    """What a message said until ``replaced_at``."""

    replaced_at: datetime
    content: Content
    markup: Markup | None


@dataclass(slots=True)
class StoredMessage:
    """One message; ``is_heard`` says that the client got the answer to the call that sent it."""

    message_id: int
    sender: User
    sent_at: datetime
    content: Content
    markup: Markup | None = None
    reply_to: "StoredMessage | None" = None
    media_group_id: str | None = None
    forward_origin: dict[str, Any] | None = None
    is_copy: bool = False
    is_silent: bool = False
    edited_at: datetime | None = None
    is_deleted: bool = False
    is_heard: bool = True
    revisions: list[Revision] = field(default_factory=list)

    @property
    def is_from_bot(self) -> bool:
        """Say whose side it stands on."""
        return bool(self.sender["is_bot"])

    def revise(self, content: Content, markup: Markup | None, at: datetime) -> None:
        """Show something else from now on, and keep what was shown."""
        self.revisions.append(Revision(at, self.content, self.markup))
        self.content, self.markup, self.edited_at = content, markup, at


class ChatKind(StrEnum):
    """The kinds of chat spoken here."""

    PRIVATE = "private"
    SUPERGROUP = "supergroup"


@dataclass(slots=True)
class Chat:
    """A person's chat with the bot, or a group."""

    chat_id: int
    kind: ChatKind
    name: str
    person: User | None = None
    has_started: bool = False
    is_blocked: bool = False
    actions: list[str] = field(default_factory=list)
    messages: dict[int, StoredMessage] = field(default_factory=dict)

    def as_json(self) -> dict[str, Any]:
        """Return the short form that stands in messages and updates."""
        naming = "first_name" if self.kind is ChatKind.PRIVATE else "title"
        return {"id": self.chat_id, "type": self.kind.value, naming: self.name}

    def message(self, message_id: int | None) -> StoredMessage | None:
        """Return a message that is still there."""
        stored = self.messages.get(message_id) if message_id is not None else None
        return None if stored is None or stored.is_deleted else stored


def message_json(chat: Chat, stored: StoredMessage, *, is_quoted: bool = False) -> dict[str, Any]:
    """Return a message as the Bot API writes it; a quoted one does not quote in turn."""
    body: dict[str, Any] = {
        "message_id": stored.message_id,
        "from": stored.sender,
        "chat": chat.as_json(),
        "date": int(stored.sent_at.timestamp()),
        **stored.content.as_json(),
    }
    if stored.edited_at is not None:
        body["edit_date"] = int(stored.edited_at.timestamp())
    if stored.markup is not None:
        body["reply_markup"] = stored.markup
    if stored.media_group_id is not None:
        body["media_group_id"] = stored.media_group_id
    if stored.forward_origin is not None:
        body["forward_origin"] = stored.forward_origin
    if stored.reply_to is not None and not is_quoted:
        body["reply_to_message"] = message_json(chat, stored.reply_to, is_quoted=True)
    return body


def membership_json(
    chat: Chat, bot: User, by: User, at: datetime, *, old: str, new: str
) -> dict[str, Any]:
    """Return the body of an update that says how the bot's standing in a chat has changed."""
    return {
        "chat": chat.as_json(),
        "from": by,
        "date": int(at.timestamp()),
        "old_chat_member": _member_json(bot, old),
        "new_chat_member": _member_json(bot, new),
    }


def _member_json(bot: User, status: str) -> dict[str, Any]:
    member = {"user": bot, "status": status}
    return {**member, "until_date": 0} if status == "kicked" else member
