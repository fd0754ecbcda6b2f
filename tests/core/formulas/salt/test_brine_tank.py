import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.salt import brine_tank
from tests.conftest import ROOT


def test_topping_up_500_kg_from_19_to_21_per_cent(core):
    found = core("formulas.salt.brine_tank", "top_up_kg", 500.0, 0.19, 0.21, 12.0)
    assert found == pytest.approx(12.658, abs=5e-4)  # 500 * .02 / .79


def test_topping_up_100_kg_from_18_to_20_per_cent(core):
    found = core("formulas.salt.brine_tank", "top_up_kg", 100.0, 0.18, 0.20, 12.0)
    assert found == pytest.approx(2.5, rel=1e-12)


def test_a_load_weakens_the_tank_and_three_kilos_restore_it(core):
    after = core(
        "formulas.salt.brine_tank", "ledger_step", 500.0, 0.20, 2.0, 4.0, 0.0, 0.0
    )
    assert after["brine_kg"] == pytest.approx(502.0)
    assert after["salt_frac"] == pytest.approx(0.195219, abs=5e-7)  # 98 / 502
    salt_kg = core(
        "formulas.salt.brine_tank",
        "top_up_kg",
        *[after["brine_kg"], after["salt_frac"], 0.20, 12.0],
    )
    assert salt_kg == pytest.approx(3.0, abs=5e-4)


@given(st.floats(50, 2000), st.floats(0.05, 0.22), st.floats(0.001, 0.04))
def test_salt_topped_up_brings_exactly_the_strength_wanted(kg, salt_frac, more):
    wanted = salt_frac + more
    salt_kg = brine_tank.top_up_kg(kg, salt_frac, wanted, 12.0)
    after = brine_tank.ledger_step(kg, salt_frac, 0, 0, salt_kg, 0)
    assert after["salt_frac"] == pytest.approx(wanted, rel=1e-12)


@given(st.floats(50, 2000), st.floats(0.05, 0.26), st.floats(0.2, 1))
def test_water_added_brings_exactly_the_strength_wanted(kg, salt_frac, share):
    wanted = salt_frac * share
    water_kg = brine_tank.thin_down_kg(kg, salt_frac, wanted)
    after = brine_tank.ledger_step(kg, salt_frac, 0, 0, 0, water_kg)
    assert after["salt_frac"] == pytest.approx(wanted, rel=1e-9)


@given(
    st.lists(st.tuples(st.floats(0, 2), st.floats(0, 4), st.floats(0, 4)), max_size=20)
)
def test_the_ledger_neither_makes_nor_loses_salt(loads):
    tank = {"brine_kg": 500.0, "salt_frac": 0.20}
    for out_kg, in_kg, added_kg in loads:
        tank = brine_tank.ledger_step(
            tank["brine_kg"], tank["salt_frac"], out_kg, in_kg, added_kg, 0.0
        )
    salt = 100 - sum(load[0] for load in loads) + sum(load[2] for load in loads)
    water = 400 + sum(load[1] for load in loads)
    assert tank["brine_kg"] * tank["salt_frac"] == pytest.approx(salt, rel=1e-9)
    assert tank["brine_kg"] == pytest.approx(salt + water, rel=1e-9)


def test_nothing_in_or_out_changes_nothing(core):
    after = core("formulas.salt.brine_tank", "ledger_step", 480.0, 0.19, 0, 0, 0, 0)
    assert after["brine_kg"] == pytest.approx(480.0)
    assert after["salt_frac"] == pytest.approx(0.19)


def test_water_dried_off_strengthens_the_brine(core):
    after = core("formulas.salt.brine_tank", "ledger_step", 500, 0.20, 0, 0, 0, -100)
    assert after["salt_frac"] == pytest.approx(0.25)  # 100 in 400


def test_a_fresh_brine_of_100_litres(core):
    # 100 L at 1147.8 kg/m³ (WNT 1974) is 114.78 kg, a fifth of it salt.
    found = core("formulas.salt.brine_tank", "make_up", 100.0, 0.20, 20.0)
    assert found["salt_kg"] == pytest.approx(22.96, abs=0.01)
    assert found["water_kg"] == pytest.approx(91.82, abs=0.04)
    assert found["salt_kg"] + found["water_kg"] == pytest.approx(found["brine_kg"])


LIMITS = {
    "salt_min_frac": {"value": 0.16, "status": "secondary"},
    "salt_max_frac": {"value": 0.23, "status": "read"},
    "temp_min_c": {"value": 10, "status": "read"},
    "temp_max_c": {"value": 15, "status": "memory"},
}


def test_15_9_per_cent_is_reported_against_16(core):
    found = core("formulas.salt.brine_tank", "check_brine", 0.159, 12.0, LIMITS)
    assert found == [
        {
            "field": "salt_frac",
            "key": "below_working_range",
            "value": 0.159,
            "limit": 0.16,
        }
    ]


def test_the_limits_themselves_are_inside(core):
    for salt_frac in (0.16, 0.23):
        assert (
            core("formulas.salt.brine_tank", "check_brine", salt_frac, 10, LIMITS) == []
        )


def test_strength_and_cold_are_both_reported(core):
    found = core("formulas.salt.brine_tank", "check_brine", 0.24, 8.0, LIMITS)
    assert [(p["field"], p["key"]) for p in found] == [
        ("salt_frac", "above_working_range"),
        ("temp_c", "below_working_range"),
    ]


def test_a_limit_from_memory_is_passed_over(core):
    assert core("formulas.salt.brine_tank", "check_brine", 0.20, 18.0, LIMITS) == []


@pytest.mark.parametrize(
    ("name", "arguments", "words"),
    [
        ("top_up_kg", [500, 0.22, 0.20, 12], r"salt_frac 0.22 above 0.2"),
        ("top_up_kg", [500, 0.20, 0.27, 12], r"wanted_frac 0.27 above_saturation"),
        ("thin_down_kg", [500, 0.18, 0.20], r"salt_frac 0.18 below 0.2"),
        ("ledger_step", [100, 0.2, 25, 0, 0, 0], r"salt_out_kg 25 above 20"),
        ("ledger_step", [100, 0.2, 0, 0, 0, -80], r"water_left_kg .* not_above 0"),
        ("tank_kg", [0, 0.2, 12], r"volume_l 0 not_above 0"),
        ("check_brine", [0.27, 12, {}], r"salt_frac 0.27 above_saturation"),
    ],
)
def test_an_impossible_tank_is_refused_in_words(core, name, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.salt.brine_tank", name, *arguments)


def test_the_shipped_limits_warn_of_a_weak_brine(core):
    path = ROOT / "server" / "rules" / "brine.json"
    limits = json.loads(path.read_text(encoding="utf-8"))["limits"]
    found = core("formulas.salt.brine_tank", "check_brine", 0.159, 12.0, limits)
    assert [problem["key"] for problem in found] == ["below_working_range"]
    assert core("formulas.salt.brine_tank", "check_brine", 0.21, 12.0, limits) == []
