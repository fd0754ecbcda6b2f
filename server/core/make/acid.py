"""The acid of a make as it was read."""

from ..log import run


def ph_readings(state: dict, start_ms: int) -> "list[dict]":
    """Return the pH readings since an instant, oldest first, one an instant.

    Args:
        state: State of the make.
        start_ms: when the curve starts [ms].

    Returns:
        List of entries, see `run.entries`.
    """
    found: "list[dict]" = []
    for entry in run.entries(state, "reading_taken", "ph"):
        if entry["t_ms"] < start_ms:
            continue
        if found and found[-1]["t_ms"] == entry["t_ms"]:
            found[-1] = entry
        else:
            found.append(entry)
    return found
