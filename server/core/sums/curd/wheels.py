"""How many wheels the curd makes, and how heavy to fill them."""

from ...formulas.curd import wheels
from ..outputs import note, output, result, value
from ..rows import default, number, series, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


def _wheel_plan(x: "Inputs") -> "Worked":
    sizes = [size["wheel_kg"] for size in x["sizes"]]
    names = x["size_names"] or []
    low, high = x["ranges"].get("curd_kg") or [x["curd_low_kg"], x["curd_high_kg"]]
    curd = x["curd_kg"]
    low = curd if low is None else low
    high = curd if high is None else high
    plan: "dict[str, Any]" = wheels.wheel_plan_range(low, curd, high, sizes)
    values = []
    for index in range(len(sizes)):
        counts = [plan[end]["counts"][index] for end in ("value", "low", "high")]
        of, nth = _size(names, index)
        # With less curd the best plan may hold more of the small ones.
        values.append(value("wheels", counts[0], min(counts), max(counts), of, nth=nth))
    values.append(value("used_kg", plan["value"]["used_kg"]))
    values.append(
        value(
            "left_kg",
            plan["value"]["left_kg"],
            min(plan[end]["left_kg"] for end in ("low", "value", "high")),
            max(plan[end]["left_kg"] for end in ("low", "value", "high")),
        )
    )
    if x["share_large_frac"] is not None and len(sizes) == 2:
        values.extend(_by_share(x, curd, sizes, names))
    return result(values, [note("keep_a_small_mould_ready")])


def _size(names: "list[str]", index: int) -> "tuple[str, int | None]":
    """Return what a size is called: by the recipe's name of it, or which it is."""
    return (names[index], None) if index < len(names) else ("size", index + 1)


def _by_share(
    x: "Inputs", curd: float, sizes: "list[float]", names: "list[str]"
) -> "list[WorkedValue]":
    """Wheels when the curd is shared out as the recipe says, small ones last."""
    large = 0 if sizes[0] >= sizes[1] else 1
    count = int(curd * x["share_large_frac"] / sizes[large] + 1e-9)
    rest = curd - count * sizes[large]
    other = int(rest / sizes[1 - large] + 1e-9)
    counts = {large: count, 1 - large: other}
    values = []
    for index in (0, 1):
        of, nth = _size(names, index)
        values.append(value("wheels_by_share", counts[index], of=of, nth=nth))
    left = rest - other * sizes[1 - large]
    values.append(value("left_by_share_kg", left))
    return values


def _fill_mass(x: "Inputs") -> "Worked":
    fill = wheels.fill_kg(x["ripe_kg"], x["brine_loss_frac"], x["store_loss_frac"])
    values = [value("fill_kg", fill)]
    if x["filled_kg"] is not None:
        check = wheels.fill_check(x["filled_kg"], fill, x["tolerance_frac"])
        values.append(
            value(
                "fill_verdict",
                check["basis"],
                check["low"],
                check["high"],
                read=check["value"],
            )
        )
    return result(values)


ROWS = [
    sum_row(
        "wheel_plan",
        "yield",
        [
            number("curd_kg", "kg", 0.0, 5000.0, [1.0, 2500.0]),
            number("curd_low_kg", "kg", 0.0, 5000.0, optional=True),
            number("curd_high_kg", "kg", 0.0, 5000.0, optional=True),
            series("sizes", [number("wheel_kg", "kg", 0.05, 200.0, [0.2, 60.0])], 1),
            number("share_large_frac", "fraction", 0.0, 1.0, optional=True),
            dict(series("size_names", [], 0, optional=True), hidden=True),
        ],
        [
            output("wheels", "", headline=True),
            output("used_kg", "kg"),
            output("left_kg", "kg"),
            output("wheels_by_share", ""),
            output("left_by_share_kg", "kg"),
        ],
        _wheel_plan,
        called={"low_kg": "curd_low_kg", "size_kg": "sizes", "value_kg": "curd_kg"},
    ),
    sum_row(
        "fill_mass",
        "yield",
        [
            number("ripe_kg", "kg", 0.05, 200.0, [0.2, 60.0]),
            number(
                "brine_loss_frac",
                "fraction",
                0.0,
                0.3,
                [0.0, 0.08],
                default(0.02, "practice", "salt_in_water_out"),
            ),
            number(
                "store_loss_frac",
                "fraction",
                0.0,
                0.7,
                [0.0, 0.3],
                default(0.03, "practice", "coated_wheel_some_weeks"),
            ),
            number("filled_kg", "kg", 0.05, 200.0, optional=True),
            number(
                "tolerance_frac",
                "fraction",
                0.0,
                0.5,
                None,
                default(0.02, "practice", "two_in_a_hundred"),
            ),
        ],
        [
            output("fill_kg", "kg", headline=True),
            output("fill_verdict", "key", "band", ends="kg"),
        ],
        _fill_mass,
        called={"wanted_kg": "ripe_kg"},
    ),
]
