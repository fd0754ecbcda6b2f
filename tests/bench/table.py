"""One way to print what a benchmark found beside what was asked for."""

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Row:
    """One figure.

    Args:
        name: what was measured.
        value: what was found.
        unit: its unit.
        asked: the figure asked for, at most; None for none.
    """

    name: str
    value: float
    unit: str
    asked: float | None


def percentile(values, share):
    """Return the value that `share` of all values do not pass (nearest rank)."""
    ordered = sorted(values)
    return ordered[max(0, math.ceil(share * len(ordered)) - 1)]


def print_table(title, rows):
    """Print the rows with the ratio of found to asked."""
    print(f"\n{title}")
    print(f"{'figure':<38} {'found':>10} {'asked':>8} {'ratio':>6}")
    for row in rows:
        found = f"{row.value:.1f} {row.unit}"
        asked = "" if row.asked is None else f"{row.asked:g}"
        ratio = "" if row.asked is None else f"{row.value / row.asked:.2f}"
        print(f"{row.name:<38} {found:>10} {asked:>8} {ratio:>6}")
