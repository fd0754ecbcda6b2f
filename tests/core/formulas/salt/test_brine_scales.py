import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.salt import brine, brine_scales
from tests.conftest import ROOT


def table(name):
    return json.loads((ROOT / "tests" / "cases" / name).read_text(encoding="utf-8"))


WNT = table("brine_density.json")


@pytest.mark.parametrize(("percent", "g_l", "_density", "_fall"), WNT["rows"])
def test_grams_in_a_litre_are_the_published_ones(core, percent, g_l, _density, _fall):
    found = core("formulas.salt.brine_scales", "salt_g_l_of_brine", percent / 100, 20.0)
    assert found == pytest.approx(g_l, abs=WNT["tolerance"]["salt_g_l"])


def test_35_9_g_on_100_g_of_water_is_a_saturated_brine(core):
    found = core("formulas.salt.brine_scales", "salt_frac_from_g_kg_water", 359.0, 25.0)
    assert found == pytest.approx(0.264, abs=5e-4)  # 35.9 / 135.9


def test_250_g_on_a_kilogram_of_water_is_20_per_cent(core):
    found = core("formulas.salt.brine_scales", "salt_frac_from_g_kg_water", 250.0, 15.0)
    assert found == pytest.approx(0.20, rel=1e-12)


def test_220_g_on_a_kilogram_of_water_is_18_per_cent_not_22(core):
    found = core("formulas.salt.brine_scales", "salt_frac_from_g_kg_water", 220.0, 15.0)
    assert found == pytest.approx(0.180, abs=5e-4)


def test_a_titration_by_hand(core):
    # 2 mmol of silver on half a gram: 2 x 58.4428 mg in 500 mg is 23.377 %.
    found = core(
        "formulas.salt.brine_scales", "salt_frac_from_titration", 20.5, 0.5, 0.1, 0.5
    )
    assert found == pytest.approx(0.233771, abs=5e-7)


@given(st.floats(0, 0.262), st.floats(0, 30))
def test_every_scale_leads_back_to_the_same_strength(salt_frac, temp_c):
    density = brine.brine_density_kg_m3(salt_frac, temp_c)
    ways = [
        brine.salt_frac_from_density(density, temp_c),
        brine.salt_frac_from_g_l(
            brine_scales.salt_g_l_of_brine(salt_frac, temp_c), temp_c
        ),
        brine_scales.salt_frac_from_g_kg_water(
            brine_scales.salt_g_kg_of_water(salt_frac, temp_c), temp_c
        ),
    ]
    assert ways == pytest.approx([salt_frac] * 3, abs=1e-9)


@pytest.mark.parametrize(
    ("name", "arguments", "words"),
    [
        ("salt_frac_from_g_kg_water", [400, 20], r"above_saturation"),
        ("salt_frac_from_titration", [1, 2, 0.1, 1], r"silver_ml 1 below 2"),
    ],
)
def test_an_impossible_reading_is_refused_in_words(core, name, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.salt.brine_scales", name, *arguments)
