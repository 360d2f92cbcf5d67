"""The catalogues as they are read at start: one gettext file a language and subject."""

import io
from functools import cache
from gettext import GNUTranslations, NullTranslations
from importlib import resources

from babel.messages.catalog import Catalog
from babel.messages.mofile import write_mo
from babel.messages.pofile import read_po

SOURCE_LANGUAGE = "en"
"""The language that the templates are written in."""
SPOKEN = (SOURCE_LANGUAGE, "es")
MESSAGES, MOVEMENTS = "messages", "movements"
SUBJECTS = (MESSAGES, MOVEMENTS)
"""What the bot says, and the texts of its own library of movements."""
ALSO_CALLED = "also called"
"""The context of a movement's other names, parted by commas, under its English name."""


def file_name(language: str, subject: str) -> str:
    """Name the file of a catalogue: ``messages_es.po``."""
    return f"{subject}_{language}.po"


def read_catalogue(language: str, subject: str) -> Catalog:
    """Read one catalogue as it stands in the project."""
    place = resources.files("bot.wording.catalogue") / file_name(language, subject)
    with place.open("rb") as opened:
        return read_po(opened, locale=language, abort_invalid=True)


@cache
def translations_of(language: str) -> NullTranslations:
    """Return a language's texts, with plural forms by gettext's rules; English are the keys.

    A text that is missing, empty or marked as doubtful is said in English.
    """
    if language == SOURCE_LANGUAGE or language not in SPOKEN:
        return NullTranslations()
    found = _compiled(read_catalogue(language, SUBJECTS[0]))
    for subject in SUBJECTS[1:]:
        found.add_fallback(_compiled(read_catalogue(language, subject)))
    return found


def _compiled(catalogue: Catalog) -> GNUTranslations:
    """Turn a catalogue into what gettext looks texts up in, in memory."""
    memory = io.BytesIO()
    write_mo(memory, catalogue)
    memory.seek(0)
    return GNUTranslations(memory)
