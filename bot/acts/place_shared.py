"""A shared place becomes a time zone: those near it are offered, and the person chooses."""

from bot.acts import intake, intake_course, intake_show, settings
from bot.acts.intake_steps import BY_KEY
from bot.events import SentMedia
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import places as words
from scheduler.calendar.places import zones_near
from scheduler.calendar.zones import zone_named
from storage import buttons
from storage.records.people import Athlete, Person

ZONE = "zone"


def hear(turn: Turn, person: Person, athlete: Athlete, event: SentMedia) -> Outcome:
    """Offer the zones near a shared place with the time that each has now; nothing is guessed.

    The place itself goes to nobody and is kept nowhere but in the raw inbox.
    """
    if event.latitude is None or event.longitude is None:
        return Outcome.NOT_UNDERSTOOD
    near = zones_near(latitude_deg=event.latitude, longitude_deg=event.longitude)
    dialog = buttons.dialog(turn.tx, event.chat_id)
    if dialog is not None and dialog.kind == intake.KIND:
        if intake_course.asks_first(turn, person, athlete):
            return Outcome.SAFETY
        if dialog.step != ZONE:
            turn.say(person, words.later(turn.tongue(person)))
            intake_show.ask(turn, person, athlete, dialog.step, dialog.answers)
            return Outcome.NOT_UNDERSTOOD
        turn.say(person, _times(turn, person, near))
        intake_show.ask(turn, person, athlete, ZONE, dialog.answers, several=near)
        return Outcome.ASKED
    if athlete.state in settings.BEFORE:
        turn.say(person, words.later(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    settings.ask(
        turn,
        person,
        athlete,
        BY_KEY[ZONE],
        zones=near,
        above=_times(turn, person, near),
    )
    return Outcome.ASKED


def _times(turn: Turn, person: Person, zones: tuple[str, ...]) -> str:
    """Say what time it is in each, so that the clock on the phone decides."""
    now = {zone: turn.now.astimezone(zone_named(zone)) for zone in zones}
    return words.near(turn.tongue(person), [(zone, at.time()) for zone, at in now.items()])
