"""How many sets each place of the week gets."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from math import floor

from scheduler.catalogue.values import Direction
from scheduler.reasons import Reason, reason
from scheduler.training.labelled import Labelled
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Quality
from scheduler.training.week_places import Pick
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_values import WeekRequest


@dataclass(frozen=True)
class GivenSets:
    """The picks with their sets, and why they have not more."""

    picks: tuple[Pick, ...]
    reasons: tuple[Reason, ...]


def give_sets(
    picks: Sequence[Pick], *, kept: Sequence[Pick], request: WeekRequest, rulebook: Rulebook
) -> GivenSets:
    """Give each pick its sets [sets]: evenly over a direction's days, equal within a pair.

    A direction gets what is wanted in its stage, never above the stage's bound, from the third
    week on never more than two above its last ordinary week; a lighter or returning week takes
    its share of that, rounded down, at least one set a place (CP). A place left without sets
    goes, with its partner.
    """
    reasons: list[Reason] = []
    sets: dict[int, int] = {}
    for direction in Direction:
        mine = {
            number: pick for number, pick in enumerate(picks) if pick.place.direction is direction
        }
        if not mine:
            continue
        limit, why = weekly_limit(direction, request=request, rulebook=rulebook)
        used = sum(
            pick.sets
            for pick in kept
            if pick.place.direction is direction and pick.place.pair is not None
        )
        given = _share_out(mine, limit=limit - used, request=request, rulebook=rulebook)
        if request.sets_share < 1:
            cut = max(len(mine), floor(request.sets_share * sum(given.values()) + 1e-9))
            given = _share_out(
                mine, limit=min(cut, limit - used), request=request, rulebook=rulebook
            )
        sets |= given
        reasons += why
    _spare_new_pullers(sets, picks=picks, request=request, rulebook=rulebook)
    _level_pairs(sets, picks=picks)
    with_sets = tuple(
        _as_light_as_its_sets(replace(pick, sets=sets[number]), rulebook=rulebook)
        for number, pick in enumerate(picks)
        if sets[number] > 0
    )
    return GivenSets(picks=with_sets, reasons=(*reasons, *_week_reasons(request, rulebook)))


def weekly_limit(
    direction: Direction, *, request: WeekRequest, rulebook: Rulebook
) -> tuple[int, tuple[Reason, ...]]:
    """Return the most sets of a direction this week [sets], and why when growth is capped."""
    stage = request.stage_for(direction)
    wanted = rulebook.weeks.sets_wanted[stage - 1].whole
    most = rulebook.stage(stage).sets_a_direction.most
    limit = wanted if most is None else min(wanted, floor(most))
    volume = rulebook.volume
    last = request.last_ordinary_sets.get(direction)
    if last is None or request.plan_week < volume.growth_from_week.whole:
        return limit, ()
    grown = last + (volume.growth_sets.whole if request.sets_share >= 1 else 0)
    if grown >= limit:
        return limit, ()
    why = reason(
        WeekReason.GROWTH_CAPPED,
        volume.growth_sets.source,
        direction=direction.value,
        last_sets=last,
        sets=grown,
    )
    return grown, (why,)


def _share_out(
    picks: Mapping[int, Pick], *, limit: int, request: WeekRequest, rulebook: Rulebook
) -> dict[int, int]:
    """Hand out sets one at a time, always to the place that has the fewest."""
    caps = {
        number: _most_sets(pick, request=request, rulebook=rulebook)
        for number, pick in picks.items()
    }
    given = dict.fromkeys(picks, 0)
    for _ in range(max(0, limit)):
        open_places = [number for number in picks if given[number] < caps[number]]
        if not open_places:
            break
        neediest = min(
            open_places,
            key=lambda number: (
                given[number],
                picks[number].place.is_light,
                picks[number].place.pair or 0,
                picks[number].place.on,
            ),
        )
        given[neediest] += 1
    return given


def _most_sets(pick: Pick, *, request: WeekRequest, rulebook: Rulebook) -> int:
    """Return the most sets of one place [sets]: its quality's, two when light or at the start."""
    bounds: list[Labelled] = []
    if request.is_first_two_weeks:
        bounds.append(rulebook.start.careful_sets)
    if pick.place.is_light:
        bounds.append(rulebook.weeks.single_pair_sets)
    most = rulebook.quality(pick.quality).sets.most
    return min(floor(most) if most is not None else 99, *(bound.whole for bound in bounds), 99)


def _spare_new_pullers(
    sets: dict[int, int], *, picks: Sequence[Pick], request: WeekRequest, rulebook: Rulebook
) -> None:
    """Keep the first days of pulling for repetitions to their few sets in all (CH)."""
    pulling = [number for number, pick in enumerate(picks) if pick.pulls_for_reps]
    days = sorted({picks[number].place.on for number in pulling})
    for on in days[: request.pull_exposures_to_go]:
        today = [number for number in pulling if picks[number].place.on == on]
        while sum(sets[number] for number in today) > rulebook.guards.pull_sets_most.whole:
            sets[max(today, key=lambda number: (sets[number], number))] -= 1


def _level_pairs(sets: dict[int, int], *, picks: Sequence[Pick]) -> None:
    """Give push and pull of a pair the same sets, so that they can alternate."""
    for number, pick in enumerate(picks):
        for other, partner in enumerate(picks):
            if partner.place.on == pick.place.on and partner.place.pair == pick.place.pair:
                sets[number] = min(sets[number], sets[other])


def _as_light_as_its_sets(pick: Pick, *, rulebook: Rulebook) -> Pick:
    """Train a light day's place for endurance when its sets are too few for more."""
    is_too_few = pick.sets < rulebook.quality(pick.quality).sets.least
    if pick.place.is_light and is_too_few:
        return replace(pick, quality=Quality.MUSCULAR_ENDURANCE)
    return pick


def _week_reasons(request: WeekRequest, rulebook: Rulebook) -> tuple[Reason, ...]:
    found: list[Reason] = []
    if request.sets_share < 1:
        found.append(
            reason(
                WeekReason.SHARE_OF_SETS,
                rulebook.lighter.cut.source,
                share_pct=round(100 * request.sets_share),
            )
        )
    if request.is_first_two_weeks:
        careful = rulebook.start.careful_sets
        found.append(reason(WeekReason.FIRST_TWO_WEEKS, careful.source, sets=careful.whole))
    if request.pull_exposures_to_go:
        most = rulebook.guards.pull_sets_most
        found.append(reason(WeekReason.CAREFUL_PULLING, most.source, sets_most=most.whole))
    return tuple(found)
