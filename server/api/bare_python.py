"""The core's files without their words and types, for the way to the phone.

Half of what the core weighs is docstrings and comments, which the phone never
reads, and it has no use for types. They are blanked, blocks are set in by one space
in place of four, signs have no space about them, lines within brackets are not set
in, and texts stand in single quotes, which JSON need not escape. Nothing else is
touched: lines keep their numbers, so that an error on a phone points at the file in
the checkout, and the program that remains is the same, which
`tests/api/test_bare_python.py` proves by syntax tree for every file.
"""

import ast
import io
import tokenize
from collections.abc import Iterator
from typing import NamedTuple

# Signs that need no space before them, and after them.
CLOSE_BEFORE = frozenset("= == != < > <= >= + - * / % += -= |".split())
CLOSE_AFTER = CLOSE_BEFORE | {",", ":"}
STEP = 4  # spaces of a block in the checkout
DOCUMENTED = (ast.Module, ast.ClassDef, ast.FunctionDef)


class Cut(NamedTuple):
    """What to cut out: from and to are (line from 1, column in bytes).

    Args:
        first: where it begins.
        last: where it ends.
        stand_in: what stands there instead.
    """

    first: tuple[int, int]
    last: tuple[int, int]
    stand_in: bytes = b""


def bare(source: str) -> str:
    """Return a module's text with docstrings, comments and types blanked.

    Args:
        source: text of a Python module.
    """
    # The syntax tree counts columns in bytes.
    lines = source.encode().splitlines(keepends=True)
    cuts = [*_of_tree(ast.parse(source), lines), *_comments(source)]
    _make_all(lines, cuts)
    cuts = [*_spaces_and_quotes(b"".join(lines).decode())]
    _make_all(lines, cuts)
    return "".join(_set_in_by_one(line.decode().rstrip()) + "\n" for line in lines)


def _make_all(lines: list[bytes], cuts: list[Cut]) -> None:
    # From the end, so that what is cut does not move what is still to be cut.
    for cut in sorted(cuts, reverse=True):
        _make(lines, cut)


def _spaces_and_quotes(source: str) -> Iterator[Cut]:
    rows = source.splitlines()

    def place(line: int, column: int) -> tuple[int, int]:
        """Return a place in bytes, of one that is counted in letters."""
        return line, len(rows[line - 1][:column].encode())

    last, depth = None, 0
    for token in tokenize.generate_tokens(io.StringIO(source).readline):
        if last is not None and last.end[0] == token.start[0]:
            is_close = last.string in CLOSE_AFTER or token.string in CLOSE_BEFORE
            if is_close and token.start[1] > last.end[1]:
                yield Cut(place(*last.end), place(*token.start))
        elif depth and token.start[1] and token.type != tokenize.NL:
            # Within brackets a line may begin anywhere.
            yield Cut((token.start[0], 0), place(*token.start))
        if token.type == tokenize.OP:
            depth += (token.string in "([{") - (token.string in ")]}")
        if token.type == tokenize.STRING and _can_be_single(token.string):
            (line, first), (_, end) = place(*token.start), place(*token.end)
            yield Cut((line, first), (line, first + 1), b"'")
            yield Cut((line, end - 1), (line, end), b"'")
        last = token


def _can_be_single(text: str) -> bool:
    inside = text[1:-1]
    return text[0] == '"' and not any(sign in inside for sign in "'\"\\")


def _set_in_by_one(line: str) -> str:
    text = line.lstrip(" ")
    return " " * ((len(line) - len(text)) // STEP) + text


def _of_tree(tree: ast.Module, lines: list[bytes]) -> Iterator[Cut]:
    for node in ast.walk(tree):
        if isinstance(node, DOCUMENTED) and ast.get_docstring(node, clean=False):
            # A docstring may be all that a body has: an empty text stands in for it.
            yield Cut(_start(node.body[0]), _end(node.body[0]), b'""')
        if isinstance(node, ast.FunctionDef) and node.returns:
            yield _result(node.returns, lines)
        elif isinstance(node, ast.arg) and node.annotation:
            after_name = (node.lineno, node.col_offset + len(node.arg.encode()))
            yield Cut(after_name, _end(node.annotation))
        elif isinstance(node, ast.AnnAssign) and node.value:
            yield Cut(_end(node.target), _end(node.annotation))
    for statement in tree.body:
        if is_for_types(statement):
            yield Cut(_start(statement), _end(statement))


def is_for_types(node: ast.stmt) -> bool:
    """Tell whether a statement is there for type checkers alone.

    Args:
        node: a statement of a module.
    """
    match node:
        case ast.If(test=ast.Name(id="TYPE_CHECKING"), orelse=[]):
            return True
        case ast.Assign(targets=[ast.Name(id="TYPE_CHECKING")]):
            return True
    return False


def _result(returns: ast.expr, lines: list[bytes]) -> Cut:
    """Return the cut of ` -> ` and a type, which may stand in brackets of its own."""
    number, before = returns.lineno, lines[returns.lineno - 1][: returns.col_offset]
    while b"->" not in before:
        number -= 1
        before = lines[number - 1]
    head, _, between = before.rpartition(b"->")
    last, column = _end(returns)
    if b"(" in between:
        while b")" not in lines[last - 1][column:]:
            last, column = last + 1, 0
        column = lines[last - 1].index(b")", column) + 1
    return Cut((number, len(head.rstrip())), (last, column))


def _start(node: ast.stmt) -> tuple[int, int]:
    return node.lineno, node.col_offset


def _end(node: ast.stmt | ast.expr) -> tuple[int, int]:
    assert node.end_lineno is not None
    assert node.end_col_offset is not None
    return node.end_lineno, node.end_col_offset


def _comments(source: str) -> Iterator[Cut]:
    for token in tokenize.generate_tokens(io.StringIO(source).readline):
        if token.type == tokenize.COMMENT:
            (line, column), text = token.start, token.line
            before = len(text[:column].encode())
            yield Cut((line, before), (line, before + len(token.string.encode())))


def _make(lines: list[bytes], cut: Cut) -> None:
    (first_line, first_column), (last_line, last_column) = cut.first, cut.last
    head = lines[first_line - 1][:first_column] + cut.stand_in
    tail = lines[last_line - 1][last_column:]
    # What follows stays behind what was cut, on its line; lines keep their numbers.
    blank = [b"\n"] * (last_line - first_line)
    lines[first_line - 1 : last_line] = [head + tail, *blank]
