"""From a place as it stands in a file to what the reader may know."""

from collections.abc import Sequence

from bot.reading.known import (
    Estimate,
    Expects,
    ItemResult,
    KnownItem,
    KnownSession,
    OpenQuestion,
    ReadingContext,
    Reserve,
    SetResult,
)
from demo_scenario.readings.lines import (
    ItemLine,
    PlaceLine,
    QuestionLine,
    ResultLine,
    SessionLine,
)
from scheduler.catalogue.values import Sides
from scheduler.pain.values import Side

SPREAD_UNKNOWN = 0.35  # [log units] ch: as the bot takes it after one exposure


def context_of(place: PlaceLine) -> ReadingContext:
    """Return what the reader may know at a place."""
    others = tuple(_session(one, f"other{n}") for n, one in enumerate(place.others, start=1))
    own = _session(place.session, "session") if place.session else None
    items = [item for one in ((own,) if own else ()) + others for item in one.items]
    asked = next((item.ref for item in items if item.number == place.asked_item), None)
    return ReadingContext(
        session=own,
        others=others,
        asked_ref=asked,
        question=_question(place.question, items) if place.question else None,
        last=_results(place.recorded, items),
        earlier=_results(place.before, items),
        decimal_mark=place.decimal_mark,
        unit=place.units,
        language=place.language,
        local_date=place.today,
    )


def items_of(context: ReadingContext) -> dict[str, KnownItem]:
    """Return every item at hand by its reference."""
    sessions = ((context.session,) if context.session else ()) + context.others
    return {item.ref: item for session in sessions for item in session.items}


def _session(session: SessionLine, ref: str) -> KnownSession:
    return KnownSession(
        ref=ref, day=session.day, items=tuple(_item(one, ref) for one in session.items)
    )


def _item(item: ItemLine, session_ref: str) -> KnownItem:
    return KnownItem(
        ref=f"{session_ref}.{item.number}",
        number=item.number,
        names=item.names,
        measure=item.measure,
        sets=item.sets,
        target=item.target,
        load_kg=item.load_kg,
        band=item.band,
        sides=item.sides,
        is_main=item.main,
        is_reported=item.reported,
        estimate=None
        if item.likely is None
        else Estimate(
            likely=item.likely,
            spread_log=SPREAD_UNKNOWN if item.spread is None else item.spread,
        ),
    )


def _question(question: QuestionLine, items: Sequence[KnownItem]) -> OpenQuestion:
    return OpenQuestion(
        expects=Expects(question.kind),
        item_ref=next((one.ref for one in items if one.number == question.item), None),
        site=question.site,
        side=question.side,
    )


def _results(results: Sequence[ResultLine], items: Sequence[KnownItem]) -> tuple[ItemResult, ...]:
    known = {item.number: item for item in reversed(items)}
    return tuple(result_of(one, known[one.item]) for one in results)


def result_of(result: ResultLine, item: KnownItem) -> ItemResult:
    counts: dict[Side, int] = {}
    sets = []
    for one in result.sets:
        side = Side(one.side) if one.side else Side.BOTH
        arms = item.arms_asked if side is Side.BOTH and item.sides is Sides.EACH else (side,)
        for arm in arms:
            counts[arm] = counts.get(arm, 0) + 1
            sets.append(
                SetResult(
                    number=counts[arm],
                    value=item.target if one.value is None else one.value,
                    side=arm,
                    load_kg=item.load_kg if one.load_kg is None else one.load_kg,
                    band=one.band or item.band,
                    is_as_planned=one.planned,
                )
            )
    return ItemResult(
        ref=item.ref,
        sets=tuple(sets),
        is_stopped=result.stopped,
        is_skipped=result.skipped,
        reserve=None if result.reserve is None else Reserve(left=result.reserve),
    )
