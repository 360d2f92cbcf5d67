"""Every example line that stands under a session is itself understood.

All figures CHOSEN: the widest range of doses that a rule writes.
"""

from hypothesis import given
from hypothesis import strategies as st

from bot.reading.examples import example_line, example_reply
from bot.reading.known import KnownItem, KnownSession, ReadingContext
from bot.reading.reply import read
from bot.reading.values import Recorded
from bot.wording import session as words
from bot.wording.catalogue.spoken import SPOKEN
from bot.wording.session import ItemFacts
from bot.wording.tongue import tongue_of
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Measure, Movement, Sides
from scheduler.pain.values import Side
from scheduler.training.values import Dose, Rung
from tests.reading.team import WEDNESDAY

ARMS = ((Side.LEFT, Side.RIGHT), (Side.LEFT,), (Side.RIGHT,))
MOVEMENTS = sorted(default_library().movements.values(), key=lambda one: one.key)
MOST = {Measure.REPS: 30, Measure.HOLD_S: 180, Measure.CARRY_S: 180, Measure.CARRY_M: 120}


@st.composite
def shown_items(draw: st.DrawFn) -> ItemFacts:
    movement: Movement = draw(st.sampled_from(MOVEMENTS))
    load = draw(st.sampled_from([None, 0.5, 2, 4, 8, 12, 16, 20, 32]))
    dose = Dose(
        movement_key=movement.key,
        quality="muscular_endurance",
        measure=movement.measure,
        sets=draw(st.integers(1, 8)),
        target=draw(st.integers(1, MOST[movement.measure])),
        floor=1,
        rung=Rung(load_kg=load),
        rest_s=60,
        reserve_asked=2,
    )
    return ItemFacts(
        number=draw(st.integers(1, 9)),
        pair=1,
        movement=movement,
        dose=dose,
        arms=draw(st.sampled_from(ARMS)),
    )


def known(facts: ItemFacts) -> KnownItem:
    return KnownItem(
        ref=str(facts.number),
        number=facts.number,
        names=(facts.movement.name, *facts.movement.aliases),
        measure=facts.movement.measure,
        sets=facts.dose.sets,
        target=facts.dose.target,
        load_kg=facts.dose.load_kg,
        sides=facts.movement.sides,
        arms=facts.arms,
    )


@given(
    st.lists(shown_items(), min_size=1, max_size=6, unique_by=lambda one: one.number),
    st.sampled_from(SPOKEN),
)
def test_each_example_line_under_a_session_is_recorded_for_its_item_and_arms(facts, language):
    session = KnownSession(ref="s", day=WEDNESDAY, items=tuple(known(one) for one in facts))
    context = ReadingContext(session=session, local_date=WEDNESDAY, language=language)
    for one in facts:
        line = words.example_answer(tongue_of(language), one)
        assert line == example_line(known(one), language=language)
        reading = read(line, context)
        assert isinstance(reading, Recorded), line
        (result,) = reading.items
        arms = set(one.arms) if one.movement.sides is Sides.EACH else {Side.BOTH}
        assert (result.ref, {done.side for done in result.sets}) == (str(one.number), arms)
        assert len(result.sets) == one.dose.sets * len(arms)
    assert isinstance(read(example_reply(session, language=language), context), Recorded)
