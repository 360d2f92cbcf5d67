"""What all pictures share: plain words, names that can be drawn, and captions that fit."""

import unicodedata
from collections.abc import Sequence
from datetime import date
from html import unescape

from babel.dates import format_date

from bot.pictures.values import Tick
from bot.wording.labels import label
from bot.wording.pages import utf16_units
from bot.wording.tongue import Tongue

CAPTION_UNITS = 1000  # [UTF-16 units] botapi: sendPhoto, caption, at most 1024
TICKS_MOST = 5  # [days] ch: what fits beneath a picture
SCRIPTS = ("LATIN", "GREEK", "CYRILLIC", "ARMENIAN", "GEORGIAN", "HEBREW", "ARABIC")
"""The alphabets whose letters the pictures' font has, and joins as they should be."""
LEFT_AWAY = frozenset({"So", "Sk", "Cf", "Cs", "Co", "Cn", "Cc"})
"""Kinds of signs that are no part of a name's reading: emoji, joiners, controls."""


def plain(text: str) -> str:
    """Take back the escaping of marks: a picture is no chat message."""
    return unescape(text)


def is_drawable(text: str) -> bool:
    """Tell whether every letter has a shape in the pictures' font."""
    letters = [sign for sign in text if sign.isalpha()]
    return bool(letters) and all(unicodedata.name(sign, "").startswith(SCRIPTS) for sign in letters)


def shown_name(name: str, number: int) -> str:
    """Return a name as it can be drawn: without emoji; a number where its letters cannot be."""
    kept = "".join(
        sign
        for sign in name
        if unicodedata.category(sign) not in LEFT_AWAY and not "︀" <= sign <= "️"
    )
    flat = " ".join(kept.split())
    return flat if is_drawable(flat) else f"#{number}"


def named(name: str, words: str) -> str:
    """Put a name in front of a subtitle, where there is one that can be drawn."""
    shown = shown_name(name, 0)
    return " · ".join(part for part in ("" if shown == "#0" else shown, words) if part)


def caption_of(lines: Sequence[str], *, more: str = "") -> str:
    """Join whole lines as long as the platform takes them; ``more`` says that some are missing."""
    kept: list[str] = []
    units = utf16_units(more) + 1
    for line in lines:
        units += utf16_units(line) + 1
        if units > CAPTION_UNITS:
            return "\n".join([*kept, more] if more else kept)
        kept.append(line)
    return "\n".join(kept)


def short_day(tongue: Tongue, on: date) -> str:
    """Write a day without its weekday: ``24 Nov``."""
    return format_date(on, "d MMM", locale=tongue.locale)


def ticks(tongue: Tongue, first: date, last: date) -> tuple[Tick, ...]:
    """Name a few days at even distances, both ends among them."""
    span = (last - first).days
    count = min(TICKS_MOST, span + 1)
    if count <= 1:
        days = [first]
    else:
        days = [
            date.fromordinal(first.toordinal() + round(span * number / (count - 1)))
            for number in range(count)
        ]
    return tuple(Tick(on=on, words=plain(short_day(tongue, on))) for on in days)


def not_drawn(tongue: Tongue) -> str:
    """Stand in for a picture that could not be drawn; its words stand above."""
    return tongue.say("The picture itself could not be drawn.")


def history_label(tongue: Tongue) -> str:
    """Label the button that draws one movement."""
    return label(tongue, "History")


def season_label(tongue: Tongue) -> str:
    """Label the button that draws the season."""
    return label(tongue, "Season")


def balance_label(tongue: Tongue) -> str:
    """Label the button that draws the week's sets."""
    return label(tongue, "Week's balance")


def more_label(tongue: Tongue) -> str:
    """Label the button that sends the next pictures."""
    return label(tongue, "More pictures")


def left(tongue: Tongue, count: int) -> str:
    """Say how many athletes' pictures are left, above the button."""
    return tongue.count(count, "1 athlete is left.", "{n} athletes are left.")


def no_more(tongue: Tongue) -> str:
    """Answer a tap for more where there is none."""
    return tongue.say("There are no more pictures: nobody else has trained in the last weeks.")
