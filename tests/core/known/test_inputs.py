"""What a make knows already goes into its sums, equipment last."""

import pytest

from tests.core.known.making import Make


def test_a_power_limited_vat_is_entered_with_the_make(ask):
    make = Make("heat", "heat_forecast", equipment={"heating": "power"})
    make.run("heat", 5)
    for place in range(4):
        make.read("milk_temp_c", 30.0 + place, 6 + place, step="heat")
    assert make.known(ask, 10)["heating"] == "power"
    # 1 K a minute from 30 to 63.9 °C.
    assert make.value(ask, 10, "reach_s") == pytest.approx(33.9 * 60)


def test_equipment_that_is_no_number_is_asked_for(ask):
    equipment = {"bore_m": "63 mm", "lever_ratio": True}
    make = Make("press_1", "press_gauge", equipment=equipment).run("press_1", 5)
    for row in make.answers(ask, 6):
        assert "bore_m" in row["missing"]
        assert "lever_ratio" not in {item["name"] for item in row["known"]}
