"""A Spanish speaker names a movement as the session does, or as people in the gym do."""

from datetime import date

import pytest

from bot.reading.known import KnownItem, KnownSession, ReadingContext
from bot.reading.reply import read
from bot.reading.values import Reading, Recorded
from bot.wording.catalogue.spoken import ALSO_CALLED
from bot.wording.movement_names import name_of, names_to_read
from bot.wording.tongue import tongue_of
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Movement, Sides

TONGUE = tongue_of("es")
MOVEMENTS = sorted(default_library().movements.values(), key=lambda one: one.key)
DAY = date(2026, 3, 4)


def item_of(movement: Movement, number: int) -> KnownItem:
    return KnownItem(
        ref=movement.key,
        number=number,
        names=names_to_read(TONGUE, movement),
        measure=movement.measure,
        sets=2,
        target=12,
        sides=movement.sides,
    )


def read_beside_another(text: str, movement: Movement) -> Reading:
    """Read a line in a session with a second item of another direction, alike where one is."""
    others = [one for one in MOVEMENTS if one.direction != movement.direction]
    other = next((one for one in others if one.measure is movement.measure), others[0])
    session = KnownSession(ref="s", day=DAY, items=(item_of(movement, 1), item_of(other, 2)))
    return read(text, ReadingContext(session=session, language="es", local_date=DAY))


def lines() -> list[tuple[str, Movement]]:
    found = []
    for movement in MOVEMENTS:
        other = TONGUE.translations.pgettext(ALSO_CALLED, movement.name).split(",")
        figures = "izq 12 11 der 12 11" if movement.sides is Sides.EACH else "12 11"
        found += [(f"{name} {figures}", movement) for name in (name_of(TONGUE, movement), *other)]
    return found


def test_every_name_in_spanish_finds_its_movement():
    missed = [
        text
        for text, movement in lines()
        if not isinstance(reading := read_beside_another(text, movement), Recorded)
        or [one.ref for one in reading.items] != [movement.key]
        or len(reading.items[0].sets) != (4 if movement.sides is Sides.EACH else 2)
    ]
    assert missed == []


def test_no_two_movements_share_their_spanish_name():
    names = [name_of(TONGUE, one).casefold() for one in MOVEMENTS]
    assert len(set(names)) == len(names)


@pytest.mark.parametrize("text", ["con 20 kg 12 11", "de 12 11", "la 12 11", "y 12 11"])
def test_a_small_word_of_many_names_names_nothing(text):
    reading = read_beside_another(text, default_library().movements["bar_hang"])
    assert not isinstance(reading, Recorded)


def test_the_english_names_are_still_understood():
    hang = default_library().movements["bar_hang"]
    assert isinstance(read_beside_another("dead hang 12 11", hang), Recorded)


def test_what_the_catalogue_does_not_have_keeps_the_name_of_its_library():
    own = default_library().movements["bar_hang"].model_copy(update={"name": "Rope climb"})
    assert name_of(TONGUE, own) == "Rope climb"
    assert names_to_read(TONGUE, own)[0] == "Rope climb"
