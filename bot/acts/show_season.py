"""The season as it stands: its blocks, its events, and what can honestly be reached."""

from datetime import date

from bot.acts import find_athlete, season_picture
from bot.acts.checklist import local_today
from bot.acts.season import outlook_of, season_of
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import season as words
from bot.wording.tongue import Tongue
from scheduler.calendar.wall_time import monday_of
from storage.queries import people
from storage.records.people import Athlete, Person


def own(turn: Turn, person: Person, _rest: str, _event: Wrote) -> Outcome:
    """``/season`` of an athlete: their own."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is not None:
        text = _season(turn, turn.tongue(person), person, athlete)
        turn.say(person, text)
        season_picture.send(turn, person, person, athlete)
    return Outcome.COMMAND


def show_to_coach(turn: Turn, coach: Person, named: find_athlete.Named) -> Outcome:
    """Show a coach one athlete's season, and what to write to change it."""
    tongue = turn.tongue(coach)
    text = _season(turn, tongue, named.person, named.athlete)
    turn.say(
        coach,
        f"{words.head(tongue, name=named.person.name)}\n{text}\n\n{words.how_to_change(tongue)}",
        subject=find_athlete.subject_of(named.person),
    )
    return Outcome.COMMAND


def _season(turn: Turn, tongue: Tongue, person: Person, athlete: Athlete) -> str:
    today: date = local_today(turn, person)
    season = season_of(turn, athlete, today=today).value
    outlook = outlook_of(turn, athlete, today=today)
    return words.season(
        tongue,
        words.SeasonFacts(
            blocks=season.blocks,
            events=tuple(event for event in athlete.profile.all_events if event.on >= today),
            travels=tuple(one for one in athlete.profile.travels if one.last >= today),
            competing=tuple(one for one in athlete.profile.in_season if one.last >= today),
            outlook=outlook.reasons,
            this_monday=monday_of(today),
            is_open_ended=season.is_open_ended,
        ),
    )
