"""A season as a picture: the last weeks, this one, and those to come."""

from collections.abc import Mapping
from datetime import timedelta
from typing import Any

from bot.acts.about_athlete import about_tapped
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.acts.season import season_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Shot, Turn
from bot.wording import season_picture as words
from bot.wording.season_picture import SeasonPictureFacts, WeekFacts
from scheduler.calendar.wall_time import monday_of
from scheduler.training.season_values import SeasonWeekKind
from storage.queries import training
from storage.records.people import Athlete, Person

ACT = "coach.season_picture"
WEEKS_BEHIND = timedelta(weeks=4)  # [weeks] ch: enough to see where one comes from


def send(turn: Turn, to: Person, person: Person, athlete: Athlete) -> Outcome:
    """Send the picture of a season to the athlete or the coach."""
    turn.send_picture(to, shot_of(turn, to, person, athlete))
    return Outcome.COMMAND


@about_tapped
def tapped(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The coach's button on an athlete's screen."""
    return send(turn, coach, found.person, found.athlete)


def shot_of(turn: Turn, to: Person, person: Person, athlete: Athlete) -> Shot:
    """Gather the picture in the reader's words."""
    tongue, facts = turn.tongue(to), facts_of(turn, person, athlete)
    return Shot(
        picture=words.picture(tongue, facts),
        caption=words.caption(tongue, facts),
        subject=subject_of(person) if to.id != person.id else None,
    )


def facts_of(turn: Turn, person: Person, athlete: Athlete) -> SeasonPictureFacts:
    """Collect the weeks and the events of a season."""
    today = local_today(turn, person)
    monday = monday_of(today)
    season = season_of(turn, athlete, today=today).value
    behind = [
        WeekFacts(
            monday=one.monday,
            stage=one.stage,
            kind=SeasonWeekKind.LIGHTER if one.is_lighter else one.kind,
        )
        for one in training.weeks(turn.tx, person.id, since=monday - WEEKS_BEHIND)
        if one.monday < monday
    ]
    ahead = [WeekFacts(monday=one.monday, stage=one.stage, kind=one.kind) for one in season.weeks]
    return SeasonPictureFacts(
        name=person.name,
        weeks=(*behind, *ahead),
        blocks=season.blocks,
        events=tuple(event for event in athlete.profile.all_events if event.on >= today),
        this_monday=monday,
        is_open_ended=season.is_open_ended,
    )


TAPS = {ACT: tapped}
