"""Judge any week, drawn, edited or sent: which invariants it breaks, as data.

Written apart from the drawing and sharing nothing with it but the values, the permissions and
the estimate of minutes, so that one can be held against the other.
"""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from datetime import date

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Arm, Chain, Demand, Direction, Movement, Sides
from scheduler.pain.values import LeftOut, Side
from scheduler.training.permissions import PermissionFacts, permits
from scheduler.training.rulebook import Rulebook
from scheduler.training.week_check_course import directions_come_round, movements_stay
from scheduler.training.week_check_spacing import (
    hangs_after_hard_pulling,
    hard_pulls_apart,
    maximal_exposures,
    one_direction_apart,
)
from scheduler.training.week_check_upkeep import upkeep_in_bounds
from scheduler.training.week_judged import JudgedWeek, breach, figures_of
from scheduler.training.week_minutes import session_minutes
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import (
    Breach,
    Invariant,
    Slot,
    WeekDraft,
    WeekRequest,
)


def check_week(
    week: WeekDraft | Sequence[Slot],
    *,
    request: WeekRequest,
    library: Library,
    rulebook: Rulebook,
) -> tuple[Breach, ...]:
    """Return every place where a week does not keep an invariant.

    What is past or sent (``request.kept``, days before ``request.open_from``) counts for the
    week as a whole and is not judged by what was left out, owned or permitted since.
    """
    slots = week.slots if isinstance(week, WeekDraft) else tuple(week)
    judged = JudgedWeek(slots, request=request, library=library, rulebook=rulebook)
    checks = (
        _unknown,
        _pairing,
        _balance,
        _chains,
        _permission,
        _straight_share,
        hard_pulls_apart,
        one_direction_apart,
        hangs_after_hard_pulling,
        maximal_exposures,
        _left_out,
        _equipment,
        _minutes,
        _volume,
        movements_stay,
        directions_come_round,
        upkeep_in_bounds,
    )
    return tuple(found for check in checks for found in check(judged))


def _unknown(week: JudgedWeek) -> Iterator[Breach]:
    for slot in week.unknown:
        yield breach(Invariant.PERMISSION, WeekReason.UNKNOWN_MOVEMENT, **figures_of(slot))
    for slot in week.main:
        movement = week.of(slot)
        if slot.direction not in {movement.direction, movement.stands_in_for}:
            yield breach(Invariant.PERMISSION, WeekReason.NOT_OF_THE_DIRECTION, **figures_of(slot))


def _pairing(week: JudgedWeek) -> Iterator[Breach]:
    """1: a push and its partner pull on the same day, alternating."""
    by_day: dict[date, list[Slot]] = defaultdict(list)
    for slot in week.main:
        by_day[slot.on].append(slot)
    for on, slots in sorted(by_day.items()):
        directions = {slot.direction for slot in slots}
        for direction in sorted(directions):
            if direction.partner not in directions:
                yield breach(
                    Invariant.PAIRING,
                    WeekReason.PARTNER_MISSING,
                    on=on.isoformat(),
                    direction=direction.value,
                )
        for pair in {slot.pair for slot in slots}:
            halves = [slot for slot in slots if slot.pair == pair]
            if len(halves) == 2 and halves[0].direction.partner is not halves[1].direction:
                yield breach(
                    Invariant.PAIRING,
                    WeekReason.NOT_ALTERNATING,
                    on=on.isoformat(),
                    pair=pair or 0,
                )


def _balance(week: JudgedWeek) -> Iterator[Breach]:
    """1: push sets for each pull set, over the week."""
    pushes = week.sets(slot for slot in week.main if slot.direction.is_push)
    pulls = week.sets(slot for slot in week.main if not slot.direction.is_push)
    bounds = week.rulebook.weeks.push_to_pull
    if not pulls or pushes / pulls not in bounds:
        yield breach(Invariant.BALANCE, WeekReason.PUSH_TO_PULL, push_sets=pushes, pull_sets=pulls)


def _chains(week: JudgedWeek) -> Iterator[Breach]:
    """2: open and closed, for pushing and for pulling."""
    for is_push in (True, False):
        chains = {week.of(slot).chain for slot in week.main if slot.direction.is_push is is_push}
        for missing in sorted(set(Chain) - chains):
            yield breach(
                Invariant.CHAINS,
                WeekReason.ONE_CHAIN_THIS_WEEK,
                is_push=is_push,
                missing=missing.value,
            )


def _permission(week: JudgedWeek) -> Iterator[Breach]:
    """3: arm, tempo, footing and quality that the stage permits."""
    request, rulebook = week.request, week.rulebook
    for slot in week.judged:
        movement = week.of(slot)
        is_overridden = slot.movement_key in request.allowed_by_coach
        stage = request.stage
        if request.held_at_stage_one & {slot.direction, movement.direction}:
            stage = 1
        facts = PermissionFacts(
            stage=stage,
            has_strict_pulls=request.can_pull_dynamically,
            has_upkeep=request.has_upkeep and slot in week.upkeep,
            is_overridden=is_overridden,
        )
        is_permitted = permits(movement, facts=facts, rulebook=rulebook).value
        has_quality = slot.quality in rulebook.stage(stage).qualities
        if not is_permitted or not (has_quality or is_overridden):
            yield breach(
                Invariant.PERMISSION,
                WeekReason.STAGE_FORBIDS,
                stage=stage,
                quality=slot.quality.value,
                **figures_of(slot),
            )
        if slot.movement_key in request.banned:
            yield breach(Invariant.PERMISSION, WeekReason.BANNED, **figures_of(slot))
        if slot.movement_key in request.not_yet - request.pinned - request.allowed_by_coach:
            yield breach(Invariant.PERMISSION, WeekReason.NOT_YET, **figures_of(slot))
        if Demand.INVERSION in movement.demands and not request.is_inversion_ok:
            yield breach(Invariant.PERMISSION, WeekReason.INVERTED, **figures_of(slot))


def _straight_share(week: JudgedWeek) -> Iterator[Breach]:
    """3: the share of the main sets that straight arms keep, a coach's overrides apart.

    Bent-arm work that was sent stands; only what adds to it is a breach.
    """
    counted = [slot for slot in week.main if slot.movement_key not in week.request.allowed_by_coach]
    total = week.sets(counted)
    straight = week.sets(slot for slot in counted if week.of(slot).arm is Arm.STRAIGHT)
    share = week.rulebook.stage(week.request.stage).straight_arm_share.value
    has_new = any(week.of(slot).arm is Arm.BENT for slot in counted if slot in week.judged)
    if has_new and straight < share * total - 1e-9:
        yield breach(
            Invariant.STRAIGHT_SHARE,
            WeekReason.STRAIGHT_SHARE_LOW,
            straight_sets=straight,
            sets=total,
            share_least=share,
        )


def _left_out(week: JudgedWeek) -> Iterator[Breach]:
    """5: nothing rested, arm by arm."""
    rested = week.request.rested
    for slot in week.judged:
        movement = week.of(slot)
        arms = slot.arms if movement.sides is Sides.EACH else {Side.LEFT, Side.RIGHT}
        hurt = [arm for arm in arms if _is_rested(rested, slot, movement, arm)]
        if hurt or not slot.arms:
            yield breach(
                Invariant.LEFT_OUT,
                WeekReason.RESTED_LOADED,
                arm=" ".join(sorted(arm.value for arm in hurt)),
                **figures_of(slot),
            )


def _is_rested(rested: LeftOut, slot: Slot, movement: Movement, arm: Side) -> bool:
    return rested.hits(movement, arm) or (slot.direction, arm) in rested.directions


def _equipment(week: JudgedWeek) -> Iterator[Breach]:
    """5: nothing without the equipment."""
    for slot in week.judged:
        if not week.of(slot).fits(week.request.equipment):
            yield breach(Invariant.EQUIPMENT, WeekReason.NOT_OWNED, **figures_of(slot))


def _minutes(week: JudgedWeek) -> Iterator[Breach]:
    """5: no session above its minutes."""
    request = week.request
    for on in sorted({slot.on for slot in week.judged}):
        minutes = session_minutes(
            [slot for slot in week.slots if slot.on == on],
            movements=week.movements,
            stage=request.stage,
            rulebook=week.rulebook,
        )
        if minutes > request.session_min:
            yield breach(
                Invariant.MINUTES,
                WeekReason.ABOVE_MINUTES,
                on=on.isoformat(),
                minutes=round(minutes, 1),
                session_min=request.session_min,
            )


def _volume(week: JudgedWeek) -> Iterator[Breach]:
    """The upper bounds of a direction's weekly sets; the lower gives way and is not judged."""
    request, rules = week.request, week.rulebook
    for direction in Direction:
        sets = week.sets(slot for slot in week.main if slot.direction is direction)
        stage = 1 if direction in request.held_at_stage_one else request.stage
        bounds = [rules.stage(stage).sets_a_direction.most]
        last = request.last_ordinary_sets.get(direction)
        if last is not None and request.plan_week >= rules.volume.growth_from_week.whole:
            bounds.append(last + rules.volume.growth_sets.value)
        most = min(bound for bound in bounds if bound is not None)
        has_new = any(slot.direction is direction for slot in week.judged)
        if sets > most and has_new:
            yield breach(
                Invariant.VOLUME,
                WeekReason.ABOVE_SETS,
                direction=direction.value,
                sets=sets,
                sets_most=most,
            )
