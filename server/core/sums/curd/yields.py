"""What the milk gives: cheese and whey, wheels, and at the end the account."""

from ...formulas.curd import mass_balance, yields
from ...numbers.bounds import require_above
from ..milk.milk import PROTEIN
from ..milk.milk_inputs import MILK_KG
from ..outputs import note, output, result, value
from ..rows import default, number, sum_row
from . import wheels

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


FORMS = "general_yield_from_memory"
# The expected scatter of the figures themselves, standard deviations.
SPREADS = {
    "fat_frac": 0.0005,
    "casein_frac": 0.0005,
    "moisture_frac": 0.01,
    "fat_kept_frac": 0.012,
    "casein_kept_frac": 0.005,
    "whey_solids_frac": 0.004,
}
MODEL_SPREAD = 0.01  # Emmons and Modler 2010, abstract
FAT = number("fat_frac", "fraction", 0.0, 0.2, [0.015, 0.09])
WATER_IN = number("water_added_kg", "kg", 0.0, 52000.0, optional=True)


def _casein(x: "Inputs") -> "float | None":
    if x["casein_frac"] is not None:
        return x["casein_frac"]
    if x["protein_frac"] is None:
        return None
    return yields.casein_frac(x["protein_frac"], x["casein_number"])


def _expected_yield(x: "Inputs") -> "Worked | None":
    casein = _casein(x)
    if casein is None:
        return result([], [], [], ["protein_frac"])
    figures = {name: x[name] for name in yields.YIELD_FIGURES if name in x}
    figures["casein_frac"] = casein
    expected: "dict[str, Any]" = yields.yield_range(figures, SPREADS, MODEL_SPREAD)
    kg = x["milk_kg"]
    cheese = [kg * expected[name] for name in ("value", "low", "high")]
    water = x["water_added_kg"] or 0.0
    whey = [mass_balance.whey_kg(kg, water, mass) for mass in cheese]
    fat = mass_balance.cheese_fat_frac(
        x["fat_frac"], x["fat_kept_frac"], expected["value"]
    )
    return result(
        [
            value("yield_frac", expected["value"], expected["low"], expected["high"]),
            value("cheese_kg", cheese[0], cheese[1], cheese[2]),
            value("whey_kg", whey[0], whey[2], whey[1]),
            value("cheese_fat_frac", fat),
        ],
        [note("yield.range_of_nine_in_ten")],
    )


def _actual_yield(x: "Inputs") -> "Worked | None":
    kg, cheese = x["milk_kg"], x["cheese_kg"]
    require_above("milk_kg", kg, 0)
    share = cheese / kg
    values = [value("yield_frac", share)]
    notes: "list[dict[str, Any]]" = []
    if x["cheese_moisture_frac"] is not None:
        values.append(_adjusted(x, share))
    if x["whey_kg"] is not None:
        went_in = kg + (x["water_added_kg"] or 0.0)
        account: "dict[str, Any]" = mass_balance.account(
            went_in, cheese + x["whey_kg"], x["low_ratio"], x["high_ratio"]
        )
        values.append(_account("mass", account))
        if account["basis"] != "accounted":
            notes.append(note("account." + account["basis"], of="mass"))
    notes.extend(_fat_account(x, values))
    return result(values, notes)


def _adjusted(x: "Inputs", share: float) -> "WorkedValue":
    if x["cheese_salt_frac"] is None:
        adjusted = yields.moisture_adjusted_frac(
            share, x["cheese_moisture_frac"], x["standard_moisture_frac"]
        )
    else:
        adjusted = yields.moisture_salt_adjusted_frac(
            share,
            x["cheese_moisture_frac"],
            x["cheese_salt_frac"],
            x["standard_moisture_frac"],
            x["standard_salt_frac"],
        )
    return value("adjusted_yield_frac", adjusted)


def _account(of: str, balance: "dict[str, Any]") -> "WorkedValue":
    return value(
        "accounted_ratio", balance["value"], balance["low"], balance["high"], of
    )


def _fat_account(x: "Inputs", values: "list[WorkedValue]") -> "list[dict[str, Any]]":
    if x["fat_frac"] is None or x["cheese_fat_frac"] is None:
        return []
    kept = mass_balance.kept_frac(
        x["milk_kg"], x["fat_frac"], x["cheese_kg"], x["cheese_fat_frac"]
    )
    values.append(value("fat_kept_frac", kept))
    if x["whey_kg"] is None or x["whey_fat_frac"] is None:
        return []
    out_kg = mass_balance.component_kg(
        [
            [x["cheese_kg"], x["cheese_fat_frac"]],
            [x["whey_kg"], x["whey_fat_frac"]],
        ]
    )
    account: "dict[str, Any]" = mass_balance.account(
        x["milk_kg"] * x["fat_frac"], out_kg, x["low_ratio"], x["high_ratio"]
    )
    values.append(_account("fat", account))
    if account["basis"] == "accounted":
        return []
    return [note("account." + account["basis"], of="fat")]


OWN = [
    sum_row(
        "expected_yield",
        "yield",
        [
            MILK_KG,
            FAT,
            dict(PROTEIN, optional=True),
            number("casein_frac", "fraction", 0.002, 0.2, [0.02, 0.05], optional=True),
            number(
                "casein_number",
                "",
                0.5,
                1.0,
                [0.72, 0.84],
                default(0.77, "memory", "cows_milk_casein_number"),
            ),
            number(
                "moisture_frac",
                "fraction",
                0.2,
                0.85,
                [0.3, 0.6],
                default(0.43, "practice", "washed_curd_wheel_out_press"),
            ),
            number(
                "salt_frac",
                "fraction",
                0.0,
                0.1,
                [0.0, 0.04],
                default(0.0, "practice", "before_brine"),
            ),
            number(
                "fat_kept_frac",
                "fraction",
                0.5,
                1.0,
                [0.85, 0.95],
                default(0.92, "memory", FORMS),
            ),
            number(
                "casein_kept_frac",
                "fraction",
                0.5,
                1.0,
                [0.93, 0.99],
                default(0.955, "memory", FORMS),
            ),
            number("ash_ratio", "", 0.0, 0.2, None, default(0.08, "memory", FORMS)),
            number(
                "whey_solids_frac",
                "fraction",
                0.0,
                0.1,
                None,
                default(0.01, "memory", FORMS),
            ),
            WATER_IN,
        ],
        [
            output("yield_frac", "fraction", range_of="nine_in_ten"),
            output("cheese_kg", "kg", headline=True, range_of="nine_in_ten"),
            output("whey_kg", "kg"),
            output("cheese_fat_frac", "fraction"),
        ],
        _expected_yield,
        called={"milk_fat_frac": "fat_frac", "water_kg": "water_added_kg"},
        follows={
            "cheese_fat_frac": "fat_frac",
            "cheese_kg": "milk_kg",
            "curd_frac": "moisture_frac",
            "yield_frac": "fat_frac",
        },
    ),
    sum_row(
        "actual_yield",
        "yield",
        [
            MILK_KG,
            number("cheese_kg", "kg", 0.0, 10000.0, [1.0, 4000.0]),
            WATER_IN,
            number("whey_kg", "kg", 0.0, 60000.0, optional=True),
            number(
                "cheese_moisture_frac", "fraction", 0.0, 0.9, [0.28, 0.6], optional=True
            ),
            number(
                "cheese_salt_frac", "fraction", 0.0, 0.1, [0.002, 0.04], optional=True
            ),
            number(
                "standard_moisture_frac",
                "fraction",
                0.2,
                0.85,
                None,
                default(0.43, "practice", "washed_curd_wheel_out_press"),
            ),
            number(
                "standard_salt_frac",
                "fraction",
                0.0,
                0.1,
                None,
                default(0.018, "practice", "ripe_washed_curd_wheel"),
            ),
            dict(FAT, optional=True),
            number("cheese_fat_frac", "fraction", 0.0, 0.6, [0.1, 0.45], optional=True),
            number(
                "whey_fat_frac", "fraction", 0.0, 0.1, [0.0005, 0.01], optional=True
            ),
            number(
                "low_ratio",
                "",
                0.5,
                1.0,
                None,
                default(0.97, "practice", "usual_small_creamery"),
            ),
            number(
                "high_ratio",
                "",
                1.0,
                1.5,
                None,
                default(1.03, "practice", "usual_small_creamery"),
            ),
        ],
        [
            output("yield_frac", "fraction", headline=True),
            output("adjusted_yield_frac", "fraction"),
            output("accounted_ratio", "fraction", "band"),
            output("fat_kept_frac", "fraction"),
        ],
        _actual_yield,
        called={
            "cheese_frac": "cheese_fat_frac",
            "in_kg": "milk_kg",
            "milk_frac": "fat_frac",
            "moisture_frac": "cheese_moisture_frac",
            "out_kg": "cheese_kg",
            "part_frac": "whey_fat_frac",
            "part_kg": "whey_kg",
            "salt_frac": "cheese_salt_frac",
            "standard_frac": "standard_moisture_frac",
        },
        follows={"yield_frac": "cheese_kg"},
    ),
]
ROWS = [OWN[0], wheels.ROWS[0], OWN[1], wheels.ROWS[1]]
