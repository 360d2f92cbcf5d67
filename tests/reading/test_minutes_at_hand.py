"""How long somebody has is for the coach; it is offered as no item's result."""

import pytest

from bot.reading.known import KnownItem, KnownSession, ReadingContext
from bot.reading.reply import read
from bot.reading.values import PassedOn, Recorded
from scheduler.catalogue.values import Measure
from tests.reading.team import WEDNESDAY

HOLDS = tuple(
    KnownItem(
        ref=f"i{n}",
        number=n,
        names=(f"Reach {'abc'[n]}",),
        measure=Measure.HOLD_S,
        sets=2,
        target=50,
    )
    for n in (1, 2)
)


def reading_of(text: str):
    session = KnownSession(ref="s", day=WEDNESDAY, items=HOLDS)
    asked = "i1" if "1 min" in text else None
    return read(
        text,
        ReadingContext(session=session, local_date=WEDNESDAY, language="es", asked_ref=asked),
    )


@pytest.mark.parametrize(
    "text",
    [
        "esto me va a llevar mucho? tengo 20 min",
        "solo tengo 20 min hoy",
        "tengo 20 minutos nada mas",
        "voy con prisa, 15 min",
        "only got 20 min",
        "I have about 15 minutes today",
    ],
)
def test_minutes_at_hand_go_to_the_coach(text: str):
    assert isinstance(reading_of(text), PassedOn)


def test_what_may_be_a_hold_is_read_as_one():
    """DERIVED: 60 s is within 1.25 times the planned 50 s."""
    assert isinstance(reading_of("got 1 min both sets"), Recorded)
