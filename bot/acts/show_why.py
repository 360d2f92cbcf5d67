"""Why the next doses are what they are, why they are not more, and what the next stage asks."""

from collections.abc import Mapping
from typing import Any

from pydantic import ValidationError

from bot.acts.checklist import checklist_of, measures_of
from bot.acts.decided_doses import DOSE_DECISIONS
from bot.acts.item_facts import sent_items
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import why as words
from bot.wording.pages import pages_of
from scheduler.training.values import Dose
from scheduler.training.why_not_more import why_not_more
from storage.queries import care, people, training
from storage.records.care import AuditEntry
from storage.records.people import Person

WHY_MOST = 8  # [decisions] ch: the latest session's items fit one screen


def command(turn: Turn, person: Person, _rest: str, _event: Wrote) -> Outcome:
    """``/why``: short sentences, the figures behind a button."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.COMMAND
    tongue = turn.tongue(person)
    out = _out_now(turn, person)
    text = words.why(
        tongue,
        out or decided(turn, person.id),
        checklist_of(turn, person, athlete),
        measures=measures_of(turn, athlete.stage),
        is_today=bool(out),
    )
    turn.say(person, text, taps=[[Tap(words.figures_label(tongue), "why.figures", {})]])
    return Outcome.COMMAND


def _out_now(turn: Turn, person: Person) -> tuple[words.Decided, ...]:
    """Return the doses of the session that is out, as they were fixed when it was sent."""
    library, steps = turn.house.library.movements, turn.house.rulebook.steps
    return tuple(
        words.Decided(
            movement=library[item.movement_key],
            dose=item.dose,
            reasons=item.reasons,
            not_more=why_not_more(item.dose, item.reasons, steps=steps),
        )
        for session in training.open_sessions(turn.tx, person.id)[:1]
        for item in sent_items(session)
        if item.dose is not None and item.movement_key in library and not session.has_results
    )


def figures(turn: Turn, person: Person, _arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Show every reason with its rule, its figures and where its threshold comes from."""
    tongue = turn.tongue(person)
    found = _out_now(turn, person) or decided(turn, person.id)
    for page in pages_of(words.figures(tongue, found)):
        turn.say(person, page)
    return Outcome.ANSWERED


def decided(turn: Turn, athlete_id: int) -> tuple[words.Decided, ...]:
    """Return the latest decision about each movement of the latest session, its newest word."""
    entries = care.audit_of(turn.tx, athlete_id, most=WHY_MOST, what=DOSE_DECISIONS)
    latest: dict[str, AuditEntry] = {}
    for entry in entries:  # the newest first: a session that was mended decides anew
        latest.setdefault(str(entry.before["movement"]), entry)
    found = (_decided(turn, key, entry) for key, entry in latest.items())
    return tuple(one for one in found if one is not None)


def _decided(turn: Turn, key: str, entry: AuditEntry) -> words.Decided | None:
    movement = turn.house.library.movements.get(key)
    try:
        dose = Dose.model_validate(entry.after["dose"])
    except (KeyError, ValidationError):
        return None
    if movement is None:
        return None
    return words.Decided(
        movement=movement,
        dose=dose,
        reasons=entry.reasons,
        not_more=why_not_more(dose, entry.reasons, steps=turn.house.rulebook.steps),
    )


TAPS = {"why.figures": figures}
