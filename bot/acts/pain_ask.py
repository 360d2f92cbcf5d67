"""What is asked of a pain: the place, the side, the number; a typed answer counts like a tap."""

from collections.abc import Mapping
from typing import Any

from bot.acts.open_question import open_question
from bot.acts.pain_taps import side_taps, site_taps
from bot.outcomes import Outcome
from bot.turn import TapRows, Turn
from bot.wording import pain as words
from scheduler.pain.values import Site
from storage.records.people import Person
from storage.records.wire import MessageKind

UNCLEAR = "pain.unclear"  # the kind of the open question for a place or a side
Arguments = Mapping[str, Any]


def ask_where(
    turn: Turn, person: Person, *, session_id: int | None, edit: int | None = None
) -> None:
    """Ask for the place."""
    ask_unclear(turn, person, {"session": session_id}, edit=edit)


def ask_unclear(
    turn: Turn, person: Person, about: Arguments, *, lead: str = "", edit: int | None = None
) -> None:
    """Ask for the side of a known site, else for the place; a typed answer counts like a tap.

    ``lead`` is said before the question, in the same message.
    """
    tongue = turn.tongue(person)
    open_question(turn, person, UNCLEAR, dict(about))
    if "site" in about:
        text = words.which_side(tongue, Site(about["site"]))
        put(turn, person, lead + text, side_taps(tongue, about), edit=edit)
        return
    sites = tuple(Site(one) for one in about.get("sites", ()))
    taps = site_taps(tongue, {k: v for k, v in about.items() if k != "sites"}, sites=sites)
    put(turn, person, lead + words.where(tongue), taps, edit=edit)


def ask_number(turn: Turn, person: Person, key: str, session_id: int | None) -> None:
    """Let a typed number complete a report."""
    open_question(turn, person, "pain.score", {"report": key, "session": session_id})


def too_late(turn: Turn, person: Person) -> Outcome:
    """Say that an old button changes a report no more."""
    turn.say(person, words.too_late_to_say(turn.tongue(person)), kind=MessageKind.SAFETY)
    return Outcome.STALE_TAP


def put(turn: Turn, person: Person, text: str, taps: TapRows, *, edit: int | None = None) -> None:
    """Say it, or put it in the place of what was tapped."""
    if edit is not None:
        turn.change(person, edit, text, taps=taps)
    else:
        turn.say(person, text, kind=MessageKind.SAFETY, taps=taps)
