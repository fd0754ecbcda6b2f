"""The quantity that the step at hand is watched by, and the time around it."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.curve import AcidCurve, CurveAtHand, CurveBand, CurveSeries
    from server.shapes.core.state import ViewContext


HOUR_MS = 3600000
AHEAD_MS = 900000  # so that what the recipe wants next is in sight
# A small drawing shows no more. Our own judgement, no source.
LONGEST_MS = 4 * HOUR_MS
ACID = "ph"


def at_hand(
    context: "ViewContext",
    series: "list[CurveSeries]",
    wanted: "list[CurveBand]",
    acid: "AcidCurve | None",
) -> "CurveAtHand | None":
    """Return which quantity a small drawing of the make shows, and of which time.

    That of the latest running step that wants one which was read; else pH, where the
    recipe's curve runs; else what was read last.

    Args:
        context: as for `steps.step_view`.
        series: what was read, see `curve.curve`.
        wanted: answer of `bands`.
        acid: answer of `acid_line`.

    Returns:
        {"quantity", "from_ms", "to_ms"}; None where nothing was read. The last
        reading lies within, and now does.
    """
    if not series:
        return None
    now_ms = context["now_ms"]
    begin_ms = now_ms - HOUR_MS
    quantity, step_ms = _wanted(context, series, wanted)
    if step_ms is not None:
        begin_ms = max(min(begin_ms, step_ms), now_ms - LONGEST_MS)
    if quantity is None and acid is not None and acid["is_real"]:
        quantity = _if_read(series, ACID)
    if quantity is None:
        quantity = max(
            (line["points"][-1]["at_ms"], line["quantity"]) for line in series
        )[1]
    last_ms = max(
        line["points"][-1]["at_ms"] for line in series if line["quantity"] == quantity
    )
    return {
        "quantity": quantity,
        "from_ms": min(begin_ms, last_ms),
        "to_ms": max(now_ms + AHEAD_MS, last_ms),
    }


def _if_read(series: "list[CurveSeries]", quantity: str) -> "str | None":
    return quantity if any(line["quantity"] == quantity for line in series) else None


def _wanted(
    context: "ViewContext", series: "list[CurveSeries]", wanted: "list[CurveBand]"
) -> "tuple[str | None, int | None]":
    """Return what the latest running step wants of what was read, and its begin."""
    found: "tuple[str | None, int | None]" = (None, None)
    for band in wanted:
        if context["facts"][band["step"]]["status"] != "running":
            continue
        is_read = _if_read(series, band["quantity"]) is not None
        if is_read and (found[1] is None or band["begin_ms"] > found[1]):
            found = (band["quantity"], band["begin_ms"])
    return found
