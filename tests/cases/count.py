"""The published values that the tests hold the core against, counted.

Each file of this folder says its source, how precisely it is printed, and why its
tolerance is what it is. Every file is asked of the core on both interpreters, and
says whether its values were read or computed apart from this code. Checks against
libraries at many points (CoolProp, thermo, iapws, psychrolib, SciPy) come on top
and are not counted.

Use: python -m tests.cases.count
"""

import json
import sys
from pathlib import Path

HERE = Path(__file__).parent
# What is put in, and so is no value to check: keys, and leading columns of a row.
GIVEN = {
    "acid_curve": (("curve",), 1),
    "acid_schedules": (("start_ph", "times_min", "end_ph"), 0),
    "baume_strength": ((), 1),
    "brine_density": ((), 1),
    "brine_density_ict": ((), 1),
    "brine_scales": ((), 1),
    "calcium_density": (("frac",), 0),
    "control_charts": (("values", "weight", "target", "spread", "width"), 0),
    "heating": (("jacket_c", "times_min", "temps_c"), 0),
    "legal_temperatures": (("f",), 0),
    "lethality": (
        (*("profile", "z_k", "cooler_c", "longer_s", "hotter_c", "shorter_s"),),
        0,
    ),
    "milk_density": (("temps_c", "fat_frac", "snf_frac"), 0),
    "rennet": (
        (
            *("doses_imcu_per_l", "set_min", "target_min", "delay_min", "milk_ml"),
            *("clot_s", "milk_l", "imcu_per_l", "imcu_per_ml", "delay", "work"),
        ),
        0,
    ),
    "salt_by_day": ((), 1),
    "salt_days": (("moisture_frac", "water_salt_ratio"), 4),
    "salt_saturation": ((), 1),
    "specific_heat": (("fat_frac", "snf_frac"), 0),
    "starter_growth": (("starter", "best_per_h"), 1),
    "titratable_acidity": (("value",), 0),
    "wash": (("vat", "aqueous_kg", "vat_kg", "target_c", "drained_kg"), 0),
}
WORDS = ("printed", "tolerance", "reason", "source", "status", "columns", "left_out")


def is_number(node):
    """Tell whether a node is one value."""
    return isinstance(node, int | float) and not isinstance(node, bool)


def count(node, given, columns):
    """Return how many values to check stand in a node of a file.

    Args:
        node: the file's JSON, or a part of it.
        given: keys of what is put in.
        columns: leading cells of a row of numbers that are put in.
    """
    if is_number(node):
        return 1
    if isinstance(node, dict):
        return sum(
            count(part, given, columns)
            for key, part in node.items()
            if key not in given and not key.startswith(WORDS)
        )
    if not isinstance(node, list):
        return 0
    rows = [part for part in node if isinstance(part, list)]
    if rows:
        return sum(len([c for c in row[columns:] if is_number(c)]) for row in rows)
    return sum(count(part, given, columns) for part in node)


def counts():
    """Return {file's name: (values, the file's JSON)}."""
    found = {}
    for path in sorted(HERE.glob("*.json")):
        case = json.loads(path.read_text("utf-8"))
        found[path.stem] = (count(case, *GIVEN[path.stem]), case)
    return found


def main():
    """Print the table."""
    found = counts()
    for name, (values, case) in found.items():
        source = f"{case['status'][:24]:<25} {case['source'][:60]}"
        sys.stdout.write(f"{values:>4}  {name:<20} {source}\n")
    total = sum(values for values, _ in found.values())
    sys.stdout.write(f"{total:>4}  in all\n")


if __name__ == "__main__":
    main()
