import math
import random

import pytest
from scipy.optimize import least_squares

from server.core.formulas.milk import acid_curve
from tests.core.formulas.tables import table

SCHEDULES = table("acid_schedules")["rows"]
SPREAD = {"lag_sd_s": 900, "pace_sd": 0.15}
H_S = 3600


def curve_of(name):
    row = next(row for row in SCHEDULES if row["name"].startswith(name))
    return {"times_s": [60 * minute for minute in row["times_min"]], "phs": row["phs"]}


GOUDA, CHEDDAR, SWISS = [curve_of(x) for x in ("Gouda", "Cheddar, 53", "Swiss")]


def ask(core, name, *args):
    return core("formulas.milk.acid_curve", name, *args)


def forecast(core, hours, phs, target_ph=5.4, curve=GOUDA, sd=0.02, spread=SPREAD):
    times_s = [hour * H_S for hour in hours]
    line = ask(core, "line_on_curve", times_s, phs, curve, sd, spread)
    return ask(core, "reach_on_curve", line, target_ph, curve)


def warped(hours, lag_s, pace, curve=GOUDA):
    return [
        acid_curve.curve_ph((hour * H_S - lag_s) / pace, curve["times_s"], curve["phs"])
        for hour in hours
    ]


@pytest.mark.parametrize("row", SCHEDULES, ids=lambda row: row["name"])
def test_a_curve_has_its_own_points(core, row):
    times_s = [60 * minute for minute in row["times_min"]]
    for time_s, ph in zip(times_s, row["phs"], strict=True):
        got = ask(core, "curve_ph", time_s, times_s, row["phs"])
        assert got == pytest.approx(ph, rel=1e-12)


def test_between_its_points_a_curve_is_straight(core):
    # 6.45 at 90 min, 6.35 at 180 min: 6.40 half way.
    got = ask(core, "curve_ph", 135 * 60, GOUDA["times_s"], GOUDA["phs"])
    assert got == pytest.approx(6.40, rel=1e-12)


@pytest.mark.parametrize("ph", [6.58, 6.4, 5.9, 5.41])
def test_time_and_ph_undo_each_other_on_a_curve(core, ph):
    time_s = ask(core, "curve_time_s", ph, GOUDA["times_s"], GOUDA["phs"])
    got = ask(core, "curve_ph", time_s, GOUDA["times_s"], GOUDA["phs"])
    assert got == pytest.approx(ph, rel=1e-12)


def test_a_ph_that_a_curve_keeps_for_a_while_comes_when_it_first_does(core):
    # Swiss stands at 6.60 from 0 to 15 min.
    got = ask(core, "curve_time_s", 6.60, SWISS["times_s"], SWISS["phs"])
    assert got == 0


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("curve_ph", (-1, [0, 60], [6.6, 6.5]), "elapsed_s -1 below 0"),
        ("curve_ph", (61, [0, 60], [6.6, 6.5]), "elapsed_s 61 above 60"),
        ("curve_time_s", (6.7, [0, 60], [6.6, 6.5]), "ph 6.7 above 6.6"),
        ("curve_time_s", (6.4, [0, 60], [6.6, 6.5]), "ph 6.4 below 6.5"),
        ("curve_ph", (1, [0, 60], [6.5, 6.6]), "curve_phs 6.6 rises 6.5"),
        ("curve_ph", (1, [0, 60], [6.5, 6.5]), "curve_phs 6.5 never_falls 6.5"),
        ("curve_ph", (1, [0], [6.5]), "curve_phs 1 too_few 2"),
    ],
)
def test_an_impossible_curve_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, name, *args)


def test_without_readings_the_curve_itself_is_the_forecast(core):
    found = forecast(core, [], [])
    # Gouda's table has 5.40 at 480 min.
    assert found["value_s"] == pytest.approx(480 * 60, rel=1e-12)
    assert (found["lag_s"], found["pace"]) == (0, 1)
    assert found["basis"] == "acid.curve"


def test_without_readings_the_range_is_the_spread_among_makes(core):
    found = forecast(core, [], [])
    # sqrt(0.25² + (0.15 × 8)²) = 1.2258 h, 1.645 times on each side.
    half_h = (found["high_s"] - found["low_s"]) / 2 / H_S
    assert half_h == pytest.approx(1.6448536 * math.hypot(0.25, 1.2), rel=1e-9)


def test_readings_on_the_curve_leave_it_where_it_is(core):
    found = forecast(core, [1, 2, 3], warped([1, 2, 3], 0, 1))
    assert found["value_s"] == pytest.approx(480 * 60, rel=1e-9)
    assert found["basis"] == "acid.curve_and_readings"


@pytest.mark.parametrize(("lag_s", "pace"), [(600, 1.2), (-300, 0.85), (0, 1.4)])
def test_precise_readings_find_lag_and_pace(core, lag_s, pace):
    hours = [1, 1.5, 2, 3, 4, 5, 6]
    firm = {"lag_sd_s": 36000, "pace_sd": 9}
    found = forecast(core, hours, warped(hours, lag_s, pace), sd=0.001, spread=firm)
    # What is known beforehand still draws a little.
    assert found["pace"] == pytest.approx(pace, rel=1e-3)
    assert found["lag_s"] == pytest.approx(lag_s, abs=20)
    assert found["value_s"] == pytest.approx(lag_s + pace * 480 * 60, rel=1e-3)


def test_the_forecast_is_where_an_independent_optimiser_puts_it(core):
    hours = [1, 2, 3, 4, 5]
    noise = (0.01, -0.015, 0.01, -0.005, 0.01)
    phs = [a + b for a, b in zip(warped(hours, 300, 1.1), noise, strict=True)]

    def misses(pair):
        drawn = warped(hours, pair[0], pair[1])
        readings = [(ph - on) / 0.02 for ph, on in zip(phs, drawn, strict=True)]
        return [*readings, pair[0] / 900, (pair[1] - 1) / 0.15]

    best = least_squares(misses, (0, 1), x_scale=(900, 0.15)).x
    found = forecast(core, hours, phs)
    # Ours also pools the scatter seen with the stated one: 0.01 against 0.02.
    expected = best[0] + best[1] * 480 * 60
    assert found["value_s"] == pytest.approx(expected, rel=0.005)


def test_a_slow_make_is_late_and_a_fast_one_early(core):
    slow = forecast(core, [1, 2, 3], [6.59, 6.52, 6.46])
    fast = forecast(core, [1, 2, 3], [6.50, 6.35, 6.10])
    assert fast["value_s"] < 480 * 60 < slow["value_s"]
    assert fast["pace"] < 1 < slow["pace"]


def test_readings_narrow_the_range(core):
    widths = []
    for hours in ([], [2], [2, 3], [2, 3, 4, 5]):
        found = forecast(core, hours, warped(hours, 0, 1))
        widths.append(found["high_s"] - found["low_s"])
    assert widths == sorted(widths, reverse=True)


def test_a_reading_before_the_starter_says_nothing(core):
    alone = forecast(core, [2], [6.42])
    both = forecast(core, [-1, 2], [6.65, 6.42])
    assert both["value_s"] == pytest.approx(alone["value_s"], rel=1e-9)


def test_a_reading_where_the_curve_is_flat_says_nothing(core):
    found = forecast(core, [0.1], [6.58], curve=SWISS)
    assert (found["lag_s"], found["pace"]) == (0, 1)


@pytest.mark.parametrize(
    ("target_ph", "sd", "spread", "words"),
    [
        (5.3, 0.02, SPREAD, "ph 5.3 below 5.4"),
        (5.4, 0, SPREAD, "reading_sd_ph 0 not_above 0"),
        (5.4, 0.02, {"lag_sd_s": 0, "pace_sd": 1}, "lag_sd_s 0 not_above 0"),
        (5.4, 0.02, {"lag_sd_s": 1, "pace_sd": 0}, "pace_sd 0 not_above 0"),
    ],
)
def test_an_impossible_forecast_is_refused(core, target_ph, sd, spread, words):
    with pytest.raises(ValueError, match=words):
        forecast(core, [1], [6.5], target_ph, GOUDA, sd, spread)


@pytest.mark.parametrize(
    "hours",
    [[], [1], [1, 2, 3], [0, 1, 2, 3, 4, 5]],
    ids=lambda hours: f"{len(hours)} readings",
)
@pytest.mark.parametrize("curve", [GOUDA, CHEDDAR], ids=["Gouda", "Cheddar"])
@pytest.mark.parametrize("sd", [0.02, 0.05])
def test_the_range_holds_the_truth_nine_times_in_ten(hours, curve, sd):
    chance, held, makes = random.Random(5), 0, 500
    times_s, end_s = [hour * H_S for hour in hours], curve["times_s"][-1]
    target_s = acid_curve.curve_time_s(5.4, curve["times_s"], curve["phs"])
    for _ in range(makes):
        lag_s, pace = chance.gauss(0, 900), chance.gauss(1, 0.15)
        places = [min(max((x - lag_s) / pace, 0), end_s) for x in times_s]
        phs = [
            acid_curve.curve_ph(u, curve["times_s"], curve["phs"]) + chance.gauss(0, sd)
            for u in places
        ]
        line = acid_curve.line_on_curve(times_s, phs, curve, sd, SPREAD)
        found = acid_curve.reach_on_curve(line, 5.4, curve)
        held += found["low_s"] <= lag_s + pace * target_s <= found["high_s"]
    assert 0.85 <= held / makes <= 0.95
