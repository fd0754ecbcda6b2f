import pytest

from tests.core.sums.asking import amount, answer, band, typed, values

WHEEL = {"diameter_m": 0.35, "height_m": 0.118, "brine_salt_frac": 0.20}
DAY_S = 86400


@pytest.mark.parametrize(
    ("given", "salt_frac"),
    [
        # WNT 1974: 1147.8 kg/m³ at 20 °C is 20.0 %. At 15 °C the library thermo
        # has 1142.52 at 19 % and 1150.54 at 20 %: 19.66 %.
        ({"method": "density", "density_kg_m3": 1147.8, "brine_temp_c": 20}, 0.200),
        ({"method": "density", "density_kg_m3": 1147.8, "brine_temp_c": 15}, 0.1966),
        # 80 degrees salometer at 60 °F: 21.1 %.
        (
            {"method": "salometer", "salometer": 80, "brine_temp_c": typed("60", "F")},
            0.211,
        ),
        # 250 g on a kilogram of water is 20 %; 220 g is 18.0 %, not 22.
        ({"method": "g_kg_water", "salt_g_kg_water": 250}, 0.200),
        ({"method": "g_kg_water", "salt_g_kg_water": 220}, 0.180),
        ({"method": "titration", "silver_ml": 34.22, "sample_g": 1}, 0.200),
    ],
)
def test_each_way_of_reading_a_clean_brine_tells_its_strength(core, given, salt_frac):
    given = {**given, "brine_kind": "clean"}
    got = amount(core, "brine_strength", given, "brine_salt_frac")
    assert got == pytest.approx(salt_frac, abs=5e-4)  # printed to a tenth per cent


def test_20_baume_holds_both_published_figures(core):
    # 21.2 % (a dairy handbook) and 20.8 % (WNT densities).
    given = {
        "method": "baume",
        "baume": 20,
        "brine_temp_c": 15,
        "brine_kind": "clean",
    }
    row = values(core, "brine_strength", given)[("brine_salt_frac", None)]
    assert row["low"] <= 0.208
    assert row["high"] >= 0.212


def test_a_used_brine_reads_too_high_and_says_so(core):
    given = {"method": "baume", "baume": 20, "brine_temp_c": 15}
    found = answer(core, "brine_strength", given)
    row = found["values"][0]
    # One to two degrees less: 18 and 19 °Bé are 18.79 and 19.92 %.
    assert row["low"] == pytest.approx(0.1879, abs=0.002)
    assert row["high"] == pytest.approx(0.1992, abs=0.002)
    assert found["notes"][0]["key"] == "note.used_brine_reads_high"


def test_a_weak_brine_is_outside_the_working_limits(core):
    given = {
        "method": "titration",
        "silver_ml": 34.22 * 0.159 / 0.2,
        "sample_g": 1,
    }
    found = values(core, "brine_strength", given, ["brine"])
    assert found[("outside", "salt_frac")]["read"] == pytest.approx(0.159, abs=1e-4)


def test_an_instrument_not_read_is_asked_for(core):
    found = answer(core, "brine_strength", {"method": "baume"})
    assert found["missing"] == ["baume"]


def test_topping_up_by_hand(core):
    # 500 kg from 19 to 21 %: 500 × .02 / .79 = 12.658 kg.
    given = {"brine_kg": 500, "brine_salt_frac": 0.19, "wanted_salt_frac": 0.21}
    got = amount(core, "brine_top_up", given, "salt_kg")
    assert got == pytest.approx(500 * 0.02 / 0.79)


def test_making_up_a_litre_weighs_what_it_holds(core):
    given = {"volume_l": 1000, "brine_salt_frac": 0.2, "brine_temp_c": 20}
    found = values(core, "brine_make_up", given)
    # 1148 kg (WNT), a fifth of it salt.
    assert found[("brine_kg", None)]["value"] == pytest.approx(1147.8, abs=0.5)
    assert found[("salt_kg", None)]["value"] == pytest.approx(229.6, abs=0.1)


def test_time_in_brine_has_a_range_wide_enough_to_be_honest(core):
    # The facts: 2.11 days at 2.3e-10, 3.23 at 1.5e-10 m²/s for 2.0 %.
    row = values(core, "brine_time", WHEEL)[("time_s", None)]
    low, value, high = (end / DAY_S for end in band(row))
    assert value == pytest.approx(3.23, abs=0.01)
    assert low == pytest.approx(2.11, abs=0.01)
    assert high > 4.5


def test_large_wheels_take_about_three_days_and_small_ones_half_a_day(core):
    # Common practice: 10 kg about three days; 1 kg 12 h (a plant's own page).
    large = {"diameter_m": 0.33, "height_m": 0.11, "brine_salt_frac": 0.20}
    low, _, high = band(values(core, "brine_time", large)[("time_s", None)])
    assert low < 3 * DAY_S < high
    small = {"diameter_m": 0.13, "height_m": 0.075, "brine_salt_frac": 0.20}
    low, _, high = band(values(core, "brine_time", small)[("time_s", None)])
    assert low < 0.55 * DAY_S < high


def test_salt_after_a_time_at_hand(core):
    # 12 kg, 2 days, 2.3e-10: 1.95 %.
    given = {**WHEEL, "diffusion_m2_s": 2.3e-10, "brined_s": 2 * DAY_S}
    row = values(core, "brine_time", given)[("salt_after_frac", None)]
    assert row["value"] == pytest.approx(0.0195, abs=5e-5)
    assert row["low"] < row["value"] < row["high"]


def test_an_analysed_wheel_tells_its_own_factor(core):
    # 1.95 % after two days is what 2.3e-10 gives; the start is 1.5e-10.
    given = {**WHEEL, "cheese_salt_frac": 0.0195, "brined_s": 2 * DAY_S}
    found = values(core, "brine_factor", given)
    assert found[("diffusion_m2_s", None)]["value"] == pytest.approx(2.3e-10, rel=0.01)
    assert found[("factor", None)]["value"] == pytest.approx(2.3 / 1.5, rel=0.01)


def test_a_brine_sweeter_than_the_cheese_is_told_and_calcium_is_from_memory(core):
    given = {"brine_ph": 5.6, "cheese_ph": 5.2, "brine_kg": 1000}
    found = answer(core, "brine_check", given, rules=["brine"])
    assert "note.brine_ph_above_cheese" in [row["key"] for row in found["notes"]]
    assert found["status"] == "memory"


def test_grams_in_a_litre_tell_the_strength(core):
    # 229.6 g/L at 20 °C is 20 % (WNT 1974).
    given = {"method": "g_l", "salt_g_l": 229.6, "brine_temp_c": 20}
    got = amount(core, "brine_strength", given, "brine_salt_frac")
    assert got == pytest.approx(0.2, abs=1e-4)


def test_a_used_brine_is_too_dense_for_any_hydrometer(core):
    given = {"method": "density", "density_kg_m3": 1147.8, "brine_temp_c": 20}
    clean = {**given, "brine_kind": "clean"}
    used = values(core, "brine_strength", given)[("brine_salt_frac", None)]
    sure = amount(core, "brine_strength", clean, "brine_salt_frac")
    assert used["high"] < sure


def test_a_titration_needs_its_sample(core):
    found = answer(core, "brine_strength", {"method": "titration", "silver_ml": 30})
    assert found["missing"] == ["sample_g"]


def test_a_titration_beyond_saturation_is_refused(core):
    given = {"method": "titration", "silver_ml": 60, "sample_g": 1}
    found = answer(core, "brine_strength", given)
    assert found["problems"][0]["field"] == "method"


def test_topping_up_by_volume_and_thinning_down(core):
    # 1000 L of 20 % at 20 °C weigh 1147.8 kg (WNT); to 19 %: 1147.8 / 19 kg water.
    given = {
        "volume_l": 1000,
        "brine_salt_frac": 0.20,
        "wanted_salt_frac": 0.19,
        "brine_temp_c": 20,
    }
    got = amount(core, "brine_top_up", given, "water_kg")
    assert got == pytest.approx(1147.8 / 19, rel=1e-3)
    found = answer(core, "brine_top_up", {**given, "volume_l": {"value": 0}})
    assert found["problems"][0]["field"] == "volume_l"


def test_a_tank_neither_weighed_nor_measured_is_asked_for(core):
    given = {"brine_salt_frac": 0.20, "wanted_salt_frac": 0.21}
    assert answer(core, "brine_top_up", given)["missing"] == ["brine_kg"]


def test_a_brine_sourer_than_the_cheese_is_told(core):
    given = {"brine_ph": 4.9, "cheese_ph": 5.2, "brine_kg": 1000}
    found = answer(core, "brine_check", given, rules=["brine"])
    assert "note.brine_ph_below_cheese" in [row["key"] for row in found["notes"]]
    assert answer(core, "brine_check", given)["missing"] == ["rules"]


def rested(core, given):
    found = answer(core, "brine_strength", given)
    return {row["name"] for row in found["rests_on"]}, found["status"]


def test_a_strength_rests_on_nothing_that_its_way_does_without(core):
    names, _ = rested(core, {"method": "baume", "baume": 20})
    assert names == {"method", "brine_kind", "brine_temp_c", "baume"}
    silver = {"method": "titration", "silver_ml": 34.22, "sample_g": 1}
    names, status = rested(core, silver)
    assert names == {
        *("method", "brine_temp_c", "silver_ml", "blank_ml", "silver_mol_l"),
        "sample_g",
    }
    assert status == "practice"  # 0.1 mol/L, where nobody typed it
    # What was typed is told, even where it is of no use.
    names, _ = rested(core, {**silver, "baume": 20})
    assert "baume" in names


def test_a_rennet_dose_rests_on_the_strength_that_was_stated(core):
    given = {"milk_l": 1000, "strength_imcu_per_ml": 200}
    found = answer(core, "rennet_dose", given)
    names = {row["name"] for row in found["rests_on"]}
    assert "dose_imcu_per_l" in names
    assert "clot_s" not in names
    assert found["status"] != "memory"  # Soxhlet's 40 min are, and are not used
    given = {"strength_kind": "soxhlet", "milk_l": 1000, "strength_soxhlet": 10000}
    found = answer(core, "rennet_dose", given)
    names = {row["name"] for row in found["rests_on"]}
    assert "clot_s" in names
    assert "dose_imcu_per_l" not in names
