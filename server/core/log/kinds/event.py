"""Whether an event is sound on its own, and what becomes of one that is not."""

from ...recipe.checks import DEEPEST, too_much
from ...units.quantities import check_number
from .body import check_data
from .envelope import check_envelope
from .table import KINDS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


# Of an entry whole, beside the recipe that an opening carries: the longest note in
# letters of four bytes, with room. Every phone of the creamery keeps every entry.
MOST_BYTES = 16384


def check_event(
    event: "dict[str, Any]", all_but: "str | None" = None
) -> "list[Problem]":
    """Return everything that is wrong with one event on its own.

    Whether the make exists or the step is in its recipe is not asked here:
    events may arrive in any order.

    Args:
        event: dict as in `envelope`; JSON types only.
        all_but: name of a field of the body that is not looked at.

    Returns:
        List of {"field", "key", "limit"}; empty for a sound event. The single
        problem {"key": "unknown_kind"} or {"key": "newer_version"} marks an
        event from a newer app, which is kept raw.
    """
    if not isinstance(event, dict):
        return [{"field": "event", "key": "not_a_mapping", "limit": None}]
    name = event.get("kind")
    problems = _check_size(event)
    if problems:
        return problems  # nothing else of it is worth the time
    problems = check_envelope(event)
    if not isinstance(name, str) or name not in KINDS:
        problems.append({"field": "kind", "key": "unknown_kind", "limit": None})
        return problems
    kind = KINDS[name]
    version = event.get("v")
    # 2.0 is newer than 1 too: JSON has one sort of number.
    if not check_number("v", version, kind["v"] + 1, None):
        problems.append({"field": "v", "key": "newer_version", "limit": kind["v"]})
        return problems
    if kind["ref"] == "required" and not event.get("ref"):
        problems.append({"field": "ref", "key": "missing", "limit": None})
    data = event.get("data")
    if not isinstance(data, dict):
        problems.append({"field": "data", "key": "not_a_mapping", "limit": None})
        return problems
    only = None
    if all_but is not None:
        names = [field["name"] for field in kind["fields"]]
        only = {one: True for one in names if one != all_but}
    return problems + check_data(name, data, only)


def can_be_kept(event: "dict[str, Any]") -> bool:
    """Tell whether an event that is not sound can be kept with those of its make.

    Args:
        event: as received.

    Returns:
        True when its envelope is sound, whatever it holds.
    """
    is_named = isinstance(event, dict) and isinstance(event.get("kind"), str)
    return is_named and not check_envelope(event)


def is_newer(event: "dict[str, Any]") -> bool:
    """Tell whether an event with a sound envelope is of a newer app than this one.

    Args:
        event: see `can_be_kept`.
    """
    kind = KINDS.get(event["kind"])
    return kind is None or event["v"] > kind["v"]


def _check_size(event: "dict[str, Any]") -> "list[Problem]":
    """Check all but the recipe, which is checked on its own."""
    rest = event
    data = event.get("data")
    if event.get("kind") == "make_opened" and isinstance(data, dict):
        rest = dict(event)
        rest["data"] = {name: data[name] for name in data if name != "recipe"}
    beyond = too_much(rest, MOST_BYTES, DEEPEST)
    if beyond is None:
        return []
    limit = MOST_BYTES if beyond == "too_large" else DEEPEST
    return [{"field": "event", "key": beyond, "limit": limit}]
