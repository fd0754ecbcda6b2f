"""Is this make like the others? A chart for a table of figures, one a make."""

from ..formulas import spc
from .rows import note, number, output, result, series, sum_row, value


def _control_chart(x):
    amounts = [row["value"] for row in x["makes"]]
    found: dict = spc.control_chart(amounts)
    values = [value("verdict", found["verdict"], "key")]
    notes = []
    limits = found["limits"]
    if limits is None:
        notes.append(
            note("too_few_makes", count=found["count"], wanted=found["needed"])
        )
    else:
        values.append(value("mean", limits["mean"], "", limits["low"], limits["high"]))
    for index in found["beyond"]:
        values.append(value("beyond", amounts[index], "", of="make_%d" % (index + 1)))
    for index in found["runs"]:
        values.append(value("run", amounts[index], "", of="make_%d" % (index + 1)))
    return result(values, notes)


ROWS = [
    sum_row(
        "control_chart",
        "trends",
        [series("makes", [number("value", "", -1000000.0, 1000000.0)], 1)],
        [
            output("verdict", "key"),
            output("mean", ""),
            output("beyond", ""),
            output("run", ""),
        ],
        _control_chart,
    ),
]
