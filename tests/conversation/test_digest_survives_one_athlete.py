"""A fault in one athlete's figures costs the coach no digest: it names who could not be worked out.

The faults are in the data: a dose, or an event of pain, that is stored and cannot be read.
"""

import logging
from datetime import date
from pathlib import Path

import pytest
from sqlalchemy import text

from bot.acts import athlete_week, send_digest
from bot.pictures.values import PICTURE, TeamPicture
from storage.queries import people
from storage.records.people import Person
from tests.conversation.coach_bench import COACH_CHAT, Bench
from tests.conversation.done_sessions import did

ON = date(2026, 3, 9)
OWNER_CHAT = 4000  # CHOSEN
NAMED = "Ana Lark: the week's figures. Whoever runs me is told."


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    """A house with two athletes who trained, and one who owns it."""
    bench = Bench(tmp_path)
    for name in ("Ana Lark", "Bea Wren"):
        person = bench.add_athlete(name)
        did(bench, person.id, date(2026, 3, 4), seconds={"bar_hang": 20, "wall_hinge_hold": 30})
    with bench.turn() as turn:
        people.add_person(
            turn.tx, name="Ada", now=bench.now, chat_id=OWNER_CHAT, is_owner=True, zone="UTC"
        )
    bench.later(days=7)
    return bench


def spoil_dose(bench: Bench, person: Person) -> None:
    with bench.database.transaction() as tx:
        tx.execute(
            text(
                'UPDATE item SET dose = \'{"sets": "no number"}\' WHERE session_id IN '
                "(SELECT id FROM session WHERE athlete_id = :id)"
            ),
            {"id": person.id},
        )


def spoil_pain(bench: Bench, person: Person) -> None:
    bench.hurts(person, 4)
    with bench.database.transaction() as tx:
        tx.execute(
            text("UPDATE pain_event SET event = '{}' WHERE athlete_id = :id"), {"id": person.id}
        )


def ana(bench: Bench) -> Person:
    with bench.turn() as turn:
        return next(
            person
            for person, _ in people.athletes_of(turn.tx, bench.coach.id)
            if person.name == "Ana Lark"
        )


def digest(bench: Bench, gathered: athlete_week.Gathered = athlete_week.NOTHING) -> None:
    with bench.turn() as turn:
        send_digest.send_digest(turn, bench.coach, ON, gathered)


def team(bench: Bench) -> TeamPicture:
    (row,) = [one for one in bench.rows(COACH_CHAT) if one.operation == "photo"]
    shown = PICTURE.validate_python(row.payload["picture"])
    assert isinstance(shown, TeamPicture)
    return shown


@pytest.mark.parametrize("spoil", [spoil_dose, spoil_pain])
def test_who_could_not_be_worked_out_is_named_and_the_others_are_told_of(
    bench: Bench, spoil, caplog
):
    spoil(bench, ana(bench))
    with caplog.at_level(logging.ERROR):
        digest(bench)
    first = bench.texts(COACH_CHAT)[0]
    assert "<b>Could not be worked out</b>" in first
    assert NAMED in first
    planned = first.split("\n")[-1]
    assert "Bea Wren" in planned
    assert "Ana Lark" not in planned
    assert f"P{ana(bench).id}-week:" in caplog.text


def test_every_owner_is_told_whose_week_it_was(bench: Bench):
    spoil_dose(bench, ana(bench))
    digest(bench)
    (told,) = bench.texts(OWNER_CHAT)
    assert "could not be worked out for Ana Lark" in told
    assert "Mara Quill" in told


def test_a_level_that_cannot_be_known_is_shown_as_unknown_and_never_as_no_pain(bench: Bench):
    spoil_pain(bench, ana(bench))
    digest(bench)
    (row,) = team(bench).looks
    assert (row.name, row.level, row.level_word) == ("Ana Lark", "unknown", "not worked out")


def test_the_level_is_still_shown_where_only_the_figures_failed(bench: Bench):
    bench.hurts(ana(bench), 4)
    spoil_dose(bench, ana(bench))
    digest(bench)
    (row,) = team(bench).looks
    assert (row.name, row.level) == ("Ana Lark", "ease")


def test_what_is_gathered_before_goes_on_behind_a_fault_too(bench: Bench):
    spoil_pain(bench, ana(bench))
    steps = athlete_week.gather(bench.turn, bench.coach.id, ON)
    while True:
        try:
            next(steps)
        except StopIteration as end:
            gathered = end.value
            break
    assert [week.is_known for week in gathered.weeks.values()] == [False, True]
    digest(bench, gathered)
    assert NAMED in bench.texts(COACH_CHAT)[0]


def test_nobody_is_told_of_a_fault_where_there_is_none(bench: Bench):
    digest(bench)
    assert "worked out" not in "\n".join(bench.texts(COACH_CHAT))
    assert bench.texts(OWNER_CHAT) == []
