"""Put the sets of one draft in their places: which set, which arm, which load."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.reading.dose import MOST_TIMES_THE_SETS, Draft, RawSet
from bot.reading.known import KnownItem, SetResult
from bot.reading.phrases import Said
from bot.reading.placing import Placed, placed_sets
from bot.reading.plausible import is_plausible, is_possible
from bot.reading.values import Assumption, AssumptionCode, QuestionCode
from bot.reading.words import Mark
from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side

ADDED_MOST_KG = 25.0  # [kg] CH: more was never hung on a belt without being planned
UNIT_OF = {
    Measure.HOLD_S: Mark.SECONDS,
    Measure.CARRY_S: Mark.SECONDS,
    Measure.CARRY_M: Mark.METRES,
    Measure.REPS: Mark.REPS,
}


@dataclass(frozen=True)
class Attempt:
    """A draft in its places; ``problem`` says why it cannot be recorded unasked."""

    sets: tuple[SetResult, ...] = ()
    problem: QuestionCode | None = None
    is_sure: bool = True
    is_stopped: bool = False
    assumptions: tuple[Assumption, ...] = ()
    others: tuple["Attempt", ...] = ()


def planned_sets(item: KnownItem) -> tuple[SetResult, ...]:
    """Return the sets as the plan has them, both arms where each has its own."""
    arms = item.arms_asked or (Side.BOTH,)
    return tuple(
        SetResult(
            number=number,
            value=item.target,
            side=arm,
            load_kg=item.load_kg,
            band=item.band,
            is_as_planned=True,
        )
        for arm in arms
        for number in range(1, item.sets + 1)
    )


def arranged(draft: Draft, said: Said) -> Attempt:
    """Return the draft in its places; without sets when no person can have done it."""
    item = said.item
    sides = {raw.side for raw in draft.sets}
    if not all(_is_possible(raw, item) for raw in draft.sets) or (None in sides and len(sides) > 1):
        return Attempt()
    if len(draft.sets) > MOST_TIMES_THE_SETS * item.sets or not is_possible(0, draft.load_kg, item):
        return Attempt()
    if not draft.sets and Mark.PLANNED not in said.words:
        return Attempt()
    arms, side_problem, is_left_first = _by_arm(draft.sets, said)
    placed = {arm: placed_sets(sets, said) for arm, sets in arms.items()}
    is_over_the_row = any(raw.n for raw in draft.sets) and _unnamed(draft.sets) == item.sets
    kept = sum(len(numbered) for numbered, _, _ in placed.values())
    if not is_over_the_row and kept < len(draft.sets):
        return Attempt()
    problems = [problem for _, problem, _ in placed.values()]
    if draft.load_kg is not None and Mark.PLANNED in said.words and _names_a_set(said):
        problems.append(QuestionCode.WHICH_SET)
    load = draft.load_kg if Mark.PLANNED in said.words else None
    sets = tuple(s for arm in arms for s in _results(placed[arm][0], arm, said, load))
    is_named = any(raw.n for raw in draft.sets)
    is_short = {stopped for _, _, stopped in placed.values()}
    attempt = Attempt(
        sets=sets,
        problem=_first(*problems, _doubt(draft.sets, sets, said), side_problem),
        is_sure=draft.is_sure and not _is_half_loaded(draft.sets, said),
        is_stopped=True in is_short or (QuestionCode.FEWER_NUMBERS in problems and not is_named),
        assumptions=_assumptions(draft, said, is_left_first=is_left_first),
    )
    return replace(attempt, others=_same_for_all(draft, attempt, said))


def _names_a_set(said: Said) -> bool:
    return any(step.n for way in said.ways for step in way)


def _is_half_loaded(raws: Sequence[RawSet], said: Said) -> bool:
    """Tell whether a load was told for some sets and not for others: "8@14 8 8"."""
    if Mark.PLANNED in said.words or any(raw.n for raw in raws):
        return False
    loads = {raw.load_kg for raw in raws}
    return None in loads and bool(loads - {None, said.item.load_kg})


def _unnamed(raws: Sequence[RawSet]) -> int:
    return sum(not raw.n for raw in raws)


def _first(*problems: QuestionCode | None) -> QuestionCode | None:
    return next((problem for problem in problems if problem), None)


def _is_possible(raw: RawSet, item: KnownItem) -> bool:
    return is_possible(raw.value, raw.load_kg, item)


def _doubt(raws: Sequence[RawSet], sets: Sequence[SetResult], said: Said) -> QuestionCode | None:
    """Return why the figures themselves must be asked about."""
    item = said.item
    if any(raw.unit not in {None, UNIT_OF[item.measure]} for raw in raws):
        return QuestionCode.WHICH_UNIT
    loads = [raw.load_kg for raw in raws if raw.load_kg]
    is_told = said.has_told_load and all(load <= ADDED_MOST_KG for load in loads)
    is_new_load = item.load_kg is None and bool(loads) and not is_told
    is_new_band = item.band is None and any(s.band for s in sets)
    if is_new_load or is_new_band:
        return QuestionCode.LOAD_UNEXPECTED
    told = (s for s in sets if not s.is_as_planned)
    is_bare = item.load_kg is None
    if not all(is_plausible(s.value, None if is_bare else s.load_kg, item) for s in told):
        return QuestionCode.IMPLAUSIBLE
    return None


def _by_arm(
    raws: Sequence[RawSet], said: Said
) -> tuple[dict[Side, list[RawSet]], QuestionCode | None, bool]:
    """Return the sets of each arm, a question about the arm, and whether left was said first."""
    sides, asked = {raw.side for raw in raws}, said.item.arms_asked
    if not asked:
        return {Side.BOTH: list(raws)}, QuestionCode.WHICH_SIDE if sides - {None} else None, False
    if sides <= {None}:
        is_row = said.item.sets in {1, len(raws)}
        is_told = Mark.EACH_SIDE in said.words or (Mark.EACH in said.words and is_row)
        is_told = (is_told and len(asked) > 1) or _is_lone_arm(said)
        each = {arm: list(raws) for arm in asked}
        return each, None if is_told else QuestionCode.WHICH_SIDE, False
    spoken: list[Side] = [
        side for side in (Side.LEFT, Side.RIGHT) if side in sides or side in asked
    ]
    arms: dict[Side, list[RawSet]] = {
        arm: [raw for raw in raws if raw.side is arm] for arm in spoken
    }
    is_whole = None not in sides and sides == set(asked)
    if Mark.PLANNED in said.words and set(spoken) == set(asked):
        return arms, None, False
    told = {arm: sets for arm, sets in arms.items() if sets}
    is_pair = _is_pair(said)
    return told, None if is_whole else QuestionCode.WHICH_SIDE, is_whole and is_pair


def _is_lone_arm(said: Said) -> bool:
    """Tell whether one arm only was asked for, and nothing was said about the two of them."""
    return len(said.item.arms_asked) == 1 and Mark.EACH_SIDE not in said.words


def _is_pair(said: Said) -> bool:
    """Tell whether the arms come from "30/25" and not from words."""
    return not any(step.side for way in said.ways for step in way)


def _results(
    placed: Placed, arm: Side, said: Said, planned_load_kg: float | None
) -> list[SetResult]:
    item = said.item
    results = []
    for number, raw in sorted(placed.items()):
        told = planned_load_kg if raw is None else raw.load_kg
        if told == 0 and item.load_kg is None:
            told = None  # body weight, where no load was planned
        results.append(
            SetResult(
                number=number,
                value=item.target if raw is None else raw.value,
                side=arm,
                load_kg=item.load_kg if told is None else told,
                band=said.band or item.band,
                is_as_planned=raw is None and told is None,
            )
        )
    return results


def _same_for_all(draft: Draft, attempt: Attempt, said: Said) -> tuple[Attempt, ...]:
    """Offer "the same in every set" where one figure was said for several sets."""
    if len(draft.sets) != 1 or draft.sets[0].n or attempt.problem is not QuestionCode.FEWER_NUMBERS:
        return ()
    numbers = range(1, said.item.sets + 1)
    sets = tuple(
        s.model_copy(update={"number": number}) for s in attempt.sets for number in numbers
    )
    taken = Assumption(code=AssumptionCode.SAME_FOR_ALL_SETS, item_ref=said.item.ref)
    return (
        replace(attempt, sets=sets, is_stopped=False, assumptions=(*attempt.assumptions, taken)),
    )


def _assumptions(draft: Draft, said: Said, *, is_left_first: bool) -> tuple[Assumption, ...]:
    item = said.item
    codes = []
    if item.load_kg is not None and any(raw.load_kg is None for raw in draft.sets):
        codes.append(AssumptionCode.LOAD_AS_PLANNED)
    if is_left_first:
        codes.append(AssumptionCode.LEFT_SAID_FIRST)
    if Mark.ABOUT in said.words:
        codes.append(AssumptionCode.ABOUT)
    if Mark.PLANNED in said.words:
        codes.append(AssumptionCode.AS_PLANNED)
    figures = {} if item.load_kg is None else {"load_kg": item.load_kg}
    return tuple(Assumption(code=code, item_ref=item.ref, figures=figures) for code in codes)
