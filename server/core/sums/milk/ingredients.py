"""What goes into the milk: starter, calcium chloride, colour, rennet."""

from ...formulas.milk import ingredients
from ..needs import lacking_for
from ..outputs import note, output, rests, result, value
from ..ranges import ranged, with_ends
from ..rows import choice, default, number, sum_row
from . import cut, rennet, rennet_next, setting
from .milk_inputs import MILK_KG, MILK_L

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.sums import RestsOn
    from server.shapes.core.worked import Inputs, Worked, WorkedValue


GOUDA = "guelph_gouda"
SUPPLIER = "supplier_page"
DENSITY_TABLE = "calcium_solution_densities"


def _starter_packs(x: "Inputs") -> "Worked":
    packs = ingredients.starter_packs(
        x["milk_l"], x["dose_units_per_l"], x["pack_units"]
    )
    values = [value("packs", packs)]
    if x["pack_g"] is not None:
        values.append(value("starter_g", ingredients.starter_g(packs, x["pack_g"])))
    return result(values, [note("part_packs_are_yours_to_judge")])


def _starter_bulk(x: "Inputs") -> "Worked":
    amounts_kg = [
        ingredients.bulk_starter_kg(x["milk_kg"], share)
        for share in with_ends(x, "starter_frac")
    ]
    return result([ranged("starter_kg", amounts_kg)])


def _starter_change(x: "Inputs") -> "Worked":
    shifts_s = [
        ingredients.acid_shift_s(x["dose_ratio"], rate / 3600.0)
        for rate in with_ends(x, "growth_per_h")
    ]
    return result([value("earlier_s", shifts_s[0], min(shifts_s), max(shifts_s))])


def _calcium_chloride(x: "Inputs") -> "Worked":
    lacking = lacking_for("calcium_chloride", x)
    if lacking:
        return result([], [], [], lacking)
    doses_g = [x["milk_kg"] * dose for dose in with_ends(x, "dose_g_per_kg")]
    dose_g, values = doses_g[0], [ranged("anhydrous_g", doses_g)]
    notes, sources = _what_goes_in(x, dose_g, values)
    figure = (x["rules"].get("us_identity") or {}).get("calcium_chloride_max_frac")
    if figure is None:
        return result(values, notes + [note("rules_not_here")], sources)
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
    return result(values, notes, sources + [source])


def _what_goes_in(
    x: "Inputs", dose_g: float, values: "list[WorkedValue]"
) -> "tuple[list[dict[str, Any]], list[RestsOn]]":
    """Add what is weighed or measured for a dose; return notes and what it rests on."""
    if x["form"] != "solution":
        weighed = ingredients.calcium_chloride_g(
            x["milk_kg"], x["dose_g_per_kg"], x["form"]
        )
        values.append(value("weigh_out_g", weighed))
        return [note("calcium_warms_water")], []
    share, density = x["solution_frac"], x["solution_density_kg_l"]
    sources = []
    if density is None:
        density = ingredients.calcium_solution_density_kg_l(share)
        sources = [
            rests("solution_density_kg_l", density, "kg/L", "memory", DENSITY_TABLE)
        ]
    amount_ml = ingredients.calcium_solution_ml(dose_g, share, density)
    values.append(value("solution_ml", amount_ml))
    return [], sources


def _colour(x: "Inputs") -> "Worked":
    doses = with_ends(x, "dose_ml_per_t")
    amounts_ml = [ingredients.colour_ml(x["milk_kg"], dose) for dose in doses]
    return result([ranged("colour_ml", amounts_ml)])


STARTER = [
    sum_row(
        "starter_packs",
        "ingredients",
        [
            MILK_L,
            number("pack_units", "", 0.001, 100000.0),
            number("dose_units_per_l", "", 0.0001, 1000.0),
            number("pack_g", "g", 0.1, 20000.0, [1.0, 1000.0], optional=True),
        ],
        [
            output("packs", "pack", headline=True),
            output("starter_g", "g", headline=True),
        ],
        _starter_packs,
        follows={"packs": "milk_l"},
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
        [output("starter_kg", "kg", headline=True, range_of="usual")],
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
            number("solution_frac", "fraction", 0.01, 0.4, [0.1, 0.4], optional=True),
            number(
                "solution_density_kg_l", "kg/L", 1.0, 1.5, [1.1, 1.45], optional=True
            ),
        ],
        [
            output("anhydrous_g", "g", range_of="usual"),
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
        [output("colour_ml", "mL", headline=True, range_of="usual")],
        _colour,
    ),
]
# As the keys stand in `sum_keys`.
SET = rennet.ROWS + cut.ROWS + rennet_next.ROWS + setting.ROWS
ROWS = STARTER + SET + SALT_AND_COLOUR
