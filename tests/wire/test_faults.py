"""What each error of the library means for the operation that met it.

PUBLISHED botapi: the statuses and descriptions. The library's own class tree is part of the
test: its BadRequest is a NetworkError, and must not be taken for a network that failed.
"""

from datetime import timedelta

import httpx
import pytest
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Conflict,
    EndPointNotFound,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from bot.wire.faults import Meaning, understand

TOKEN = "123456:secret-that-nobody-may-see"  # noqa: S105  made up, opens nothing


def caused(error, cause):
    error.__cause__ = cause
    return error


@pytest.mark.parametrize(
    ("error", "meaning"),
    [
        (RetryAfter(timedelta(seconds=7)), Meaning.WAIT),
        (ChatMigrated(-100_777), Meaning.MOVED),
        (InvalidToken(), Meaning.OPERATOR),
        (Conflict("terminated by other getUpdates request"), Meaning.OPERATOR),
        (Forbidden("Forbidden: bot was blocked by the user"), Meaning.BLOCKED),
        (Forbidden("Forbidden: user is deactivated"), Meaning.BLOCKED),
        (Forbidden("Forbidden: bot can't initiate conversation with a user"), Meaning.BLOCKED),
        (BadRequest("Chat not found"), Meaning.BLOCKED),
        (
            BadRequest("Message is not modified: specified new message content"),
            Meaning.DONE_ALREADY,
        ),
        (BadRequest("Can't parse entities: unclosed start tag"), Meaning.REFUSED),
        (BadRequest("Message is too long"), Meaning.REFUSED),
        (BadRequest("Message to edit not found"), Meaning.REFUSED),
        (TimedOut(), Meaning.IN_DOUBT),
        (caused(TimedOut(), httpx.ReadTimeout("x")), Meaning.IN_DOUBT),
        (caused(TimedOut(), httpx.WriteTimeout("x")), Meaning.IN_DOUBT),
        (caused(TimedOut(), httpx.ConnectTimeout("x")), Meaning.TRY_LATER),
        (caused(TimedOut(), httpx.PoolTimeout("x")), Meaning.TRY_LATER),
        (caused(NetworkError("x"), httpx.ConnectError("x")), Meaning.TRY_LATER),
        (caused(NetworkError("x"), httpx.ReadError("x")), Meaning.IN_DOUBT),
        (caused(NetworkError("x"), httpx.WriteError("x")), Meaning.IN_DOUBT),
        (caused(NetworkError("x"), httpx.RemoteProtocolError("x")), Meaning.IN_DOUBT),
        (NetworkError("Bad Gateway"), Meaning.TRY_LATER),
        (NetworkError("Internal Server Error"), Meaning.TRY_LATER),
        (TelegramError("Invalid server response"), Meaning.IN_DOUBT),
    ],
    ids=lambda each: repr(each)[:60],
)
def test_each_error_has_its_meaning(error, meaning):
    assert understand(error).meaning is meaning


def test_bad_request_is_caught_before_the_network_error_that_it_inherits_from():
    assert issubclass(BadRequest, NetworkError)
    assert understand(BadRequest("Message text is empty")).meaning is Meaning.REFUSED


@pytest.mark.parametrize("wait", [7, timedelta(seconds=7)])
def test_the_wait_is_read_in_either_form_of_the_library(wait):
    error = RetryAfter(timedelta(seconds=7))
    error._retry_after = wait if isinstance(wait, timedelta) else timedelta(seconds=wait)
    assert understand(error).retry_after_s == 7.0


def test_a_moved_chat_tells_its_new_number():
    assert understand(ChatMigrated(-100_777)).new_chat_id == -100_777


def test_every_error_class_of_the_library_is_understood():
    """A class that the next version adds must be looked at before it is used."""
    known = {
        BadRequest,
        ChatMigrated,
        Conflict,
        EndPointNotFound,
        Forbidden,
        InvalidToken,
        NetworkError,
        RetryAfter,
        TimedOut,
    }
    found, waiting = set(), [TelegramError]
    while waiting:
        for kind in waiting.pop().__subclasses__():
            if kind.__module__ == "telegram.error":
                found.add(kind)
                waiting.append(kind)
    found = {kind for kind in found if kind.__name__ != "PassportDecryptionError"}
    assert found == known


def test_no_detail_holds_a_piece_of_somebodys_text():
    error = BadRequest('Can\'t parse entities: unsupported start tag "sore elbow" at byte offset 3')
    assert understand(error).detail == "Can't parse entities: unsupported start tag "


@pytest.mark.parametrize(
    "error",
    [
        NetworkError(f"httpx.ReadError: https://host/bot{TOKEN}/sendMessage"),
        InvalidToken(f"The token `{TOKEN}` was rejected by the server."),
        TelegramError(f"cannot reach /bot{TOKEN}/"),
        caused(NetworkError("x"), httpx.ReadError(f"/bot{TOKEN}/")),
    ],
    ids=lambda each: type(each).__name__,
)
def test_no_detail_holds_the_token(error):
    assert TOKEN not in understand(error).detail
