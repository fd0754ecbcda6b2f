"""Is this make like the others? A chart for a table of figures, one a make."""

from ...numbers import spc
from ..outputs import note, output, result, value
from ..rows import default, number, series, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.trends import ChartLimits
    from server.shapes.core.worked import Inputs, Worked, WorkedValue


def _control_chart(x: "Inputs") -> "Worked":
    amounts = [make["value"] for make in x["makes"]]
    chart = spc.control_chart(amounts)
    values = [value("verdict", chart["verdict"])]
    notes = []
    limits = chart["limits"]
    if limits is None:
        notes.append(
            note("too_few_makes", count=chart["count"], wanted=chart["needed"])
        )
    else:
        values.append(value("mean", limits["mean"], limits["low"], limits["high"]))
        notes.extend(_average(x, amounts, limits, values))
    for index in chart["beyond"]:
        values.append(value("beyond", amounts[index], of="make", nth=index + 1))
    for index in chart["runs"]:
        values.append(value("run", amounts[index], of="make", nth=index + 1))
    return result(values, notes)


def _average(
    x: "Inputs",
    amounts: "list[float]",
    limits: "ChartLimits",
    values: "list[WorkedValue]",
) -> "list[dict[str, Any]]":
    """Add the weighted average of late, which feels a small lasting shift sooner."""
    if limits["spread"] == 0:
        return []
    newest = spc.ewma(amounts, limits["mean"], x["ewma_weight"])[-1]
    ends = spc.ewma_limits(limits["mean"], limits["spread"], x["ewma_weight"], 3.0)
    values.append(value("average", newest, ends["low"], ends["high"]))
    if ends["low"] <= newest <= ends["high"]:
        return []
    return [note("average_beyond", value=newest)]


ROWS = [
    sum_row(
        "control_chart",
        "trends",
        [
            series("makes", [number("value", "", -1000000.0, 1000000.0)], 1),
            number(
                "ewma_weight",
                "",
                0.05,
                1.0,
                [0.1, 0.5],
                default(0.3, "read", "nist_handbook_ewma_weight"),
            ),
        ],
        [
            output("verdict", "key", headline=True),
            output("mean", "", "limit"),
            output("average", "", "limit"),
            output("beyond", ""),
            output("run", ""),
        ],
        _control_chart,
        called={"value": "makes"},
    ),
]
