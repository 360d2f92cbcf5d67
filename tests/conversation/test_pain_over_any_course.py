"""Whatever happens after it: what is rested stays out, and an alert stays open (CHOSEN)."""

import tempfile
from datetime import timedelta
from pathlib import Path

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.acts import swap_item
from bot.events import Tapped
from scheduler.pain.values import Level, Side
from storage.database import Database
from storage.queries import people, training
from storage.records.care import AlertState
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage

PLACES = (
    "wrist",
    "elbow outside",
    "elbow inside",
    "front of the shoulder",
    "top of the shoulder",
    "forearm",
    "upper back",
    "neck",
    "chest muscle",
)
FEW = settings(
    max_examples=8, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)


def fresh_stage(number: int) -> Stage:
    """A house of its own; its folder is forgotten with the process."""
    stage = Stage(Path(tempfile.mkdtemp(prefix="holdwell-course-")))
    with stage.turn() as turn:
        people.change_athlete(turn.tx, stage.person.id, stage=number)
    stage.go_to(MONDAY, 7)
    return stage


def trained_against_the_rest(stage: Stage) -> list[str]:
    """Return every movement in a session ahead or out that an arm may not do now."""
    rested = stage.picture().rested
    return [
        item.movement_key
        for session in stage.sessions()
        if session.on >= stage.now.date()
        for item in session.items
        if not item.is_left_out
        and not item.sets
        and set(item.arms or ()) - rested.arms_allowed(stage.movement(item))
    ]


def swap_anything(stage: Stage, choice: int) -> None:
    """Try to swap every item for every movement of the library, whatever the buttons offer."""
    for session in stage.sessions():
        with stage.turn() as turn:
            now = training.session(turn.tx, session.id)
            if not now.is_open:
                continue
            items = [one for one in now.items if one.dose is not None and not one.is_reported]
            keys = sorted(stage.house.library.movements)
            for number, item in enumerate(items):
                about = {
                    "session": session.id,
                    "item": item.id,
                    "to": keys[(choice + 7 * number) % len(keys)],
                }
                tap = Tapped(chat_id=ATHLETE_CHAT, at=stage.now, message_id=None, token="")
                swap_item.to(turn, stage.person, about, tap)


@FEW
@given(
    place=st.sampled_from(PLACES),
    side=st.sampled_from(["left", "right", "both"]),
    number=st.integers(1, 5),
    choice=st.integers(0, 200),
    days=st.integers(1, 8),
)
def test_nothing_rested_is_in_any_session_until_it_is_cleared(place, side, number, choice, days):
    stage = fresh_stage(number)
    stage.write(f"{side} {place} 8/10")
    assert stage.picture().level >= Level.REST
    assert trained_against_the_rest(stage) == []
    swap_anything(stage, choice)
    assert trained_against_the_rest(stage) == []
    stage.write("/stage Ines 3 looks strong", chat_id=COACH_CHAT)
    for day in range(1, days + 1):
        stage.go_to(MONDAY + timedelta(days=day), 9)
        swap_anything(stage, choice + day)
        assert trained_against_the_rest(stage) == []
    assert not stage.picture().rested.is_empty


STEPS = st.lists(
    st.sampled_from(["hours", "outage", "restart", "reports", "results", "blocked", "back"]),
    max_size=6,
)


@FEW
@given(steps=STEPS)
def test_an_alert_stays_open_through_restarts_and_outages_until_a_person_answers(steps):
    stage = fresh_stage(1)
    stage.write("i passed out during the hang")
    for number, step in enumerate(steps):
        if step == "hours":
            stage.go_to(stage.now.date(), min(stage.now.hour + 3, 23))
        elif step == "outage":
            stage.jump_to(stage.now.date() + timedelta(days=1), 8)
        elif step == "restart":
            url = str(stage.database.engine.url)
            stage.database.close()
            stage.database = Database(url, is_throwaway=True)
        elif step == "reports":
            stage.write("left wrist 2/10")
        elif step == "results":
            stage.write("2) 20 20 20")
        else:
            with stage.turn() as turn:
                blocked = step == "blocked"
                people.change_person(turn.tx, stage.coach.id, is_blocked=blocked)
        stage.later(minutes=number)
        stage.strike()
        assert stage.alerts()[0].state is AlertState.OPEN
        assert stage.alerts()[0].tell_at is not None
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.coach.id, is_blocked=False)
    stage.tap("Seen", chat_id=COACH_CHAT)
    assert stage.alerts()[0].state is AlertState.SEEN
    assert stage.picture().level is Level.EMERGENCY


def test_the_sound_side_and_the_other_cells_fill_the_session_that_is_out(tmp_path: Path) -> None:
    stage = Stage.with_first_session(tmp_path)
    before = stage.count()
    stage.write("left wrist 7/10")
    texts = stage.since(before)
    assert any("That spares what you reported: left wrist" in text for text in texts)
    filled = [row.after["movement"] for row in stage.audit("session.refilled")]
    assert filled
    assert any("Instead today:" in text for text in texts)
    rested = stage.picture().rested
    for key in filled:
        movement = stage.house.library.movements[key]
        assert rested.arms_allowed(movement)
        assert Side.RIGHT in rested.arms_allowed(movement)
