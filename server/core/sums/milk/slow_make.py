"""Whether a make was slow by a published mark of its family; and what then.

No one figure covers all cheeses: a cheese of another family has no mark here, which
is not the same as being in time. A reading not taken at its time was missed; what
it would have been is not worked out from its neighbours.
"""

from ..outputs import no_rules, note, output, rests, result, value
from ..rows import choice, number, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked


# In what a mark is read; "other" has none.
ENDS = {
    "ph_at_6_h_washed": "pH",
    "ph_at_6_h_salers": "pH",
    "cheddar_milling": "fraction lactic",
    "washed_draining": "fraction lactic",
    "other": "",
}
MARKS = ("ph_at_6_h_washed", "ph_at_6_h_salers", "cheddar_milling", "washed_draining")


def _slow_make(x: "Inputs") -> "Worked":
    rule = x["rules"].get("slow_make")
    if rule is None:
        return no_rules()
    mark = x["slow_mark"]
    if mark == "other":
        told = value("verdict", "not_assessed", of=mark)
        return result([told], [note("no_limit_set")])
    limit = next(row for row in rule["rows"] if row["key"] == mark)
    if "ph_most" in limit:
        return _by_ph(x, limit, rule["window_s"]["value"])
    return _by_acidity(x, limit)


def _by_ph(x: "Inputs", limit: "dict[str, Any]", window_s: float) -> "Worked":
    lacking = [name for name in ("ph", "at_h") if x[name] is None]
    if lacking:
        return result([], [], [], lacking)
    figure, at_s = limit["ph_most"], limit["at_s"]["value"]
    if abs(x["at_h"] * 3600.0 - at_s) > window_s:
        ends = [(at_s + way * window_s) / 3600.0 for way in (-1, 1)]
        told = value("verdict", "not_assessed", of=limit["key"])
        return result([told], [note("reading_missed", low=ends[0], high=ends[1])])
    return _told(limit["key"], x["ph"], x["ph"] > figure["value"], figure, "ph_most")


def _by_acidity(x: "Inputs", limit: "dict[str, Any]") -> "Worked":
    acidity = x["acidity_frac"]
    if acidity is None:
        return result([], [], [], ["acidity_frac"])
    if "acidity_least_frac" in limit:
        figure = limit["acidity_least_frac"]
        is_slow = acidity < figure["value"]
    else:
        figure = limit["acidity_above_frac"]
        is_slow = acidity <= figure["value"]
    return _told(limit["key"], acidity, is_slow, figure, "acidity_least_frac")


def _told(
    mark: str, amount: float, is_slow: bool, figure: "dict[str, Any]", name: str
) -> "Worked":
    word = "does_not_meet" if is_slow else "meets"
    source = rests(
        name, figure["value"], ENDS[mark], figure["status"], figure["source"]
    )
    notes = [note("slow_make_hold")] if is_slow else []
    low, high = figure["value"], None
    if name == "ph_most":
        low, high = high, low
    verdict = value("verdict", word, low, high, mark, amount)
    return result([verdict], notes, [source])


ROW = sum_row(
    "slow_make",
    "acid",
    [
        choice("slow_mark", list(MARKS) + ["other"]),
        number("ph", "pH", 0.0, 14.0, [4.0, 7.2], optional=True),
        number("at_h", "h", 0.0, 240.0, [0.0, 72.0], optional=True),
        number(
            "acidity_frac",
            "fraction lactic",
            0.0,
            0.05,
            [0.0008, 0.012],
            optional=True,
        ),
    ],
    [output("verdict", "key", "limit", headline=True, ends=ENDS)],
    _slow_make,
    judges=True,
)
