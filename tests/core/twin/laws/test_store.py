"""The store: vapour against a library, and what a drying wheel does."""

import psychrolib
import pytest

from server.core.twin.laws import pressing, store
from tests.core.twin.twins import wheels

DAY_S = 86400.0
psychrolib.SetUnitSystem(psychrolib.SI)


def dried(days, humidity_frac=0.875, coated=True, temp_c=12.5):
    row = wheels(0.3, 0.108, 8.0, 0.43)
    row["coated"] = coated
    for _ in range(days):
        store.advance(row, temp_c, humidity_frac, DAY_S)
    return row


def lost(row):
    return 1 - pressing.mass_kg(row) / 8.0


@pytest.mark.parametrize("temp_c", [5.0, 12.5, 20.0])
def test_vapour_over_water_is_that_of_a_library(core, temp_c):
    found = core("twin.laws.store", "vapour_pa", temp_c)
    # Antoine's constants are good to a per cent here.
    assert found == pytest.approx(psychrolib.GetSatVapPres(temp_c), rel=0.01)


def test_a_coated_wheel_loses_what_is_usual_in_four_weeks():
    # 1 to 2 % a month coated, 3 to 6 % bare (common practice, from memory).
    assert 0.01 <= lost(dried(28)) <= 0.03
    assert 0.03 <= lost(dried(28, coated=False)) <= 0.07


def test_loss_slows_by_itself():
    first = lost(dried(5, coated=False))
    assert lost(dried(10, coated=False)) < 1.95 * first


def test_dry_and_warm_air_take_more():
    assert lost(dried(10, humidity_frac=0.68)) > 1.8 * lost(dried(10))
    assert lost(dried(10, temp_c=17.5)) > 1.2 * lost(dried(10))


def test_air_as_moist_as_the_rind_takes_nothing():
    assert lost(dried(10, humidity_frac=1.0)) < 0.0  # it takes up a little


def test_brine_has_the_activity_of_its_strength():
    # 20 % salt: 0.84 by tables (from memory); solids that bind no water here.
    assert store.activity(0.8, 0.2, 1e-9) == pytest.approx(0.86, abs=0.03)


def test_the_driest_air_never_takes_all_water():
    row = dried(60, humidity_frac=0.1, coated=False)
    assert min(row["water_kg"]) > 0.0
