"""A wrong set-up is told in one line that says what to do, with exit code 2."""

import socket
import subprocess

import pytest
from sqlalchemy import text

from storage.database import Database
from storage.migrate import migrate
from tests.wire.housed import TOKEN, holdwell, surroundings


def run(folder, **settings):
    """Run the real program and return its exit code and everything that it wrote."""
    done = subprocess.run(  # noqa: S603  our own command
        holdwell("run"),
        cwd=folder,
        env=surroundings(**settings),
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    return done.returncode, done.stdout, done.stderr


def says(told, *wanted):
    """Check the one line: what it names, and what no output may ever hold."""
    code, out, err = told
    assert code == 2, err
    (said,) = err.splitlines()
    assert said.startswith("holdwell: ")
    for words in wanted:
        assert words in said
    assert "Traceback" not in out + err
    assert TOKEN not in out + err
    assert TOKEN.partition(":")[2] not in out + err


def database_in(folder) -> str:
    return f"sqlite:///{folder / 'house.sqlite3'}"


@pytest.mark.parametrize("settings", [{}, {"token": ""}, {"token": "   "}])
def test_without_a_token_it_says_where_to_put_one(tmp_path, settings):
    says(run(tmp_path, **settings), "HOLDWELL_TOKEN", ".env")


def test_a_private_file_that_others_can_read_is_refused(tmp_path):
    file = tmp_path / ".env"
    file.write_text(f"HOLDWELL_TOKEN={TOKEN}\n")
    file.chmod(0o644)
    says(run(tmp_path), "chmod 600")


@pytest.mark.parametrize(
    "address",
    ["nonsense", "sqlite//x", "oracle-of-delphi://x/y", "sqlite+nothing:///x", "://"],
)
def test_an_address_that_is_none_is_refused(tmp_path, address):
    says(run(tmp_path, token=TOKEN, database=address), "HOLDWELL_DATABASE")


def test_a_folder_that_cannot_be_written_to_is_named(tmp_path):
    (tmp_path / "taken").write_text("a file in place of the folder")  # also root cannot write there
    address = f"sqlite:///{tmp_path / 'taken' / 'house.sqlite3'}"
    says(run(tmp_path, token=TOKEN, database=address), "taken", "HOLDWELL_DATABASE")


def test_a_folder_in_place_of_the_database_is_named(tmp_path):
    (tmp_path / "house.sqlite3").mkdir()
    says(run(tmp_path, token=TOKEN, database=database_in(tmp_path)), "house.sqlite3")


def test_a_file_that_is_no_database_is_named(tmp_path):
    (tmp_path / "house.sqlite3").write_text("a shopping list, long enough to be no header " * 50)
    says(run(tmp_path, token=TOKEN, database=database_in(tmp_path)), "house.sqlite3")


def test_a_newer_database_is_left_alone(tmp_path):
    database = Database(database_in(tmp_path))
    migrate(database.engine)
    with database.transaction() as tx:
        tx.connection().execute(text("UPDATE alembic_version SET version_num = '9999'"))
    database.close()
    before = (tmp_path / "house.sqlite3").read_bytes()
    told = run(tmp_path, token=TOKEN, database=database_in(tmp_path))
    says(told, "newer", "9999", "update the program")
    assert (tmp_path / "house.sqlite3").read_bytes() == before


def test_a_platform_that_is_not_there_is_told(tmp_path):
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    address = f"http://127.0.0.1:{port}"
    says(
        run(tmp_path, token=TOKEN, database=database_in(tmp_path), api_url=address),
        "cannot be reached",
        "check the network",
    )


def test_a_setting_of_the_wrong_kind_is_named(tmp_path):
    says(run(tmp_path, token=TOKEN, poll_s="often"), "HOLDWELL_POLL_S")
