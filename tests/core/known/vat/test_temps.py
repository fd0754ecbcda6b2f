"""What a make knows of the temperatures of a step."""

import pytest

from tests.core.known.making import Make


def test_cooling_is_forecast_downwards(ask):
    make = Make("cool", "heat_forecast").run("cool", 0)
    make.read("jacket_temp_c", 5.0, 0, step="cool")
    for minute, temp_c in ((0, 60.0), (5, 56.0), (10, 52.3), (15, 48.8)):
        make.read("milk_temp_c", temp_c, minute, step="cool")
    known = make.known(ask, 16)
    assert known["target_temp_c"] == 32
    # Gaps 55 to 43.8 K in 15 min: to 27 K it takes ln(55 / 27) / ln(55 / 43.8) × 15.
    got = make.value(ask, 16, "reach_s")
    assert got == pytest.approx(46.9 * 60, rel=0.03)
