"""Proposals decided by a tap, and the weekly digest."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.acts import send_digest
from bot.outcomes import Outcome
from storage.queries import care, people, training
from storage.records.people import AthleteState, Person
from tests.conversation.coach_bench import Bench
from tests.conversation.done_sessions import did


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


EVEN = {"bar_hang": 20, "wall_hinge_hold": 20}  # as much push as pull


def propose(bench: Bench, person: Person, stage: int = 2) -> None:
    with bench.turn() as turn:
        care.propose(
            turn.tx,
            athlete_id=person.id,
            kind="stage_up",
            facts={"stage": stage, "from_stage": stage - 1, "stage_since": "2026-01-05"},
            at=bench.now,
        )


def digest(bench: Bench) -> None:
    with bench.turn() as turn:
        send_digest.send_digest(turn, bench.coach, date(2026, 3, 9))


def test_a_proposal_whose_checklist_opened_again_is_not_taken_without_asking(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    propose(bench, ana)
    bench.write("/who ana")
    assert bench.tap("Move up") is Outcome.ASKED
    assert "not complete" in bench.last()
    assert bench.athlete(ana).stage == 1
    bench.tap("Yes, stage 2")
    assert bench.athlete(ana).stage == 2
    with bench.turn() as turn:
        assert care.proposals(turn.tx, [ana.id]) == ()


def test_not_yet_answers_the_proposal_and_tells_the_athlete_nothing(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    propose(bench, ana)
    bench.write("/who ana")
    bench.tap("Not yet")
    assert bench.athlete(ana).stage == 1
    assert bench.texts(ana.chat_id) == []
    with bench.turn() as turn:
        assert care.audit_of(turn.tx, ana.id)[0].what == "proposal.declined"
    assert bench.tap("Not yet") is Outcome.STALE_TAP


def test_the_digest_puts_open_alerts_then_decisions_first_and_the_rest_in_one_line(bench: Bench):
    ana, bo, cy = (bench.add_athlete(name) for name in ("Ana Lark", "Bo Finch", "Cy Wren"))
    did(bench, cy.id, date(2026, 3, 4), seconds=EVEN)
    propose(bench, ana)
    bench.alert(bo)
    bench.later(days=7)
    digest(bench)
    lines = bench.last().split("\n")
    assert lines[0].startswith("<b>Mon 2 Mar to Sun 8 Mar</b>")
    assert lines[1:5] == [
        "<b>Alerts</b>",
        "Bo Finch: rested, <b>open</b>",
        "<b>To decide</b>",
        "Ana Lark: Move up to stage 2",
    ]
    assert lines[-1] == "As planned (1): Cy Wren"
    assert bench.labels() == ["Ana Lark → 2", "Not yet"]


def test_who_had_no_session_is_not_as_planned_but_on_a_break_or_about_to_start(bench: Bench):
    names = ("Ana Lark", "Bo Finch", "Cy Wren", "Di Rook", "Ed Coot")
    ana, bo, cy, di, ed = (bench.add_athlete(name, since=date(2026, 3, 6)) for name in names)
    did(bench, ana.id, date(2026, 3, 4), seconds=EVEN)
    did(bench, ed.id, date(2026, 3, 4), seconds=EVEN)
    bench.later(days=7)
    bench.hurts(ed, 7)
    until = date(2026, 3, 20)
    with bench.turn() as turn:
        people.change_athlete(turn.tx, bo.id, state=AthleteState.PAUSED, paused_until=until)
        people.change_athlete(turn.tx, di.id, state=AthleteState.INVITED)
        week_id = training.add_week(
            turn.tx,
            athlete_id=cy.id,
            monday=date(2026, 3, 9),
            stage=1,
            is_lighter=False,
            next_letter="A",
            relaxations=(),
            reasons=(),
            at=turn.now,
        ).id
        on = date(2026, 3, 10)
        training.add_session(turn.tx, athlete_id=cy.id, week_id=week_id, on=on, letter="A")
    digest(bench)
    lines = bench.last().split("\n")
    assert lines[-1] == "As planned (1): Ana Lark"
    at = lines.index("<b>No session this time</b>")
    assert lines[at + 1 : at + 4] == [
        "Bo Finch: on a break until Fri 20 Mar",
        "Di Rook: has not opened the link yet",
        "Cy Wren: starts Tue 10 Mar",
    ]
    assert "Ed Coot: rested" in lines  # what is left out for pain is never as planned
    bench.write("/roster")
    assert "Cy Wren · stage 1 · starts Tue 10 Mar" in bench.last()
    bench.write("/who cy")
    assert "starts Tue 10 Mar" in bench.last()


def test_the_first_message_of_a_digest_has_at_most_25_lines_and_nothing_is_lost(bench: Bench):
    for number in range(40):
        one = bench.add_athlete(f"Athlete {number:02}")
        with bench.turn() as turn:
            care.pass_on(turn.tx, athlete_id=one.id, words="a question", at=bench.now)
    digest(bench)
    first, *more = bench.texts()
    # CHOSEN: 25 lines (CONVERSATION, coach)
    assert len(first.split("\n")) <= 25
    assert sum(text.count("a question") for text in (first, *more)) == 40


def test_stage_changes_and_doses_of_the_week_are_counted_and_older_ones_are_not(bench: Bench):
    ana = bench.add_athlete("Ana Lark", stage=2)
    with bench.turn() as turn:
        for what, days_ago in (("dose.up", 20), ("dose.up", 0), ("dose.kept", 0), ("dose.down", 0)):
            care.write_audit(
                turn.tx, at=bench.now - timedelta(days=days_ago), what=what, athlete_id=ana.id
            )
    bench.write("/stage ana 1 careful again")
    bench.later(days=7)
    digest(bench)
    assert "Ana Lark: 2 → 1" in bench.last()
    assert "Doses: 1 up, 1 kept, 1 down" in bench.last()
