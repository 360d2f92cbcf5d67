"""A coach's note about an athlete: kept with the decisions, never shown to the athlete."""

from bot.acts import find_athlete
from bot.acts.about_athlete import entries
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import coach_messages
from storage.queries import care
from storage.records.people import Person

NOTE = "coach.note"


def keep(turn: Turn, coach: Person, named: find_athlete.Named) -> Outcome:
    """Keep the note, or ask for its text."""
    tongue = turn.tongue(coach)
    if not named.rest:
        turn.say(coach, coach_messages.text_missing(tongue, example=coach_messages.NOTE_EXAMPLE))
        return Outcome.NOT_UNDERSTOOD
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=NOTE,
        athlete_id=named.person.id,
        actor_id=coach.id,
        words=named.rest,
    )
    turn.say(
        coach,
        coach_messages.note_kept(tongue, name=named.person.name),
        subject=find_athlete.subject_of(named.person),
    )
    return Outcome.COMMAND


# ``/note NAME text``.
note, picked = entries(keep, act="coach.note", example=coach_messages.NOTE_EXAMPLE)
