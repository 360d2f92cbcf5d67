"""Fit what was said about an item to its sets: one sure reading, or a question with options."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from bot.reading.arrange import Attempt, arranged, planned_sets
from bot.reading.dose import drafts
from bot.reading.known import ItemResult, KnownItem, SetResult
from bot.reading.phrases import Said
from bot.reading.values import Assumption, AssumptionCode, QuestionCode
from bot.reading.words import Mark

MOST_FIGURES = 40  # [figures] CH: more were never said about one item
DOUBTS = frozenset({Mark.RISKY, Mark.NOT, Mark.LATER, Mark.CANT, Mark.HALF})
"""Words that may say that the figures were not done, or not yet."""
WORST_FIRST = (
    QuestionCode.WHICH_UNIT,
    QuestionCode.LOAD_UNEXPECTED,
    QuestionCode.IMPLAUSIBLE,
    QuestionCode.WHICH_SET,
    QuestionCode.WHICH_SIDE,
    QuestionCode.FEWER_NUMBERS,
    QuestionCode.MORE_NUMBERS,
)
"""Which question is asked when readings fail for different reasons: the nearest miss first."""


@dataclass(frozen=True)
class Fit:
    """One item's results with what was assumed."""

    result: ItemResult
    assumptions: tuple[Assumption, ...] = ()


@dataclass(frozen=True)
class Outcome:
    """What became of one item: ``options`` holds the one result, or those to choose from.

    ``question`` is None when nothing needs asking; no options at all when nothing fits.
    """

    options: tuple[Fit, ...] = ()
    question: QuestionCode | None = None

    @property
    def is_sure(self) -> bool:
        """True when the one result can be recorded."""
        return self.question is None and len(self.options) == 1


def fit(said: Said) -> Outcome:
    """Return the one sure reading of what was said, else a question, else nothing."""
    if Mark.JUNK in said.words or said.figures > MOST_FIGURES:
        return Outcome()
    outcome = _fit_figures(said) if said.figures else _fit_words(said)
    doubts = said.words & DOUBTS
    if Mark.SKIPPED in said.words and not said.figures:
        doubts -= {Mark.NOT}  # "skipped, no space": the reason, no denial
    if said.figures and Mark.SKIPPED in said.words:
        doubts.add(Mark.SKIPPED)
    if outcome.is_sure and doubts and not _is_about_stopping(said):
        return Outcome(outcome.options, QuestionCode.IS_THIS_MEANT)
    return outcome


def _is_about_stopping(said: Said) -> bool:
    return Mark.STOPPED in said.words and not said.words & (DOUBTS - {Mark.NOT})


def _fit_words(said: Said) -> Outcome:
    """Read "as planned", "done", "skipped", "stopped after 2" without a figure."""
    item = said.item
    if Mark.SKIPPED in said.words:
        return Outcome((Fit(ItemResult(ref=item.ref, is_skipped=True)),))
    as_planned = (_planned(item),)
    loads = [step.load_kg for way in said.ways for step in way if step.load_kg is not None]
    if Mark.SAME in said.words:
        return Outcome(as_planned, QuestionCode.SAME_AS_WHAT)
    if said.count is not None and said.count < item.sets:
        return Outcome((_planned(item, upto=said.count),), QuestionCode.FEWER_NUMBERS)
    if loads:
        return Outcome(as_planned, QuestionCode.FEWER_NUMBERS)
    if said.words & {Mark.PLANNED, Mark.DONE}:
        if Mark.BUT in said.words or any(step.n for way in said.ways for step in way):
            return Outcome((_planned(item, upto=max(1, item.sets - 1)),), QuestionCode.WHICH_SET)
        if Mark.STOPPED in said.words:
            return Outcome(as_planned, QuestionCode.FEWER_NUMBERS)
        if Mark.ABOUT in said.words:
            return Outcome(as_planned, QuestionCode.IS_THIS_MEANT)
        return Outcome(as_planned)
    return Outcome()


def _planned(item: KnownItem, upto: int | None = None) -> Fit:
    sets = tuple(s for s in planned_sets(item) if upto is None or s.number <= upto)
    taken = Assumption(
        code=AssumptionCode.AS_PLANNED,
        item_ref=item.ref,
        figures={"sets": upto or item.sets, "target": item.target},
    )
    return Fit(ItemResult(ref=item.ref, sets=sets, is_stopped=upto is not None), (taken,))


def _fit_figures(said: Said) -> Outcome:
    attempts = [arranged(draft, said) for draft in drafts(said.ways)]
    attempts = [attempt for attempt in attempts if attempt.sets]
    sure = _distinct(a for a in attempts if a.problem is None and a.is_sure)
    if len(sure) == 1:
        return Outcome((_as_fit(sure[0], said),))
    if sure:
        return Outcome(_fits(sure, said), QuestionCode.SEVERAL_READINGS)
    guessed = _distinct(a for a in attempts if a.problem is None)
    missed = sorted(
        (a for a in attempts if a.problem is not None),
        key=lambda a: (not a.is_sure, WORST_FIRST.index(a.problem or WORST_FIRST[-1])),
    )
    if not missed:
        return Outcome(_fits(guessed, said), QuestionCode.SEVERAL_READINGS if guessed else None)
    near = [a for a in missed if a.is_sure] or missed
    ways = [way for attempt in near for way in (attempt, *attempt.others)]
    question = near[0].problem
    if guessed and not near[0].is_sure:
        question = QuestionCode.SEVERAL_READINGS
    return Outcome(_fits(_distinct([*guessed, *ways]), said), question)


def _distinct(attempts: Iterable[Attempt]) -> list[Attempt]:
    seen: dict[tuple[SetResult, ...], Attempt] = {}
    for attempt in attempts:
        seen.setdefault(attempt.sets, attempt)
    return list(seen.values())


def _fits(attempts: Sequence[Attempt], said: Said) -> tuple[Fit, ...]:
    return tuple(_as_fit(attempt, said) for attempt in attempts[:4])


def _as_fit(attempt: Attempt, said: Said) -> Fit:
    result = ItemResult(ref=said.item.ref, sets=attempt.sets, is_stopped=attempt.is_stopped)
    return Fit(result, attempt.assumptions)
