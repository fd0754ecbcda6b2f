import psychrolib
import pytest
from CoolProp.CoolProp import PropsSI
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.store import air

SEA_PA = 101325.0

psychrolib.SetUnitSystem(psychrolib.SI)


# PsychroLib 2.5.0, GetRelHumFromTWetBulb at 101 325 Pa, written to 0.01 %.
@pytest.mark.parametrize(
    ("dry_c", "wet_c", "percent"),
    [(13, 12, 89.27), (13, 12.5, 94.59), (14, 13, 89.59), (12, 11, 88.93)],
)
def test_humidity_from_two_thermometers(core, dry_c, wet_c, percent):
    found = core("formulas.store.air", "humidity_frac", dry_c, wet_c, SEA_PA)
    # The short equation differs from the library by up to 0.15 %, a fourteenth
    # of what a wet bulb 0.2 K off does.
    assert found * 100 == pytest.approx(percent, abs=0.15)


@pytest.mark.parametrize("dry_c", [4, 8, 12, 16, 20])
@pytest.mark.parametrize("below_k", [0, 0.5, 1, 2, 3])
def test_humidity_agrees_with_a_library_in_any_store(dry_c, below_k):
    reference = psychrolib.GetRelHumFromTWetBulb(dry_c, dry_c - below_k, SEA_PA)
    found = air.humidity_frac(dry_c, dry_c - below_k, SEA_PA)
    # A cheese store is within 2 K; 3 K down, the short equation is 0.7 % off.
    assert found == pytest.approx(reference, abs=0.007 if below_k > 2 else 0.005)


@pytest.mark.parametrize(("temp_c", "pa"), [(13, 1497.81), (13, 1498.10)])
def test_vapour_pressure_of_two_libraries(core, temp_c, pa):
    # PsychroLib, then CoolProp; the Magnus constants differ by 0.2 %.
    found = core("formulas.store.air", "vapour_pressure_pa", temp_c)
    assert found == pytest.approx(pa, rel=3e-3)


@pytest.mark.parametrize("temp_c", [1, 5, 10, 15, 20, 30])
def test_vapour_pressure_follows_the_steam_tables(temp_c):
    reference = PropsSI("P", "T", temp_c + 273.15, "Q", 0, "Water")
    assert air.vapour_pressure_pa(temp_c) == pytest.approx(reference, rel=3.5e-3)


def test_dew_point_of_13_over_12(core):
    humidity = core("formulas.store.air", "humidity_frac", 13.0, 12.0, SEA_PA)
    found = core("formulas.store.air", "dew_point_c", 13.0, humidity)
    assert found == pytest.approx(11.277, abs=0.03)  # 0.15 % of humidity


@pytest.mark.parametrize("humidity", [0.7, 0.8, 0.9, 0.95])
@pytest.mark.parametrize("temp_c", [8, 12, 16])
def test_dew_point_agrees_with_a_library(temp_c, humidity):
    reference = psychrolib.GetTDewPointFromRelHum(temp_c, humidity)
    assert air.dew_point_c(temp_c, humidity) == pytest.approx(reference, abs=0.02)


@given(st.floats(0, 30))
def test_saturated_air_is_at_its_dew_point(temp_c):
    assert air.dew_point_c(temp_c, 1.0) == pytest.approx(temp_c, abs=1e-9)


def test_equal_thermometers_mean_saturated_air(core):
    found = core("formulas.store.air", "humidity_frac", 12.0, 12.0, SEA_PA)
    assert found == pytest.approx(1.0, rel=1e-12)


def test_a_fifth_of_a_degree_is_about_two_per_cent(core):
    found = core("formulas.store.air", "humidity_range", 13.0, 12.0, SEA_PA, 0.2)
    assert found["high"] - found["value"] == pytest.approx(0.02, abs=0.003)
    assert found["value"] - found["low"] == pytest.approx(0.02, abs=0.003)


def test_the_humidity_range_stops_at_saturation(core):
    found = core("formulas.store.air", "humidity_range", 12.0, 11.95, SEA_PA, 0.2)
    assert found["high"] == pytest.approx(1.0)


def test_a_dry_wick_is_not_called_negative_humidity(core):
    with pytest.raises(ValueError, match="wet_c 5 too_far_below_dry 40"):
        core("formulas.store.air", "humidity_frac", 40, 5, SEA_PA)


def test_a_wet_bulb_above_the_dry_is_refused(core):
    with pytest.raises(ValueError, match="wet_c 14 above 13"):
        core("formulas.store.air", "humidity_frac", 13, 14, SEA_PA)
