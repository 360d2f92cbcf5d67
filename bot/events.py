"""What can happen in a chat, as our own values: the messaging library ends at the wire."""

from datetime import datetime
from enum import StrEnum

from pydantic import BaseModel, ConfigDict


class Media(StrEnum):
    """What kind of thing came instead of text."""

    PHOTO = "photo"
    VIDEO = "video"
    VIDEO_NOTE = "video_note"
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
    """A text message, new or edited.

    ``reply_to_file_id`` and ``reply_to_sent_as`` tell of a picture or clip that it answers.
    """

    message_id: int
    text: str
    is_edit: bool = False
    is_forwarded: bool = False
    reply_to_message_id: int | None = None
    reply_to_file_id: str | None = None
    reply_to_sent_as: str = ""
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
    """Anything that is not text; relayed by reference, and fetched only where it is a file.

    ``file_id`` is the platform's reference by which it can be sent again, ``sent_as`` the
    platform's name of its kind: photo, video, animation, ...
    """

    message_id: int
    media: Media
    caption: str = ""
    album_id: str | None = None
    is_forwarded: bool = False
    reply_to_message_id: int | None = None
    file_id: str | None = None
    sent_as: str = ""
    latitude: float | None = None
    longitude: float | None = None
    file: SentFile | None = None
    language_code: str | None = None


class FileArrived(_Event):
    """A file that we fetched came in; ``content`` None with the reason where it could not.

    ``words`` are those that the sender wrote under it.
    """

    purpose: str
    name: str
    words: str = ""
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
