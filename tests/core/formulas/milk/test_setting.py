import pytest
from scipy.optimize import curve_fit

from tests.core.formulas.tables import table

CASE = table("rennet")
REL = CASE["tolerance_rel"]
MIN_S = 60


def ask(core, name, *args):
    return core("formulas.milk.setting", name, *args)


@pytest.mark.parametrize(
    ("dose", "time"),
    list(
        zip(
            CASE["settings"]["doses_imcu_per_l"], CASE["settings"]["times"], strict=True
        )
    ),
)
def test_setting_time_is_linear_in_the_inverse_of_the_dose(core, dose, time):
    row = CASE["settings"]
    got = ask(core, "setting_s", dose, row["work"], row["delay"])
    assert got == pytest.approx(time, rel=1e-12)


def test_own_settings_give_work_and_delay_back(core):
    row = CASE["settings"]
    found = ask(core, "fit_setting", row["doses_imcu_per_l"], row["times"])
    assert found["work"] == pytest.approx(row["work"], rel=1e-9)
    assert found["delay_s"] == pytest.approx(row["delay"], rel=1e-9)


def test_scattered_settings_are_fitted_as_an_independent_library_does(core):
    doses, times = [30.0, 38.0, 45.0, 60.0], [1010.0, 810.0, 720.0, 570.0]
    (work, delay), _ = curve_fit(lambda dose, a, b: a / dose + b, doses, times)
    found = ask(core, "fit_setting", doses, times)
    assert found["work"] == pytest.approx(work, rel=1e-6)
    assert found["delay_s"] == pytest.approx(delay, rel=1e-5)


def test_the_next_dose_is_the_published_one(core):
    row = CASE["next_dose"]
    times = [row[name] * MIN_S for name in ("set_min", "target_min", "delay_min")]
    assert ask(core, "next_dose_factor", *times) == pytest.approx(
        row["factor"], rel=REL
    )


def test_a_corrected_dose_sets_at_the_target(core):
    factor = ask(core, "next_dose_factor", 960, 780, 120)
    work = 40 * (960 - 120)
    assert ask(core, "setting_s", 40 * factor, work, 120) == pytest.approx(780)


def test_warmer_milk_sets_sooner_by_the_published_factor(core):
    row = CASE["temperature_30_to_32_c"]
    found = ask(core, "setting_time_factor", 30, 32)
    for name in ("low", "value", "high"):
        assert found[name] == pytest.approx(row[name], abs=5e-4)  # three digits


def test_cooling_undoes_warming(core):
    warm = ask(core, "setting_time_factor", 30, 34)
    cool = ask(core, "setting_time_factor", 34, 30)
    assert warm["value"] * cool["value"] == pytest.approx(1, rel=1e-12)
    assert warm["low"] * cool["high"] == pytest.approx(1, rel=1e-12)
    assert cool["low"] < cool["value"] < cool["high"]


def test_the_same_temperature_changes_nothing(core):
    found = ask(core, "setting_time_factor", 31, 31)
    assert (found["low"], found["value"], found["high"]) == (1, 1, 1)


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("setting_s", (0, 240, 2), "dose_imcu_per_l 0 not_above 0"),
        ("fit_setting", ([], []), "doses_imcu_per_l 0 too_few 2"),
        ("fit_setting", ([10, 20], [8, 9]), "not_falling"),
        ("fit_setting", ([20, 10], [8, 9]), "10 not_rising 20"),
        ("next_dose_factor", (960, 100, 120), "target_s 100 not_above 120"),
        ("next_dose_factor", (100, 900, 120), "set_s 100 not_above 120"),
        ("setting_time_factor", (30, 40), "to_c 40 above 36"),
        ("setting_time_factor", (20, 30), "from_c 20 below 28"),
    ],
)
def test_an_impossible_setting_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, name, *args)
