"""Groups of a coach's athletes: by command and by button, on the roster, and in round letters."""

from pathlib import Path

import pytest

from bot.events import Tapped
from bot.outcomes import Outcome
from storage.queries import care, people
from tests.conversation.coach_bench import COACH_CHAT, Bench


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


def test_a_group_is_set_by_command_recorded_and_put_back(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    assert bench.write("/group ana Juniors") is Outcome.COMMAND
    assert bench.athlete(ana).group_name == "Juniors"
    assert bench.last() == "Ana Lark is in Juniors now."
    with bench.turn() as turn:
        entry = care.audit_of(turn.tx, ana.id)[0]
        assert (entry.what, entry.actor_id) == ("group.changed", bench.coach.id)
        assert (entry.before, entry.after) == ({"group": ""}, {"group": "Juniors"})
    bench.tap("Put back")
    assert bench.athlete(ana).group_name is None
    assert bench.texts(ana.chat_id) == []


def test_a_group_that_is_there_keeps_its_own_spelling(bench: Bench):
    ana, bo = bench.add_athlete("Ana Lark"), bench.add_athlete("Bo Finch")
    bench.write("/group ana Juniors")
    bench.write("/group bo JUNIORS")
    assert bench.athlete(bo).group_name == bench.athlete(ana).group_name == "Juniors"


def test_a_group_is_chosen_by_button_or_written_anew_from_the_screen(bench: Bench):
    ana, bo = bench.add_athlete("Ana Lark"), bench.add_athlete("Bo Finch")
    bench.write("/group ana Juniors")
    bench.write("/who bo")
    bench.tap("Group")
    assert bench.labels() == ["Juniors", "New group"]
    bench.tap("Juniors")
    assert bench.athlete(bo).group_name == "Juniors"
    bench.write("/who bo")
    bench.tap("Group")
    assert bench.labels() == ["New group", "No group"]
    bench.tap("New group")
    bench.write("Early birds")
    assert bench.athlete(bo).group_name == "Early birds"
    bench.write("/group bo none")
    assert bench.athlete(bo).group_name is None
    assert bench.athlete(ana).group_name == "Juniors"


@pytest.mark.parametrize("name", ["all", "x" * 31, "/who"])
def test_a_name_that_no_group_can_have_is_refused_with_an_example(bench: Bench, name: str):
    ana = bench.add_athlete("Ana Lark")
    assert bench.write(f"/group ana {name}") is Outcome.NOT_UNDERSTOOD
    assert "/group Robin Juniors" in bench.last()
    assert bench.athlete(ana).group_name is None


def test_the_roster_shows_who_needs_nothing_in_groups_and_one_group_alone(bench: Bench):
    for name, group in (("Ana Lark", "Juniors"), ("Bo Finch", "Adults"), ("Cy Wren", "")):
        bench.add_athlete(name)
        if group:
            bench.write(f"/group {name} {group}")
    bench.write("/roster")
    lines = bench.last().split("\n")
    order = ["<i>Adults</i> · 1", "<i>Juniors</i> · 1", "<i>No group</i> · 1"]
    assert [line for line in lines if line.startswith("<i>")] == order
    assert bench.labels() == ["Adults", "Juniors"]
    bench.write("/roster juniors")
    assert "Ana Lark" in bench.last()
    assert "Bo Finch" not in bench.last()
    bench.tap("Adults")
    assert "Bo Finch" in bench.last()
    assert bench.write("/roster Seniors") is Outcome.NOT_UNDERSTOOD
    assert "Adults, Juniors" in bench.last()


def test_a_text_to_all_is_shown_with_the_count_and_sent_only_by_a_tap(bench: Bench):
    ana, bo = bench.add_athlete("Ana Lark"), bench.add_athlete("Bo Finch")
    bench.add_athlete("Cy Wren", has_chat=False)
    other = bench.add_coach("Otis Vale", chat_id=77)
    theirs = bench.add_athlete("Ivo Stern", coach=other)
    assert bench.write("/tell all No hall on Friday.") is Outcome.ASKED
    assert bench.last().startswith("To everybody, 2 athletes:\n“No hall on Friday.”")
    assert "Cannot be reached: Cy Wren." in bench.last()
    assert bench.texts(ana.chat_id) == []
    assert bench.tap("Send to 2") is Outcome.PASSED_ON
    for person in (ana, bo):
        assert bench.texts(person.chat_id) == ["<b>Mara Quill</b>:\nNo hall on Friday."]
    assert bench.texts(theirs.chat_id) == []
    assert "Sent to 2 athletes" in bench.last()
    assert "Cannot be reached: Cy Wren." in bench.last()
    with bench.turn() as turn:
        assert care.audit_of(turn.tx, ana.id)[0].what == "coach.told_many"


def test_a_second_tap_sends_nothing_twice(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/tell all Hello.")
    (row,) = [one for one in bench.rows() if "Hello" in one.payload["text"]]
    token = row.payload["buttons"][0][0][1]
    tap = Tapped(chat_id=COACH_CHAT, at=bench.now, message_id=row.id, token=token)
    assert bench._handle(tap) is Outcome.PASSED_ON
    assert bench._handle(tap) is Outcome.STALE_TAP
    assert len(bench.texts(ana.chat_id)) == 1


def test_a_text_to_a_group_goes_to_that_group_alone(bench: Bench):
    ana, bo = bench.add_athlete("Ana Lark"), bench.add_athlete("Bo Finch")
    bench.write("/group ana Early birds")
    bench.write("/tell early birds Half past six on Monday.")
    assert "To Early birds, 1 athlete" in bench.last()
    bench.tap("Send to 1")
    assert bench.last(ana.chat_id).endswith("Half past six on Monday.")
    assert bench.texts(bo.chat_id) == []


def test_who_left_the_coach_since_the_question_gets_nothing(bench: Bench):
    ana, bo = bench.add_athlete("Ana Lark"), bench.add_athlete("Bo Finch")
    other = bench.add_coach("Otis Vale", chat_id=77)
    bench.write("/tell all Hello.")
    with bench.turn() as turn:
        people.change_athlete(turn.tx, bo.id, coach_id=other.id)
    bench.tap("Send to 2")
    assert len(bench.texts(ana.chat_id)) == 1
    assert bench.texts(bo.chat_id) == []


def test_a_round_letter_answers_nobodys_question(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    with bench.turn() as turn:
        care.pass_on(turn.tx, athlete_id=ana.id, words="may I run?", at=bench.now)
    bench.write("/tell all Hello.")
    bench.tap("Send to 1")
    with bench.turn() as turn:
        assert [one.words for one in care.unanswered(turn.tx, [ana.id])] == ["may I run?"]


def test_a_text_to_all_without_words_says_what_is_missing(bench: Bench):
    bench.add_athlete("Ana Lark")
    assert bench.write("/tell all") is Outcome.NOT_UNDERSTOOD
    assert "/tell all No training hall" in bench.last()
    bench.write("/tell all Hello.")
    bench.tap("Not now")
    assert bench.last() == "All right, nothing is sent."
