"""From a copy back to a running house: whole, with the erasures since, and nothing sent twice."""

import shutil
import sqlite3
import stat
import subprocess
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot import copies, erase_command
from bot.config import SetUpError
from scheduler.pain.values import Level, Urgency
from storage import backup, erasure, outbox
from storage.backup import CopyError
from storage.database import Database
from storage.erasure import OtherRole
from storage.erasure_list import list_beside
from storage.migrate import migrate
from storage.queries import care, leaving, people
from storage.records.people import Athlete, Person, Profile
from storage.records.wire import MessageKind, Operation
from storage.tables.wire import OutboxState
from tests.conversation.athlete_stage import PROFILE
from tests.wire.housed import holdwell, surroundings

NOW = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)
LATER = NOW + timedelta(days=3)


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "home" / "house.sqlite3"


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    return tmp_path / "copies" / "monday.sqlite3"


@pytest.fixture
def url(file: Path) -> str:
    file.parent.mkdir()
    return f"sqlite:///{file}"


@pytest.fixture
def team(url: str) -> dict[str, int]:
    """A coach, two athletes, and a message of each kind that waits."""
    with opened(url) as database, database.transaction() as tx:
        coach = people.add_person(tx, name="Mara", now=NOW, chat_id=1000, is_coach=True)
        ids = {"Mara": coach.id}
        for name, chat_id in (("Xanthippe", 2000), ("Robin", 2001)):
            person = people.add_person(tx, name=name, now=NOW, chat_id=chat_id)
            add_athlete(tx, person, coach)
            ids[name] = person.id
        for kind in (MessageKind.SESSION, MessageKind.ALERT):
            outbox.put(
                tx, chat_id=2001, operation=Operation.SEND, kind=kind,
                payload={"text": kind.value}, now=NOW,
            )  # fmt: skip
    return ids


def opened(url: str) -> closing[Database]:
    database = Database(url)
    migrate(database.engine)
    return closing(database)


def add_athlete(tx, person: Person, coach: Person) -> Athlete:
    profile: Profile = PROFILE
    return people.add_athlete(
        tx, person_id=person.id, coach_id=coach.id, profile=profile, on=NOW.date(),
        session_at=NOW.time(), agreed_at=NOW,
    )  # fmt: skip


def names(url: str) -> list[str]:
    with opened(url) as database, database.transaction() as tx:
        return [person.name for person, _ in people.everybody(tx)]


def change_after(url: str, copy: Path, name: str = "Newcomer") -> None:
    copies.back_up(url, copy)
    with opened(url) as database, database.transaction() as tx:
        people.add_person(tx, name=name, now=LATER)


def restore(url: str, copy: Path, *, is_forced: bool = False) -> copies.Restored:
    return copies.restore(url, copy, at=LATER, is_forced=is_forced)


def test_a_copy_put_back_is_what_it_was_and_the_old_one_lies_beside(url, file, copy, team):
    change_after(url, copy)
    done = restore(url, copy)
    assert names(url) == ["Mara", "Xanthippe", "Robin"]
    assert done.aside is not None
    assert names(f"sqlite:///{done.aside}") == ["Mara", "Xanthippe", "Robin", "Newcomer"]
    for one in (file, done.aside, copy):
        assert stat.S_IMODE(one.stat().st_mode) == 0o600, one


def test_who_was_erased_since_is_erased_from_the_copy_before_it_is_used(url, file, copy, team):
    copies.back_up(url, copy)
    erase_command.erase(url, "Xanthippe", at=LATER - timedelta(hours=1), is_sure=True)
    assert b"Xanthippe" in copy.read_bytes()
    done = restore(url, copy)
    assert done.erased_again == 1
    assert names(url) == ["Mara", "Robin"]
    assert b"Xanthippe" not in file.read_bytes()


@pytest.mark.parametrize("place", ["beside the database", "beside the copy"])
def test_the_erasures_are_known_also_where_the_database_itself_is_lost(
    url, file, copy, team, place
):
    copies.back_up(url, copy)
    erase_command.erase(url, "Xanthippe", at=LATER - timedelta(hours=1), is_sure=True)
    if place == "beside the copy":
        shutil.move(list_beside(file), copy.parent / list_beside(file).name)
    file.unlink()
    assert restore(url, copy).erased_again == 1
    assert names(url) == ["Mara", "Robin"]
    # And it stays known, for the next copy that is put back.
    assert restore(url, copy).erased_again == 1


def test_somebody_who_came_later_under_a_number_of_old_is_not_erased(url, copy, team):
    """After a restore numbers are given anew; an erasure is of who had come before it."""
    change_after(url, copy)
    erase_command.erase(url, "Newcomer", at=LATER + timedelta(hours=1), is_sure=True)
    restore(url, copy)
    with opened(url) as database, database.transaction() as tx:
        later = people.add_person(tx, name="Another", now=LATER + timedelta(hours=2))
    assert later.id == team["Robin"] + 1
    second = copy.with_name("tuesday.sqlite3")
    copies.back_up(url, second)
    assert restore(url, second).erased_again == 0
    assert "Another" in names(url)


def test_a_coach_erased_as_an_athlete_only_is_so_again(url, copy, team):
    with opened(url) as database, database.transaction() as tx:
        add_athlete(tx, people.person(tx, team["Mara"]), people.person(tx, team["Mara"]))
    copies.back_up(url, copy)
    with opened(url) as database, database.transaction() as tx:
        erasure.erase(tx, team["Mara"], at=LATER, stays=OtherRole())
        erasure.note_erasure(tx, team["Mara"], at=LATER, is_whole=False)
    restore(url, copy)
    with opened(url) as database, database.transaction() as tx:
        assert people.athlete(tx, team["Mara"]) is None
        assert people.person(tx, team["Mara"]).name == "Mara"
        assert [one.is_whole for one in leaving.erasures(tx)] == [False]


def test_what_waited_in_the_copy_is_not_sent_again_but_for_alerts(url, copy, team):
    copies.back_up(url, copy)
    assert restore(url, copy).not_sent == 1
    with opened(url) as database, database.transaction() as tx:
        states: dict[str, str] = dict(
            tx.connection().exec_driver_sql("SELECT kind, state FROM outbox").all()
        )
    assert states == {"session": OutboxState.DROPPED, "alert": OutboxState.WAITING}


NEWER_THAN_0009 = (
    "erasure", "leave_wish", "clip", "how_to_media", "file_version", "test_attempt", "test_round",
    "remark", "file_draft",
)  # fmt: skip


def test_an_older_schema_is_brought_up_to_date(url, copy, team):
    copies.back_up(url, copy)
    with closing(sqlite3.connect(copy)) as old:
        for table in NEWER_THAN_0009:
            old.execute(f"DROP TABLE {table}")
        for index in ("ix_outbox_edits", "ix_pain_event_session", "ix_due_handled_at"):
            old.execute(f"DROP INDEX {index}")
        old.execute("UPDATE alembic_version SET version_num = '0009'")
        old.commit()
    restore(url, copy)
    assert names(url) == ["Mara", "Xanthippe", "Robin"]


def test_a_running_house_is_not_overwritten(url, copy, team):
    copies.back_up(url, copy)
    with opened(url) as database:
        with database.transaction() as tx:
            people.add_person(tx, name="Newcomer", now=NOW)
        with pytest.raises(CopyError, match=r"in use.*Stop it first"):
            restore(url, copy)
    assert "Newcomer" in names(url)


def test_a_copy_that_is_broken_or_newer_or_missing_changes_nothing(url, file, copy, team):
    copies.back_up(url, copy)
    newer = copy.with_name("newer.sqlite3")
    shutil.copy(copy, newer)
    with closing(sqlite3.connect(newer)) as opened_copy:
        opened_copy.executescript("UPDATE alembic_version SET version_num = '9999'")
    broken = copy.with_name("broken.sqlite3")
    broken.write_bytes(copy.read_bytes()[:6000])
    for source, why in (
        (newer, "newer Holdwell"), (broken, "use another copy"),
        (copy.with_name("none.sqlite3"), "There is no file"),
    ):  # fmt: skip
        with pytest.raises(CopyError, match=why):
            restore(url, source)
    assert names(url) == ["Mara", "Xanthippe", "Robin"]
    assert sorted(one.name for one in file.parent.iterdir()) == ["house.sqlite3"]


def test_a_copy_can_be_put_where_there_is_no_database_yet(url, file, copy, team):
    copies.back_up(url, copy)
    file.unlink()
    assert restore(url, copy).aside is None
    assert names(url) == ["Mara", "Xanthippe", "Robin"]


# erasing on the machine


@pytest.mark.parametrize(
    ("who", "why"),
    [
        ("Zoe", "Nobody here is called 'Zoe'"), ("a", "Several are meant: .*Write the number"),
        ("Mara", "coaches 2 athletes"), ("Robin", "add --yes"), ("99", "Nobody here"),
    ],
)  # fmt: skip
def test_who_is_not_clearly_meant_or_not_confirmed_is_not_erased(url, team, who, why):
    with pytest.raises(SetUpError, match=why):
        erase_command.erase(url, who, at=LATER, is_sure=False)
    assert names(url) == ["Mara", "Xanthippe", "Robin"]


def test_an_open_alert_comes_first_unless_nobody_is_left_to_answer(url, team):
    with opened(url) as database, database.transaction() as tx:
        care.raise_alert(
            tx, athlete_id=team["Robin"], coach_id=team["Mara"], level=Level.REST,
            urgency=Urgency.SOON, words="ouch", reasons=(), at=NOW, tell_at=NOW,
        )  # fmt: skip
    with pytest.raises(SetUpError, match="An alert about Robin is open"):
        erase_command.erase(url, "Robin", at=LATER, is_sure=True)
    erase_command.erase(url, "Robin", at=LATER, is_sure=True, is_alert_no_matter=True)
    assert names(url) == ["Mara", "Xanthippe"]


def test_a_coach_without_athletes_can_be_erased_whole(url, file, team):
    for name in ("Robin", "Xanthippe"):
        erase_command.erase(url, name, at=LATER, is_sure=True)
    erase_command.erase(url, str(team["Mara"]), at=LATER, is_sure=True)
    assert names(url) == []
    with opened(url) as database, database.transaction() as tx:
        assert people.coaches(tx) == ()


# the commands themselves


def run(folder: Path, *arguments: str, **settings: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(  # noqa: S603 (our own command)
        holdwell(*arguments), cwd=folder, env=surroundings(**settings) | {"COLUMNS": "200"},
        capture_output=True, text=True, check=False,
    )  # fmt: skip


def test_the_commands_copy_and_put_back_and_say_what_they_did(url, file, tmp_path, team):
    copied = run(tmp_path, "backup", "one.sqlite3", database=url)
    assert copied.returncode == 0, copied.stderr
    assert "only you can read it" in copied.stdout
    again = run(tmp_path, "backup", "one.sqlite3", database=url)
    assert again.returncode == 2
    assert "exists already" in again.stderr
    erased = run(tmp_path, "erase", "Xanthippe", "--yes", database=url)
    assert f"Person {team['Xanthippe']} is erased." in erased.stdout
    back = run(tmp_path, "restore", "one.sqlite3", database=url)
    assert "erased again: 1." in back.stdout
    assert "before-" in back.stdout
    schema = run(tmp_path, "data-schema")
    assert '"https://json-schema.org/draft/2020-12/schema"' in schema.stdout


def test_a_server_database_is_refused_with_what_to_use_instead(tmp_path):
    with pytest.raises(SetUpError, match="your database server's own tools"):
        copies.back_up("postgresql://host/holdwell", tmp_path / "x")
    assert backup.fault_of(tmp_path / "x") is not None
