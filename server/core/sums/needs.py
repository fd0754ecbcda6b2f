"""What a sum cannot do without, told without loading its work.

In the morning most sums that figures ask still lack something, and a slow phone waits
longest for the work of a sum and its formulas to be read. So of these sums what has no
default stands here; a test holds it against their rows.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping

    # The input that chooses, what is taken when nobody does, what each way needs.
    Ways = tuple[str, str | None, Mapping[str, tuple[str, ...]]]


NEEDS: "dict[str, tuple[str, ...]]" = {
    "starter_packs": ("milk_l", "pack_units", "dose_units_per_l"),
    "calcium_chloride": ("milk_kg", "form"),
    "rennet_dose": ("milk_l",),
    "cut_time": ("floc_s",),
    "heat_time": ("vat_temp_c", "target_temp_c"),
    "wash_water": ("vat_kg", "vat_temp_c", "target_temp_c", "water_temp_c"),
    "wash_temp": ("vat_kg", "vat_temp_c", "target_temp_c", "water_kg"),
    "bed_weights": ("length_m", "width_m"),
    "press_programme": ("bore_m", "moulds"),
    "brine_time": ("diameter_m", "height_m", "brine_salt_frac"),
}

# Of those that can be worked out in several ways.
WAYS: "dict[str, Ways]" = {
    "calcium_chloride": (
        "form",
        None,
        {"solution": ("solution_frac",)},
    ),
    "rennet_dose": (
        "strength_kind",
        "imcu",
        {
            "imcu": ("strength_imcu_per_ml",),
            "soxhlet": ("strength_soxhlet",),
            "imcu_powder": ("strength_imcu_per_g",),
            "soxhlet_powder": ("strength_soxhlet",),
            "tablet": ("tablet_sets_l",),
        },
    ),
    "heat_time": (
        "heating",
        "jacket",
        {"jacket": ("jacket_temp_c", "tau_s"), "power": ("contents_kg", "power_kw")},
    ),
}


def lacking_for(key: str, values: "Mapping[str, object]") -> "list[str]":
    """Return what the chosen way of a sum needs and was not given.

    Args:
        key: key of a sum of WAYS.
        values: {input name: its value, or None}, what chooses the way among them.
    """
    chooser, _, ways = WAYS[key]
    names = ways.get(str(values[chooser]), ())
    return [name for name in names if values[name] is None]
