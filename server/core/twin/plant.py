"""The equipment and the milk of a twin: usual figures, what is possible, refusals.

All figures are invented for a creamery of this size, but where a source is named.
"""

from ..numbers.bounds import require_within
from ..numbers.refused import Refused, require

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

# name: (usual, least, most).
EQUIPMENT = {
    "vat_l": (1500.0, 20.0, 50000.0),
    # Water in the jacket and the steel around it, as water.
    "jacket_kg": (70.0, 5.0, 5000.0),
    # Jacket to a full vat; supply to jacket (flow × heat capacity).
    "jacket_w_k": (1900.0, 50.0, 60000.0),
    "supply_w_k": (4200.0, 50.0, 60000.0),
    "hot_c": (86.0, 40.0, 140.0),
    "cold_c": (11.0, 0.0, 30.0),
    "loss_w_k": (8.0, 0.0, 1000.0),
    "air_heat_w": (1500.0, 0.0, 50000.0),
    "air_j_k": (16000.0, 2000.0, 500000.0),
    "air_milk_w_k": (9.0, 0.1, 200.0),
    "air_room_w_k": (11.0, 0.1, 200.0),
    "room_c": (19.5, -10.0, 45.0),
    "press_room_c": (20.0, -10.0, 45.0),
    "water_k_min": (1.6, 0.0, 60.0),
    "bore_m": (0.08, 0.01, 0.5),
    "lever_ratio": (2.0, 0.5, 50.0),
    "brine_kg": (1400.0, 10.0, 100000.0),
    "brine_frac": (0.203, 0.0, 0.264),
    "brine_c": (12.6, 0.0, 35.0),
    "brine_ph": (5.2, 3.0, 8.0),
    "store_c": (12.5, -5.0, 35.0),
    "store_humidity_frac": (0.875, 0.1, 1.0),
    "rennet_imcu_per_ml": (200.0, 5.0, 2000.0),
    "starter_strength": (1.0, 0.0, 10.0),
    "calcium_g_per_ml": (0.43, 0.01, 1.0),
    "recorder_off_k": (-0.2, -20.0, 20.0),
}

MILK = {
    "volume_l": (1000.0, 1.0, 50000.0),
    "fat_frac": (0.035, 0.0, 0.12),
    "protein_frac": (0.0335, 0.015, 0.08),
    "snf_frac": (0.0885, 0.05, 0.15),
    "temp_c": (4.0, 0.0, 40.0),
    "ph": (6.6, 6.2, 7.0),
    "age_h": (14.0, 0.0, 240.0),
    "somatic_per_ml": (150000.0, 0.0, 5000000.0),
    # Share of the starter's growth that residues or phage take away.
    "inhibitor_frac": (0.0, 0.0, 1.0),
    "drug_residue": (0.0, 0.0, 1.0),
}

INSTRUMENT = {
    "offset": (0.0, -1e6, 1e6),
    "noise": (0.0, 0.0, 1e6),
    "step": (0.0, 0.0, 1e6),
    "drift_per_day": (0.0, -1e6, 1e6),
}

# (noise, resolution) of what hangs in a make room, in the quantity's own unit.
INSTRUMENTS = {
    "milk_volume_l": (1.5, 1.0),
    "milk_mass_kg": (1.5, 0.5),
    "milk_age_h": (0.0, 0.5),
    "milk_temp_c": (0.08, 0.1),
    "air_space_temp_c": (0.15, 0.1),
    "jacket_temp_c": (0.3, 0.5),
    "indicator_temp_c": (0.05, 0.1),
    "recorder_temp_c": (0.05, 0.1),
    "curd_temp_c": (0.1, 0.1),
    "water_temp_c": (0.2, 0.1),
    "room_temp_c": (0.2, 0.1),
    "ph": (0.015, 0.01),
    "titratable_acidity_frac": (0.00003, 0.0001),
    "fat_frac": (0.0003, 0.0001),
    "snf_frac": (0.0003, 0.0001),
    "protein_frac": (0.0003, 0.0001),
    "whey_drained_l": (2.0, 1.0),
    "water_added_l": (1.0, 1.0),
    "bed_load_kg": (0.0, 0.5),
    "press_gauge_kpa": (1.0, 1.0),
    "wheel_mass_kg": (0.004, 0.01),
    "brine_temp_c": (0.15, 0.1),
    "brine_salt_frac": (0.001, 0.0001),
    "brine_ph": (0.015, 0.01),
    "store_temp_c": (0.08, 0.1),
    "store_humidity_frac": (0.004, 0.001),
}


def complete(
    given: "dict[str, Any]", table: "dict[str, tuple[float, float, float]]"
) -> "dict[str, Any]":
    """Return figures with the usual ones where none are given.

    Args:
        given: some or all of the table's figures by name.
        table: EQUIPMENT, MILK or INSTRUMENT.

    Raises:
        Refused: a name that the table has not, no number, or an impossible one.
    """
    require(isinstance(given, dict), "not_a_mapping", "twin", given)
    for name in given:
        if name not in table:
            raise Refused("unknown_input", name, given[name])
    whole = {}
    for name in table:
        usual, low, high = table[name]
        whole[name] = given.get(name, usual)
        require_within(name, whole[name], low, high)
    return whole


def equipment(given: "dict[str, float]", volume_l: float) -> "dict[str, float]":
    """Return the whole equipment; the vat must hold the milk.

    Args:
        given: figures of EQUIPMENT by name.
        volume_l: milk that comes into the vat [L].

    Raises:
        Refused: as `complete`, or a vat too small.
    """
    whole = complete(given, EQUIPMENT)
    require(volume_l <= whole["vat_l"], "above", "volume_l", volume_l, whole["vat_l"])
    return whole


def instruments(given: "dict[str, dict[str, float]]") -> "dict[str, Any]":
    """Return all instruments, the usual ones where none are given.

    Args:
        given: figures of INSTRUMENT by the quantity that is read.

    Raises:
        Refused: a quantity that no instrument reads, or as `complete`.
    """
    found = {}
    for name in given:
        if name not in INSTRUMENTS:
            raise Refused("unknown_input", name, None)
    for name in INSTRUMENTS:
        noise, step = INSTRUMENTS[name]
        own = {"noise": noise, "step": step}
        own.update(given.get(name, {}))
        found[name] = complete(own, INSTRUMENT)
    return found
