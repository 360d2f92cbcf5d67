"""Between the people's phones and the house without a wire: no HTTP, no polling, no waiting.

What a person writes or taps becomes a raw update and goes through the durable inbox, the edge and
the one writer, as it does over the network; what the house says is taken from the outbox and put
on the screen by the same code that answers the messaging library elsewhere.
"""

import logging
from collections.abc import Mapping
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlmodel import Session
from telegram import Bot

from bot.acts import set_aside
from bot.desks import front
from bot.rounds import tick
from bot.turn import House, Turn
from bot.wire.edge import event_from
from bot.writer import Writer
from demo_scenario.loopback import editing, sending
from demo_scenario.loopback.limits import RateLimits
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.people import People
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.refusals import RefusedError
from scheduler.calendar.clocks import SimulatedClock
from storage import inbox, outbox
from storage.database import Database
from storage.migrate import migrate
from storage.queries import due
from storage.records.wire import Operation, Outgoing, Received

PAGE = 100  # [updates] ch
AT_ONCE = 16  # [messages] ch
ROUNDS_MOST = 1_000  # [1] ch: beyond it the house answers itself for ever
HTML = "HTML"


class Exchange:
    """One house and its people; :meth:`carry` lets both finish what they have in hand."""

    def __init__(
        self, *, house: House, clock: SimulatedClock, database_file: Path, seed: int
    ) -> None:
        """Open the database and put the writer before it."""
        self.clock = clock
        self.database = Database(f"sqlite:///{database_file}", is_throwaway=True)
        migrate(self.database.engine)
        self.platform = LoopbackPlatform(
            now=clock.now, seed=seed, limits=RateLimits(are_on=False), keep_last_requests=0
        )
        self.people = People(self.platform)
        self.faults: list[str] = []
        self.next_send_at: datetime | None = None
        self._is_tick_asked = False
        self._house = house
        self._bot = Bot(self.platform.token)
        self._writer = Writer(
            database=self.database,
            clock=clock,
            read=lambda received: event_from(
                received.raw or "", self._bot, received_at=received.received_at
            ),
            handle=lambda tx, event, now: front.handle(self.turn(tx, now), event).value,
            tell_set_aside=self._tell_set_aside,
            tick=lambda now: tick.steps(self.database, now, self.turn),
            on_written=lambda: None,
        )
        logging.getLogger("bot.writer").addHandler(_Listener(self.faults))

    def turn(self, tx: Session, now: datetime) -> Turn:
        """Make the turn in which acts work."""
        return Turn(tx=tx, now=now, house=self._house)

    async def strike(self, *, last_round: datetime) -> None:
        """Let the house look what is due, as if it had looked at ``last_round`` before."""
        with self.database.transaction() as tx:
            due.set_mark(tx, tick.LAST_ROUND, at=last_round)
        self._writer.ask_tick()
        self._is_tick_asked = True
        await self.carry()

    async def carry(self) -> None:
        """Hand over what people did, let the house work, show what it says, until all is quiet."""
        if self.next_send_at is not None and self.next_send_at <= self.clock.now():
            self._deliver_all()
        for _ in range(ROUNDS_MOST):
            is_new = self._take_in()
            if not is_new and not self._is_tick_asked:
                return
            self._is_tick_asked = False
            while await self._writer.work():
                pass
            self._deliver_all()
        raise RuntimeError("the house does not come to rest")

    def close(self) -> None:
        """Give the database back."""
        logger = logging.getLogger("bot.writer")
        for handler in [one for one in logger.handlers if isinstance(one, _Listener)]:
            logger.removeHandler(handler)
        self.database.close()

    def _tell_set_aside(
        self, tx: Session, received: Received, now: datetime, reference: str
    ) -> None:
        set_aside.tell(self.turn(tx, now), received, reference)

    def _take_in(self) -> bool:
        updates = self.platform.updates.page(PAGE)
        if not updates:
            return False
        with self.database.transaction() as tx:
            inbox.store_updates(tx, updates, received_at=self.clock.now())
        self.platform.updates.confirm_all()
        return True

    def _deliver_all(self) -> None:
        """Put everything that may leave now on the screens, and note when the next may."""
        now = self.clock.now()
        with self.database.transaction() as tx:
            while claimed := outbox.claim_due(tx, now=now, most=AT_ONCE):
                for one in claimed:
                    outbox.mark_sent(tx, one.id, at=now, message_id=self._show(one))
            self.next_send_at = outbox.next_due_at(tx, after=now)

    def _show(self, one: Outgoing) -> int | None:
        match one.operation:
            case Operation.SEND:
                sent = sending.send_message(self.platform, Params(_words(one)))
                return int(sent["message_id"])
            case Operation.EDIT:
                return self._edit(one)
            case Operation.COPY:
                copied = sending.copy_message(
                    self.platform, Params({"chat_id": one.chat_id, **one.payload})
                )
                return int(copied["message_id"])
            case Operation.MENU | Operation.DOCUMENT | Operation.MEDIA | Operation.FETCH:
                return None
            case Operation.PHOTO | Operation.ALBUM:
                return None

    def _edit(self, one: Outgoing) -> int | None:
        message_id = one.edits_message_id or one.payload.get("message_id")
        is_text = "text" in one.payload
        change = editing.edit_message_text if is_text else editing.edit_message_reply_markup
        try:
            change(self.platform, Params({**_words(one), "message_id": message_id}))
        except RefusedError as refused:
            if "not modified" not in str(refused.as_json()):
                raise
        return message_id


class _Listener(logging.Handler):
    """Keeps what the writer logs as faults, so that a run with any does not pass for a good one."""

    def __init__(self, faults: list[str]) -> None:
        """Write into ``faults``."""
        super().__init__(logging.ERROR)
        self._faults = faults

    def emit(self, record: logging.LogRecord) -> None:
        """Keep one line."""
        self._faults.append(record.getMessage())


def _words(one: Outgoing) -> Mapping[str, Any]:
    values: dict[str, Any] = {"chat_id": one.chat_id, "parse_mode": HTML}
    if "text" in one.payload:
        values["text"] = one.payload["text"]
    rows = one.payload.get("buttons")
    if rows:
        values["reply_markup"] = {
            "inline_keyboard": [
                [{"text": text, "callback_data": token} for text, token in row] for row in rows
            ]
        }
    return values
