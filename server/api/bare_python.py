"""The core's files without their words, for the way to the phone.

Half of what the core weighs is docstrings and comments, which the phone never
reads. They are blanked and nothing else is touched: lines keep their numbers,
so that an error on a phone points at the file in the checkout, and the program
that remains is the same, which `tests/api/test_bare_python.py` proves by syntax
tree for every file.
"""

import ast
import io
import tokenize

DOCUMENTED = (ast.Module, ast.ClassDef, ast.FunctionDef)


def bare(source: str) -> str:
    """Return a module's text with docstrings and comments blanked.

    Args:
        source: text of a Python module.
    """
    lines = source.splitlines(keepends=True)
    # From the end, so that what is cut does not move what is still to be cut.
    for first, last in sorted(_docstrings(source) + _comments(source), reverse=True):
        _cut(lines, first, last)
    return "".join(line.rstrip() + "\n" for line in lines)


def _docstrings(source: str) -> list[tuple[tuple[int, int], tuple[int, int]]]:
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, DOCUMENTED) and ast.get_docstring(node, clean=False):
            text = node.body[0]
            assert text.end_lineno is not None
            assert text.end_col_offset is not None
            found.append(
                ((text.lineno, text.col_offset), (text.end_lineno, text.end_col_offset))
            )
    return found


def _comments(source: str) -> list[tuple[tuple[int, int], tuple[int, int]]]:
    tokens = tokenize.generate_tokens(io.StringIO(source).readline)
    return [
        (token.start, token.end) for token in tokens if token.type == tokenize.COMMENT
    ]


def _cut(lines: list[str], first: tuple[int, int], last: tuple[int, int]) -> None:
    (first_line, first_column), (last_line, last_column) = first, last
    is_comment = lines[first_line - 1][first_column] == "#"
    # A docstring may be all that a body has: an empty text stands in for it.
    stand_in = "" if is_comment else '""'
    # The syntax tree counts columns in bytes; nothing but blanks and ASCII stands
    # before a docstring, and the tail is cut in bytes too.
    tail = lines[last_line - 1]
    if not is_comment:
        tail = tail.encode()[last_column:].decode()
    else:
        tail = tail[last_column:]
    head = lines[first_line - 1][:first_column]
    lines[first_line - 1 : last_line] = [
        head + stand_in + ("\n" if last_line > first_line else tail)
    ] + ["\n"] * (last_line - first_line)
