"""What is wrong with a value, as an answer carries it: key, numbers and their units."""

from .refused import Refused

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.words import SumProblem


# The unit that a name of the formulas ends in, the longest first.
ENDS = (
    ("_kg_m3", "kg/m3"),
    ("_kg_l", "kg/L"),
    ("_m2_s", "m2/s"),
    ("_frac", "fraction"),
    ("_days", "d"),
    ("_min", "min"),
    ("_kpa", "kPa"),
    ("_phs", "pH"),
    ("_pa", "Pa"),
    ("_kw", "kW"),
    ("_kg", "kg"),
    ("_ml", "mL"),
    ("_ph", "pH"),
    ("_c", "C"),
    ("_k", "K"),
    ("_s", "s"),
    ("_h", "h"),
    ("_g", "g"),
    ("_l", "L"),
    ("_m", "m"),
    ("_n", "N"),
    ("_w", "W"),
)
# Their value and limit are counts, whatever the field holds.
COUNTED = ("too_few", "too_many", "not_paired")


def problem(
    field: str,
    key: str,
    value: object = None,
    limit: object = None,
    unit: str = "",
) -> "SumProblem":
    """Return one thing that is wrong, in the form that answers carry.

    Args:
        field: input it is told of.
        key: what is wrong.
        value: what was given.
        limit: what it fails against.
        unit: unit of value and limit; "" for a count or a word.

    Returns:
        {"field", "key", "value", "limit", "unit", "of", "figures", "from"}: of is the
        formula's own quantity where the field is only what it follows from, or
        None; figures {name: {"value", "unit"}} what else the sentence speaks of; from
        "input" where the value by itself cannot be, "formula" where it cannot be
        beside the others.
    """
    return {
        "field": field,
        "key": key,
        "value": value,
        "limit": limit,
        "unit": "" if key in COUNTED else unit,
        "of": None,
        "figures": {},
        "from": "input",
    }


def of_refusal(refusal: Refused) -> "SumProblem":
    """Return the problem that a refusal tells, of the formula's own field.

    Args:
        refusal: what a formula raised.
    """
    unit = unit_of(refusal.field)
    value = None if isinstance(refusal.value, (list, dict)) else refusal.value
    refused = problem(refusal.field, refusal.key, value, refusal.limit, unit)
    refused["from"] = "formula"
    for name, figure in refusal.figures.items():
        refused["figures"][name] = {"value": figure, "unit": unit_of(name)}
    return refused


def unit_of(name: str) -> str:
    """Return the unit that a name of the formulas ends in; "" for none.

    Args:
        name: name of an argument.

    >>> unit_of("pressure_pa")
    'Pa'
    """
    for end, unit in ENDS:
        if ("_" + name).endswith(end):
            return unit
    return ""
