"""Other training in a line: it counts as load, is shown to the coach, and moves our days."""

from collections.abc import Sequence

from bot.acts import draw_week
from bot.acts.checklist import local_today
from bot.acts.training_elsewhere import REPORTED, reported_since
from bot.reading.values import Activity
from bot.turn import Turn
from scheduler.training.other_training import is_hard
from storage.queries import care, people
from storage.records.people import Person


def record_activities(turn: Turn, person: Person, activities: Sequence[Activity]) -> None:
    """Write other training into the record; after a hard day what is ahead is planned anew.

    It makes the plan more careful, never bolder.
    """
    for activity in activities:
        care.write_audit(
            turn.tx,
            at=turn.now,
            what=REPORTED,
            athlete_id=person.id,
            actor_id=person.id,
            words=activity.name,
            after=activity.model_dump(mode="json"),
        )
    athlete = people.athlete(turn.tx, person.id)
    if not activities or athlete is None:
        return
    told = reported_since(turn, person, first=local_today(turn, person))
    if any(is_hard(one, rulebook=turn.house.rulebook) for one in told):
        draw_week.redraw(turn, person, athlete)
