"""What the code says is a template: parameters, fields, results and tables annotated so."""

import ast
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

MARK = "Template"
SELF = frozenset({"self", "cls"})
ONE, MANY = "one", "many"
"""The names of the two parameters that together are a plural."""
TONGUE = "tongue"
"""What a function is handed that says something itself, and is no method of it."""
NOT_A_TONGUE = frozenset({"turn", "self"})
"""Whoever says a finished text to a person, and takes no template."""


@dataclass
class Annotated:
    """What is annotated as a template anywhere in the code, by its name."""

    functions: dict[str, dict[int, str]] = field(default_factory=dict)
    methods: dict[str, dict[int, str]] = field(default_factory=dict)
    names: set[str] = field(default_factory=set)
    aliases: dict[str, ast.expr] = field(default_factory=dict)

    def within(self, tree: ast.Module) -> "Annotated":
        """Return what holds in one file: what everybody may call, and its own private functions."""
        own = annotated_in([tree], self.aliases)
        public = {name: one for name, one in self.functions.items() if not name.startswith("_")}
        return replace(self, functions={**public, **own.functions})

    def taken_by(self, call: ast.Call) -> dict[int, str]:
        """Return the places, and names, of the templates that a call takes."""
        is_handed_a_tongue = bool(call.args) and _last_name(call.args[0]) == TONGUE
        match call.func:
            case ast.Name(id=name):
                return self.functions.get(name, {})
            case ast.Attribute(value=of) if _last_name(of) in NOT_A_TONGUE:
                return {}
            case ast.Attribute(attr=name) if is_handed_a_tongue:
                return self.functions.get(name, {})
            case ast.Attribute(attr=name):
                return self.methods.get(name) or self.functions.get(name, {})
        return {}

    def is_plural(self, call: ast.Call) -> bool:
        """Tell whether a call takes a singular and its plural."""
        return set(self.taken_by(call).values()) == {ONE, MANY}

    def mentions(self, annotation: ast.expr | None) -> bool:
        """Tell whether an annotation has a template in it."""
        if annotation is None:
            return False
        names = {one.id for one in ast.walk(annotation) if isinstance(one, ast.Name)}
        return MARK in names or any(
            self.mentions(self.aliases[name]) for name in names if name in self.aliases
        )


def _last_name(of: ast.expr) -> str:
    match of:
        case ast.Name(id=name) | ast.Attribute(attr=name):
            return name
    return ""


def annotated_in(
    trees: Sequence[ast.Module], aliases: Mapping[str, ast.expr] | None = None
) -> Annotated:
    """Read the annotations of some code; ``aliases`` are types that are named elsewhere."""
    known = Annotated(aliases=dict(aliases or {}))
    nodes = [node for tree in trees for node in ast.walk(tree)]
    for node in nodes:
        match node:
            case ast.Assign(targets=[ast.Name(id=name)], value=ast.Subscript() as value):
                known.aliases.setdefault(name, value)
    for node in nodes:
        match node:
            case ast.FunctionDef() | ast.AsyncFunctionDef():
                _add_function(known, node)
            case ast.ClassDef():
                _add_fields(known, node)
            case ast.AnnAssign(target=ast.Name(id=name), annotation=annotation):
                if known.mentions(annotation):
                    known.names.add(name)
    return known


def _add_function(known: Annotated, node: ast.FunctionDef | ast.AsyncFunctionDef) -> None:
    placed = [*node.args.posonlyargs, *node.args.args]
    is_method = bool(placed) and placed[0].arg in SELF
    places = {
        n: one.arg for n, one in enumerate(placed[is_method:]) if _is_template(one.annotation)
    }
    named = [one.arg for one in node.args.kwonlyargs if _is_template(one.annotation)]
    places |= {len(placed) + n: name for n, name in enumerate(named)}
    known.names |= {
        one.arg for one in (*placed, *node.args.kwonlyargs) if known.mentions(one.annotation)
    }
    if known.mentions(node.returns):
        known.names.add(node.name)
    if places:
        (known.methods if is_method else known.functions)[node.name] = places


def _is_template(annotation: ast.expr | None) -> bool:
    return isinstance(annotation, ast.Name) and annotation.id == MARK


def _add_fields(known: Annotated, node: ast.ClassDef) -> None:
    fields = [one for one in node.body if isinstance(one, ast.AnnAssign)]
    places = {
        n: one.target.id
        for n, one in enumerate(fields)
        if isinstance(one.target, ast.Name) and _is_template(one.annotation)
    }
    known.names |= set(places.values())
    if places:
        known.functions[node.name] = places


def of_type(tree: ast.Module, known: Annotated) -> Iterator[tuple[int, str]]:
    """Return the templates of a file's annotated tables and results, each with its line."""
    for node in ast.walk(tree):
        match node:
            case ast.AnnAssign(annotation=annotation, value=ast.expr() as value):
                yield from _in_value(annotation, value, known)
            case ast.FunctionDef(returns=ast.expr() as annotation):
                for one in ast.walk(node):
                    if isinstance(one, ast.Return) and one.value is not None:
                        yield from _in_value(annotation, one.value, known)


def _in_value(annotation: ast.expr, value: ast.expr, known: Annotated) -> Iterator[tuple[int, str]]:
    """Walk an annotation and a value side by side, and yield what is typed as a template."""
    match annotation:
        case ast.Name(id=name) if name == MARK:
            yield from ((value.lineno, text) for text in texts_in(value))
        case ast.Name(id=name) if name in known.aliases:
            yield from _in_value(known.aliases[name], value, known)
        case ast.BinOp(left=left, right=right):
            yield from _in_value(left, value, known)
            yield from _in_value(right, value, known)
        case ast.Subscript(slice=inner):
            for kind, one in _parts(inner, value):
                yield from _in_value(kind, one, known)


def _parts(inner: ast.expr, value: ast.expr) -> Iterator[tuple[ast.expr, ast.expr]]:
    """Pair the parameters of a container's type with the parts of its value."""
    kinds = inner.elts if isinstance(inner, ast.Tuple) else [inner]
    match value:
        case ast.Dict(keys=keys, values=values) if len(kinds) == 2:
            yield from ((kinds[0], key) for key in keys if key is not None)
            yield from ((kinds[1], one) for one in values)
        case ast.Tuple(elts=parts) | ast.List(elts=parts) | ast.Set(elts=parts):
            is_row = len(kinds) > 1 and not isinstance(kinds[-1], ast.Constant)
            kinds = kinds if is_row else [kinds[0]] * len(parts)
            yield from zip(kinds, parts, strict=False)
        case ast.Call(args=[whole]):
            yield from _parts(inner, whole)


def texts_in(value: ast.expr) -> list[str]:
    """Return every text that an expression may be, as far as they are written there."""
    match value:
        case ast.Constant(value=str(text)):
            return [text]
        case ast.IfExp(body=one, orelse=other):
            return [*texts_in(one), *texts_in(other)]
        case ast.Call(func=ast.Attribute(attr="get"), args=[_, other]):
            return texts_in(other)
    return []
