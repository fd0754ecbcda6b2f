"""What stands on the label of a bottle or pack, and which bottle it stands on.

Rules first.
1. The figures of a label belong to the bottle that its lot names. While no lot is
   entered they are taken for whatever bottle is used.
2. Another lot is another bottle: what stood on the last one's label is taken out, and
   has to be read off the new one.
3. What another make knows of a lot need not be read again, see `known.bottle`.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

# By ingredient: the key of its lot, and the keys of what its label says.
LABELS = {
    "rennet": (
        "rennet_lot",
        (
            "strength_kind",
            "strength_imcu_per_ml",
            "strength_imcu_per_g",
            "strength_soxhlet",
            "tablet_sets_l",
        ),
    ),
    "calcium_chloride": (
        "calcium_lot",
        ("form", "solution_frac", "solution_density_kg_l"),
    ),
    "starter": ("starter_lot", ("pack_units", "dose_units_per_l", "pack_g")),
}


def label_keys(lot_key: str) -> "tuple[str, ...]":
    """Return the keys of a label, or none where a key names no lot.

    Args:
        lot_key: key of equipment.
    """
    for key, names in LABELS.values():
        if key == lot_key:
            return names
    return ()


def is_same_lot(one: "Any", other: "Any") -> bool:
    """Tell whether two lots are one: however spaced, in capitals or not.

    Args:
        one: a lot as it was written.
        other: another.
    """
    return _plain(one) == _plain(other)


def _plain(lot: "Any") -> str:
    return "".join(str(lot).lower().split())
