import json
import re

import pytest
from CoolProp.CoolProp import PropsSI
from hypothesis import given
from hypothesis import strategies as st
from thermo.electrochem import Laliberte_density

from server.core.formulas.salt import brine
from tests.conftest import ROOT


def table(name):
    return json.loads((ROOT / "tests" / "cases" / name).read_text(encoding="utf-8"))


WNT = table("brine_density.json")
ICT = table("brine_density_ict.json")
SATURATION = table("salt_saturation.json")


@pytest.mark.parametrize(("percent", "g_l", "density", "_fall"), WNT["rows"])
def test_density_at_20_c_is_the_published_one(core, percent, g_l, density, _fall):
    found = core("formulas.salt.brine", "brine_density_kg_m3", percent / 100, 20.0)
    assert found == pytest.approx(density, abs=WNT["tolerance"]["density_kg_m3"])


@pytest.mark.parametrize(("percent", "_g_l", "_density", "fall"), WNT["rows"])
def test_a_brine_gets_lighter_as_it_warms_as_published(percent, _g_l, _density, fall):
    cold = brine.brine_density_kg_m3(percent / 100, 18.0)
    warm = brine.brine_density_kg_m3(percent / 100, 22.0)
    tolerance = WNT["tolerance"]["fall_kg_m3_k"]
    assert (cold - warm) / 4 == pytest.approx(fall, abs=tolerance)


@pytest.mark.parametrize(("percent", "density_g_ml"), ICT["rows"])
def test_density_agrees_with_the_critical_tables(core, percent, density_g_ml):
    found = core("formulas.salt.brine", "brine_density_kg_m3", percent / 100, 20.0)
    tolerance = ICT["tolerance"]["density_g_ml"]
    assert found / 1000 == pytest.approx(density_g_ml, abs=tolerance)


@pytest.mark.parametrize("temp_c", [0, 5, 10, 13, 15, 20, 25, 30])
def test_density_follows_the_reference_equation(temp_c):
    for i in range(1, 53):
        salt_frac = i * 0.005
        reference = Laliberte_density(temp_c + 273.15, [salt_frac], ["7647-14-5"])
        found = brine.brine_density_kg_m3(salt_frac, temp_c)
        assert found == pytest.approx(reference, abs=0.03)  # the fit's largest miss


@pytest.mark.parametrize("percent", [0, 5, 10, 15, 20, 23])
def test_density_agrees_with_a_second_library(percent):
    # Melinder's fit, good to about half a kilogram, and only up to 23 %.
    fluid = f"INCOMP::MNA[{percent / 100}]"
    reference = PropsSI("D", "T", 293.15, "P", 101325, fluid)
    found = brine.brine_density_kg_m3(percent / 100, 20.0)
    assert found == pytest.approx(reference, abs=0.6)


@pytest.mark.parametrize("temp_c", [4, 10, 20, 30])
def test_a_brine_without_salt_is_water(temp_c):
    water = PropsSI("D", "T", temp_c + 273.15, "P", 101325, "Water")
    assert brine.brine_density_kg_m3(0, temp_c) == pytest.approx(water, abs=0.05)


@pytest.mark.parametrize(("temp_c", "percent"), SATURATION["rows"])
def test_saturation_is_the_published_one(core, temp_c, percent):
    found = core("formulas.salt.brine", "saturation_frac", temp_c)
    assert found * 100 == pytest.approx(percent, abs=SATURATION["tolerance"]["percent"])


def test_1147_8_at_20_c_is_20_per_cent(core):
    found = core("formulas.salt.brine", "salt_frac_from_density", 1147.8, 20.0)
    assert found == pytest.approx(0.200, abs=5e-4)


def test_the_same_density_at_15_c_is_a_weaker_brine(core):
    # By the published fall of .49 kg/m³ a degree, 20 % at 15 °C weighs 1150.25 and
    # a per cent of salt weighs about 8 kg/m³: 20 - 2.45 / 8.0 is 19.69 %.
    found = core("formulas.salt.brine", "salt_frac_from_density", 1147.8, 15.0)
    assert found == pytest.approx(0.1969, abs=5e-4)


@given(st.floats(0, 0.26), st.floats(0, 30), st.floats(1e-4, 2e-3))
def test_more_salt_is_always_denser(salt_frac, temp_c, more):
    denser = brine.brine_density_kg_m3(salt_frac + more, temp_c)
    assert denser > brine.brine_density_kg_m3(salt_frac, temp_c)


def test_27_per_cent_is_refused_with_the_limit_in_words(core):
    words = "salt_frac 0.27 above_saturation 0.2645 at_c 21.11"
    with pytest.raises(ValueError, match="^" + re.escape(words) + "$"):
        core("formulas.salt.brine", "brine_density_kg_m3", 0.27, 21.11)


@pytest.mark.parametrize(
    ("name", "arguments", "words"),
    [
        ("brine_density_kg_m3", [-0.01, 20], r"salt_frac -0.01 below 0"),
        ("brine_density_kg_m3", [0.2, 45], r"temp_c 45 above 30"),
        ("brine_density_kg_m3", [20, 15], r"salt_frac 20 above_saturation"),
        ("salt_frac_from_density", [990, 20], r"density_kg_m3 990 below_water 998\.2"),
        (
            "salt_frac_from_density",
            [1250, 20],
            r"density_kg_m3 1250 above_saturated_brine 1200",
        ),
        ("salt_frac_from_g_l", [360, 20], r"salt_g_l 360 above_saturated_brine 317"),
    ],
)
def test_an_impossible_brine_is_refused_in_words(core, name, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.salt.brine", name, *arguments)
