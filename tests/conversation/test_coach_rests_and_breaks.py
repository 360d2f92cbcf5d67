"""/rest and /pause by the coach: by words, by taps, told, taken back while they can be."""

from datetime import date, time, timedelta
from pathlib import Path

import pytest

from bot.acts.place_words import place_named
from bot.outcomes import Outcome
from scheduler.pain.values import Level, Side, Site
from storage.queries import people
from storage.records.people import AthleteState
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, PROFILE, Stage


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    found = Stage(tmp_path)
    found.go_to(MONDAY, 8)
    return found


def _say(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=COACH_CHAT)


def _tap(stage: Stage, label: str) -> Outcome:
    return stage.tap(label, chat_id=COACH_CHAT)


def _seen(stage: Stage) -> str:
    return stage.last(COACH_CHAT)


def _level(stage: Stage, site: Site, arm: Side) -> Level:
    found = stage.picture().region(site, arm)
    return found.level if found is not None else Level.NONE


def test_a_rested_place_leaves_out_what_loads_it_today_and_later_and_the_athlete_is_told(
    stage: Stage,
):
    assert _say(stage, "/rest ines left wrist sore after the fall") is Outcome.COMMAND
    rested = stage.picture().rested
    assert not rested.is_empty
    for session in stage.sessions():
        for item in session.items:
            if not item.is_left_out:
                assert frozenset(item.arms) <= rested.arms_allowed(stage.movement(item))
    told = "\n".join(stage.texts())
    assert "Mara rests one place of yours: left wrist" in told
    assert "Only Mara can bring it back" in told
    assert "From today's session, leave out" in told
    (entry,) = stage.audit("pain.rested_by_coach")
    assert (entry.actor_id, entry.words) == (stage.coach.id, "sore after the fall")


def test_no_alert_is_raised_to_the_coach_who_rested_it(stage: Stage):
    _say(stage, "/rest ines left wrist sore after the fall")
    assert stage.alerts() == []


def test_only_a_clearing_ends_it_and_the_way_back_is_careful(stage: Stage):
    _say(stage, "/rest ines left wrist sore after the fall")
    stage.go_to(MONDAY + timedelta(days=5), 8)
    assert _level(stage, Site.WRIST, Side.LEFT) is Level.REST
    _say(stage, "/clear ines moves freely again")
    assert _level(stage, Site.WRIST, Side.LEFT) is Level.NONE
    # CHOSEN (SAFETY): after rest 70 % of the sets for two sessions
    (back,) = stage.picture().returns
    assert (back.share_of_sets, back.sessions_left) == (0.7, 2)


def test_what_is_missing_is_asked_by_buttons(stage: Stage):
    assert _say(stage, "/rest ines") is Outcome.ASKED
    _tap(stage, "Outside of the elbow")
    _tap(stage, "Right")
    assert "Why? Tap" in _seen(stage)
    _say(stage, "came back from the climbing hall with it")
    assert _level(stage, Site.ELBOW_OUTER, Side.RIGHT) is Level.REST
    assert _level(stage, Site.ELBOW_OUTER, Side.LEFT) is Level.NONE
    (entry,) = stage.audit("pain.rested_by_coach")
    assert entry.words == "came back from the climbing hall with it"


def test_a_word_for_several_places_is_asked_about(stage: Stage):
    assert _say(stage, "/rest ines right elbow hurts on rows") is Outcome.ASKED
    assert list(stage.screen(COACH_CHAT)[-1].buttons) == [
        "Outside of the elbow",
        "Inside of the elbow",
        "Back of the elbow",
    ]
    _tap(stage, "Inside of the elbow")
    assert _level(stage, Site.ELBOW_INNER, Side.RIGHT) is Level.REST


def test_a_place_off_the_list_stops_everything_only_after_a_second_yes(stage: Stage):
    assert _say(stage, "/rest ines knee twisted") is Outcome.ASKED
    assert "all training of Ines would wait" in _seen(stage)
    _tap(stage, "No, leave it")
    assert stage.picture().rested.is_empty
    _say(stage, "/rest ines knee twisted")
    _tap(stage, "Yes, all the same")
    assert stage.picture().rested.everything


def test_words_without_a_place_change_nothing(stage: Stage):
    assert _say(stage, "/rest ines because I say so") is Outcome.ASKED
    assert "I do not know that place" in _seen(stage)
    assert stage.picture().rested.is_empty


def test_a_resting_is_taken_back_while_nothing_was_said_since(stage: Stage):
    _say(stage, "/rest ines left wrist a slip of mine")
    _tap(stage, "Take back")
    assert _level(stage, Site.WRIST, Side.LEFT) is Level.NONE
    assert len(stage.audit("pain.rest_taken_back")) == 1
    assert "comes back into your sessions" in stage.last()
    assert _tap(stage, "Take back") is Outcome.STALE_TAP


def test_a_resting_is_not_taken_back_once_pain_was_told_of(stage: Stage):
    _say(stage, "/rest ines left wrist a slip of mine")
    stage.write("left wrist 7/10")
    assert _tap_taking_back(stage) is Outcome.STALE_TAP
    assert _level(stage, Site.WRIST, Side.LEFT) is Level.REST


def _tap_taking_back(stage: Stage) -> Outcome:
    return _tap(stage, "Take back")


def test_what_pain_has_rested_before_is_never_offered_to_be_taken_back(stage: Stage):
    stage.write("left wrist 7/10")
    _say(stage, "/rest ines both wrists to be sure")
    assert _level(stage, Site.WRIST, Side.RIGHT) is Level.REST
    assert "Take back" not in stage.screen(COACH_CHAT)[-1].buttons
    _say(stage, "/rest ines left wrist once more")
    assert "left out already" in _seen(stage)


@pytest.mark.parametrize(
    ("text", "sites", "side", "rest"),
    [
        ("left wrist sore", (Site.WRIST,), Side.LEFT, "sore"),
        ("wrist, right: fell on it", (Site.WRIST,), Side.RIGHT, "fell on it"),
        ("wrists both sore", (Site.WRIST,), Side.BOTH, "sore"),
        ("outer elbow left again", (Site.ELBOW_OUTER,), Side.LEFT, "again"),
        ("front of the right shoulder", (Site.SHOULDER_FRONT,), Side.RIGHT, ""),
        ("neck stiff", (Site.NECK,), Side.BOTH, "stiff"),
        ("upper back both sides tired", (Site.UPPER_BACK,), Side.BOTH, "tired"),
        ("muñeca izquierda le duele", (Site.WRIST,), Side.LEFT, "le duele"),
        ("wrist back from the hall", (Site.WRIST,), None, "back from the hall"),
        ("wrist the left one she says", (Site.WRIST,), Side.LEFT, "one she says"),
        ("nothing much", (), None, "nothing much"),
    ],
)
def test_places_and_sides_are_read_from_the_first_words(
    text: str, sites: tuple[Site, ...], side: Side | None, rest: str
):
    found = place_named(text)
    assert (found.sites, found.side, found.rest) == (sites, side, rest)


def _state(stage: Stage) -> AthleteState:
    return stage.athlete.state


def test_the_coach_gives_a_break_and_the_athlete_is_told(stage: Stage):
    assert _say(stage, "/pause ines 2 weeks exams and no sleep") is Outcome.COMMAND
    # DERIVED: Monday 2 March and 14 days
    assert _state(stage) is AthleteState.PAUSED
    assert stage.athlete.paused_until == date(2026, 3, 16)
    assert "Mara gives you a break until Mon 16 Mar" in stage.last()
    (entry,) = stage.audit("break.begins")
    assert (entry.actor_id, entry.words) == (stage.coach.id, "exams and no sleep")
    assert stage.session_days_after(MONDAY) == []


def test_a_break_is_ended_by_words_and_the_athlete_is_asked_how_it_was(stage: Stage):
    _say(stage, "/pause ines 2 weeks exams")
    stage.go_to(MONDAY + timedelta(days=3), 8)
    assert _say(stage, "/pause ines off exams went well") is Outcome.COMMAND
    assert _state(stage) is AthleteState.TRAINING
    assert "How was it?" in stage.last()
    assert stage.session_days_after(MONDAY)


def test_a_break_by_taps_and_taken_back(stage: Stage):
    _say(stage, "/pause ines")
    _tap(stage, "4 weeks")
    _tap(stage, "Travelling")
    assert _state(stage) is AthleteState.PAUSED
    _tap(stage, "Take back")
    assert _state(stage) is AthleteState.TRAINING
    _tap(stage, "Take back")  # of the end: the break is as it was
    assert stage.athlete.paused_until == MONDAY + timedelta(weeks=4)


def test_a_break_that_is_another_by_now_is_not_taken_back(stage: Stage):
    _say(stage, "/pause ines 2 weeks exams")
    shown, token = stage.button("Take back", chat_id=COACH_CHAT)
    _say(stage, "/pause ines 3 weeks longer exams")
    assert stage.tap_token(token, shown.message_id, chat_id=COACH_CHAT) is Outcome.STALE_TAP
    assert stage.athlete.paused_until == MONDAY + timedelta(weeks=3)


def test_a_coach_who_is_an_athlete_too_pauses_by_the_length_alone(stage: Stage):
    with stage.turn() as turn:
        people.add_athlete(
            turn.tx,
            person_id=stage.coach.id,
            coach_id=stage.coach.id,
            profile=PROFILE,
            on=MONDAY,
            session_at=time(7, 0),
            stage=1,
            state=AthleteState.TRAINING,
            started_on=MONDAY,
        )
    _say(stage, "/pause 2 weeks")
    assert stage.athlete_of(stage.coach).state is AthleteState.PAUSED
    assert _state(stage) is AthleteState.TRAINING
    _say(stage, "/pause ines 1 week exams")
    assert _state(stage) is AthleteState.PAUSED


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("/pause ines off", "not on a break"),
        ("/pause ines 0 weeks why", "How long a break"),
        ("/pause ines 99 weeks why", "How long a break"),
        ("/pause", "Whom is it about"),
    ],
)
def test_a_break_that_does_not_fit_changes_nothing(stage: Stage, text: str, said: str):
    _say(stage, text)
    assert said in _seen(stage)
    assert _state(stage) is AthleteState.TRAINING
