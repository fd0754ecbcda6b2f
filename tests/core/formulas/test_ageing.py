import math

import psychrolib
import pytest
from CoolProp.CoolProp import PropsSI
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from server.core.formulas import ageing

DAY_MS = 86400000
SEA_PA = 101325.0

psychrolib.SetUnitSystem(psychrolib.SI)


# PsychroLib 2.5.0, GetRelHumFromTWetBulb at 101 325 Pa, written to 0.01 %.
@pytest.mark.parametrize(
    ("dry_c", "wet_c", "percent"),
    [(13, 12, 89.27), (13, 12.5, 94.59), (14, 13, 89.59), (12, 11, 88.93)],
)
def test_humidity_from_two_thermometers(core, dry_c, wet_c, percent):
    found = core("formulas.ageing", "humidity_frac", dry_c, wet_c, SEA_PA)
    # The short equation differs from the library by up to 0.15 %, a fourteenth
    # of what a wet bulb 0.2 K off does.
    assert found * 100 == pytest.approx(percent, abs=0.15)


@pytest.mark.parametrize("dry_c", [4, 8, 12, 16, 20])
@pytest.mark.parametrize("below_k", [0, 0.5, 1, 2, 3])
def test_humidity_agrees_with_a_library_in_any_store(dry_c, below_k):
    reference = psychrolib.GetRelHumFromTWetBulb(dry_c, dry_c - below_k, SEA_PA)
    found = ageing.humidity_frac(dry_c, dry_c - below_k, SEA_PA)
    # A cheese store is within 2 K; 3 K down, the short equation is 0.7 % off.
    assert found == pytest.approx(reference, abs=0.007 if below_k > 2 else 0.005)


@pytest.mark.parametrize(("temp_c", "pa"), [(13, 1497.81), (13, 1498.10)])
def test_vapour_pressure_of_two_libraries(core, temp_c, pa):
    # PsychroLib, then CoolProp; the Magnus constants differ by 0.2 %.
    found = core("formulas.ageing", "vapour_pressure_pa", temp_c)
    assert found == pytest.approx(pa, rel=3e-3)


@pytest.mark.parametrize("temp_c", [1, 5, 10, 15, 20, 30])
def test_vapour_pressure_follows_the_steam_tables(temp_c):
    reference = PropsSI("P", "T", temp_c + 273.15, "Q", 0, "Water")
    assert ageing.vapour_pressure_pa(temp_c) == pytest.approx(reference, rel=3.5e-3)


def test_dew_point_of_13_over_12(core):
    humidity = core("formulas.ageing", "humidity_frac", 13.0, 12.0, SEA_PA)
    found = core("formulas.ageing", "dew_point_c", 13.0, humidity)
    assert found == pytest.approx(11.277, abs=0.03)  # 0.15 % of humidity


@pytest.mark.parametrize("humidity", [0.7, 0.8, 0.9, 0.95])
@pytest.mark.parametrize("temp_c", [8, 12, 16])
def test_dew_point_agrees_with_a_library(temp_c, humidity):
    reference = psychrolib.GetTDewPointFromRelHum(temp_c, humidity)
    assert ageing.dew_point_c(temp_c, humidity) == pytest.approx(reference, abs=0.02)


@given(st.floats(0, 30))
def test_saturated_air_is_at_its_dew_point(temp_c):
    assert ageing.dew_point_c(temp_c, 1.0) == pytest.approx(temp_c, abs=1e-9)


def test_equal_thermometers_mean_saturated_air(core):
    found = core("formulas.ageing", "humidity_frac", 12.0, 12.0, SEA_PA)
    assert found == pytest.approx(1.0, rel=1e-12)


def test_a_fifth_of_a_degree_is_about_two_per_cent(core):
    found = core("formulas.ageing", "humidity_range", 13.0, 12.0, SEA_PA, 0.2)
    assert found["high"] - found["value"] == pytest.approx(0.02, abs=0.003)
    assert found["value"] - found["low"] == pytest.approx(0.02, abs=0.003)


def test_the_humidity_range_stops_at_saturation(core):
    found = core("formulas.ageing", "humidity_range", 12.0, 11.95, SEA_PA, 0.2)
    assert found["high"] == pytest.approx(1.0)


def test_a_dry_wick_is_not_called_negative_humidity(core):
    with pytest.raises(ValueError, match="wet_c 5 is too far below dry_c 40"):
        core("formulas.ageing", "humidity_frac", 40, 5, SEA_PA)


def test_a_wet_bulb_above_the_dry_is_refused(core):
    with pytest.raises(ValueError, match="wet_c 14 is above 13"):
        core("formulas.ageing", "humidity_frac", 13, 14, SEA_PA)


def test_two_per_cent_in_four_weeks_by_area(core):
    area = core("formulas.ageing", "wheel_area_m2", 0.35, 0.11)
    assert area == pytest.approx(0.3134, abs=5e-5)  # pi * .35 * .285
    found = core("formulas.ageing", "loss_g_m2_day", 12.0, 11.76, 0.3134, 28 * DAY_MS)
    assert found == pytest.approx(27.35, abs=5e-3)  # 240 g over .3134 over 28


def test_drying_keeps_the_solids(core):
    # 57 kg of solids in 95 kg: 40 % moisture.
    found = core("formulas.ageing", "moisture_after_frac", 0.43, 100.0, 95.0)
    assert found == pytest.approx(0.40, rel=1e-12)
    back = core("formulas.ageing", "mass_at_moisture_kg", 0.43, 100.0, 0.40)
    assert back == pytest.approx(95.0, rel=1e-12)


def test_a_wheel_lighter_than_its_solids_is_refused(core):
    with pytest.raises(ValueError, match="now_kg 50 is below 57"):
        core("formulas.ageing", "moisture_after_frac", 0.43, 100, 50)


def test_share_lost(core):
    found = core("formulas.ageing", "weight_loss_frac", 12.0, 11.76)
    assert found == pytest.approx(0.02, rel=1e-12)


def test_exact_weighings_are_carried_on_exactly(core):
    weighings = [[d, 0.01 * math.sqrt(d) + 0.001 * d] for d in (1, 4, 9, 16)]
    found = core("formulas.ageing", "loss_forecast", weighings, 25.0)
    assert found["value"] == pytest.approx(0.05 + 0.025, rel=1e-9)
    assert found["high"] - found["low"] == pytest.approx(0, abs=1e-7)


def test_scattered_weighings_widen_the_range(core):
    weighings = [[1, 0.012], [4, 0.023], [9, 0.040], [16, 0.055]]
    near = core("formulas.ageing", "loss_forecast", weighings, 20.0)
    far = core("formulas.ageing", "loss_forecast", weighings, 60.0)
    assert near["low"] < near["value"] < near["high"]
    assert far["high"] - far["low"] > near["high"] - near["low"]


def test_weighings_of_one_day_say_nothing_of_the_next(core):
    with pytest.raises(ValueError, match="all on one day, 7"):
        core("formulas.ageing", "loss_forecast", [[7, 0.01]] * 3, 14)


def held(days, temp_c):
    return [{"at_ms": 0, "temp_c": temp_c}, {"at_ms": days * DAY_MS, "temp_c": temp_c}]


# Q10 2.5 at 13 °C, by hand: 14 * 2.5**.2 and 30 * 2.5**-.3.
@pytest.mark.parametrize(
    ("days", "temp_c", "worth"), [(14, 15.0, 16.816), (30, 10.0, 22.790), (9, 13.0, 9)]
)
def test_days_are_worth_more_when_warmer(core, days, temp_c, worth):
    found = core(
        "formulas.ageing",
        "ripening_days",
        *[held(days, temp_c), 13.0, 2.5, 40 * DAY_MS],
    )
    assert found["value"] == pytest.approx(worth, abs=5e-4)
    assert found["basis"] == "all_known"


def test_a_warming_store_is_integrated_exactly(core):
    readings = [{"at_ms": 0, "temp_c": 8.0}, {"at_ms": 10 * DAY_MS, "temp_c": 18.0}]
    found = core("formulas.ageing", "ripening_days", readings, 13.0, 2.5, 20 * DAY_MS)
    exact, _ = quad(lambda day: 2.5 ** ((8 + day - 13) / 10), 0, 10)
    assert found["value"] == pytest.approx(exact, rel=1e-9)


def test_a_long_gap_is_left_out_and_said(core):
    readings = [
        {"at_ms": 0, "temp_c": 13.0},
        {"at_ms": DAY_MS, "temp_c": 13.0},
        {"at_ms": 6 * DAY_MS, "temp_c": 13.0},
        {"at_ms": 7 * DAY_MS, "temp_c": 13.0},
    ]
    found = core("formulas.ageing", "ripening_days", readings, 13.0, 2.5, DAY_MS)
    assert found["value"] == pytest.approx(2.0)
    assert found["counted_days"] == pytest.approx(2.0)
    assert found["unknown_days"] == pytest.approx(5.0)
    assert found["basis"] == "gaps_left_out"


@given(st.lists(st.floats(6, 18), min_size=3, max_size=12))
def test_ripening_in_two_pieces_adds_up(temps):
    readings = [{"at_ms": i * DAY_MS, "temp_c": t} for i, t in enumerate(temps)]

    def worth(part):
        return ageing.ripening_days(part, 13.0, 2.5, DAY_MS)["value"]

    whole = worth(readings)
    assert worth(readings[:2]) + worth(readings[1:]) == pytest.approx(whole, rel=1e-9)


def test_readings_out_of_order_are_refused(core):
    with pytest.raises(ValueError, match="at_ms 5 is before"):
        core(
            "formulas.ageing",
            "ripening_days",
            *[[{"at_ms": 9, "temp_c": 1}, {"at_ms": 5, "temp_c": 1}], 13, 2.5, DAY_MS],
        )
