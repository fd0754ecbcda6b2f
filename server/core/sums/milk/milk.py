"""Milk: its mass, what is asked on receipt, its acidity, and standardising it."""

from ...formulas.milk import milk, standardise
from ...units.table import convert
from ...units.titration import lactic_frac
from ..outputs import note, output, rests, result, value
from ..rows import choice, default, number, sum_row
from . import receipt
from .milk_inputs import MILK_KG, MILK_L

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked, WorkedValue


GOFF = "guelph_density_table"
# The table is printed to 0.001 kg/L and fitted within this.
DENSITY_ERROR_KG_L = 0.0009

FAT = number("fat_frac", "fraction", 0.0, 0.4, [0.015, 0.09])
SNF = number(
    "snf_frac",
    "fraction",
    0.0,
    0.2,
    [0.06, 0.13],
    default(0.0895, "read", "guelph_density_table_whole_milk"),
)
SCALES = [
    output("acidity_frac", "fraction lactic", headline=True),
    output("lactic_percent", "lactic_percent", told_by="acidity_frac"),
    output("dornic", "dornic"),
    output("thorner", "thorner"),
    output("soxhlet_henkel", "soxhlet_henkel"),
]
PROTEIN = number("protein_frac", "fraction", 0.0, 0.2, [0.024, 0.06])


def _milk_mass(x: "Inputs") -> "Worked":
    density = milk.density_kg_l(x["fat_frac"], x["snf_frac"], x["milk_temp_c"])
    low, high = density - DENSITY_ERROR_KG_L, density + DENSITY_ERROR_KG_L
    values = [value("density_kg_l", density, low, high)]
    if x["milk_l"] is not None:
        litres = x["milk_l"]
        values.append(
            value(
                "milk_kg",
                milk.mass_kg(litres, density),
                litres * low,
                litres * high,
            )
        )
    if x["weighed_kg"] is not None:
        kg = x["weighed_kg"]
        values.append(value("milk_l", milk.volume_l(kg, density), kg / high, kg / low))
    notes = []
    if not 4.4 <= x["milk_temp_c"] <= 38.9:
        notes.append(note("density_outside_table", low=4.4, high=38.9))
    missing = []
    if len(values) == 1:
        missing = ["milk_l"]
    return result(
        [] if missing else values,
        notes,
        [rests("density_kg_l", density, "kg/L", "read", GOFF)],
        missing,
    )


def _acidity_titration(x: "Inputs") -> "Worked":
    frac = lactic_frac(x["alkali_ml"], x["alkali_mol_l"], x["sample_ml"])
    return result(_scales(frac), [note("acidity_never_ph")])


def _acidity_units(x: "Inputs") -> "Worked":
    return result(_scales(x["acidity_frac"]), [note("acidity_never_ph")])


def _scales(frac: float) -> "list[WorkedValue]":
    values = [value("acidity_frac", frac)]
    for name in ("lactic_percent", "dornic", "thorner", "soxhlet_henkel"):
        values.append(value(name, convert(frac, "fraction lactic", name)))
    return values


def _standardise_fat(x: "Inputs") -> "Worked | None":
    kg, fat, wanted = x["milk_kg"], x["fat_frac"], x["target_fat_frac"]
    other = x["added_fat_frac"]
    values = []
    if x["way"] == "take_cream_off":
        off = standardise.cream_off_kg(kg, fat, other, wanted)
        values.append(value("cream_off_kg", off))
        values.append(value("milk_after_kg", kg - off))
        return result(values)
    more = standardise.added_kg(kg, fat, other, wanted)
    values.append(value("added_kg", more))
    values.append(value("milk_after_kg", kg + more))
    share = standardise.blend_share(fat, other, wanted)
    values.append(value("milk_share_frac", share))
    return result(values)


def _standardise_ratio(x: "Inputs") -> "Worked | None":
    kg, protein, fat = x["milk_kg"], x["protein_frac"], x["fat_frac"]
    wanted = x["protein_fat_ratio"]
    values = [value("target_fat_frac", standardise.fat_for_ratio_frac(protein, wanted))]
    if fat > 0:
        values.append(value("protein_fat_ratio_now", protein / fat))
    if x["added_fat_frac"] is not None and x["added_protein_frac"] is not None:
        more = standardise.added_for_ratio_kg(
            kg, protein, fat, x["added_protein_frac"], x["added_fat_frac"], wanted
        )
        values.append(value("added_kg", more))
        values.append(value("milk_after_kg", kg + more))
    return result(values)


ROWS = [
    sum_row(
        "milk_mass",
        "milk",
        [
            dict(MILK_L, optional=True),
            number("weighed_kg", "kg", 0.0, 52000.0, [20.0, 21000.0], optional=True),
            FAT,
            SNF,
            number("milk_temp_c", "C", 0.0, 44.0, [1.0, 40.0]),
        ],
        [
            output("density_kg_l", "kg/L"),
            output("milk_kg", "kg", headline=True),
            output("milk_l", "L", headline=True),
        ],
        _milk_mass,
        called={"mass_kg": "weighed_kg", "temp_c": "milk_temp_c", "volume_l": "milk_l"},
        follows={"density_kg_l": "milk_temp_c"},
    ),
    receipt.ROW,
    sum_row(
        "acidity_titration",
        "milk",
        [
            number("alkali_ml", "mL", 0.0, 200.0, [0.2, 20.0]),
            number(
                "alkali_mol_l",
                "mol/L",
                0.01,
                1.0,
                [0.09, 0.26],
                default(0.1, "practice", "practice_alkali_tenth_normal"),
            ),
            number(
                "sample_ml",
                "mL",
                1.0,
                200.0,
                [5.0, 100.0],
                default(10.0, "practice", "practice_sample_size"),
            ),
        ],
        SCALES,
        _acidity_titration,
    ),
    sum_row(
        "acidity_units",
        "milk",
        [number("acidity_frac", "fraction lactic", 0.0, 0.05, [0.0008, 0.012])],
        SCALES,
        _acidity_units,
        called={"value": "acidity_frac"},
    ),
    sum_row(
        "standardise_fat",
        "milk",
        [
            MILK_KG,
            FAT,
            number("target_fat_frac", "fraction", 0.0, 0.4, [0.02, 0.06]),
            choice(
                "way",
                ["add", "take_cream_off"],
                default("add", "practice", "skim_or_cream_stirred_in"),
            ),
            number("added_fat_frac", "fraction", 0.0, 0.6, [0.0, 0.5]),
        ],
        [
            output("added_kg", "kg", headline=True),
            output("cream_off_kg", "kg", headline=True),
            output("milk_after_kg", "kg"),
            output("milk_share_frac", "fraction"),
        ],
        _standardise_fat,
        called={
            "cream_frac": "added_fat_frac",
            "second_frac": "added_fat_frac",
            "target_frac": "target_fat_frac",
        },
    ),
    sum_row(
        "standardise_ratio",
        "milk",
        [
            MILK_KG,
            PROTEIN,
            FAT,
            number(
                "protein_fat_ratio",
                "",
                0.3,
                5.0,
                [0.7, 1.5],
                default(1.07, "read", "guelph_gouda"),
            ),
            number("added_protein_frac", "fraction", 0.0, 0.2, optional=True),
            number("added_fat_frac", "fraction", 0.0, 0.6, optional=True),
        ],
        [
            output("target_fat_frac", "fraction", headline=True),
            output("protein_fat_ratio_now", ""),
            output("added_kg", "kg"),
            output("milk_after_kg", "kg"),
        ],
        _standardise_ratio,
    ),
]
