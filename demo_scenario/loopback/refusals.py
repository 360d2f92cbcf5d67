"""How the platform says no: a status, a description that names it, and perhaps how long to wait."""

from typing import Any


class RefusedError(Exception):
    """The platform refuses a call; nothing that anyone can see has changed."""

    def __init__(
        self, status: int, description: str, *, parameters: dict[str, Any] | None = None
    ) -> None:
        """Keep what the JSON answer needs."""
        super().__init__(description)
        self.status = status
        self.description = description
        self.parameters = parameters

    def as_json(self) -> dict[str, Any]:
        """Return the answer's body."""
        body: dict[str, Any] = {
            "ok": False,
            "error_code": self.status,
            "description": self.description,
        }
        return body if self.parameters is None else {**body, "parameters": self.parameters}


def bad_request(fault: str) -> RefusedError:
    """Refuse a call whose content or target is wrong."""
    return RefusedError(400, f"Bad Request: {fault}")


def unauthorized() -> RefusedError:
    """Refuse a token that belongs to no bot."""
    return RefusedError(401, "Unauthorized")


def forbidden(fault: str) -> RefusedError:
    """Refuse a chat that the bot may not write to."""
    return RefusedError(403, f"Forbidden: {fault}")


def unknown_method() -> RefusedError:
    """Refuse a method that does not exist, or that this server does not speak."""
    return RefusedError(404, "Not Found: method not found")


def unknown_path() -> RefusedError:
    """Refuse an address that is neither a method's nor a file's."""
    return RefusedError(404, "Not Found")


def second_poller() -> RefusedError:
    """End the earlier of two waiting polls."""
    return RefusedError(
        409,
        "Conflict: terminated by other getUpdates request; "
        "make sure that only one bot instance is running",
    )


def too_large() -> RefusedError:
    """Refuse an upload that is larger than any bot may send."""
    return RefusedError(413, "Request Entity Too Large")


def too_many_requests(*, retry_after_s: int) -> RefusedError:
    """Refuse a call over the rate limit; ``retry_after_s`` is whole seconds, at least 1."""
    return RefusedError(
        429,
        f"Too Many Requests: retry after {retry_after_s}",
        parameters={"retry_after": retry_after_s},
    )
