"""Which days of the week are trained, and which pairs stand on each."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import combinations, pairwise

from scheduler.catalogue.values import PUSHES, Arm, Chain, Direction
from scheduler.training.week_rules import WeekRules
from scheduler.training.week_values import DayLetter, WeekRequest

TURN = (DayLetter.A, DayLetter.B, DayLetter.C)
SINGLES = (DayLetter.D, DayLetter.E)
PUSH_ORDER = tuple(direction for direction in Direction if direction in PUSHES)


@dataclass(frozen=True)
class PairPlan:
    """A push and its partner pull as the week means them, before any movement is chosen."""

    number: int
    push: Direction
    chain: Chain
    push_arm: Arm
    pull_arm: Arm
    is_light: bool = False


@dataclass(frozen=True)
class DayPlan:
    """One training day: its date, its letter and its pairs in order."""

    on: date
    letter: DayLetter
    pairs: tuple[PairPlan, ...]


def training_dates(request: WeekRequest) -> tuple[date, ...]:
    """Return the training days of the week, in order.

    Given weekdays stand as they are. With only a number of days the week chooses: never the day
    after hard pulling elsewhere where that can be helped, no weekends, as many days as possible
    with a free day between, then evenly spread (CP).
    """
    if request.weekdays:
        return tuple(_date(request, day) for day in sorted(request.weekdays))
    after_pulling = {
        (hard.on - request.week_start).days + 2 for hard in request.hard_days if hard.has_pull
    }
    best = min(
        combinations(range(1, 8), request.days_a_week),
        key=lambda days: (
            len(after_pulling.intersection(days)),
            sum(day > 5 for day in days),
            -_most_days_apart(days),
            sum(gap * gap for gap in _gaps(days)),
            days,
        ),
    )
    return tuple(_date(request, day) for day in best)


def lay_out_days(request: WeekRequest, *, rules: WeekRules) -> tuple[DayPlan, ...]:
    """Return the plan of the week: days A, B, C in turn, single-pair days beyond the third.

    Under ``short_session_under_min`` [min] only first pairs stand, and their chain alternates
    from day to day and from week to week, so that both chains still come round.
    """
    dates = training_dates(request)
    singles = _single_positions(dates)
    turn = TURN.index(request.next_letter)
    is_short = request.session_min < rules.short_session_under_min.value
    days: list[DayPlan] = []
    for position, on in enumerate(dates):
        if position in singles:
            continue
        letter = TURN[(turn + len(days)) % len(TURN)]
        pairs = _pairs_of(letter, request=request, rules=rules)
        if is_short:
            chain = _alternating(position + request.plan_week)
            pairs = (_in_chain(pairs[0], chain),)
        days.append(DayPlan(on=on, letter=letter, pairs=pairs))
    return _with_singles(days, dates=dates, singles=singles, request=request, is_short=is_short)


def _date(request: WeekRequest, iso_weekday: int) -> date:
    return request.week_start + timedelta(days=iso_weekday - 1)


def _gaps(days: Sequence[int]) -> list[int]:
    """Return the days between neighbouring training days, round into the next week [days]."""
    return [
        (later - earlier) % 7 or 7
        for earlier, later in zip(days, (*days[1:], days[0]), strict=True)
    ]


def _most_days_apart(days: Sequence[int]) -> int:
    """Return how many of ``days`` can be taken with a free day between them."""
    taken = 0
    last = -1
    for day in days:
        if day - last >= 2 or last < 0:
            taken, last = taken + 1, day
    return taken


def _single_positions(dates: Sequence[date]) -> frozenset[int]:
    """Choose which days carry a single pair, so that the full days lie apart."""
    count = max(0, len(dates) - len(TURN))

    def crowding(singles: tuple[int, ...]) -> tuple[int, int, tuple[int, ...]]:
        full = [day for position, day in enumerate(dates) if position not in singles]
        close = sum((later - earlier).days < 2 for earlier, later in pairwise(full))
        return close, -(full[-1] - full[0]).days, singles

    choices: list[tuple[int, ...]] = list(combinations(range(len(dates)), count))
    roomiest = min(choices, key=crowding)
    return frozenset(roomiest)


def _pairs_of(letter: DayLetter, *, request: WeekRequest, rules: WeekRules) -> tuple[PairPlan, ...]:
    return tuple(
        PairPlan(
            number=number,
            push=row.push,
            chain=row.chain,
            push_arm=row.arm(row.push, stage=request.stage_for(row.push)),
            pull_arm=row.arm(row.push.partner, stage=request.stage_for(row.push.partner)),
        )
        for number, row in enumerate(rules.day(letter).pairs, start=1)
    )


def _alternating(count: int) -> Chain:
    return Chain.OPEN if count % 2 == 0 else Chain.CLOSED


def _in_chain(pair: PairPlan, chain: Chain) -> PairPlan:
    return PairPlan(
        number=pair.number,
        push=pair.push,
        chain=chain,
        push_arm=pair.push_arm,
        pull_arm=pair.pull_arm,
        is_light=pair.is_light,
    )


def _with_singles(
    days: list[DayPlan],
    *,
    dates: Sequence[date],
    singles: frozenset[int],
    request: WeekRequest,
    is_short: bool,
) -> tuple[DayPlan, ...]:
    """Add the single-pair days: light, straight-arm, away from what their neighbours train."""
    taken: set[Direction] = set()
    planned = list(days)
    for letter, position in zip(SINGLES, sorted(singles), strict=False):
        on = dates[position]
        near = [pair.push for day in days if abs((day.on - on).days) < 2 for pair in day.pairs]
        push = min(
            (direction for direction in PUSH_ORDER if direction not in taken),
            key=lambda direction: (
                near.count(direction),
                (PUSH_ORDER.index(direction) - request.plan_week) % len(PUSH_ORDER),
            ),
        )
        taken.add(push)
        chain = _other_chain_of(push, days) if is_short else Chain.OPEN
        pair = PairPlan(
            number=1,
            push=push,
            chain=chain,
            push_arm=Arm.STRAIGHT,
            pull_arm=Arm.STRAIGHT,
            is_light=True,
        )
        planned.append(DayPlan(on=on, letter=letter, pairs=(pair,)))
    return tuple(sorted(planned, key=lambda day: day.on))


def _other_chain_of(push: Direction, days: Sequence[DayPlan]) -> Chain:
    chains = [pair.chain for day in days for pair in day.pairs if pair.push is push]
    return Chain.OPEN if Chain.CLOSED in chains else Chain.CLOSED
