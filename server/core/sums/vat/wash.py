"""The wash: water in after the whey is off, and how much milk sugar is left."""

from ...formulas.curd import lactose, wash
from ...formulas.milk import milk
from ..outputs import note, output, rests, result, value
from ..rows import default, number, series, sum_row
from . import whey_off
from .whey_off import CP, VAT_CP_J_KG_K

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked


# Published washes land this much below the balance.
LOSS_K = 1.0
FIRST_FRAC = 0.9

VAT_KG = number("vat_kg", "kg", 1.0, 52000.0, [10.0, 21000.0])
VAT_TEMP = number("vat_temp_c", "C", 0.0, 60.0, [25.0, 45.0])
VAT_NOW = number("vat_now_c", "C", 0.0, 60.0, [25.0, 45.0])
TARGET = number("target_temp_c", "C", 0.0, 60.0, [30.0, 45.0])
WATER_TEMP = number("water_temp_c", "C", 0.0, 100.0, [2.0, 90.0])
MOST = number(
    "water_most_c",
    "C",
    20.0,
    100.0,
    None,
    default(65.0, "practice", "hotter_water_cooks_curd"),
)


def _hot_notes(x: "Inputs") -> "list[dict[str, Any]]":
    if wash.check_water_temp(x["water_temp_c"], x["water_most_c"]):
        return [
            note(
                "water_hotter_than_most",
                value=x["water_temp_c"],
                limit=x["water_most_c"],
            )
        ]
    return []


def _wash_water(x: "Inputs") -> "Worked | None":
    vat = [x["vat_kg"], VAT_CP_J_KG_K, x["vat_temp_c"]]
    plan = wash.wash_plan(*(vat + [x["target_temp_c"], x["water_temp_c"], FIRST_FRAC]))
    # With the usual loss the water must do a kelvin more: the upper end.
    more = None
    if x["target_temp_c"] + LOSS_K < x["water_temp_c"]:
        more = wash.water_kg(*(vat + [x["target_temp_c"] + LOSS_K, x["water_temp_c"]]))
    # A measure is filled with water as hot as it is.
    kg_l = wash.water_density_kg_l(x["water_temp_c"])
    values = [
        value("water_kg", plan["water_kg"], plan["water_kg"], more),
        value(
            "water_l",
            plan["water_kg"] / kg_l,
            plan["water_kg"] / kg_l,
            None if more is None else more / kg_l,
        ),
        value("first_kg", plan["first_kg"]),
        value("first_l", plan["first_kg"] / kg_l),
        value(
            "after_first_c",
            plan["first_c"],
            plan["first_c"] - LOSS_K,
            plan["first_c"],
        ),
    ]
    notes = [note("first_then_measure", share=FIRST_FRAC)] + _hot_notes(x)
    return result(values, notes, [CP])


def _wash_rest(x: "Inputs") -> "Worked | None":
    rest = wash.rest_kg(
        x["vat_kg"],
        VAT_CP_J_KG_K,
        x["added_kg"],
        x["vat_now_c"],
        x["target_temp_c"],
        x["water_temp_c"],
    )
    rest_l = rest / wash.water_density_kg_l(x["water_temp_c"])
    return result(
        [value("rest_kg", rest), value("rest_l", rest_l)],
        _hot_notes(x),
        [CP],
    )


def _wash_temp(x: "Inputs") -> "Worked | None":
    water = x["water_kg"]
    temp_c = wash.water_temp_c(
        x["vat_kg"], VAT_CP_J_KG_K, x["vat_temp_c"], x["target_temp_c"], water
    )
    notes = []
    if wash.check_water_temp(temp_c, x["water_most_c"]):
        notes.append(
            note("water_hotter_than_most", value=temp_c, limit=x["water_most_c"])
        )
    # A kelvin lost in the vat asks this much more of the water.
    step = (x["vat_kg"] * VAT_CP_J_KG_K + water * milk.WATER_CP_J_KG_K) * LOSS_K
    high = temp_c + step / (water * milk.WATER_CP_J_KG_K)
    return result([value("water_temp_c", temp_c, temp_c, high)], notes, [CP])


def _lactose_left(x: "Inputs") -> "Worked | None":
    steps = [[step["drained_kg"], step["water_kg"]] for step in x["washes"]]
    values = []
    for count in range(1, len(steps) + 1):
        left = lactose.lactose_left(x["aqueous_kg"], steps[:count])
        values.append(
            value(
                "lactose_left_frac",
                left["value_frac"],
                left["low_frac"],
                left["high_frac"],
                "wash",
                nth=count,
            )
        )
    source = rests(
        "exchange_frac", lactose.EXCHANGE_USUAL, "fraction", "memory", "trade_knowledge"
    )
    return result(values, [note("lactose.learn_from_own_makes")], [source])


ROWS = whey_off.ROWS + [
    sum_row(
        "wash_water",
        "wash",
        [VAT_KG, VAT_TEMP, TARGET, WATER_TEMP, MOST],
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
    sum_row(
        "wash_rest",
        "wash",
        [
            VAT_KG,
            number("added_kg", "kg", 0.0, 52000.0),
            VAT_NOW,
            TARGET,
            WATER_TEMP,
            MOST,
        ],
        [output("rest_kg", "kg"), output("rest_l", "L", headline=True)],
        _wash_rest,
        called={
            "most_c": "water_most_c",
            "target_c": "target_temp_c",
            "temp_c": "water_temp_c",
            "vat_c": "vat_now_c",
            "water_c": "water_temp_c",
        },
    ),
    sum_row(
        "wash_temp",
        "wash",
        [VAT_KG, VAT_TEMP, TARGET, number("water_kg", "kg", 0.01, 52000.0), MOST],
        [output("water_temp_c", "C", headline=True)],
        _wash_temp,
        called={
            "most_c": "water_most_c",
            "target_c": "target_temp_c",
            "vat_c": "vat_temp_c",
        },
    ),
    sum_row(
        "lactose_left",
        "wash",
        [
            number("aqueous_kg", "kg", 1.0, 52000.0),
            series(
                "washes",
                [
                    number("drained_kg", "kg", 0.0, 52000.0),
                    number("water_kg", "kg", 0.0, 52000.0),
                ],
                1,
            ),
        ],
        [output("lactose_left_frac", "fraction", headline="first")],
        _lactose_left,
        called={"drained_kg": "washes", "water_kg": "washes"},
    ),
]
