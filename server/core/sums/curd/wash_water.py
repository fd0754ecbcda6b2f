"""How much water a wash takes, so that the curd comes to its temperature."""

from ...formulas.curd import wash
from ..outputs import note, output, rests, result, value
from ..rows import default, number, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked


# Curd and whey together, as worked washes count them.
VAT_CP_J_KG_K = 3900.0
CP = rests(
    "vat_cp_j_kg_k", VAT_CP_J_KG_K, "J/(kg K)", "derived", "whey_and_curd_of_facts"
)
# What the vat gives off while the water runs in. Published washes land up to this
# much below the balance; what is poured first must not overshoot, so none is counted
# until a wash has shown its own.
LOSS_K = 1.0
# A thermometer at the vat may be off by so much. Practice, no source.
READ_K = 0.3
FIRST_FRAC = 0.9

VAT_KG = number("vat_kg", "kg", 1.0, 52000.0, [10.0, 21000.0])
VAT_TEMP = number("vat_temp_c", "C", 0.0, 60.0, [25.0, 45.0])
TARGET = number("target_temp_c", "C", 0.0, 60.0, [30.0, 45.0])
WATER_TEMP = number("water_temp_c", "C", 0.0, 100.0, [2.0, 90.0])
LOSS = number(
    "loss_k",
    "K",
    0.0,
    10.0,
    [0.0, 3.0],
    default(0.0, "derived", "published_washes_against_balance", 0.0, LOSS_K),
)
MOST = number(
    "water_most_c",
    "C",
    20.0,
    100.0,
    None,
    default(65.0, "practice", "hotter_water_cooks_curd"),
)


def hot_notes(x: "Inputs") -> "list[dict[str, Any]]":
    """Return the note on water that is hotter than agreed; an empty list if not."""
    if wash.check_water_temp(x["water_temp_c"], x["water_most_c"]):
        return [
            note(
                "water_hotter_than_most",
                value=x["water_temp_c"],
                limit=x["water_most_c"],
            )
        ]
    return []


def warmed_by(x: "Inputs") -> "dict[str, float]":
    """Return how far the water must do more than warm the vat to its target [K].

    Args:
        x: with "loss_k" and its range, where it has any.

    Returns:
        {"value", "low", "high"}: the loss looked for, and its ends with what a
        thermometer at the vat may be off.
    """
    loss_k = x["loss_k"]
    low, high = x["ranges"].get("loss_k") or [loss_k, loss_k]
    return {"value": loss_k, "low": low - READ_K, "high": high + READ_K}


def _wash_water(x: "Inputs") -> "Worked | None":
    more_k = warmed_by(x)
    vat = [x["vat_kg"], VAT_CP_J_KG_K, x["vat_temp_c"]]
    aim_c = x["target_temp_c"] + more_k["value"]
    plan = wash.wash_plan(*(vat + [aim_c, x["water_temp_c"], FIRST_FRAC]))
    low = _water_to(x, x["target_temp_c"] + more_k["low"])
    high = _water_to(x, x["target_temp_c"] + more_k["high"])
    # A measure is filled with water as hot as it is.
    kg_l = wash.water_density_kg_l(x["water_temp_c"])
    after_c = plan["first_c"] - more_k["value"]
    values = [
        value("water_kg", plan["water_kg"], low, high),
        value(
            "water_l",
            plan["water_kg"] / kg_l,
            None if low is None else low / kg_l,
            None if high is None else high / kg_l,
        ),
        value("first_kg", plan["first_kg"]),
        value("first_l", plan["first_kg"] / kg_l),
        value(
            "after_first_c",
            after_c,
            plan["first_c"] - more_k["high"],
            plan["first_c"] - more_k["low"],
        ),
    ]
    notes = [note("first_then_measure", share=FIRST_FRAC)] + hot_notes(x)
    return result(values, notes, [CP])


def _water_to(x: "Inputs", aim_c: float) -> "float | None":
    """Return the water that warms the vat to a temperature [kg].

    None where no water of this heat can, nothing where the vat is as warm already.
    """
    if aim_c <= x["vat_temp_c"]:
        return 0.0
    if aim_c >= x["water_temp_c"]:
        return None
    vat = [x["vat_kg"], VAT_CP_J_KG_K, x["vat_temp_c"]]
    return wash.water_kg(*(vat + [aim_c, x["water_temp_c"]]))


ROWS = [
    sum_row(
        "wash_water",
        "wash",
        [VAT_KG, VAT_TEMP, TARGET, WATER_TEMP, LOSS, MOST],
        [
            output("water_kg", "kg"),
            output("water_l", "L", headline=True),
            output("first_kg", "kg"),
            output("first_l", "L", headline=True),
            output("after_first_c", "C"),
        ],
        _wash_water,
        called={
            "most_c": "water_most_c",
            "target_c": "target_temp_c",
            "temp_c": "water_temp_c",
            "vat_c": "vat_temp_c",
            "water_c": "water_temp_c",
        },
        follows={"water_kg": "water_temp_c"},
    ),
]
