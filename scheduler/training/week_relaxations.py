"""What a drawn week could not keep, in the order in which it may give way."""

from collections import Counter
from collections.abc import Sequence

from scheduler.catalogue.values import Arm, Chain, Direction
from scheduler.reasons import Reason, reason
from scheduler.sources import CP
from scheduler.training.week_days import DayPlan
from scheduler.training.week_places import Pick
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_rules import WeekRules
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import Relaxation, Relaxed, WeekRequest


def relaxations_of(
    picks: Sequence[Pick], *, planned: Sequence[DayPlan], shelf: Shelf, found: Sequence[Reason]
) -> tuple[Relaxation, ...]:
    """Return what gave way in the week of ``picks``, kept days included.

    ``found`` are the reasons of the drawing; the first that speaks of a direction is named as
    the cause.
    """
    main = [pick for pick in picks if pick.place.pair is not None]
    rules = shelf.rulebook.weeks
    return (
        *_too_few_exposures(main, planned=planned, request=shelf.request, rules=rules, found=found),
        *_out_of_balance(main, rules=rules),
        *_one_chain(main, shelf=shelf),
        *_without_partner(main, found=found),
    )


def exposures_due(planned: Sequence[DayPlan], *, rules: WeekRules) -> Counter[Direction]:
    """Return how often each direction is due this week [exposures].

    Twice with three days or more; with one or two days as often as the days whose turn it is
    hold it, which makes twice in three or two weeks.
    """
    days = [day for day in planned if day.letter in {row.letter for row in rules.days}]
    due: Counter[Direction] = Counter()
    if len(planned) >= len(rules.days):
        for direction in Direction:
            due[direction] = rules.exposures_a_week.whole
        return due
    for day in days:
        for pair in rules.day(day.letter).pairs:
            due[pair.push] += 1
            due[pair.push.partner] += 1
    return due


def _too_few_exposures(
    picks: Sequence[Pick],
    *,
    planned: Sequence[DayPlan],
    request: WeekRequest,
    rules: WeekRules,
    found: Sequence[Reason],
) -> list[Relaxation]:
    trained = Counter(pick.place.direction for pick in picks)
    is_short = request.session_min < rules.short_session_under_min.value
    return [
        Relaxation(
            what=Relaxed.FREQUENCY,
            why=reason(
                WeekReason.TOO_FEW_EXPOSURES,
                rules.exposures_a_week.source,
                direction=direction.value,
                exposures=trained[direction],
                exposures_due=due,
                because=_cause(direction, found=found, is_short=is_short),
            ),
        )
        for direction, due in exposures_due(planned, rules=rules).items()
        if trained[direction] < due
    ]


def _cause(direction: Direction, *, found: Sequence[Reason], is_short: bool) -> str:
    """Name what kept a direction from its place: what was said of it, else the minutes."""
    causes = {
        WeekReason.NOTHING_RESTED,
        WeekReason.NOTHING_OWNED,
        WeekReason.NOTHING_PERMITTED,
        WeekReason.HANG_AFTER_HARD_PULLING,
        WeekReason.BANNED,
        WeekReason.INVERTED,
        WeekReason.NOT_YET,
    }
    for known in found:
        if known.code in causes and known.figures.get("direction") in {
            direction.value,
            direction.partner.value,
        }:
            return known.code
    if is_short:
        return WeekReason.SHORT_SESSION
    for code in (WeekReason.OTHER_DIRECTIONS, WeekReason.DAY_MISSED):
        if any(known.code == code for known in found):
            return code
    return WeekReason.NO_ROOM_IN_MINUTES


def _out_of_balance(picks: Sequence[Pick], *, rules: WeekRules) -> list[Relaxation]:
    pushes = sum(pick.sets for pick in picks if not pick.is_pull)
    pulls = sum(pick.sets for pick in picks if pick.is_pull)
    bounds = rules.push_to_pull
    if pulls and pushes / pulls in bounds:
        return []
    why = reason(
        WeekReason.PUSH_TO_PULL,
        bounds.source,
        push_sets=pushes,
        pull_sets=pulls,
        ratio_least=bounds.least,
        ratio_most=bounds.most or 0,
    )
    return [Relaxation(what=Relaxed.BALANCE, why=why)]


def _one_chain(picks: Sequence[Pick], *, shelf: Shelf) -> list[Relaxation]:
    """Record a week with one chain: two weeks hold both, or nothing permitted fills the other."""
    gone: list[Relaxation] = []
    for is_pull in (False, True):
        mine = [pick for pick in picks if pick.is_pull is is_pull]
        missing = frozenset(Chain) - {pick.movement.chain for pick in mine}
        if not missing:
            continue
        fills = any(
            _could_fill(pick, chain=chain, shelf=shelf) for pick in mine for chain in missing
        )
        what = Relaxed.CHAINS_OVER_TWO_WEEKS if fills else Relaxed.CHAINS_DROPPED
        code = WeekReason.ONE_CHAIN_THIS_WEEK if fills else WeekReason.ONE_CHAIN_ONLY
        why = reason(
            code,
            CP,
            is_pull=is_pull,
            missing=" ".join(sorted(chain.value for chain in missing)),
            places=len(mine),
        )
        gone.append(Relaxation(what=what, why=why))
    return gone


def _could_fill(pick: Pick, *, chain: Chain, shelf: Shelf) -> bool:
    return any(
        shelf.obstacle(movement, direction=pick.place.direction, on=pick.place.on) is None
        for arm in Arm
        for movement in shelf.in_cell(pick.place.direction, chain, arm)
    )


def _without_partner(picks: Sequence[Pick], *, found: Sequence[Reason]) -> list[Relaxation]:
    trained = {(pick.place.on, pick.place.direction) for pick in picks}
    return [
        Relaxation(
            what=Relaxed.PAIRING,
            why=reason(
                WeekReason.PARTNER_MISSING,
                CP,
                on=on.isoformat(),
                direction=direction.value,
                because=_cause(direction.partner, found=found, is_short=False),
            ),
        )
        for on, direction in sorted(trained)
        if (on, direction.partner) not in trained
    ]
