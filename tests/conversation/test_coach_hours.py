"""A coach's waking hours and the digest's day and hour: set by a line and by taps, and in force."""

from datetime import UTC, date, datetime, time
from pathlib import Path

import pytest

from bot.outcomes import Outcome
from storage.queries import people
from storage.records.people import Person
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def _coach(stage: Stage) -> Person:
    with stage.turn() as turn:
        return people.person(turn.tx, stage.coach.id)


def _write(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=COACH_CHAT)


@pytest.mark.parametrize(
    "text",
    ["6:30-21:00", "6.30 to 21", "from 6:30 am until 9 pm", "desde 6h30 hasta 21:00"],
)
def test_two_times_are_the_waking_hours(stage: Stage, text: str):
    assert _write(stage, f"/hours {text}") is Outcome.COMMAND
    coach = _coach(stage)
    assert (coach.waking_from, coach.waking_until) == (time(6, 30), time(21, 0))
    assert "Up: 06:30 to 21:00" in stage.last(COACH_CHAT)
    (entry,) = stage.audit("coach.hours")
    assert entry.before == {"waking_from": "07:00:00", "waking_until": "22:00:00"}


@pytest.mark.parametrize(
    ("text", "weekday", "at"),
    [
        ("sunday 18:00", 6, time(18)),
        ("digest sun 18", 6, time(18)),
        ("miércoles 9:15", 2, time(9, 15)),
        ("digest 20:00", 5, time(20)),
        ("friday", 4, time(7)),
    ],
)
def test_a_day_a_time_or_both_are_the_digests(stage: Stage, text: str, weekday: int, at: time):
    _write(stage, f"/hours {text}")
    coach = _coach(stage)
    assert (coach.digest_weekday, coach.digest_at) == (weekday, at)


@pytest.mark.parametrize("text", ["later", "7", "25:00-26:00", "mon tue 7", "7 8 9"])
def test_what_is_no_hour_is_refused_with_an_example(stage: Stage, text: str):
    assert _write(stage, f"/hours {text}") is Outcome.NOT_UNDERSTOOD
    assert "/hours 7:00-22:00" in stage.last(COACH_CHAT)
    assert _coach(stage).waking_from == time(7)


def test_so_few_hours_that_alerts_would_wait_are_refused(stage: Stage):
    assert _write(stage, "/hours 7:00-9:00") is Outcome.NOT_UNDERSTOOD
    assert "at least 4 hours" in stage.last(COACH_CHAT)
    assert _write(stage, "/hours 7:00-7:00") is Outcome.COMMAND
    assert "Up: at any hour" in stage.last(COACH_CHAT)


def test_taps_move_one_card_in_place(stage: Stage):
    _write(stage, "/hours")
    before = len(stage.screen(COACH_CHAT))
    stage.tap("Digest day", chat_id=COACH_CHAT)
    stage.tap("Wednesday", chat_id=COACH_CHAT)
    stage.tap("Up until", chat_id=COACH_CHAT)
    stage.tap("23:00", chat_id=COACH_CHAT)
    stage.tap("Digest hour", chat_id=COACH_CHAT)
    stage.tap("Back", chat_id=COACH_CHAT)
    coach = _coach(stage)
    assert (coach.digest_weekday, coach.waking_until) == (2, time(23))
    assert len(stage.screen(COACH_CHAT)) == before
    assert "Digest: Wednesday 07:00" in stage.screen(COACH_CHAT)[-1].text


def _digests(stage: Stage) -> int:
    return sum(row.kind == "digest" for row in stage.rows(COACH_CHAT))


def test_the_digest_comes_at_the_new_hour_and_none_at_once(stage: Stage):
    stage.go_to(date(2026, 3, 4), 12)
    _write(stage, "/hours monday 8:00")  # this week's Monday is over
    assert "next Mon 9 Mar, 08:00" in stage.last(COACH_CHAT)
    stage.go_to(date(2026, 3, 8), 23)
    assert _digests(stage) == 0
    stage.go_to(date(2026, 3, 9), 8, 1)
    assert _digests(stage) >= 1


def _digest_heads(stage: Stage) -> list[str]:
    rows = [row for row in stage.rows(COACH_CHAT) if row.kind == "digest"]
    return [
        row.payload["text"].split("\n")[0]
        for row in rows
        if row.payload.get("text", "").startswith("<b>") and " to " in row.payload["text"]
    ]


def test_a_moved_digest_tells_every_day_once_and_leaves_no_coach_waiting(stage: Stage):
    stage.go_to(date(2026, 3, 8), 12)  # Saturday's digest was there yesterday
    _write(stage, "/hours thursday 18:00")
    assert "next Thu 12 Mar, 18:00" in stage.last(COACH_CHAT)
    stage.go_to(date(2026, 3, 13), 20)
    _write(stage, "/hours monday 8:00")
    stage.go_to(date(2026, 3, 17), 9)
    spans = [head.split("</b>")[0] for head in _digest_heads(stage)]
    # DERIVED: 7 March, five days to the Thursday, four to the Monday
    assert spans[-3:] == [
        "<b>Sat 28 Feb to Fri 6 Mar",
        "<b>Sat 7 Mar to Wed 11 Mar",
        "<b>Thu 12 Mar to Sun 15 Mar",
    ]


def test_an_alert_that_waits_for_the_morning_comes_as_soon_as_the_new_hours_allow(stage: Stage):
    stage.go_to(MONDAY, 23, 0)
    stage.write("wrist 7/10", chat_id=2000)
    assert [alert.times_told for alert in stage.alerts()] == [0]
    _write(stage, "/hours 6:00-0:00")
    (alert,) = stage.alerts()
    assert alert.tell_at is not None
    assert alert.tell_at <= datetime(2026, 3, 2, 22, 0, tzinfo=UTC)
