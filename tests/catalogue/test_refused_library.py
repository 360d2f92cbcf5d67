"""A wrong library is refused with the file, the line, the field and what is expected there."""

from collections.abc import Mapping
from importlib import resources
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scheduler.catalogue.library import default_library, read_library
from scheduler.catalogue.names import folded
from scheduler.located_yaml import WrongFileError

FOLDER = resources.files("scheduler.catalogue") / "movements"
TEXTS: Mapping[str, str] = {
    file.name: file.read_text(encoding="utf-8")
    for file in FOLDER.iterdir()
    if file.name.endswith(".yaml")
}


def refused(file_name: str, old: str, new: str) -> tuple[tuple[str, ...], int]:
    """Return the problems after replacing ``old`` once, and the line where it stood."""
    text = TEXTS[file_name]
    assert old in text
    line = text[: text.index(old)].count("\n") + 1
    with pytest.raises(WrongFileError) as refusal:
        read_library({**TEXTS, file_name: text.replace(old, new, 1)})
    return refusal.value.problems, line


def test_packaged_files_read_as_the_default_library():
    assert read_library(TEXTS).movements.keys() == default_library().movements.keys()


def test_wrong_word_is_refused_with_the_allowed_words():
    (problem,), line = refused("upward_pull.yaml", "chain: open", "chain: ajar")
    assert problem == (
        f"upward_pull.yaml line {line}, movements.farmer_march.chain: "
        "expected 'open' or 'closed', found 'ajar'"
    )


def test_wrong_word_inside_a_list_is_refused_where_it_stands():
    (problem,), line = refused(
        "upward_pull.yaml", "demands: [grip, traction, neck_load]", "demands: [grip, tracsion]"
    )
    assert problem.startswith(f"upward_pull.yaml line {line}, movements.farmer_march.demands.1:")
    assert "'traction'" in problem
    assert "found 'tracsion'" in problem


def test_unknown_field_is_refused_with_the_fields_that_exist():
    (problem,), line = refused("upward_pull.yaml", "    harder: farmer_carry", "    hardr: x")
    assert problem.startswith(
        f"upward_pull.yaml line {line}, movements.farmer_march.hardr: "
        "unknown field, expected one of: key, name, direction,"
    )
    assert " harder," in problem


def test_missing_field_is_refused_at_the_movement():
    (problem,), line = refused(
        "upward_pull.yaml",
        "    family: farmer_carry\n    limiting_joint: grip\n",
        "    family: x\n",
    )
    first_line = TEXTS["upward_pull.yaml"].split("key: farmer_march")[0].count("\n") + 1
    assert first_line < line
    assert problem == (
        f"upward_pull.yaml line {first_line}, movements.farmer_march.limiting_joint: "
        "missing, expected a value here"
    )


def test_unknown_neighbour_is_refused_at_its_line():
    problems, line = refused("upward_pull.yaml", "harder: farmer_carry", "harder: farmer_cary")
    assert problems[0] == (
        f"upward_pull.yaml line {line}, farmer_march.harder: the library has no such neighbour; "
        "found farmer_cary, expected the key of another movement"
    )


def test_hang_without_traction_is_refused_at_its_demands():
    problems, line = refused(
        "vertical_pull.yaml", "demands: [overhead, grip, traction]", "demands: [overhead, grip]"
    )
    assert problems[0].startswith(f"vertical_pull.yaml line {line}, foot_assisted_hang.demands: ")
    assert problems[0].endswith("found grip, overhead, expected traction")


def test_text_that_is_not_yaml_is_refused_with_its_line():
    with pytest.raises(WrongFileError, match=r"odd\.yaml line 2: mapping values"):
        read_library({"odd.yaml": "movements:\n  - key: open: closed\n"})


def test_key_written_twice_in_one_movement_is_refused():
    problems, line = refused(
        "upward_pull.yaml", "    chain: open", "    chain: open\n    chain: closed"
    )
    assert problems[0].startswith(f"upward_pull.yaml line {line + 1}: ")
    assert "duplicate key" in problems[0]


@pytest.mark.parametrize("text", ["", "[]", "movements: 3", "movements: [3]", "movements:"])
def test_file_of_another_shape_is_refused(text):
    with pytest.raises(WrongFileError, match=r"odd\.yaml line 1"):
        read_library({"odd.yaml": text})


def test_problems_of_several_files_are_named_at_once():
    broken = {
        name: text.replace("tempo: controlled", "tempo: quick", 1) for name, text in TEXTS.items()
    }
    with pytest.raises(WrongFileError) as refusal:
        read_library(broken)
    assert {problem.split(" line ")[0] for problem in refusal.value.problems} == set(TEXTS)


@given(st.text())
def test_any_text_is_either_refused_with_problems_or_read(text):
    with pytest.raises(WrongFileError) as refusal:
        read_library({"any.yaml": text})
    assert refusal.value.problems


@given(st.text())
def test_looking_up_any_text_answers_with_movements_of_the_library(text):
    library = default_library()
    assert all(library.movements[m.key] is m for m in library.named(text))


@given(st.sampled_from(sorted(default_library().movements)), st.randoms(use_true_random=False))
def test_spelling_habits_do_not_matter(key, random):
    movement = default_library().movements[key]
    words = movement.name.replace("-", " ").split()
    written = random.choice([" ", "-", "  ", "_"]).join(
        random.choice([word.upper(), word.lower(), word.title()]) for word in words
    )
    assert default_library().named(written) == (movement,)


@given(st.sampled_from(sorted(default_library().movements)))
def test_ladder_is_the_same_from_every_rung_and_goes_upward(key):
    library = default_library()
    rungs = library.ladder(key)
    assert key in {rung.key for rung in rungs}
    assert library.easier_of(rungs[0]) is None
    assert library.harder_of(rungs[-1]) is None
    for lower, upper in pairwise(rungs):
        assert library.harder_of(lower) is upper
        assert library.easier_of(upper) is lower
        assert lower.demands <= upper.demands
        assert library.ladder(upper.key) == rungs


@given(st.text())
def test_folding_a_folded_name_again_takes_away_plurals_only(text):
    once = folded(text)
    assert folded(once) in {once, once.removesuffix("s")}
