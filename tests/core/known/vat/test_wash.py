"""What a make knows of its whey and water."""

import pytest

from tests.core.known.making import Make


def test_washes_are_read_off_the_make(ask):
    make = Make("stir_2", "lactose_left").run("stir_2", 200)
    make.read("milk_mass_kg", 1000.0, 1)
    make.read("whey_drained_l", 300.0, 100).read("water_added_l", 200.0, 120)
    make.read("whey_drained_l", 300.0, 140).read("water_added_l", 250.0, 160)
    washes = make.known(ask, 201)["washes"]
    # Whey 1.025 kg/L, water at 60 °C 0.9832 kg/L (steam tables).
    assert washes[0]["drained_kg"] == pytest.approx(307.5)
    assert washes[1]["water_kg"] == pytest.approx(250 * 0.9832)
    got = make.value(ask, 201, "lactose_left_frac", "wash_1")
    full = (940 - 307.5) / (940 - 307.5 + 196.64)
    assert got == pytest.approx(1 - 0.9 * (1 - full))


def test_whey_to_draw_off_follows_the_recipes_litres(ask):
    make = Make("drain_2", "wash_drain").run("drain_2", 150)
    make.read("milk_mass_kg", 1000.0, 1).read("milk_volume_l", 1000.0, 2)
    make.read("whey_drained_l", 300.0, 100).read("water_added_l", 100.0, 120)
    make.read("curd_temp_c", 34.0, 130)
    known = make.known(ask, 151)
    assert known["drained_before_kg"] == pytest.approx(307.5)
    assert known["water_in_kg"] == pytest.approx(98.32)
    # The second wash of the recipe: 37 °C with water of 50 °C.
    assert known["target_temp_c"] == 37
    assert known["water_planned_c"] == 50
    assert make.value(ask, 151, "drain_l") == pytest.approx(300)


def test_water_at_hand_must_be_so_warm(ask):
    make = Make("wash_1", "wash_temp").run("wash_1", 150)
    make.read("milk_mass_kg", 1000.0, 1).read("milk_volume_l", 1000.0, 2)
    make.read("curd_temp_c", 31.0, 149)
    # The recipe's tenth of the milk, measured at its 60 °C (steam tables).
    known = make.known(ask, 151)
    assert known["water_kg"] == pytest.approx(100.0 * 0.9832, rel=1e-4)
    wanted = 34.5 + 1000 * 3900 * 3.5 / (known["water_kg"] * 4180)
    assert make.value(ask, 151, "water_temp_c") == pytest.approx(wanted)


def second_wash(*sums, first_l=100.0, reached_c=34.5, water_c=60.0):
    """Return a make of 1000 kg at its second wash, the first done as told."""
    make = Make("wash_2", *sums).read("milk_mass_kg", 1000.0, 1)
    make.read("milk_volume_l", 1000.0, 2).read("whey_drained_l", 290.0, 100)
    make.read("curd_temp_c", 31.0, 118).run("wash_1", 120, 140)
    make.read("water_temp_c", water_c, 121, step="wash_1")
    make.read("water_added_l", first_l, 138, step="wash_1")
    make.read("curd_temp_c", reached_c, 139, step="wash_1")
    return make.read("whey_drained_l", 290.0, 150).run("wash_2", 160)


def test_what_the_first_wash_took_less_the_second_makes_up_for(ask):
    # Of 0.1 and 0.12 of the milk, 70 L went in first: 150 L are left, not 120.
    known = second_wash("wash_temp", first_l=70.0).known(ask, 161)
    litres = known["water_kg"] / 0.988  # of 50 °C
    assert litres == pytest.approx(150.0, rel=1e-3)


def test_the_second_wash_learns_what_the_first_lost(ask):
    # 702.75 kg at 31 °C and 98.3 kg of 60 °C mix to 34.78 °C; 34.1 was read.
    make = second_wash("wash_water", reached_c=34.1)
    kg, water_kg = 1000 - 290 * 1.025, 100 * 0.9832
    mixed_c = 31 + water_kg * 4.18 * 29 / (kg * 3.9 + water_kg * 4.18)
    known = make.known(ask, 161)
    assert known["loss_k"] == pytest.approx(mixed_c - 34.1, abs=1e-3)
    lossless = second_wash("wash_water", reached_c=mixed_c)
    water = [one.value(ask, 161, "water_kg") for one in (make, lossless)]
    assert water[0] > water[1]


def test_the_first_wash_has_nothing_to_learn_from(ask):
    make = Make("wash_1", "wash_water").run("wash_1", 150)
    make.read("curd_temp_c", 31.0, 149)
    assert "loss_k" not in make.known(ask, 151)


def test_a_wash_that_is_over_counts_the_vat_as_it_was_then(ask):
    make = Make("wash_1", "wash_temp").run("wash_1", 150, 160)
    make.read("milk_mass_kg", 1000.0, 1).read("milk_volume_l", 1000.0, 2)
    make.read("curd_temp_c", 31.0, 149).read("curd_temp_c", 37.2, 190)
    assert make.known(ask, 200)["vat_temp_c"] == 31.0
    (row,) = make.answers(ask, 200)
    assert row["problems"] == []
    # What a step is planned by stays while it warms the curd; the rest goes by now.
    running = Make("wash_1", "wash_temp").run("wash_1", 150)
    running.read("curd_temp_c", 31.0, 149).read("curd_temp_c", 33.0, 155)
    assert running.known(ask, 156)["vat_temp_c"] == 31.0
    rest = Make("wash_1", "wash_rest").run("wash_1", 150)
    rest.read("curd_temp_c", 31.0, 149).read("curd_temp_c", 33.0, 155)
    assert rest.known(ask, 156)["vat_now_c"] == 33.0


def test_before_its_turn_nobody_knows_how_warm_a_step_begins(ask):
    waiting = Make("wash_1", "wash_temp").run("hold", 10)
    waiting.read("milk_temp_c", 63.9, 20)
    assert "vat_temp_c" not in waiting.known(ask, 25)
