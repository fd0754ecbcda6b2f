import pytest
from scipy.integrate import quad

from server.core.formulas.heat import lethality
from tests.core.formulas.tables import table

CASE = table("lethality")
PROFILE = CASE["profile"]
TIMES_S = [60 * minutes for minutes in PROFILE["times_min"]]
LISTERIA = (0.9, 71.7, 6.3)  # D [s], its temperature [°C], z [K]


def ask(core, name, *args):
    return core("formulas.heat.lethality", name, *args)


@pytest.mark.parametrize(
    "row", CASE["profile_minutes"], ids=lambda row: str(row["z_k"])
)
def test_the_integral_is_exact_for_straight_pieces(core, row):
    args = (TIMES_S, PROFILE["temps_c"], PROFILE["reference_c"], row["z_k"])
    got = ask(core, "lethality_s", *args) / 60
    assert got == pytest.approx(row["minutes"], rel=CASE["tolerance_rel"])


@pytest.mark.parametrize(
    "row", CASE["profile_minutes"], ids=lambda row: str(row["z_k"])
)
def test_reading_each_minute_by_trapezoids_says_too_much(core, row):
    args = (TIMES_S, PROFILE["temps_c"], PROFILE["reference_c"], row["z_k"])
    assert ask(core, "lethality_s", *args) / 60 < row["trapezoid_at_1_min"]


def test_the_integral_agrees_with_numerical_quadrature(core):
    def rate(time_s):
        return 10 ** ((50 + 18 * time_s / 600 - 63) / 6.3)

    got = ask(core, "lethality_s", [0, 600], [50, 68], 63, 6.3)
    assert got == pytest.approx(quad(rate, 0, 600)[0], rel=1e-9)


def test_a_hold_at_the_reference_counts_its_own_time(core):
    assert ask(core, "lethality_s", [0, 1800], [63, 63], 63, 4.33) == 1800


@pytest.mark.parametrize("rise_k", [1e-3, 1e-6, 1e-9, 1e-12])
def test_a_nearly_flat_hold_keeps_its_digits(core, rise_k):
    got = ask(core, "lethality_s", [0, 1800], [63, 63 + rise_k], 63, 4.33)
    # Half the rise on average: a factor 1 + ln 10 / z / 2 of it, to first order.
    expected = 1800 * (1 + 2.302585 / 4.33 / 2 * rise_k)
    assert got == pytest.approx(expected, rel=1e-6 if rise_k > 1e-4 else 1e-10)


def test_cutting_a_piece_in_two_changes_nothing(core):
    whole = ask(core, "lethality_s", [0, 600], [50, 70], 63, 6.3)
    parts = ask(core, "lethality_s", [0, 150, 600], [50, 55, 70], 63, 6.3)
    assert parts == pytest.approx(whole, rel=1e-12)


@pytest.mark.parametrize("row", CASE["hold_63_c_30_min_at_72_c"])
def test_legal_pairs_are_not_on_one_curve(core, row):
    got = ask(core, "lethality_s", [0, 1800], [63, 63], 72, row["z_k"])
    assert got == pytest.approx(row["seconds"], abs=0.05)  # printed to 0.1 s
    assert got > 4 * 15  # far from the 15 s that stand beside it in the table


@pytest.mark.parametrize("row", CASE["equal_pairs"], ids=lambda row: row["name"])
def test_the_z_that_makes_two_legal_pairs_equal(core, row):
    names = ("cooler_c", "longer_s", "hotter_c", "shorter_s")
    got = ask(core, "z_between_k", *[row[name] for name in names])
    assert got == pytest.approx(row["z_k"], abs=row["tolerance_k"])


@pytest.mark.parametrize("row", CASE["thermometer_reads_1_k_high"])
def test_a_thermometer_one_kelvin_high_flatters_the_kill(core, row):
    got = ask(core, "reading_error_factor", 1, row["z_k"])
    assert got == pytest.approx(row["factor"], abs=5e-3)  # printed to 0.01


def test_logs_are_time_over_d_at_its_own_temperature(core):
    found = ask(core, "log_reduction", [0, 4.5], [71.7, 71.7], *LISTERIA)
    assert found["value"] == pytest.approx(5, rel=1e-12)
    assert found["at_least"] is False
    assert found["basis"] == "lethality.information_only"


def test_a_high_count_is_capped_and_says_so(core):
    # 15 s at 72 °C is 18.6 powers of ten by the arithmetic.
    found = ask(core, "log_reduction", [0, 15], [72, 72], *LISTERIA)
    assert (found["value"], found["at_least"]) == (12, True)


def test_milk_colder_than_was_measured_is_not_worked_out_and_is_no_zero(core):
    # 63 °C for 30 min would be 83 powers of ten if z held over 8.7 K.
    found = ask(core, "log_reduction", [0, 1800], [63, 63], *LISTERIA)
    assert (found["value"], found["at_least"]) == (None, False)
    assert found["left_out_s"] == 1800


def test_what_is_partly_too_cold_counts_the_rest_and_says_so(core):
    # 61.7 to 71.7 °C in 10 s: the first half lies more than 5 K below.
    found = ask(core, "log_reduction", [0, 10, 13], [61.7, 71.7, 71.7], *LISTERIA)
    assert found["left_out_s"] == pytest.approx(5)
    # More than the 3 s at 71.7 °C, and no more than 8 s there.
    assert 3 / 0.9 < found["value"] < 8 / 0.9
    assert found["at_least"] is True


def test_no_time_kills_nothing(core):
    found = ask(core, "log_reduction", [0], [40], *LISTERIA)
    assert (found["value"], found["left_out_s"]) == (0, 0)


def test_milk_hotter_than_was_measured_counts_as_the_hottest_measured(core):
    args = (52.2, 60.0, 9.46)
    hot = ask(core, "log_reduction", [0, 60], [72, 72], *args)
    edge = ask(core, "log_reduction", [0, 60], [65, 65], *args)
    assert hot["value"] == pytest.approx(edge["value"], rel=1e-12)
    assert (hot["at_least"], edge["at_least"]) == (True, False)


def test_a_ramp_counts_from_where_it_enters_what_was_measured(core):
    # 60 to 80 °C in 2 s: below 66.7 nothing, above 76.7 as 76.7.
    def rate(time_s):
        temp_c = 60 + 10 * time_s
        return 0 if temp_c < 66.7 else 10 ** ((min(temp_c, 76.7) - 71.7) / 6.3)

    expected = quad(rate, 0, 2, points=[0.67, 1.67])[0] / 0.9
    for temps_c in ([60, 80], [80, 60]):
        found = ask(core, "log_reduction", [0, 2], temps_c, *LISTERIA)
        assert found["value"] == pytest.approx(expected, rel=1e-7)


@pytest.mark.parametrize("row", lethality.PUBLISHED, ids=lambda row: row["key"])
def test_each_published_organism_names_its_source_and_can_be_used(core, row):
    args = (row["d_s"], row["reference_c"], row["z_k"])
    temps_c = [row["reference_c"]] * 2
    found = ask(core, "log_reduction", [0, 2 * row["d_s"]], temps_c, *args)
    assert found["value"] == pytest.approx(2, rel=1e-12)
    assert any(mark.isdigit() for mark in row["source"])  # a year or a volume


def published_d_over_ours(temp_c, d_min):
    row = lethality.PUBLISHED[2]
    rise_k = temp_c - row["reference_c"]
    return row["d_s"] * 10 ** (-rise_k / row["z_k"]) / 60 / d_min


def test_staphylococci_in_whey_die_as_published_within_reach_of_the_reference():
    # D62.8 0.38 min, two figures, off a line through four points: within 25 %.
    assert published_d_over_ours(62.8, 0.38) == pytest.approx(1, rel=0.25)


def test_beyond_reach_the_published_line_is_already_a_third_off():
    assert 65.6 - lethality.PUBLISHED[2]["reference_c"] > lethality.REACH_K
    assert published_d_over_ours(65.6, 0.12) > 1.3


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("lethality_s", ([0, 1], [63, 63], 63, 0), "z_k 0 not_above 0"),
        ("lethality_s", ([0, 0], [63, 63], 63, 7), "times_s 0 not_rising 0"),
        ("log_reduction", ([0, 1], [63, 63], 0, 63, 7), "d_s 0 not_above 0"),
        ("log_reduction", ([], [], 1, 63, 7), "temps_c 0 too_few 1"),
        ("reading_error_factor", (1, 0), "z_k 0 not_above 0"),
        ("z_between_k", (72, 15, 63, 1800), "hotter_c 63 not_above 72"),
        ("z_between_k", (63, 10, 72, 15), "longer_s 10 not_above 15"),
    ],
)
def test_an_impossible_heating_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, name, *args)


def test_a_hold_near_the_reference_is_counted_as_bigelow_counts_it(core):
    times_s, temps_c = [0, 600, 900, 1200], [60, 63, 66, 64]
    near = core("formulas.heat.lethality", "near_lethality_s", times_s, temps_c, 63, 7)
    whole = core("formulas.heat.lethality", "lethality_s", times_s, temps_c, 63, 7)
    assert near["value_s"] == pytest.approx(whole, rel=1e-12)
    assert not near["at_least"]


def test_milk_hotter_than_z_reaches_counts_as_hot_as_it_reaches(core):
    # 80 °C counts as 68: 10^(5/5) for a minute.
    near = core("formulas.heat.lethality", "near_lethality_s", [0, 60], [80, 80], 63, 5)
    assert near["value_s"] == pytest.approx(600)
    assert (near["at_least"], near["left_out_s"]) == (True, 0)
