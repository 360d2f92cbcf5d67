"""Check a YAML text against a model, and say line, field and expected value where it is wrong."""

from collections.abc import Sequence
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError
from ruamel.yaml import YAML
from ruamel.yaml.comments import CommentedMap, CommentedSeq
from ruamel.yaml.error import MarkedYAMLError

ModelT = TypeVar("ModelT", bound=BaseModel)


class WrongFileError(ValueError):
    """A data file was refused; ``problems`` says where and what is expected, a line each."""

    def __init__(self, problems: Sequence[str]) -> None:
        """Keep the problems for the person who must mend the file."""
        super().__init__("\n".join(problems))
        self.problems = tuple(problems)


def read_located(text: str, model: type[ModelT], *, file_name: str) -> ModelT:
    """Parse ``text`` as YAML 1.2 and validate it as ``model``.

    Raises:
        WrongFileError: with one line a problem, ``file line N, field: what is expected``.

    """
    try:
        tree = YAML(typ="rt").load(text)
    except MarkedYAMLError as fault:
        line = fault.problem_mark.line + 1 if fault.problem_mark else 1
        raise WrongFileError([f"{file_name} line {line}: {fault.problem}"]) from fault
    try:
        return model.model_validate(tree)
    except ValidationError as faults:
        raise WrongFileError(
            [
                f"{file_name} line {_line_of(tree, error['loc'])}, "
                f"{'.'.join(str(step) for step in error['loc'])}: {error['msg']}"
                for error in faults.errors()
            ]
        ) from faults


def _line_of(tree: Any, location: tuple[int | str, ...]) -> int:
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
