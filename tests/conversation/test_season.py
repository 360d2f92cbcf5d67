"""A season is seen by the athlete, changed by the coach, and draws the weeks."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.acts.season import season_of
from bot.outcomes import Outcome
from scheduler.catalogue.values import Equipment
from scheduler.training.season_values import Season, SeasonEvent, SeasonWeekKind
from storage.queries import people, training
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage

A_WEEK = timedelta(days=7)


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    return Stage(tmp_path)


def _to_coach(stage: Stage, text: str) -> Outcome:
    return stage.write(text, chat_id=COACH_CHAT)


def _week(stage: Stage, monday: date):
    with stage.turn() as turn:
        return training.week(turn.tx, stage.person.id, monday)


def _sets(stage: Stage, monday: date) -> int:
    with stage.turn() as turn:
        sessions = training.sessions_between(
            turn.tx, stage.person.id, first=monday, last=monday + timedelta(days=6)
        )
    return sum(item.planned_sets for one in sessions for item in one.items if item.pair)


def _draw_to(stage: Stage, monday: date) -> None:
    stage.go_to(monday, 6)


def test_a_coach_adds_a_main_event_and_sees_what_fits(stage: Stage):
    assert _to_coach(stage, "/season ines main 12 June spring meet") is Outcome.COMMAND
    said = stage.last(COACH_CHAT)
    assert "<b>Main event</b> Fri 12 Jun · spring meet" in said
    assert "stage 1" in said
    assert "fewer sets before the event" in said
    assert "changed your season" in stage.last()
    (entry,) = stage.audit("season.changed")
    assert entry.actor_id == stage.coach.id
    assert entry.after["events"][0]["on"] == "2026-06-12"


def test_the_athlete_sees_the_season_and_what_can_be_reached(stage: Stage):
    _to_coach(stage, "/season ines main 2026-06-12")
    stage.write("/season")
    said = stage.last()
    assert "Main event" in said
    assert "stage 3 can be reached" in said
    assert "the checklist and the coach decide" in said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("/season ines party 12 June", "do not know that change"),
        ("/season ines main soon", "one date"),
        ("/season ines main 12 June or 13 June", "one date"),
        ("/season ines main 2026-01-01", "over already"),
        ("/season ines main 2031-01-01", "two years ahead"),
        ("/season ines travel 3 May", "first and a last day"),
        ("/season ines travel 10 May to 3 May 2026", "first and a last day"),
        ("/season ines off-season maybe", "yes or no"),
        ("/season ines remove 12 June", "nothing on that day"),
    ],
)
def test_a_change_that_is_not_understood_says_what_to_write(stage: Stage, text: str, said: str):
    before = stage.athlete.profile
    assert _to_coach(stage, text) is Outcome.NOT_UNDERSTOOD
    assert said in stage.last(COACH_CHAT)
    assert stage.athlete.profile == before


def test_a_taper_takes_sets_away_and_keeps_the_load(stage: Stage):
    _to_coach(stage, "/season ines main 2026-04-18")
    stage.go_to(MONDAY, 6)
    ordinary = _sets(stage, MONDAY)
    last = date(2026, 4, 13)
    _train_until(stage, last)
    week = _week(stage, last)
    assert week.kind is SeasonWeekKind.TAPER
    # CHOSEN: the last week keeps 40 % of the sets, rounded down and at least one an item.
    assert 0 < _sets(stage, last) < ordinary
    assert "fewer sets, the same loads" in " ".join(stage.texts()[-6:])


def _train_until(stage: Stage, monday: date) -> None:
    """Answer every session as planned until a Monday morning after its session came."""
    while stage.now.date() < monday:
        stage.go_to(stage.now.date() + timedelta(days=1), 7)
        if any("as planned" in label.lower() for m in stage.screen()[-2:] for label in m.buttons):
            stage.write("all as planned")


def test_a_travel_week_uses_the_band_alone(stage: Stage):
    monday = MONDAY + A_WEEK
    _to_coach(stage, f"/season ines travel {monday} to {monday + timedelta(days=6)}")
    _draw_to(stage, monday)
    week = _week(stage, monday)
    assert week.kind is SeasonWeekKind.BAND_ONLY
    with stage.turn() as turn:
        sessions = training.sessions_between(
            turn.tx, stage.person.id, first=monday, last=monday + timedelta(days=6)
        )
    at_hand = frozenset({Equipment.BAND})
    movements = [stage.movement(item) for one in sessions for item in one.items]
    assert movements
    assert all(movement.fits(at_hand) for movement in movements)


def test_a_week_of_competing_has_few_short_sessions_that_hold_the_level(stage: Stage):
    monday = MONDAY + A_WEEK
    _to_coach(stage, f"/season ines competing {monday} to {monday + timedelta(days=20)}")
    _draw_to(stage, monday)
    week = _week(stage, monday)
    assert week.kind is SeasonWeekKind.IN_SEASON
    with stage.turn() as turn:
        sessions = training.sessions_between(
            turn.tx, stage.person.id, first=monday, last=monday + timedelta(days=6)
        )
    # COMMON PRACTICE: one or two short sessions in season.
    assert 1 <= len(sessions) <= 2


def test_what_was_added_can_be_removed(stage: Stage):
    _to_coach(stage, "/season ines other 3 May club day")
    assert len(_events(stage)) == 1
    _to_coach(stage, "/season ines remove 3 May")
    assert len(_events(stage)) == 0


def _events(stage: Stage) -> tuple[SeasonEvent, ...]:
    return stage.athlete.profile.all_events


def test_the_season_keeps_its_proportions_when_it_is_planned_again(stage: Stage):
    """COMMON PRACTICE: a newcomer's nine months hold about six in stages 1 and 2."""
    with stage.turn() as turn:
        facts = stage.athlete.profile.facts.model_copy(update={"training_age_months": 0})
        profile = stage.athlete.profile.model_copy(
            update={"facts": facts, "event_on": date(2026, 10, 5)}
        )
        people.change_athlete(turn.tx, stage.person.id, profile=profile, started_on=MONDAY)
    with stage.turn() as turn:
        athlete = stage.athlete
        whole = season_of(turn, athlete, today=MONDAY).value
        later = season_of(turn, athlete, today=MONDAY + 8 * A_WEEK).value
    assert _base_until(whole) == _base_until(later)


def _base_until(season: Season) -> date:
    return max(week.monday for week in season.weeks if week.stage <= 2 and week.kind.builds)
