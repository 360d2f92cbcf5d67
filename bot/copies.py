"""Commands about the database file: copy it, put a copy back, wipe what is free."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlmodel import Session

from bot.acts.coach_dues import OWED_TO_COACHES
from bot.acts.erase_person import WIPE_ASKED
from bot.config import SetUpError
from storage import backup, erasure, erasure_list, outbox
from storage.backup import CopyError
from storage.database import Database
from storage.erasure import OtherRole
from storage.migrate import NewerDatabaseError, migrate
from storage.private_file import database_file, remove_with_log
from storage.queries import due, leaving, people
from storage.records.leaving import Erasure

IN_USE = "The database is in use, by a running bot or another program."


@dataclass(frozen=True)
class Restored:
    """What became of a restore: where the old database lies, and who was erased again."""

    aside: Path | None
    erased_again: int
    not_sent: int


def file_of(url: str) -> Path:
    """Return the database's file.

    Raises:
        SetUpError: where the database is none that this program can copy.

    """
    file = database_file(url)
    if file is None:
        raise SetUpError(
            "Only a SQLite file is copied by this command: use your database server's own tools."
        )
    return file


def back_up(url: str, target: Path) -> None:
    """Copy the database while it may be running; the erasures go along in a list of their own."""
    file = file_of(url)
    backup.back_up(file, target)
    known = erasure_list.read_list(erasure_list.list_beside(file))
    if known:
        erasure_list.write_list(erasure_list.list_beside(target), known)


def restore(url: str, source: Path, *, at: datetime, is_forced: bool) -> Restored:
    """Put a copy in the place of the database, which is kept beside it.

    Who was erased since the copy was made is erased from it again, before it takes its place. What
    waited to be sent when it was made is not sent any more: people would get it twice, or late.

    Raises:
        CopyError: when the copy is not whole, of a newer program, or the database is in use.

    """
    file = file_of(url)
    _check_source(source)
    if not is_forced and backup.is_in_use(file):
        raise CopyError(
            f"{IN_USE} Stop it first. If you are sure that nothing writes to it, add --force."
        )
    part = file.with_name(f".{file.name}.restored")
    remove_with_log(part)
    erasures = _known_erasures(file, source)
    backup.back_up(source, part)
    try:
        erased, not_sent = _make_ready(part, erasures, at=at)
        backup.wipe(part)
        backup.as_one_file(part)
        aside = backup.put_aside(file, at=at)
        part.rename(file)
    finally:
        remove_with_log(part)
    if erasures:
        erasure_list.write_list(erasure_list.list_beside(file), erasures)
    return Restored(aside=aside, erased_again=erased, not_sent=not_sent)


def wipe(url: str) -> None:
    """Write the file anew without what was deleted."""
    file = file_of(url)
    if not file.exists():
        raise SetUpError(f"There is no database {file}: set HOLDWELL_DATABASE.")
    backup.wipe(file)


def _check_source(source: Path) -> None:
    if not source.exists():
        raise CopyError(f"There is no file {source}: name a copy made by holdwell backup.")
    fault = backup.fault_of(source)
    if fault is not None:
        raise CopyError(f"{source} cannot be put back ({fault}): use another copy.")


def _known_erasures(file: Path, source: Path) -> list[Erasure]:
    """Collect every erasure that is known: of the database there, and of the lists beside both."""
    found: list[Erasure] = []
    if file.exists() and backup.fault_of(file) is None:
        found.extend(backup.erasures_in(file))
    lists = {
        erasure_list.list_beside(file),
        erasure_list.list_beside(source),
        source.parent / erasure_list.list_beside(file).name,
    }
    for place in sorted(lists):
        found.extend(erasure_list.read_list(place))
    return erasure_list.in_order(found)


def _make_ready(part: Path, erasures: Iterable[Erasure], *, at: datetime) -> tuple[int, int]:
    """Bring a copy to today: its schema, the erasures since, and nothing old left to send."""
    database = Database(f"sqlite:///{part}")
    try:
        migrate(database.engine)
        with database.transaction() as tx:
            not_sent = outbox.drop_unsent(tx, at=at, fault="an older copy was put back")
            erased = sum(_erase_again(tx, one, at=at) for one in erasures)
            leaving.sweep(tx, at=at)
    except NewerDatabaseError as fault:
        raise CopyError(str(fault)) from None
    finally:
        database.close()
    return erased, not_sent


def _erase_again(tx: Session, one: Erasure, *, at: datetime) -> bool:
    """Erase in a copy whoever was erased since; somebody who came later under that id is spared."""
    if one in [Erasure(**known.model_dump(exclude={"swept_at"})) for known in leaving.erasures(tx)]:
        return False
    person = next((each for each, _ in people.everybody(tx) if each.id == one.person_id), None)
    athlete = people.athlete(tx, one.person_id)
    came_at = person.created_at if person is not None else None
    if not one.is_whole:
        came_at = athlete.agreed_at if athlete is not None else None
    if came_at is None or came_at > one.erased_at:
        erasure.note_erasure(tx, one.person_id, at=one.erased_at, is_whole=one.is_whole)
        return False
    stays = None if one.is_whole else OtherRole(kept_dues=OWED_TO_COACHES)
    erasure.erase(tx, one.person_id, at=one.erased_at, stays=stays)
    erasure.note_erasure(tx, one.person_id, at=one.erased_at, is_whole=one.is_whole)
    due.set_mark(tx, WIPE_ASKED, at=at)
    return True
