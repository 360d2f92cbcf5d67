"""Days off, breaks, early sessions and swaps: the plan moves and never piles up."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from bot.reading.values import CantReason
from scheduler.pain.values import Level
from scheduler.training.permissions import PermissionFacts, permits
from storage.records.people import AthleteState
from storage.records.training import OffBecause, SessionState
from tests.conversation.athlete_stage import MONDAY, Stage

TUESDAY, WEDNESDAY, FRIDAY = date(2026, 3, 3), date(2026, 3, 4), date(2026, 3, 6)
ALL = "1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage.with_first_session(tmp_path)


@pytest.mark.parametrize(
    ("label", "reason"),
    [
        ("Ill", "ill"),
        ("Travelling", "travelling"),
        ("No time", "no_time"),
        ("No equipment", "no_equipment"),
    ],
)
def test_a_reason_tapped_calls_the_session_off_and_names_the_next(
    stage: Stage, label: str, reason: str
) -> None:
    stage.tap("Can't today")
    assert stage.tap(label) is Outcome.CANT_TODAY
    session = stage.session_on(MONDAY)
    assert session.state is SessionState.CALLED_OFF
    assert session.called_off_because == reason
    assert stage.last().startswith("Called off. Nothing piles up.")
    assert stage.last().endswith("Next session: Wednesday.")


def test_hurting_as_a_reason_asks_where(stage: Stage) -> None:
    stage.tap("Can't today")
    stage.tap("Something hurts")
    assert stage.session_on(MONDAY).state is SessionState.CALLED_OFF
    assert stage.last().startswith("Where does it hurt?")


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("can't today, I'm ill", "ill"),
        ("can't today, travelling", "travelling"),
        ("no time today", "no_time"),
        ("can't today", ""),
        ("can't today, my wrist hurts 5/10", "hurts"),
    ],
)
def test_words_call_it_off_as_well(stage: Stage, text: str, reason: str) -> None:
    assert stage.write(text) in {Outcome.CANT_TODAY, Outcome.ANSWERED}
    session = stage.session_on(MONDAY)
    assert session.state is SessionState.CALLED_OFF
    assert session.called_off_because == reason


def test_a_called_off_session_is_not_made_up_for_on_another_day(stage: Stage) -> None:
    before = {one.on: len(one.items) for one in stage.sessions()}
    stage.write("can't today, no time")
    stage.go_to(FRIDAY, 7)
    assert {one.on: len(one.items) for one in stage.sessions()} == before
    sent = [row for row in stage.rows() if row.kind == "session"]
    assert len(sent) == 3  # CHOSEN: Monday, Wednesday, Friday, one message each


def test_calling_off_keeps_what_was_answered_already(stage: Stage) -> None:
    stage.write("1) 20 20 18")
    stage.write("can't today, no time")
    session = stage.session_on(MONDAY)
    assert session.state is SessionState.TRAINED
    assert session.closed_at is not None


def test_a_coming_day_can_be_called_off_ahead(stage: Stage) -> None:
    stage.write(ALL)
    stage.write("can't on wednesday, travelling")
    assert stage.session_on(WEDNESDAY).state is SessionState.CALLED_OFF
    before = stage.count()
    stage.go_to(WEDNESDAY, 8)
    assert not any("Wednesday, day" in text for text in stage.since(before))


def test_a_day_without_a_session_needs_no_calling_off(stage: Stage) -> None:
    stage.write("can't today, no time")
    stage.go_to(TUESDAY, 9)
    stage.write("can't today, no time")
    assert stage.last().startswith("Nothing is planned for that day")


def test_illness_is_told_about_fever_without_a_promise(stage: Stage) -> None:
    stage.write("can't today, I'm ill")
    assert "no training until you have been clear of it for two days" in stage.last()


def test_a_break_stops_sessions_reminders_and_silence(stage: Stage) -> None:
    stage.write("/pause 2 weeks")
    assert stage.athlete.state is AthleteState.PAUSED
    assert stage.athlete.paused_until == MONDAY + timedelta(days=14)
    assert "A break until Mon 16 Mar." in stage.last()
    before = stage.count(), stage.count(1000)
    stage.go_to(date(2026, 3, 13), 22)
    assert stage.count() == before[0]
    assert not any("three days" in text for text in stage.since(before[1], 1000))


def test_a_break_takes_back_the_session_that_is_out(stage: Stage) -> None:
    stage.write("/pause 1 week")
    assert stage.session_on(MONDAY).state is not SessionState.MISSED
    stage.go_to(TUESDAY, 9)
    assert stage.session_on(MONDAY).state is SessionState.CALLED_OFF


def test_a_break_ends_by_itself_on_its_day_and_training_goes_on(stage: Stage) -> None:
    stage.write("/pause 1 week")
    stage.go_to(date(2026, 3, 9), 7)
    assert stage.athlete.state is AthleteState.TRAINING
    assert stage.session_on(date(2026, 3, 9)).state is SessionState.SENT


def test_a_break_can_be_ended_sooner(stage: Stage) -> None:
    stage.write("/pause 2 weeks")
    stage.go_to(WEDNESDAY, 6)
    stage.write("/pause off")
    assert stage.athlete.state is AthleteState.TRAINING
    stage.go_to(WEDNESDAY, 7)
    assert stage.session_on(WEDNESDAY).state is SessionState.SENT


@pytest.mark.parametrize("text", ["/pause", "/pause 99 weeks", "/pause forever"])
def test_a_break_without_a_length_says_how_to_ask_for_one(stage: Stage, text: str) -> None:
    stage.write(text)
    assert stage.athlete.state is AthleteState.TRAINING
    assert "/pause 10 days" in stage.last()


def test_words_and_pain_are_still_heard_in_a_break(stage: Stage) -> None:
    stage.write("/pause 2 weeks")
    stage.later(hours=2)
    assert stage.write("left wrist 7/10") is Outcome.ANSWERED
    assert stage.picture().level is Level.REST


def test_the_next_session_comes_early_when_asked_for(stage: Stage) -> None:
    stage.write("can't today, no time")
    stage.go_to(TUESDAY, 9)
    stage.write("today's session now")
    assert stage.session_on(TUESDAY).state is SessionState.SENT
    assert stage.last().startswith("<b>Tuesday, day B</b>")


def test_an_early_session_does_not_come_a_second_time(stage: Stage) -> None:
    stage.write("can't today, no time")
    stage.go_to(TUESDAY, 9)
    stage.write("today's session now")
    before = stage.count()
    stage.go_to(WEDNESDAY, 8)
    assert not any("day B" in text for text in stage.since(before))


def test_asking_twice_shows_the_open_session_again_and_sends_no_other(stage: Stage) -> None:
    stage.write("session now")
    assert stage.last().startswith("<b>Monday, day A</b>")
    assert stage.session_on(WEDNESDAY).state is SessionState.PLANNED


def test_a_session_far_ahead_is_not_sent_early(stage: Stage) -> None:
    stage.go_to(FRIDAY, 7)
    stage.write("can't today, I'm ill")
    stage.write("session now")
    assert stage.last().startswith("Nothing")


def test_swap_offers_only_what_stage_and_equipment_allow(stage: Stage) -> None:
    for item in stage.session_on(MONDAY).items:
        stage.tap("Swap one")
        stage.tap(stage.movement(item).name)
        stage.tap("I prefer another")
        names = set(stage.screen()[-1].buttons) - {"Leave it out today"}
        offered = [one for one in stage.house.library.movements.values() if one.name in names]
        assert len(offered) == len(names)
        for movement in offered:
            assert movement.fits(stage.athlete.profile.facts.equipment)
            assert movement.direction is stage.movement(item).direction
            assert permits(
                movement, facts=PermissionFacts(stage=1), rulebook=stage.house.rulebook
            ).value


def test_swap_offers_nothing_that_is_left_out(stage: Stage) -> None:
    stage.write("right elbow outer 7/10")
    rested = stage.picture().rested
    for item in stage.session_on(MONDAY).items:
        if item.is_left_out:
            continue
        stage.tap("Swap one")
        stage.tap(stage.movement(item).name)
        stage.tap("I prefer another")
        for name in set(stage.screen()[-1].buttons) - {"Leave it out today"}:
            movement = next(
                one for one in stage.house.library.movements.values() if one.name == name
            )
            assert rested.arms_allowed(movement)


def test_a_swap_brings_its_own_dose_and_how_to_and_is_written_down(stage: Stage) -> None:
    stage.tap("Swap one")
    stage.tap("Bar hang")
    stage.tap("I prefer another")
    stage.tap("Hang, feet helping")
    item = stage.session_on(MONDAY).items[1]
    assert item.movement_key == "foot_assisted_hang"
    assert item.dose is not None
    assert item.dose.movement_key == "foot_assisted_hang"
    assert stage.last().startswith("2. is now <b>Hang, feet helping</b>")
    assert len(stage.audit("movement.swapped")) == 1


def test_a_swap_that_what_hurts_has_overtaken_is_refused(stage: Stage) -> None:
    stage.tap("Swap one")
    stage.tap("Bar hang")
    stage.tap("I prefer another")
    message, token = stage.button("Hang shrug")
    stage.write("right wrist 8/10")
    assert stage.tap_token(token, message.message_id) is Outcome.STALE_TAP
    assert stage.session_on(MONDAY).items[1].movement_key == "bar_hang"
    assert stage.last().strip()


def test_today_week_and_an_unknown_command_are_answered(stage: Stage) -> None:
    stage.write("/today")
    assert stage.last().startswith("<b>Monday, day A</b>")
    stage.write("/week")
    assert stage.last().count("day ") == 3
    stage.write("/nonsense")
    assert stage.last() == "I do not know that command. Send /help to see what I understand."


def train(stage: Stage) -> None:
    stage.write(ALL)
    for left in ("15", "15", "3", "3"):
        stage.tap(left)
    stage.tap("6")
    stage.tap("Nothing hurt")


def main_sets(stage: Stage, on: date) -> list[int]:
    return [one.dose.sets for one in stage.session_on(on).items if one.pair and one.dose]


def test_after_fourteen_days_off_the_first_session_has_half_the_sets(stage: Stage) -> None:
    train(stage)
    assert main_sets(stage, MONDAY) == [3, 3, 3, 3]
    stage.write("/pause 2 weeks")
    stage.go_to(date(2026, 3, 16), 7)
    # PUBLISHED caterisano2019: 50 % in the first week back; DERIVED: 3 x 0.5 = 1.5, so 1.
    assert main_sets(stage, date(2026, 3, 16)) == [1, 1, 1, 1]


def test_after_healthy_travel_the_first_session_keeps_more(stage: Stage) -> None:
    train(stage)
    stage.go_to(WEDNESDAY, 7)
    stage.write("can't today, travelling")
    stage.write("/pause 12 days")
    stage.go_to(date(2026, 3, 16), 7)
    # CHOSEN: 70 % in the first week back after healthy travel, of each direction's week and
    # rounded down; DERIVED: at most 12 x 0.7 = 8.4, so 8, and more than the 4 of an unknown gap.
    assert 4 < sum(main_sets(stage, date(2026, 3, 16))) <= 8


def test_a_gap_that_grows_long_within_a_week_cuts_the_sets_of_its_days(stage: Stage) -> None:
    stage.write("can't today, no time")
    stage.go_to(WEDNESDAY, 7)
    stage.write("1) 20 20 20")
    stage.go_to(date(2026, 3, 16), 7)
    # CHOSEN: two weeks with half the items missed cut a fifth; DERIVED: 3 sets x 0.8 = 2.4, so 2.
    assert max(main_sets(stage, date(2026, 3, 16))) == 2
    # DERIVED: Monday the 16th is day 12 of the gap, Wednesday the 18th day 14: half of 2 is 1.
    stage.go_to(date(2026, 3, 18), 7)
    assert main_sets(stage, date(2026, 3, 18)) == [1, 1, 1, 1]


def test_the_reason_of_an_old_absence_does_not_outlive_it(stage: Stage) -> None:
    stage.write("can't today, travelling")
    assert stage.athlete.absence_reason == "travelling"
    stage.go_to(WEDNESDAY, 7)
    stage.write("1) 20 20 20")
    assert stage.athlete.absence_reason is None


@pytest.mark.parametrize(
    ("label", "reason"), [("Well, without training", "travelling"), ("I was ill", "ill")]
)
def test_how_a_break_was_is_asked_and_decides_the_return(
    stage: Stage, label: str, reason: str
) -> None:
    train(stage)
    stage.write("/pause 2 weeks")
    stage.go_to(MONDAY + timedelta(days=14), 7)
    assert "How was it?" in "".join(stage.texts()[-3:])
    stage.tap(label)
    assert stage.athlete.absence_reason == reason
    first = max(main_sets(stage, MONDAY + timedelta(days=14)))
    # CHOSEN: 70 % of the sets after a healthy break; PUBLISHED caterisano2019: 50 % after illness.
    assert first <= 2
    assert stage.audit("break.was")[-1].words in {"well", "ill"}


def test_every_reason_of_the_reader_is_one_that_a_session_can_be_called_off_for() -> None:
    assert {reason.value for reason in CantReason} < {reason.value for reason in OffBecause}
