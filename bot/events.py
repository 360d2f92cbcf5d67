"""What can happen in a chat, as our own values: the messaging library ends at the wire."""

from datetime import datetime
from enum import StrEnum

from pydantic import BaseModel, ConfigDict


class Media(StrEnum):
    """What kind of thing came instead of text."""

    PHOTO = "photo"
    VIDEO = "video"
    VOICE = "voice"
    STICKER = "sticker"
    DOCUMENT = "document"
    LOCATION = "location"
    OTHER = "other"


class _Event(BaseModel):
    model_config = ConfigDict(frozen=True)

    chat_id: int
    at: datetime


class Wrote(_Event):
    """A text message, new or edited."""

    message_id: int
    text: str
    is_edit: bool = False
    is_forwarded: bool = False
    reply_to_message_id: int | None = None
    first_name: str = ""
    language_code: str | None = None


class Tapped(_Event):
    """A tap on a button that we sent."""

    message_id: int | None
    token: str


class SentFile(BaseModel):
    """A file as it was announced: to be fetched by its id, which only the platform understands."""

    model_config = ConfigDict(frozen=True)

    file_id: str
    name: str = ""
    size_bytes: int | None = None


class SentMedia(_Event):
    """Anything that is not text; relayed by reference, and fetched only where it is a file."""

    message_id: int
    media: Media
    caption: str = ""
    album_id: str | None = None
    reply_to_message_id: int | None = None
    latitude: float | None = None
    longitude: float | None = None
    file: SentFile | None = None


class FileArrived(_Event):
    """A file that we fetched came in; ``content`` None with the reason where it could not."""

    purpose: str
    name: str
    content: bytes | None = None
    fault: str = ""


class BlockedUs(_Event):
    """The person blocked the bot or deleted the chat."""


class UnblockedUs(_Event):
    """The person came back."""


class ChatMoved(_Event):
    """The platform gave the chat a new id."""

    new_chat_id: int


class NotForUs(_Event):
    """A group, a channel, or something without a meaning here."""

    why: str


Event = Wrote | Tapped | SentMedia | FileArrived | BlockedUs | UnblockedUs | ChatMoved | NotForUs
