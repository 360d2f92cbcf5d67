"""Make a day fit its minutes, the week its balance, and the straight arm its share."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from scheduler.catalogue.values import Arm, Chain
from scheduler.reasons import Reason, reason
from scheduler.sources import CH, CP
from scheduler.training.permissions import straight_arm_share
from scheduler.training.week_choice import choose_in_cell
from scheduler.training.week_minutes import lower_quality, session_minutes
from scheduler.training.week_places import Pick
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_slots import slots_of

Day = tuple[Pick, ...]
FEW_SETS = 2  # [sets] ch: shrinking stops here while anything else can give way


def minutes_of(day: Day, *, shelf: Shelf) -> float:
    """Return how long the picks of one day take [min]."""
    return session_minutes(
        slots_of(day),
        movements={pick.movement.key: pick.movement for pick in day},
        stage=shelf.request.stage,
        rulebook=shelf.rulebook,
    )


def fit_day(day: Day, *, shelf: Shelf) -> tuple[Day, tuple[Reason, ...]]:
    """Shrink a day until it fits the minutes, in the order in which a coach would (CP).

    The accessory's second set; sets of the longer pair down to two; the accessory; a lighter
    quality with shorter rests; sets down to one; the second pair; the day. A short session keeps
    its one pair whole and gives up the accessory first.
    """
    is_short = shelf.request.session_min < shelf.rulebook.weeks.short_session_under_min.value
    shrinks = (ACCESSORY_FIRST, *SHRINKS) if is_short else SHRINKS
    codes: list[WeekReason] = []
    while day and minutes_of(day, shelf=shelf) > shelf.request.session_min:
        for code, shrink in shrinks:
            smaller = shrink(day)
            if smaller != day:
                day = smaller
                codes.append(code)
                break
    on = None if not day else day[0].place.on.isoformat()
    return day, tuple(
        reason(
            code,
            CP,
            session_min=shelf.request.session_min,
            **({"on": on} if on is not None else {}),
        )
        for code in dict.fromkeys(codes)
    )


def _accessory_to_one_set(day: Day) -> Day:
    return tuple(
        replace(pick, sets=1) if pick.place.pair is None and pick.sets > 1 else pick for pick in day
    )


def _without_accessory(day: Day) -> Day:
    return tuple(pick for pick in day if pick.place.pair is not None)


def _fewer_sets_above(least: int) -> Callable[[Day], Day]:
    def shrink(day: Day) -> Day:
        longest = max(
            (pick for pick in day if pick.place.pair is not None and pick.sets > least),
            key=lambda pick: (pick.sets, pick.place.pair or 0),
            default=None,
        )
        if longest is None:
            return day
        return tuple(
            replace(pick, sets=max(1, pick.sets - 1))
            if pick.place.pair == longest.place.pair
            else pick
            for pick in day
        )

    return shrink


def _lower_one_quality(day: Day) -> Day:
    for number, pick in reversed(tuple(enumerate(day))):
        lower = lower_quality(pick.quality)
        if lower is not None and not pick.is_dynamic:
            return (*day[:number], replace(pick, quality=lower), *day[number + 1 :])
    return day


def _without_last_pair(day: Day) -> Day:
    last = max((pick.place.pair or 0 for pick in day), default=0)
    return tuple(pick for pick in day if pick.place.pair != last)


SHRINKS: tuple[tuple[WeekReason, Callable[[Day], Day]], ...] = (
    (WeekReason.FEWER_SETS_FOR_MINUTES, _accessory_to_one_set),
    (WeekReason.FEWER_SETS_FOR_MINUTES, _fewer_sets_above(FEW_SETS)),
    (WeekReason.NO_ACCESSORY_FOR_MINUTES, _without_accessory),
    (WeekReason.LOWER_QUALITY_FOR_MINUTES, _lower_one_quality),
    (WeekReason.FEWER_SETS_FOR_MINUTES, _fewer_sets_above(1)),
    (WeekReason.NO_ROOM_IN_MINUTES, _without_last_pair),
)


ACCESSORY_FIRST = (WeekReason.NO_ACCESSORY_FOR_MINUTES, _without_accessory)


def keep_balance(
    picks: Sequence[Pick], *, kept: Sequence[Pick], shelf: Shelf
) -> tuple[tuple[Pick, ...], tuple[Reason, ...]]:
    """Take sets from pushes, down to two each, while the week pushes more than it may.

    A week that pulls more than its pushes keeps its pulls: they are what is left to train.
    """
    most = shelf.rulebook.weeks.push_to_pull.most
    trimmed = list(picks)
    taken = 0

    def sets(*, of_pulls: bool) -> int:
        week = (*kept, *trimmed)
        return sum(
            pick.sets for pick in week if pick.place.pair is not None and pick.is_pull is of_pulls
        )

    pulls = sets(of_pulls=True)
    while most is not None and pulls and sets(of_pulls=False) > most * pulls:
        pushes = [
            number
            for number, pick in enumerate(trimmed)
            if pick.place.pair is not None and not pick.is_pull and pick.sets > FEW_SETS
        ]
        if not pushes:
            break
        longest = max(pushes, key=lambda number: (trimmed[number].sets, number))
        trimmed[longest] = replace(trimmed[longest], sets=trimmed[longest].sets - 1)
        taken += 1
    if not taken:
        return tuple(picks), ()
    return tuple(trimmed), (reason(WeekReason.BALANCE_KEPT, CP, sets_taken=taken),)


def keep_straight_share(
    picks: Sequence[Pick], *, kept: Sequence[Pick], shelf: Shelf
) -> tuple[tuple[Pick, ...], tuple[Reason, ...]]:
    """Take bent-arm sets, then bent-arm places, until straight arms have their share.

    First sets above two go, then a bent arm is made straight in its place, then sets down to
    one, then the place. What a coach's recorded override brought counts on neither side.
    """
    kept_share = list(picks)
    changed = 0
    while _straight_sets_missing(kept_share, kept=kept, shelf=shelf):
        bent = [number for number, pick in enumerate(kept_share) if _counts_bent(pick, shelf=shelf)]
        if not bent:
            break
        longest = max(bent, key=lambda number: (kept_share[number].sets, number))
        pick = kept_share[longest]
        straight = _made_straight(pick, picks=[*kept, *kept_share], shelf=shelf)
        if pick.sets > FEW_SETS:
            kept_share[longest] = replace(pick, sets=pick.sets - 1)
        elif straight is not None:
            kept_share[longest] = straight
        elif pick.sets > 1:
            kept_share[longest] = replace(pick, sets=pick.sets - 1)
        else:
            del kept_share[longest]
        changed += 1
    found = (reason(WeekReason.STRAIGHT_SHARE_KEPT, CH, changes=changed),) if changed else ()
    return tuple(kept_share), found


def _straight_sets_missing(picks: Sequence[Pick], *, kept: Sequence[Pick], shelf: Shelf) -> bool:
    counted = [pick for pick in (*kept, *picks) if pick.place.pair is not None]
    bent = sum(pick.sets for pick in counted if _counts_bent(pick, shelf=shelf))
    straight = sum(pick.sets for pick in counted if not pick.is_bent)
    share = straight_arm_share(stage=shelf.request.stage, rulebook=shelf.rulebook)
    return straight < share * (bent + straight) - 1e-9


def _counts_bent(pick: Pick, *, shelf: Shelf) -> bool:
    is_overridden = pick.movement.key in shelf.request.allowed_by_coach
    return pick.is_bent and pick.place.pair is not None and not is_overridden


def _made_straight(pick: Pick, *, picks: Sequence[Pick], shelf: Shelf) -> Pick | None:
    place = replace(pick.place, arm=Arm.STRAIGHT, wants_dynamic=False)
    rest = [other for other in picks if other is not pick]
    other_chain = Chain.CLOSED if pick.movement.chain is Chain.OPEN else Chain.OPEN
    for chain in (pick.movement.chain, other_chain):
        choice = choose_in_cell(place, cell=(chain, Arm.STRAIGHT), shelf=shelf, taken=rest)
        if choice.pick is not None:
            return replace(choice.pick, sets=pick.sets)
    return None
