"""Heat treatment of the milk: what the recorded readings meet, by the legal table.

The verdict is the rule's, in the thermometer's own unit. Lethality is for
information and has a sum of its own, so that it is never mistaken for a verdict.
"""

from ...formulas.heat import lethality
from ...heat.hold.chart import CHART
from ...heat.hold.rule import with_gap
from ...heat.hold.verdict import verdict
from ..outputs import as_read, no_rules, note, output, rests, result, value
from ..rows import choice, default, number, series, sum_row, timed, times_and_values

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.sums import RestsOn
    from server.shapes.core.worked import Inputs, Worked, WorkedValue


RULE = {"us": "us_heat_treatment", "eu_uk": "eu_uk_heat_treatment"}
# In either unit, so that what a thermometer can show is never refused.
OWN_LOW, OWN_HIGH = -30.0, 270.0
# A recipe's usual fat judges no milk.
FAT_TESTED = number(
    "fat_tested_frac", "fraction", 0.0, 0.6, [0.015, 0.4], optional=True
)


def _heat_treatment(x: "Inputs") -> "Worked":
    rule = x["rules"].get(RULE[x["jurisdiction"]])
    if rule is None:
        return no_rules()
    usual_s = rule["gap_max_s"]["value"]
    # A sum cannot say who agreed to a longer gap, so there it does not count.
    is_typed = x["from"].get("gap_max_s") == "typed"
    is_nameless = is_typed and x["gap_max_s"] > usual_s
    rule = with_gap(rule, None if is_nameless else x["gap_max_s"])
    begun_ms = int(x["hold_begun_ms"] or 0)
    readings = []
    for reading in x["milk_temps"]:
        readings.append(
            {
                # To the whole millisecond: a hold must not lose one to a fraction.
                "at_ms": begun_ms + int(reading["at_min"] * 60000 + 0.5),
                "temp": reading["value"],
                "air_temp": reading["air"],
                "recorder_temp": reading["recorder"],
            }
        )
    product = {
        "vessel": x["vessel"],
        "kind": x["product"],
        "fat_frac": x["fat_tested_frac"],
        "is_sweetened": x["sweetened"] == "yes",
        "phosphatase": x["phosphatase"],
        "extra_hold_s": x["extra_hold_s"],
        "holding_s": x["holding_s"],
    }
    chart = {key: x["chart_" + key] == "noted" for key in CHART}
    is_over = x["hold_over"] != "no"
    judged = verdict(rule, readings, x["thermometer"], product, chart, is_over)
    notes = _notes(judged)
    if is_nameless:
        notes.append(note("gap_needs_name", value=x["gap_max_s"], limit=usual_s))
    return result(_values(judged), notes, _figures(rule, judged))


def _values(judged: "dict[str, Any]") -> "list[WorkedValue]":
    hold = judged["hold"] or {}
    values = [
        value("class", judged["class"], of=judged["rule"]),
        value("meaning", judged["meaning"], of=judged["if_not_met"]),
    ]
    if hold:
        values.append(value("held_s", hold["held_s"], hold["needed_s"]))
        values.append(value("required_temp", hold["min_temp"], of=hold["row"]))
        if hold["air_min_temp"] is not None:
            values.append(value("required_air_temp", hold["air_min_temp"]))
    return values


def _notes(judged: "dict[str, Any]") -> "list[dict[str, Any]]":
    notes = [note("chart_and_inspector_decide")]
    for reasons in (judged["reasons"], judged["warnings"]):
        for reason in reasons:
            told = dict(reason)
            told["key"] = "note." + reason["key"]
            notes.append(told)
    return notes


def _figures(rule: "dict[str, Any]", judged: "dict[str, Any]") -> "list[RestsOn]":
    """Return the rule's figures that the verdict rests on, each with its source."""
    hold = judged["hold"] or {}
    figures = []
    for row in rule["rows"]:
        if hold and row["key"] != hold["row"]:
            continue
        figure = row["min_temp"].get(judged["unit"])
        if figure is None or (not hold and row["kind"] != "milk"):
            continue
        figures.append(
            rests(
                "min_temp." + row["key"],
                figure["value"],
                judged["unit"],
                figure["status"],
                figure["source"],
            )
        )
    gap = rule["gap_max_s"]
    figures.append(rests("gap_max_s", gap["value"], "s", gap["status"], gap["source"]))
    return figures


def _lethality(x: "Inputs") -> "Worked":
    times_s, temps_c = times_and_values(x["vat_temps"], "value")
    notes = [note("lethality_is_no_verdict")]
    values, sources = [], []
    published: "tuple[dict[str, Any], ...]" = lethality.PUBLISHED
    for organism in published:
        reduction = lethality.log_reduction(
            times_s, temps_c, organism["d_s"], organism["reference_c"], organism["z_k"]
        )
        low = reduction["value"] if reduction["at_least"] else None
        values.append(
            value("log_reduction", reduction["value"], low, of=organism["key"])
        )
        if reduction["left_out_s"] > 0:
            word = "too_far" if reduction["value"] is None else "partly"
            notes.append(note("lethality_" + word, row=organism["key"]))
        sources.append(
            rests(
                "d_s." + organism["key"],
                organism["d_s"],
                "s",
                "abstract",
                organism["source"],
            )
        )
    near = lethality.near_lethality_s(times_s, temps_c, 63.0, x["z_k"])
    low_s = near["value_s"] if near["at_least"] else None
    values.append(value("f63_s", near["value_s"], low_s))
    if near["left_out_s"] > 0:
        word = "too_far" if near["value_s"] is None else "partly"
        notes.append(note("lethality_63_" + word))
    return result(values, notes, sources)


def _chart_inputs() -> "list[dict[str, Any]]":
    return [
        choice("chart_" + key, ["noted", "not_noted"], optional=True) for key in CHART
    ]


ROWS = [
    sum_row(
        "heat_treatment",
        "heat_treatment",
        [
            choice(
                "jurisdiction",
                ["us", "eu_uk"],
                default("us", "derived", "choose_where_licensed"),
            ),
            choice("thermometer", ["F", "C"]),
            series(
                "milk_temps",
                timed(
                    [
                        number("value", "", OWN_LOW, OWN_HIGH, optional=True),
                        number("air", "", OWN_LOW, OWN_HIGH, optional=True),
                        number("recorder", "", OWN_LOW, OWN_HIGH, optional=True),
                    ]
                ),
                1,
            ),
            choice(
                "vessel",
                ["vat", "flow"],
                default("vat", "practice", "vat_all_held_once"),
            ),
            choice(
                "product",
                ["milk", "eggnog"],
                default("milk", "practice", "milk_for_cheese"),
            ),
            FAT_TESTED,
            choice(
                "sweetened",
                ["no", "yes"],
                default("no", "practice", "nothing_sweet_added"),
            ),
            choice("phosphatase", ["negative", "positive"], optional=True),
            number(
                "extra_hold_s",
                "s",
                0.0,
                86400.0,
                None,
                default(0.0, "practice", "filled_emptied_outside_hold"),
            ),
            number("holding_s", "s", 0.0, 86400.0, optional=True, usual="s"),
            number("gap_max_s", "s", 1.0, 3600.0, [1.0, 300.0], optional=True),
            number("hold_begun_ms", "ms", 0.0, 4102444800000.0, hidden=True),
            dict(choice("hold_over", ["yes", "no"], optional=True), hidden=True),
        ]
        + _chart_inputs(),
        [
            output("class", "key", headline=True),
            output("meaning", "key", called="name"),
            output("held_s", "s", "limit"),
            output("required_temp", as_read("thermometer")),
            output("required_air_temp", as_read("thermometer")),
        ],
        _heat_treatment,
        judges=True,
        called={"at_ms": "milk_temps"},
    ),
    sum_row(
        "lethality",
        "heat_treatment",
        [
            series("vat_temps", timed([number("value", "C", -2.0, 110.0)]), 2),
            number(
                "z_k",
                "K",
                3.0,
                15.0,
                [4.0, 10.0],
                default(7.0, "practice", "between_published_z"),
            ),
        ],
        [output("log_reduction", "", headline="first"), output("f63_s", "s")],
        _lethality,
        called={"temps_c": "vat_temps", "times_s": "vat_temps"},
    ),
]
