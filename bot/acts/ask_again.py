"""What silence left open is asked once more before the next session: silence lowers nothing."""

from bot.acts import morning_question, open_answer, pain_picture, red_flag
from bot.acts.checklist import local_today
from bot.turn import Turn
from scheduler.calendar.wall_time import local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.pain.picture import AskKind
from storage.records.people import Athlete, Person


def before_session(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Ask the gravest of what is open since an earlier day.

    That is a doubt, then a place, a side or a number of a report, then a morning.
    """
    zone, today = zone_named(person.zone), local_today(turn, person)
    picture = pain_picture.picture_of(turn, athlete)
    old = {ask.kind for ask in picture.asks if local_date_of(ask.since_utc, zone) < today}
    report = open_answer.latest_open(turn, athlete) or open_answer.latest_without_number(
        turn, athlete
    )
    if AskKind.FLAG in old:
        red_flag.ask_open(turn, person, athlete, picture.flags)
    elif report is not None and local_date_of(report.at_utc, zone) < today:
        open_answer.ask(turn, person, athlete, report)
    elif AskKind.MORNING in old:
        morning_question.ask(turn, person, athlete)
