"""The checklist to move up, from what is stored."""

from collections.abc import Callable, Sequence
from datetime import date, timedelta

from bot.acts import pain_picture
from bot.acts.injuries import held_directions
from bot.acts.own_standards import counts_from, decided_by_coach
from bot.acts.tested import standards_tested
from bot.turn import Turn
from scheduler.calendar.wall_time import local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.catalogue.values import Measure, Movement, Role, Sides
from scheduler.training.gates import Checklist, Condition, GateFacts, checklist
from scheduler.training.sides import SideRatio, side_ratio
from scheduler.training.standards import BaselineSet
from scheduler.training.values import Exposure, StageState
from storage.queries import care, history, training
from storage.records.people import Athlete, Person

APART_FROM_RESULTS = {Condition.WEEKS, Condition.ADHERENCE, Condition.PAIN}
"""What a checklist asks beside what was shown: known without looking through the results."""


def checklist_of(turn: Turn, person: Person, athlete: Athlete) -> Checklist:
    """Draw up the checklist of an athlete as of today."""
    return _drawn_up(turn, person, athlete, has_results=True)


def may_be_complete(turn: Turn, person: Person, athlete: Athlete) -> bool:
    """Tell whether only results may be missing: else there is no need to look through them."""
    asked = _drawn_up(turn, person, athlete, has_results=False)
    return all(one.is_met for one in asked.items if one.condition in APART_FROM_RESULTS)


def _drawn_up(turn: Turn, person: Person, athlete: Athlete, *, has_results: bool) -> Checklist:
    today, gates = local_today(turn, person), turn.house.rulebook.gates
    kept_from = today - timedelta(weeks=gates.adherence_weeks.whole)
    counts = training.kept_of_sent(turn.tx, [person.id], first=kept_from, last=today)
    done, sent = counts.get(person.id, (0, 0))
    pain_from = turn.now - timedelta(days=gates.pain_days.whole)
    exposures = _exposures(turn, athlete, today=today) if has_results else ()
    picture = pain_picture.picture_of(turn, athlete)
    facts = GateFacts(
        state=StageState(
            stage=athlete.stage,
            entered_on=athlete.stage_since,
            is_re_earned=athlete.stage_is_re_earned,
        ),
        on=today,
        profile=athlete.profile.facts,
        exposures=exposures,
        tests=_tests(turn, athlete, today=today) if has_results else (),
        sessions_sent=sent,
        sessions_done=done,
        worst_pain=pain_picture.worst_score_since(turn, athlete, pain_from),
        has_something_rested=not picture.rested.is_empty,
        has_open_alert=bool(care.open_alerts(turn.tx, athlete_id=person.id)),
        side_ratios=(ratios := _side_ratios(turn, exposures)),
        start_ratios=_start_ratios(turn, person, ratios),
        movements=_of_standards(turn, athlete.stage),
        held=held_directions(turn, athlete),
        by_coach=decided_by_coach(turn, athlete),
    )
    return checklist(facts, rulebook=turn.house.rulebook)


def _exposures(turn: Turn, athlete: Athlete, *, today: date) -> tuple[Exposure, ...]:
    """Return what may show a standard of the stage, and what is done arm by arm."""
    arm_by_arm = {
        key
        for key, movement in turn.house.library.movements.items()
        if movement.sides is Sides.EACH and movement.role is not Role.ACCESSORY
    }
    rows = turn.house.rulebook.standards.get(athlete.stage, ())
    keys = arm_by_arm.union(*(row.movements for row in rows))
    since = counts_from(athlete, today=today)
    return history.exposures(turn.tx, athlete.person_id, sorted(keys), since=since)


def _tests(turn: Turn, athlete: Athlete, *, today: date) -> tuple[BaselineSet, ...]:
    """Return the tested sets that show a standard, within the stage or a year as results do."""
    return standards_tested(turn, athlete.person_id, since=counts_from(athlete, today=today))


def _side_ratios(turn: Turn, exposures: Sequence[Exposure]) -> tuple[SideRatio, ...]:
    """Return how the arms compare in each main movement that was done arm by arm often enough."""
    alike = _by_main_movement(turn, exposures)
    return tuple(ratio for ratio in map(_ratio(turn), alike.values()) if ratio is not None)


def _start_ratios(turn: Turn, person: Person, ratios: Sequence[SideRatio]) -> dict[str, float]:
    """Return how the arms compared in the first sessions ever of these movements [ratio]."""
    enough = turn.house.rulebook.gates.sides_sessions.whole
    keys = (one.movement_key for one in ratios)
    first = (
        _ratio(turn)(history.first_exposures(turn.tx, person.id, key, most=enough)) for key in keys
    )
    return {one.movement_key: one.weaker_for_stronger for one in first if one is not None}


def _ratio(turn: Turn) -> Callable[[Sequence[Exposure]], SideRatio | None]:
    """Return a way to compare the arms; it says nothing of too few sessions."""

    def ratio(alike: Sequence[Exposure]) -> SideRatio | None:
        found = side_ratio(alike, rulebook=turn.house.rulebook)
        enough = turn.house.rulebook.gates.sides_sessions.whole
        return found if found is not None and found.sessions >= enough else None

    return ratio


def _by_main_movement(turn: Turn, exposures: Sequence[Exposure]) -> dict[str, list[Exposure]]:
    library = turn.house.library.movements
    found: dict[str, list[Exposure]] = {}
    for exposure in exposures:
        movement = library.get(exposure.dose.movement_key)
        if movement is not None and movement.role is not Role.ACCESSORY:
            found.setdefault(exposure.dose.movement_key, []).append(exposure)
    return found


def _of_standards(turn: Turn, stage: int) -> dict[str, Movement]:
    """Return the movements that the standards of a stage name."""
    library = turn.house.library.movements
    rows = turn.house.rulebook.standards.get(stage, ())
    return {key: library[key] for row in rows for key in row.movements if key in library}


def local_today(turn: Turn, person: Person) -> date:
    """Return the person's own date."""
    return local_date_of(turn.now, zone_named(person.zone))


def measures_of(turn: Turn, stage: int) -> dict[str, Measure]:
    """Return how each standard of a stage is measured."""
    rows = turn.house.rulebook.standards.get(stage, ())
    return {row.key: row.measure for row in rows}
