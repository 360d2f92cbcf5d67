"""From which day somebody may train again who told of a fever: never before two clear days."""

from datetime import date, time, timedelta
from itertools import count

from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named
from bot.acts.pain_picture import picture_of
from bot.turn import Turn
from scheduler.calendar.wall_time import due_instant
from scheduler.calendar.zones import zone_named
from scheduler.pain.red_flags import RedFlag
from scheduler.training.gaps import may_train_after_fever

DAY = timedelta(days=1)  # [days] definition
HOUR = timedelta(hours=1)  # [h] definition


def first_day(turn: Turn, named: Named) -> date:
    """Return the first day that the wait after a fever leaves open; today where none was told.

    A hot, red joint is told as the same sign, and waits as long. The report is the last that is
    known of the fever: it may have lasted longer, which the clinician's word and the coach decide.
    """
    told = [
        flag.since_utc
        for flag in picture_of(turn, named.athlete).flags
        if flag.flag is RedFlag.FEVER_OR_HOT_JOINT
    ]
    today, zone = local_today(turn, named.person), zone_named(named.person.zone)
    if not told:
        return today
    for day in (today + days * DAY for days in count()):
        begins = due_instant(local_date=day, wall_time=time(0), zone=zone)
        clear_h = (max(begins, turn.now) - max(told)) / HOUR
        if may_train_after_fever(clear_h=clear_h, rulebook=turn.house.rulebook).value:
            return day
    raise AssertionError("days have no end")
