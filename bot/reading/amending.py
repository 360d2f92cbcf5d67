"""Put new figures over what was recorded: a set that is named, a load, the whole row."""

from collections.abc import Sequence

from bot.reading.fit import fit
from bot.reading.known import ItemResult, KnownItem, SetResult
from bot.reading.phrases import said_about
from bot.reading.plausible import is_plausible_load
from bot.reading.tokens import Token
from bot.reading.units import POUND_KG
from bot.reading.values import Asked, Change, Correction, CorrectionKind, QuestionCode
from bot.reading.words import Mark

OVER = (Token(Mark.PLANNED, "as planned"), Token(Mark.BUT, "but"))
"""Named sets are read as exceptions to what stands."""


def amended(
    old: ItemResult, item: KnownItem, tokens: Sequence[Token], *, pound: bool
) -> ItemResult | None:
    """Return the results with the named sets changed; None where the words do not say which."""
    outcome = fit(said_about(item, [*OVER, *tokens], pound=pound))
    if not outcome.is_sure:
        return None
    before = {(s.number, s.side): s for s in old.sets}
    sets: list[SetResult] = []
    for new in outcome.options[0].result.sets:
        stands = before.get((new.number, new.side))
        if not new.is_as_planned:
            load = stands.load_kg if stands and new.load_kg == item.load_kg else new.load_kg
            sets.append(new.model_copy(update={"load_kg": load}))
        elif stands is not None:
            sets.append(stands)
    told = [s for s in outcome.options[0].result.sets if not s.is_as_planned]
    if not told or len(sets) < len(old.sets):
        return None
    is_short = old.is_stopped and len(sets) == len(old.sets)
    return old.model_copy(update={"sets": tuple(sets), "is_stopped": is_short})


def as_correction(old: ItemResult, new: ItemResult) -> Correction | None:
    """Return the difference: single figures where only they differ, else the whole item."""
    before = {(s.number, s.side): s for s in old.sets}
    after = {(s.number, s.side): s for s in new.sets}
    if before.keys() != after.keys() or any(
        (before[key].load_kg, before[key].band) != (after[key].load_kg, after[key].band)
        for key in before
    ):
        whole = new.model_copy(update={"reserve": new.reserve or old.reserve})
        return Correction(kind=CorrectionKind.ITEMS, items=(whole,))
    changes = tuple(
        Change(ref=old.ref, number=key[0], side=key[1], old=before[key].value, new=s.value)
        for key, s in after.items()
        if before[key].value != s.value
    )
    return Correction(kind=CorrectionKind.SETS, changes=changes) if changes else None


def reloaded(
    old: ItemResult,
    item: KnownItem,
    *,
    new: float,
    old_load: float | None,
    unit: Mark | None,
    pound: bool,
) -> Correction | Asked | None:
    """Return every set with another load; None where the old one is not what was recorded."""
    factor = POUND_KG if pound and unit is None else 1.0
    load = round(new * factor, 2)
    before = {item.load_kg if s.load_kg is None else s.load_kg for s in old.sets}
    if unit not in {None, Mark.KG} or not old.sets:
        return None
    if old_load is not None and not any(
        b is not None and abs(b - old_load * factor) < 0.01 for b in before
    ):
        return None
    sets = tuple(s.model_copy(update={"load_kg": load}) for s in old.sets)
    changed = old.model_copy(update={"sets": sets})
    correction = Correction(kind=CorrectionKind.ITEMS, items=(changed,))
    if not is_plausible_load(load, item):
        return Asked(question=QuestionCode.LOAD_UNEXPECTED, options=(correction,))
    return correction
