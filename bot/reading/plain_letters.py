"""Letters without accents and case, so that what a thumb types and what is meant are one."""

import unicodedata


def plain_letters(text: str) -> str:
    """Write a text in small letters without accents: ``Cómo`` and ``como`` are one."""
    parts = unicodedata.normalize("NFKD", text.casefold())
    return "".join(one for one in parts if not unicodedata.combining(one))
