"""What goes into the milk: starter, calcium chloride, colour, rennet."""

from ..formulas import ingredients, rennet
from .milk import MILK_KG
from .rows import (
    choice,
    default,
    note,
    number,
    output,
    rests,
    result,
    sum_row,
    value,
)

MILK_L = number("milk_l", "L", 0.0, 50000.0, [20.0, 20000.0])
GOUDA = "A. Hill, University of Guelph, page Gouda"
SUPPLIER = "a supplier's page on rennet and calcium chloride for Gouda"


def _starter_packs(x):
    packs = ingredients.starter_packs(
        x["milk_l"], x["dose_units_per_l"], x["pack_units"]
    )
    return result([value("packs", packs, "")], [note("part_packs_are_yours_to_judge")])


def _starter_bulk(x):
    low, high = x["ranges"].get("starter_frac") or [None, None]
    kg = x["milk_kg"]
    ends = [
        None if share is None else ingredients.bulk_starter_kg(kg, share)
        for share in (low, high)
    ]
    amount = ingredients.bulk_starter_kg(kg, x["starter_frac"])
    return result([value("starter_kg", amount, "kg", ends[0], ends[1])])


def _starter_change(x):
    low, high = x["ranges"].get("growth_per_h") or [None, None]
    ratio = x["dose_ratio"]
    shifts = [
        None if rate is None else ingredients.acid_shift_s(ratio, rate / 3600.0)
        for rate in (x["growth_per_h"], low, high)
    ]
    ends = sorted(shift for shift in shifts if shift is not None)
    return result([value("earlier_s", shifts[0], "s", ends[0], ends[-1])])


def _rennet_dose(x):
    if x["strength_kind"] == "soxhlet":
        if x["strength_soxhlet"] is None:
            return result([], [], [], ["strength_soxhlet"])
        amount = rennet.soxhlet_rennet_ml(
            x["milk_l"], x["strength_soxhlet"], x["clot_s"], x["reference_s"]
        )
        notes = [note("soxhlet_at_35_c"), note("strengths_never_convert")]
        ends: "list[float | None]" = [None, None]
    else:
        if x["strength_imcu_per_ml"] is None:
            return result([], [], [], ["strength_imcu_per_ml"])
        strength = x["strength_imcu_per_ml"]
        low, high = x["ranges"].get("dose_imcu_per_l") or [None, None]
        ends = [
            None if dose is None else rennet.rennet_ml(x["milk_l"], dose, strength)
            for dose in (low, high)
        ]
        amount = rennet.rennet_ml(x["milk_l"], x["dose_imcu_per_l"], strength)
        notes = [note("strengths_never_convert")]
    water = rennet.dilution_water_ml(amount, x["dilution_times"])
    notes.append(note("no_chlorine"))
    return result(
        [
            value("rennet_ml", amount, "mL", ends[0], ends[1]),
            value("water_ml", water, "mL"),
        ],
        notes,
    )


def _cut_time(x):
    found = rennet.cut_time(x["floc_s"], x["floc_factor"], x["tested_every_s"])
    low, high = found["low_s"], found["high_s"]
    if found["value_s"] is not None and "floc_factor" in x["ranges"]:
        first, last = x["ranges"]["floc_factor"]
        low = rennet.cut_time(x["floc_s"], first, x["tested_every_s"])["low_s"]
        high = rennet.cut_time(x["floc_s"], last, x["tested_every_s"])["high_s"]
    return result(
        [value("cut_s", found["value_s"], "s", low, high)],
        [note(found["basis"], low=rennet.FLOC_EARLIEST_S, high=rennet.FLOC_LATEST_S)],
    )


def _rennet_next(x):
    factor = rennet.next_dose_factor(x["floc_s"], x["target_floc_s"], x["delay_s"])
    values = [value("dose_factor", factor, "")]
    if x["rennet_ml"] is not None:
        values.append(value("next_rennet_ml", x["rennet_ml"] * factor, "mL"))
    notes = []
    if not 0.5 <= factor <= 2.0:
        notes.append(note("factor_outside", low=0.5, high=2.0))
    return result(values, notes)


def _calcium_chloride(x):
    dose_g = x["milk_kg"] * x["dose_g_per_kg"]
    low, high = x["ranges"].get("dose_g_per_kg") or [None, None]
    ends = [None if end is None else x["milk_kg"] * end for end in (low, high)]
    values = [value("anhydrous_g", dose_g, "g", ends[0], ends[1])]
    notes: "list[dict]" = []
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
                "mL",
            )
        )
    else:
        weighed = ingredients.calcium_chloride_g(
            x["milk_kg"], x["dose_g_per_kg"], x["form"]
        )
        values.append(value("weigh_out_g", weighed, "g"))
    figure = (x["rules"].get("us_identity") or {}).get("calcium_chloride_max_frac")
    if figure is None:
        return result(values, [note("rules_not_here")])
    wrong = ingredients.check_calcium_chloride(dose_g, x["milk_kg"], figure["value"])
    word = "does_not_meet" if wrong else "meets"
    limit_g = figure["value"] * x["milk_kg"] * 1000.0
    values.append(value("limit", word, "key", dose_g, limit_g, "us_identity"))
    source = rests(
        "calcium_chloride_max_frac",
        figure["value"],
        "fraction",
        figure["status"],
        figure["source"],
    )
    return result(values, notes, [source])


def _colour(x):
    low, high = x["ranges"].get("dose_ml_per_t") or [None, None]
    amounts = [
        None if dose is None else ingredients.colour_ml(x["milk_kg"], dose)
        for dose in (x["dose_ml_per_t"], low, high)
    ]
    return result([value("colour_ml", amounts[0], "mL", amounts[1], amounts[2])])


FLOC_S = number("floc_s", "s", 1.0, 14400.0, [360.0, 1500.0])

ROWS = [
    sum_row(
        "starter_packs",
        "ingredients",
        [
            MILK_L,
            number("pack_units", "", 0.001, 100000.0),
            number("dose_units_per_l", "", 0.0001, 1000.0),
        ],
        [output("packs", "")],
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
        [output("starter_kg", "kg")],
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
                    "Medvedova et al., Fermentation 5(1):2, mixed starter at 32 °C",
                    0.9,
                    1.5,
                ),
            ),
        ],
        [output("earlier_s", "s")],
        _starter_change,
    ),
    sum_row(
        "rennet_dose",
        "ingredients",
        [
            MILK_L,
            choice(
                "strength_kind",
                ["imcu", "soxhlet"],
                default("imcu", "practice", "as the bottle states it"),
            ),
            number(
                "strength_imcu_per_ml",
                "IMCU/mL",
                1.0,
                5000.0,
                [50.0, 1000.0],
                optional=True,
            ),
            number(
                "dose_imcu_per_l",
                "IMCU/L",
                1.0,
                500.0,
                [20.0, 80.0],
                default(52.5, "read", SUPPLIER + "; 35 to 55 usual", 35.0, 55.0),
            ),
            number(
                "strength_soxhlet",
                "",
                100.0,
                1000000.0,
                [2000.0, 200000.0],
                optional=True,
            ),
            number(
                "clot_s",
                "s",
                60.0,
                14400.0,
                [300.0, 3600.0],
                default(2400.0, "memory", "Soxhlet's own 40 min"),
            ),
            number(
                "reference_s",
                "s",
                600.0,
                7200.0,
                None,
                default(
                    2400.0, "memory", "Soxhlet; one page says 45 min", 2400.0, 2700.0
                ),
            ),
            number(
                "dilution_times",
                "",
                1.0,
                100.0,
                [5.0, 40.0],
                default(
                    10.0, "read", GOUDA + "; another page gives about 20", 10.0, 20.0
                ),
            ),
        ],
        [output("rennet_ml", "mL"), output("water_ml", "mL")],
        _rennet_dose,
    ),
    sum_row(
        "cut_time",
        "ingredients",
        [
            FLOC_S,
            number(
                "floc_factor",
                "",
                1.0,
                10.0,
                [2.0, 6.0],
                default(
                    3.0, "practice", "a rule of the trade for Gouda types", 2.5, 3.5
                ),
            ),
            number(
                "tested_every_s",
                "s",
                0.0,
                3600.0,
                None,
                default(120.0, "practice", "a look every two minutes"),
            ),
        ],
        [output("cut_s", "s")],
        _cut_time,
    ),
    sum_row(
        "rennet_next",
        "ingredients",
        [
            FLOC_S,
            number("target_floc_s", "s", 60.0, 14400.0, [480.0, 1200.0]),
            number("rennet_ml", "mL", 0.0, 100000.0, optional=True),
            number(
                "delay_s",
                "s",
                0.0,
                1800.0,
                None,
                default(120.0, "practice", "own settings say better; 0 to 3 min"),
            ),
        ],
        [output("dose_factor", ""), output("next_rennet_ml", "mL")],
        _rennet_next,
    ),
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
            output("weigh_out_g", "g"),
            output("solution_ml", "mL"),
            output("limit", "key"),
        ],
        _calcium_chloride,
        judges=True,
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
                default(1.5, "read", GOUDA + ": 1 to 2 mL in winter", 1.0, 2.0),
            ),
        ],
        [output("colour_ml", "mL")],
        _colour,
    ),
]
