"""Read "sorry, 38 not 48", "last one was 22", "other arm", "undo" against the last results."""

from collections.abc import Sequence

from bot.reading.fit import fit
from bot.reading.known import ItemResult, KnownItem, SetResult
from bot.reading.phrases import said_about
from bot.reading.plausible import is_plausible
from bot.reading.tokens import Token
from bot.reading.values import (
    Asked,
    Change,
    Correction,
    CorrectionKind,
    NotUnderstood,
    QuestionCode,
)
from bot.reading.words import Mark
from scheduler.pain.values import Side

PASSED = frozenset({Mark.FILLER, Mark.SORRY, Mark.MEANT, Mark.COMMA, Mark.STOP_SIGN, Mark.LINE})
CHANGING = frozenset({"change", "cambia", "instead"})
ORDINAL_FIRST = (
    [Mark.ORDINAL, Mark.NUMBER],
    [Mark.ORDINAL, Mark.NUMBER, Mark.NOT, Mark.NUMBER],
)
Found = Correction | Asked | NotUnderstood | None


def read_correction(
    tokens: Sequence[Token],
    last: Sequence[ItemResult],
    items: Sequence[KnownItem],
    *,
    earlier: Sequence[ItemResult] = (),
    pound: bool,
) -> Found:
    """Return what is to be changed, a question about it, or None when nothing is corrected.

    An old figure that the last results do not have is looked for in the ``earlier`` ones.
    """
    marks = {token.mark for token in tokens}
    spoken = [token for token in tokens if token.mark not in PASSED]
    if not last:
        return NotUnderstood() if _instead(spoken) else None
    if spoken and {t.mark for t in spoken} == {Mark.UNDO}:
        return Correction(kind=CorrectionKind.UNDO)
    if spoken and {t.mark for t in spoken} == {Mark.OTHER_ARM}:
        has_arms = any(s.side is not Side.BOTH for result in last for s in result.sets)
        return Correction(kind=CorrectionKind.OTHER_ARM) if has_arms else None
    earlier, _ = _named(earlier, spoken)
    last, spoken = _named(last, spoken)
    pair = _instead(spoken) or _from_to(tokens)
    if pair:
        return _swapped((last, earlier), items, new=pair[0], old=pair[1])
    marks_in_order = [token.mark for token in spoken]
    if marks_in_order in ORDINAL_FIRST:
        return _placed(last, items, number=spoken[0].n, new=spoken[1].value)
    if marks & {Mark.SORRY, Mark.MEANT}:
        return _again(spoken, last, items, pound=pound)
    return None


def _named(last: Sequence[ItemResult], spoken: list[Token]) -> tuple[list[ItemResult], list[Token]]:
    """Keep the results of the item that is named, all of them when none is."""
    refs = frozenset[str]().union(*(token.refs for token in spoken if token.mark is Mark.ITEM))
    kept = [result for result in last if not refs or result.ref in refs]
    return kept, [token for token in spoken if token.mark is not Mark.ITEM]


def _instead(tokens: Sequence[Token]) -> tuple[float, float] | None:
    """Return (new, old) of "38 not 48" or "not 48, 38"."""
    marks = [token.mark for token in tokens]
    if marks == [Mark.NUMBER, Mark.NOT, Mark.NUMBER]:
        return tokens[0].value, tokens[2].value
    if marks == [Mark.NOT, Mark.NUMBER, Mark.NUMBER]:
        return tokens[2].value, tokens[1].value
    return None


def _from_to(tokens: Sequence[Token]) -> tuple[float, float] | None:
    """Return (new, old) of "48 should be 38", "change 48 to 38", "38 instead of 48"."""
    said = [t for t in tokens if t.mark in {Mark.NUMBER, Mark.MEANT, Mark.OR} or t.text in CHANGING]
    marks = [Mark.NUMBER if t.mark is Mark.NUMBER else t.text for t in said]
    match marks:
        case [Mark.NUMBER, "should be" | "should have been", Mark.NUMBER]:
            return said[2].value, said[0].value
        case ["change" | "cambia", Mark.NUMBER, "to" | "a" | "por", Mark.NUMBER]:
            return said[3].value, said[1].value
        case [Mark.NUMBER, "instead", Mark.NUMBER]:
            return said[0].value, said[2].value
    return None


def _swapped(
    results: Sequence[Sequence[ItemResult]], items: Sequence[KnownItem], *, new: float, old: float
) -> Found:
    """Change the one set with the old value, the latest results first; ask among several."""
    places = [
        [(result.ref, s) for result in some for s in result.sets if s.value == old]
        for some in results
    ]
    nearest = next((some for some in places if some), [])
    return _decided([_correction(ref, s, new) for ref, s in nearest], items)


def _placed(
    last: Sequence[ItemResult], items: Sequence[KnownItem], *, number: int, new: float
) -> Found:
    """Change the set that is named, of the last item that was recorded."""
    if not last or number < -1:
        return None
    sets = last[-1].sets
    count = max((s.number for s in sets), default=0)
    wanted = count if number == -1 else number
    options = [_correction(last[-1].ref, s, new) for s in sets if s.number == wanted]
    return _decided(options, items)


def _again(
    tokens: Sequence[Token],
    last: Sequence[ItemResult],
    items: Sequence[KnownItem],
    *,
    pound: bool,
) -> Found:
    """Read "I meant 45 38 38" as the last item anew, and "sorry 38" as a question which set."""
    item = next((i for i in items if last and i.ref == last[-1].ref), None)
    if item is None or not any(token.mark is Mark.NUMBER for token in tokens):
        return None
    if len(tokens) == 1 and tokens[0].is_bare and item.sets > 1:
        options = [_correction(item.ref, s, tokens[0].value) for s in last[-1].sets]
        return _decided(options, items)
    outcome = fit(said_about(item, tokens, pound=pound))
    if not outcome.is_sure:
        return None
    changes = _changes(last[-1], outcome.options[0].result)
    return Correction(kind=CorrectionKind.SETS, changes=changes) if changes else None


def _changes(old: ItemResult, new: ItemResult) -> tuple[Change, ...]:
    before = {(s.number, s.side): s.value for s in old.sets}
    same_sets = set(before) == {(s.number, s.side) for s in new.sets}
    return tuple(
        Change(ref=old.ref, number=s.number, side=s.side, old=before[s.number, s.side], new=s.value)
        for s in new.sets
        if same_sets and before[s.number, s.side] != s.value
    )


def _correction(ref: str, old: SetResult, new: float) -> Correction:
    change = Change(ref=ref, number=old.number, side=old.side, old=old.value, new=new)
    return Correction(kind=CorrectionKind.SETS, changes=(change,))


def _decided(options: Sequence[Correction], items: Sequence[KnownItem]) -> Found:
    """Take the only option when it is plausible, ask among several, else give up."""
    known = {item.ref: item for item in items}
    changes = [option.changes[0] for option in options]
    sound = [c.ref in known and is_plausible(c.new, None, _unloaded(known[c.ref])) for c in changes]
    if not options:
        return NotUnderstood()
    if len(options) == 1 and all(sound):
        return options[0]
    code = QuestionCode.WHICH_SET if len(options) > 1 else QuestionCode.IMPLAUSIBLE
    return Asked(question=code, options=tuple(options[:4]))


def _unloaded(item: KnownItem) -> KnownItem:
    """Return the item without its load: only the figure is in question."""
    return item.model_copy(update={"load_kg": None})
