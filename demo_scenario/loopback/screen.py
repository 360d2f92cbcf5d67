"""What a person sees in a chat: both sides, in order, as displayed now."""

from datetime import datetime

from pydantic import BaseModel, ConfigDict

from demo_scenario.loopback.chats import Chat, Revision, StoredMessage
from demo_scenario.loopback.files import MediaKind
from demo_scenario.loopback.keyboards import Markup


class ShownButton(BaseModel):
    """One button; it carries ``data`` or opens ``url``."""

    model_config = ConfigDict(frozen=True)

    text: str
    data: str | None = None
    url: str | None = None


class ShownRevision(BaseModel):
    """What a message said until ``replaced_at``."""

    model_config = ConfigDict(frozen=True)

    replaced_at: datetime
    text: str
    html: str
    buttons: tuple[tuple[ShownButton, ...], ...]


class ShownMessage(BaseModel):
    """One message on the screen.

    ``text`` and ``html`` are the caption where there is media. ``is_heard`` is false for a message
    that the platform accepted while its answer was lost: the person sees it, the bot cannot know.
    """

    model_config = ConfigDict(frozen=True)

    message_id: int
    is_from_bot: bool
    sender_name: str
    sent_at: datetime
    text: str
    html: str
    buttons: tuple[tuple[ShownButton, ...], ...] = ()
    media: MediaKind | None = None
    file_id: str | None = None
    file_name: str | None = None
    media_group_id: str | None = None
    reply_to_message_id: int | None = None
    is_copy: bool = False
    is_forward: bool = False
    is_silent: bool = False
    edited_at: datetime | None = None
    history: tuple[ShownRevision, ...] = ()
    is_heard: bool = True

    def data_of(self, button_text: str) -> str:
        """Return what the first button that reads ``button_text`` carries."""
        for row in self.buttons:
            for button in row:
                if button.text == button_text and button.data is not None:
                    return button.data
        raise LookupError(f"message {self.message_id} shows no button {button_text!r}")


def shown(chat: Chat) -> tuple[ShownMessage, ...]:
    """Return what is on the screen, oldest first; what was deleted is gone."""
    return tuple(_shown(each) for each in chat.messages.values() if not each.is_deleted)


def _shown(stored: StoredMessage) -> ShownMessage:
    content = stored.content
    return ShownMessage(
        message_id=stored.message_id,
        is_from_bot=stored.is_from_bot,
        sender_name=stored.sender["first_name"],
        sent_at=stored.sent_at,
        text=content.words.text,
        html=content.words.html,
        buttons=_buttons(stored.markup),
        media=content.media,
        file_id=content.file.file_id if content.file else None,
        file_name=content.file.file_name if content.file else None,
        media_group_id=stored.media_group_id,
        reply_to_message_id=stored.reply_to.message_id if stored.reply_to else None,
        is_copy=stored.is_copy,
        is_forward=stored.forward_origin is not None,
        is_silent=stored.is_silent,
        edited_at=stored.edited_at,
        history=tuple(_revision(each) for each in stored.revisions),
        is_heard=stored.is_heard,
    )


def _revision(revision: Revision) -> ShownRevision:
    return ShownRevision(
        replaced_at=revision.replaced_at,
        text=revision.content.words.text,
        html=revision.content.words.html,
        buttons=_buttons(revision.markup),
    )


def _buttons(markup: Markup | None) -> tuple[tuple[ShownButton, ...], ...]:
    rows = markup["inline_keyboard"] if markup else []
    return tuple(
        tuple(
            ShownButton(
                text=button["text"], data=button.get("callback_data"), url=button.get("url")
            )
            for button in row
        )
        for row in rows
    )
