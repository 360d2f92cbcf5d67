"""Check a YAML text against a model, and say line, field and expected value where it is wrong."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import UnionType
from typing import Any, Generic, TypeVar, Union, get_args, get_origin

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails
from ruamel.yaml import YAML
from ruamel.yaml.comments import CommentedMap, CommentedSeq
from ruamel.yaml.error import MarkedYAMLError, YAMLError

ModelT = TypeVar("ModelT", bound=BaseModel)
Path = tuple[int | str, ...]
"""The way from the top of a file to one value: field names and places in lists."""


class WrongFileError(ValueError):
    """A data file was refused; ``problems`` says where and what is expected, a line each."""

    def __init__(self, problems: Sequence[str]) -> None:
        """Keep the problems for the person who must mend the file."""
        super().__init__("\n".join(problems))
        self.problems = tuple(problems)


@dataclass(frozen=True)
class Located(Generic[ModelT]):
    """A checked file that still knows on which line each of its values stands."""

    value: ModelT
    file_name: str
    tree: Any

    def line_of(self, *path: int | str) -> int:
        """Return the 1-based line of the deepest value on the way along ``path``."""
        return _line_of(self.tree, path)


def read_located(text: str, model: type[ModelT], *, file_name: str) -> ModelT:
    """Parse ``text`` as YAML 1.2 and validate it as ``model``.

    Raises:
        WrongFileError: with one line a problem, ``file line N, field: what is expected``.

    """
    return read_with_lines(text, model, file_name=file_name).value


def read_with_lines(text: str, model: type[ModelT], *, file_name: str) -> Located[ModelT]:
    """Do as :func:`read_located`, and keep the lines for checks that come after it.

    Raises:
        WrongFileError: with one line a problem, ``file line N, field: what is expected``.

    """
    tree = _tree(text, file_name=file_name)
    try:
        return Located(value=model.model_validate(tree), file_name=file_name, tree=tree)
    except ValidationError as faults:
        raise WrongFileError(
            [
                f"{file_name} line {_line_of(tree, error['loc'])}"
                f"{_place(tree, error['loc'])}: {_expected(error, model)}"
                for error in faults.errors()
            ]
        ) from faults


def _tree(text: str, *, file_name: str) -> Any:
    """Parse the text, or say on which line it stops being YAML."""
    try:
        return YAML(typ="rt").load(text)
    except MarkedYAMLError as fault:
        line = fault.problem_mark.line + 1 if fault.problem_mark else 1
        problem = (fault.problem or "not YAML").splitlines()[0]
        raise WrongFileError([f"{file_name} line {line}: {problem}"]) from fault
    except YAMLError as fault:
        raise WrongFileError([f"{file_name} line 1: {str(fault).splitlines()[0]}"]) from fault


def _place(tree: Any, location: Path) -> str:
    """Name the field; an entry of a list that has a key is named by its key, not its number."""
    steps: list[str] = []
    node = tree
    for step in location:
        node = _child(node, step)
        named = isinstance(node, Mapping) and isinstance(step, int) and "key" in node
        steps.append(str(node["key"]) if named else str(step))
    return f", {'.'.join(steps)}" if steps else ""


def _expected(error: ErrorDetails, model: type[BaseModel]) -> str:
    """Say what is expected in words for the person who mends the file."""
    kind = error["type"]
    if kind == "extra_forbidden":
        owner = _model_at(model, error["loc"][:-1])
        fields = ", ".join(owner.model_fields) if owner else "none"
        return f"unknown field, expected one of: {fields}"
    if kind == "missing":
        return "missing, expected a value here"
    found = error.get("input")
    shown = f", found {found!r}" if isinstance(found, str | int | float | bool) else ""
    return f"{error['msg'].replace('Input should be', 'expected')}{shown}"


def _model_at(annotation: Any, location: Path) -> type[BaseModel] | None:
    """Return the model whose fields stand at ``location``, if there is one."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        if not location:
            return annotation
        field = annotation.model_fields.get(str(location[0]))
        return _model_at(field.annotation, location[1:]) if field else None
    arguments = [a for a in get_args(annotation) if a is not Ellipsis]
    is_choice = get_origin(annotation) in {Union, UnionType}
    rest = location if is_choice else location[1:]
    tried = arguments if is_choice else arguments[-1:]
    return next((found for a in tried if (found := _model_at(a, rest)) is not None), None)


def _child(node: Any, step: int | str) -> Any:
    if isinstance(node, Mapping):
        return node.get(step)
    if isinstance(node, CommentedSeq) and isinstance(step, int) and step < len(node):
        return node[step]
    return None


def _line_of(tree: Any, location: Path) -> int:
    """Return the 1-based line of the deepest node on the way to ``location``."""
    line = 1
    node = tree
    for step in location:
        if isinstance(node, CommentedMap) and step in node:
            line = node.lc.key(step)[0] + 1
        elif isinstance(node, CommentedSeq) and isinstance(step, int) and step < len(node):
            line = node.lc.item(step)[0] + 1
        else:
            return line
        node = node[step]
    return line
