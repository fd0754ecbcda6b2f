import math

import pytest

MIN_S = 60
TAU_S = 40 * MIN_S


def heat(core, name, *args):
    return core("formulas.heat.heat", name, *args)


def test_the_time_to_38_degrees_is_9_65_minutes(core):
    # 40 ln(28/22) = 9.6465.
    got = heat(core, "time_to_target_s", 32, 38, 60, TAU_S) / MIN_S
    assert got == pytest.approx(9.6465, abs=5e-5)


@pytest.mark.parametrize(("start_c", "jacket_c"), [(32, 60), (38, 2)])
def test_halving_the_gap_takes_tau_ln_2_warming_or_cooling(core, start_c, jacket_c):
    half_c = (start_c + jacket_c) / 2
    got = heat(core, "time_to_target_s", start_c, half_c, jacket_c, 1800)
    assert got == pytest.approx(1800 * math.log(2), rel=1e-12)


def test_being_there_takes_no_time(core):
    assert heat(core, "time_to_target_s", 38, 38, 30, TAU_S) == 0


def test_two_parts_of_the_way_add_up(core):
    whole = heat(core, "time_to_target_s", 30, 42, 65, TAU_S)
    first = heat(core, "time_to_target_s", 30, 36, 65, TAU_S)
    second = heat(core, "time_to_target_s", 36, 42, 65, TAU_S)
    assert first + second == pytest.approx(whole, rel=1e-12)


@pytest.mark.parametrize(
    ("start_c", "target_c", "jacket_c", "words"),
    [
        (32, 70, 60, "target_c 70 beyond_jacket 60"),
        (32, 60, 60, "target_c 60 beyond_jacket 60"),
        (38, 1, 2, "target_c 1 beyond_jacket 2"),
        (32, 30, 60, "target_c 30 away_from_jacket 60"),
        (38, 40, 2, "target_c 40 away_from_jacket 2"),
        (32, 38, 32, "target_c 38 beyond_jacket 32"),
        (None, 38, 60, "start_c None not_a_number"),
    ],
)
def test_a_target_the_jacket_cannot_bring_is_refused(
    core, start_c, target_c, jacket_c, words
):
    with pytest.raises(ValueError, match=words):
        heat(core, "time_to_target_s", start_c, target_c, jacket_c, TAU_S)


def test_after_one_tau_63_2_per_cent_of_the_gap_is_closed(core):
    # 32 + 28 (1 - 1/e) = 49.69938.
    got = heat(core, "temp_after_c", 32, 60, TAU_S, TAU_S)
    assert got == pytest.approx(49.69938, abs=5e-6)


def test_the_temperature_after_the_time_to_target_is_the_target(core):
    time_s = heat(core, "time_to_target_s", 31, 37, 55, TAU_S)
    assert heat(core, "temp_after_c", 31, 55, TAU_S, time_s) == pytest.approx(37)


def test_the_vat_never_passes_the_jacket(core):
    assert heat(core, "temp_after_c", 32, 60, TAU_S, 1e7) == pytest.approx(60)


def test_a_steady_jacket_is_a_drifting_one_that_does_not(core):
    expected = heat(core, "temp_after_c", 32, 60, TAU_S, 1500)
    got = heat(core, "temp_after_drift_c", 32, [0, 400, 1500], [60] * 3, TAU_S)
    assert got == pytest.approx(expected, rel=1e-12)


def test_a_drifting_jacket_is_followed_as_small_steps_would(core):
    # Euler's method in tenths of a second, jacket falling 60 to 50 in 20 min.
    temp_c, step_s = 32.0, 0.1
    for i in range(12000):
        jacket_c = 60 - 10 * (i + 0.5) * step_s / 1200
        temp_c += step_s * (jacket_c - temp_c) / TAU_S
    got = heat(core, "temp_after_drift_c", 32, [0, 1200], [60, 50], TAU_S)
    assert got == pytest.approx(temp_c, abs=1e-3)  # Euler's own error


def test_the_first_rate_is_0_7_kelvin_a_minute(core):
    got = heat(core, "rate_k_s", 32, 60, TAU_S) * MIN_S
    assert got == pytest.approx(0.700, rel=1e-12)


def test_a_vat_above_its_jacket_cools(core):
    assert heat(core, "rate_k_s", 38, 2, TAU_S) < 0


@pytest.mark.parametrize(("start_c", "target_c"), [(32, 38), (38, 12)])
def test_the_jacket_needed_gives_the_time_asked_for(core, start_c, target_c):
    jacket_c = heat(core, "jacket_needed_c", start_c, target_c, TAU_S, 600)
    got = heat(core, "time_to_target_s", start_c, target_c, jacket_c, TAU_S)
    assert got == pytest.approx(600, rel=1e-9)


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("time_to_target_s", (32, 38, 60, 0), "tau_s 0 not_above 0"),
        ("temp_after_c", (32, 60, -1, 60), "tau_s -1 not_above 0"),
        ("temp_after_c", (32, 60, 2400, -60), "elapsed_s -60 below 0"),
        ("temp_after_drift_c", (32, [0], [60], 2400), "jackets_c 1 too_few 2"),
        ("rate_k_s", (32, 60, 0), "tau_s 0 not_above 0"),
        ("jacket_needed_c", (32, 38, 2400, 0), "time_s 0 not_above 0"),
    ],
)
def test_an_impossible_vat_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        heat(core, name, *args)
