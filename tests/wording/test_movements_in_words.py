"""A movement is named, explained and faulted in the reader's language, wherever it is named."""

import ast

import pytest

from bot.acts.find_movement import movements_named
from bot.wording import how_to as how_to_words
from bot.wording.catalogue.extraction import sources
from bot.wording.catalogue.upkeep import CODE
from bot.wording.reasons import SENTENCES, say_reason
from bot.wording.tongue import tongue_of
from scheduler.catalogue.library import default_library
from scheduler.reasons import Reason

LIBRARY = default_library()
IN_ENGLISH_ON_PURPOSE = {
    "bot/wording/movement_names.py",
    "bot/acts/export_data.py",
    "bot/acts/export_tests.py",
    "bot/acts/find_movement.py",
    "bot/acts/tests_reading.py",
    "bot/reading/team_file.py",
}
"""Where the library's own name is looked up, or kept in data that is the same for everybody."""


def names_a_movement_itself(node: ast.AST) -> bool:
    """Tell whether code reads ``movement.name`` or ``movements[key].name``."""
    match node:
        case ast.Attribute(
            attr="name", value=ast.Name(id="movement") | ast.Attribute(attr="movement")
        ):
            return True
        case ast.Attribute(attr="name", value=ast.Subscript(value=ast.Attribute(attr="movements"))):
            return True
    return False


def test_no_text_takes_a_movements_name_past_the_catalogue():
    found = [
        f"{one.name}:{node.lineno}"
        for one in sources(CODE)
        if one.name not in IN_ENGLISH_ON_PURPOSE
        for node in ast.walk(one.tree)
        if isinstance(node, ast.Attribute) and names_a_movement_itself(node)
    ]
    assert found == []


def test_how_to_is_spanish_for_a_spanish_reader():
    said = how_to_words.how_to(tongue_of("es"), LIBRARY.movements["bar_hang"])
    assert said.startswith("<b>Suspensión en barra</b>\nCuelga de una barra")
    assert "Fallo frecuente:" in said


def test_an_explanation_stays_two_sentences_and_nothing_is_shouted():
    # DERIVED: the English library holds two sentences a movement, a fault is one.
    for movement in LIBRARY.movements.values():
        for english in (movement.how_to, movement.common_fault):
            spanish = tongue_of("es").translated(english)
            assert abs(spanish.count(". ") - english.count(". ")) <= 1, spanish
            assert not set("!¡") & set(spanish)


@pytest.mark.parametrize("code", SENTENCES)
def test_every_reason_is_said_in_spanish(code: str):
    spanish, english = (
        say_reason(tongue_of(one), Reason(code=code, source="ch")) for one in ("es", "en")
    )
    assert spanish != english
    assert "{" not in spanish


@pytest.mark.parametrize(
    ("language", "text", "key", "rest"),
    [
        ("es", "plancha alta es lo que le falta", "Push-up hold", "es lo que le falta"),
        ("en", "push-up hold it is what she misses", "Push-up hold", "it is what she misses"),
        ("en", "pusch-up hold long and even", "Push-up hold", "long and even"),
        ("es", "plancha alta en cajn por las muñecas", "Push-up hold on a box", "por las muñecas"),
    ],
)
def test_the_words_behind_a_name_are_no_slip_of_a_longer_name(language, text, key, rest):
    library = default_library().movements
    meant = movements_named(text, movements=library.values(), tongue=tongue_of(language))
    assert len(meant.found) == 1
    assert (meant.found[0].name, meant.rest) == (key, rest)
