"""The dose of one item: everything the rule asks, gathered from what is stored."""

from datetime import date, timedelta

from bot.acts import pain_picture
from bot.turn import Turn
from scheduler.calendar.wall_time import monday_of
from scheduler.catalogue.values import Measure, Movement
from scheduler.reasons import Decision
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.doses import next_dose
from scheduler.training.gaps import Absence, Return, after_gap, sets_after_share
from scheduler.training.latest_gap import latest_gap
from scheduler.training.values import Dose
from storage.queries import training
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord

ABSENCES = {"ill": Absence.ILLNESS, "travelling": Absence.TRAVEL}
LOOKED_BACK_FIRST = timedelta(days=28)  # [days] ch: who trains has pulled as often as is asked


def dose_for(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    item: ItemRecord,
    *,
    on: date,
    is_projection: bool = False,
) -> Decision[Dose]:
    """Decide an item's dose on a day; a projection counts what was done on that day too."""
    before = None if is_projection else on
    movement = turn.house.library.movements[item.movement_key]
    history = training.exposures(turn.tx, person.id, [item.movement_key], before=before)
    share = pain_picture.return_share(pain_picture.picture_of(turn, athlete), movement)
    share *= share_since_drawing(turn, athlete, on=on)
    facts = DoseFacts(
        movement=movement,
        quality=item.quality,
        profile=athlete.profile.facts,
        planned_sets=sets_after_share(sets=item.planned_sets, share=share),
        weeks_trained=weeks_trained(athlete, on),
        pulling_exposures=_pulling_exposures(turn, person, movement, on=on, before=before),
        is_lighter_week=_is_lighter(turn, person, on),
        pain=pain_picture.facts_for(turn, athlete, movement),
        returning=returning(turn, athlete, on=on).value,
    )
    return next_dose(history, facts=facts, rulebook=turn.house.rulebook)


def weeks_trained(athlete: Athlete, on: date) -> int:
    """Return the whole weeks since the athlete began with us [weeks]."""
    return max(0, (on - athlete.started_on).days // 7) if athlete.started_on else 0


def returning(turn: Turn, athlete: Athlete, *, on: date) -> Decision[Return]:
    """Decide what training is like behind the latest gap."""
    days = training.trained_days(turn.tx, athlete.person_id, before=on)
    gap = latest_gap(days, today=on, rulebook=turn.house.rulebook)
    return after_gap(
        days_untrained=gap.days_untrained,
        weeks_back=gap.weeks_back,
        absence=ABSENCES.get(athlete.absence_reason or "", Absence.OTHER),
        stage=athlete.stage,
        rulebook=turn.house.rulebook,
    )


def share_since_drawing(turn: Turn, athlete: Athlete, *, on: date) -> float:
    """Return the share of the week's sets [fraction] that a day keeps.

    A week is drawn with the gap that its Monday sees; one that grows long enough in the middle
    of it is made up for here.
    """
    in_week = returning(turn, athlete, on=monday_of(on)).value.share_of_sets
    return min(1.0, returning(turn, athlete, on=on).value.share_of_sets / in_week)


def _is_lighter(turn: Turn, person: Person, on: date) -> bool:
    week = training.week(turn.tx, person.id, monday_of(on))
    return week is not None and week.is_lighter


def _pulling_exposures(
    turn: Turn, person: Person, movement: Movement, *, on: date, before: date | None
) -> int:
    """Count exposures of pulling for repetitions, as far as the guard for newcomers asks."""
    enough = turn.house.rulebook.guards.pull_exposures.whole
    if movement.direction.is_push or movement.measure is not Measure.REPS:
        return enough
    keys = [
        key
        for key, other in turn.house.library.movements.items()
        if not other.direction.is_push and other.measure is Measure.REPS
    ]
    for since in (on - LOOKED_BACK_FIRST, None):  # years of history only for who pulled little
        found = len(training.exposures(turn.tx, person.id, keys, before=before, since=since))
        if found >= enough:
            break
    return found
