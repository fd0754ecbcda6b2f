import pytest

from tests.core.sums.asking import amount, answer, table, typed, values


def test_drying_by_hand(core):
    # 12 to 11.76 kg is 2 %; 0.3134 m², 28 d: 27.35 g/(m² d).
    given = {
        "start_kg": 12,
        "now_kg": 11.76,
        "days": 28,
        "diameter_m": 0.35,
        "height_m": 0.11,
        "moisture_frac": 0.43,
    }
    found = values(core, "weight_loss", given)
    assert found[("loss_frac", None)]["value"] == pytest.approx(0.02)
    assert found[("loss_g_m2_day", None)]["value"] == pytest.approx(27.35, abs=0.01)
    # Solids stay: 1 - 0.57 × 12 / 11.76.
    after = found[("moisture_after_frac", None)]["value"]
    assert after == pytest.approx(1 - 0.57 * 12 / 11.76)


def test_a_loss_that_goes_by_the_root_of_time_goes_on_so(core):
    rows = [[1, 0.01], [4, 0.02], [9, 0.03]]
    given = {"weighings": table(["at_day", "loss_frac"], *rows), "days": 16}
    assert amount(core, "loss_forecast", given, "loss_frac") == pytest.approx(0.04)


def test_percent_may_be_typed(core):
    given = {
        "start_kg": typed("26,455", "lb"),
        "now_kg": 11.76,
        "moisture_frac": typed("43", "%"),
    }
    got = amount(core, "weight_loss", given, "loss_frac")
    assert got == pytest.approx(0.02, abs=1e-4)


def test_a_wheel_to_be_dried_is_weighed_for(core):
    # 100 kg at 43 % reach 40 % at 95 kg.
    given = {
        "start_kg": 100,
        "now_kg": 98,
        "moisture_frac": 0.43,
        "wanted_moisture_frac": 0.40,
    }
    assert amount(core, "weight_loss", given, "wanted_kg") == pytest.approx(95)


def test_a_far_forecast_of_drying_is_a_guide_only(core):
    rows = [[1, 0.01], [4, 0.02], [9, 0.03]]
    given = {"weighings": table(["at_day", "loss_frac"], *rows), "days": 100}
    found = answer(core, "loss_forecast", given)
    assert "note.loss_guide_only" in [row["key"] for row in found["notes"]]
