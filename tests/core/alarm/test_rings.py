"""What whole makes ring: few times where all is well, once where it is not."""

import pytest

from tests.conftest import untraced
from tests.core.alarm import faults, rings
from tests.core.twin.plays import SHORT
from tests.core.twin.twins import RECIPE

MOST = 3


@pytest.mark.parametrize(
    ("seed", "treatment"),
    [(1101, "heat_treated"), (1102, "pasteurised"), (1103, "raw")],
)
def test_a_make_in_which_all_is_well_hardly_rings(seed, treatment):
    with untraced():
        rows = rings.told(rings.played(RECIPE, seed, (), treatment))
    unasked = rings.unasked(rows)
    assert len(unasked) <= MOST, unasked
    assert rings.twice(unasked) == []
    assert any(row["kind"] in rings.SET for row in rows)  # what was set does ring


# One of each family: what is hot or cold, sour, firm, measured, late, stored.
FAMILIES = [
    "air_space_cold",
    "phage",
    "cut_late",
    "half_the_milk",
    "wash_too_hot",
    "weak_brine",
    "store_warm",
    "drug_test_positive",
    "brined_too_long",
]


@pytest.mark.parametrize("name", FAMILIES)
def test_a_fault_is_told_once_as_its_own_matter_while_it_can_be_mended(name):
    with untraced():
        found = faults.outcome(SHORT, 1200, name)
    assert found["told"] is not None
    assert found["in_time"], found
    assert found["again"] == [], found
