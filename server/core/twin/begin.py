"""How a twin begins: milk in the tank, equipment, instruments and a seed."""

from ..numbers.bounds import require_count
from . import plant
from .chance import stream
from .laws.vat import WATER_J_KG_K

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.twin import Curd, Twin

MOST_SEED = 2147483647
MILK_KG_L = 1.031  # kg/L, 10 °C, 3.5 % fat. Source: Goff, density of dairy products
SOLIDS_J_KG_K = 1600.0
# Of the milk's protein casein, and of its fat, what curd keeps; minerals with it.
CASEIN_FRAC, FAT_KEPT, MINERALS_FRAC = 0.775, 0.92, 0.0035
ASH_FRAC = 0.0072
LATEST_MS = 4102444800000  # the year 2100


def begin(
    equipment: "dict[str, float]",
    milk: "dict[str, Any]",
    instruments: "dict[str, dict[str, float]]",
    seed: int,
    at_ms: int,
) -> "Twin":
    """Return a twin with its milk just come.

    Args:
        equipment: figures of `plant.EQUIPMENT` by name; usual ones where left out.
        milk: figures of `plant.MILK`, likewise.
        instruments: figures of `plant.INSTRUMENT` by quantity, likewise.
        seed: whole number that noise is drawn from.
        at_ms: when [ms].

    Raises:
        Refused: a figure that cannot be, with its name, value and limit.
    """
    require_count("seed", seed, 0, MOST_SEED)
    require_count("at_ms", at_ms, 0, LATEST_MS)
    whole = plant.complete(milk, plant.MILK)
    has = plant.equipment(equipment, whole["volume_l"])
    mass_kg = milk_kg(whole)
    curd = _contents(whole, mass_kg)
    return {
        "now_ms": at_ms,
        "start_ms": at_ms,
        "seed": seed,
        "plant": has,
        "milk": whole,
        "vat": {
            "milk_c": whole["temp_c"],
            "jacket_c": whole["temp_c"],
            "air_c": has["room_c"],
            "cp_j_k": heat_j_k(curd),
            "supply": "off",
            "aim_c": None,
            "air_aim_c": None,
        },
        "acid": {
            "ph": whole["ph"],
            "cells": 0.0,
            "ready": 0.0,
            # Casein buffers, so rich milk sours slower: against 3.35 % protein.
            "casein_mol": mass_kg * whole["protein_frac"] / 0.0335,
            "soluble_mol": mass_kg,
            "lactate_mol": 0.0,
        },
        "clot": {
            "enzyme": 0.0,
            "calcium_g_kg": 0.0,
            "cut_frac": 0.0,
            "clump": 1.0,
            "firm_frac": 0.0,
        },
        "curd": curd,
        "wheels": [],
        "where": "tank",
        "water_c": has["cold_c"],
        "water_aim_c": None,
        "drained_l": 0.0,
        "washed_l": 0.0,
        "bed_kg": 0.0,
        "gauge_kpa": {},
        "instruments": plant.instruments(instruments),
        "streams": {
            name: stream(seed, "reading " + name) for name in plant.INSTRUMENTS
        },
    }


def milk_kg(milk: "dict[str, Any]") -> float:
    """Return the mass of the milk that came [kg].

    Args:
        milk: figures of `plant.MILK`.
    """
    mass_kg: float = milk["volume_l"] * MILK_KG_L
    return mass_kg


def heat_j_k(curd: "Curd") -> float:
    """Return the heat that a kelvin more takes into the contents.

    Args:
        curd: the contents.
    """
    dry_kg = curd["solids_kg"] + curd["lactose_kg"] + curd["whey_lactose_kg"]
    wet_kg = curd["water_kg"] + curd["whey_kg"]
    return max(1.0, wet_kg * WATER_J_KG_K + dry_kg * SOLIDS_J_KG_K)


def _contents(milk: "dict[str, Any]", mass_kg: float) -> "Curd":
    """Return the milk as one grain that holds everything: cutting lets whey out."""
    # Milk of sick udders has less casein and lets more of it go.
    casein = CASEIN_FRAC * (1.0 - 0.03 * milk["somatic_per_ml"] / 1e6)
    solids_frac = milk["protein_frac"] * casein + milk["fat_frac"] * FAT_KEPT
    lactose_frac = milk["snf_frac"] - milk["protein_frac"] - ASH_FRAC
    return {
        "solids_kg": mass_kg * (solids_frac + MINERALS_FRAC),
        "water_kg": mass_kg * (1.0 - milk["fat_frac"] - milk["snf_frac"]),
        "whey_kg": 0.0,
        "lactose_kg": mass_kg * max(0.0, lactose_frac),
        "whey_lactose_kg": 0.0,
        "salt_kg": 0.0,
        "grain_mm": None,
    }
