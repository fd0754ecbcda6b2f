import pytest

from tests.core.sums.asking import answer, values


def test_humidity_agrees_with_the_reference_library(core):
    # PsychroLib: 13 and 12 °C give 89.27 %; 0.2 K is about 2 %.
    row = values(core, "humidity", {"dry_c": 13, "wet_c": 12})[("humidity_frac", None)]
    assert row["value"] == pytest.approx(0.8927, abs=0.0015)
    assert row["high"] - row["low"] == pytest.approx(0.04, abs=0.005)


def test_a_wet_bulb_warmer_than_the_dry_one_cannot_be(core):
    found = answer(core, "humidity", {"dry_c": 12, "wet_c": 13})
    assert found["problems"][0]["field"] == "wet_c"


@pytest.mark.parametrize("pressure_kpa", [50, 110])
def test_any_air_pressure_that_may_be_typed_is_worked_with(core, pressure_kpa):
    given = {"dry_c": 13, "wet_c": 12, "air_pressure_kpa": pressure_kpa}
    found = values(core, "humidity", given)[("humidity_frac", None)]["value"]
    # 6.62e-4 of a kPa more or less, a K apart, of 1.4978 kPa in saturated air.
    expected = 0.8927 + 6.62e-4 / 1.4978 * (101.325 - pressure_kpa)
    assert found == pytest.approx(expected, abs=0.0015)  # as the library's above


@pytest.mark.parametrize("pressure_kpa", [49.9, 110.1])
def test_an_air_pressure_that_no_creamery_has_is_refused_as_typed(core, pressure_kpa):
    given = {"dry_c": 13, "wet_c": 12, "air_pressure_kpa": pressure_kpa}
    (problem,) = answer(core, "humidity", given)["problems"]
    assert problem["field"] == "air_pressure_kpa"
    assert problem["limit"] in (50, 110)
