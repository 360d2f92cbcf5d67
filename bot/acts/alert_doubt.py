"""What became of the question behind an alert: the athlete was asked, and may have answered."""

from bot.acts.pain_picture import picture_of
from bot.turn import Turn
from bot.wording.coach_alerts import Doubt
from scheduler.pain.events import Certainty
from storage.records.care import Alert
from storage.records.people import Athlete


def doubt_of(turn: Turn, alert: Alert, athlete: Athlete) -> Doubt | None:
    """Return how the doubt stands that raised an alert; None where it is, or has become, none."""
    raised = {one.figures.get("flag") for one in alert.reasons} - {None}
    picture = picture_of(turn, athlete)
    if not raised or any(one.level >= alert.level for one in picture.regions):
        return None
    standing = [one for one in picture.flags if one.flag.value in raised]
    if not standing:
        return Doubt.DENIED
    is_open = all(one.certainty is Certainty.ASKED for one in standing)
    return Doubt.OPEN if is_open else None
