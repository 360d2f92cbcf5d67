"""What a failed request means for the operation that made it."""

from enum import StrEnum

import httpx
from pydantic import BaseModel, ConfigDict
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Conflict,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

NEVER_LEFT = (httpx.ConnectError, httpx.ConnectTimeout, httpx.PoolTimeout)


class Meaning(StrEnum):
    """What to do with the operation."""

    WAIT = "wait"
    TRY_LATER = "try_later"
    IN_DOUBT = "in_doubt"
    DONE_ALREADY = "done_already"
    BLOCKED = "blocked"
    MOVED = "moved"
    REFUSED = "refused"
    OPERATOR = "operator"


class Fault(BaseModel):
    """A failed request, understood. ``detail`` never holds a token, a name or a text."""

    model_config = ConfigDict(frozen=True)

    meaning: Meaning
    detail: str
    retry_after_s: float = 0.0
    new_chat_id: int | None = None


def understand(error: TelegramError) -> Fault:
    """Sort a library error. The order matters: BadRequest is a subclass of NetworkError."""
    match error:
        case RetryAfter():
            return Fault(meaning=Meaning.WAIT, detail="429", retry_after_s=_seconds(error))
        case ChatMigrated():
            return Fault(meaning=Meaning.MOVED, detail="moved", new_chat_id=error.new_chat_id)
        case InvalidToken() | Conflict():
            return Fault(meaning=Meaning.OPERATOR, detail=type(error).__name__)
        case Forbidden():
            return Fault(meaning=Meaning.BLOCKED, detail="forbidden")
        case BadRequest():
            return _bad_request(error)
        case TimedOut() | NetworkError():
            return _network(error)
    # An answer that cannot be read: accepted or not, nobody knows.
    return Fault(meaning=Meaning.IN_DOUBT, detail=type(error).__name__)


def _seconds(error: RetryAfter) -> float:
    wait = error.retry_after
    return float(wait) if isinstance(wait, int) else wait.total_seconds()


def _bad_request(error: BadRequest) -> Fault:
    words = error.message.lower()
    if "message is not modified" in words:
        return Fault(meaning=Meaning.DONE_ALREADY, detail="not modified")
    if "chat not found" in words or "user is deactivated" in words:
        return Fault(meaning=Meaning.BLOCKED, detail="chat not found")
    # What stands in quotation marks is a piece of our text, and may be somebody's words.
    return Fault(meaning=Meaning.REFUSED, detail=error.message.partition('"')[0][:120])


def _network(error: NetworkError) -> Fault:
    cause = error.__cause__
    if isinstance(cause, NEVER_LEFT):
        return Fault(meaning=Meaning.TRY_LATER, detail=type(cause).__name__)
    if isinstance(error, TimedOut) or isinstance(cause, httpx.HTTPError):
        # The request left and no answer came: the platform may have accepted it.
        return Fault(meaning=Meaning.IN_DOUBT, detail=type(cause or error).__name__)
    return Fault(meaning=Meaning.TRY_LATER, detail="platform error")
