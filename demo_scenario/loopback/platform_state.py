"""The platform's state: one bot, its chats, its queue of updates. No HTTP, and no clock of its own.

Everything random is drawn from one seed, so that a run can be repeated.
"""

import random
from collections.abc import Callable
from datetime import datetime
from typing import Any

from demo_scenario.loopback.bounds import FileBounds
from demo_scenario.loopback.callbacks import TapBook
from demo_scenario.loopback.changes import Changes
from demo_scenario.loopback.chats import Chat, ChatKind, Content, StoredMessage, User
from demo_scenario.loopback.faults import FaultPlan
from demo_scenario.loopback.files import FileStore
from demo_scenario.loopback.keyboards import Markup
from demo_scenario.loopback.limits import RateLimits
from demo_scenario.loopback.menus import MenuBook
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.polling import PollDesk
from demo_scenario.loopback.refusals import bad_request, forbidden, too_many_requests
from demo_scenario.loopback.request_log import RequestLog
from demo_scenario.loopback.updates import UpdateQueue

DEFAULT_TOKEN = "7000000001:loopback-token-that-opens-nothing"  # noqa: S105  no account has it


class LoopbackPlatform:
    """What the platform knows; the server carries calls to it, people act on it directly."""

    def __init__(
        self,
        *,
        now: Callable[[], datetime],
        seed: int = 0,
        token: str = DEFAULT_TOKEN,
        bot_name: str = "holdwell_loopback_bot",
        limits: RateLimits | None = None,
        file_bounds: FileBounds | None = None,
        keep_last_requests: int | None = None,
    ) -> None:
        """Start empty; ``now`` returns aware times and is asked for every time stamp."""
        self.now = now
        self.token = token
        self.chance = random.Random(seed)
        self.bot: User = {
            "id": int(token.partition(":")[0]),
            "is_bot": True,
            "first_name": "Holdwell",
            "username": bot_name,
        }
        self.changes = Changes()
        self.updates = UpdateQueue(now, self.chance, self._on_arrival)
        self.polls = PollDesk(self.updates, self.changes)
        self.limits = limits or RateLimits()
        self.faults = FaultPlan()
        self.files = FileStore(self.chance, file_bounds or FileBounds())
        self.taps = TapBook()
        self.menus = MenuBook()
        self.requests = RequestLog(keep_last_requests)
        self.chats: dict[int, Chat] = {}
        self.sent_by_last_call: list[StoredMessage] = []
        self._last_private_id = 0

    @property
    def unconfirmed_updates(self) -> int:
        """Count the updates that the bot has not confirmed."""
        return len(self.updates)

    @property
    def is_poll_parked(self) -> bool:
        """The bot waits for more, and has confirmed all there was."""
        return self.polls.is_parked

    @property
    def is_quiet(self) -> bool:
        """A poll is parked, and it is the only call in flight."""
        return self.polls.is_parked and self.requests.in_flight == 1

    async def until_quiet(self, *, within_s: float = 60.0) -> None:
        """Wait until :attr:`is_quiet`; the bot itself may still have something in hand."""
        await self.changes.until(lambda: self.is_quiet, within_s=within_s)

    async def until(self, is_reached: Callable[[], bool], *, within_s: float = 60.0) -> None:
        """Wait until a condition holds; it is looked at after every change."""
        await self.changes.until(is_reached, within_s=within_s)

    def known_chat(self, params: Params, name: str = "chat_id") -> Chat:
        """Return the chat that a call names."""
        value = params.text(name)
        if not value:
            raise bad_request(f"{name} is empty")
        chat = self.chats.get(int(value)) if value.lstrip("-").isdecimal() else None
        if chat is None or not chat.has_started:
            raise bad_request("chat not found")
        return chat

    def writable_chat(self, params: Params) -> Chat:
        """Return the chat that a call writes to, unless the person there has blocked the bot."""
        chat = self.known_chat(params)
        if chat.is_blocked:
            raise forbidden("bot was blocked by the user")
        return chat

    def take_room(self, chat: Chat, *, messages: int = 1) -> None:
        """Refuse a call that is over the rate limit; nothing is stored and nothing is counted."""
        wait_s = self.limits.retry_after_s(chat.chat_id, self.now(), messages=messages)
        if wait_s:
            raise too_many_requests(retry_after_s=wait_s)

    def store(
        self,
        chat: Chat,
        sender: User,
        content: Content,
        *,
        markup: Markup | None = None,
        reply_to: StoredMessage | None = None,
        media_group_id: str | None = None,
        forward_origin: dict[str, Any] | None = None,
        is_copy: bool = False,
        is_silent: bool = False,
    ) -> StoredMessage:
        """Put a message into a chat."""
        stored = StoredMessage(
            message_id=self._next_message_id(chat),
            sender=sender,
            sent_at=self.now(),
            content=content,
            markup=markup,
            reply_to=reply_to,
            media_group_id=media_group_id,
            forward_origin=forward_origin,
            is_copy=is_copy,
            is_silent=is_silent,
        )
        chat.messages[stored.message_id] = stored
        if stored.is_from_bot:
            self.sent_by_last_call.append(stored)
        return stored

    def new_id(self) -> str:
        """Draw an opaque id, as of an album or a tap."""
        return str(self.chance.getrandbits(63))

    def _next_message_id(self, chat: Chat) -> int:
        """Private chats share one count, a group has its own, as on the platform."""
        if chat.kind is ChatKind.PRIVATE:
            self._last_private_id += 1
            return self._last_private_id
        return len(chat.messages) + 1

    def _on_arrival(self) -> None:
        self.polls.wake()
        self.changes.tell()
