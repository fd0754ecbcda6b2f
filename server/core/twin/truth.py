"""What is really so, for each quantity that an instrument reads."""

from ..numbers.refused import require
from .begin import milk_kg
from .laws import buffer
from .laws.layers import layers
from .laws.pressing import mass_kg, moisture_frac, salt_frac

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from server.shapes.core.twin import CourseRow, Twin, Wheels

H_MS = 3600000.0


def true_value(twin: "Twin", quantity: str, size: "str | None") -> "float | str":
    """Return the truth of a quantity.

    Args:
        twin: the make.
        quantity: as the core's quantities name it.
        size: size of wheel, where that is asked.

    Raises:
        Refused: a quantity that the twin does not know.
    """
    if quantity == "drug_test":
        return "positive" if twin["milk"]["drug_residue"] > 0.0 else "negative"
    require(quantity in TRUE, "not_a_choice", "quantity", quantity, sorted(TRUE))
    return TRUE[quantity](twin, size)


def sized(twin: "Twin", size: "str | None") -> "list[Wheels]":
    """Return the wheels of a size, or of all where none is named.

    Args:
        twin: the make.
        size: size of wheel.
    """
    return [row for row in twin["wheels"] if size in (None, row["size"])]


def of_size(twin: "Twin", size: "str | None") -> "Wheels | None":
    """Return the wheels of a size, of the first where none is named, or None.

    Args:
        twin: the make.
        size: size of wheel.
    """
    found = sized(twin, size)
    return found[0] if found else None


def course_row(twin: "Twin") -> "CourseRow":
    """Return the truth of now, for whoever draws the course.

    Args:
        twin: the make.
    """
    curd, wheels = twin["curd"], twin["wheels"]
    wet_kg = curd["water_kg"]
    return {
        "at_ms": twin["now_ms"],
        "milk_c": _curd_c(twin, None),
        "air_c": twin["vat"]["air_c"],
        "ph": twin["acid"]["ph"],
        "firm_frac": twin["clot"]["firm_frac"],
        "whey_kg": curd["whey_kg"],
        "moisture_frac": wet_kg / (wet_kg + curd["solids_kg"]),
        "salt_frac": {row["size"]: salt_frac(row) for row in wheels},
        "wheel_kg": {row["size"]: mass_kg(row) for row in wheels},
    }


def _curd_c(twin: "Twin", size: "str | None") -> float:
    rows = sized(twin, size)
    if not rows:
        return twin["vat"]["milk_c"]
    heavy = [
        row["count"] * sum(layers(row["radius_m"], row["half_m"])[1]) for row in rows
    ]
    return sum(rows[i]["temp_c"] * heavy[i] for i in range(len(rows))) / sum(heavy)


def _wheel_kg(twin: "Twin", size: "str | None") -> float:
    wheels = of_size(twin, size)
    return mass_kg(wheels) if wheels else 0.0


def _moisture(twin: "Twin", size: "str | None") -> float:
    wheels = of_size(twin, size)
    return moisture_frac(wheels) if wheels else course_row(twin)["moisture_frac"]


def _salt(twin: "Twin", size: "str | None") -> float:
    wheels = of_size(twin, size)
    return salt_frac(wheels) if wheels else 0.0


def _room_c(twin: "Twin") -> float:
    place = "press_room_c" if twin["where"] == "wheels" else "room_c"
    return twin["plant"][place]


TRUE: "dict[str, Callable[[Twin, str | None], float]]" = {
    "milk_volume_l": lambda twin, size: twin["milk"]["volume_l"],
    "milk_mass_kg": lambda twin, size: milk_kg(twin["milk"]),
    "milk_age_h": lambda twin, size: (
        twin["milk"]["age_h"] + (twin["now_ms"] - twin["start_ms"]) / H_MS
    ),
    "milk_temp_c": lambda twin, size: twin["vat"]["milk_c"],
    "air_space_temp_c": lambda twin, size: twin["vat"]["air_c"],
    "jacket_temp_c": lambda twin, size: twin["vat"]["jacket_c"],
    "indicator_temp_c": lambda twin, size: twin["vat"]["milk_c"],
    "recorder_temp_c": lambda twin, size: (
        twin["vat"]["milk_c"] + twin["plant"]["recorder_off_k"]
    ),
    "curd_temp_c": _curd_c,
    "water_temp_c": lambda twin, size: twin["water_c"],
    "room_temp_c": lambda twin, size: _room_c(twin),
    "ph": lambda twin, size: twin["acid"]["ph"],
    "titratable_acidity_frac": lambda twin, size: buffer.titratable_frac(
        twin["acid"], milk_kg(twin["milk"])
    ),
    "fat_frac": lambda twin, size: twin["milk"]["fat_frac"],
    "snf_frac": lambda twin, size: twin["milk"]["snf_frac"],
    "protein_frac": lambda twin, size: twin["milk"]["protein_frac"],
    "whey_drained_l": lambda twin, size: twin["drained_l"],
    "water_added_l": lambda twin, size: twin["washed_l"],
    "bed_load_kg": lambda twin, size: twin["bed_kg"],
    "press_gauge_kpa": lambda twin, size: (
        twin["gauge_kpa"].get(size, 0.0)
        if size
        else max(list(twin["gauge_kpa"].values()) or [0.0])
    ),
    "wheel_mass_kg": _wheel_kg,
    "brine_temp_c": lambda twin, size: twin["plant"]["brine_c"],
    "brine_salt_frac": lambda twin, size: twin["plant"]["brine_frac"],
    "brine_ph": lambda twin, size: twin["plant"]["brine_ph"],
    "store_temp_c": lambda twin, size: twin["plant"]["store_c"],
    "store_humidity_frac": lambda twin, size: twin["plant"]["store_humidity_frac"],
    "cheese_moisture_frac": _moisture,
    "cheese_salt_frac": _salt,
    "cheese_ph": lambda twin, size: twin["acid"]["ph"],
}
