"""Keeps the catalogues true to the code: what is missing, unused, empty, doubtful, ill filled."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from string import Formatter

from babel.messages.catalog import Catalog, Message
from babel.messages.pofile import write_po

import bot
from bot.wording.catalogue.extraction import Text, occurrences, sources
from bot.wording.catalogue.spoken import ALSO_CALLED, MESSAGES
from scheduler.catalogue.library import default_library

HERE = Path(__file__).parent
CODE = Path(bot.__file__).parent
SAFETY = "Safety text"
"""The translator's comment on what an athlete reads about pain and signs: worded with care."""
LINE_MOST = 100  # [characters] ch: as wide as the code


@dataclass(frozen=True)
class Entry:
    """One text that the catalogue must hold, and the files that say it."""

    text: Text
    context: str | None = None
    files: tuple[str, ...] = ()

    @property
    def id(self) -> str:
        """The text by which the entry is found: of a plural the singular."""
        return self.text if isinstance(self.text, str) else self.text[0]


def entries_of(subject: str) -> list[Entry]:
    """Return what a catalogue must hold."""
    return _messages() if subject == MESSAGES else list(_movements())


def _messages() -> list[Entry]:
    found: dict[Text, dict[str, None]] = {}
    for one in occurrences(sources(CODE)):
        found.setdefault(one.text, {})[one.file] = None
    return [Entry(text, files=tuple(files)) for text, files in found.items()]


def _movements() -> Iterator[Entry]:
    movements = default_library().movements.values()
    texts = (text for one in movements for text in (one.name, one.how_to, one.common_fault))
    yield from (Entry(text) for text in dict.fromkeys(texts))
    for name in dict.fromkeys(one.name for one in movements if one.aliases):
        yield Entry(name, context=ALSO_CALLED)


def updated(catalogue: Catalog, entries: Sequence[Entry]) -> Catalog:
    """Return a catalogue with exactly these entries, what is translated kept, the rest empty."""
    fresh = Catalog(
        locale=catalogue.locale,
        project="Holdwell",
        version="1",
        header_comment="# Every text of the bot; the English is the key.",
        creation_date=catalogue.creation_date,
        revision_date=catalogue.creation_date,
        msgid_bugs_address="the project",
        last_translator="the project",
        language_team="the project",
        charset="utf-8",
        fuzzy=False,
    )
    for entry in entries:
        known = catalogue.get(entry.id, context=entry.context)
        is_same = known is not None and known.id == entry.text
        fresh.add(
            entry.text,
            known.string if known is not None and is_same else _blank(entry.text),
            locations=[(file, 0) for file in entry.files],
            flags=[one for one in known.flags if one == "fuzzy"] if known else (),
            user_comments=known.user_comments if known else (),
            context=entry.context,
        )
    return fresh


def _blank(text: Text) -> str | tuple[str, str]:
    return "" if isinstance(text, str) else ("", "")


def merge(
    catalogue: Catalog, spoken: Mapping[str, str], *, are_safety_texts: bool = False
) -> set[str]:
    """Take translations by English text into a catalogue; return those that it had an entry for.

    A text in a context stands behind it: ``also called: Bar hang``. Of a plural both forms stand.
    """
    taken: set[str] = set()
    for message in catalogue:
        ids = [message.id] if isinstance(message.id, str) else list(message.id)
        keys = [f"{message.context}: {one}" if message.context else one for one in ids]
        if message.id and all(key in spoken for key in keys):
            strings = tuple(spoken[key] for key in keys)
            message.string = strings if len(strings) > 1 else strings[0]
            if are_safety_texts:
                message.user_comments = [SAFETY]
            taken |= set(keys)
    return taken


def faults(catalogue: Catalog, entries: Sequence[Entry]) -> list[str]:
    """Return everything that keeps a catalogue from being whole, a line each."""
    wanted = {(entry.id, entry.context): entry.text for entry in entries}
    held = {(_id(one), one.context): one for one in catalogue if one.id}
    return [
        *(f"missing: {text!r}" for text, _ in wanted.keys() - held.keys()),
        *(f"not used: {text!r}" for text, _ in held.keys() - wanted.keys()),
        *(
            f"{fault}: {key[0]!r}"
            for key, message in held.items()
            if key in wanted and (fault := _fault(message, wanted[key]))
        ),
    ]


def _id(message: Message) -> str:
    return message.id if isinstance(message.id, str) else message.id[0]


def _fault(message: Message, wanted: Text) -> str:
    strings = [message.string] if isinstance(message.string, str) else list(message.string or ())
    ids = [message.id] if isinstance(message.id, str) else list(message.id)
    if tuple(ids) != ((wanted,) if isinstance(wanted, str) else wanted):
        return "another plural"
    if "fuzzy" in message.flags:
        return "doubtful"
    if not all(strings) or len(strings) < len(ids):
        return "empty"
    names = [names_in(one) for one in (*ids, *strings)]
    one_and_many = [found - {"n"} if len(ids) > 1 else found for found in names]
    if any(found != one_and_many[0] for found in one_and_many):
        return "other names in braces"
    return ""


def names_in(template: str) -> set[str]:
    """Return the names that a template fills in."""
    return {name for _, name, _, _ in Formatter().parse(template) if name}


def write(catalogue: Catalog, place: Path) -> None:
    """Write a catalogue as it is kept in the project: without line numbers, which only churn."""
    with place.open("wb") as opened:
        write_po(opened, catalogue, width=LINE_MOST, include_lineno=False)
