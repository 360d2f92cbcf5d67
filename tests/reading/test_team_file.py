"""A team as spreadsheets write it: read line by line, wrong lines named, nothing guessed.

How a field is quoted, and that a quoted one may hold separators and line breaks: rfc4180, 2.
Everything else here is CHOSEN.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.reading.team_file import ROWS_MOST, TeamFile, Wrong, read_team
from scheduler.catalogue.library import default_library
from scheduler.training.values import Best, Rung

MOVEMENTS = default_library().movements


def read(text: str | bytes, *, known: tuple[str, ...] = ()) -> TeamFile:
    content = text if isinstance(text, bytes) else text.encode()
    return read_team(content, movements=MOVEMENTS, known_names=known)


def wrongs(found: TeamFile) -> list[tuple[int, Wrong]]:
    return [(one.line, one.wrong) for one in found.faults]


WANTED = {"push_up_hold": Best(value=45.5), "farmer_carry": Best(value=60, rung=Rung(load_kg=12.5))}
ROWS = "name;stage;group;Push-up hold;farmer carry\nRobin Field;2;Juniors;45,5;60 @ 12,5\n"


@pytest.mark.parametrize(
    "content",
    [
        ROWS,
        "\ufeff" + ROWS,
        ROWS.encode("utf-16"),
        ROWS.replace("\n", "\r\n"),
        "sep=;\n" + ROWS,
        ROWS.replace(";", "\t"),
        'name,stage,group,Push-up hold,farmer carry\nRobin Field,2,Juniors,"45,5","60 @ 12,5"\n',
        'name,stage,group,push_up_hold,FARMER CARRY\n"Robin Field",2.0,Juniors,45.5 s,60@12.5 kg\n',
        ROWS.replace("name;stage;group", "Nombre;Etapa;Grupo"),
    ],
)
def test_what_spreadsheets_write_reads_alike(content: str | bytes):
    found = read(content)
    assert found.faults == ()
    (row,) = found.rows
    assert (row.name, row.stage, row.group) == ("Robin Field", 2, "Juniors")
    assert row.bests == WANTED


def test_accents_are_read_from_a_file_of_an_older_code_page():
    found = read("name\nZoé Brandt\n".encode("cp1252"))
    assert [row.name for row in found.rows] == ["Zoé Brandt"]


def test_a_quoted_field_may_hold_the_separator_and_a_line_break():
    found = read('name,stage\n"Field, Robin",2\n"Moor,\nAlex",1\nBo,9\n')
    assert [row.name for row in found.rows] == ["Field, Robin", "Moor, Alex"]
    # DERIVED: the head is line 1, the second name runs over lines 3 and 4, so Bo stands in line 5.
    assert wrongs(found) == [(5, Wrong.STAGE)]


def test_minutes_and_seconds_are_seconds():
    (row,) = read("name;Push-up hold\nBo;1:05\n").rows
    assert row.bests["push_up_hold"].value == 65  # DERIVED: 60 + 5


@pytest.mark.parametrize(
    ("line", "wrong"),
    [
        (";1;;", Wrong.NO_NAME),
        (f"{'x' * 61};1;;", Wrong.NAME_LONG),
        ("Bo;0;;", Wrong.STAGE),
        ("Bo;6;;", Wrong.STAGE),
        ("Bo;two;;", Wrong.STAGE),
        ("Bo;1;long;", Wrong.VALUE),
        ("Bo;1;-5;", Wrong.VALUE),
        ("Bo;1;0;", Wrong.BOUNDS),
        ("Bo;1;901;", Wrong.BOUNDS),
        ("Bo;1;;60", Wrong.LOAD_MISSING),
        ("Bo;1;;60 @ 500", Wrong.BOUNDS),
        ("Bo;1;45;60 @ 12;7", Wrong.CELLS),
        ("Ana;1;;", Wrong.KNOWN),
        ("CY;1;;", Wrong.NAME_TWICE),
        ('"Bo;1;;', Wrong.QUOTES),
    ],
)
def test_a_wrong_line_is_named_and_the_others_stand(line: str, wrong: Wrong):
    found = read(f"name;stage;Push-up hold;Farmer carry\nCy;1;;\n{line}\n", known=("ána",))
    assert wrongs(found) == [(3, wrong)]
    assert [row.name for row in found.rows] == ["Cy"]


@pytest.mark.parametrize(
    ("head", "wrong"),
    [
        ("who;stage", Wrong.UNKNOWN_COLUMN),
        ("name;stage;stage", Wrong.COLUMN_TWICE),
        ("name;Push-up hold;push_up_hold", Wrong.COLUMN_TWICE),
        ("name;Band pull-apart", Wrong.BAND_COLUMN),
        ("name;Push-up hld", Wrong.UNKNOWN_COLUMN),
    ],
)
def test_a_wrong_column_refuses_the_file(head: str, wrong: Wrong):
    found = read(f"{head}\nBo;1;1\n")
    assert found.rows == ()
    assert wrong in {one.wrong for one in found.faults}


def test_a_weight_where_none_is_taken_is_named():
    found = read("name;Lying T hold\nBo;45 @ 10\n")
    assert wrongs(found) == [(2, Wrong.LOAD_NOT_TAKEN)]


def test_a_column_near_to_a_movement_says_which():
    (fault,) = read("name;Push-up hld\nBo;1\n").faults
    assert "Push-up hold" in fault.near


@pytest.mark.parametrize(
    ("content", "wrong"),
    [
        (b"", Wrong.EMPTY),
        (b"name;stage\n", Wrong.EMPTY),
        (b"PK\x03\x04rest of a workbook", Wrong.SPREADSHEET),
        (b"\x89PNG\r\n\x1a\n\x00\x00", Wrong.NOT_TEXT),
        (("name\n" + "".join(f"A{n}\n" for n in range(ROWS_MOST + 1))).encode(), Wrong.TOO_MANY),
    ],
)
def test_what_is_no_table_of_athletes_is_refused_whole(content: bytes, wrong: Wrong):
    found = read(content)
    assert found.rows == ()
    assert [one.wrong for one in found.faults] == [wrong]


@given(st.binary(max_size=300))
def test_no_bytes_break_the_reader(content: bytes):
    found = read(content)
    assert isinstance(found, TeamFile)


@given(st.lists(st.text(st.characters(categories=["L", "N", "P", "Zs"]), max_size=20), min_size=1))
def test_every_line_is_either_invited_or_named(names: list[str]):
    quoted = "".join('"' + name.replace('"', '""') + '"\n' for name in names)
    found = read(f"name\n{quoted}")
    wanted = [" ".join(name.split()) for name in names if name.split()]
    is_read = {row.name for row in found.rows} | {one.shown for one in found.faults}
    assert set(wanted) <= is_read
