"""Judge any week, drawn, edited or sent: which invariants it breaks, as data.

Written apart from the drawing and sharing nothing with it but the values, the permissions and
the estimate of minutes, so that one can be held against the other.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import date
from itertools import pairwise

from scheduler.catalogue.values import Arm, Chain, Demand, Direction, Movement, Sides
from scheduler.pain.values import LeftOut, Side
from scheduler.reasons import Figure, reason
from scheduler.sources import CP
from scheduler.training.permissions import PermissionFacts, permits
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Quality
from scheduler.training.week_minutes import session_minutes
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import MovementLibrary, ladder_of, movements_by_key
from scheduler.training.week_values import (
    Breach,
    Invariant,
    Slot,
    WeekDraft,
    WeekRequest,
)

NEEDS_A_FREE_DAY = frozenset(Quality) - {Quality.MUSCULAR_ENDURANCE, Quality.STRENGTH_ENDURANCE}
ONE_DIRECTION_APART = frozenset({Quality.MAXIMAL_STRENGTH, Quality.REPEATED_EFFORT})


class JudgedWeek:
    """The slots of a week beside what they are judged by."""

    def __init__(
        self,
        slots: Sequence[Slot],
        *,
        request: WeekRequest,
        library: MovementLibrary,
        rulebook: Rulebook,
    ) -> None:
        """Look the movements up once; slots whose movement is unknown are judged as that only."""
        self.request = request
        self.rulebook = rulebook
        self.movements: Mapping[str, Movement] = movements_by_key(library)
        self.unknown = [slot for slot in slots if slot.movement_key not in self.movements]
        self.slots = [slot for slot in slots if slot.movement_key in self.movements]
        self.main = [slot for slot in self.slots if slot.is_main]
        self.judged = [slot for slot in self.slots if not self._stands(slot)]

    def of(self, slot: Slot) -> Movement:
        """Return the movement of a slot."""
        return self.movements[slot.movement_key]

    def sets(self, slots: Iterable[Slot]) -> int:
        """Return the sets of some slots [sets]."""
        return sum(slot.sets for slot in slots)

    def _stands(self, slot: Slot) -> bool:
        """Tell whether a slot was sent before what is judged now was known."""
        request = self.request
        return slot in request.kept or (
            request.open_from is not None and slot.on < request.open_from
        )


def check_week(
    week: WeekDraft | Sequence[Slot],
    *,
    request: WeekRequest,
    library: MovementLibrary,
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
        _hard_pulls_apart,
        _one_direction_apart,
        _hangs_after_hard_pulling,
        _maximal_exposures,
        _left_out,
        _equipment,
        _minutes,
        _volume,
        _stay,
        _frequency,
    )
    return tuple(breach for check in checks for breach in check(judged))


def _breach(invariant: Invariant, code: WeekReason, **figures: Figure) -> Breach:
    return Breach(invariant=invariant, why=reason(code, CP, **figures))


def _slot_figures(slot: Slot) -> dict[str, Figure]:
    return {
        "on": slot.on.isoformat(),
        "direction": slot.direction.value,
        "movement": slot.movement_key,
    }


def _unknown(week: JudgedWeek) -> Iterator[Breach]:
    for slot in week.unknown:
        yield _breach(Invariant.PERMISSION, WeekReason.UNKNOWN_MOVEMENT, **_slot_figures(slot))
    for slot in week.main:
        movement = week.of(slot)
        if slot.direction not in {movement.direction, movement.stands_in_for}:
            yield _breach(
                Invariant.PERMISSION, WeekReason.NOT_OF_THE_DIRECTION, **_slot_figures(slot)
            )


def _pairing(week: JudgedWeek) -> Iterator[Breach]:
    """1: a push and its partner pull on the same day, alternating."""
    by_day: dict[date, list[Slot]] = defaultdict(list)
    for slot in week.main:
        by_day[slot.on].append(slot)
    for on, slots in sorted(by_day.items()):
        directions = {slot.direction for slot in slots}
        for direction in sorted(directions):
            if direction.partner not in directions:
                yield _breach(
                    Invariant.PAIRING,
                    WeekReason.PARTNER_MISSING,
                    on=on.isoformat(),
                    direction=direction.value,
                )
        for pair in {slot.pair for slot in slots}:
            halves = [slot for slot in slots if slot.pair == pair]
            if len(halves) == 2 and halves[0].direction.partner is not halves[1].direction:
                yield _breach(
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
        yield _breach(Invariant.BALANCE, WeekReason.PUSH_TO_PULL, push_sets=pushes, pull_sets=pulls)


def _chains(week: JudgedWeek) -> Iterator[Breach]:
    """2: open and closed, for pushing and for pulling."""
    for is_push in (True, False):
        chains = {week.of(slot).chain for slot in week.main if slot.direction.is_push is is_push}
        for missing in sorted(set(Chain) - chains):
            yield _breach(
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
            is_overridden=is_overridden,
        )
        is_permitted = permits(movement, facts=facts, rulebook=rulebook).value
        has_quality = slot.quality in rulebook.stage(stage).qualities
        if not is_permitted or not (has_quality or is_overridden):
            yield _breach(
                Invariant.PERMISSION,
                WeekReason.STAGE_FORBIDS,
                stage=stage,
                quality=slot.quality.value,
                **_slot_figures(slot),
            )
        if slot.movement_key in request.banned:
            yield _breach(Invariant.PERMISSION, WeekReason.BANNED, **_slot_figures(slot))
        if Demand.INVERSION in movement.demands and not request.is_inversion_ok:
            yield _breach(Invariant.PERMISSION, WeekReason.INVERTED, **_slot_figures(slot))


def _straight_share(week: JudgedWeek) -> Iterator[Breach]:
    """3: the share of the main sets that straight arms keep, a coach's overrides apart."""
    counted = [slot for slot in week.main if slot.movement_key not in week.request.allowed_by_coach]
    total = week.sets(counted)
    straight = week.sets(slot for slot in counted if week.of(slot).arm is Arm.STRAIGHT)
    share = week.rulebook.stage(week.request.stage).straight_arm_share.value
    if straight < share * total - 1e-9:
        yield _breach(
            Invariant.STRAIGHT_SHARE,
            WeekReason.STRAIGHT_SHARE_LOW,
            straight_sets=straight,
            sets=total,
            share_least=share,
        )


def _hard_pulls_apart(week: JudgedWeek) -> Iterator[Breach]:
    """4: hard pulls and hangs with free days between, hard days elsewhere included."""
    gap = week.rulebook.weeks.free_days_between_hard.whole
    hard = {
        slot.on
        for slot in week.main
        if not slot.direction.is_push and slot.quality in NEEDS_A_FREE_DAY
    }
    drawn = {
        slot.on
        for slot in week.judged
        if slot.is_main and not slot.direction.is_push and slot.quality in NEEDS_A_FREE_DAY
    }
    elsewhere = {day.on for day in week.request.hard_days if day.has_pull}
    for on in sorted(drawn):
        close = [day for day in (hard - {on}) | elsewhere if abs((day - on).days) <= gap]
        if close:
            yield _breach(
                Invariant.SPACING,
                WeekReason.HARD_TOO_CLOSE,
                on=on.isoformat(),
                to=min(close).isoformat(),
                is_pull=True,
            )


def _one_direction_apart(week: JudgedWeek) -> Iterator[Breach]:
    """4: maximal and repeated effort of one direction with free days between."""
    gap = week.rulebook.weeks.free_days_between_hard.whole
    for direction in Direction:
        days = {
            slot.on
            for slot in week.main
            if direction in {slot.direction, week.of(slot).direction}
            and slot.quality in ONE_DIRECTION_APART
        }
        elsewhere = {day.on for day in week.request.hard_days if direction in day.directions}
        close = [
            (a, b)
            for a, b in pairwise(sorted(days | elsewhere))
            if (b - a).days <= gap and (a in days or b in days)
        ]
        close += [(on, on) for on in days & elsewhere]
        for a, b in close:
            yield _breach(
                Invariant.SPACING,
                WeekReason.HARD_TOO_CLOSE,
                on=a.isoformat(),
                to=b.isoformat(),
                direction=direction.value,
            )


def _hangs_after_hard_pulling(week: JudgedWeek) -> Iterator[Breach]:
    """4: no hang on the day after hard pulling elsewhere."""
    pulled = {day.on for day in week.request.hard_days if day.has_pull}
    for slot in week.judged:
        is_hang = Demand.TRACTION in week.of(slot).demands
        if is_hang and any((slot.on - on).days == 1 for on in pulled):
            yield _breach(
                Invariant.SPACING, WeekReason.HANG_AFTER_HARD_PULLING, **_slot_figures(slot)
            )


def _maximal_exposures(week: JudgedWeek) -> Iterator[Breach]:
    most = week.rulebook.stages.extras.maximal_exposures_a_week.whole
    exposures = Counter(
        direction
        for slot in week.main
        if slot.quality is Quality.MAXIMAL_STRENGTH
        for direction in {slot.direction, week.of(slot).direction}
    )
    for direction, count in exposures.items():
        if count > most:
            yield _breach(
                Invariant.MAXIMAL_EXPOSURES,
                WeekReason.MAXIMAL_TOO_OFTEN,
                direction=direction.value,
                exposures=count,
            )


def _left_out(week: JudgedWeek) -> Iterator[Breach]:
    """5: nothing rested, arm by arm."""
    rested = week.request.rested
    for slot in week.judged:
        movement = week.of(slot)
        arms = slot.arms if movement.sides is Sides.EACH else {Side.LEFT, Side.RIGHT}
        hurt = [arm for arm in arms if _is_rested(rested, slot, movement, arm)]
        if hurt or not slot.arms:
            yield _breach(
                Invariant.LEFT_OUT,
                WeekReason.RESTED_LOADED,
                arm=" ".join(sorted(arm.value for arm in hurt)),
                **_slot_figures(slot),
            )


def _is_rested(rested: LeftOut, slot: Slot, movement: Movement, arm: Side) -> bool:
    return rested.hits(movement, arm) or (slot.direction, arm) in rested.directions


def _equipment(week: JudgedWeek) -> Iterator[Breach]:
    """5: nothing without the equipment."""
    for slot in week.judged:
        if not week.of(slot).fits(week.request.equipment):
            yield _breach(Invariant.EQUIPMENT, WeekReason.NOT_OWNED, **_slot_figures(slot))


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
            yield _breach(
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
            yield _breach(
                Invariant.VOLUME,
                WeekReason.ABOVE_SETS,
                direction=direction.value,
                sets=sets,
                sets_most=most,
            )


def _stay(week: JudgedWeek) -> Iterator[Breach]:
    """6: movements stay their weeks in their place; a step along the ladder is no change."""
    request, stay = week.request, week.rulebook.weeks.stay
    places = {(entry.pair, entry.direction, entry.chain, entry.arm) for entry in request.history}
    for pair, direction, chain, arm in sorted(places):
        entries = [
            entry
            for entry in request.history
            if (entry.pair, entry.direction, entry.chain, entry.arm)
            == (pair, direction, chain, arm)
            and entry.movement_key in week.movements
        ]
        for is_dynamic in (False, True):
            of_tempo = [
                entry
                for entry in entries
                if (week.movements[entry.movement_key].tempo == "dynamic") is is_dynamic
            ]
            current = max(
                of_tempo, key=lambda entry: (entry.last_used_on, entry.movement_key), default=None
            )
            if current is None:
                continue
            ladder = ladder_of(week.movements[current.movement_key], week.movements)
            for slot in week.judged:
                movement = week.of(slot)
                here = (slot.pair, slot.direction, movement.chain, movement.arm)
                is_here = here == (pair, direction, chain, arm)
                if not is_here or (movement.tempo == "dynamic") is not is_dynamic:
                    continue
                if slot.movement_key in request.pinned:
                    continue
                least = stay.first_pair_least.value if pair == 1 else stay.second_pair.least
                most = None if pair == 1 else stay.second_pair.most
                is_same = slot.movement_key in ladder
                if not is_same and current.weeks < least:
                    yield _stay_breach(WeekReason.CHANGED_EARLY, slot, weeks=current.weeks)
                if is_same and most is not None and current.weeks >= most:
                    yield _stay_breach(WeekReason.STAYED_TOO_LONG, slot, weeks=current.weeks)


def _stay_breach(code: WeekReason, slot: Slot, *, weeks: int) -> Breach:
    return _breach(Invariant.STAY, code, weeks=weeks, **_slot_figures(slot))


def _frequency(week: JudgedWeek) -> Iterator[Breach]:
    """7: each direction as often as its days come round."""
    request, rules = week.request, week.rulebook.weeks
    days = len(request.weekdays) or request.days_a_week
    due: Counter[Direction] = Counter(dict.fromkeys(Direction, rules.exposures_a_week.whole))
    if days < len(rules.days):
        letters = [day.letter for day in rules.days]
        start = letters.index(request.next_letter)
        due = Counter(
            direction
            for turn in range(days)
            for row in rules.day(letters[(start + turn) % len(letters)]).pairs
            for direction in (row.push, row.push.partner)
        )
    trained = Counter(slot.direction for slot in week.main)
    for direction, wanted in due.items():
        if trained[direction] < wanted:
            yield _breach(
                Invariant.FREQUENCY,
                WeekReason.TOO_FEW_EXPOSURES,
                direction=direction.value,
                exposures=trained[direction],
                exposures_due=wanted,
            )
