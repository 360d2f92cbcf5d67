"""Where a template that is no literal comes from: something annotated as one, or nobody knows."""

import ast

from bot.wording.catalogue.annotations import Annotated, annotated_in

FOLLOWED_MOST = 4  # [steps] ch: how far a name is followed to what it is bound to
ACCESS = frozenset({"get", "values", "items", "pop"})
"""Ways to take a template out of a table."""


WAYS_THROUGH = frozenset({"enumerate", "zip", "sorted", "reversed", "dict", "tuple", "list"})
"""Ways to run through a table."""


class Origins:
    """The names of one file, and which of them are templates or tables of them."""

    def __init__(self, tree: ast.Module, known: Annotated) -> None:
        """Read what the file annotates, imports and binds."""
        imported = {
            alias.asname or alias.name
            for node in ast.walk(tree)
            if isinstance(node, ast.ImportFrom)
            for alias in node.names
        }
        self._known = known
        self._names = annotated_in([tree], known.aliases).names | (imported & known.names)
        self._bound = _bound(tree)

    def vouch_for(self, given: ast.expr, *, steps: int = FOLLOWED_MOST) -> bool:
        """Tell whether a template, or every one that it may be, is found by its annotation."""
        match given:
            case ast.Name(id=name):
                return name in self._names or self._follows(name, steps)
            case ast.Attribute(attr=name):
                return name in self._known.names
            case ast.Subscript(value=table):
                return self.vouch_for(table, steps=steps)
            case ast.Call(func=ast.Attribute(value=table, attr=how), args=args) if how in ACCESS:
                return all(self.vouch_for(one, steps=steps) for one in (table, *args[1:]))
            case ast.Call(func=ast.Name(id=how), args=args) if how in WAYS_THROUGH:
                return any(self.vouch_for(one, steps=steps) for one in args)
            case ast.Call(func=function):
                return self.vouch_for(function, steps=0)
            case ast.IfExp(body=body, orelse=orelse):
                return all(self.vouch_for(one, steps=steps) for one in (body, orelse))
        return isinstance(given, ast.Constant)

    def _follows(self, name: str, steps: int) -> bool:
        values = self._bound.get(name, [])
        return steps > 0 and any(
            not isinstance(one, ast.Constant) and self.vouch_for(one, steps=steps - 1)
            for one in values
        )


def _bound(tree: ast.Module) -> dict[str, list[ast.expr]]:
    """Map the names of a file to what they are bound to: assigned, or run through."""
    found: dict[str, list[ast.expr]] = {}
    for node in ast.walk(tree):
        match node:
            case ast.Assign(targets=[target], value=value):
                pass
            case ast.For(target=target, iter=value) | ast.comprehension(target=target, iter=value):
                pass
            case ast.NamedExpr(target=target, value=value):
                pass
            case _:
                continue
        for name in ast.walk(target):
            if isinstance(name, ast.Name):
                found.setdefault(name.id, []).append(value)
    return found
