"""How strong a brine is, whatever it was read by."""

from ...formulas.salt import brine, brine_scales, brine_tank, hydrometers
from ..outputs import note, output, result, value
from ..rows import choice, default, number, sum_row
from .brine_inputs import TEMP

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


ENDS = {"salt_frac": "fraction", "temp_c": "C"}
METHODS = ("density", "baume", "salometer", "g_l", "g_kg_water", "titration")
READS = {
    "density": "density_kg_m3",
    "baume": "baume",
    "salometer": "salometer",
    "g_l": "salt_g_l",
    "g_kg_water": "salt_g_kg_water",
    "titration": "silver_ml",
}
TITRATED = ("blank_ml", "silver_mol_l", "sample_g")
FLOATED = ("density", "baume", "salometer")


def _brine_strength(x: "Inputs") -> "Worked | None":
    name = READS[x["method"]]
    lacking = [n for n in [name] if x[n] is None]
    if x["method"] == "titration" and x["sample_g"] is None:
        lacking.append("sample_g")
    unused = _unused(x["method"])
    if lacking:
        return result([], [], [], lacking, unused)
    temp = x["brine_temp_c"]
    low = high = None
    notes: "list[dict[str, Any]]" = []
    if x["method"] == "density":
        salt = brine.salt_frac_from_density(x["density_kg_m3"], temp)
    elif x["method"] == "baume":
        salt, low, high = _from_baume(x, x["baume"], temp, notes)
    elif x["method"] == "salometer":
        salt = hydrometers.salt_frac_from_salometer(x["salometer"], temp)
    elif x["method"] == "g_l":
        salt = brine.salt_frac_from_g_l(x["salt_g_l"], temp)
    elif x["method"] == "g_kg_water":
        salt = brine_scales.salt_frac_from_g_kg_water(x["salt_g_kg_water"], temp)
    else:
        salt = brine_scales.salt_frac_from_titration(
            x["silver_ml"], x["blank_ml"], x["silver_mol_l"], x["sample_g"]
        )
        brine.require_brine("brine_salt_frac", salt, temp)
    if x["brine_kind"] == "used" and x["method"] in ("density", "salometer"):
        salt, low, high = _from_density(salt, temp, notes)
    values = [value("brine_salt_frac", salt, low, high)]
    values.append(value("density_kg_m3", brine.brine_density_kg_m3(salt, temp)))
    values.append(
        value(
            "baume",
            hydrometers.baume_of_brine(salt, temp, hydrometers.BAUME_MODULUS),
        )
    )
    values.append(value("salometer", hydrometers.salometer_of_brine(salt, temp)))
    values.append(value("salt_g_l", brine_scales.salt_g_l_of_brine(salt, temp)))
    values.append(value("salt_g_kg_water", brine_scales.salt_g_kg_of_water(salt, temp)))
    values.extend(_limits(x, salt, temp))
    return result(values, notes, [], [], unused)


def _unused(method: str) -> "list[str]":
    """Return the inputs that belong to another way of reading."""
    unused = [READS[other] for other in METHODS if other != method]
    if method != "titration":
        unused.extend(TITRATED)
    if method not in FLOATED:
        unused.append("brine_kind")  # only what floats is lifted by whey
    return unused


def _from_baume(
    x: "Inputs", baume: float, temp: float, notes: "list[Any]"
) -> "tuple[Any, Any, Any]":
    if x["brine_kind"] == "used":
        strength = hydrometers.used_brine_range(baume, temp)
        notes.append(note("used_brine_reads_high"))
    else:
        strength = hydrometers.clean_brine_range(baume, temp)
    return strength["value"], strength["low"], strength["high"]


def _from_density(salt: float, temp: int, notes: "list[Any]") -> "tuple[Any, Any, Any]":
    """A used brine floats any hydrometer too high, whatever its scale."""
    baume = hydrometers.baume_of_brine(salt, temp, hydrometers.BAUME_MODULUS)
    strength = hydrometers.used_brine_range(baume, temp)
    notes.append(note("used_brine_reads_high"))
    return strength["value"], strength["low"], strength["high"]


def _limits(x: "Inputs", salt: float, temp: float) -> "list[WorkedValue]":
    rule = x["rules"].get("brine")
    if rule is None:
        return []
    wrong: "list[Any]" = brine_tank.check_brine(salt, temp, rule["limits"])
    values = []
    for problem in wrong:
        low, high = problem["limit"], None
        if problem["key"] == "above_working_range":
            low, high = high, low
        values.append(
            value(
                "outside", problem["key"], low, high, problem["field"], problem["value"]
            )
        )
    return values


ROWS = [
    sum_row(
        "brine_strength",
        "brine",
        [
            choice("method", list(METHODS)),
            choice(
                "brine_kind",
                ["clean", "used"],
                default("used", "practice", "working_brine"),
            ),
            TEMP,
            number(
                "density_kg_m3", "kg/m3", 990.0, 1210.0, [1070.0, 1200.0], optional=True
            ),
            number("baume", "Baume", 0.0, 26.0, [12.0, 25.0], optional=True),
            number("salometer", "salometer", 0.0, 101.0, [50.0, 100.0], optional=True),
            number("salt_g_l", "g/L", 0.0, 330.0, [100.0, 320.0], optional=True),
            number(
                "salt_g_kg_water", "g/kg", 0.0, 370.0, [100.0, 360.0], optional=True
            ),
            number("silver_ml", "mL", 0.0, 200.0, optional=True),
            number(
                "blank_ml",
                "mL",
                0.0,
                20.0,
                None,
                default(0.0, "practice", "no_blank_run"),
            ),
            number(
                "silver_mol_l",
                "mol/L",
                0.001,
                1.0,
                None,
                default(0.1, "practice", "silver_nitrate_tenth_molar"),
            ),
            number("sample_g", "g", 0.001, 1000.0, optional=True),
        ],
        [
            output("brine_salt_frac", "fraction", headline=True),
            output("density_kg_m3", "kg/m3"),
            output("baume", "Baume"),
            output("salometer", "salometer"),
            output("salt_g_l", "g/L"),
            output("salt_g_kg_water", "g/kg"),
            output("outside", "key", "limit", ends=ENDS),
        ],
        _brine_strength,
        judges=True,
        called={"salt_g_kg": "salt_g_kg_water", "temp_c": "brine_temp_c"},
        follows={
            "brine_salt_frac": "method",
            "salt_frac": "method",
            "sample_salt_frac": "sample_g",
        },
    ),
]
