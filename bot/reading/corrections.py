"""Read "sorry, 38 not 48", "last one was 22", "other arm", "undo" against the last results."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.reading.amending import amended, as_correction, reloaded
from bot.reading.fit import fit
from bot.reading.instead import Swap, swap_of
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
    Recorded,
)
from bot.reading.words import FIGURES, Mark
from scheduler.pain.values import Side

SIGNS = frozenset({Mark.COMMA, Mark.STOP_SIGN, Mark.LINE})
PASSED = SIGNS | {Mark.FILLER, Mark.SORRY, Mark.MEANT, Mark.CHAT, Mark.YES, Mark.BUT, Mark.FINE}
BESIDE_UNDO = PASSED | {Mark.UNDO, Mark.ITEM, Mark.ORDINAL, Mark.WORD, Mark.ALL, Mark.SET}
BESIDE_ARM = PASSED | {Mark.OTHER_ARM, Mark.LEFT, Mark.RIGHT, Mark.LEFT_WORD, Mark.NOT, Mark.ITEM}
ARMS = {Mark.LEFT: Side.LEFT, Mark.LEFT_WORD: Side.LEFT, Mark.RIGHT: Side.RIGHT}
PLACING = frozenset({Mark.ORDINAL, Mark.LEFT, Mark.RIGHT, Mark.LEFT_WORD})
Found = Correction | Asked | NotUnderstood | None


@dataclass(frozen=True)
class Past:
    """What a correction may be about, and what else the figures may be for.

    ``last`` is what the latest message recorded, ``earlier`` what the session had before;
    ``asked`` is the item asked about now.
    """

    last: Sequence[ItemResult]
    earlier: Sequence[ItemResult]
    items: Sequence[KnownItem]
    asked: KnownItem | None
    session_ref: str
    day: date
    pound: bool

    def item(self, ref: str) -> KnownItem | None:
        """Return the item of a reference."""
        return next((item for item in self.items if item.ref == ref), None)

    def named(self, tokens: Sequence[Token]) -> tuple[list[ItemResult], list[ItemResult]]:
        """Keep the results of the item that is named, all of them when none is."""
        refs = frozenset[str]().union(*(t.refs for t in tokens if t.mark is Mark.ITEM))
        last, earlier = (
            [result for result in results if not refs or result.ref in refs]
            for results in (self.last, self.earlier)
        )
        return last, earlier


def read_correction(tokens: Sequence[Token], past: Past) -> Found:
    """Return what is to be changed, a question about it, or None when nothing is corrected.

    An old figure that the last results do not have is looked for in the earlier ones.
    """
    tokens = _no_as_sorry(tokens)
    spoken = [token for token in tokens if token.mark not in PASSED]
    marks = {token.mark for token in tokens}
    swap = swap_of(tokens)
    if not past.last:
        return NotUnderstood() if swap and swap.is_plain else None
    if Mark.UNDO in marks and marks <= BESIDE_UNDO:
        return _undo(tokens, past)
    if marks & {Mark.OTHER_ARM, *ARMS} and marks <= BESIDE_ARM:
        return _other_arm(tokens, past)
    if Mark.QUESTION in marks or marks & {Mark.RISKY, Mark.LATER, Mark.PAIN} - _allowed(swap):
        return None
    if swap:
        return _swapped(swap, tokens, past)
    if {token.mark for token in spoken} & PLACING and _is_about_sets(tokens):
        found = _placed(tokens, past)
        if found is not None:
            return found
    if marks & {Mark.SORRY, Mark.MEANT, Mark.UNDO} and marks & FIGURES:
        return _again(tokens, past)
    return None


def _allowed(swap: Swap | None) -> frozenset[Mark]:
    """Return the doubtful marks that belong to the swap itself ("instead of")."""
    return frozenset({Mark.RISKY}) if swap else frozenset()


def _no_as_sorry(tokens: Sequence[Token]) -> list[Token]:
    """Take a "no," in front for a sorry."""
    is_no = len(tokens) > 1 and tokens[0].mark is Mark.NOT and tokens[1].mark in SIGNS
    return [Token(Mark.SORRY, tokens[0].text), *tokens[1:]] if is_no else list(tokens)


def _undo(tokens: Sequence[Token], past: Past) -> Found:
    refs = frozenset[str]().union(*(t.refs for t in tokens if t.mark is Mark.ITEM))
    if not refs:
        return Correction(kind=CorrectionKind.UNDO)
    last, earlier = past.named(tokens)
    found = [*earlier, *last]
    if len(found) != 1:
        return NotUnderstood()
    return Correction(kind=CorrectionKind.UNDO, ref=found[0].ref)


def _other_arm(tokens: Sequence[Token], past: Past) -> Found:
    """Read "other arm", and "that was the right arm" where the left one is recorded."""
    last, _ = past.named(tokens)
    sides = {s.side for result in last[-1:] for s in result.sets} - {Side.BOTH}
    if not sides:
        return None
    ref = last[-1].ref if any(token.mark is Mark.ITEM for token in tokens) else None
    marks = {token.mark for token in tokens}
    said = [ARMS[token.mark] for token in tokens if token.mark in ARMS]
    if Mark.OTHER_ARM in marks:
        return Correction(kind=CorrectionKind.OTHER_ARM, ref=ref)
    is_told = bool(marks & {Mark.SORRY, Mark.MEANT, Mark.NOT}) or any(
        token.text.split()[-1] in {"arm", "side", "hand", "brazo", "lado", "mano"}
        for token in tokens
        if token.mark in ARMS
    )
    if len(sides) > 1 or not said or not is_told or len(set(said)) > 2:
        return None
    at = [token.mark for token in tokens]
    is_denied = Mark.NOT in at and at.index(Mark.NOT) < min(at.index(m) for m in ARMS if m in at)
    claimed = said[-1] if is_denied and len(said) > 1 else said[0]
    is_other = (claimed in sides) if is_denied and len(said) == 1 else (claimed not in sides)
    return Correction(kind=CorrectionKind.OTHER_ARM, ref=ref) if is_other else None


def _is_about_sets(tokens: Sequence[Token]) -> bool:
    """Tell whether a set is named with its new figure, and nothing else is said."""
    marks = {token.mark for token in tokens if token.mark not in PASSED}
    is_sorry = any(token.mark in {Mark.SORRY, Mark.MEANT} for token in tokens)
    first = next((token.mark for token in tokens if token.mark not in PASSED), None)
    is_lead = first in {Mark.ORDINAL, Mark.ITEM} or any(t.text in CHANGING for t in tokens)
    kinds = PLACING | {Mark.NUMBER, Mark.AND, Mark.ITEM, Mark.AT, Mark.OR, Mark.SET, Mark.EACH_SIDE}
    is_placed = Mark.ORDINAL in marks or is_sorry
    strange = [t for t in tokens if t.mark is Mark.WORD and t.text not in CHANGING]
    is_plain = not strange and marks - {Mark.WORD} <= kinds
    return Mark.NUMBER in marks and is_plain and is_placed and (is_lead or is_sorry)


CHANGING = frozenset({"change", "cambia", "cambiar", "set", "correct", "fix", "pon", "make"})


def _placed(tokens: Sequence[Token], past: Past) -> Found:
    """Change the sets that are named, of the last item that was recorded."""
    last, earlier = past.named(tokens)
    found = last or earlier
    result = found[-1] if found else None
    item = past.item(result.ref) if result is not None else None
    if result is None or item is None:
        return None
    told = [t for t in tokens if t.mark in PLACING | {Mark.NUMBER, Mark.AT, Mark.EACH_SIDE}]
    is_other = past.asked is not None and past.asked.ref != item.ref
    if past.asked and is_other and fit(said_about(past.asked, told, pound=past.pound)).is_sure:
        return None
    new = amended(result, item, told, pound=past.pound)
    if new is not None:
        return as_correction(result, new)
    figures = [t.value for t in told if t.mark is Mark.NUMBER]
    ordinals = [t for t in told if t.mark is Mark.ORDINAL]
    if len(figures) != 1 or len(ordinals) != 1 or ordinals[0].n < -1:
        return None
    count = max((s.number for s in result.sets), default=0)
    number = count if ordinals[0].n == -1 else ordinals[0].n
    options = [_change(result.ref, s, figures[0]) for s in result.sets if s.number == number]
    return _decided(options, past)


def _swapped(swap: Swap, tokens: Sequence[Token], past: Past) -> Found:
    """Change the one set with the old value, the latest results first; ask among several."""
    last, earlier = past.named(tokens)
    number = next((t.n for t in tokens if t.mark is Mark.ORDINAL), 0)
    for results in (last, earlier) if swap.unit is not Mark.KG else ():
        for new, old in swap.ways:
            places = [
                (result.ref, s)
                for result in results
                for s in result.sets
                if s.value == old and number in {0, s.number, s.number - 1 - len(result.sets)}
            ]
            if places:
                return _decided([_change(ref, s, new) for ref, s in places], past)
    for new, old in swap.ways:
        result = last[-1] if last else None
        item = past.item(result.ref) if result is not None else None
        if result is not None and item is not None and item.load_kg:
            found = reloaded(result, item, new=new, old_load=old, unit=swap.unit, pound=past.pound)
            if found is not None:
                return found
    return NotUnderstood() if swap.is_plain else None


def _again(tokens: Sequence[Token], past: Past) -> Found:
    """Read "I meant 45 38 38" as the last item anew, and "sorry 38" as a question which set."""
    last, earlier = past.named(tokens)
    found = last or earlier
    result = found[-1] if found else None
    item = past.item(result.ref) if result is not None else None
    told = [t for t in tokens if t.mark not in PASSED | {Mark.ITEM, Mark.UNDO}]
    if result is None or item is None or any(t.mark is Mark.WORD for t in told):
        return None
    if len(told) == 1 and told[0].mark is Mark.NUMBER and told[0].unit is Mark.KG and item.load_kg:
        kg = round(told[0].value, 2)
        return reloaded(result, item, new=kg, old_load=None, unit=Mark.KG, pound=False)
    if len(told) == 1 and told[0].is_bare and len(result.sets) > 1:
        options = [_change(item.ref, s, told[0].value) for s in result.sets]
        return _decided(options, past) if _sound(options, past) else None
    outcome = fit(said_about(item, told, pound=past.pound))
    if not outcome.is_sure:
        return None
    new = outcome.options[0].result
    correction = as_correction(result, new)
    if correction is None or past.asked is None or past.asked.ref == item.ref:
        return correction
    other = fit(said_about(past.asked, told, pound=past.pound))
    if not other.is_sure or any(t.mark is Mark.ITEM for t in tokens):
        return correction
    recorded = Recorded(
        session_ref=past.session_ref, day=past.day, items=(other.options[0].result,)
    )
    return Asked(question=QuestionCode.WHICH_ITEM, options=(correction, recorded))


def _change(ref: str, old: SetResult, new: float) -> Correction:
    change = Change(ref=ref, number=old.number, side=old.side, old=old.value, new=new)
    return Correction(kind=CorrectionKind.SETS, changes=(change,))


def _sound(options: Sequence[Correction], past: Past) -> bool:
    """Tell whether every new figure is one that this athlete may well have done."""
    changes = [option.changes[0] for option in options]
    known = [past.item(change.ref) for change in changes]
    return all(
        item is not None and is_plausible(change.new, None, _unloaded(item))
        for item, change in zip(known, changes, strict=True)
    )


def _decided(options: Sequence[Correction], past: Past) -> Found:
    """Take the only option when it is plausible, ask among several, else give up."""
    if not options:
        return NotUnderstood()
    if len(options) == 1 and _sound(options, past):
        return options[0]
    code = QuestionCode.WHICH_SET if len(options) > 1 else QuestionCode.IMPLAUSIBLE
    return Asked(question=code, options=tuple(options[:4]))


def _unloaded(item: KnownItem) -> KnownItem:
    """Return the item without its load: only the figure is in question."""
    return item.model_copy(update={"load_kg": None})
