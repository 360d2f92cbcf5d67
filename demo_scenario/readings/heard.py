"""A reading in the few facts that are compared: what was recorded, told, hurt, and for which day.

Sets are compared arm by arm, in their order, with value, load and band. A set as planned has the
planned figures.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from bot.reading.changed import changed_results
from bot.reading.known import ItemResult, KnownItem, ReadingContext
from bot.reading.values import (
    Asked,
    Beside,
    CantToday,
    Correction,
    NotUnderstood,
    OtherTraining,
    PainMention,
    PassedOn,
    Reading,
    Recorded,
    SessionNow,
    Told,
)
from demo_scenario.readings.lines import ExpectLine, Kind, PainLine, ResultLine
from demo_scenario.readings.places import items_of, result_of
from scheduler.pain.values import Side

Done = tuple[Side, float, float | None, str | None]
"""One set: arm, value, load [kg], band."""


@dataclass(frozen=True)
class ItemHeard:
    """What stands recorded for one item afterwards."""

    number: int
    sets: tuple[Done, ...]
    is_stopped: bool
    is_skipped: bool
    reserve: float | None


@dataclass(frozen=True)
class Heard:
    """The comparable facts of a reading."""

    kind: Kind
    items: tuple[ItemHeard, ...] = ()
    day: date | None = None
    reason: str | None = None
    effort: float | None = None
    reserve: float | None = None
    is_yes: bool | None = None
    pains: tuple[tuple[frozenset[str], str | None, int | None], ...] = ()


KINDS: Mapping[type[Beside], Kind] = {
    Recorded: "recorded",
    Asked: "asked",
    Correction: "correction",
    Told: "told",
    CantToday: "cant_today",
    OtherTraining: "other_training",
    SessionNow: "session_now",
    PassedOn: "passed_on",
    NotUnderstood: "not_understood",
}


def heard(reading: Reading, context: ReadingContext) -> Heard:
    """Return the comparable facts of a reading."""
    known = items_of(context)
    results: Sequence[ItemResult] = ()
    day = None
    if isinstance(reading, Recorded):
        results, day = reading.items, reading.day
    elif isinstance(reading, Correction):
        results = changed_results(reading, (*context.earlier, *context.last), last=context.last)
    items = tuple(_item(one, known[one.ref]) for one in results)
    items, reserve = _with_lone_reserve(items, reading.reserve.left if reading.reserve else None)
    return Heard(
        kind=KINDS[type(reading)],
        items=tuple(sorted(items, key=lambda one: one.number)),
        day=day,
        reason=reading.reason.value if isinstance(reading, CantToday) and reading.reason else None,
        effort=_effort(reading),
        reserve=reserve,
        is_yes=reading.is_yes if isinstance(reading, Told) else None,
        pains=_sorted_pains(_pain(one) for one in reading.pains),
    )


def _effort(reading: Reading) -> float | None:
    """Return the effort of the session, or of the one other training that was told."""
    if isinstance(reading, OtherTraining) and reading.effort is None:
        return reading.activities[0].effort if len(reading.activities) == 1 else None
    return reading.effort


def expected(expect: ExpectLine, context: ReadingContext) -> Heard:
    """Return the comparable facts of the reading that a line expects."""
    sessions = ((context.session,) if context.session else ()) + context.others
    session = next((s for s in sessions if expect.day in {None, s.day}), None)
    items: tuple[ItemHeard, ...] = ()
    if session is not None:
        known = {item.number: item for item in session.items}
        every = {item.number: item for s in reversed(sessions) for item in s.items} | known
        items = tuple(_expected_item(one, every[one.item]) for one in expect.results)
    items, reserve = _with_lone_reserve(items, expect.reserve)
    return Heard(
        kind=expect.outcome,
        items=tuple(sorted(items, key=lambda one: one.number)),
        day=session.day if session and expect.outcome == "recorded" else None,
        reason=expect.reason,
        effort=expect.effort,
        reserve=reserve,
        is_yes=expect.yes,
        pains=_sorted_pains(_expected_pain(one) for one in expect.pain),
    )


def _item(result: ItemResult, item: KnownItem) -> ItemHeard:
    ordered = sorted(result.sets, key=lambda one: (one.side, one.number))
    return ItemHeard(
        number=item.number,
        sets=tuple(
            (
                one.side,
                round(one.value, 2),
                item.load_kg if one.load_kg is None else round(one.load_kg, 2),
                one.band or item.band,
            )
            for one in ordered
        ),
        is_stopped=result.is_stopped,
        is_skipped=result.is_skipped,
        reserve=result.reserve.left if result.reserve else None,
    )


def _expected_item(result: ResultLine, item: KnownItem) -> ItemHeard:
    return _item(result_of(result, item), item)


def _with_lone_reserve(
    items: tuple[ItemHeard, ...], reserve: float | None
) -> tuple[tuple[ItemHeard, ...], float | None]:
    """Put what was left with the one item that was recorded, wherever it is written."""
    if len(items) != 1 or reserve is None or items[0].reserve is not None:
        return items, reserve
    one = items[0]
    with_it = ItemHeard(one.number, one.sets, one.is_stopped, one.is_skipped, reserve)
    return (with_it,), None


Pain = tuple[frozenset[str], str | None, int | None]


def _pain(pain: PainMention) -> Pain:
    return frozenset(pain.sites), pain.side.value if pain.side else None, pain.score


def _expected_pain(pain: PainLine) -> Pain:
    sites = frozenset([*pain.sites, *([pain.site] if pain.site else [])])
    return sites, pain.side.value if pain.side else None, pain.score


def _sorted_pains(pains: Iterable[Pain]) -> tuple[Pain, ...]:
    return tuple(sorted(pains, key=lambda one: (sorted(one[0]), one[1] or "", str(one[2]))))
