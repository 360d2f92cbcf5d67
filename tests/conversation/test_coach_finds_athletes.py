"""Names by a part, the roster, one athlete on a screen; nobody else's athletes, ever."""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from bot.wording.pages import PAGE_UNITS, pieces_of, utf16_units
from scheduler.pain.values import Level
from storage.queries import care, people, training
from storage.records.people import AthleteState
from storage.records.training import SessionState
from tests.conversation.coach_bench import COACH_CHAT, Bench


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


def test_a_part_of_a_name_is_enough_whatever_the_case_or_the_accents(bench: Bench):
    bench.add_athlete("Zoé Müller-Brandt")
    bench.write("/who muller")
    assert "<b>Zoé Müller-Brandt</b> · stage 1" in bench.last()


def test_two_matches_become_buttons_and_the_tap_goes_on_with_the_command(bench: Bench):
    bench.add_athlete("Ana Lark")
    second = bench.add_athlete("Anabel Reed", stage=2)
    assert bench.write("/stage ana 1 careful again") is Outcome.ASKED
    assert bench.labels() == ["Ana Lark · stage 1", "Anabel Reed · stage 2"]
    bench.tap("Anabel Reed")
    assert bench.athlete(second).stage == 1


def test_a_full_name_wins_over_longer_ones(bench: Bench):
    bench.add_athlete("Ana Lark")
    bench.add_athlete("Ana Larkspur")
    assert bench.write("/who Ana Lark") is Outcome.COMMAND


def test_nobody_of_that_name_says_so_with_near_names(bench: Bench):
    bench.add_athlete("Hanna Reed")
    assert bench.write("/who Hana Reid") is Outcome.NOT_UNDERSTOOD
    assert "No athlete of yours is called" in bench.last()
    assert "Hanna Reed" in bench.last()


def test_words_after_a_name_belong_to_the_text_unless_they_are_the_rest_of_the_name(
    bench: Bench,
):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/tell ana lark lark song helps")
    assert bench.last(ana.chat_id).endswith("lark song helps")


def test_another_coachs_athlete_is_found_by_nobody_else(bench: Bench):
    other = bench.add_coach("Otis Vale", chat_id=77)
    theirs = bench.add_athlete("Ivo Stern", coach=other)
    bench.write("/who ivo")
    assert "stage" not in bench.last()
    bench.write(f"/tell {theirs.name} hello")
    assert bench.texts(theirs.chat_id) == []


def test_a_stand_in_may_see_the_athletes_they_stand_in_for(bench: Bench):
    stand_in = bench.add_coach("Otis Vale", chat_id=77)
    bench.add_athlete("Ivo Stern")
    with bench.turn() as turn:
        people.change_person(turn.tx, bench.coach.id, stand_in_id=stand_in.id)
    bench.write("/who ivo", chat_id=77)
    assert "<b>Ivo Stern</b>" in bench.last(77)


def test_a_button_about_an_athlete_who_moved_to_another_coach_changes_nothing(bench: Bench):
    ivo = bench.add_athlete("Ivo Stern")
    other = bench.add_coach("Otis Vale", chat_id=77)
    bench.write("/stage ivo 2 strong")
    with bench.turn() as turn:
        people.change_athlete(turn.tx, ivo.id, coach_id=other.id)
    assert bench.tap("Yes, stage 2") is Outcome.STALE_TAP
    assert bench.athlete(ivo).stage == 1


def test_the_roster_begins_with_who_needs_the_coach_most(bench: Bench):
    bench.add_athlete("Quiet One")
    asks = bench.add_athlete("Asks Much")
    alarmed = bench.add_athlete("Alarm Bell")
    decided = bench.add_athlete("Dee Cision")
    bench.add_athlete("New Comer", state=AthleteState.INVITED, has_chat=False)
    bench.alert(alarmed, level=Level.CLINICIAN)
    with bench.turn() as turn:
        care.pass_on(turn.tx, athlete_id=asks.id, words="may I swim?", at=bench.now)
        care.propose(
            turn.tx, athlete_id=decided.id, kind="stage_up", facts={"stage": 2}, at=bench.now
        )
    bench.write("/roster")
    text = bench.last()
    order = [text.index(name) for name in ("Alarm", "Dee", "Asks", "New Comer", "Quiet")]
    assert order == sorted(order)
    assert "5 athletes, 3 waiting for you." in text
    assert "may I swim?" in text
    assert bench.labels() == ["Alarm Bell", "Dee Cision", "Asks Much"]


def test_three_days_without_a_word_on_a_sent_session_is_silence(bench: Bench):
    mute = bench.add_athlete("Mute Swan")
    with bench.turn() as turn:
        week = training.add_week(
            turn.tx,
            athlete_id=mute.id,
            monday=bench.now.date(),
            stage=1,
            is_lighter=False,
            next_letter="A",
            relaxations=(),
            reasons=(),
            at=bench.now,
        )
        training.add_session(
            turn.tx,
            athlete_id=mute.id,
            week_id=week.id,
            on=bench.now.date(),
            letter="A",
            state=SessionState.MISSED,
            sent_at=bench.now,
        )
    bench.later(days=2, hours=23)
    bench.write("/roster")
    assert "silent for" not in bench.last()
    bench.later(hours=1)  # CHOSEN: three days (CONVERSATION, athlete)
    bench.write("/roster")
    assert "Mute Swan · silent for 3 days" in bench.last()


def test_a_roster_of_sixty_is_split_into_messages_that_the_platform_takes(bench: Bench):
    for number in range(60):
        one = bench.add_athlete(f"Athlete {number:02} with a rather long family name 🏔️🏔️")
        with bench.turn() as turn:
            care.pass_on(turn.tx, athlete_id=one.id, words="🏔️ " * 40, at=bench.now)
    bench.write("/roster")
    texts = bench.texts()
    # PUBLISHED botapi sendMessage: 1-4096 characters after entities parsing, as UTF-16 units
    assert all(utf16_units(text) <= PAGE_UNITS == 4096 for text in texts)
    assert len(texts) > 1
    assert sum(text.count("Athlete ") for text in texts) == 60


def test_one_screen_has_stage_checklist_sets_pain_and_what_changed(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.hurts(ana, 4)
    bench.write("/note ana prefers mornings")
    bench.write("/who ana")
    text = bench.last()
    # DERIVED: 5 January to 2 March are 56 days, 8 whole weeks
    assert "<b>Ana Lark</b> · stage 1, 8 whole weeks in it" in text
    assert "<b>Checklist to stage 2</b>" in text
    assert "met: 8 weeks in the stage, 6 asked." in text
    assert "left wrist 4 of 10 · eased" in text
    assert "Note. “prefers mornings”" in text
    assert bench.labels() == [
        "Write",
        "Plan",
        "Decisions",
        "History",
        "Season",
        "Week's balance",
        "Group",
        "Page to hand over",
    ]


def test_an_empty_roster_shows_how_to_invite(bench: Bench):
    bench.write("/roster")
    assert "/invite" in bench.last()


def test_long_words_are_cut_at_spaces_and_nothing_is_lost():
    text = " ".join(f"word{number}" for number in range(2000))
    pieces = pieces_of(text, most=500)
    assert all(utf16_units(piece) <= 500 for piece in pieces)
    assert " ".join(pieces) == text
    assert "".join(pieces_of("🏔" * 700, most=500)) == "🏔" * 700


def test_help_lists_the_commands_and_says_what_the_bot_is_not(bench: Bench):
    bench.write("/help")
    assert "/roster" in bench.last()
    assert "not medical advice" in bench.last()
    menu = next(row for row in bench.rows(COACH_CHAT) if row.operation == "menu")
    assert ["roster", "who needs you first"] in menu.payload["commands"]


def test_age_of_an_alert_is_told(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.alert(ana)
    bench.now += timedelta(hours=3)
    bench.write("/roster")
    assert "Ana Lark · <b>rested</b>, 3 h ago" in bench.last()


def test_help_of_an_owner_who_coaches_lists_a_command_of_both_desks_once(bench: Bench):
    owner = bench.add_coach("Ola Reed", chat_id=COACH_CHAT + 1, is_owner=True)
    assert owner.chat_id is not None
    bench.write("/help", chat_id=owner.chat_id)
    assert bench.last(owner.chat_id).count("/erase ·") == 1
    assert "/house ·" in bench.last(owner.chat_id)
    assert "/roster ·" in bench.last(owner.chat_id)
