"""Fill the pairs of the week's days with movements."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from itertools import combinations, pairwise

from scheduler.catalogue.values import Arm, Chain, Direction
from scheduler.reasons import Reason, reason
from scheduler.sources import CH, CP
from scheduler.training.values import Quality
from scheduler.training.week_choice import choose, choose_in_cell
from scheduler.training.week_days import PUSH_ORDER, DayPlan, PairPlan
from scheduler.training.week_places import HARD, SPACED, Choice, Pick, Place
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import Shelf


@dataclass
class Filling:
    """The week while it is being filled; ``kept`` picks stand and only count."""

    kept: tuple[Pick, ...]
    picks: list[Pick] = field(default_factory=list)
    reasons: list[Reason] = field(default_factory=list)

    @property
    def taken(self) -> tuple[Pick, ...]:
        """Everything that already stands in the week."""
        return (*self.kept, *self.picks)

    def take(self, choices: Iterable[Choice]) -> None:
        """Add what was chosen, and why."""
        for choice in choices:
            if choice.pick is not None:
                self.picks.append(choice.pick)
            self.reasons.extend(choice.reasons)


def fill_week(
    days: Sequence[DayPlan], *, planned: Sequence[DayPlan], shelf: Shelf, kept: tuple[Pick, ...]
) -> Filling:
    """Choose movements for every pair of ``days``; ``planned`` is the whole week's plan.

    A pair that cannot be complete gives its room to a direction that the day does not have yet,
    so that the day is filled with what may be trained; only where no complete pair fits does
    one half stand alone.
    """
    filling = Filling(kept=kept)
    hard_pull_days = choose_hard_pull_days(days, shelf=shelf, kept=kept)
    exposures = [pair.push for day in planned for pair in day.pairs]
    for day in days:
        may_pull_hard = day.on in hard_pull_days
        if not may_pull_hard and _could_pull_hard(shelf):
            filling.reasons.append(
                reason(WeekReason.EASY_PULLS_FOR_SPACING, CP, on=day.on.isoformat())
            )
        for pair in day.pairs:
            _fill_pair(
                pair,
                day=day,
                may_pull_hard=may_pull_hard,
                exposures=exposures,
                week=filling,
                shelf=shelf,
            )
    return filling


def _could_pull_hard(shelf: Shelf) -> bool:
    """Tell whether the stage has hard qualities that a day could be spared."""
    qualities = shelf.rulebook.stage(shelf.request.stage).qualities
    return bool(qualities & HARD) and not shelf.request.is_first_two_weeks


def _fill_pair(
    pair: PairPlan,
    *,
    day: DayPlan,
    may_pull_hard: bool,
    exposures: list[Direction],
    week: Filling,
    shelf: Shelf,
) -> None:
    """Fill a pair, or give its room to another that can be complete, or take its one half."""
    chosen = _choose_pair(pair, day=day, may_pull_hard=may_pull_hard, week=week, shelf=shelf)
    if any(choice.pick is None for choice in chosen):
        for other in _other_pairs(pair, day=day, exposures=exposures, shelf=shelf):
            instead = _choose_pair(
                other, day=day, may_pull_hard=may_pull_hard, week=week, shelf=shelf
            )
            if all(choice.pick is not None for choice in instead):
                exposures.append(other.push)
                week.reasons += [found for choice in chosen for found in choice.reasons]
                week.reasons.append(_refilled(day.on, pair, other))
                chosen = instead
                break
    week.take(chosen)


def choose_hard_pull_days(
    days: Sequence[DayPlan], *, shelf: Shelf, kept: Sequence[Pick]
) -> frozenset[date]:
    """Choose the days that may pull hard: as many full days as have a free day between.

    Hard pulling elsewhere and on days already sent counts as a day to keep away from.
    """
    if shelf.request.is_first_two_weeks:
        return frozenset()
    gap = shelf.rulebook.weeks.free_days_between_hard.whole
    fixed = [hard.on for hard in shelf.request.hard_days if hard.has_pull]
    fixed += [pick.place.on for pick in kept if pick.is_pull and pick.quality in HARD]
    free = [day for day in days if all(abs((day.on - on).days) > gap for on in fixed)]
    apart = [
        chosen
        for size in range(len(free) + 1)
        for chosen in combinations(free, size)
        if all((b.on - a.on).days > gap for a, b in pairwise(chosen))
    ]
    best = max(
        apart,
        key=lambda chosen: (
            sum(len(day.pairs) for day in chosen),
            [-day.on.toordinal() for day in chosen],
        ),
    )
    return frozenset(day.on for day in best)


def _choose_pair(
    pair: PairPlan, *, day: DayPlan, may_pull_hard: bool, week: Filling, shelf: Shelf
) -> tuple[Choice, Choice]:
    push, pull = _places(pair, day=day, may_pull_hard=may_pull_hard, shelf=shelf)
    if _is_dynamic_turn(pair, shelf=shelf):
        dynamic = _choose_dynamic(push, pull, week=week, shelf=shelf)
        if dynamic is not None:
            return dynamic
    first = choose(push, shelf=shelf, taken=week.taken)
    return first, choose(pull, shelf=shelf, taken=_and(week.taken, first))


def _places(
    pair: PairPlan, *, day: DayPlan, may_pull_hard: bool, shelf: Shelf
) -> tuple[Place, Place]:
    push = Place(
        on=day.on,
        letter=day.letter,
        pair=pair.number,
        direction=pair.push,
        chain=pair.chain,
        arm=pair.push_arm,
        is_light=pair.is_light,
        may_be_hard=not shelf.request.is_first_two_weeks,
    )
    pull = replace(push, direction=pair.push.partner, arm=pair.pull_arm, may_be_hard=may_pull_hard)
    return push, pull


def _is_dynamic_turn(pair: PairPlan, *, shelf: Shelf) -> bool:
    """Tell whether a first pair trains dynamically this week.

    In the fresh weeks of the stage always; then rounds every second week of a direction, and the
    same direction's strength in the weeks between (CH).
    """
    request, rulebook = shelf.request, shelf.rulebook
    stage = request.stage_for(pair.push)
    if not rulebook.stage(stage).has_dynamic or pair.number != 1 or pair.is_light:
        return False
    first_stage = rulebook.quality(Quality.DYNAMIC_FRESH).from_stage.whole
    fresh_weeks = rulebook.stages.extras.fresh_weeks_of_dynamic.whole
    is_fresh = stage == first_stage and request.stage_week <= fresh_weeks
    return is_fresh or (request.stage_week + PUSH_ORDER.index(pair.push)) % 2 == 1


def _choose_dynamic(
    push: Place, pull: Place, *, week: Filling, shelf: Shelf
) -> tuple[Choice, Choice] | None:
    """Choose dynamic movements for a pair; rounds on a clock only where both halves have one."""
    first = _dynamic(push, taken=week.taken, shelf=shelf)
    second = _dynamic(pull, taken=_and(week.taken, first), shelf=shelf)
    are_rounds = any(
        choice.pick is not None and choice.pick.quality in SPACED for choice in (first, second)
    )
    if first.pick is None and second.pick is None:
        return None
    if are_rounds and (first.pick is None or second.pick is None):
        return None
    if first.pick is None:
        first = choose(push, shelf=shelf, taken=_and(week.taken, second))
    if second.pick is None:
        second = choose(pull, shelf=shelf, taken=_and(week.taken, first))
    return first, second


def _dynamic(place: Place, *, taken: Sequence[Pick], shelf: Shelf) -> Choice:
    if not place.may_be_hard:
        return Choice(pick=None)
    wanting = replace(place, wants_dynamic=True)
    for arm in Arm:
        choice = choose_in_cell(wanting, cell=(place.chain, arm), shelf=shelf, taken=taken)
        if choice.pick is not None and not _is_too_close(choice.pick, taken=taken, shelf=shelf):
            return choice
    return Choice(pick=None)


def _is_too_close(pick: Pick, *, taken: Sequence[Pick], shelf: Shelf) -> bool:
    """Tell whether rounds would come within a day of their direction's other hard effort."""
    if pick.quality not in SPACED:
        return False
    gap = shelf.rulebook.weeks.free_days_between_hard.whole
    days = [
        other.place.on
        for other in taken
        if other.quality in SPACED and other.directions & pick.directions
    ]
    days += [hard.on for hard in shelf.request.hard_days if hard.directions & pick.directions]
    return any(abs((pick.place.on - day).days) <= gap for day in days)


def _other_pairs(
    pair: PairPlan, *, day: DayPlan, exposures: Sequence[Direction], shelf: Shelf
) -> Iterator[PairPlan]:
    """Offer the directions that the day does not have, the least trained first."""
    here = {planned.push for planned in day.pairs}
    for push in sorted(
        (push for push in PUSH_ORDER if push not in here),
        key=lambda push: (exposures.count(push), PUSH_ORDER.index(push)),
    ):
        most = shelf.rulebook.stage(shelf.request.stage_for(push)).sets_a_direction.most
        least_sets = shelf.rulebook.weeks.single_pair_sets.value
        if most is None or (exposures.count(push) + 1) * least_sets <= most:
            yield replace(pair, push=push, push_arm=Arm.STRAIGHT, pull_arm=Arm.STRAIGHT)


def keep_both_chains(filling: Filling, *, shelf: Shelf) -> None:
    """Turn one place to the other chain where pushing or pulling has only one this week."""
    for is_pull in (False, True):
        chains = {pick.movement.chain for pick in filling.taken if pick.is_pull is is_pull}
        count = sum(pick.is_pull is is_pull for pick in filling.taken)
        if len(chains) != 1 or count < 2:
            continue
        (only,) = chains
        missing = Chain.CLOSED if only is Chain.OPEN else Chain.OPEN
        _turn_one(filling, is_pull=is_pull, to=missing, shelf=shelf)


def _turn_one(filling: Filling, *, is_pull: bool, to: Chain, shelf: Shelf) -> None:
    for number in reversed(range(len(filling.picks))):
        pick = filling.picks[number]
        if pick.is_pull is not is_pull:
            continue
        rest = [other for other in filling.taken if other is not pick]
        place = replace(pick.place, wants_dynamic=False)
        for arm in (place.arm, Arm.STRAIGHT, Arm.BENT):
            choice = choose_in_cell(place, cell=(to, arm), shelf=shelf, taken=rest)
            if choice.pick is not None:
                filling.picks[number] = choice.pick
                filling.reasons.append(
                    reason(
                        WeekReason.OTHER_CHAIN,
                        CP,
                        on=place.on.isoformat(),
                        direction=place.direction.value,
                        movement=choice.pick.movement.key,
                    )
                )
                return


def _and(taken: Sequence[Pick], choice: Choice) -> tuple[Pick, ...]:
    return (*taken, choice.pick) if choice.pick is not None else tuple(taken)


def _refilled(on: date, pair: PairPlan, other: PairPlan) -> Reason:
    return reason(
        WeekReason.OTHER_DIRECTIONS,
        CH,
        on=on.isoformat(),
        direction=pair.push.value,
        to=other.push.value,
    )
