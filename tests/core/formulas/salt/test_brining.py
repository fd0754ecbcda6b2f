import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.salt import brining, salting
from tests.conftest import ROOT

DAY_S = 86400
DAYS = json.loads((ROOT / "tests" / "cases" / "salt_days.json").read_text("utf-8"))
TARGETS = [
    (*row[:4], salt, days)
    for row in DAYS["rows"]
    for salt, days in zip((0.018, 0.020, 0.022), row[4:], strict=True)
]


@pytest.mark.parametrize(
    ("diameter_m", "height_m", "brine_frac", "diffusion", "salt", "days"), TARGETS
)
def test_days_in_brine_for_a_wanted_salt(
    core, diameter_m, height_m, brine_frac, diffusion, salt, days
):
    found = core(
        "formulas.salt.brining",
        "brining_s",
        *[salt, diameter_m, height_m, DAYS["moisture_frac"], brine_frac, diffusion],
        DAYS["water_salt_ratio"],
    )
    assert found / DAY_S == pytest.approx(days, abs=DAYS["tolerance"]["days"])


@given(
    st.floats(0.005, 0.03),
    st.floats(0.1, 0.4),
    st.floats(0.05, 0.2),
    st.floats(0.36, 0.5),
    st.floats(0.16, 0.25),
    st.floats(1e-10, 5e-10),
)
def test_brining_for_the_time_found_gives_the_salt_wanted(
    salt, diameter, height, moisture, brine, diffusion
):
    time_s = brining.brining_s(salt, diameter, height, moisture, brine, diffusion, 2.0)
    found = salting.wheel_salting(
        time_s, diameter, height, moisture, brine, diffusion, 2.0
    )
    assert found["salt_frac"] == pytest.approx(salt, rel=1e-9)


def test_published_times_of_semihard_wheels_are_in_the_model_s_band(core):
    # A dairy handbook: 2 to 12 kg, 20 to 22 % brine, one to three days, 1.6 to
    # 2.2 % salt. The model's band over published diffusivities must meet it.
    band = core(
        "formulas.salt.brining",
        "brining_range_s",
        *[0.020, 0.35, 0.118, 0.44, 0.21, [1.0e-10, 1.5e-10, 5.3e-10], 2.0],
    )
    assert band["low"] < 3 * DAY_S < band["high"]
    assert band["basis"] == "diffusion_range"


def test_faster_diffusion_needs_less_time(core):
    band = core(
        "formulas.salt.brining",
        "brining_range_s",
        *[0.018, 0.3, 0.1, 0.43, 0.2, [1.0e-10, 1.5e-10, 2.3e-10], 2.0],
    )
    assert band["low"] < band["value"] < band["high"]
    # Time and diffusivity enter as their product.
    assert band["low"] * 2.3 == pytest.approx(band["high"] * 1.0, rel=1e-9)


def wheel(diffusion, days, diameter_m=0.35, height_m=0.118):
    made = salting.wheel_salting(
        days * DAY_S, diameter_m, height_m, 0.44, 0.20, diffusion, 2.0
    )
    return {
        "salt_frac": made["salt_frac"],
        "brined_s": days * DAY_S,
        "diameter_m": diameter_m,
        "height_m": height_m,
        "moisture_frac": 0.44,
        "brine_frac": 0.20,
    }


def test_own_wheels_give_back_the_diffusivity_they_were_made_with(core):
    wheels = [wheel(1.7e-10, 1), wheel(1.7e-10, 3), wheel(1.7e-10, 2, 0.2, 0.09)]
    found = core("formulas.salt.brining", "calibrated_diffusion", wheels, 2.0)
    assert found["value"] == pytest.approx(1.7e-10, rel=1e-6)
    assert found["count"] == 3
    assert found["basis"] == "own_wheels"


def test_the_middle_wheel_stands_for_the_creamery(core):
    wheels = [wheel(d, 2) for d in (4e-10, 1.2e-10, 1.4e-10)]
    found = core("formulas.salt.brining", "calibrated_diffusion", wheels, 2.0)
    assert found["value"] == pytest.approx(1.4e-10, rel=1e-6)
    assert found["low"] == pytest.approx(1.2e-10, rel=1e-6)
    assert found["high"] == pytest.approx(4e-10, rel=1e-6)


def test_two_wheels_are_averaged_and_one_says_so(core):
    pair = [wheel(1e-10, 2), wheel(2e-10, 2)]
    found = core("formulas.salt.brining", "calibrated_diffusion", pair, 2.0)
    assert found["value"] == pytest.approx(1.5e-10, rel=1e-6)
    alone = core("formulas.salt.brining", "calibrated_diffusion", pair[:1], 2.0)
    assert alone["basis"] == "one_wheel"


def test_twice_the_salt_means_about_four_times_the_diffusivity(core):
    # The square-root law of the thick cheese, D = D0 (measured / predicted)**2.
    weak = wheel(1e-10, 0.2)
    strong = dict(weak, salt_frac=1.1 * weak["salt_frac"])
    values = [
        core("formulas.salt.brining", "calibrated_diffusion", [w], 2.0)["value"]
        for w in (weak, strong)
    ]
    assert values[1] / values[0] == pytest.approx(1.21, rel=0.03)  # thick only


@given(
    st.floats(1e-9, 0.999999),
    st.floats(0.02, 1.0),
    st.floats(0.01, 1.0),
    st.floats(0.2, 0.85),
    st.floats(0.01, 0.26),
)
def test_any_salt_that_a_brine_can_give_has_its_time(
    share, diameter, height, moisture, brine
):
    most = salting.balance(1.0, moisture, brine, 2.0)["salt_frac"]
    salt = min(0.1, share * most)
    time_s = brining.brining_s(salt, diameter, height, moisture, brine, 1e-10, 2.0)
    found = salting.wheel_salting(time_s, diameter, height, moisture, brine, 1e-10, 2.0)
    # The two forms of the series are 2e-5 apart where they change over.
    assert found["salt_frac"] == pytest.approx(salt, rel=1e-9, abs=2e-5 * most)


def test_no_salt_takes_no_time(core):
    arguments = [0.0, 0.3, 0.1, 0.44, 0.2, 2e-10, 2.0]
    assert core("formulas.salt.brining", "brining_s", *arguments) == 0


@pytest.mark.parametrize(
    ("name", "arguments", "words"),
    [
        (
            "brining_s",
            [0.09, 0.3, 0.1, 0.44, 0.2, 2e-10, 2],
            r"salt_frac 0.09 more_than_brine_gives",
        ),
        ("brining_s", [1.8, 0.3, 0.1, 0.44, 0.2, 2e-10, 2], r"salt_frac 1.8 above"),
        ("brining_s", [0.02, 0.3, 0.1, 0.44, 0.2, 0, 2], r"diffusion_m2_s 0 not_above"),
        ("calibrated_diffusion", [[], 2], r"wheels 0 below 1"),
        (
            "brining_range_s",
            [0.02, 0.3, 0.1, 0.44, 0.2, [2e-10, 1e-10, 3e-10], 2],
            r"expected_m2_s 1e-10 below 2e-10",
        ),
        (
            "brining_range_s",
            [0.02, 0.3, 0.1, 0.44, 0.2, [0, 1e-10, 3e-10], 2],
            r"slow_m2_s 0 not_above 0",
        ),
    ],
)
def test_impossible_brining_is_refused_in_words(core, name, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.salt.brining", name, *arguments)
