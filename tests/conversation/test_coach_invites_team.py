"""A team by file: checked, shown, confirmed by a tap, links one a line, bests for first doses."""

from datetime import date
from pathlib import Path

import pytest

from bot.acts.dose_today import dose_for
from bot.acts.take_file import TABLE_KB_MOST
from bot.events import FileArrived, Media, SentFile, SentMedia
from bot.outcomes import Outcome
from scheduler.catalogue.values import Role
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Best, Quality, Rung
from storage.queries import care, people
from storage.records.people import Athlete, AthleteState, Person
from storage.records.training import ItemRecord
from tests.conversation.coach_bench import COACH_CHAT, PROFILE, Bench
from tests.conversation.newcomers import Town
from tests.conversation.test_intake_whole import BY_BUTTONS, PHONE

FILE = (
    "name;stage;group;Push-up hold;Farmer carry\nRobin Field;2;Juniors;45;60 @ 12\nAlex Moor;;;;\n"
)


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


def handle(bench: Bench, event: SentMedia | FileArrived) -> Outcome:
    return bench._handle(event)


def send(bench: Bench, name: str, *, size_bytes: int = 100, chat_id: int = COACH_CHAT) -> Outcome:
    return handle(
        bench,
        SentMedia(
            chat_id=chat_id,
            at=bench.now,
            message_id=900,
            media=Media.DOCUMENT,
            file=SentFile(file_id="f1", name=name, size_bytes=size_bytes),
        ),
    )


def arrive(bench: Bench, content: str | bytes | None, fault: str = "") -> Outcome:
    raw = content.encode() if isinstance(content, str) else content
    return handle(
        bench,
        FileArrived(
            chat_id=COACH_CHAT,
            at=bench.now,
            purpose="invite_team",
            name="team.csv",
            content=raw,
            fault=fault,
        ),
    )


def team(bench: Bench) -> dict[str, tuple[Person, Athlete]]:
    with bench.turn() as turn:
        return {one.name: (one, two) for one, two in people.athletes_of(turn.tx, bench.coach.id)}


def test_a_table_is_fetched_and_nothing_else_is_answered(bench: Bench):
    assert send(bench, "Team March.CSV") is Outcome.COMMAND
    (row,) = bench.rows()
    assert row.operation == "fetch"
    assert row.payload["file_id"] == "f1"


def test_another_kind_of_file_is_answered_with_what_is_read(bench: Bench):
    assert send(bench, "plan.xlsx") is Outcome.NOT_UNDERSTOOD
    assert "“plan.xlsx”" in bench.last()
    assert "CSV" in bench.last()
    assert [row.operation for row in bench.rows()] == ["send"]


def test_a_file_that_is_too_big_is_not_fetched(bench: Bench):
    assert send(bench, "t.csv", size_bytes=1000 * TABLE_KB_MOST + 1) is Outcome.NOT_UNDERSTOOD
    assert "at most 200 kB" in bench.last()
    arrive(bench, None, "too_big")
    assert "at most 200 kB" in bench.last()
    arrive(bench, None, "not_there")
    assert "send it once more" in bench.last()


def test_the_preview_shows_each_line_and_invites_nobody_yet(bench: Bench):
    assert arrive(bench, FILE) is Outcome.ASKED
    lines = bench.last().split("\n")
    assert lines[0] == "<b>2 athletes to invite</b>"
    assert lines[1].startswith("Robin Field · stage 2 · Juniors · Push-up hold 45 s")
    assert "12 kg" in lines[1]
    assert lines[2] == "Alex Moor · stage 1"
    assert team(bench) == {}


def test_the_tap_makes_athletes_with_what_was_told_and_a_link_in_each_line(bench: Bench):
    arrive(bench, FILE)
    bench.tap("Invite 2")
    lines = bench.last().split("\n")
    assert lines[0].startswith("<b>2 personal links</b>")
    assert [line.partition(": ")[0] for line in lines[1:]] == ["Robin Field", "Alex Moor"]
    assert all("?start=" in line for line in lines[1:])
    person, athlete = team(bench)["Robin Field"]
    assert (athlete.stage, athlete.group_name) == (2, "Juniors")
    assert athlete.profile.told_bests == {
        "push_up_hold": Best(value=45),
        "farmer_carry": Best(value=60, rung=Rung(load_kg=12)),
    }
    with bench.turn() as turn:
        entry = care.audit_of(turn.tx, person.id, what=("athlete.told_by_file",))[0]
        assert (entry.actor_id, entry.after["stage"]) == (bench.coach.id, 2)


def test_a_second_tap_invites_nobody_twice(bench: Bench):
    arrive(bench, FILE)
    bench.tap("Invite 2")
    assert bench.tap("Invite 2") is Outcome.STALE_TAP
    assert len(team(bench)) == 2


def test_wrong_lines_are_named_with_their_number_and_the_right_ones_can_be_invited(bench: Bench):
    bench.add_athlete("Ana Lark")
    arrive(bench, "name,stage\nRobin Field,7\nAna Lark,1\nAlex Moor,2\n")
    text = bench.last()
    assert "line 2: stage “7”, expected 1 to 5." in text
    assert "line 3: Ana Lark is on your roster already." in text
    bench.tap("Invite 1")
    assert set(team(bench)) == {"Ana Lark", "Alex Moor"}


def test_a_file_without_a_right_line_shows_an_example_and_no_button(bench: Bench):
    assert arrive(bench, b"PK\x03\x04 a workbook") is Outcome.NOT_UNDERSTOOD
    assert "Save it as CSV" in bench.last()
    assert "name;stage;group" in bench.last()
    assert bench.labels() == []


def test_not_now_invites_nobody(bench: Bench):
    arrive(bench, FILE)
    bench.tap("Not now")
    assert team(bench) == {}


def test_who_came_onto_the_roster_meanwhile_is_not_invited_again(bench: Bench):
    arrive(bench, FILE)
    bench.add_athlete("Robin Field")
    bench.tap("Invite 2")
    assert "On your roster already, not invited again: Robin Field." in bench.last()
    assert len(team(bench)) == 2


def test_an_athletes_file_is_passed_on_and_not_read(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    assert ana.chat_id is not None
    assert send(bench, "team.csv", chat_id=ana.chat_id) is Outcome.PASSED_ON
    assert not any(row.operation == "fetch" for row in bench.rows(ana.chat_id))


def _first_dose(bench: Bench, person: Person, *, weeks_ago: int) -> tuple[int, set[str]]:
    """Return the first dose of the push-up hold and why, so many weeks into the training."""
    movement = bench.house.library.movements["push_up_hold"]
    with bench.turn() as turn:
        athlete = people.change_athlete(turn.tx, person.id, started_on=date(2026, 3, 2))
        item = ItemRecord(
            id=1,
            position=1,
            pair=1,
            direction=movement.direction,
            role=Role.MAIN,
            movement_key=movement.key,
            quality=Quality.MUSCULAR_ENDURANCE,
            planned_sets=3,
            dose=None,
            reasons=(),
            arms=(),
            reserve=None,
            is_reserve_asked=False,
            is_skipped=False,
            is_left_out=False,
            sets=(),
        )
        on = date(2026, 3, 2 + 7 * weeks_ago)
        decision = dose_for(turn, person, athlete, item, on=on)
    return decision.value.target, {str(one.code) for one in decision.reasons}


def test_a_told_best_makes_the_first_dose_until_something_was_done(bench: Bench):
    robin = bench.add_athlete("Robin Field")
    untold, _ = _first_dose(bench, robin, weeks_ago=0)
    with bench.turn() as turn:
        told = {"push_up_hold": Best(value=60)}
        profile = PROFILE.model_copy(update={"told_bests": told})
        people.change_athlete(turn.tx, robin.id, profile=profile)
    early, why = _first_dose(bench, robin, weeks_ago=0)
    assert DoseReason.FIRST_FROM_BEST in why
    # COMMON PRACTICE: half of a tested best in the first two weeks. DERIVED: 60 s / 2 = 30 s.
    assert early == 30
    assert early != untold


def test_the_intakes_answers_do_not_wash_away_what_the_coach_told(tmp_path: Path):
    town = Town(tmp_path)
    person, secret = town.invite("Robin Field")
    told = {"push_up_hold": Best(value=60)}
    with town.turn() as turn:
        profile = town.athlete(person).profile.model_copy(update={"told_bests": told})
        people.change_athlete(turn.tx, person.id, profile=profile, stage=2)
    town.write(PHONE, f"/start {secret}")
    for label in ("I agree", *BY_BUTTONS, "Looks right"):
        town.press(PHONE, label)
    athlete = town.athlete(person)
    assert athlete.state is AthleteState.TRAINING
    assert athlete.stage == 2
    assert athlete.profile.told_bests == told
