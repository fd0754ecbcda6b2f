"""What a cheese is made of, and whether its figures meet a standard of identity.

The standards come in as data. Each figure of a rule carries a status; one known
only from memory, like one that the maker has not measured, is "not_assessed" and
never passes or fails a cheese. A verdict says that figures meet or do not meet
the named rule, and nothing more.
"""

from ...numbers.bounds import require_above, require_number, require_within
from ...numbers.refused import Refused, require

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

# Binary fractions cannot hold .253 or .55, so a cheese exactly on a limit may come
# out a hair under it. This is far below the last digit of any measurement.
_NOISE = 1e-12


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
    if fat_frac + moisture_frac > 1 + _NOISE:
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
    found = []
    for row in rows:
        bounds = [row[key] for key in row if key != "class"]
        if any(figure["status"] == "memory" for figure in bounds):
            return {"verdict": "not_assessed", "classes": []}
        if _is_in_class(value_frac, row):
            found.append(row["class"])
    return {"verdict": "assessed", "classes": found}


def _is_in_class(value: float, row: "dict[str, Any]") -> bool:
    if "from_frac" in row and value < row["from_frac"]["value"] - _NOISE:
        return False
    if "to_frac" in row and value > row["to_frac"]["value"] + _NOISE:
        return False
    if "above_frac" in row and value <= row["above_frac"]["value"] + _NOISE:
        return False
    return not ("below_frac" in row and value >= row["below_frac"]["value"] - _NOISE)


# (figure of a rule, what is measured, whether the value must be at most "max", at
# least "min", more than "above" or less than "below" the limit), in the order shown.
LIMITS = [
    ("moisture_max_frac", "moisture_frac", "max"),
    ("moisture_above_frac", "moisture_frac", "above"),
    ("fdm_min_frac", "fdm_frac", "min"),
    ("fdm_max_frac", "fdm_frac", "max"),
    ("fdm_below_frac", "fdm_frac", "below"),
    ("fat_min_frac", "fat_frac", "min"),
    ("fat_below_frac", "fat_frac", "below"),
]


def check_identity(
    cheese: "dict[str, Any]", rule: "dict[str, Any]"
) -> "dict[str, Any]":
    """Return whether a cheese's figures meet one row of a standard of identity.

    Args:
        cheese: {"moisture_frac", "fat_frac", "is_pasteurised", "cured_days"}; any
            may be missing or None: not measured, not known. Cured days are whole
            days that count, see the curing module.
        rule: {"figures": {name of LIMITS: figure}, "milk": figure, "cure",
            "dry_matter"}; the last three may be missing. A figure is {"value",
            "status"}; "milk" says "any", "raw_if_cured" or "pasteurised_only".

    Returns:
        {"verdict", "figures"}: "meets", "does_not_meet" or "not_assessed", and
        for each limit {"key", "value", "limit", "sense", "status", "verdict"}: a
        figure keeps a "min" or "max", lies "above" or "below", or "is" a word.
        One limit not met decides; else one not assessed does.

    Raises:
        Refused: a measured figure that cannot be true.

    Source: the rule given.
    Valid: figures from one laboratory sample of the finished cheese.
    Check: 45.0 % moisture and 25.3 % fat meets Gouda of 21 CFR 133.142.

    >>> rule = {"figures": {"moisture_max_frac": {"value": 0.45, "status": "read"}}}
    >>> check_identity({"moisture_frac": 0.451}, rule)["verdict"]
    'does_not_meet'
    """
    measured = _measured(cheese)
    found = []
    for key, quantity, sense in LIMITS:
        if key in rule["figures"]:
            limit = rule["figures"][key]
            found.append(_compare(key, measured[quantity], limit, sense))
    if rule.get("dry_matter"):
        found.append(_dry_matter(measured, rule["dry_matter"]))
    if rule.get("milk"):
        found.append(_milk(cheese.get("is_pasteurised"), rule["milk"]))
    if rule.get("cure"):
        found.append(_cure(cheese, rule["cure"]))
    verdicts = [figure["verdict"] for figure in found]
    verdict = "meets"
    if "does_not_meet" in verdicts:
        verdict = "does_not_meet"
    elif "not_assessed" in verdicts or not verdicts:
        verdict = "not_assessed"
    return {"verdict": verdict, "figures": found}


def _measured(cheese: "dict[str, Any]") -> "dict[str, Any]":
    moisture, fat = cheese.get("moisture_frac"), cheese.get("fat_frac")
    for name, value in (("moisture_frac", moisture), ("fat_frac", fat)):
        if value is not None:
            require_within(name, value, 0, 1)
    fdm = None
    if moisture is not None and fat is not None:
        fdm = fdm_frac(fat, moisture)
    return {"moisture_frac": moisture, "fat_frac": fat, "fdm_frac": fdm}


def _compare(
    key: str, value: "float | None", limit: "dict[str, Any]", sense: str
) -> "dict[str, Any]":
    verdict = "not_assessed"
    if value is not None and limit["status"] != "memory":
        edge = limit["value"]
        met = {
            "max": value <= edge + _NOISE,
            "min": value >= edge - _NOISE,
            "above": value > edge + _NOISE,
            "below": value < edge - _NOISE,
        }[sense]
        verdict = "meets" if met else "does_not_meet"
    return _line(key, value, limit, sense, verdict)


def _line(
    key: str, value: object, limit: "dict[str, Any]", sense: str, verdict: str
) -> "dict[str, Any]":
    return {
        "key": key,
        "value": value,
        "limit": limit["value"],
        "sense": sense,
        "status": limit["status"],
        "verdict": verdict,
    }


def _dry_matter(
    measured: "dict[str, Any]", rows: "list[dict[str, Any]]"
) -> "dict[str, Any]":
    """Judge the least dry matter that a fat in the dry matter asks for."""
    key, fdm = "dry_matter_min_frac", measured["fdm_frac"]
    for row in rows if fdm is not None else []:
        below = row.get("fdm_below_frac")
        if fdm >= row["fdm_from_frac"]["value"] - _NOISE and (
            below is None or fdm < below["value"] - _NOISE
        ):
            known = [row["fdm_from_frac"], row[key]] + ([below] if below else [])
            from_memory = any(figure["status"] == "memory" for figure in known)
            status = "memory" if from_memory else row[key]["status"]
            limit = {"value": row[key]["value"], "status": status}
            return _compare(key, 1 - measured["moisture_frac"], limit, "min")
    nothing = {"value": None, "status": None}
    return _line(key, None, nothing, "min", "not_assessed")


def _milk(is_pasteurised: "bool | None", rule: "dict[str, Any]") -> "dict[str, Any]":
    verdict = "meets"
    if rule["status"] == "memory":
        verdict = "not_assessed"
    elif rule["value"] == "pasteurised_only" and not is_pasteurised:
        verdict = "not_assessed" if is_pasteurised is None else "does_not_meet"
    return _line("milk", is_pasteurised, rule, "is", verdict)


def _cure(cheese: "dict[str, Any]", rule: "dict[str, Any]") -> "dict[str, Any]":
    days, is_pasteurised = cheese.get("cured_days"), cheese.get("is_pasteurised")
    limit = rule["days"]
    if days is not None:
        require_number("cured_days", days)
    if rule["applies_to"] == "raw" and is_pasteurised:
        return _line("cured_days", days, limit, "min", "meets")
    line = _compare("cured_days", days, limit, "min")
    # Too few days fail a raw cheese only; of which milk it is must be known.
    unknown_milk = rule["applies_to"] == "raw" and is_pasteurised is None
    if unknown_milk and line["verdict"] == "does_not_meet":
        line["verdict"] = "not_assessed"
    return line
