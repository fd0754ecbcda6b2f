"""What counts of staphylococci meet: samples of one lot against the published plan.

A count between the two figures of the plan is let through as often as the plan
says; one above the upper never is. Above a third figure the lot is tested for
toxin, whatever the rest says: later heat or acid does not take toxin away.
"""

from ..outputs import no_rules, note, output, rests, result, value
from ..rows import choice, number, series, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


def _staph_counts(x: "Inputs") -> "Worked":
    rule = x["rules"].get("staph")
    if rule is None:
        return no_rules()
    row = next(row for row in rule["rows"] if row["key"] == x["made_from"])
    lower, upper = row["lower_g"]["value"], row["upper_g"]["value"]
    counts = [cell["count_per_g"] for cell in x["counts"]]
    values, between, above = [], 0, 0
    for index, count in enumerate(counts):
        word = "below_both"
        if count > upper:
            word, above = "above_both", above + 1
        elif count > lower:
            word, between = "between_them", between + 1
        values.append(
            value("sample", word, high=upper, of="sample", read=count, nth=index + 1)
        )
    most, wanted = rule["between_most"]["value"], rule["samples"]["value"]
    verdict, notes = "meets", []
    if above or between > most:
        verdict = "does_not_meet"
    elif len(counts) < wanted:
        verdict = "not_assessed"
        notes.append(note("samples_too_few", count=len(counts), wanted=wanted))
    values.insert(
        0, value("verdict", verdict, high=most, of=x["made_from"], read=between)
    )
    if max(counts) > rule["toxin_test_above_g"]["value"]:
        notes.append(note("toxin_test_asked", value=max(counts)))
    sources = [
        rests(name, figure["value"], "", figure["status"], figure["source"])
        for name, figure in (("lower_g", row["lower_g"]), ("upper_g", row["upper_g"]))
    ]
    return result(values, notes, sources)


ROW = sum_row(
    "staph_counts",
    "composition",
    [
        choice("made_from", ["raw", "thermised", "fresh_pasteurised"]),
        dict(
            series("counts", [number("count_per_g", "", 0.0, 1e11)], 1),
            high=5,
        ),
    ],
    [
        output("verdict", "key", "limit", headline=True, ends=""),
        output("sample", "key", "limit", ends="", called="of"),
    ],
    _staph_counts,
    judges=True,
)
