"""The one table of what a make can know: which look-up serves which input.

An input's name has one meaning in all sums. Where two sums would ask for two things
under one name, one of them names its own: nothing here asks which sum it is for.

A group of look-ups is loaded when one of its inputs is first asked for: the first
View of a make waits for it on a slow phone, and asks for few.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from server.shapes.core.state import KnownValue, Scene

    LookUps = Mapping[str, Callable[[Scene], KnownValue | None]]


def _milk() -> "LookUps":
    from .vat import milk

    return milk.KNOWN


def _temps() -> "LookUps":
    from .vat import temps

    return temps.KNOWN


def _heat() -> "LookUps":
    from .vat import heat

    return heat.KNOWN


def _hold() -> "LookUps":
    from .vat import hold

    return hold.KNOWN


def _set_of_curd() -> "LookUps":
    from .vat import set as set_of_curd

    return set_of_curd.KNOWN


def _settings() -> "LookUps":
    from .vat import settings

    return settings.KNOWN


def _acid() -> "LookUps":
    from .vat import acid

    return acid.KNOWN


def _wash() -> "LookUps":
    from .vat import wash

    return wash.KNOWN


def _moulds() -> "LookUps":
    from .wheel import moulds

    return moulds.KNOWN


def _brine() -> "LookUps":
    from .wheel import brine

    return brine.KNOWN


def _lab() -> "LookUps":
    from .wheel import lab

    return lab.KNOWN


def _store() -> "LookUps":
    from .wheel import store

    return store.KNOWN


# The inputs of each group.
PARTS: "tuple[tuple[Callable[[], LookUps], tuple[str, ...]], ...]" = (
    (
        _milk,
        (
            "jurisdiction",
            "milk_l",
            "milk_kg",
            "weighed_kg",
            "fat_frac",
            "fat_tested_frac",
            "snf_frac",
            "protein_frac",
            "milk_temp_c",
            "gap_max_s",
            "phosphatase",
            "milk_age_h",
            "drug_test",
            "acidity_frac",
        ),
    ),
    (
        _temps,
        (
            "vat_temps",
            "temps_start_ms",
            "temps_now_min",
            "vat_temp_c",
            "vat_now_c",
            "target_temp_c",
            "due_s",
        ),
    ),
    (
        _heat,
        (
            "jacket_temp_c",
            "tau_s",
        ),
    ),
    (
        _hold,
        (
            "thermometer",
            "hold_over",
            "hold_begun_ms",
            "milk_temps",
            "chart_date",
            "chart_plant_name",
            "chart_product_name",
            "chart_product_amount",
            "chart_hold_extent",
            "chart_indicating_reading",
            "chart_airspace_reading",
            "chart_operator_initials",
        ),
    ),
    (
        _set_of_curd,
        (
            "floc_s",
            "floc_factor",
            "dilution_times",
            "target_floc_s",
            "tested_every_s",
            "rennet_ml",
            "starter_frac",
            "dose_g_per_kg",
            "dose_ml_per_t",
        ),
    ),
    (
        _settings,
        (
            "settings",
            "given_imcu_per_l",
            "dose_imcu_per_l",
        ),
    ),
    (
        _acid,
        (
            "ph_readings",
            "curve",
            "targets",
            "curd_temps",
            "curve_start_ms",
            "curve_now_min",
        ),
    ),
    (
        _wash,
        (
            "contents_kg",
            "vat_kg",
            "drained_before_kg",
            "water_in_kg",
            "water_added_kg",
            "added_kg",
            "water_temp_c",
            "water_planned_c",
            "water_kg",
            "loss_k",
            "drain_frac",
            "washes",
            "aqueous_kg",
        ),
    ),
    (
        _moulds,
        (
            "sizes",
            "size_names",
            "moulds",
            "diameter_m",
            "height_m",
            "large_kg",
            "small_kg",
            "share_large_frac",
            "curd_kg",
            "gauge_kpa",
            "laid_on_kg",
        ),
    ),
    (
        _brine,
        (
            "brine_salt_frac",
            "brine_temp_c",
            "brine_ph",
            "brine_kg",
            "brined_s",
            "diffusion_m2_s",
            "wanted_salt_frac",
            "water_salt_ratio",
        ),
    ),
    (
        _lab,
        (
            "cheese_kg",
            "cheese_moisture_frac",
            "cheese_fat_frac",
            "cheese_salt_frac",
            "cheese_ph",
            "start_kg",
            "now_kg",
            "days",
            "milk_is",
            "milk_was",
            "made_from",
        ),
    ),
    (
        _store,
        (
            "store_temps",
            "curing_temps",
            "store_thermometer",
            "curing_start_ms",
            "now_min",
            "cured_days",
            "curing_met_ms",
            "store_own_days",
            "store_begun_ms",
        ),
    ),
)


def joined(
    parts: "tuple[tuple[Callable[[], LookUps], tuple[str, ...]], ...]",
) -> "dict[str, Callable[[], LookUps]]":
    """Return by the name of each input what loads the group that looks it up.

    Args:
        parts: as PARTS.

    Raises:
        KeyError: two of them look up one input.
    """
    table: "dict[str, Callable[[], LookUps]]" = {}
    for load, names in parts:
        for name in names:
            if name in table:
                raise KeyError(name)
            table[name] = load
    return table


GROUP_OF = joined(PARTS)


def look_up_of(name: str) -> "Callable[[Scene], KnownValue | None] | None":
    """Return the look-up that serves an input, or None where a make cannot know it.

    Args:
        name: the input's name.
    """
    load = GROUP_OF.get(name)
    return None if load is None else load()[name]
