"""The last decisions about an athlete: who, when, what, why."""

from collections.abc import Sequence

from bot.acts.about_athlete import entries
from bot.acts.find_athlete import Named, subject_of
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import coach_audit
from bot.wording.coach_audit import EntryFacts
from bot.wording.pages import pages_of
from scheduler.calendar.zones import zone_named
from storage.queries import care, people
from storage.records.care import AuditEntry
from storage.records.people import Person

SHOWN = 12  # [decisions] ch: two screens of a phone


def show(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Send the decisions, the newest first, in the coach's own zone."""
    entries = entries_for(turn, coach, care.audit_of(turn.tx, named.person.id, most=SHOWN))
    blocks = coach_audit.pages(turn.tongue(coach), name=named.person.name, entries=entries)
    for page in pages_of(blocks):
        turn.say(coach, page, subject=subject_of(named.person))
    return Outcome.COMMAND


def entries_for(turn: Turn, coach: Person, entries: Sequence[AuditEntry]) -> tuple[EntryFacts, ...]:
    """Turn stored decisions into what the wording shows, with names and local times."""
    zone = zone_named(coach.zone)
    names = {
        actor: people.person(turn.tx, actor).name
        for actor in {one.actor_id for one in entries}
        if actor is not None
    }
    return tuple(
        EntryFacts(
            at=one.at.astimezone(zone),
            who=names.get(one.actor_id, "") if one.actor_id is not None else "",
            what=one.what,
            words=one.words,
            reasons=one.reasons,
            before=one.before,
            after=one.after,
        )
        for one in entries
    )


# ``/audit NAME``.
command, tapped = entries(show, act="coach.audit", example="/audit Robin", has_rest=False)
