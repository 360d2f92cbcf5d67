"""A person's language: templates in English are the keys, and figures are filled in by name."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from html import escape

from bot.wording.spanish_safety import SPANISH

Filling = str | int | float


@dataclass(frozen=True)
class Tongue:
    """How to say things to one person."""

    language: str = "en"
    translations: Mapping[str, str] = field(default_factory=dict)
    """By English template; what is missing is said in English."""

    def say(self, template: str, **fillings: Filling) -> str:
        """Fill a template. Everything filled in is escaped, so people's words stay words."""
        return self.translations.get(template, template).format(
            **{key: _shown(value) for key, value in fillings.items()}
        )

    def count(self, number: int, one: str, many: str, **fillings: Filling) -> str:
        """Fill the singular or the plural template; ``{n}`` is the number."""
        return self.say(one if number == 1 else many, n=number, **fillings)

    def number(self, value: float) -> str:
        """Write a number with at most two decimals and none that say nothing."""
        return f"{value:.2f}".rstrip("0").rstrip(".")


class Marked(str):
    """Text that is already marked up and must not be escaped again."""

    __slots__ = ()


def _shown(value: Filling) -> str:
    if isinstance(value, Marked):
        return str(value)
    if isinstance(value, float):
        return f"{value:.2f}".rstrip("0").rstrip(".")
    return escape(str(value), quote=False)


TONGUES = {"en": Tongue("en"), "es": Tongue("es", SPANISH)}


def tongue_of(language: str) -> Tongue:
    """Return the tongue of a language, English where there is none yet."""
    return TONGUES.get(language, TONGUES["en"])
