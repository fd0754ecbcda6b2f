"""What people do to wheels, and to the curd that becomes them."""

import math

from ..numbers.refused import Refused, require
from .laws import pressing
from .truth import of_size, sized

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.twin import Twin


def mould(twin: "Twin", done: "dict[str, Any]") -> None:
    """Fill all moulds with all curd, by the mass that each wheel is to have.

    Args:
        twin: the make; it changes.
        done: see `acts.ACTS`.
    """
    moulds = [row for row in done.get("moulds") or [] if row["count"] > 0]
    require(bool(moulds), "too_few", "moulds", 0, 1)
    curd, at_ms = twin["curd"], twin["now_ms"]
    whole = sum(row["count"] * row["mould"]["wheel_kg"]["value"] for row in moulds)
    for row in moulds:
        share = row["mould"]["wheel_kg"]["value"] / whole
        wheels = pressing.fill(
            row["mould"],
            row["count"],
            curd["solids_kg"] * share,
            curd["water_kg"] * share,
            twin["vat"]["milk_c"],
            at_ms,
        )
        parts = len(wheels["salt_kg"])
        wheels["salt_kg"] = [curd["salt_kg"] * share / parts] * parts
        twin["wheels"].append(wheels)
    curd["salt_kg"] = 0.0
    twin["bed_kg"] = 0.0
    twin["where"] = "wheels"


def press(twin: "Twin", done: "dict[str, Any]") -> None:
    """Load the press of a size: gauge, bore and lever make a force, the face shares.

    Args:
        twin: the make; it changes.
        done: see `acts.ACTS`.
    """
    has, wheels = twin["plant"], of_size(twin, done.get("size"))
    if wheels is None:
        raise Refused("missing", "size", done.get("size"))
    bore_m2 = math.pi * has["bore_m"] ** 2 / 4.0
    force_n = done["gauge_kpa"] * 1000.0 * bore_m2 * has["lever_ratio"]
    wheels["pressure_pa"] = force_n / (math.pi * wheels["radius_m"] ** 2)
    twin["gauge_kpa"][wheels["size"]] = done["gauge_kpa"]


def release(twin: "Twin", done: "dict[str, Any]") -> None:
    """Take the press off all wheels.

    Args:
        twin: the make; it changes.
        done: see `acts.ACTS`.
    """
    twin["gauge_kpa"] = {}
    for wheels in twin["wheels"]:
        wheels["pressure_pa"] = 0.0


def turn(twin: "Twin", done: "dict[str, Any]") -> None:
    """Turn all wheels.

    Args:
        twin: the make; it changes.
        done: see `acts.ACTS`.
    """
    for wheels in twin["wheels"]:
        wheels["turned_ms"] = twin["now_ms"]


def brine(twin: "Twin", done: "dict[str, Any]") -> None:
    """Lay the wheels of a size into the brine, or all.

    Args:
        twin: the make; it changes.
        done: see `acts.ACTS`.
    """
    _put(twin, done.get("size"), "brine")


def shelf(twin: "Twin", done: "dict[str, Any]") -> None:
    """Stand the wheels of a size on the shelf, or all.

    Args:
        twin: the make; it changes.
        done: see `acts.ACTS`.
    """
    _put(twin, done.get("size"), "store")


def _put(twin: "Twin", size: "str | None", place: "Any") -> None:
    for wheels in sized(twin, size):
        wheels["place"] = place
        wheels["pressure_pa"] = 0.0


def coat(twin: "Twin", done: "dict[str, Any]") -> None:
    """Coat all wheels.

    Args:
        twin: the make; it changes.
        done: see `acts.ACTS`.
    """
    for wheels in twin["wheels"]:
        wheels["coated"] = True
