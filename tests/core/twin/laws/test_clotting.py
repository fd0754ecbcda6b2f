"""Clotting against published times and the law that was found at the bench."""

import pytest

from server.core.twin.laws import clotting

STEP_S = 5.0
SINGLE = 38.0  # IMCU/kg: 190 mL for 1000 kg (Gouda, Guelph) of 200 IMCU/mL


def times_min(enzyme, temp_c=31.0, ph=6.5, calcium=0.145):
    """Return when flecks are seen, and when the break is clean [min]."""
    clot = {
        "enzyme": enzyme,
        "calcium_g_kg": calcium,
        "cut_frac": 0.0,
        "clump": 1.0,
        "firm_frac": 0.0,
    }
    floc = None
    for step in range(3000):
        clotting.advance(clot, temp_c, ph, STEP_S)
        word = clotting.judged(clot)
        if floc is None and word != "not_flocculated":
            floc = step * STEP_S / 60
        if word == "clean_break":
            return floc, step * STEP_S / 60
    return floc, None


def test_single_strength_sets_in_the_published_time():
    # A. Hill, Guelph, Rennet: 200 mL for 1000 kg set in 30 to 40 min at 30 to 32 °C,
    # coagulation takes about half of it. A fifth for what "about" leaves open.
    floc, clean = times_min(SINGLE)
    assert 28.0 <= clean <= 40.0
    assert 0.3 * clean <= floc <= 0.6 * clean


def test_the_time_is_a_line_in_the_inverse_of_the_dose():
    # McMahon and Brown: linear over 1 to 140 of activity. Straight from the ends, the
    # doses between lie within 5 %; the line is nowhere in the law.
    doses = (10.0, 15.0, 20.0, 30.0, 40.0)
    seen = [times_min(dose, 32.0)[0] for dose in doses]
    slope = (seen[0] - seen[-1]) / (1 / doses[0] - 1 / doses[-1])
    for dose, floc in zip(doses, seen, strict=True):
        assert floc == pytest.approx(seen[-1] + slope * (1 / dose - 1 / 40.0), rel=0.05)


def test_ten_kelvin_more_set_two_to_three_times_faster():
    # Q10 of 2 to 3 in all between 28 and 36 °C (from memory), here over 8 K.
    ratio = times_min(SINGLE, 28.0)[0] / times_min(SINGLE, 36.0)[0]
    assert 2.0 <= ratio ** (10 / 8) <= 3.0


def test_a_tenth_of_ph_less_sets_8_to_15_percent_faster():
    ratio = times_min(SINGLE, ph=6.4)[0] / times_min(SINGLE, ph=6.5)[0]
    assert 0.85 - 0.01 <= ratio <= 0.92  # from memory


def test_calcium_sets_10_to_25_percent_faster():
    ratio = times_min(SINGLE)[0] / times_min(SINGLE, calcium=0.0)[0]
    assert 0.75 <= ratio <= 0.90  # 0.1 to 0.2 g/L (from memory)


def test_three_times_the_floc_time_is_a_clean_break_that_is_not_past_it():
    floc, clean = times_min(SINGLE)
    assert clean <= 3 * floc
    for enzyme in (0.5 * SINGLE, 2 * SINGLE):
        # The multiplier's sense: the firmness hardly depends on the dose.
        first, then = times_min(enzyme)
        assert then / first == pytest.approx(clean / floc, rel=0.25)


def test_milk_without_rennet_does_not_clot():
    assert times_min(0.0) == (None, None)


def test_scalded_rennet_is_dead():
    assert times_min(SINGLE, 60.0) == (None, None)


@pytest.mark.parametrize(
    ("clump", "firm", "word"),
    [
        (1.0, 0.0, "not_flocculated"),
        (20.0, 0.1, "flocculated"),
        (20.0, 0.4, "soft"),
        (20.0, 0.6, "clean_break"),
        (20.0, 0.9, "past_it"),
    ],
)
def test_a_knife_shows_how_firm_it_is(core, clump, firm, word):
    clot = {"enzyme": 38.0, "calcium_g_kg": 0.1, "cut_frac": 1.0}
    clot |= {"clump": clump, "firm_frac": firm}
    assert core("twin.laws.clotting", "judged", clot) == word
