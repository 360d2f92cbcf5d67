"""Files: fetched by the sender, stored in the inbox like everything else that arrives.

A file is asked for by an outbox row. What came of it is an inbox row of our own making, with a
negative number that only that row has, so that a fetch done twice after a crash is stored once.
"""

import json
from base64 import b64encode
from typing import Any

from telegram import Bot
from telegram.error import TelegramError

from bot.wire.faults import Meaning, understand
from storage.records.wire import Outgoing

KEY = "fetched"
TRIES_MOST = 6  # [attempts] ch: about a minute; the coach's other messages wait behind it
ROWS_A_MS = 1000  # [rows] ch: far more than one millisecond can write
TOO_BIG, NOT_THERE = "too_big", "not_there"


async def fetch(bot: Bot, outgoing: Outgoing) -> dict[str, Any]:
    """Fetch a file, and return it as an update to be stored.

    Raises:
        TelegramError: where another attempt may do better.

    """
    bytes_most = outgoing.payload["bytes_most"]
    try:
        file = await bot.get_file(outgoing.payload["file_id"])
        if (file.file_size or 0) > bytes_most:
            return update_of(outgoing, fault=TOO_BIG)
        content = bytes(await file.download_as_bytearray())
    except TelegramError as error:
        found = understand(error)
        if found.meaning is not Meaning.REFUSED and outgoing.attempts < TRIES_MOST:
            raise
        return update_of(outgoing, fault=TOO_BIG if "too big" in found.detail else NOT_THERE)
    if len(content) > bytes_most:
        return update_of(outgoing, fault=TOO_BIG)
    return update_of(outgoing, content=content)


def update_of(
    outgoing: Outgoing, *, content: bytes | None = None, fault: str = ""
) -> dict[str, Any]:
    """Write what came of a fetch in the shape of an update; its "text" is what a person may see."""
    payload = outgoing.payload
    return {
        "update_id": -number_of(outgoing),
        KEY: {
            "chat": {"id": outgoing.chat_id},
            "text": payload["name"],
            "purpose": payload["purpose"],
            "words": payload["words"],
            "content": None if content is None else b64encode(content).decode(),
            "fault": fault,
        },
    }


def number_of(outgoing: Outgoing) -> int:
    """Number a fetch by its row and the millisecond in which it was asked for.

    The row's id alone will not do: those of erased rows are given out anew.
    """
    at_ms = int(outgoing.created_at.timestamp() * 1000)
    return at_ms * ROWS_A_MS + outgoing.id % ROWS_A_MS


def fetched_from(raw: str) -> dict[str, Any] | None:
    """Return what :func:`update_of` wrote; None for an update of the platform's."""
    if not raw.startswith('{"update_id": -'):
        return None  # the platform's ids are positive, and it may send a field of any name
    found = json.loads(raw).get(KEY)
    return found if isinstance(found, dict) else None
