"""Acid: where the pH stands against the curve, and when it will be where."""

from ...formulas.milk import acid, acid_curve
from ...formulas.milk.acid_watch import BAND_PH, STALL_AGAIN_S, acid_state
from ..outputs import note, output, rests, result, value
from ..rows import choice, default, number, series, sum_row, timed, times_and_values
from . import acid_ends, slow_make

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


EBOOK = "hill_ferrer_gouda_process_table"
# Minutes from the starter, pH: as printed.
GOUDA_CURVE = [
    {"at_min": 0.0, "ph": 6.60},
    {"at_min": 60.0, "ph": 6.55},
    {"at_min": 90.0, "ph": 6.45},
    {"at_min": 180.0, "ph": 6.35},
    {"at_min": 480.0, "ph": 5.40},
    {"at_min": 10080.0, "ph": 5.20},
]
# The printed curve and Hill's own Gouda page differ by this much; a fall smaller
# than it says nothing of how fast a make is.
ENOUGH_FALL_PH = 0.15

PH = number("ph", "pH", 0.0, 14.0, [4.0, 7.2])
CURVE = series(
    "curve",
    timed([number("ph", "pH", 3.0, 8.0)]),
    2,
    default(GOUDA_CURVE, "read", EBOOK),
)
STARTERS = {"mixed": acid.MIXED_STARTER, "mesophilic": acid.MESOPHILIC_STARTER}


def _acid_forecast(x: "Inputs") -> "Worked | None":
    times_s, phs = times_and_values(x["ph_readings"] or [], "ph")
    curve_s, curve_phs = times_and_values(x["curve"], "ph")
    curve = {"times_s": curve_s, "phs": curve_phs}
    spread = {"lag_sd_s": x["lag_sd_s"], "pace_sd": x["pace_sd"]}
    targets = x["targets"] or []
    if x["target_ph"] is not None:
        targets = [{"of": None, "ph": x["target_ph"]}]
    if not targets:
        return result([], [], [], ["target_ph"])
    standing = acid_state(times_s, phs, curve)
    if standing["state"] == "stalled":
        return _stalled(x, standing)
    values = []
    line = acid_curve.line_on_curve(times_s, phs, curve, x["reading_sd_ph"], spread)
    for target in targets:
        reach = acid_curve.reach_on_curve(line, target["ph"], curve)
        values.extend(_reach(x, target, reach, curve, times_s))
    notes = [note("acid.range_of_nine_in_ten")]
    fell = phs[0] - min(phs) if phs else 0.0
    if not phs:
        notes.append(note("acid.no_readings_yet"))
    elif fell < ENOUGH_FALL_PH:
        notes.append(note("acid.too_little_fall", fell=fell, wanted=ENOUGH_FALL_PH))
    else:
        values.append(value("pace", reach["pace"]))
        values.append(value("lag_s", reach["lag_s"]))
    return result(values, notes)


def _stalled(x: "Inputs", standing: "dict[str, Any]") -> "Worked":
    """Say that no time can be promised: nothing says when acid comes that stands."""
    values = [value("flat_s", standing["flat_s"])]
    if x["curve_start_ms"] is not None:
        last_s = x["ph_readings"][-1]["at_min"] * 60.0
        again_s = last_s + STALL_AGAIN_S
        values.append(value("again_ms", x["curve_start_ms"] + int(again_s * 1000)))
    return result(
        values, [note("acid.stalled", ph=standing["ph"]), note("acid.stalled_ways")]
    )


def _reach(
    x: "Inputs",
    target: "dict[str, Any]",
    reach: "dict[str, Any]",
    curve: "dict[str, Any]",
    times_s: "list[float]",
) -> "list[WorkedValue]":
    ends = [reach["value_s"], reach["low_s"], reach["high_s"]]
    of = target["of"]
    own_s = acid_curve.curve_time_s(target["ph"], curve["times_s"], curve["phs"])
    values = [
        value("reach_s", ends[0], ends[1], ends[2], of),
        value("curve_s", own_s, of=of),
        value("late_s", ends[0] - own_s, ends[1] - own_s, ends[2] - own_s, of),
    ]
    now_s = x["curve_now_min"] * 60.0 if x["curve_now_min"] is not None else None
    if now_s is None and times_s:
        now_s = times_s[-1]
    if now_s is not None:
        left = [end - now_s for end in ends]
        values.append(value("left_s", left[0], left[1], left[2], of))
    if x["curve_start_ms"] is not None:
        at_ms = [x["curve_start_ms"] + int(end * 1000) for end in ends]
        values.append(value("reach_ms", at_ms[0], at_ms[1], at_ms[2], of))
    return values


def _acid_band(x: "Inputs") -> "Worked | None":
    times_s, phs = times_and_values(x["ph_readings"], "ph")
    curve_s, curve_phs = times_and_values(x["curve"], "ph")
    judged = acid_state(times_s, phs, {"times_s": curve_s, "phs": curve_phs})
    values = [
        value("state", judged["state"]),
        value("curve_ph", judged["curve_ph"], judged["low_ph"], judged["high_ph"]),
        value("behind_s", judged["behind_s"]),
    ]
    source = rests("band_ph", BAND_PH, "pH", "derived", "two_published_gouda_sources")
    notes = [note("acidity_never_ph")]
    if judged["state"] == "not_known":
        notes.append(note("acid.off_the_curve"))
    return result(values, notes, [source])


def _acid_temperature(x: "Inputs") -> "Worked | None":
    times_s, temps_c = times_and_values(x["curd_temps"], "value")
    starter = STARTERS[x["starter_kind"]]
    reference_c = x["reference_temp_c"]
    worth_s = acid.equivalent_time_s(times_s, temps_c, reference_c, starter)
    passed_s = times_s[-1] - times_s[0]
    here = acid.growth_factor(
        temps_c[-1], starter["min_c"], starter["best_c"], starter["max_c"]
    )
    there = acid.growth_factor(
        reference_c, starter["min_c"], starter["best_c"], starter["max_c"]
    )
    status, source = "abstract", "Medvedova et al., Fermentation 5(1):2 (2018/19)"
    if x["starter_kind"] == "mesophilic":
        status, source = "memory", "trade_knowledge_lactococcus"
    return result(
        [
            value("worth_s", worth_s),
            value("ahead_s", worth_s - passed_s),
            value("speed_now", here / there),
        ],
        [note("curd_core_stays_warmer")],
        [rests("best_c", starter["best_c"], "C", status, source)],
    )


ROWS = [
    sum_row(
        "acid_forecast",
        "acid",
        [
            series("ph_readings", timed([PH]), 0, optional=True),
            number("target_ph", "pH", 3.0, 8.0, [4.4, 6.7], optional=True),
            CURVE,
            number(
                "reading_sd_ph",
                "pH",
                0.005,
                0.5,
                None,
                default(0.05, "derived", "meter_shape_curve_together"),
            ),
            number(
                "lag_sd_s",
                "s",
                1.0,
                14400.0,
                None,
                default(900.0, "practice", "makes_differ_in_lag"),
            ),
            number(
                "pace_sd",
                "",
                0.001,
                1.0,
                None,
                default(0.15, "practice", "makes_differ_in_pace"),
            ),
            dict(series("targets", [], 0, optional=True), hidden=True),
            number("curve_now_min", "min", 0.0, 1000000.0, hidden=True),
            number("curve_start_ms", "ms", 0.0, 4102444800000.0, hidden=True),
        ],
        [
            output(
                "reach_s",
                "s",
                headline="first",
                told_by="reach_ms",
                range_of="nine_in_ten",
            ),
            output("curve_s", "s"),
            output("late_s", "s", sense="later", range_of="nine_in_ten"),
            output("left_s", "s", told_by="reach_ms"),
            output("reach_ms", "ms", headline="first", range_of="nine_in_ten"),
            output("pace", "multiple"),
            output("lag_s", "s", sense="later"),
            output("flat_s", "s", headline=True),
            output("again_ms", "ms"),
        ],
        _acid_forecast,
        called={
            "curve_phs": "curve",
            "curve_times_s": "curve",
            "elapsed_s": "ph_readings",
            "ph": "target_ph",
            "phs": "ph_readings",
            "times_s": "ph_readings",
        },
    ),
    sum_row(
        "acid_band",
        "acid",
        [series("ph_readings", timed([PH]), 1), CURVE],
        [
            output("state", "key", headline=True),
            output("curve_ph", "pH", "band"),
            output("behind_s", "s", sense="later"),
        ],
        _acid_band,
        called={
            "curve_phs": "curve",
            "curve_times_s": "curve",
            "elapsed_s": "ph_readings",
            "ph": "ph_readings",
            "times_s": "ph_readings",
        },
    ),
    sum_row(
        "acid_temperature",
        "acid",
        [
            series("curd_temps", timed([number("value", "C", -2.0, 60.0)]), 2),
            number(
                "reference_temp_c",
                "C",
                5.0,
                48.0,
                [18.0, 45.0],
                default(32.0, "practice", "set_at_32"),
            ),
            choice(
                "starter_kind",
                ["mixed", "mesophilic"],
                default("mixed", "abstract", "medvedova_mixed_starter"),
            ),
        ],
        [
            output("worth_s", "s", headline=True),
            output("ahead_s", "s", sense="earlier"),
            output("speed_now", "multiple"),
        ],
        _acid_temperature,
        called={
            "reference_c": "reference_temp_c",
            "temp_c": "curd_temps",
            "temps_c": "curd_temps",
            "times_s": "curd_temps",
        },
    ),
    acid_ends.ROW,
    slow_make.ROW,
]
