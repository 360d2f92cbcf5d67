"""A person's language and habits: English templates are the keys, figures are filled in by name.

A text is looked up in the catalogue (:mod:`bot.wording.catalogue`). The extractor finds templates
by their type: literals where a parameter is a :data:`Template`, and tables that are annotated so.
"""

from dataclasses import dataclass, field
from functools import cache
from gettext import NullTranslations
from html import escape
from typing import Literal

from babel import Locale

from bot.reading.units import nearest_lb
from bot.wording.catalogue.spoken import SOURCE_LANGUAGE, SPOKEN, translations_of

Filling = str | int | float
Template = str
"""A text in English with ``{names}`` to fill in: the key of its translations."""
Units = Literal["kg", "lb"]


@dataclass(frozen=True)
class Tongue:
    """How to say things to one person: language, decimal mark, unit of loads."""

    language: str = SOURCE_LANGUAGE
    units: Units = "kg"
    decimal_mark: str = "."
    translations: NullTranslations = field(default_factory=NullTranslations, repr=False)

    @property
    def locale(self) -> Locale:
        """The language's own customs of dates."""
        return locale_of(self.language)

    def translated(self, text: str) -> str:
        """Return a text as it stands in the catalogue, unfilled; what is missing stays English."""
        return self.translations.gettext(text) if text else ""

    def say(self, template: Template, **fillings: Filling) -> str:
        """Fill a template. Everything filled in is escaped, so people's words stay words."""
        return self.translated(template).format(**self._shown(fillings))

    def count(self, number: int, one: Template, many: Template, **fillings: Filling) -> str:
        """Fill the plural form that the language has for a number; ``{n}`` is the number."""
        template = self.translations.ngettext(one, many, number)
        return template.format(**self._shown({"n": number, **fillings}))

    def number(self, value: float) -> str:
        """Write a number with at most two decimals and none that say nothing."""
        text = f"{value:.2f}".rstrip("0").rstrip(".")
        return text.replace(".", self.decimal_mark)

    def load_figure(self, load_kg: float) -> str:
        """Write a load without its unit; in pounds to the nearest half, as weights are made."""
        if self.units == "kg":
            return self.number(load_kg)
        return self.number(nearest_lb(load_kg))

    def load(self, *loads_kg: float) -> str:
        """Write a load, or several, with the unit behind: ``20 kg``, ``35.5 / 44 lb``."""
        figures = " / ".join(self.load_figure(load_kg) for load_kg in loads_kg)
        return f"{figures} {self.units}"

    def _shown(self, fillings: dict[str, Filling]) -> dict[str, str]:
        return {key: self._one_shown(value) for key, value in fillings.items()}

    def _one_shown(self, value: Filling) -> str:
        if isinstance(value, Marked):
            return str(value)
        if isinstance(value, float):
            return self.number(value)
        return escape(str(value), quote=False)


class Marked(str):
    """Text that is already marked up and must not be escaped again."""

    __slots__ = ()


@cache
def locale_of(language: str) -> Locale:
    """Return the customs of a language."""
    return Locale.parse(language if language in SPOKEN else SOURCE_LANGUAGE)


@cache
def tongue_of(language: str, *, units: str = "kg", decimal_mark: str | None = None) -> Tongue:
    """Return the tongue of a language with a person's own habits; English where there is none yet.

    ``units`` kg or lb, for loads; ``decimal_mark`` . or , where it differs from the language's.
    """
    known = language if language in SPOKEN else SOURCE_LANGUAGE
    return Tongue(
        language=known,
        units="lb" if units == "lb" else "kg",
        decimal_mark=decimal_mark or decimal_mark_of(known),
        translations=translations_of(known),
    )


def decimal_mark_of(language: str) -> str:
    """Return the mark that a language writes decimals with."""
    symbols = locale_of(language).number_symbols
    return str(symbols["latn"]["decimal"])
