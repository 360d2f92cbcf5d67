"""Other training in a line: it counts as load and is shown to the coach."""

from collections.abc import Sequence

from bot.reading.values import Activity
from bot.turn import Turn
from storage.queries import care
from storage.records.people import Person


def record_activities(turn: Turn, person: Person, activities: Sequence[Activity]) -> None:
    """Write other training into the record."""
    for activity in activities:
        care.write_audit(
            turn.tx,
            at=turn.now,
            what="other_training",
            athlete_id=person.id,
            actor_id=person.id,
            words=activity.name,
            after=activity.model_dump(mode="json"),
        )
