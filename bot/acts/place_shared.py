"""A shared place becomes a time zone: those near it are offered, and the person chooses."""

from bot.acts import intake_course, intake_show, settings
from bot.acts.intake_answers import Several
from bot.acts.intake_resume import open_dialog
from bot.acts.intake_steps import BY_KEY
from bot.events import SentMedia
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import places as words
from scheduler.calendar.places import zones_near
from storage.records.people import Athlete, Person

ZONE = "zone"


def hear(turn: Turn, person: Person, athlete: Athlete, event: SentMedia) -> Outcome:
    """Offer the zones near a shared place with the time that each has now; nothing is guessed.

    The place itself goes to nobody and is kept nowhere but in the raw inbox.
    """
    if event.latitude is None or event.longitude is None:
        return Outcome.NOT_UNDERSTOOD
    near = zones_near(latitude_deg=event.latitude, longitude_deg=event.longitude)
    dialog = open_dialog(turn, person)
    if dialog is not None:
        if intake_course.asks_first(turn, person, athlete):
            return Outcome.SAFETY
        if dialog.step != ZONE:
            turn.say(person, words.later(turn.tongue(person)))
            intake_show.ask(turn, person, athlete, dialog.step, dialog.answers)
            return Outcome.NOT_UNDERSTOOD
        turn.say(person, words.near(turn.tongue(person)))
        intake_show.ask(turn, person, athlete, ZONE, dialog.answers, several=Several(near))
        return Outcome.ASKED
    if athlete.state in settings.BEFORE:
        turn.say(person, words.later(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    settings.ask(
        turn,
        person,
        athlete,
        BY_KEY[ZONE],
        several=Several(near),
        above=words.near(turn.tongue(person)),
    )
    return Outcome.ASKED
