"""A round pauses behind each person: what happens meanwhile is seen by who comes next in it."""

from datetime import date, time, timedelta

import pytest

from bot.rounds import tick
from storage.queries import due, people, training
from storage.records.people import AthleteState
from storage.records.training import SessionState
from tests.conversation.athlete_stage import ATHLETE_CHAT, MONDAY, Stage, local

OTHER_CHAT = 2001  # CHOSEN
SECONDS = timedelta(seconds=40)  # CHOSEN: into a long round


@pytest.fixture
def two(tmp_path):
    """A house with Ines and, behind her in every round, Olga; both train at seven."""
    stage = Stage(tmp_path)
    stage.other = stage.add_athlete("Olga", chat_id=OTHER_CHAT)  # type: ignore[attr-defined]
    stage.go_to(MONDAY, 6, 59)
    yield stage
    stage.database.close()


def begin_round(stage):
    stage.now = local(MONDAY, 7, 0)
    return tick.steps(stage.database, lambda: stage.now, stage.make_turn)


def states_of(stage, person):
    with stage.turn() as turn:
        found = training.sessions_between(turn.tx, person.id, first=MONDAY, last=MONDAY)
        return [session.state for session in found]


def test_pain_told_while_a_round_goes_on_is_heard_before_that_person_is_sent_to(two):
    steps = begin_round(two)
    next(steps)
    assert states_of(two, two.person) == [SessionState.SENT]
    two.now += SECONDS
    two.write("my chest hurts and i can't breathe", chat_id=OTHER_CHAT)
    for _ in steps:
        pass
    assert SessionState.SENT not in states_of(two, two.other)


def test_who_leaves_while_a_round_goes_on_is_sent_nothing(two):
    steps = begin_round(two)
    next(steps)
    with two.turn() as turn:
        people.change_athlete(turn.tx, two.other.id, state=AthleteState.LEFT)
    said = two.count(OTHER_CHAT)
    for _ in steps:
        pass
    assert two.count(OTHER_CHAT) == said


def test_a_round_that_was_cut_off_is_done_again_and_does_nothing_twice(two):
    steps = begin_round(two)
    next(steps)
    steps.close()  # as at a crash: the rest of the round never happens
    assert states_of(two, two.other) == [SessionState.PLANNED]
    sent = two.count(ATHLETE_CHAT)
    two.now += SECONDS
    tick.run(two.database, two.now, two.make_turn)
    assert states_of(two, two.other) == [SessionState.SENT]
    assert two.count(ATHLETE_CHAT) == sent


def test_the_next_round_looks_back_to_where_this_one_began(two):
    steps = begin_round(two)
    began_at = two.now
    next(steps)
    two.now += SECONDS
    for _ in steps:
        pass
    with two.turn() as turn:
        assert due.mark(turn.tx, tick.LAST_ROUND) == began_at
    assert (began_at.date(), time(6, 0)) == (
        date(2026, 3, 2),
        began_at.time(),
    )  # DERIVED: 7 in Madrid
