"""Layers of a wheel: they fill it, and carry without making or losing."""

import math

import pytest

from server.core.twin.laws import layers


@pytest.mark.parametrize(("radius_m", "half_m"), [(0.15, 0.054), (0.06, 0.08)])
def test_layers_fill_the_wheel(radius_m, half_m):
    areas, volumes = layers.layers(radius_m, half_m)
    assert sum(volumes) == pytest.approx(math.pi * radius_m**2 * 2 * half_m)
    whole = 2 * math.pi * radius_m**2 + 4 * math.pi * radius_m * half_m
    assert areas[0] == pytest.approx(whole)
    assert areas == sorted(areas, reverse=True)


def test_a_thin_layer_s_volume_is_its_area_times_its_thickness():
    areas, volumes = layers.layers(0.15, 0.054)
    thick_m = layers.depths_m(0.15, 0.054)[1]
    between = (areas[0] + areas[1]) / 2 * thick_m
    assert volumes[0] == pytest.approx(between, rel=2e-3)  # it is curved at the edge


def test_what_is_carried_is_neither_made_nor_lost():
    amounts = [3.0, 2.0, 1.0]
    layers.carry(amounts, [0.5, 0.25, -0.125])
    assert amounts == [3.25, 2.375, 0.875]
    assert sum(amounts) == 6.0 + 0.5


def test_what_is_even_does_not_spread(core):
    areas, volumes = layers.layers(0.15, 0.054)
    depths = layers.depths_m(0.15, 0.054)
    in_kg = [volume * 450.0 for volume in volumes]
    amounts = [0.05 * kg for kg in in_kg]
    crossed = core(
        "twin.laws.layers", "spread", amounts, in_kg, areas, volumes, depths, 1e-4
    )
    assert crossed == pytest.approx([0.0] * layers.COUNT, abs=1e-15)


def test_what_spreads_goes_by_the_way_from_middle_to_middle(core):
    # By hand: layers 2 and 4 mm thick, their middles 3 mm apart; 0.1 kg on 2 kg
    # against none, through 0.5 m², where the drier holds 400 kg in a cubic metre.
    found = core(
        "twin.laws.layers",
        "spread",
        [0.1, 0.0],
        [2.0, 0.8],
        [0.6, 0.5],
        [0.004, 0.002],
        [0.0, 0.002, 0.006],
        6e-6,
    )
    assert found == pytest.approx([0.0, 6e-6 / 0.003 * 0.5 * 400.0 * 0.05])
