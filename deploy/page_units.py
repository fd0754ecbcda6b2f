"""Write the core's tables of units and quantities as the page reads them.

They stand once, in server/core/units; this turns them into
static/js/units/table.js, in the form that the page is kept in. Use: python
deploy/page_units.py. It needs the standard library alone.
"""

import json
import re
import sys
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
WRITTEN = ROOT / "static" / "js" / "units" / "table.js"
WIDTH = 88
PLAIN_KEY = re.compile(r"[A-Za-z_]\w*|\d+")
HEAD = """\
// Written by deploy/page_units.py from server/core/units: change the tables
// there, then run it. What each field means stands there too.
"""
TYPES = {
    "UNITS": "Record<string, Unit>",
    "QUANTITIES": "Record<string, Quantity>",
    "READ_AS": "Record<string, string>",
    "CHOICES": "Record<KindOfUnit, string[]>",
    "FOLLOWING": "Record<string, Record<string, string>>",
    "SUM_CHOICES": "Record<string, string[]>",
    "TYPED_IN": "Record<string, string[]>",
    "TOOLS": "Record<string, [number, number][]>",
    "TYPED_TO": "[number, number][]",
    "TYPED_BEYOND": "number",
}
SHAPES = """
/**
 * @typedef {{dimension: string, size?: number, per?: number, zero?: number,
 *     shown?: number, typed?: number}} Unit
 * @typedef {{unit: string, decimals: number, signed: boolean}} Quantity
 * @typedef {%s} KindOfUnit
 */
"""


def units_text() -> str:
    """Return the text that the page's table is to have."""
    from server.core.units import table
    from server.core.units.quantities import QUANTITIES, is_signed

    told = {
        "UNITS": {key: _told(unit) for key, unit in table.UNITS.items()},
        "QUANTITIES": {
            key: {
                "unit": row["unit"],
                "decimals": row["decimals"],
                "signed": is_signed(key),
            }
            for key, row in QUANTITIES.items()
            if row["type"] == "number"
        },
    }
    parts = []
    for name, kind in TYPES.items():
        form = _form(told[name] if name in told else getattr(table, name), 0)
        parts.append(f"\n/** @type {{{kind}}} */\nexport const {name} = {form};\n")
    kinds = " | ".join(f'"{kind}"' for kind in table.CHOICES)
    return HEAD + SHAPES % kinds + "".join(parts)


def _told(unit: dict[str, Any]) -> dict[str, Any]:
    """Return a unit without what is usual: one of its base unit, from nothing."""
    usual = {"size": 1.0, "per": 1.0, "zero": 0.0, "shown": None, "typed": None}
    return {
        name: value
        for name, value in unit.items()
        if name not in usual or value != usual[name]
    }


def _form(value: Any, depth: int) -> str:
    """Return a value as the page is written: on one line where that has room."""
    if isinstance(value, dict):
        parts = [
            f"{_key(key)}: {_form(part, depth + 1)}" for key, part in value.items()
        ]
        ends = "{ ", " }", "{", "}"
    elif isinstance(value, list | tuple):
        parts = [_form(part, depth + 1) for part in value]
        ends = "[", "]", "[", "]"
    else:
        return _plain(value)
    line = ends[0] + ", ".join(parts) + ends[1]
    # Whoever is named before it stands on the same line; 40 is room for the longest.
    fits = "\n" not in line and len(line) < WIDTH - 2 * depth - 40
    if depth and fits and not _is_table(value):
        return line
    inner = "  " * (depth + 1)
    lines = "".join(f"{inner}{part},\n" for part in parts)
    return f"{ends[2]}\n{lines}{'  ' * depth}{ends[3]}"


def _is_table(value: Any) -> bool:
    """Tell whether the page's form gives each row of a list a line of its own."""
    rows = [row for row in value if isinstance(row, list | tuple) and len(row) > 1]
    return isinstance(value, list | tuple) and len(rows) == len(value) > 1


def _key(key: str) -> str:
    return key if PLAIN_KEY.fullmatch(key) else json.dumps(key)


def _plain(value: object) -> str:
    if isinstance(value, float) and value == int(value):
        return str(int(value))
    return json.dumps(value)


def main() -> None:
    """Write the file."""
    WRITTEN.write_text(units_text(), "utf-8")
    print(f"Written: {WRITTEN.relative_to(ROOT)}")


if __name__ == "__main__":
    sys.path.insert(0, str(ROOT))
    main()
