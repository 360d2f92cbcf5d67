"""An invented athlete's session, and the places in a conversation where a message may come."""

from datetime import date

from bot.reading.known import (
    Estimate,
    Expects,
    ItemResult,
    KnownItem,
    KnownSession,
    OpenQuestion,
    ReadingContext,
    SetResult,
)
from scheduler.catalogue.values import Measure, Sides
from scheduler.pain.values import Side, Site

WEDNESDAY = date(2026, 3, 4)
MONDAY = date(2026, 3, 2)

HANG = KnownItem(
    ref="hang",
    number=1,
    names=("Dead hang", "hang", "colgada"),
    measure=Measure.HOLD_S,
    sets=3,
    target=40,
    estimate=Estimate(likely=55, spread_log=0.12),
)
PRESS = KnownItem(
    ref="press",
    number=2,
    names=("Floor press",),
    measure=Measure.REPS,
    sets=3,
    target=8,
    load_kg=16,
    estimate=Estimate(likely=11, spread_log=0.12),
)
ROW = KnownItem(
    ref="row",
    number=3,
    names=("One-arm row", "row"),
    measure=Measure.REPS,
    sets=3,
    target=8,
    load_kg=20,
    sides=Sides.EACH,
)
CARRY = KnownItem(
    ref="carry",
    number=4,
    names=("Farmer carry",),
    measure=Measure.CARRY_M,
    sets=3,
    target=30,
    load_kg=24,
)
CURL = KnownItem(
    ref="curl",
    number=5,
    names=("Wrist curl",),
    measure=Measure.REPS,
    sets=2,
    target=15,
    load_kg=6,
    is_main=False,
)
PULL = KnownItem(
    ref="pull",
    number=1,
    names=("Weighted pull-up", "pull-up"),
    measure=Measure.REPS,
    sets=3,
    target=5,
    load_kg=10,
)
REACH = KnownItem(
    ref="reach",
    number=1,
    names=("Overhead hold",),
    measure=Measure.HOLD_S,
    sets=1,
    target=30,
    load_kg=8,
    sides=Sides.EACH,
)
SESSION = KnownSession(ref="wed", day=WEDNESDAY, items=(HANG, PRESS, ROW, CARRY, CURL))
EARLIER = KnownSession(ref="mon", day=MONDAY, items=(HANG.model_copy(update={"ref": "mon.hang"}),))
ITEMS = {item.ref: item for item in (*SESSION.items, *EARLIER.items, PULL, REACH)}


def _in(session: KnownSession, **more: object) -> ReadingContext:
    return ReadingContext(
        session=session,
        others=(EARLIER,),
        local_date=WEDNESDAY,
        **more,
    )


def _only(item: KnownItem) -> ReadingContext:
    return ReadingContext(
        session=KnownSession(ref="one", day=WEDNESDAY, items=(item,)),
        asked_ref=item.ref,
        local_date=WEDNESDAY,
    )


LAST_HANG = ItemResult(
    ref="hang",
    sets=tuple(SetResult(number=n, value=v) for n, v in enumerate((45, 48, 38), start=1)),
)
LAST_ROW = ItemResult(
    ref="row",
    sets=tuple(
        SetResult(number=n, value=v, side=Side.LEFT, load_kg=20)
        for n, v in enumerate((8, 8, 7), start=1)
    ),
)
PLACES: dict[str, ReadingContext] = {
    "day": _in(SESSION),
    "hang": _in(SESSION, asked_ref="hang"),
    "press": _in(SESSION, asked_ref="press"),
    "row": _in(SESSION, asked_ref="row"),
    "carry": _in(SESSION, asked_ref="carry"),
    "pull": _only(PULL),
    "single": _only(PULL.model_copy(update={"sets": 1})),
    "sides": _only(REACH),
    "effort": _in(SESSION, question=OpenQuestion(expects=Expects.EFFORT)),
    "reserve": _in(SESSION, question=OpenQuestion(expects=Expects.RESERVE, item_ref="press")),
    "pain": _in(SESSION, question=OpenQuestion(expects=Expects.PAIN)),
    "morning": _in(
        SESSION,
        question=OpenQuestion(expects=Expects.PAIN, site=Site.WRIST, side=Side.LEFT),
    ),
    "after": _in(SESSION, last=(LAST_HANG,)),
    "aftersides": _in(SESSION, last=(LAST_ROW,)),
    "es": _in(SESSION, asked_ref="hang", language="es", decimal_mark=","),
}
