"""What is wrong with the values of a sum, told of what the sum asked for.

A formula speaks of its own arguments; a sum may ask for one under another name and
in another unit, or for something else that it follows from.
"""

from ..numbers.problems import told
from ..numbers.refused import Refused
from ..units.table import convert

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import SumProblem


# What the formulas call a value that a sum asks for under a longer name.
ALSO_CALLED = (
    ("target_c", "target_temp_c"),
    ("jacket_c", "jacket_temp_c"),
    ("start_c", "vat_temp_c"),
    ("vat_c", "vat_temp_c"),
    ("measured_c", "vat_temp_c"),
    ("water_c", "water_temp_c"),
    ("most_c", "water_most_c"),
    ("reference_c", "reference_temp_c"),
    ("ref_c", "reference_temp_c"),
    ("temp_c", "milk_temp_c"),
    ("temp_c", "brine_temp_c"),
    ("temps_c", "vat_temps"),
    ("temps_c", "curd_temps"),
    ("times_s", "vat_temps"),
    ("times_s", "ph_readings"),
    ("times_s", "curve"),
    ("curve_times_s", "curve"),
    ("curve_phs", "curve"),
    ("phs", "ph_readings"),
    ("ph", "target_ph"),
    ("milk_frac", "fat_frac"),
    ("added_frac", "added_fat_frac"),
    ("cream_frac", "added_fat_frac"),
    ("target_frac", "target_fat_frac"),
    ("salt_frac", "brine_salt_frac"),
    ("brine_frac", "brine_salt_frac"),
    ("wanted_frac", "wanted_salt_frac"),
    ("wanted_frac", "wanted_moisture_frac"),
    ("gauge_pa", "gauge_kpa"),
    ("pressure_pa", "cheese_kpa"),
    ("face_area_m2", "diameter_m"),
    ("multiple", "floc_factor"),
    ("set_s", "floc_s"),
    ("target_s", "target_floc_s"),
    ("yield_frac", "cheese_kg"),
    ("yield_frac", "fat_frac"),
    ("cheese_kg", "milk_kg"),
    ("curd_frac", "moisture_frac"),
    ("lost_frac", "weighings"),
    ("low_kg", "curd_low_kg"),
    ("value_kg", "curd_kg"),
    ("second_frac", "added_fat_frac"),
    ("drained_kg", "washes"),
    ("humidity_frac", "wet_c"),
    ("pressure_pa", "air_pressure_kpa"),
    ("pressure_pa", "moulds"),
    ("force_n", "gauge_kpa"),
    ("force_n", "weight_kg"),
    ("now_ms", "now_min"),
    ("moisture_frac", "cheese_moisture_frac"),
    ("fat_frac", "cheese_fat_frac"),
    ("salt_frac", "method"),
    ("brine_salt_frac", "method"),
    ("measured_salt_frac", "method"),
    ("sample_salt_frac", "sample_g"),
)


def problem_of(sum_row: "dict[str, Any]", refusal: Refused) -> "SumProblem":
    """Return the problem that a refusal tells, of what the sum asks for.

    Args:
        sum_row: the sum.
        refusal: what a formula raised.

    Returns:
        Problem, see `numbers.problems.problem`.
    """
    found = told(refusal)
    item = _asked(sum_row, refusal.field)
    if item is None:
        return found
    found["field"] = item["name"]
    units = [item["unit"]] + [part["unit"] for part in item["columns"] or []]
    if found["unit"] == "" or found["unit"] in units:
        return found
    return _in_unit(found, item, refusal.field)


def _asked(sum_row: "dict[str, Any]", field: str) -> "dict[str, Any] | None":
    asked = {item["name"]: item for item in sum_row["inputs"]}
    if field in asked:
        return asked[field]
    for called, name in ALSO_CALLED:
        if called == field and name in asked:
            return asked[name]
    return None


def _in_unit(found: "SumProblem", item: "dict[str, Any]", field: str) -> "SumProblem":
    try:
        for part in ("value", "limit"):
            if isinstance(found[part], (int, float)):
                found[part] = convert(found[part], found["unit"], item["unit"])
        found["unit"] = item["unit"]
    except Refused:
        found["of"] = field  # another quantity, that the input leads to
    return found
