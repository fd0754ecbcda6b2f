"""What goes into the milk: starter, calcium chloride, colour, rennet."""

from ...formulas.milk import ingredients
from ..outputs import note, output, rests, result, value
from ..rows import choice, default, number, sum_row
from . import rennet, rennet_next
from .milk_inputs import MILK_KG
from .rennet import GOUDA, MILK_L, SUPPLIER

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked


def _starter_packs(x: "Inputs") -> "Worked":
    packs = ingredients.starter_packs(
        x["milk_l"], x["dose_units_per_l"], x["pack_units"]
    )
    return result([value("packs", packs)], [note("part_packs_are_yours_to_judge")])


def _starter_bulk(x: "Inputs") -> "Worked":
    low, high = x["ranges"].get("starter_frac") or [None, None]
    kg = x["milk_kg"]
    ends = [
        None if share is None else ingredients.bulk_starter_kg(kg, share)
        for share in (low, high)
    ]
    amount = ingredients.bulk_starter_kg(kg, x["starter_frac"])
    return result([value("starter_kg", amount, ends[0], ends[1])])


def _starter_change(x: "Inputs") -> "Worked":
    low, high = x["ranges"].get("growth_per_h") or [None, None]
    ratio = x["dose_ratio"]
    shifts = [
        None if rate is None else ingredients.acid_shift_s(ratio, rate / 3600.0)
        for rate in (x["growth_per_h"], low, high)
    ]
    ends = sorted(shift for shift in shifts if shift is not None)
    return result([value("earlier_s", shifts[0], ends[0], ends[-1])])


def _calcium_chloride(x: "Inputs") -> "Worked":
    dose_g = x["milk_kg"] * x["dose_g_per_kg"]
    low, high = x["ranges"].get("dose_g_per_kg") or [None, None]
    ends = [None if end is None else x["milk_kg"] * end for end in (low, high)]
    values = [value("anhydrous_g", dose_g, ends[0], ends[1])]
    notes: "list[dict[str, Any]]" = []
    if x["form"] == "solution":
        lacking = [
            n for n in ("solution_frac", "solution_density_kg_l") if x[n] is None
        ]
        if lacking:
            return result([], [], [], lacking)
        values.append(
            value(
                "solution_ml",
                ingredients.calcium_solution_ml(
                    dose_g, x["solution_frac"], x["solution_density_kg_l"]
                ),
            )
        )
    else:
        weighed = ingredients.calcium_chloride_g(
            x["milk_kg"], x["dose_g_per_kg"], x["form"]
        )
        values.append(value("weigh_out_g", weighed))
    figure = (x["rules"].get("us_identity") or {}).get("calcium_chloride_max_frac")
    if figure is None:
        return result(values, [note("rules_not_here")])
    wrong = ingredients.check_calcium_chloride(dose_g, x["milk_kg"], figure["value"])
    word = "does_not_meet" if wrong else "meets"
    limit_g = figure["value"] * x["milk_kg"] * 1000.0
    values.append(value("limit", word, high=limit_g, of="us_identity", read=dose_g))
    source = rests(
        "calcium_chloride_max_frac",
        figure["value"],
        "fraction",
        figure["status"],
        figure["source"],
    )
    return result(values, notes, [source])


def _colour(x: "Inputs") -> "Worked":
    low, high = x["ranges"].get("dose_ml_per_t") or [None, None]
    amounts = [
        None if dose is None else ingredients.colour_ml(x["milk_kg"], dose)
        for dose in (x["dose_ml_per_t"], low, high)
    ]
    return result([value("colour_ml", amounts[0], amounts[1], amounts[2])])


STARTER = [
    sum_row(
        "starter_packs",
        "ingredients",
        [
            MILK_L,
            number("pack_units", "", 0.001, 100000.0),
            number("dose_units_per_l", "", 0.0001, 1000.0),
        ],
        [output("packs", "", headline=True)],
        _starter_packs,
    ),
    sum_row(
        "starter_bulk",
        "ingredients",
        [
            MILK_KG,
            number(
                "starter_frac",
                "fraction",
                0.0,
                0.1,
                [0.002, 0.03],
                default(0.0075, "read", GOUDA),
            ),
        ],
        [output("starter_kg", "kg", headline=True)],
        _starter_bulk,
    ),
    sum_row(
        "starter_change",
        "ingredients",
        [
            number("dose_ratio", "", 0.05, 20.0, [0.25, 4.0]),
            number(
                "growth_per_h",
                "1/h",
                0.05,
                3.0,
                [0.3, 2.0],
                default(
                    1.36,
                    "abstract",
                    "medvedova_mixed_starter_at_32",
                    0.9,
                    1.5,
                ),
            ),
        ],
        [output("earlier_s", "s", headline=True, sense="earlier")],
        _starter_change,
        called={"growth_per_s": "growth_per_h"},
    ),
]
SALT_AND_COLOUR = [
    sum_row(
        "calcium_chloride",
        "ingredients",
        [
            MILK_KG,
            number(
                "dose_g_per_kg",
                "g/kg",
                0.0,
                2.0,
                [0.02, 0.2],
                default(0.15, "read", SUPPLIER, 0.1, 0.2),
            ),
            choice("form", ["anhydrous", "dihydrate", "solution"]),
            number("solution_frac", "fraction", 0.01, 0.45, [0.2, 0.45], optional=True),
            number(
                "solution_density_kg_l", "kg/L", 1.0, 1.5, [1.1, 1.45], optional=True
            ),
        ],
        [
            output("anhydrous_g", "g"),
            output("weigh_out_g", "g", headline=True),
            output("solution_ml", "mL", headline=True),
            output("limit", "key", "limit", ends="g"),
        ],
        _calcium_chloride,
        judges=True,
        called={"density_kg_l": "solution_density_kg_l"},
        follows={"anhydrous_g": "dose_g_per_kg"},
    ),
    sum_row(
        "colour",
        "ingredients",
        [
            MILK_KG,
            number(
                "dose_ml_per_t",
                "mL/t",
                0.0,
                1000.0,
                [0.5, 200.0],
                default(1.5, "read", "guelph_gouda_colour_in_winter", 1.0, 2.0),
            ),
        ],
        [output("colour_ml", "mL", headline=True)],
        _colour,
    ),
]
# As the keys stand in `sum_keys`.
ROWS = STARTER + rennet.ROWS + rennet_next.ROWS + SALT_AND_COLOUR
