"""Years of history are looked at in short ways, which say the same as the long ones (DERIVED)."""

from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby

import pytest

from bot.acts import pain_picture
from bot.turn import House, Turn
from bot.wording import changes
from bot.wording.tongue import tongue_of
from demo_scenario.benchmarks.past_years import write_years
from demo_scenario.trials.ready_team import MONDAY, house
from scheduler.pain.events import Corrected, PainReported
from scheduler.pain.levels import picture_of as drawn_from
from scheduler.pain.values import Level, Side, Site
from scheduler.training.exposure_reading import best_value
from storage.database import Database
from storage.queries import care, history, pain_folds, people, training

NOW = MONDAY
AN_HOUR = timedelta(hours=1)


@dataclass
class Years:
    """A house with one athlete who has trained for a year."""

    database: Database
    house: House
    person_id: int

    def turn(self, tx, now=NOW):
        return Turn(tx=tx, now=now, house=self.house)


@pytest.fixture
def years(tmp_path):
    database = Database(f"sqlite:///{tmp_path}/years.sqlite3", is_throwaway=True)
    person_id = write_years(database, years=1)
    yield Years(database, house("holdwell_test_bot"), person_id)
    database.close()


def short_and_long(years, now=NOW):
    """Return the picture as acts see it, in a new turn, and that of a fold of everything."""
    with years.database.transaction() as tx:
        turn = years.turn(tx, now)
        athlete = athlete_of(tx, years)
        events = pain_picture.events_of(turn, years.person_id)
        return pain_picture.picture_of(turn, athlete), drawn_from(events, as_of_utc=now)


def kept(years):
    found = kept_if_any(years)
    assert found is not None
    return found


def kept_if_any(years):
    with years.database.transaction() as tx:
        return pain_folds.kept_fold(tx, years.person_id)


def athlete_of(tx, years):
    found = people.athlete(tx, years.person_id)
    assert found is not None
    return found


def report(key, at, score):
    return PainReported(key=key, at_utc=at, site=Site.WRIST, side=Side.LEFT, score=score)


def record(years, event, now=NOW):
    with years.database.transaction() as tx:
        pain_picture.record_event(years.turn(tx, now), years.person_id, event)


def test_a_fold_is_kept_and_the_next_picture_is_drawn_from_it(years):
    assert kept_if_any(years) is None
    short, long = short_and_long(years)
    assert short == long
    with years.database.transaction() as tx:
        everything = care.pain_events(tx, years.person_id)
    assert kept(years).events == len(everything)
    later = NOW + AN_HOUR
    record(years, report("later", later, 7), later)
    short, long = short_and_long(years, later)
    assert short == long
    assert short.region(Site.WRIST, Side.LEFT).level >= Level.REST
    assert kept(years).events == len(everything)


def test_a_correction_of_what_was_folded_long_ago_folds_everything_anew(years):
    with years.database.transaction() as tx:
        first = next(
            event
            for event in pain_picture.events_of(years.turn(tx), years.person_id)
            if isinstance(event, PainReported)
        )
    short_and_long(years)
    worse = first.model_copy(update={"score": 8})
    record(years, Corrected(key="c", at_utc=NOW, report_key=first.key, replacement=worse))
    short, long = short_and_long(years)
    assert short == long
    assert short.region(first.site, first.side).level >= Level.REST
    later = NOW + AN_HOUR
    assert kept(years).events == len(_all(years))
    assert short_and_long(years, later)[0] == short_and_long(years, later)[1]


def _all(years):
    with years.database.transaction() as tx:
        return care.pain_events(tx, years.person_id)


def test_what_is_told_of_an_earlier_instant_is_not_lost(years):
    short_and_long(years)
    earlier = kept(years).through_at - timedelta(days=3)
    record(years, report("earlier", earlier, 9))
    assert kept_if_any(years) is None
    short, long = short_and_long(years)
    assert short == long
    assert short.region(Site.WRIST, Side.LEFT).level >= Level.REST


def test_the_picture_of_an_earlier_instant_is_not_drawn_from_a_later_fold(years):
    short_and_long(years)
    earlier = kept(years).through_at - timedelta(days=40)
    short, long = short_and_long(years, earlier)
    assert short == long


def test_other_rules_fold_anew(years, monkeypatch):
    short_and_long(years)
    before = kept(years)
    with years.database.transaction() as tx:
        pain_folds.keep_fold(
            tx,
            years.person_id,
            rules="of an older version",
            through_at=before.through_at,
            through_id=before.through_id,
            events=before.events,
            state={"regions": "as they were written then"},
        )
    short, long = short_and_long(years)
    assert short == long
    assert kept(years).rules == before.rules


def test_a_report_in_the_same_turn_is_in_the_next_picture(years):
    with years.database.transaction() as tx:
        turn = years.turn(tx)
        athlete = athlete_of(tx, years)
        assert pain_picture.picture_of(turn, athlete) is pain_picture.picture_of(turn, athlete)
        before = pain_picture.picture_of(turn, athlete)
        pain_picture.record_event(turn, years.person_id, report("now", NOW, 9))
        after = pain_picture.picture_of(turn, athlete)
    assert before.level < Level.REST <= after.level


def test_keys_of_events_go_on_from_what_was_kept(years):
    with years.database.transaction() as tx:
        before = pain_picture.new_key(years.turn(tx), years.person_id)
    short_and_long(years)
    with years.database.transaction() as tx:
        assert pain_picture.new_key(years.turn(tx), years.person_id) == before


def test_the_best_sets_are_those_of_all_exposures(years):
    with years.database.transaction() as tx:
        everything = history.all_exposures(tx, years.person_id)
        keys = {one.dose.movement_key for one in everything}
        found = history.best_sets(tx, years.person_id, sorted(keys), before=NOW.date())
    alike = sorted(everything, key=lambda one: (one.dose.movement_key, str(one.dose.rung)))
    expected = {
        key: best_value(list(run))
        for key, run in groupby(alike, key=lambda one: (one.dose.movement_key, one.dose.rung))
    }
    assert {(one.movement_key, one.planned): one.value for one in found} == expected
    assert len(keys) > 10


def test_the_latest_and_the_first_exposures_are_the_ends_of_all(years):
    with years.database.transaction() as tx:
        key = history.all_exposures(tx, years.person_id)[0].dose.movement_key
        mine = history.exposures(tx, years.person_id, [key])
        latest = history.latest_exposures(tx, years.person_id, [key], most=5)
        first = history.first_exposures(tx, years.person_id, key, most=3)
    assert latest == mine[-5:]
    assert first == mine[:3]


def test_days_from_a_bound_on_come_with_the_last_one_before_it(years):
    with years.database.transaction() as tx:
        everything = training.trained_days(tx, years.person_id, before=NOW.date())
        since = everything[-10] - timedelta(days=1)
        some = training.trained_days(tx, years.person_id, before=NOW.date(), since=since)
        none = training.trained_days(tx, years.person_id, since=date(2000, 1, 1))
    assert some == everything[-11:]
    assert none == everything


def test_who_trained_for_longer_than_is_looked_at_is_told_a_best_of_the_year(years):
    tongue, movement = tongue_of("en"), years.house.library.movements["bar_hang"]
    yet = changes.best_line(tongue, movement, now=40.0, before=35.0)
    of_year = changes.best_line(tongue, movement, now=40.0, before=35.0, is_of_year=True)
    assert "longest yet" in yet
    assert "longest in a year" in of_year
