"""What a piece of the source may say: the texts of an expression, each with the choices on which it is said.

Names are followed to what they are set to, in the function, its callers, the module and the modules it imports from. A
part of a sentence that depends on figures is a blank.
"""

from __future__ import annotations

import ast
import importlib.util
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import NamedTuple

BLANK = "…"
_MOST = 3  # wordings of one part of a sentence; of more it is a blank
_DEEPEST = 8
Choices = Mapping[object, object]
Function = ast.FunctionDef | ast.AsyncFunctionDef


class Said(NamedTuple):
    """A text, and what has to hold for it to be said; two texts of one call are said together if they agree."""

    text: str
    choices: Choices

    def beside(self, other: Choices) -> Choices | None:
        """Give the choices of both; None where they cannot hold together."""
        if any(other.get(key, choice) != choice for key, choice in self.choices.items()):
            return None
        return {**self.choices, **other}


class Module:
    """A module of the source with what is needed to follow its names."""

    def __init__(self, path: Path) -> None:
        """Read it, and note what its names may be looked up in."""
        self.tree = ast.parse(path.read_text(encoding="utf-8"))
        every = list(ast.walk(self.tree))
        self.inside = {child: node for node in every for child in ast.iter_child_nodes(node)}
        self.functions = {node.name: node for node in every if isinstance(node, Function)}
        self.calls = sorted((node for node in every if isinstance(node, ast.Call)), key=lambda one: one.lineno)
        self.imported = {
            alias.asname or alias.name: (str(node.module), alias.name)
            for node in every
            if isinstance(node, ast.ImportFrom)
            for alias in node.names
        }
        self.assignments: dict[ast.AST, list[ast.Assign | ast.AnnAssign | ast.NamedExpr]] = {}
        for node in every:
            if isinstance(node, ast.Assign | ast.AnnAssign | ast.NamedExpr):
                self.assignments.setdefault(self.function_of(node) or self.tree, []).append(node)

    def function_of(self, node: ast.AST) -> Function | None:
        """Give the function a node stands in."""
        while node in self.inside:
            node = self.inside[node]
            if isinstance(node, Function):
                return node
        return None

    def texts(self, node: ast.AST | None, deep: int = 0) -> list[Said]:
        """Give the texts of an expression; a blank where there is no telling."""
        found = self._texts(node, deep) if node is not None and deep < _DEEPEST else []
        return found or [Said(BLANK, {})]

    def _texts(self, node: ast.AST, deep: int) -> list[Said]:
        if isinstance(node, ast.Constant):
            return [Said(str(node.value), {})]
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id == "Severity":
            return [Said(node.attr.lower(), {})]
        if isinstance(node, ast.IfExp):
            test = ast.dump(node.test)
            ways = ((True, node.body), (False, node.orelse))
            return [said for way, one in ways for said in self._under({test: way}, one, deep)]
        if isinstance(node, ast.JoinedStr):
            return self._joined(node.values, deep)
        if isinstance(node, ast.BinOp) and isinstance(node.op, ast.Add):
            return self._joined([node.left, node.right], deep)
        if isinstance(node, ast.Subscript) and isinstance(node.value, ast.Name):
            rows = self._rows(node, node.value.id)
            return [said for choices, one in rows for said in self._under(choices, one, deep)]
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            return self._returned(node.func.id, deep)
        return self._named(node, deep) if isinstance(node, ast.Name) else []

    def _under(self, choices: Choices, node: ast.AST, deep: int) -> Iterator[Said]:
        for said in self.texts(node, deep + 1):
            together = said.beside(choices)
            if together is not None:
                yield Said(said.text, together)

    def _joined(self, parts: list[ast.expr], deep: int) -> list[Said]:
        found = [Said("", {})]
        for part in parts:
            ways = self.texts(part.value, deep + 1) if isinstance(part, ast.FormattedValue) else self.texts(part, deep)
            ways = [one for one in ways if one.text != "None"]
            if not ways or (isinstance(part, ast.FormattedValue) and len({one.text for one in ways}) > _MOST):
                ways = [Said(BLANK, {})]
            found = [
                Said(begun.text + said.text, together)
                for begun in found
                for said in ways
                if (together := said.beside(begun.choices)) is not None
            ]
        return found

    def _named(self, node: ast.Name, deep: int) -> list[Said]:
        function = self.function_of(node)
        if function is not None:
            held = self._before(node, self._assigned(node.id, function))
            if held:
                return [said for choices, one in held for said in self._under(choices, one, deep)]
            handed = list(self._handed(node.id, function))
            if handed:
                return [said for choices, one in handed for said in self._under(choices, one, deep)]
        for _, one in self._set_to(node.id, self.tree):
            return self.texts(one, deep + 1)
        if node.id in self.imported:
            place, name = self.imported[node.id]
            other = module_of(place)
            for _, one in other._set_to(name, other.tree) if other is not None else ():
                assert other is not None
                return other.texts(one, deep + 1)
        return []

    def _set_to(self, name: str, scope: ast.AST) -> Iterator[tuple[Choices, ast.AST]]:
        """Give what a name is set to in a function or a module, each with the branches it stands in."""
        for _, choices, value in self._assigned(name, scope):
            yield choices, value

    def _assigned(self, name: str, scope: ast.AST) -> Iterator[tuple[ast.AST, Choices, ast.AST]]:
        for node in self.assignments.get(scope, ()):
            targets: list[ast.expr] = node.targets if isinstance(node, ast.Assign) else [node.target]
            for target in targets:
                if isinstance(target, ast.Name) and target.id == name and node.value is not None:
                    yield node, self._branches(node, scope), node.value
                elif isinstance(target, ast.Tuple) and node.value is not None:
                    names = [one.id if isinstance(one, ast.Name) else "" for one in target.elts]
                    if name in names:
                        for choices, part in self._parts(node.value, names.index(name)):
                            yield node, {**self._branches(node, scope), **choices}, part

    def _before(self, use: ast.Name, held: Iterator[tuple[ast.AST, Choices, ast.AST]]) -> list[tuple[Choices, ast.AST]]:
        """Leave out what is set after the use of a name, and what is surely set anew before it."""
        around = {use, *self._above(use)}
        found: dict[ast.AST, list[tuple[Choices, ast.AST]]] = {}
        for node, choices, value in held:
            statement = next(one for one in (node, *self._above(node)) if isinstance(one, ast.stmt))
            if statement not in around and statement.lineno < use.lineno:
                found.setdefault(statement, []).append((choices, value))
        surely = [statement for statement in found if self._surely(statement, around)]
        last = max((getattr(one, "lineno", 0) for one in surely), default=0)
        return [
            one for statement, several in found.items() if getattr(statement, "lineno", 0) >= last for one in several
        ]

    def _above(self, node: ast.AST) -> Iterator[ast.AST]:
        while node in self.inside:
            node = self.inside[node]
            yield node

    def _surely(self, statement: ast.AST, around: set[ast.AST]) -> bool:
        """Tell whether a statement is passed on every way to what it stands around of."""
        block = self.inside[statement]
        if isinstance(block, ast.If):
            return any(one in around for one in (block.body if statement in block.body else block.orelse))
        return block in around

    def _branches(self, node: ast.AST, scope: ast.AST) -> Choices:
        found: dict[object, object] = {}
        while node is not scope and node in self.inside:
            around = self.inside[node]
            if isinstance(around, ast.If) and node is not around.test:
                found[ast.dump(around.test)] = node in around.body
            node = around
        return found

    def _handed(self, name: str, function: Function) -> Iterator[tuple[Choices, ast.AST]]:
        """Give what the callers in this module hand over for a parameter."""
        parameters = [one.arg for one in (*function.args.posonlyargs, *function.args.args)]
        if name not in parameters + [one.arg for one in function.args.kwonlyargs]:
            return
        for call in self.calls:
            if isinstance(call.func, ast.Name) and call.func.id == function.name:
                given = dict(zip(parameters, call.args, strict=False))
                given |= {one.arg: one.value for one in call.keywords if one.arg}
                if name in given:
                    yield {function.name: call.lineno}, given[name]

    def _returned(self, name: str, deep: int) -> list[Said]:
        function = self.functions.get(name)
        if function is None:
            return []
        ends = [node for node in ast.walk(function) if isinstance(node, ast.Return) and node.value is not None]
        return [
            said for one in ends if one.value is not None for said in self._under({name: one.lineno}, one.value, deep)
        ]

    def _rows(self, looked_up: ast.Subscript, name: str) -> Iterator[tuple[Choices, ast.expr]]:
        """Give what stands in a dictionary of the module, whatever it is looked up by."""
        for _, table in self._set_to(name, self.tree):
            if isinstance(table, ast.Dict):
                for row, one in enumerate(table.values):
                    yield {ast.dump(looked_up): row}, one
            elif isinstance(table, ast.DictComp):
                yield {}, table.value

    def _parts(self, value: ast.expr, index: int) -> Iterator[tuple[Choices, ast.AST]]:
        """Give one part of a tuple, or of several of which one is taken."""
        if isinstance(value, ast.Tuple) and index < len(value.elts):
            yield {}, value.elts[index]
            return
        ways: list[tuple[Choices, ast.expr]] = []
        if isinstance(value, ast.IfExp):
            ways = [({ast.dump(value.test): True}, value.body), ({ast.dump(value.test): False}, value.orelse)]
        elif isinstance(value, ast.Subscript) and isinstance(value.value, ast.Name):
            ways = list(self._rows(value, value.value.id))
        for choices, one in ways:
            yield from (({**choices, **more}, part) for more, part in self._parts(one, index))


@cache
def module_of(name: str) -> Module | None:
    """Give a module of the service by its name."""
    found = importlib.util.find_spec(name) if name.startswith("ductrun.") else None
    return module_at(Path(found.origin)) if found is not None and found.origin else None


@cache
def module_at(path: Path) -> Module:
    """Read a module of the source, once."""
    return Module(path)
