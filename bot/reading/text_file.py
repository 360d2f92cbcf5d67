"""The bytes of a file that somebody sent, as text."""

CODINGS = {b"\xff\xfe": "utf-16", b"\xfe\xff": "utf-16"}
"""What some programs write where it is not UTF-8, told by the file's first two bytes."""


def text_of(content: bytes) -> str | None:
    """Read bytes as text: UTF-8, or UTF-16 that says so; None for any other coding.

    No coding is guessed: a wrong guess would put other words in force than those written.
    """
    try:
        text = content.decode(CODINGS.get(content[:2], "utf-8-sig"))
    except UnicodeDecodeError:
        return None
    return None if "\0" in text else text.replace("\r\n", "\n").replace("\r", "\n")
