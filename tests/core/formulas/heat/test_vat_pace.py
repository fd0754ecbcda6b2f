import pytest


def heat(core, name, *args):
    return core("formulas.heat.vat_pace", name, *args)


def test_tau_is_heat_held_over_heat_passed(core):
    # 515 kg × 3850 J/(kg K) = 1 982 750 J/K; over 800 W/K 2478.4375 s.
    got = heat(core, "tau_of_vat_s", 515, 3850, 800)
    assert got == pytest.approx(2478.4375, rel=1e-12)


def test_tau_at_the_same_fill_is_known(core):
    got = heat(core, "tau_at_fill", 2400, 500, 500)
    assert (got["low_s"], got["value_s"], got["high_s"]) == (2400, 2400, 2400)
    assert got["basis"] == "tau.same_fill"


def test_tau_at_another_fill_lies_between_two_kinds_of_jacket(core):
    half = heat(core, "tau_at_fill", 2400, 500, 250)
    # By mass 1200 s; with the wetted wall going with the fill 2400 s.
    assert (half["low_s"], half["value_s"], half["high_s"]) == (1200, 1800, 2400)
    assert half["basis"] == "tau.other_fill"


def test_limited_power_warms_in_a_straight_line(core):
    # 515 kg × 3850 × 6 K = 11 896 500 J; at 12 kW 991.375 s.
    got = heat(core, "time_at_power_s", 32, 38, 515, 3850, 12000)
    assert got == pytest.approx(991.375, rel=1e-12)


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("tau_of_vat_s", (0, 3850, 800), "contents_kg 0 not_above 0"),
        ("tau_of_vat_s", (515, 3850, 0), "conductance_w_k 0 not_above 0"),
        ("tau_at_fill", (2400, 0, 500), "known_kg 0 not_above 0"),
        ("time_at_power_s", (38, 32, 515, 3850, 9000), "target_c 32 below 38"),
        ("time_at_power_s", (32, 38, 515, 3850, 0), "power_w 0 not_above 0"),
    ],
)
def test_an_impossible_vat_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        heat(core, name, *args)
