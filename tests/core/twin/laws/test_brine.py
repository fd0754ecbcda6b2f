"""Salt against published times, an exact series, and the balance of the tank."""

import math

import pytest
from scipy.special import jn_zeros

from server.core.twin.laws import brine, pressing
from tests.core.formulas.tables import table
from tests.core.twin.twins import do, go, gouda, wheels

DAY_S = 86400.0
DENSITY = 1080.0


def salted(diameter_m, height_m, mass_kg, days, brine_frac=0.21, temp_c=13.0):
    row = wheels(diameter_m, height_m, mass_kg, 0.44)
    brine.advance(row, brine_frac, temp_c, days * DAY_S)
    return row


# (diameter, height, mass, days): an encyclopaedia's article on brine salting gives
# semi-hard wheels of 2 to 12 kg 1.6 to 2.2 % in 1 to 3 days in 20 to 22 % of salt:
# the smallest in the shortest time, the largest in the longest.
PUBLISHED = [(0.18, 0.075, 2.0, 1.0), (0.26, 0.105, 6.0, 2.0), (0.35, 0.118, 12.0, 3.0)]


@pytest.mark.parametrize(("diameter_m", "height_m", "mass_kg", "days"), PUBLISHED)
def test_wheels_salt_in_the_published_times(diameter_m, height_m, mass_kg, days):
    row = salted(diameter_m, height_m, mass_kg, days)
    assert 0.016 <= pressing.salt_frac(row) <= 0.022


def test_uptake_is_that_of_the_exact_series():
    # Crank: cylinder by the zeros of J0, slab by its sines, multiplied; nothing comes
    # out against the salt, no film. Twelve layers that share one rind: 2 %.
    radius_m, half_m, diffusion, days = 0.15, 0.054, 2.0e-10, 2.0
    row = wheels(2 * radius_m, 2 * half_m, 8.0, 0.44)
    steps = int(days * DAY_S / 600)
    for _ in range(steps):
        brine.soak(row, 0.2, diffusion, 600.0, 0.0, 0.0)
    zeros = jn_zeros(0, 3000)
    time = diffusion * days * DAY_S
    left = sum(4 / z**2 * math.exp(-(z**2) * time / radius_m**2) for z in zeros)
    slab = sum(
        8 / ((2 * n + 1) * math.pi) ** 2
        * math.exp(-(((2 * n + 1) * math.pi / 2) ** 2) * time / half_m**2)
        for n in range(3000)
    )  # fmt: skip
    share = 1 - left * slab
    exact_kg = share * 0.25 * 8.0 * 0.44
    assert sum(row["salt_kg"]) == pytest.approx(exact_kg, rel=0.02)


def test_by_day_it_stays_near_the_worked_table():
    # 350 by 118 mm, 12 kg, 20 %, 2.3e-10, 44 % water, two of water for one of salt.
    # Worked by closed series on average water; layers whose rind dries let in less at
    # first, so a quarter is allowed below and a tenth above.
    case = table("salt_by_day")
    row = wheels(0.35, 0.118, 12.0, 0.44)
    for days, percent, _ in case["rows"]:
        for _ in range(144):
            brine.soak(row, 0.2, 2.3e-10, 600.0, 2.0, 0.0)
        assert 0.75 <= 100 * pressing.salt_frac(row) / percent <= 1.1, days


def test_water_leaves_between_a_half_and_two_and_a_half_times_the_salt():
    # Guinee and Fox 1983: 2.42 at the surface, 0.5 in the middle.
    row = wheels(0.3, 0.108, 8.0, 0.44)
    salt_kg, water_kg = brine.advance(row, 0.2, 13.0, 2 * DAY_S)
    assert 0.5 <= water_kg / salt_kg <= 2.42 + 1e-9
    assert pressing.mass_kg(row) < 8.0


def test_warm_brine_salts_as_much_faster_as_published():
    # Floury, white semi-hard: 2.1, 3 and 4e-10 at 4, 12.5 and 20 °C: 4 % a kelvin;
    # salt goes with the root of it.
    cold, warm = (salted(0.3, 0.108, 8.0, 1.0, temp_c=c) for c in (10.0, 15.0))
    ratio = pressing.salt_frac(warm) / pressing.salt_frac(cold)
    assert ratio == pytest.approx(math.exp(0.04 * 5 / 2), rel=0.02)


def test_weak_brine_salts_less():
    weak = salted(0.3, 0.108, 8.0, 2.0, brine_frac=0.145)
    assert pressing.salt_frac(weak) < 0.8 * pressing.salt_frac(
        salted(0.3, 0.108, 8.0, 2.0)
    )


def test_the_rind_is_salt_and_the_middle_is_not_yet():
    row = salted(0.3, 0.108, 8.0, 1.0)
    strengths = [s / w for s, w in zip(row["salt_kg"], row["water_kg"], strict=True)]
    assert strengths == sorted(strengths, reverse=True)
    assert strengths[0] > 10 * strengths[-1]


def test_what_the_wheels_take_the_tank_has_lost():
    made, _, _, _ = gouda()
    tank = made["plant"]
    in_wheels = sum(row["count"] * sum(row["salt_kg"]) for row in made["wheels"])
    was = 1400.0 * 0.203
    assert tank["brine_kg"] * tank["brine_frac"] == pytest.approx(was - in_wheels)


def test_salt_evens_out_in_the_store_without_being_lost():
    made, _, _, _ = gouda()
    (row, _) = made["wheels"]
    before = sum(row["salt_kg"])
    do(made, "coat")
    go(made, 40 * 24 * 60)
    assert sum(row["salt_kg"]) == pytest.approx(before)
    strengths = [s / w for s, w in zip(row["salt_kg"], row["water_kg"], strict=True)]
    # Equalisation takes 10 days to 4 months (a review's abstract).
    assert min(strengths) > 0.7 * max(strengths)
