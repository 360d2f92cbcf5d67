"""Finds every template in the code, by its type: what the catalogue must hold.

A literal is a template where a parameter, a field, a result or a table is annotated ``Template``:
``Mapping[FollowUp, Template]`` makes every value one. The code is read as a tree, since a reader of
tokens joins both halves of ``"a" if one else "b"``.
"""

import ast
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from bot.wording.catalogue.annotations import Annotated, annotated_in, of_type, texts_in
from bot.wording.catalogue.origins import Origins

WORDLESS = re.compile(r"\{[^}]*\}|<[^>]*>|[\W\d_]")
Text = str | tuple[str, str]


@dataclass(frozen=True)
class Source:
    """One file of the code as a tree."""

    name: str
    tree: ast.Module


@dataclass(frozen=True)
class Occurrence:
    """One template where it stands: a text, or a singular and its plural."""

    text: Text
    file: str
    line: int


@dataclass
class _Argument:
    """What stands at a call where a template belongs."""

    call: ast.Call
    given: list[ast.expr] = field(default_factory=list)
    is_plural: bool = False


def sources(root: Path) -> list[Source]:
    """Read every file below a folder."""
    return [
        Source(path.relative_to(root.parent).as_posix(), ast.parse(path.read_text("utf-8")))
        for path in sorted(root.rglob("*.py"))
    ]


def occurrences(code: Sequence[Source]) -> list[Occurrence]:
    """Return every template with words in it, file by file."""
    known = annotated_in([one.tree for one in code])
    return [
        Occurrence(text, one.name, line)
        for one in code
        for line, text in (*_called(one.tree, known.within(one.tree)), *of_type(one.tree, known))
        if has_words(text)
    ]


def has_words(text: Text) -> bool:
    """Tell whether anything is left to translate besides what is filled in, markup and signs."""
    return any(WORDLESS.sub("", part) for part in ((text,) if isinstance(text, str) else text))


def unmarked(code: Sequence[Source]) -> list[str]:
    """Return where a template comes from something that is not annotated as one."""
    known = annotated_in([one.tree for one in code])
    return [
        f"{one.name}:{argument.call.lineno}: {ast.unparse(given)}"
        for one in code
        for origins in (Origins(one.tree, known),)
        for argument in _arguments(one.tree, known.within(one.tree))
        for given in argument.given
        if not origins.vouch_for(given)
    ]


def _called(tree: ast.Module, known: Annotated) -> Iterator[tuple[int, Text]]:
    for argument in _arguments(tree, known):
        texts = [texts_in(given) for given in argument.given]
        if argument.is_plural and len(texts) == 2 and all(len(one) == 1 for one in texts):
            yield argument.call.lineno, (texts[0][0], texts[1][0])
        else:
            yield from ((argument.call.lineno, text) for one in texts for text in one)


def _arguments(tree: ast.Module, known: Annotated) -> Iterator[_Argument]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and (taken := known.taken_by(node)):
            found = _Argument(node, is_plural=known.is_plural(node))
            by_name = {one.arg: one.value for one in node.keywords}
            for place, name in taken.items():
                if place < len(node.args):
                    found.given.append(node.args[place])
                elif name in by_name:
                    found.given.append(by_name[name])
            yield found
