import math
import random

import pytest

from server.core.formulas.milk import acid, acid_forecast
from tests.core.formulas.tables import table

CURVE = table("acid_curve")
SCHEDULES = table("acid_schedules")
GOUDA = next(row for row in SCHEDULES["rows"] if row["name"] == "Gouda")
H_S = 3600
GOUDA_S = [60 * minutes for minutes in GOUDA["times_min"]]


def ask(core, name, *args):
    return core("formulas.milk.acid_forecast", name, *args)


def exact(hours, start_ph=6.6, end_ph=5.2, fall_ph_h=0.25, lag_h=0.75):
    four = (start_ph, end_ph, fall_ph_h / H_S, lag_h * H_S)
    return [acid.gompertz_ph(hour * H_S, *four) for hour in hours]


def forecast(core, hours, phs, target_ph=5.4, sds=(0.02, 0, 0)):
    times_s = [hour * H_S for hour in hours]
    return ask(core, "forecast", times_s, phs, target_ph, 6.6, 5.2, *sds)


def test_exact_readings_forecast_the_published_time(core):
    hours = [0, 1, 2, 3]
    found = forecast(core, hours, exact(hours))
    # 6.662197 h is where this curve has 5.4.
    assert found["value_s"] / H_S == pytest.approx(CURVE["time_to_5_4_h"], abs=1e-4)
    assert found["low_s"] < found["value_s"] < found["high_s"]
    assert found["basis"] == "acid.readings"
    assert found["set_aside"] == []


def test_the_range_is_longer_on_the_late_side(core):
    hours = [0, 1, 2, 3]
    found = forecast(core, hours, exact(hours))
    late, early = [abs(found[x] - found["value_s"]) for x in ("high_s", "low_s")]
    assert late > early


def test_later_readings_narrow_the_range(core):
    widths = []
    for last in (3, 4, 5, 6):
        hours = [last * part / 4 for part in range(5)]
        found = forecast(core, hours, exact(hours))
        widths.append(found["high_s"] - found["low_s"])
    assert widths == sorted(widths, reverse=True)


def test_an_uncertain_end_or_shape_widens_the_range(core):
    hours = [0, 1, 2, 3, 4]
    widths = []
    for sds in ((0.02, 0, 0), (0.02, 0, 0.05), (0.02, 0.06, 0.05)):
        found = forecast(core, hours, exact(hours), sds=sds)
        widths.append(found["high_s"] - found["low_s"])
    assert widths == sorted(widths)
    assert widths[0] < widths[1]


def test_a_target_near_an_uncertain_end_has_no_latest_time(core):
    hours = [0, 1, 2, 3, 4]
    found = forecast(core, hours, exact(hours), 5.23, (0.02, 0, 0.05))
    assert found["low_s"] < found["value_s"]
    assert found["high_s"] is None


@pytest.mark.parametrize(
    ("hours", "phs", "basis"),
    [
        ([], [], "acid.not_enough_readings"),
        ([0, 3], [6.6, 6.2], "acid.not_enough_readings"),
        ([0, 1, 2], [6.6, 6.55, 6.46], "acid.not_enough_drop"),
    ],
)
def test_before_the_ph_has_fallen_there_is_no_forecast(core, hours, phs, basis):
    found = forecast(core, hours, phs)
    assert found["basis"] == basis
    assert (found["value_s"], found["low_s"], found["high_s"]) == (None, None, None)


@pytest.mark.parametrize(
    ("phs", "basis"),
    [
        ([5.21, 5.6, 6.3], "acid.no_curve"),
        ([6.6, 6.6, 5.2, 5.2], "acid.no_curve"),
        ([5.0, 5.0, 5.0, 5.0, 6.0], "acid.no_curve"),
        ([6.6, 6.6, 6.6, 6.6, 6.6, 6.2], "acid.too_uncertain"),
    ],
)
def test_readings_that_no_one_curve_fits_give_no_forecast(core, phs, basis):
    found = forecast(core, range(len(phs)), phs)
    assert found["basis"] == basis
    assert (found["value_s"], found["low_s"], found["high_s"]) == (None, None, None)


def test_scatter_all_over_sets_nothing_aside(core):
    phs = [6.55, 6.62, 6.30, 6.42, 6.05, 6.15, 5.80]
    assert forecast(core, range(7), phs)["set_aside"] == []


def test_a_mistyped_reading_is_set_aside_and_named(core):
    hours = [0, 0.5, 1, 1.5, 2, 2.5, 3]
    phs = exact(hours)
    wild = [5.38 if i == 3 else ph for i, ph in enumerate(phs)]
    found = forecast(core, hours, wild)
    assert found["set_aside"] == [3]
    assert found["value_s"] / H_S == pytest.approx(CURVE["time_to_5_4_h"], abs=1e-3)


def test_the_published_gouda_falls_inside_the_forecast_from_its_vat(core):
    # Readings to the first whey-off at 3 h; the table has 5.40 at 8 h.
    sds = (0.02, acid_forecast.SHAPE_SD_PH, 0.05)
    found = ask(core, "forecast", GOUDA_S[:4], GOUDA["phs"][:4], 5.4, 6.6, 5.2, *sds)
    assert found["low_s"] < GOUDA_S[4] < found["high_s"]


@pytest.mark.parametrize(
    ("target_ph", "sds", "words"),
    [
        (5.1, (0.02, 0, 0), "ph 5.1 off_curve \\[5.2, "),
        (6.7, (0.02, 0, 0), "ph 6.7 off_curve \\[5.2, "),
        (5.4, (0, 0, 0), "reading_sd_ph 0 not_above 0"),
        (5.4, (0.02, -1, 0), "shape_sd_ph -1 below 0"),
        (5.4, (0.02, 0, -1), "end_sd_ph -1 below 0"),
    ],
)
def test_an_impossible_forecast_is_refused(core, target_ph, sds, words):
    with pytest.raises(ValueError, match=words):
        forecast(core, [0, 1, 2], [6.6, 6.5, 6.3], target_ph, sds)


@pytest.mark.parametrize(
    "hours",
    [[1, 2, 3], [0, 1, 2, 2.5, 3], [0, 1.5, 3, 4.5, 6], [x / 2 for x in range(9)]],
    ids=lambda hours: f"{len(hours)} readings to {hours[-1]} h",
)
@pytest.mark.parametrize(("reading_sd", "end_sd"), [(0.02, 0.0), (0.03, 0.05)])
def test_the_range_holds_the_truth_nine_times_in_ten(hours, reading_sd, end_sd):
    chance, held, makes = random.Random(3), 0, 0
    times_s = [hour * H_S for hour in hours]
    for _ in range(400):
        fall = 0.25 / H_S * math.exp(chance.gauss(0, 0.15))
        lag_s = H_S * chance.gauss(1.2, 0.3)
        end_ph = chance.gauss(5.2, end_sd)
        four = (6.6, end_ph, fall, lag_s)
        phs = [
            acid.gompertz_ph(time_s, *four) + chance.gauss(0, reading_sd)
            for time_s in times_s
        ]
        found = acid_forecast.forecast(
            times_s, phs, 5.4, 6.6, 5.2, reading_sd, 0.0, end_sd
        )
        if found["value_s"] is None:
            continue
        makes += 1
        truth_s = acid.gompertz_time_s(5.4, *four)
        held += found["low_s"] <= truth_s <= (found["high_s"] or math.inf)
    assert makes > 390
    assert 0.85 <= held / makes <= 0.95


def test_what_is_off_in_shape_stays_in_the_range_however_many_readings(core):
    # At the steepest place, 0.25 pH an hour, 0.06 pH of shape is at least
    # 1.645 × 2/3 × 0.06 / 0.25 h either way, though exact readings know the rest.
    hours = [x / 4 for x in range(17)]
    found = forecast(core, hours, exact(hours), 6.085, (0.001, 0.06, 0.0))
    assert (found["high_s"] - found["low_s"]) / 2 / H_S > 1.645 * 2 / 3 * 0.06 / 0.25
    sharp = forecast(core, hours, exact(hours), 6.085, (0.001, 0.0, 0.0))
    assert (sharp["high_s"] - sharp["low_s"]) / 2 / H_S < 0.05
