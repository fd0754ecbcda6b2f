"""Alarms measured like a process plant's: how often a make rings, and for what.

Plays makes of the twin by days of their own, the three treatments in turn, with a
maker who is late by 30 to 120 s, and folds them as phones and server do; then each
fault of the twin beside the same make without it. Fresh seeds: none that the twin was
set by.

Use: python -m tests.bench.alarms [--makes 200] [--seed 2000] [--fault NAME ...]
"""

import argparse
import json
import os
import statistics
from collections import Counter
from pathlib import Path

from server.core.twin.faults.table import FAULTS
from tests.bench.table import Row, percentile, print_table
from tests.core.alarm import faults, rings

RECIPE = Path(__file__).parents[2] / "server" / "recipes" / "washed-wheel.json"
TREATMENTS = ("heat_treated", "pasteurised", "raw")
MOST = 3


def normal(recipe, makes, seed):
    """Print what makes ring in which all is well; return whether it is few."""
    counts = {treatment: [] for treatment in TREATMENTS}
    by_kind, shown, again, asked = Counter(), Counter(), Counter(), []
    for index in range(makes):
        treatment = TREATMENTS[index % len(TREATMENTS)]
        rows = rings.told(rings.played(recipe, seed + index, (), treatment))
        unasked = rings.unasked(rows)
        counts[treatment].append(len(unasked))
        asked.append(sum(row["kind"] in rings.SET for row in rows))
        by_kind.update(_name(row) for row in unasked)
        shown.update(_name(row) for row in rows if not row["rings"])
        again.update(_name(row) for row in rings.twice(unasked))
    for treatment, found in counts.items():
        if found:
            print_table(treatment, _figures(found))
    print_table("all", [Row("ends and timers, median", _median(asked), "", None)])
    for title, of in (("ring", by_kind), ("only shown", shown), ("twice", again)):
        print(f"\n{title}")
        for name, count in of.most_common():
            print(f"{count:>6}  {name}")
    everything = [one for found in counts.values() for one in found]
    return max(everything) <= MOST and not again


def of_faults(recipe, seed, names):
    """Print what is told of each fault; return how many are told in time."""
    head = ("fault", "told as", "at min", "until", "in time", "rows")
    print("\n{:<26} {:<34} {:>8} {:>8} {:>8} {:>5}  {}".format(*head, "beside"))
    in_time = 0
    for name in names:
        found = faults.outcome(recipe, seed, name)
        in_time += found["in_time"]
        told = _name(found["told"]) if found["told"] else "-"
        others = ", ".join(sorted({_name(row) for row in found["others"]}))
        print(
            f"{name:<26} {told:<34} {_number(found['at_min']):>8} "
            f"{_number(found['until_min']):>8} {found['in_time']!s:>8} "
            f"{found['times']:>5}  {others}",
            flush=True,
        )
    print(f"\nin time: {in_time} of {len(names)}")
    return in_time


def _figures(found):
    return [
        Row("makes", len(found), "", None),
        Row("rings a make, median", _median(found), "", MOST),
        Row("rings a make, 95 in 100", percentile(found, 0.95), "", MOST),
        Row("rings a make, most", max(found), "", MOST),
    ]


def _median(found):
    return statistics.median(found)


def _name(row):
    return "/".join(one for one in (row["what"], row["step"], row["quantity"]) if one)


def _number(value):
    return "-" if value is None else f"{value:.0f}"


def main():
    """Play, count, print."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--makes", type=int, default=200)
    parser.add_argument("--seed", type=int, default=2000)
    parser.add_argument("--fault", nargs="*", help="only these")
    asked = parser.parse_args()
    os.nice(19)
    recipe = json.loads(RECIPE.read_text("utf-8"))
    if asked.makes:
        normal(recipe, asked.makes, asked.seed)
    names = list(FAULTS) if asked.fault is None else asked.fault
    of_faults(recipe, asked.seed, names)


if __name__ == "__main__":
    main()
