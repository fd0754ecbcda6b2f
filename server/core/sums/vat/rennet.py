"""Rennet: the dose and the cut."""

from ...formulas.milk import cutting, rennet
from ..outputs import note, output, result, value
from ..rows import choice, default, number, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


MILK_L = number("milk_l", "L", 0.0, 50000.0, [20.0, 20000.0])
GOUDA = "guelph_gouda"
SUPPLIER = "supplier_page"
FLOC_S = number("floc_s", "s", 1.0, 14400.0, [360.0, 1500.0])
# What one statement of strength does without, since the two never convert.
UNUSED = {
    "imcu": ["strength_soxhlet", "clot_s", "reference_s"],
    "soxhlet": ["strength_imcu_per_ml", "dose_imcu_per_l"],
}


def _rennet_dose(x: "Inputs") -> "Worked":
    unused = UNUSED[x["strength_kind"]]
    if x["strength_kind"] == "soxhlet":
        if x["strength_soxhlet"] is None:
            return result([], [], [], ["strength_soxhlet"], unused)
        amount = rennet.soxhlet_rennet_ml(
            x["milk_l"], x["strength_soxhlet"], x["clot_s"], x["reference_s"]
        )
        notes = [note("soxhlet_at_35_c"), note("strengths_never_convert")]
        ends: "list[float | None]" = [None, None]
    else:
        if x["strength_imcu_per_ml"] is None:
            return result([], [], [], ["strength_imcu_per_ml"], unused)
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
            value("rennet_ml", amount, ends[0], ends[1]),
            value("water_ml", water),
        ],
        notes,
        [],
        [],
        unused,
    )


def _cut_time(x: "Inputs") -> "Worked":
    floc, factor = x["floc_s"], x["floc_factor"]
    cut = cutting.cut_time(floc, factor, x["tested_every_s"])
    first, last = x["ranges"].get("floc_factor") or [factor, factor]
    # It may have flocculated as early as at the look before. Outside its window the
    # point is doubtful, and still the only one that the cut can go by.
    low = first * (floc - x["tested_every_s"])
    return result(
        [value("cut_s", factor * floc, low, last * floc)],
        [note(cut["basis"], low=cutting.FLOC_EARLIEST_S, high=cutting.FLOC_LATEST_S)],
    )


ROWS = [
    sum_row(
        "rennet_dose",
        "ingredients",
        [
            MILK_L,
            choice(
                "strength_kind",
                ["imcu", "soxhlet"],
                default("imcu", "practice", "as_the_bottle_states"),
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
                default(52.5, "read", "supplier_page_usual_dose", 35.0, 55.0),
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
                default(2400.0, "memory", "soxhlet_own_time"),
            ),
            number(
                "reference_s",
                "s",
                600.0,
                7200.0,
                None,
                default(2400.0, "memory", "soxhlet_another_time", 2400.0, 2700.0),
            ),
            number(
                "dilution_times",
                "",
                1.0,
                100.0,
                [5.0, 40.0],
                default(10.0, "read", "guelph_gouda_dilution", 10.0, 20.0),
            ),
        ],
        [output("rennet_ml", "mL", headline=True), output("water_ml", "mL")],
        _rennet_dose,
        called={"times": "dilution_times"},
        follows={"rennet_ml": "milk_l"},
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
                default(3.0, "practice", "trade_rule_gouda_types", 2.5, 3.5),
            ),
            number(
                "tested_every_s",
                "s",
                0.0,
                3600.0,
                None,
                default(120.0, "practice", "look_every_two_minutes"),
            ),
        ],
        [output("cut_s", "s", "band", headline=True)],
        _cut_time,
        called={"multiple": "floc_factor"},
    ),
]
