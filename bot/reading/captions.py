"""What stands under a picture, a clip or a file."""

from collections.abc import Container


def command_in(caption: str, *, among: Container[str]) -> str | None:
    """Return the command that a caption begins with, if it is one of these."""
    word, *_ = caption.split(maxsplit=1) or [""]
    name = word[1:].split("@", 1)[0].lower() if word.startswith("/") else ""
    return name if name in among else None
