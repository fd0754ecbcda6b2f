"""Whether a cheese meets the figures of a standard of identity.

The standards come in as data. Each figure of a rule carries a status; one known
only from memory, like one that the maker has not measured, is "not_assessed" and
never passes or fails a cheese. A verdict says that figures meet or do not meet
the named rule, and nothing more.
"""

from ...numbers.bounds import require_number, require_within
from .composition import NOISE, fdm_frac

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


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
    figures = []
    for key, quantity, sense in LIMITS:
        if key in rule["figures"]:
            limit = rule["figures"][key]
            figures.append(_compare(key, measured[quantity], limit, sense))
    if rule.get("dry_matter"):
        figures.append(_dry_matter(measured, rule["dry_matter"]))
    if rule.get("milk"):
        figures.append(_milk(cheese.get("is_pasteurised"), rule["milk"]))
    if rule.get("cure"):
        figures.append(_cure(cheese, rule["cure"]))
    verdicts = [figure["verdict"] for figure in figures]
    verdict = "meets"
    if "does_not_meet" in verdicts:
        verdict = "does_not_meet"
    elif "not_assessed" in verdicts or not verdicts:
        verdict = "not_assessed"
    return {"verdict": verdict, "figures": figures}


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
            "max": value <= edge + NOISE,
            "min": value >= edge - NOISE,
            "above": value > edge + NOISE,
            "below": value < edge - NOISE,
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
        if fdm >= row["fdm_from_frac"]["value"] - NOISE and (
            below is None or fdm < below["value"] - NOISE
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
