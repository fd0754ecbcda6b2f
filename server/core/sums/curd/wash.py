"""The wash: the whey off, the water in, and how much milk sugar is left."""

from ...formulas.curd import lactose, wash
from ...numbers.refused import Refused
from ..outputs import note, output, rests, result, value
from ..rows import number, series, sum_row
from . import wash_water, whey_off
from .wash_water import (
    CP,
    LOSS,
    MOST,
    TARGET,
    VAT_CP_J_KG_K,
    VAT_KG,
    VAT_TEMP,
    WATER_TEMP,
    hot_notes,
    warmed_by,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


VAT_NOW = number("vat_now_c", "C", 0.0, 60.0, [25.0, 45.0])


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
        hot_notes(x),
        [CP],
    )


def _wash_temp(x: "Inputs") -> "Worked | None":
    more_k = warmed_by(x)
    aims_c = {end: x["target_temp_c"] + more_k[end] for end in ("value", "low", "high")}
    temp_c = _water_for(x, aims_c["value"])
    low_c, high_c = [_end(x, aims_c[end]) for end in ("low", "high")]
    notes = []
    if wash.check_water_temp(temp_c, x["water_most_c"]):
        notes.append(
            note("water_hotter_than_most", value=temp_c, limit=x["water_most_c"])
        )
    return result([value("water_temp_c", temp_c, low_c, high_c)], notes, [CP])


def _water_for(x: "Inputs", aim_c: float) -> float:
    vat = [x["vat_kg"], VAT_CP_J_KG_K, x["vat_temp_c"]]
    return wash.water_temp_c(*(vat + [aim_c, x["water_kg"]]))


def _end(x: "Inputs", aim_c: float) -> "float | None":
    # Where the figure itself is water, an end may yet be ice or steam: it is open.
    try:
        return _water_for(x, aim_c)
    except Refused:
        return None


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


ROWS = (
    whey_off.ROWS
    + wash_water.ROWS
    + [
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
            [
                VAT_KG,
                VAT_TEMP,
                TARGET,
                number("water_kg", "kg", 0.01, 52000.0),
                LOSS,
                MOST,
            ],
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
)
