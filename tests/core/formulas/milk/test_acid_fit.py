import math

import numpy
import pytest
from scipy.optimize import curve_fit

from server.core.formulas.milk import acid, acid_forecast
from tests.core.formulas.tables import table

CURVE = table("acid_curve")
SCHEDULES = table("acid_schedules")
GOUDA = next(row for row in SCHEDULES["rows"] if row["name"] == "Gouda")
H_S = 3600
GOUDA_S = [60 * minutes for minutes in GOUDA["times_min"]]


def ask(core, name, *args):
    return core("formulas.milk.acid_fit", name, *args)


def exact(hours, start_ph=6.6, end_ph=5.2, fall_ph_h=0.25, lag_h=0.75):
    four = (start_ph, end_ph, fall_ph_h / H_S, lag_h * H_S)
    return [acid.gompertz_ph(hour * H_S, *four) for hour in hours]


def test_the_fit_to_the_published_gouda_is_the_library_one(core):
    found = ask(core, "fit_gompertz", GOUDA_S, GOUDA["phs"], 6.6, 5.2)
    expected = CURVE["gouda_fit"]
    assert found["fall_ph_s"] * H_S == pytest.approx(expected["fall_ph_h"], abs=5e-6)
    assert found["lag_s"] / H_S == pytest.approx(expected["lag_h"], abs=5e-5)
    assert abs(found["worst"]) == pytest.approx(expected["worst_ph"], abs=5e-4)
    assert found["settled"] is True
    args = (5.4, 6.6, 5.2, found["fall_ph_s"], found["lag_s"])
    got = core("formulas.milk.acid", "gompertz_time_s", *args) / H_S
    assert got == pytest.approx(expected["time_to_5_4_h"], abs=5e-4)


@pytest.mark.parametrize("row", SCHEDULES["rows"], ids=lambda row: row["name"])
def test_every_published_schedule_is_fitted_as_an_independent_library_does(core, row):
    times_s = [60 * minutes for minutes in row["times_min"]]

    def curve(time_h, fall, lag):
        drop = 6.6 - row["end_ph"]
        return 6.6 - drop * numpy.exp(
            -numpy.exp(fall * math.e / drop * (lag - time_h) + 1)
        )

    hours = numpy.array(times_s) / H_S
    (fall, lag), _ = curve_fit(
        curve, hours, row["phs"], p0=(0.25, 1.0), xtol=1e-12, ftol=1e-12
    )
    found = ask(core, "fit_gompertz", times_s, row["phs"], 6.6, row["end_ph"])
    assert found["fall_ph_s"] * H_S == pytest.approx(fall, rel=1e-5)
    assert found["lag_s"] / H_S == pytest.approx(lag, rel=1e-4)


@pytest.mark.parametrize("row", SCHEDULES["rows"], ids=lambda row: row["name"])
def test_published_schedules_stray_from_the_shape_as_stated(row):
    times_s = [60 * minutes for minutes in row["times_min"]]
    found = acid_forecast.fit_gompertz(times_s, row["phs"], 6.6, row["end_ph"])
    spread = math.sqrt(found["square_sum"] / (len(times_s) - 2))
    assert spread == pytest.approx(acid_forecast.SHAPE_SD_PH, abs=0.02)


@pytest.mark.parametrize(
    ("fall_ph_h", "lag_h"), [(0.05, 0.0), (0.25, 0.75), (0.4, 2.0), (0.8, -0.5)]
)
def test_exact_readings_give_their_own_curve_back(core, fall_ph_h, lag_h):
    hours = [0.5, 1.5, 3, 4, 5]
    phs = exact(hours, fall_ph_h=fall_ph_h, lag_h=lag_h)
    times_s = [hour * H_S for hour in hours]
    found = ask(core, "fit_gompertz", times_s, phs, 6.6, 5.2)
    assert found["fall_ph_s"] * H_S == pytest.approx(fall_ph_h, rel=1e-6)
    assert found["lag_s"] / H_S == pytest.approx(lag_h, abs=1e-5)


def test_readings_above_the_start_do_not_stop_the_fit(core):
    phs = [6.63, 6.61, 6.45, 6.30, 6.10]
    found = ask(core, "fit_gompertz", [0, 1800, 5400, 7200, 9000], phs, 6.6, 5.2)
    assert found["settled"] is True
    assert found["fall_ph_s"] > 0


@pytest.mark.parametrize("phs", [[6.30, 6.40, 6.50], [6.45, 6.45, 6.45]])
def test_a_ph_that_does_not_fall_is_fitted_without_complaint(core, phs):
    found = ask(core, "fit_gompertz", [0, 3600, 7200], phs, 6.6, 5.2)
    assert found["fall_ph_s"] > 0


@pytest.mark.parametrize(
    ("phs", "start_ph", "words"),
    [
        ([6.5], 6.6, "phs 1 too_few 2"),
        ([6.7, 6.8], 6.6, "none_between \\[5.2, 6.6]"),
        ([6.5, 6.4], 5.0, "end_ph 5.2 not_below 5.0"),
    ],
)
def test_a_fit_that_cannot_be_is_refused(core, phs, start_ph, words):
    times_s = [0, 3600][: len(phs)]
    with pytest.raises(ValueError, match=words):
        ask(core, "fit_gompertz", times_s, phs, start_ph, 5.2)


def forecast(core, hours, phs, target_ph=5.4, sds=(0.02, 0, 0)):
    times_s = [hour * H_S for hour in hours]
    return ask(core, "forecast", times_s, phs, target_ph, 6.6, 5.2, *sds)
