"""When what ends a step has come: a reading at its figure."""

import pytest


@pytest.mark.parametrize(
    ("value", "least", "most", "reached"),
    [
        (62.9, 63.0, None, False),
        (63.0, 63.0, None, True),
        (70.0, 63.0, None, True),
        (32.1, None, 32.0, False),
        (32.0, None, 32.0, True),
        (149.9, 150.0, 200.0, False),
        (150.0, 150.0, 200.0, True),
        (200.0, 150.0, 200.0, True),
        (200.1, 150.0, 200.0, False),
    ],
)
def test_an_end_is_reached_at_its_figure(core, value, least, most, reached):
    assert core("figures.ends", "reaches", value, least, most) is reached
