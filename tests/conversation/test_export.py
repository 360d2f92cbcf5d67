"""Files to take along: tables, data with its schema, the season, the page; nothing private."""

import csv
import io
import json
import zipfile
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
import vobject
from jsonschema import Draft202012Validator, FormatChecker
from sqlmodel import select

from bot.acts import export_files, guided_tests
from bot.exports.data_schema import made_schema, schema_text
from bot.exports.spreadsheet import BOM, defused, table_bytes
from bot.outcomes import Outcome
from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side
from scheduler.training.baseline_values import Ended
from scheduler.training.season_values import SeasonEvent, Travel
from scheduler.training.values import Rung
from storage.queries import first_tests, people
from storage.records.people import AthleteState
from storage.tables.wire import OutboxRow
from tests.conversation.athlete_stage import COACH_CHAT, MADRID, MONDAY, Stage
from tests.conversation.tested_days import begun, first_day

RESULTS, SESSIONS, PAIN = "Results (table)", "Sessions (table)", "Pain (table)"
OWN_WORDS, SEASON, DATA = "Own words (table)", "Season (calendar)", "Everything (data)"
ARCHIVE, PAGE = "All in one archive", "Page to hand over"
CRISIS = "i want to kill myself"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage.with_first_session(tmp_path)
    stage.write("2) 20 20 20")
    stage.write("left wrist 4/10")
    stage.write("can I bring a friend on Friday?")
    return stage


def documents(stage: Stage) -> list[OutboxRow]:
    with stage.database.transaction() as tx:
        return list(tx.exec(select(OutboxRow).where(OutboxRow.operation == "document")).all())


def made(stage: Stage, row: OutboxRow) -> bytes:
    """Make a waiting file as the sender does: from a session that only reads."""
    with stage.database.reading() as tx:
        turn = stage.make_turn(tx, stage.now)
        return export_files.content(turn, row.payload["file"], row.payload.get("page"))


def take(
    stage: Stage, label: str, *, command: str = "/export", chat_id: int | None = None
) -> bytes:
    more: dict[str, Any] = {} if chat_id is None else {"chat_id": chat_id}
    before = len(documents(stage))
    stage.write(command, **more)
    stage.tap(label, **more)
    return made(stage, documents(stage)[before])


def table(content: bytes, *, separator: str = ",") -> list[dict[str, str]]:
    text = content.decode("utf-8-sig")
    return list(csv.DictReader(io.StringIO(text, newline=""), delimiter=separator))


def data(stage: Stage) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(take(stage, DATA))
    return found


def test_the_results_are_a_table_with_a_line_a_set_and_numbers_that_stay_numbers(stage):
    rows = table(take(stage, RESULTS))
    assert [(row["set"], row["value"], row["unit"], row["movement"]) for row in rows] == [
        ("1", "20", "s", "Bar hang"), ("2", "20", "s", "Bar hang"), ("3", "20", "s", "Bar hang"),
    ]  # fmt: skip
    assert rows[0]["date"] == "2026-03-02"
    assert rows[0]["reported_at"].startswith("2026-03-02 07:")  # DERIVED: 06:00 UTC in Madrid


def test_pain_and_sessions_are_tables_too(stage):
    (pain,) = table(take(stage, PAIN))
    assert (pain["site"], pain["side"], pain["score"]) == ("wrist", "left", "4")
    sessions = table(take(stage, SESSIONS))
    assert {row["sets_reported"] for row in sessions} == {"3", "0"}


def test_a_corrected_report_of_pain_stands_corrected(stage):
    stage.write("left wrist 2/10")
    stage.write_as(500, "right elbow outside 3/10")
    stage.edit(500, "right elbow outside 5/10")
    scores = {(row["site"], row["score"]) for row in table(take(stage, PAIN))}
    assert ("elbow_outer", "5") in scores
    assert ("elbow_outer", "3") not in scores


@pytest.mark.parametrize("sign", ["=", "+", "-", "@", "\t", "\r", "\n"])
def test_no_cell_of_words_begins_like_a_formula(sign: str):
    """PUBLISHED owaspcsv: = + - @ tab, carriage return and line feed; the apostrophe likewise."""
    (row,) = table(table_bytes(["words"], [[f"{sign}1+1"]], decimal_mark="."))
    assert row["words"] == f"'{sign}1+1"


@pytest.mark.parametrize("words", ["  =1+1", "＝1+1", "＠x"])
def test_spaces_and_full_width_signs_do_not_get_around_it(words: str):
    """CHOSEN beyond the ASCII list: East Asian spreadsheets fold these to the plain signs."""
    assert defused(words) == f"'{words}"


def test_a_message_that_would_run_in_a_spreadsheet_is_only_text(stage):
    stage.write('=HYPERLINK("http://example.invalid";"see me")')
    words = [row["words"] for row in table(take(stage, OWN_WORDS))]
    assert any(one.startswith("'=HYPERLINK") for one in words)
    assert not any(one.startswith("=") for one in words)


def test_numbers_are_not_defused_and_follow_the_readers_decimal_mark():
    """PUBLISHED rfc4180: lines end in CR LF. CHOSEN: a byte order mark, semicolons with commas."""
    point = table_bytes(["a", "b"], [[-1.5, 12.0]], decimal_mark=".").decode()
    comma = table_bytes(["a", "b"], [[-1.5, 12.0]], decimal_mark=",").decode()
    assert point == f"{BOM}a,b\r\n-1.5,12\r\n"
    assert comma == f"{BOM}a;b\r\n-1,5;12\r\n"


def test_a_spanish_reader_gets_semicolons_and_decimal_commas(stage):
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, language="es")
    stage.write("/export")
    labels = list(stage.screen()[-1].buttons)
    stage.tap(labels[0])
    rows = table(made(stage, documents(stage)[-1]), separator=";")
    assert [row["value"] for row in rows] == ["20", "20", "20"]


def test_the_data_are_valid_by_the_schema_that_goes_along(stage):
    """PUBLISHED: JSON Schema draft 2020-12, checked by the jsonschema library."""
    found = data(stage)
    names = [row.payload["file_name"] for row in documents(stage)]
    assert names == ["holdwell-data.json", "holdwell-schema.schema.json"]
    schema = json.loads(made(stage, documents(stage)[1]))
    Draft202012Validator.check_schema(schema)
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    Draft202012Validator(schema, format_checker=FormatChecker()).validate(found)
    assert found["athlete"]["name"] == "Ines"
    assert [one["value"] for one in found["sessions"][0]["items"][1]["sets"]] == [20, 20, 20]


def test_the_schema_refuses_what_it_should(stage):
    found, schema = data(stage), json.loads(schema_text())
    check = Draft202012Validator(schema)
    assert not check.is_valid({**found, "version": 1})  # CHOSEN: version 2 holds tests, 1 did not
    assert not check.is_valid({**found, "tests": [{"test": "hang"}]})
    assert not check.is_valid({**found, "nickname": "x"})
    assert not check.is_valid({key: one for key, one in found.items() if key != "pain"})


def test_guided_tests_are_in_the_data_each_arm_as_it_ended(tmp_path: Path):
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        assert guided_tests.open_first(turn, stage.person, stage.athlete)
    first_day(stage)
    found, schema = data(stage), json.loads(schema_text())
    Draft202012Validator(schema, format_checker=FormatChecker()).validate(found)
    # CHOSEN: the figures that are tapped; DERIVED: each arm overhead, the others together
    assert [(one["name"], one["side"], one["value"], one["ended"]) for one in found["tests"]] == [
        ("Push-up hold", "both", 57, "done"),
        ("One-arm overhead hold", "left", 38, "done"),
        ("One-arm overhead hold", "right", 38, "done"),
        ("Bar hang", "both", 50, "done"),
    ]
    assert found["tests"][0]["reserve_left"] == 5
    assert {one["on"] for one in found["tests"]} == {MONDAY.isoformat()}
    assert {one["unit"] for one in found["tests"]} == {"s"}


def test_a_test_that_hurt_and_one_left_out_are_in_the_data_as_that(tmp_path: Path):
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        assert guided_tests.open_first(turn, stage.person, stage.athlete)
    begun(stage)
    for ended, pain, why in (("hurt", 4, ""), ("skipped", None, "equipment")):
        attempt(stage, ended=ended, pain=pain, why=why)
    hurt, skipped = data(stage)["tests"]
    assert (hurt["ended"], hurt["value"], hurt["pain"]) == ("hurt", None, 4)
    assert (skipped["ended"], skipped["left_out_because"]) == ("skipped", "equipment")


def attempt(stage: Stage, *, ended: str, pain: int | None, why: str) -> None:
    with stage.turn() as turn:
        (latest,) = first_tests.rounds(turn.tx, stage.person.id)
        first_tests.add_attempt(
            turn.tx, round_id=latest.id, athlete_id=stage.person.id, key="hang", side=Side.BOTH,
            movement_key="bar_hang", measure=Measure.HOLD_S, on=MONDAY, ended=Ended(ended),
            why=why, rung=Rung(), pain=pain, at=stage.now,
        )  # fmt: skip


def test_the_schema_file_says_what_the_values_say():
    assert json.loads(schema_text()) == made_schema()


def test_somebody_who_was_only_invited_has_a_file_without_a_profile(stage):
    stage.add_athlete("Newly", chat_id=31, state=AthleteState.INVITED)
    found = json.loads(take(stage, DATA, chat_id=31))
    assert found["athlete"]["profile"] is None
    Draft202012Validator(json.loads(schema_text())).validate(found)


def test_own_words_are_included_and_the_coachs_notes_are_not(stage):
    stage.write("/note Ines I doubt that she sleeps enough", chat_id=COACH_CHAT)
    told = json.dumps(data(stage), ensure_ascii=False)
    assert "bring a friend on Friday" in told
    assert "sleeps enough" not in told
    assert "coach.note" not in told


def test_a_remark_beside_results_is_among_the_own_words_while_it_is_kept(stage):
    stage.write("1) 20 20 20 quixotically")  # CHOSEN: a word that no rule reads
    assert any("quixotically" in row["words"] for row in table(take(stage, OWN_WORDS)))


def test_crisis_words_and_private_signs_are_in_no_file(stage):
    stage.write(CRISIS)
    with stage.turn() as turn:  # as if a message could not be handled and was kept for the coach
        from storage.queries import care  # noqa: PLC0415

        care.pass_on(turn.tx, athlete_id=stage.person.id, words=CRISIS, at=stage.now)
    archive = zipfile.ZipFile(io.BytesIO(take(stage, ARCHIVE)))
    for name in archive.namelist():
        told = archive.read(name).decode("utf-8", errors="replace").lower()
        if not name.endswith(".pdf") and not name.endswith("schema.json"):
            assert "kill" not in told, name
            assert "self_harm" not in told, name
    to_coach = json.loads(take(stage, DATA, command="/export Ines", chat_id=COACH_CHAT))
    assert "self_harm" not in json.dumps(to_coach)


def test_other_signs_are_in_the_file_since_they_are_the_athletes(stage):
    stage.write("my hand has been numb all day")
    assert any("numb" in str(one["signs"]) for one in data(stage)["pain"])


def calendar(content: bytes) -> list[Any]:
    found = next(vobject.readComponents(content.decode()))
    return list(found.vevent_list)


def test_the_season_is_read_back_by_another_library_with_local_times(stage):
    """PUBLISHED rfc5545, read by vobject: 07:00 stays 07:00 on both sides of 29 March 2026."""
    with stage.turn() as turn:
        profile = stage.athlete.profile.model_copy(
            update={
                "events": (SeasonEvent(on=date(2026, 6, 12), name="Spring meet", is_main=True),),
                "travels": (Travel(first=date(2026, 4, 6), last=date(2026, 4, 9)),),
            }
        )
        people.change_athlete(turn.tx, stage.person.id, profile=profile)
    events = calendar(take(stage, SEASON))
    by_day = {one.dtstart.value: one for one in events}
    before = datetime(2026, 3, 2, 7, tzinfo=MADRID)
    after = datetime(2026, 3, 30, 7, tzinfo=MADRID)
    assert before in by_day
    assert after in by_day  # the instant is right only if the zone's rules came along
    assert by_day[after].dtstart.value.utcoffset() == timedelta(hours=2)
    assert by_day[before].status.value == "CONFIRMED"
    assert by_day[after].status.value == "TENTATIVE"
    assert by_day[before].duration.value == timedelta(minutes=40)
    assert by_day[date(2026, 6, 12)].summary.value == "Event: Spring meet"
    away = by_day[date(2026, 4, 6)]
    assert away.dtend.value == date(2026, 4, 10)  # PUBLISHED rfc5545 3.6.1: the end is not included
    assert len({one.uid.value for one in events}) == len(events)


def test_a_break_is_in_the_calendar_and_no_training_is(stage):
    stage.write("/pause 2 weeks")
    events = calendar(take(stage, SEASON))
    (pause,) = [one for one in events if one.summary.value == "Break from training"]
    assert pause.dtstart.value == MONDAY
    assert pause.dtend.value == MONDAY + timedelta(days=14)
    ahead = [one.dtstart.value for one in events if isinstance(one.dtstart.value, datetime)]
    assert not [at for at in ahead if MONDAY < at.date() < MONDAY + timedelta(days=14)]


def test_the_archive_holds_everything(stage):
    archive = zipfile.ZipFile(io.BytesIO(take(stage, ARCHIVE)))
    assert sorted(archive.namelist()) == [
        "athlete_data.schema.json", "data.json", "handover.pdf", "pain.csv", "results.csv",
        "season.ics", "sessions.csv", "words.csv",
    ]  # fmt: skip
    assert archive.read("handover.pdf").startswith(b"%PDF")


def test_what_waits_in_the_outbox_is_small_and_holds_no_data(stage):
    take(stage, DATA)
    payload = documents(stage)[0].payload
    assert payload["file"] == {
        "kind": "data", "person": stage.person.id, "reader": stage.person.id,
    }  # fmt: skip
    assert len(json.dumps(payload)) < 300


def test_the_page_to_hand_over_is_among_the_athletes_files(stage):
    stage.write("/export")
    stage.tap(PAGE)
    assert documents(stage)[-1].payload["page"]["title"] == "Training and pain: Ines"


def test_a_coach_gets_the_same_of_an_athlete_and_a_table_of_the_team(stage):
    stage.add_athlete("=Robin", chat_id=32)
    rows = table(take(stage, RESULTS, command="/export Ines", chat_id=COACH_CHAT))
    assert len(rows) == 3
    stage.write("/export", chat_id=COACH_CHAT)
    team = table(made(stage, documents(stage)[-1]))
    assert [row["name"] for row in team] == ["'=Robin", "Ines"]
    ines = team[1]
    assert (ines["stage"], ines["sessions_sent_28_days"]) == ("1", "1")
    assert len(stage.audit("data.exported")) == 2


def test_a_practice_athlete_is_nobody_of_the_team(stage):
    stage.add_athlete("Shadow", chat_id=33, is_practice=True)
    stage.write("/export", chat_id=COACH_CHAT)
    assert [row["name"] for row in table(made(stage, documents(stage)[-1]))] == ["Ines"]


def test_another_coach_gets_nothing_by_name_or_by_an_old_button(stage):
    with stage.turn() as turn:
        other = people.add_person(
            turn.tx, name="Otto", now=stage.now, chat_id=77, is_coach=True, zone="UTC"
        )
    assert stage.write("/export Ines", chat_id=77) is Outcome.NOT_UNDERSTOOD
    stage.write("/export Ines", chat_id=COACH_CHAT)
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, coach_id=other.id)
    assert stage.tap(RESULTS, chat_id=COACH_CHAT) is Outcome.STALE_TAP
    assert documents(stage) == []


def test_words_behind_the_athletes_command_are_answered_with_what_to_send(stage):
    assert stage.write("/export everything please") is Outcome.NOT_UNDERSTOOD
    assert stage.last() == "Send just /export. It gives you your own data."


def test_a_red_flag_behind_the_command_comes_first(stage):
    assert stage.write("/export my chest feels tight and my arm tingles") is Outcome.SAFETY
    assert documents(stage) == []


def test_a_file_of_somebody_who_left_meanwhile_is_not_made(stage):
    stage.write("/export Ines", chat_id=COACH_CHAT)
    stage.tap(RESULTS, chat_id=COACH_CHAT)
    (row,) = documents(stage)
    stage.write("/leave")
    stage.tap("Yes, erase everything")
    with pytest.raises(export_files.NothingToSendError):
        made(stage, row)
