"""A person and their app: they write, tap, block, and see what the bot sent.

What a person's app would not let them do (tap a button that is not there, write while blocking
the bot) raises :class:`PersonCannotError`: it is a slip of the script, not of the bot.
"""

from dataclasses import dataclass
from typing import Any

from demo_scenario.loopback.bounds import DEEP_LINK
from demo_scenario.loopback.callbacks import Tap
from demo_scenario.loopback.chats import (
    Chat,
    Content,
    StoredMessage,
    User,
    membership_json,
    message_json,
)
from demo_scenario.loopback.entities import with_commands
from demo_scenario.loopback.files import MediaKind, Upload
from demo_scenario.loopback.keyboards import button_with_data
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.sample_uploads import CLIP, PHOTO, STICKER, VOICE_NOTE
from demo_scenario.loopback.screen import ShownMessage, shown


class PersonCannotError(RuntimeError):
    """The script asks a person for something that their app would not offer."""


@dataclass(frozen=True, slots=True)
class Person:
    """One person and their app; every act returns the id of what it made."""

    platform: LoopbackPlatform
    user: User
    chat: Chat

    @property
    def chat_id(self) -> int:
        """Return the id of the private chat, which is the person's own."""
        return self.chat.chat_id

    def sees(self) -> tuple[ShownMessage, ...]:
        """Return the private chat as it stands on the screen."""
        return shown(self.chat)

    def sees_from_bot(self) -> tuple[ShownMessage, ...]:
        """Return the bot's messages alone."""
        return tuple(message for message in self.sees() if message.is_from_bot)

    def menu(self) -> list[dict[str, str]]:
        """Return the command menu that the app offers."""
        return self.platform.menus.shown_to(self.chat_id, str(self.user.get("language_code", "")))

    def write(
        self, text: str, *, reply_to_message_id: int | None = None, in_chat_id: int | None = None
    ) -> int:
        """Write text, here or in a group; return the message id."""
        return self._say(
            Content(with_commands(text)),
            reply_to_message_id=reply_to_message_id,
            in_chat_id=in_chat_id,
        )

    def open_link(self, payload: str) -> int:
        """Follow the bot's link with a start payload and press start."""
        if not DEEP_LINK.fullmatch(payload):
            raise PersonCannotError("a start payload is 1 to 64 of A-Z a-z 0-9 _ -")
        return self.write(f"/start {payload}")

    def edit(self, message_id: int, text: str) -> int:
        """Edit an own message (its caption, where it has media); return the message id."""
        stored = self._there(message_id)
        if stored.is_from_bot:
            raise PersonCannotError("only one's own messages can be edited")
        old = stored.content
        content = Content(with_commands(text), old.media, old.file, old.place_or_card)
        stored.revise(content, None, self.platform.now())
        self.platform.updates.add("edited_message", message_json(self.chat, stored))
        return message_id

    def tap(self, message_id: int, data: str, *, even_if_gone: bool = False) -> str:
        """Tap the button that carries ``data``; return the query id.

        ``even_if_gone`` is the tap of an app that has not yet drawn the bot's last edit.
        """
        stored = self.chat.messages.get(message_id)
        if stored is None or (stored.is_deleted and not even_if_gone):
            raise PersonCannotError(f"there is no message {message_id} in this chat")
        if not even_if_gone and not button_with_data(stored.markup, data):
            raise PersonCannotError(f"message {message_id} has no button that carries {data!r}")
        tap = Tap(self.platform.new_id(), self.chat_id, message_id, data, self.platform.now())
        self.platform.taps.open(tap)
        body = {
            "id": tap.query_id,
            "from": self.user,
            "message": message_json(self.chat, stored),
            "chat_instance": str(self.chat_id),
            "data": data,
        }
        self.platform.updates.add("callback_query", body)
        return tap.query_id

    def send_photo(self, caption: str = "", *, content: bytes = PHOTO.content) -> int:
        """Send a photo; return the message id."""
        return self._send(MediaKind.PHOTO, Upload("photo.jpg", content, "image/jpeg"), caption)

    def send_video(
        self,
        caption: str = "",
        *,
        content: bytes = CLIP.content,
        declared_bytes: int | None = None,
        reply_to_message_id: int | None = None,
    ) -> int:
        """Send a clip, of any declared size; return the message id."""
        upload = Upload("clip.mp4", content, "video/mp4")
        return self._send(
            MediaKind.VIDEO,
            upload,
            caption,
            declared_bytes=declared_bytes,
            reply_to_message_id=reply_to_message_id,
        )

    def send_document(self, file_name: str, content: bytes, caption: str = "") -> int:
        """Send a file; return the message id."""
        return self._send(MediaKind.DOCUMENT, Upload(file_name, content), caption)

    def send_voice(self, *, duration_s: int = 4, reply_to_message_id: int | None = None) -> int:
        """Send a voice note; return the message id."""
        return self._send(
            MediaKind.VOICE,
            VOICE_NOTE,
            "",
            duration_s=duration_s,
            reply_to_message_id=reply_to_message_id,
        )

    def send_sticker(self) -> int:
        """Send a sticker; return the message id."""
        return self._send(MediaKind.STICKER, STICKER, "")

    def send_location(self, *, latitude: float, longitude: float) -> int:
        """Send a place, in degrees; return the message id."""
        place = {"latitude": latitude, "longitude": longitude}
        return self._say(Content(with_commands(""), MediaKind.LOCATION, None, place))

    def send_contact(self, *, phone_number: str, first_name: str) -> int:
        """Send a contact card; return the message id."""
        card = {"phone_number": phone_number, "first_name": first_name}
        return self._say(Content(with_commands(""), MediaKind.CONTACT, None, card))

    def send_album(
        self, captions: tuple[str, ...], *, kind: MediaKind = MediaKind.PHOTO
    ) -> list[int]:
        """Send several photos or clips at once: as many messages, one group id, an update each."""
        album_id = self.platform.new_id()
        upload = PHOTO if kind is MediaKind.PHOTO else CLIP
        return [self._send(kind, upload, each, media_group_id=album_id) for each in captions]

    def forward(self, message_id: int) -> int:
        """Forward a message of this chat back into it; return the new message's id."""
        stored = self._there(message_id)
        origin = {
            "type": "user",
            "date": int(stored.sent_at.timestamp()),
            "sender_user": stored.sender,
        }
        return self._say(stored.content, forward_origin=origin)

    def forward_from_elsewhere(self, text: str, *, sender_name: str) -> int:
        """Forward text that somebody else wrote in another chat; return the message id."""
        origin = {
            "type": "hidden_user",
            "date": int(self.platform.now().timestamp()),
            "sender_user_name": sender_name,
        }
        return self._say(Content(with_commands(text)), forward_origin=origin)

    def block(self) -> int | None:
        """Block the bot; return the update's number."""
        return self._set_blocked(blocked=True)

    def unblock(self) -> int | None:
        """Unblock the bot; return the update's number."""
        return self._set_blocked(blocked=False)

    def _set_blocked(self, *, blocked: bool) -> int | None:
        if self.chat.is_blocked is blocked:
            raise PersonCannotError(
                "the bot is blocked already" if blocked else "it is not blocked"
            )
        self.chat.is_blocked = blocked
        old, new = ("member", "kicked") if blocked else ("kicked", "member")
        return self.platform.updates.add(
            "my_chat_member",
            membership_json(
                self.chat, self.platform.bot, self.user, self.platform.now(), old=old, new=new
            ),
        )

    def _there(self, message_id: int) -> StoredMessage:
        stored = self.chat.message(message_id)
        if stored is None:
            raise PersonCannotError(f"there is no message {message_id} in this chat")
        return stored

    def _send(
        self,
        kind: MediaKind,
        upload: Upload,
        caption: str,
        *,
        declared_bytes: int | None = None,
        duration_s: int = 12,
        reply_to_message_id: int | None = None,
        media_group_id: str | None = None,
    ) -> int:
        stored = self.platform.files.keep(
            kind, upload, declared_bytes=declared_bytes, duration_s=duration_s
        )
        return self._say(
            Content(with_commands(caption), kind, stored),
            reply_to_message_id=reply_to_message_id,
            media_group_id=media_group_id,
        )

    def _say(
        self,
        content: Content,
        *,
        reply_to_message_id: int | None = None,
        in_chat_id: int | None = None,
        media_group_id: str | None = None,
        forward_origin: dict[str, Any] | None = None,
    ) -> int:
        chat = self.chat if in_chat_id is None else self.platform.chats[in_chat_id]
        if chat.is_blocked:
            raise PersonCannotError("the bot is blocked: unblock it first")
        reply_to = chat.message(reply_to_message_id)
        if reply_to_message_id is not None and reply_to is None:
            raise PersonCannotError(f"there is no message {reply_to_message_id} to reply to")
        chat.has_started = True
        stored = self.platform.store(
            chat,
            self.user,
            content,
            reply_to=reply_to,
            media_group_id=media_group_id,
            forward_origin=forward_origin,
        )
        self.platform.updates.add("message", message_json(chat, stored))
        return stored.message_id
