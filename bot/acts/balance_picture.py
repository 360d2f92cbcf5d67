"""The sets of one athlete's week as a picture, one kind set against the other."""

from collections.abc import Mapping
from datetime import timedelta
from typing import Any

from bot.acts import week_figures
from bot.acts.about_athlete import about_tapped
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Shot, Turn
from bot.wording import balance_picture as words
from scheduler.calendar.wall_time import monday_of
from storage.queries import training
from storage.records.people import Person

ACT = "coach.balance"


@about_tapped
def tapped(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The coach's button on an athlete's screen."""
    turn.send_picture(coach, shot_of(turn, coach, found.person))
    return Outcome.COMMAND


def shot_of(turn: Turn, to: Person, person: Person) -> Shot:
    """Gather this week's sets in the reader's words."""
    monday = monday_of(local_today(turn, person))
    sessions = training.sessions_between(
        turn.tx, person.id, first=monday, last=monday + timedelta(days=6)
    )
    figures = week_figures.figures_of(turn, sessions)
    tongue = turn.tongue(to)
    return Shot(
        picture=words.picture(tongue, figures, name=person.name, monday=monday),
        caption=words.caption(tongue, figures, name=person.name, monday=monday),
        subject=subject_of(person),
    )


TAPS = {ACT: tapped}
