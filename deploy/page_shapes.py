"""Write the page's types of what the core answers from the core's own.

The shapes are written down once, as the TypedDicts of server/shapes/core; this
turns the modules that `TOLD` names there into static/js/shapes.d.ts, in the order
of the names. Use: python deploy/page_shapes.py. It needs the standard library alone.
"""

import ast
import importlib
import inspect
import sys
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
WRITTEN = ROOT / "static" / "js" / "shapes.d.ts"
HEAD = """\
// Written by deploy/page_shapes.py from server/shapes/core: change the shapes there,
// then run it. What travels between core and page, in the order of the names. Instants
// [ms] are the server's; what is not known is null, never undefined.
"""
PLAIN = {"str": "string", "int": "number", "float": "number", "bool": "boolean"}
PLAIN |= {"Any": "any", "None": "null"}


def shapes_text() -> str:
    """Return the text that shapes.d.ts is to have."""
    package = importlib.import_module("server.shapes.core")
    folder = Path(inspect.getfile(package)).parent
    shapes: dict[str, str] = {}
    for name in package.TOLD:
        tree = ast.parse((folder / f"{name}.py").read_text("utf-8"))
        shapes |= dict(_shapes(tree.body))
    return HEAD + "".join(f"\n{shapes[name]}" for name in sorted(shapes))


def _shapes(body: list[ast.stmt]) -> Iterator[tuple[str, str]]:
    """Yield each shape of a module by its name; private ones stand in their heirs."""
    private: dict[str, str] = {}
    for node in body:
        match node:
            case ast.ClassDef(name=name):
                yield name, _interface(node, private)
            case ast.Assign(targets=[ast.Name(id=name)], value=ast.Call() as call):
                private[name] = _fields_of_call(call)
            case ast.Assign(targets=[ast.Name(id=name)], value=value):
                yield name, f"type {name} = {type_of(value)};\n"


def _interface(node: ast.ClassDef, private: dict[str, str]) -> str:
    bases = [base.id for base in node.bases if isinstance(base, ast.Name)]
    heirs = [base for base in bases if base != "TypedDict" and base not in private]
    fields = "".join(private.get(base, "") for base in bases)
    for field in node.body:
        if isinstance(field, ast.AnnAssign) and isinstance(field.target, ast.Name):
            fields += _field(field.target.id, field.annotation)
    extends = f" extends {', '.join(heirs)}" if heirs else ""
    return f"{_comment(node)}interface {node.name}{extends} {{\n{fields}}}\n"


def _comment(node: ast.ClassDef) -> str:
    lines = (ast.get_docstring(node) or "").splitlines()
    if len(lines) == 1:
        return f"/** {lines[0]} */\n"
    return "/**\n" + "".join(f" * {line}".rstrip() + "\n" for line in lines) + " */\n"


def _fields_of_call(call: ast.Call) -> str:
    """Return the fields of TypedDict(name, {field: type})."""
    fields = call.args[1]
    assert isinstance(fields, ast.Dict), ast.unparse(call)
    pairs = zip(fields.keys, fields.values, strict=True)
    return "".join(
        _field(key.value, value)
        for key, value in pairs
        if isinstance(key, ast.Constant) and isinstance(key.value, str)
    )


def _field(name: str, annotation: ast.expr) -> str:
    match annotation:
        case ast.Subscript(value=ast.Name(id="NotRequired"), slice=inner):
            return f"  {name}?: {type_of(inner)};\n"
    return f"  {name}: {type_of(annotation)};\n"


def type_of(node: ast.expr) -> str:
    """Return a Python annotation as TypeScript says it."""
    match node:
        case ast.Constant(value=None):
            return "null"
        case ast.Constant(value=str(text)):
            return type_of(ast.parse(text, mode="eval").body)
        case ast.Name(id=name):
            return PLAIN.get(name, name)
        case ast.BinOp(left=left, op=ast.BitOr(), right=right):
            return f"{type_of(left)} | {type_of(right)}"
        case ast.Subscript(value=ast.Name(id="list"), slice=inner):
            kind = type_of(inner)
            return f"({kind})[]" if "|" in kind else f"{kind}[]"
        case ast.Subscript(
            value=ast.Name(id="dict"), slice=ast.Tuple(elts=[key, value])
        ):
            return f"Record<{type_of(key)}, {type_of(value)}>"
        case ast.Subscript(value=ast.Name(id="Literal"), slice=choices):
            words = choices.elts if isinstance(choices, ast.Tuple) else [choices]
            return " | ".join(f'"{ast.literal_eval(word)}"' for word in words)
    raise SystemExit(f"no TypeScript is known for {ast.unparse(node)}")


def main() -> None:
    """Write the file."""
    WRITTEN.write_text(shapes_text(), "utf-8")
    print(f"Written: {WRITTEN.relative_to(ROOT)}")


if __name__ == "__main__":
    sys.path.insert(0, str(ROOT))
    main()
