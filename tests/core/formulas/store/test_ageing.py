import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from server.core.formulas.store import ageing

DAY_MS = 86400000


def test_two_per_cent_in_four_weeks_by_area(core):
    area = core("formulas.store.ageing", "wheel_area_m2", 0.35, 0.11)
    assert area == pytest.approx(0.3134, abs=5e-5)  # pi * .35 * .285
    found = core(
        "formulas.store.ageing", "loss_g_m2_day", 12.0, 11.76, 0.3134, 28 * DAY_MS
    )
    assert found == pytest.approx(27.35, abs=5e-3)  # 240 g over .3134 over 28


def test_drying_keeps_the_solids(core):
    # 57 kg of solids in 95 kg: 40 % moisture.
    found = core("formulas.store.ageing", "moisture_after_frac", 0.43, 100.0, 95.0)
    assert found == pytest.approx(0.40, rel=1e-12)
    back = core("formulas.store.ageing", "mass_at_moisture_kg", 0.43, 100.0, 0.40)
    assert back == pytest.approx(95.0, rel=1e-12)


def test_a_wheel_lighter_than_its_solids_is_refused(core):
    with pytest.raises(ValueError, match="now_kg 50 below 57"):
        core("formulas.store.ageing", "moisture_after_frac", 0.43, 100, 50)


def test_share_lost(core):
    found = core("formulas.store.ageing", "weight_loss_frac", 12.0, 11.76)
    assert found == pytest.approx(0.02, rel=1e-12)


def test_exact_weighings_are_carried_on_exactly(core):
    weighings = [[d, 0.01 * math.sqrt(d) + 0.001 * d] for d in (1, 4, 9, 16)]
    found = core("formulas.store.ageing", "loss_forecast", weighings, 25.0)
    assert found["value"] == pytest.approx(0.05 + 0.025, rel=1e-9)
    assert found["high"] - found["low"] == pytest.approx(0, abs=1e-7)


def test_scattered_weighings_widen_the_range(core):
    weighings = [[1, 0.012], [4, 0.023], [9, 0.040], [16, 0.055]]
    near = core("formulas.store.ageing", "loss_forecast", weighings, 20.0)
    far = core("formulas.store.ageing", "loss_forecast", weighings, 60.0)
    assert near["low"] < near["value"] < near["high"]
    assert far["high"] - far["low"] > near["high"] - near["low"]


def test_weighings_of_one_day_say_nothing_of_the_next(core):
    with pytest.raises(ValueError, match="weighings 7 all_on_one_day"):
        core("formulas.store.ageing", "loss_forecast", [[7, 0.01]] * 3, 14)


def held(days, temp_c):
    return [{"at_ms": 0, "temp_c": temp_c}, {"at_ms": days * DAY_MS, "temp_c": temp_c}]


# Q10 2.5 at 13 °C, by hand: 14 * 2.5**.2 and 30 * 2.5**-.3.
@pytest.mark.parametrize(
    ("days", "temp_c", "worth"), [(14, 15.0, 16.816), (30, 10.0, 22.790), (9, 13.0, 9)]
)
def test_days_are_worth_more_when_warmer(core, days, temp_c, worth):
    found = core(
        "formulas.store.ageing",
        "ripening_days",
        *[held(days, temp_c), 13.0, 2.5, 40 * DAY_MS],
    )
    assert found["value"] == pytest.approx(worth, abs=5e-4)
    assert found["basis"] == "all_known"


def test_a_warming_store_is_integrated_exactly(core):
    readings = [{"at_ms": 0, "temp_c": 8.0}, {"at_ms": 10 * DAY_MS, "temp_c": 18.0}]
    found = core(
        "formulas.store.ageing", "ripening_days", readings, 13.0, 2.5, 20 * DAY_MS
    )
    exact, _ = quad(lambda day: 2.5 ** ((8 + day - 13) / 10), 0, 10)
    assert found["value"] == pytest.approx(exact, rel=1e-9)


def test_a_long_gap_is_left_out_and_said(core):
    readings = [
        {"at_ms": 0, "temp_c": 13.0},
        {"at_ms": DAY_MS, "temp_c": 13.0},
        {"at_ms": 6 * DAY_MS, "temp_c": 13.0},
        {"at_ms": 7 * DAY_MS, "temp_c": 13.0},
    ]
    found = core("formulas.store.ageing", "ripening_days", readings, 13.0, 2.5, DAY_MS)
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
    with pytest.raises(ValueError, match="at_ms 5 not_in_order"):
        core(
            "formulas.store.ageing",
            "ripening_days",
            *[[{"at_ms": 9, "temp_c": 1}, {"at_ms": 5, "temp_c": 1}], 13, 2.5, DAY_MS],
        )
