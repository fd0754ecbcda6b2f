"""Rennet: the dose, by how its label states the strength: liquid, powder, tablets."""

from ...formulas.milk import rennet
from ..needs import lacking_for
from ..outputs import note, output, result, value
from ..ranges import ranged, with_ends
from ..rows import choice, default, number, sum_row
from .milk_inputs import MILK_L

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue

    Told = tuple[list[WorkedValue], list[dict[str, Any]]]


# What one statement of strength does without, since the two never convert.
SOXHLET = ("strength_soxhlet", "clot_s", "reference_s")
UNITS = ("strength_imcu_per_ml", "strength_imcu_per_g", "dose_imcu_per_l")
KINDS = ["imcu", "soxhlet", "imcu_powder", "soxhlet_powder", "tablet"]
USED = {
    "imcu": ("strength_imcu_per_ml", "dose_imcu_per_l", "dilution_times"),
    "soxhlet": SOXHLET + ("dilution_times",),
    "imcu_powder": ("strength_imcu_per_g", "dose_imcu_per_l"),
    "soxhlet_powder": SOXHLET,
    "tablet": ("tablet_sets_l",),
}
EVER_USED = SOXHLET + UNITS + ("tablet_sets_l", "dilution_times")


def _rennet_dose(x: "Inputs") -> "Worked":
    kind = x["strength_kind"]
    unused = [name for name in EVER_USED if name not in USED[kind]]
    lacking = lacking_for("rennet_dose", x)
    if lacking:
        return result([], [], [], lacking, unused)
    values, notes = WAYS[kind](x)
    if x["from"].get("dose_imcu_per_l") == "make" and "dose_imcu_per_l" not in unused:
        notes = notes + [note("dose_from_own_settings")]
    return result(values, notes, [], [], unused)


def _liquid_by_units(x: "Inputs") -> "Told":
    strength = x["strength_imcu_per_ml"]
    doses = with_ends(x, "dose_imcu_per_l")
    amounts = [rennet.rennet_ml(x["milk_l"], dose, strength) for dose in doses]
    return _liquid(x, amounts), [note("strengths_never_convert"), note("no_chlorine")]


def _liquid_by_soxhlet(x: "Inputs") -> "Told":
    notes = ["soxhlet_at_35_c", "strengths_never_convert", "no_chlorine"]
    return _liquid(x, [_by_soxhlet(x)]), [note(name) for name in notes]


def _liquid(x: "Inputs", amounts: "list[float]") -> "list[WorkedValue]":
    water_ml = rennet.dilution_water_ml(amounts[0], x["dilution_times"])
    return [ranged("rennet_ml", amounts), value("water_ml", water_ml)]


def _powder_by_units(x: "Inputs") -> "Told":
    strength = x["strength_imcu_per_g"]
    doses = with_ends(x, "dose_imcu_per_l")
    amounts = [rennet.rennet_g(x["milk_l"], dose, strength) for dose in doses]
    return [ranged("rennet_g", amounts)], _dissolved("strengths_never_convert")


def _powder_by_soxhlet(x: "Inputs") -> "Told":
    told = [value("rennet_g", _by_soxhlet(x))]
    return told, _dissolved("soxhlet_at_35_c", "strengths_never_convert")


def _tablets(x: "Inputs") -> "Told":
    tablets = rennet.rennet_tablets(x["milk_l"], x["tablet_sets_l"])
    return [value("rennet_tablets", tablets)], _dissolved("tablets_by_their_label")


def _dissolved(*names: str) -> "list[dict[str, Any]]":
    return [note(name) for name in names + ("dissolve_as_label_says", "no_chlorine")]


def _by_soxhlet(x: "Inputs") -> float:
    strength = x["strength_soxhlet"]
    return rennet.soxhlet_rennet_ml(
        x["milk_l"], strength, x["clot_s"], x["reference_s"]
    )


WAYS = {
    "imcu": _liquid_by_units,
    "soxhlet": _liquid_by_soxhlet,
    "imcu_powder": _powder_by_units,
    "soxhlet_powder": _powder_by_soxhlet,
    "tablet": _tablets,
}

ROWS = [
    sum_row(
        "rennet_dose",
        "ingredients",
        [
            MILK_L,
            choice(
                "strength_kind",
                KINDS,
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
                "strength_imcu_per_g",
                "IMCU/g",
                1.0,
                1000000.0,
                [500.0, 50000.0],
                optional=True,
            ),
            number("tablet_sets_l", "L", 0.1, 10000.0, [5.0, 1000.0], optional=True),
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
        [
            output("rennet_ml", "mL", headline=True, range_of="usual"),
            output("rennet_g", "g", headline=True, range_of="usual"),
            output("rennet_tablets", "tablet", headline=True),
            output("water_ml", "mL"),
        ],
        _rennet_dose,
        called={"times": "dilution_times"},
        follows={"rennet_ml": "milk_l"},
    ),
]
