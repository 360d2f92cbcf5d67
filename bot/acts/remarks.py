"""Words beside results that no rule read, such as "assisted": the coach sees them."""

from datetime import date, timedelta

from bot.events import Wrote
from bot.reading.values import Beside
from bot.turn import Turn
from bot.wording import coach_tests, dates
from storage.queries import remarks
from storage.records.people import Person

SHOWN = timedelta(days=14)  # [days] ch: as long as pain counts on the checklist
SHOWN_MOST = 3  # [lines] ch: one screen


def keep(turn: Turn, person: Person, event: Wrote, reading: Beside, *, on: date) -> None:
    """Keep the whole message where words of it were read by no rule.

    Nothing of a message that raised a sign, or that says a private one, comes here.
    """
    if reading.unread.strip() and event.text:
        remarks.add_remark(turn.tx, athlete_id=person.id, at=turn.now, on=on, words=event.text)


def lines_for(turn: Turn, coach: Person, athlete_id: int) -> tuple[str, ...]:
    """Write the latest remarks of an athlete for the coach."""
    tongue = turn.tongue(coach)
    found = remarks.remarks(turn.tx, [athlete_id], since=turn.now - SHOWN, most=SHOWN_MOST)
    return tuple(
        coach_tests.remark(tongue, day=dates.day(tongue, one.on), words=one.words) for one in found
    )
