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
