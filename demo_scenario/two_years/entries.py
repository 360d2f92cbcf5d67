"""What was decided beside the doses, a line or a few each: the coach's acts and the rules' own."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.acts.decided_doses import DOSE_DECISIONS
from bot.wording.coach_audit import EntryFacts, what_changed
from demo_scenario.two_years.plain_text import TONGUE, all_why, plain
from storage.queries import people
from storage.records.care import AuditEntry, Proposal

OF_ITEMS = frozenset(DOSE_DECISIONS)
"""Told under the item that they are about."""
OF_WEEKS = frozenset({"week.drawn"})
"""Told at the head of the week."""

SCORED = frozenset({"pain_reported", "morning_answered"})


def names_of(tx: Session, entries: Sequence[AuditEntry]) -> dict[int, str]:
    """Return who is meant by each actor's number."""
    actors = {one.actor_id for one in entries if one.actor_id is not None}
    return {actor: people.person(tx, actor).name for actor in sorted(actors)}


def entry_lines(entry: AuditEntry, *, zone: ZoneInfo, names: Mapping[int, str]) -> list[str]:
    """Write one decision: when, who, what, in whose words, and why."""
    at = entry.at.astimezone(zone)
    who = names[entry.actor_id] if entry.actor_id is not None else "the rules"
    facts = EntryFacts(
        at=at,
        who=who,
        what=entry.what,
        words=entry.words,
        reasons=entry.reasons,
        before=entry.before,
        after=entry.after,
    )
    what = plain(what_changed(TONGUE, facts))
    said = f" “{entry.words}”" if entry.words else ""
    detail = _detail(entry)
    head = f"  * {at:%a %d %b %H:%M} {who}: {what}{said}{detail}"
    return [head, *all_why(entry.reasons, indent="      ", lead="why")]


def proposal_line(proposal: Proposal, *, zone: ZoneInfo) -> str:
    """Write a drafted decision and what became of it."""
    made = proposal.made_at.astimezone(zone)
    what = {"stage_up": f"stage {proposal.facts.get('stage')}"}.get(proposal.kind, proposal.kind)
    end = "open"
    if proposal.answered_at is not None:
        end = f"answered {proposal.answered_at.astimezone(zone):%a %d %b %H:%M}: {proposal.answer}"
    return f"  * {made:%a %d %b %H:%M} proposed: {what} ({end})"


def pain_at(event: Mapping[str, Any]) -> datetime:
    """Return when something about pain was said or done."""
    return datetime.fromisoformat(str(event["at_utc"]))


def pain_line(event: Mapping[str, Any], *, zone: ZoneInfo) -> str | None:
    """Write a score as it was told; None for what is no score."""
    if event["kind"] not in SCORED:
        return None
    score = "no number" if event.get("score") is None else f"{event['score']:g} of 10"
    when = event.get("occasion", "next morning")
    at = pain_at(event).astimezone(zone)
    return f"  * {at:%a %d %b %H:%M} pain: {event['side']} {event['site']}, {score} ({when})"


def _detail(entry: AuditEntry) -> str:
    """Add the figures that the sentence does not say."""
    kept = {
        name: value
        for name, value in entry.after.items()
        if isinstance(value, str | int | float) and name not in {"session", "stage"}
    }
    return f" {{{', '.join(f'{name} {value}' for name, value in kept.items())}}}" if kept else ""
