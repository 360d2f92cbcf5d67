"""A reply that would be understood, built from today's own items."""

from bot.reading.known import KnownItem, KnownSession
from scheduler.catalogue.values import Sides

MOST_LINES = 2  # [lines] CH: an example, not a form


def example_reply(session: KnownSession | None) -> str:
    """Return a line for each of the first open items: its number and one figure a set."""
    if session is None:
        return ""
    items = [item for item in session.items if not item.is_reported] or list(session.items)
    return "\n".join(example_line(item) for item in items[:MOST_LINES])


def example_line(item: KnownItem) -> str:
    """Return the item's number and its figures as planned, arm by arm where each has its own."""
    figures = " ".join(f"{item.target:g}" for _ in range(item.sets))
    if item.sides is Sides.EACH:
        return f"{item.number}) L {figures} R {figures}"
    return f"{item.number}) {figures}"
