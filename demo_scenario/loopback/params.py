"""A call's parameters, whatever they came as: JSON, a form, multipart parts, or the address."""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from demo_scenario.loopback.files import Upload
from demo_scenario.loopback.refusals import bad_request

_TRUE_WORDS = frozenset({"true", "yes", "1", "on"})


@dataclass(frozen=True, slots=True)
class Params:
    """Values by name (strings from a form, JSON values from JSON), and the files beside them."""

    values: Mapping[str, Any] = field(default_factory=dict)
    uploads: Mapping[str, Upload] = field(default_factory=dict)

    def text(self, name: str) -> str:
        """Return a string, empty when it is left out."""
        value = self.values.get(name)
        return "" if value is None else str(value)

    def integer(self, name: str) -> int | None:
        """Return a whole number, or nothing when it is left out."""
        value = self.values.get(name)
        if value is None or value == "":
            return None
        try:
            return int(value)
        except (TypeError, ValueError):
            raise bad_request(f"parameter {name} must be an integer") from None

    def flag(self, name: str) -> bool:
        """Return a yes or no, no when it is left out."""
        return str(self.values.get(name, "")).lower() in _TRUE_WORDS

    def tree(self, name: str) -> Any:
        """Return what a JSON-serialised parameter holds, or nothing when it is left out."""
        value = self.values.get(name)
        if not isinstance(value, str):
            return value
        if not value:
            return None
        try:
            return json.loads(value)
        except ValueError:
            raise bad_request(f"can't parse {name} JSON object") from None

    def record(self, name: str) -> dict[str, Any]:
        """Return a JSON object, empty when it is left out."""
        tree = self.tree(name)
        if tree is None:
            return {}
        if not isinstance(tree, dict):
            raise bad_request(f"can't parse {name}: expected an Object")
        return tree
