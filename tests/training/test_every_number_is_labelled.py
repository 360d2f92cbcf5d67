"""Every number names its unit and where it comes from, and every source key resolves."""

import ast
import re
from importlib.resources import files
from pathlib import Path

import pytest
from ruamel.yaml import YAML

import scheduler
from scheduler.sources import SOURCES, Standing

ROOT = Path(scheduler.__file__).parent
MODULES = sorted(ROOT.rglob("*.py"))
LABEL = re.compile(r"#\s*\[[^\]]+\]\s*(?P<key>[A-Za-z][A-Za-z0-9]*)(?P<place>:\s*\S)?")
BY_DEFINITION = re.compile(r"#\s*\[[^\]]+\]\s*by definition")
RULEBOOK = YAML(typ="safe").load((files("scheduler.training") / "rulebook.yaml").read_text("utf-8"))
# CHOSEN: what numbers a thing rather than measuring one
WITHOUT_A_YEAR = {"botapi", "rfc5545", "owaspcsv", "cldr"}  # kept up where they stand
ORDINALS = {"version", "number", "push_bent_from_stage", "pull_bent_from_stage"}


def name_of(module: Path) -> str:
    return str(module.relative_to(ROOT))


def is_numeric(node: ast.expr) -> bool:
    """Tell whether an expression is a number, or a plain collection of numbers.

    A table of records is not: its rows carry their own comments.
    """
    if isinstance(node, (ast.Tuple, ast.List, ast.Set)):
        return any(is_number(one) for one in node.elts)
    if isinstance(node, ast.Dict):
        return any(is_number(one) for one in node.values)
    return is_number(node)


def is_number(node: ast.expr) -> bool:
    """Tell whether an expression is one number, or arithmetic on numbers."""
    if isinstance(node, ast.Constant):
        return isinstance(node.value, (int, float)) and not isinstance(node.value, bool)
    if isinstance(node, ast.UnaryOp):
        return is_number(node.operand)
    if isinstance(node, ast.BinOp):
        return is_number(node.left) and is_number(node.right)
    return False


def is_labelled(beside: str) -> bool:
    """Tell whether a comment gives a unit and a source; a published one needs its place too."""
    if BY_DEFINITION.search(beside):
        return True
    label = LABEL.search(beside)
    if label is None or label["key"].lower() not in SOURCES:
        return False
    is_published = SOURCES[label["key"].lower()].standing is Standing.PUBLISHED
    return label["place"] is not None or not is_published


def unlabelled_constants(text: str) -> list[str]:
    """Return the module-level numbers without a unit and a resolving source beside them."""
    lines = text.splitlines()
    found = []
    for node in ast.parse(text).body:
        if not isinstance(node, (ast.Assign, ast.AnnAssign)) or node.value is None:
            continue
        if not is_numeric(node.value):
            continue
        beside = " ".join(lines[node.lineno - 1 : node.end_lineno])
        if not is_labelled(beside):
            found.append(f"line {node.lineno}: {lines[node.lineno - 1]}")
    return found


@pytest.mark.parametrize("module", MODULES, ids=name_of)
def test_every_constant_of_a_module_has_a_unit_and_a_source(module):
    assert unlabelled_constants(module.read_text("utf-8")) == []


@pytest.mark.parametrize(
    "text",
    [
        "LEAST_S = 5",
        "LEAST_S = 5  # [s] because",
        "LEAST_S = 5  # [s] hearsay: page 3",
        "LEAST_S = 5  # [s] foster1998",
        "LEAST_S = 5  # ch: a tap",
        "SHARES = (0.5, 0.7)",
        "BY_REPS: dict[int, int] = {1: 100}",
        "BELOW = -1.5",
    ],
)
def test_a_constant_without_a_label_is_found(text):
    assert unlabelled_constants(text)


@pytest.mark.parametrize(
    "text",
    [
        "LEAST_S = 5  # [s] ch: a tap",
        "LEAST_S = 5  # [s] CP",
        "HOUR_S = 3600  # [s/h] by definition",
        "NAME = 'x'",
        "SHARES = (\n 0.5,\n)  # [1] ch: halves",
    ],
)
def test_a_label_or_a_word_is_left_alone(text):
    assert unlabelled_constants(text) == []


def sources_named(text: str) -> set[str]:
    """Return the source keys that a module hands to its reasons as plain words."""
    calls = [node for node in ast.walk(ast.parse(text)) if isinstance(node, ast.Call)]
    return {
        call.args[1].value
        for call in calls
        if isinstance(call.func, ast.Name)
        and call.func.id in {"reason", "_changed"}
        and len(call.args) > 1
        and isinstance(call.args[1], ast.Constant)
        and isinstance(call.args[1].value, str)
    }


def test_every_source_that_a_reason_names_resolves():
    named = set().union(*(sources_named(module.read_text("utf-8")) for module in MODULES))
    assert {"ch", "silbernagel2007"} <= named
    assert named <= set(SOURCES)


def numbers(node, path=()):
    """Yield every number of the rulebook with the mapping it stands in and its path."""
    if isinstance(node, dict):
        for key, value in node.items():
            yield from (
                [(node, (*path, key))]
                if isinstance(value, (int, float)) and not isinstance(value, bool)
                else numbers(value, (*path, key))
            )
    elif isinstance(node, list):
        for index, value in enumerate(node):
            if isinstance(value, (int, float)) and not isinstance(value, bool):
                yield {}, (*path, index)
            else:
                yield from numbers(value, (*path, index))


def test_every_number_of_the_rulebook_has_unit_and_source():
    found = [(around, path) for around, path in numbers(RULEBOOK) if path[-1] not in ORDINALS]
    assert len(found) > 200
    bare = [path for around, path in found if not {"unit", "source"} <= set(around)]
    assert bare == []
    assert {around["source"] for around, _ in found} <= set(SOURCES)


def test_every_unit_of_the_rulebook_is_a_word():
    for around, path in numbers(RULEBOOK):
        if path[-1] not in ORDINALS:
            assert around["unit"].strip(), path


def test_every_source_says_where_to_find_it():
    for key, source in SOURCES.items():
        assert re.fullmatch(r"[a-z][a-z0-9]*", key)
        assert source.reference.strip()
        if source.standing is Standing.PUBLISHED and key not in WITHOUT_A_YEAR:
            assert re.search(r"\b(19|20)\d\d\b", source.reference), key
