"""The dose of one item: everything the rule asks, gathered from what is stored."""

from collections.abc import Sequence
from datetime import date, timedelta

from bot.acts import capacity, pain_picture
from bot.acts.capacity import Known
from bot.acts.own_standards import is_shown, own_standard
from bot.acts.places_used import is_stand_in
from bot.acts.tested import best_tested
from bot.turn import Turn
from scheduler.calendar.wall_time import monday_of
from scheduler.catalogue.values import Measure, Movement, Role, Sides
from scheduler.pain.values import Level, Side
from scheduler.reasons import Decision, reason
from scheduler.sources import CH
from scheduler.training.coach_doses import with_coach_dose
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.doses import next_dose
from scheduler.training.gaps import Absence, Return, after_gap, sets_after_share
from scheduler.training.latest_gap import latest_gap
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.training_reasons import DoseReason
from scheduler.training.tries import TryFacts, is_early, may_try, reference_of, with_try
from scheduler.training.values import AthleteProfile, Dose, PainFacts, Quality, StageState
from storage.queries import history, training
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord

ABSENCES = {"ill": Absence.ILLNESS, "travelling": Absence.TRAVEL}
LEVEL_HELD = {
    SeasonWeekKind.TAPER,
    SeasonWeekKind.IN_SEASON,
    SeasonWeekKind.EASY_AFTER,
    SeasonWeekKind.RETURNING,
}
"""Kinds of week in which doses keep their level; a lighter week has a reason of its own."""
GAPS_REMEMBERED = timedelta(weeks=52)  # [weeks] ch: behind it nobody is a returner any more


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
    known = capacity.seen(turn, person.id, movement, before=before)
    facts = facts_for(turn, person, athlete, item, on=on, before=before)
    if not known.own:
        best = best_tested(turn, person.id, movement.key, before=before)
        facts = facts.model_copy(update={"best": best or facts.best})
    if turn.house.rulebook.quality(item.quality).rounds is not None:
        fresh = capacity.fresh_maximum(turn, known, facts=facts)
        facts = facts.model_copy(update={"fresh_maximum": fresh})
    decision = _by_estimate(turn, known, facts=facts, on=on)
    decision = _or_try(turn, athlete, known, decision, facts=facts, on=on)
    decision = _with_share(decision, planned=item.planned_sets, left=facts.planned_sets)
    return _or_as_set(turn, athlete, known, decision, facts=facts, on=on)


def _with_share(decision: Decision[Dose], *, planned: int, left: int) -> Decision[Dose]:
    """Say that a day has fewer sets than its week planned: on a way back, or behind a gap."""
    if left >= planned:
        return decision
    share_pct = round(100 * left / planned)
    why = reason(DoseReason.SETS_SHARED, CH, share_pct=share_pct, sets=decision.value.sets)
    return Decision(value=decision.value, reasons=(*decision.reasons, why))


def _or_as_set(
    turn: Turn,
    athlete: Athlete,
    known: Known,
    decision: Decision[Dose],
    *,
    facts: DoseFacts,
    on: date,
) -> Decision[Dose]:
    """Ask for the coach's dose until the movement is next done."""
    dose = athlete.profile.coach_plan.dose_of(facts.movement.key)
    if dose is None:
        return decision
    return with_coach_dose(
        decision, dose=dose, done=known.own, facts=facts, on=on, rulebook=turn.house.rulebook
    )


def facts_for(
    turn: Turn, person: Person, athlete: Athlete, item: ItemRecord, *, on: date, before: date | None
) -> DoseFacts:
    """Return what the dose of an item depends on beside what was done with its movement."""
    movement = turn.house.library.movements[item.movement_key]
    share = pain_picture.return_share(pain_picture.picture_of(turn, athlete), movement)
    days = _days_trained(turn, athlete, on=on)
    back = _behind_gap(turn, athlete, days, on=on).value
    share *= _share_since_drawing(turn, athlete, days, on=on, today=back)
    week = training.week(turn.tx, person.id, monday_of(on))
    kind = week.kind if week is not None else SeasonWeekKind.ORDINARY
    return DoseFacts(
        movement=movement,
        quality=item.quality,
        profile=profile_on(athlete, on),
        planned_sets=sets_after_share(sets=item.planned_sets, share=share),
        weeks_trained=weeks_trained(athlete, on),
        pulling_exposures=_pulling_exposures(turn, person, movement, before=before),
        is_lighter_week=week is not None and week.is_lighter,
        holds_level=kind in LEVEL_HELD,
        is_upkeep=item.pair is None and movement.role is Role.MAIN,
        beside_maximal=_is_beside_maximal(turn, athlete, item),
        pain=_pain(turn, athlete, item, movement, monday=monday_of(on)),
        returning=back,
        best=athlete.profile.told_bests.get(movement.key),
    )


def profile_on(athlete: Athlete, on: date) -> AthleteProfile:
    """Return the facts of an athlete on a day: away from home only what is at hand there."""
    facts = athlete.profile.facts
    for travel in athlete.profile.travels:
        if on in travel:
            return facts.model_copy(update={"equipment": facts.equipment & travel.equipment})
    return facts


def _pain(
    turn: Turn, athlete: Athlete, item: ItemRecord, movement: Movement, *, monday: date
) -> PainFacts:
    """Return what hurts in what a movement loads; an easier stand-in is not cut as well."""
    is_each = movement.sides is Sides.EACH and bool(item.arms)
    arms = frozenset(item.arms) if is_each else Side.BOTH.arms
    pain = pain_picture.facts_for(turn, athlete, movement, arms=arms)
    if pain.level is not Level.EASE:
        return pain
    picture = pain_picture.picture_of(turn, athlete)
    swapped = is_stand_in(
        turn,
        athlete.person_id,
        item,
        monday=monday,
        picture=picture,
        changed=athlete.profile.coach_plan,
    )
    return pain.model_copy(update={"is_swapped": swapped})


def _is_beside_maximal(turn: Turn, athlete: Athlete, item: ItemRecord) -> bool:
    """Tell whether a slot is one of a direction's other exposures where one is maximal."""
    has_maximal = Quality.MAXIMAL_STRENGTH in turn.house.rulebook.stage(athlete.stage).qualities
    return has_maximal and item.quality is Quality.GENERAL_STRENGTH


def _by_estimate(turn: Turn, known: Known, *, facts: DoseFacts, on: date) -> Decision[Dose]:
    """Decide by the rule; where only the answer holds it back, ask what the estimate says."""
    rulebook = turn.house.rulebook
    decision = next_dose(known.own, facts=facts, rulebook=rulebook)
    if not any(one.code == DoseReason.SAME_LITTLE_LEFT for one in decision.reasons):
        return decision
    reach = capacity.reach(turn, known, dose=decision.value, facts=facts, on=on)
    with_reach = facts.model_copy(update={"estimate": reach})
    return next_dose(known.own, facts=with_reach, rulebook=rulebook)


def _or_try(
    turn: Turn,
    athlete: Athlete,
    known: Known,
    decision: Decision[Dose],
    *,
    facts: DoseFacts,
    on: date,
) -> Decision[Dose]:
    """Ask for a standard as it is written on the day that the estimate says it is likely."""
    asked = own_standard(turn, athlete, facts.movement.key)
    if asked is None:
        return decision
    state = StageState(
        stage=athlete.stage,
        entered_on=min(athlete.stage_since, on),
        is_re_earned=athlete.stage_is_re_earned,
    )
    if is_early(state, on=on, rulebook=turn.house.rulebook):
        return decision
    about = TryFacts(asked=asked, is_shown=is_shown(turn, athlete, asked), lately=known.own)
    rung = may_try(decision.value, facts=facts, about=about, on=on, rulebook=turn.house.rulebook)
    if rung is None:
        return decision
    reference_kg = reference_of(rung, facts=facts)
    return with_try(
        decision,
        rung=rung,
        arms=capacity.capacities(turn, known, facts=facts, reference_kg=reference_kg),
        facts=facts,
        about=about,
        on=on,
        rulebook=turn.house.rulebook,
    )


def weeks_trained(athlete: Athlete, on: date) -> int:
    """Return the whole weeks since the athlete began with us [weeks]."""
    return max(0, (on - athlete.started_on).days // 7) if athlete.started_on else 0


def returning(turn: Turn, athlete: Athlete, *, on: date) -> Decision[Return]:
    """Decide what training is like behind the latest gap."""
    return _behind_gap(turn, athlete, _days_trained(turn, athlete, on=on), on=on)


def _days_trained(turn: Turn, athlete: Athlete, *, on: date) -> tuple[date, ...]:
    """Return the days trained before a day, as far back as a gap is remembered."""
    since = monday_of(on) - GAPS_REMEMBERED
    return training.trained_days(turn.tx, athlete.person_id, before=on, since=since)


def _behind_gap(
    turn: Turn, athlete: Athlete, days: Sequence[date], *, on: date
) -> Decision[Return]:
    gap = latest_gap(days, today=on, rulebook=turn.house.rulebook)
    return after_gap(
        days_untrained=gap.days_untrained,
        weeks_back=gap.weeks_back,
        absence=ABSENCES.get(athlete.absence_reason or "", Absence.OTHER),
        stage=athlete.stage,
        rulebook=turn.house.rulebook,
    )


def _share_since_drawing(
    turn: Turn, athlete: Athlete, days: Sequence[date], *, on: date, today: Return
) -> float:
    """Return the share of the week's sets [fraction] that a day keeps.

    A week is drawn with the gap that its Monday sees; one that grows long enough in the middle
    of it is made up for here.
    """
    monday = _behind_gap(turn, athlete, days, on=monday_of(on)).value
    return min(1.0, today.share_of_sets / monday.share_of_sets)


def _pulling_exposures(
    turn: Turn, person: Person, movement: Movement, *, before: date | None
) -> int:
    """Count exposures of pulling for repetitions, as far as the guard for newcomers asks."""
    if movement.direction.is_push or movement.measure is not Measure.REPS:
        return turn.house.rulebook.guards.pull_exposures.whole
    return pulls_done(turn, person, before=before)


def pulls_done(turn: Turn, person: Person, *, before: date | None) -> int:
    """Count exposures of pulling for repetitions, as far as anybody asks."""
    enough = turn.house.rulebook.guards.pull_exposures.whole
    keys = [
        key
        for key, other in turn.house.library.movements.items()
        if not other.direction.is_push and other.measure is Measure.REPS
    ]
    return len(history.latest_exposures(turn.tx, person.id, keys, most=enough, before=before))
