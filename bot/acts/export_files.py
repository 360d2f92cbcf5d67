"""Make a file when it leaves: what waits to be sent is only which file of whom.

Files of years would swell the outbox, and would bring back there what was erased meanwhile.
"""

import io
import zipfile
from collections.abc import Mapping
from enum import StrEnum
from typing import Any

from bot.acts import in_force
from bot.acts.export_data import data_of
from bot.acts.export_season import season_facts
from bot.acts.export_team import team_file
from bot.exports.calendar_file import calendar_bytes
from bot.exports.data_schema import FILE_NAME, data_bytes, schema_text
from bot.exports.tables import TABLES, table_file
from bot.pictures.handover_values import HandoverPage
from bot.turn import Turn
from scheduler.catalogue.library import packaged_texts
from scheduler.training.rulebook import packaged_text
from storage.queries import file_versions, people
from storage.records.media import FileKind
from storage.records.people import Person


class ExportFile(StrEnum):
    """What can be taken along."""

    RESULTS = "results"
    SESSIONS = "sessions"
    PAIN = "pain"
    WORDS = "words"
    DATA = "data"
    SCHEMA = "schema"
    SEASON = "season"
    EVERYTHING = "everything"
    TEAM = "team"


class NothingToSendError(Exception):
    """The person whose file it was has left meanwhile."""


ENDINGS = {
    ExportFile.DATA: "json",
    ExportFile.SCHEMA: "schema.json",
    ExportFile.SEASON: "ics",
    ExportFile.EVERYTHING: "zip",
}
OWN_FILE = "own_file"
"""A coach's own file of movements or standards, in one of its versions."""
RULEBOOK = "rulebook.yaml"
COMMA_LANGUAGES = frozenset({"es", "de", "fr", "pt"})
"""cldr: where a decimal comma is usual, unless the person chose otherwise."""


def file_name(kind: ExportFile) -> str:
    """Return what the file is called; a name of a person stands in no file name."""
    return f"holdwell-{kind.value}.{ENDINGS.get(kind, 'csv')}"


def request(kind: ExportFile, person: Person, reader: Person) -> dict[str, Any]:
    """Return which file is to be made of whom and for whom, as it waits in the outbox."""
    return {"kind": kind.value, "person": person.id, "reader": reader.id}


def request_version(kind: FileKind, name: str, *, version_id: int | None) -> dict[str, Any]:
    """Return which version of a coach's own file is to be sent; None is that of the package."""
    return {"kind": OWN_FILE, "of": kind.value, "name": name, "version": version_id}


def packaged(kind: FileKind) -> Mapping[str, str]:
    """Return the files of a kind as they come with the package, by name."""
    return packaged_texts() if kind is FileKind.MOVEMENTS else {RULEBOOK: packaged_text()}


def _version(turn: Turn, wanted: Mapping[str, Any]) -> bytes:
    found = file_versions.version(turn.tx, int(wanted["version"])) if wanted["version"] else None
    text = found.content if found is not None else None
    return (text if text is not None else packaged(FileKind(wanted["of"]))[wanted["name"]]).encode()


def content(turn: Turn, wanted: Mapping[str, Any], page: Mapping[str, Any] | None = None) -> bytes:
    """Make a file; ``page`` goes into the archive of everything.

    Raises:
        NothingToSendError: when the person has left since.

    """
    if wanted["kind"] == OWN_FILE:
        return _version(turn, wanted)
    kind = ExportFile(wanted["kind"])
    person, reader = (people.person(turn.tx, int(wanted[who])) for who in ("person", "reader"))
    mark = decimal_mark_of(reader)
    if kind is ExportFile.SCHEMA:
        return schema_text().encode()
    if kind is ExportFile.TEAM:
        turn = in_force.turn_for(turn, person.id)
        return team_file(turn, person, decimal_mark=mark)
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        raise NothingToSendError
    turn = in_force.turn_for(turn, athlete.coach_id)
    if kind is ExportFile.SEASON:
        return calendar_bytes(season_facts(turn, person, athlete, tongue=turn.tongue(reader)))
    data = data_of(turn, person, athlete)
    if kind is ExportFile.DATA:
        return data_bytes(data)
    if kind is not ExportFile.EVERYTHING:
        return table_file(kind.value, data, decimal_mark=mark)
    season = calendar_bytes(season_facts(turn, person, athlete, tongue=turn.tongue(reader)))
    parts = {f"{name}.csv": table_file(name, data, decimal_mark=mark) for name in TABLES}
    parts |= {"data.json": data_bytes(data), FILE_NAME: schema_text().encode()}
    return _archive({**parts, "season.ics": season, **_drawn(page)})


def decimal_mark_of(person: Person) -> str:
    """Return how a person writes decimals: as they chose, else as their language does."""
    return person.decimal_mark or ("," if person.language in COMMA_LANGUAGES else ".")


def _drawn(page: Mapping[str, Any] | None) -> dict[str, bytes]:
    if page is None:
        return {}
    from bot.pictures.handover_page import draw  # noqa: PLC0415  the drawing library is heavy

    return {"handover.pdf": draw(HandoverPage.model_validate(page))}


def _archive(parts: Mapping[str, bytes]) -> bytes:
    written = io.BytesIO()
    with zipfile.ZipFile(written, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, part in parts.items():
            archive.writestr(name, part)
    return written.getvalue()
