"""What a cheese is made of, and which classes of a standard its figures fall in."""

from ...numbers.bounds import require_above, require_within
from ...numbers.refused import Refused, require

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

# Binary fractions cannot hold .253 or .55, so a cheese exactly on a limit may come
# out a hair under it. This is far below the last digit of any measurement.
NOISE = 1e-12


def fdm_frac(fat_frac: float, moisture_frac: float) -> float:
    """Return the fat in the dry matter.

    Args:
        fat_frac: fat of the cheese [0..1].
        moisture_frac: moisture of the cheese [0..1]; below 1.

    Returns:
        Fat over dry matter [0..1].

    Raises:
        Refused: an argument outside its range, or more fat than dry matter.

    Source: definition.
    Check: 25.3 % fat at 45 % moisture is 46 %.

    >>> fdm_frac(0.253, 0.45)
    0.46
    """
    _require_cheese(fat_frac, moisture_frac)
    return fat_frac / (1 - moisture_frac)


def mnfs_frac(moisture_frac: float, fat_frac: float) -> float:
    """Return the moisture in the non-fat substance, which sets the firmness.

    Args:
        moisture_frac: moisture of the cheese [0..1].
        fat_frac: fat of the cheese [0..1]; below 1.

    Returns:
        Moisture over all that is not fat [0..1].

    Raises:
        Refused: an argument outside its range, or more fat than dry matter.

    Source: definition.
    Check: 45 % moisture and 25.3 % fat is 60.2 %.

    >>> mnfs_frac(0.45, 0.253)
    0.602
    """
    _require_cheese(fat_frac, moisture_frac)
    return moisture_frac / (1 - fat_frac)


def salt_in_moisture_frac(salt_frac: float, moisture_frac: float) -> float:
    """Return the salt in the moisture.

    Args:
        salt_frac: salt of the cheese [0..0.2].
        moisture_frac: moisture of the cheese [0..1]; above 0.

    Returns:
        Salt over moisture [0..1].

    Raises:
        Refused: an argument outside its range.

    Source: definition.
    Check: 1.8 % salt in 42 % moisture is 4.29 %.

    >>> salt_in_moisture_frac(0.018, 0.42)
    0.0429
    """
    require_within("salt_frac", salt_frac, 0, 0.2)
    require_above("moisture_frac", moisture_frac, 0)
    require_within("moisture_frac", moisture_frac, 0, 1)
    return salt_frac / moisture_frac


def fat_for_fdm_frac(wanted_fdm_frac: float, moisture_frac: float) -> float:
    """Return the fat of a cheese from its fat in the dry matter.

    Args:
        wanted_fdm_frac: fat in the dry matter [0..1].
        moisture_frac: moisture of the cheese [0..1].

    Returns:
        Fat of the cheese [0..1].

    Raises:
        Refused: an argument outside its range.

    Source: definition.
    Check: 48 % at 42 % moisture is 27.84 %.

    >>> fat_for_fdm_frac(0.48, 0.42)
    0.2784
    """
    require_within("wanted_fdm_frac", wanted_fdm_frac, 0, 1)
    require_within("moisture_frac", moisture_frac, 0, 1)
    return wanted_fdm_frac * (1 - moisture_frac)


def _require_cheese(fat_frac: float, moisture_frac: float) -> None:
    require_within("fat_frac", fat_frac, 0, 1)
    require_within("moisture_frac", moisture_frac, 0, 1)
    if fat_frac + moisture_frac > 1 + NOISE:
        raise Refused("more_than_cheese", "fat_frac", fat_frac, 1 - moisture_frac)
    require(fat_frac != 1, "no_cheese", "fat_frac", fat_frac)
    require(moisture_frac != 1, "no_cheese", "moisture_frac", moisture_frac)


def classes(value_frac: float, rows: "list[dict[str, Any]]") -> "dict[str, Any]":
    """Return every class of a table that a figure falls in; classes may overlap.

    Args:
        value_frac: moisture in the non-fat substance, or fat in the dry matter
            [0..1].
        rows: list of {"class", and any of "from_frac", "to_frac" (both counted
            in), "above_frac", "below_frac" (not counted in)}, each a figure
            {"value", "status"}.

    Returns:
        {"verdict", "classes"}: "assessed" with the classes in the table's order,
        or "not_assessed" with none when the table is known from memory only.

    Raises:
        Refused: a value outside 0 to 1.

    Source: the table given.
    Check: 55 % is both hard and semi-hard in the older Codex table.

    >>> rows = [{"class": "hard", "to_frac": {"value": 0.56, "status": "read"}}]
    >>> classes(0.55, rows)["classes"]
    ['hard']
    """
    require_within("value_frac", value_frac, 0, 1)
    met = []
    for row in rows:
        bounds = [row[key] for key in row if key != "class"]
        if any(figure["status"] == "memory" for figure in bounds):
            return {"verdict": "not_assessed", "classes": []}
        if _is_in_class(value_frac, row):
            met.append(row["class"])
    return {"verdict": "assessed", "classes": met}


def _is_in_class(value: float, row: "dict[str, Any]") -> bool:
    if "from_frac" in row and value < row["from_frac"]["value"] - NOISE:
        return False
    if "to_frac" in row and value > row["to_frac"]["value"] + NOISE:
        return False
    if "above_frac" in row and value <= row["above_frac"]["value"] + NOISE:
        return False
    return not ("below_frac" in row and value >= row["below_frac"]["value"] - NOISE)
