"""What stands recorded after a correction: whole items, as the last results and the change say."""

from collections.abc import Sequence

from bot.reading.known import ItemResult, SetResult
from bot.reading.values import Change, Correction, CorrectionKind
from scheduler.pain.values import Side

OTHER = {Side.LEFT: Side.RIGHT, Side.RIGHT: Side.LEFT, Side.BOTH: Side.BOTH}


def changed_results(
    correction: Correction, results: Sequence[ItemResult], *, last: Sequence[ItemResult]
) -> tuple[ItemResult, ...]:
    """Return the changed items as they stand afterwards; nothing where they were taken back.

    ``results`` are all that may be changed, ``last`` those of the latest message.
    """
    match correction.kind:
        case CorrectionKind.UNDO:
            return ()
        case CorrectionKind.ITEMS:
            return correction.items
        case CorrectionKind.OTHER_ARM:
            ref = correction.ref or (last[-1].ref if last else None)
            return tuple(_on_other_arm(one) for one in results if one.ref == ref)
    refs = {change.ref for change in correction.changes}
    return tuple(_with_changes(one, correction.changes) for one in results if one.ref in refs)


def _on_other_arm(result: ItemResult) -> ItemResult:
    sets = tuple(one.model_copy(update={"side": OTHER[one.side]}) for one in result.sets)
    return result.model_copy(update={"sets": sets})


def _with_changes(result: ItemResult, changes: Sequence[Change]) -> ItemResult:
    told = {(c.number, c.side): c.new for c in changes if c.ref == result.ref}
    sets = tuple(_with_value(one, told) for one in result.sets)
    return result.model_copy(update={"sets": sets})


def _with_value(one: SetResult, told: dict[tuple[int, Side], float]) -> SetResult:
    if (one.number, one.side) not in told:
        return one
    return one.model_copy(update={"value": told[one.number, one.side], "is_as_planned": False})
