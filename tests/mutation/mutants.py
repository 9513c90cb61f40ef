"""Every single change of an operator, a number or a truth in a file of source."""

import ast
import copy
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

OTHER: dict[type[ast.AST], Callable[[], Any]] = {
    ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq, ast.NotEq: ast.Eq, ast.Is: ast.IsNot, ast.IsNot: ast.Is,
    ast.In: ast.NotIn, ast.NotIn: ast.In,
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult,
    ast.FloorDiv: ast.Mult, ast.Mod: ast.Mult, ast.Pow: ast.Mult,
    ast.And: ast.Or, ast.Or: ast.And, ast.USub: ast.UAdd,
}  # fmt: skip
OTHER_NAME = {"min": "max", "max": "min", "any": "all", "all": "any"}


@dataclass(frozen=True, slots=True)
class Mutant:
    """One file with one thing changed."""

    path: str
    line: int
    before: str
    after: str
    source: str

    def __str__(self) -> str:
        return f"{self.path}:{self.line}: {self.before}  ->  {self.after}"


def mutants_of(path: str, source: str) -> list[Mutant]:
    """Return every change of one operator, number, truth or extreme, in the file's order.

    Left alone: annotations and decorators, which do not run with the rule, words, and the
    `strict` of a `zip`, which guards against what its sides, made of each other, never are.
    """
    tree = ast.parse(source)
    return [
        Mutant(path, node.lineno, ast.unparse(node), ast.unparse(changed), _with(tree, number, way))
        for number, node in enumerate(_places(tree))
        for way, changed in enumerate(_changes(node))
    ]


def _with(tree: ast.Module, number: int, way: int) -> str:
    """The whole file with the `number`th place changed in one way."""
    own = copy.deepcopy(tree)
    node = _places(own)[number]
    changed = list(_changes(node))[way]
    node.__class__ = changed.__class__
    node.__dict__.clear()
    node.__dict__.update(changed.__dict__)
    return ast.unparse(own)


def _places(tree: ast.Module) -> list[ast.expr]:
    left_alone = {
        id(inner)
        for node in ast.walk(tree)
        for outer in _without_effect(node)
        for inner in ast.walk(outer)
    }
    places = [
        node for node in ast.walk(tree) if isinstance(node, ast.expr) and id(node) not in left_alone
    ]
    return sorted(places, key=lambda node: (node.lineno, node.col_offset))


def _without_effect(node: ast.AST) -> list[ast.AST]:
    match node:
        case ast.FunctionDef():
            return [*node.decorator_list, *([node.returns] if node.returns else [])]
        case ast.ClassDef():
            return [*node.decorator_list]
        case ast.arg(annotation=ast.expr() as annotation) | ast.AnnAssign(annotation=annotation):
            return [annotation]
        case ast.keyword(arg="strict", value=value):
            return [value]
        case _:
            return []


def _changes(node: ast.expr) -> Iterator[ast.expr]:
    match node:
        case ast.Compare(ops=[*operators]):
            for index, operator in enumerate(operators):
                changed = copy.copy(node)
                changed.ops = [*operators]
                changed.ops[index] = OTHER[type(operator)]()
                yield changed
        case ast.BinOp(op=operator) | ast.BoolOp(op=operator) if type(operator) in OTHER:
            yield _replaced(node, op=OTHER[type(operator)]())
        case ast.UnaryOp(op=ast.Not(), operand=operand):
            yield operand
        case ast.UnaryOp(op=ast.USub()):
            yield _replaced(node, op=ast.UAdd())
        case ast.Constant(value=bool() as value):
            yield _replaced(node, value=not value)
        case ast.Constant(value=int() | float() as number):
            yield _replaced(node, value=number + 1)
        case ast.Call(func=ast.Name(id=name) as func) if name in OTHER_NAME:
            yield _replaced(node, func=_replaced(func, id=OTHER_NAME[name]))


def _replaced(node: ast.expr, **fields: object) -> ast.expr:
    changed = copy.copy(node)
    for name, value in fields.items():
        setattr(changed, name, value)
    return changed
