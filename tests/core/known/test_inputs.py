"""Each thing that a make knows, looked up for a sum that asks for it."""

import copy
import json
import uuid
from pathlib import Path
from types import SimpleNamespace

import pytest

from tests.core.builders import MAKE, Phone, at
from tests.core.sums.asking import RULES, of_words

ROOT = Path(__file__).resolve().parents[3]
RECIPE = json.loads(
    (ROOT / "server" / "recipes" / "washed-wheel.json").read_text("utf-8")
)


class Make:
    """One make of 1000 L whose step lists the sums asked for."""

    def __init__(self, step, *sums, make=MAKE, **body):
        recipe = copy.deepcopy(RECIPE)
        for row in recipe["steps"]:
            if row["key"] == step:
                row["sums"] = list(sums)
        self.step = step
        self.phone = Phone(make=make)
        self.recipe = recipe
        opened = {"name": "Make", "batch": "A1", "milk_l": 1000.0, "vat": "Big vat"}
        self.events = []
        self.add("make_opened", 0, recipe=recipe, **{**opened, **body})

    def add(self, kind, minute, **data):
        self.events.append(self.phone.event(kind, minute, **data))
        return self

    def run(self, step, begin, end=None):
        self.add("step_begun", begin, step=step)
        return self if end is None else self.add("step_ended", end, step=step)

    def read(self, quantity, value, minute, **rest):
        data = {"quantity": quantity, "value": value, **rest}
        return self.add("reading_taken", minute, **data)

    def answers(self, ask, minute, given=None, others=()):
        events = [event for other in others for event in other.events]
        found = ask.desk(
            ("set_rules", RULES),
            ("take", [*events, *self.events]),
            ("step_sums", MAKE, self.step, at(minute), given),
        )
        assert found[1]["problems"] == []
        return found[2]

    def known(self, ask, minute, **rest):
        """Return {input: value} of the one sum that the step lists."""
        (row,) = self.answers(ask, minute, **rest)
        return {item["name"]: item["value"] for item in row["known"]}

    def value(self, ask, minute, name, of=None, **rest):
        (row,) = self.answers(ask, minute, **rest)
        assert row["missing"] == []
        assert row["problems"] == []
        (found,) = [v for v in row["values"] if (v["name"], of_words(v)) == (name, of)]
        return found["value"]


def test_weighed_milk_goes_before_metered_and_that_before_planned(ask):
    make = Make("ripen", "starter_bulk").run("ripen", 10)
    planned = make.known(ask, 11)["milk_kg"]
    # Goff: 1.035 kg/L at 4.4 °C.
    assert planned == pytest.approx(1035, rel=1e-3)
    make.read("milk_volume_l", 900.0, 1)
    assert make.known(ask, 11)["milk_kg"] == pytest.approx(0.9 * planned)
    make.read("milk_mass_kg", 950.0, 2)
    assert make.known(ask, 11)["milk_kg"] == 950.0
    # 0.75 % by the recipe (Guelph's Gouda page).
    assert make.value(ask, 11, "starter_kg") == pytest.approx(950 * 0.0075)


def test_a_dose_by_the_litre_is_told_by_the_kilogram(ask):
    make = Make("ripen", "calcium_chloride").run("ripen", 10)
    make.read("milk_volume_l", 1000.0, 1).read("milk_mass_kg", 1030.0, 2)
    # 0.15 g/L of 1.030 kg/L.
    assert make.known(ask, 11)["dose_g_per_kg"] == pytest.approx(0.15 / 1.03)


def test_a_dose_that_cannot_be_weighed_is_asked_for(ask):
    make = Make("ripen", "calcium_chloride").run("ripen", 10)
    for row in make.recipe["ingredients"]:
        if row["key"] == "calcium_chloride":
            row["unit"], row["dose"]["per"] = "mL", "kg_milk"
            row["dose"]["amount"]["unit"] = "mL/kg"
    # Seen: 0.15 mL/kg of a solution was taken as 150 g/kg of the salt.
    assert "dose_g_per_kg" not in make.known(ask, 11)


def test_colour_goes_by_the_recipes_dose(ask):
    make = Make("ripen", "colour").run("ripen", 10).read("milk_mass_kg", 1000.0, 1)
    # 0.0015 mL/kg is 1.5 mL on the tonne.
    assert make.value(ask, 11, "colour_ml") == pytest.approx(1.5)


def test_fat_that_was_tested_goes_before_the_recipes(ask):
    make = Make("receive", "expected_yield").run("receive", 1)
    told = RECIPE["milk"].get("fat_frac")
    first = make.known(ask, 2).get("fat_frac")
    assert first == (told["value"] if told else None)
    make.read("fat_frac", 0.0412, 3)
    assert make.known(ask, 4)["fat_frac"] == 0.0412


def test_a_temperature_typed_in_fahrenheit_is_judged_so_on_receipt(ask):
    make = Make("receive", "milk_receipt").run("receive", 1)
    make.read("milk_temp_c", 7.28, 2, typed="45.1", typed_unit="F")
    # 45.1 °F against 45 °F (1 NYCRR 2.49).
    got = make.value(ask, 3, "temperature", "held_in_plant")
    assert got == "does_not_meet"


def set_and_cut():
    make = Make("set", "cut_time")
    make.run("rennet", 100, 102).run("set", 102)
    make.add("curd_judged", 110, judgement="not_flocculated", step="set")
    make.add("curd_judged", 112, judgement="flocculated", step="set")
    return make


def test_the_floc_time_and_the_looks_before_it_are_known(ask):
    known = set_and_cut().known(ask, 113)
    assert known["floc_s"] == 720
    assert known["tested_every_s"] == 120
    # 12 min times 3.
    assert set_and_cut().value(ask, 113, "cut_s") == pytest.approx(36 * 60)


def test_a_floc_seen_at_the_first_look_leaves_the_spacing_to_the_default(ask):
    make = Make("set", "cut_time").run("rennet", 100, 102).run("set", 102)
    make.add("curd_judged", 112, judgement="flocculated", step="set")
    assert "tested_every_s" not in make.known(ask, 113)


def test_the_next_dose_starts_from_what_went_in(ask):
    make = Make("set", "rennet_next").run("rennet", 100, 102).run("set", 102)
    make.add("ingredient_added", 101, ingredient="rennet", amount=190.0, unit="mL")
    make.add("curd_judged", 110, judgement="not_flocculated", step="set")
    make.add("curd_judged", 112, judgement="flocculated", step="set")
    known = make.known(ask, 113)
    assert known["rennet_ml"] == 190.0
    # The set is to last 30 min at three times the floc time.
    assert known["target_floc_s"] == pytest.approx(600)
    # 12 min, wanted 10, delay 2: 10 / 8 of the dose.
    got = make.value(ask, 113, "next_rennet_ml")
    assert got == pytest.approx(190 * 10 / 8)


def test_rennet_weighed_in_is_no_volume(ask):
    make = Make("set", "rennet_next").run("rennet", 100, 102).run("set", 102)
    make.add("ingredient_added", 101, ingredient="rennet", amount=19.0, unit="g")
    assert "rennet_ml" not in make.known(ask, 113)


def test_the_warmth_of_the_curd_is_followed_from_the_starter(ask):
    make = Make("stir", "acid_temperature").run("starter", 0, 3).run("stir", 100)
    make.read("milk_temp_c", 32.0, 5).read("milk_temp_c", 32.0, 50)
    make.read("curd_temp_c", 32.0, 65)
    # An hour at the reference is an hour.
    assert make.value(ask, 101, "worth_s") == pytest.approx(3600)


def test_one_temperature_is_no_course(ask):
    make = Make("stir", "acid_temperature").run("starter", 0, 3).run("stir", 100)
    (row,) = make.read("milk_temp_c", 32.0, 5).answers(ask, 101)
    assert row["missing"] == ["curd_temps"]


def test_before_the_starter_no_acid_is_known(ask):
    make = Make("receive", "acid_forecast").run("receive", 1)
    (row,) = make.read("ph", 6.68, 2).answers(ask, 3)
    assert "ph_readings" not in {item["name"] for item in row["known"]}


def test_two_readings_at_one_instant_are_one(ask):
    make = Make("cut", "acid_band").run("starter", 0, 3).run("cut", 90)
    make.read("ph", 6.50, 90).read("ph", 6.45, 90)
    assert make.known(ask, 91)["ph_readings"] == [{"at_min": 90, "ph": 6.45}]


def test_a_recipe_without_a_curve_falls_back_on_the_published_one(ask):
    make = Make("cut", "acid_band").run("starter", 0, 3).run("cut", 90)
    del make.recipe["curve"]
    make.read("ph", 6.45, 90)
    (row,) = make.answers(ask, 91)
    assert row["missing"] == ["ph_readings"]


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
    # 100 L by the recipe, to 34.5 °C: T = 34.5 + m c 3.5 / (w 4180).
    water_kg = 100 * 0.9832
    wanted = 34.5 + 1000 * 3900 * 3.5 / (water_kg * 4180)
    assert make.value(ask, 151, "water_temp_c") == pytest.approx(wanted)


def test_protein_that_was_read_serves_the_ratio_to_fat(ask):
    make = Make("receive", "standardise_ratio").run("receive", 1)
    assert "protein_frac" not in make.known(ask, 5)
    make.read("protein_frac", 0.0335, 2).read("fat_frac", 0.041, 3)
    assert make.known(ask, 5)["protein_frac"] == 0.0335
    given = {"protein_fat_ratio": {"value": 0.9}}
    now = make.value(ask, 5, "protein_fat_ratio_now", given=given)
    assert now == pytest.approx(0.0335 / 0.041)


def test_a_wash_that_is_over_counts_the_vat_as_it_was_then(ask):
    make = Make("wash_1", "wash_temp").run("wash_1", 150, 160)
    make.read("milk_mass_kg", 1000.0, 1).read("milk_volume_l", 1000.0, 2)
    make.read("curd_temp_c", 31.0, 149).read("curd_temp_c", 37.2, 190)
    assert make.known(ask, 200)["vat_temp_c"] == 31.0
    (row,) = make.answers(ask, 200)
    assert row["problems"] == []
    # A step that still runs goes by the newest.
    running = Make("wash_1", "wash_temp").run("wash_1", 150)
    running.read("curd_temp_c", 31.0, 149).read("curd_temp_c", 33.0, 155)
    assert running.known(ask, 156)["vat_temp_c"] == 33.0


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


def test_a_vat_fills_and_its_time_constant_with_it(ask):
    def heating(make, step_make, litres):
        made = Make("heat", "heat_forecast", make=make, milk_l=litres)
        made.run("heat", step_make)
        made.read("jacket_temp_c", 70.0, step_make, step="heat")
        for place, temp_c in enumerate((32.0, 33.4, 34.7, 35.9)):
            made.read("milk_temp_c", temp_c, step_make + 2 * place, step="heat")
        return made

    earlier = heating(str(uuid.UUID(int=9)), -3000, 500.0)
    earlier.add("step_ended", -2900, step="heat")
    make = heating(MAKE, 5, 1000.0)
    (row,) = make.answers(ask, 12, others=[earlier])
    (told,) = [item for item in row["rests_on"] if item["name"] == "tau_s"]
    # Between once and twice the earlier one; 3.9 K of 38 in 6 min is 55.5 min.
    assert 55 * 60 < told["value"] < 2 * 56 * 60


def test_an_earlier_make_without_a_jacket_teaches_no_time_constant(ask):
    earlier = Make("heat", "heat_forecast", make=str(uuid.UUID(int=9)))
    earlier.run("heat", -3000, -2900)
    for place, temp_c in enumerate((32.0, 33.4, 34.7, 35.9)):
        earlier.read("milk_temp_c", temp_c, -3000 + 2 * place, step="heat")
    make = Make("heat", "heat_forecast").run("heat", 5)
    make.read("milk_temp_c", 32.0, 6, step="heat")
    known = make.known(ask, 7, others=[earlier])
    assert "tau_s" not in known


def test_a_power_limited_vat_is_entered_with_the_make(ask):
    make = Make("heat", "heat_forecast", equipment={"heating": "power"})
    make.run("heat", 5)
    for place in range(4):
        make.read("milk_temp_c", 30.0 + place, 6 + place, step="heat")
    assert make.known(ask, 10)["heating"] == "power"
    # 1 K a minute from 30 to 63.9 °C.
    assert make.value(ask, 10, "reach_s") == pytest.approx(33.9 * 60)


def test_equipment_that_is_no_number_is_asked_for(ask):
    equipment = {"bore_m": "63 mm", "lever_ratio": True}
    make = Make("press_1", "press_gauge", equipment=equipment).run("press_1", 5)
    for row in make.answers(ask, 6):
        assert "bore_m" in row["missing"]
        assert "lever_ratio" not in {item["name"] for item in row["known"]}


def test_sizes_of_wheel_are_answered_one_by_one(ask):
    make = Make("press_1", "press_gauge").run("press_1", 5)
    given = {"bore_m": {"value": 0.063}, "cheese_kpa": {"value": 20}}
    rows = make.answers(ask, 6, given=given)
    assert [row["of"] for row in rows] == ["small", "large"]
    small, large = (row["values"][0]["value"] for row in rows)
    # The same pressure on four times the face: (300 / 145)² times the gauge.
    assert large / small == pytest.approx((300 / 145) ** 2)


def test_blocks_are_cut_for_both_moulds(ask):
    make = Make("cut_blocks", "block_plan").run("cut_blocks", 5)
    known = make.known(ask, 6)
    assert (known["large_kg"], known["small_kg"]) == (8.0, 1.4)


def test_one_size_in_use_leaves_no_second_block(ask):
    moulds = [{"size": "large", "count": 12}]
    make = Make("cut_blocks", "block_plan", moulds=moulds).run("cut_blocks", 5)
    assert "small_kg" not in make.known(ask, 6)


def test_a_size_moulded_against_the_plan_is_a_size_of_the_make(ask):
    moulds = [{"size": "large", "count": 12}]
    make = Make("cut_blocks", "block_plan", moulds=moulds).run("cut_blocks", 5)
    make.add("wheels_moulded", 4, size="small", count=3)
    # The view said so before, the sums did not.
    assert make.known(ask, 6)["small_kg"] == 1.4


def test_drying_is_read_off_two_weighings_of_a_size(ask):
    make = Make("store", "weight_loss").run("store", 0)
    make.read("wheel_mass_kg", 8.0, 10, place="large")
    make.read("wheel_mass_kg", 1.4, 11, place="small")
    make.read("wheel_mass_kg", 7.84, 10 + 28 * 1440, place="large")
    large = make.answers(ask, 30 * 1440)[1]
    assert large["of"] == "large"
    assert large["values"][0]["value"] == pytest.approx(0.02)
    known = {item["name"]: item["value"] for item in large["known"]}
    assert known["days"] == pytest.approx(28)
    small = make.answers(ask, 30 * 1440)[0]
    assert small["missing"] == ["start_kg", "now_kg"]


def test_ripening_counts_the_store_alone(ask):
    make = Make("store", "ripening_days").run("store", 0)
    make.read("brine_temp_c", 13.0, -100)
    for day in range(15):
        make.read("store_temp_c", 15.0, 1440 * day)
    # 14 d at 15 °C, Q10 2.5, reference 13 °C: 16.816 d.
    got = make.value(ask, 15 * 1440, "ripening_days")
    assert got == pytest.approx(16.816, abs=5e-4)


def cured(unit="F", days=61):
    make = Make("store", "curing_days").run("fill_moulds", 0, 1).run("store", 2)
    for day in range(days):
        typed = 50 if unit == "F" else 10
        make.read(
            "store_temp_c", 10.0, 1 + 1440 * day, typed=str(typed), typed_unit=unit
        )
    return make


def test_days_of_curing_go_by_the_stores_own_thermometer(ask):
    make = cured()
    assert make.known(ask, 60 * 1440 + 1)["store_thermometer"] == "F"
    got = make.value(ask, 60 * 1440 + 1, "verdict", "unpasteurised_60_days")
    assert got == "meets"
    assert cured("C").known(ask, 60 * 1440 + 1)["store_thermometer"] == "C"


def test_a_thermometer_from_before_the_moulds_says_nothing_of_the_store(ask):
    make = Make("store", "curing_days").run("fill_moulds", 1000, 1001)
    for minute in range(3):
        make.read("room_temp_c", 21.0, minute, typed="69.8", typed_unit="F")
    make.run("store", 1002).read("store_temp_c", 12.0, 1003)
    known = make.known(ask, 1004)
    # Seen: counted in Celsius, judged by the limit in Fahrenheit.
    assert known["store_thermometer"] == "C"
    assert known["curing_temps"] == [{"at_min": 2, "value": 12.0}]


def test_brine_and_press_count_toward_the_days_as_they_were_read(ask):
    make = Make("store", "curing_days").run("fill_moulds", 0, 1).run("store", 2)
    make.read("room_temp_c", 20.0, 1).read("brine_temp_c", 12.0, 1000)
    make.read("store_temp_c", 12.0, 2000)
    got = make.value(ask, 2000, "counted_days")
    assert got == pytest.approx(1999 / 1440)


def test_before_the_moulds_no_day_counts(ask):
    make = Make("store", "curing_days").run("store", 2)
    (row,) = make.read("store_temp_c", 12.0, 5).answers(ask, 6)
    assert "curing_temps" in row["missing"]


def test_laboratory_figures_go_by_the_size(ask):
    make = Make("store", "composition").run("store", 0)
    make.read("cheese_moisture_frac", 0.45, 5, place="large")
    make.read("cheese_fat_frac", 0.253, 6, place="large")
    small, large = make.answers(ask, 10)
    assert small["missing"] == ["cheese_moisture_frac", "cheese_fat_frac"]
    # 25.3 over 55 is 46 %.
    assert large["values"][0]["value"] == pytest.approx(0.46)


def test_pasteurised_milk_is_known_as_such(ask):
    make = Make("store", "identity", equipment={"plant_name": "Quernbeck"})
    make.read("milk_volume_l", 1000.0, 1).read("fat_frac", 0.04, 2)
    make.run("hold", 10)
    for minute in range(0, 31, 2):
        for quantity, typed in (("milk_temp_c", 145), ("air_space_temp_c", 150)):
            celsius = (typed - 32) / 1.8
            make.read(quantity, celsius, 10 + minute, typed=str(typed), typed_unit="F")
    make.add("step_ended", 42, step="hold").run("store", 5000)
    given = {"standard": {"value": "gouda"}}
    for row in make.answers(ask, 5001, given=given):
        known = {item["name"]: item["value"] for item in row["known"]}
        assert known["milk_was"] == "pasteurised"


@pytest.mark.parametrize(("days", "verdict"), [(60, "meets"), (59, "does_not_meet")])
def test_raw_milk_cheese_is_held_by_the_makes_own_log(ask, days, verdict):
    # 21 CFR 133.142 as Edam: raw milk, 60 days at 35 °F.
    make = Make("store", "identity").run("fill_moulds", 0, 1).run("store", 2)
    make.read("milk_temp_c", 60.0, -200).run("hold", -201, -150)
    for day in range(days + 1):
        make.read("store_temp_c", 10.0, 1 + 1440 * day, typed="50", typed_unit="F")
    for size in ("small", "large"):
        make.read("cheese_moisture_frac", 0.42, 50, place=size)
        make.read("cheese_fat_frac", 0.29, 51, place=size)
    given = {"standard": {"value": "gouda"}}
    for row in make.answers(ask, 1 + 1440 * days, given=given):
        known = {item["name"]: item["value"] for item in row["known"]}
        assert known["cured_days"] == days
        assert row["values"][0]["value"] == verdict


def test_a_hold_not_begun_says_nothing_of_the_milk(ask):
    make = Make("store", "identity").run("store", 5000)
    for row in make.answers(ask, 5001):
        assert "milk_was" not in {item["name"] for item in row["known"]}


def test_the_brine_around_the_wheels_is_known_by_its_tank(ask):
    tank = Phone(make=str(uuid.UUID(int=11)), device=1)
    events = [
        tank.event("tank_opened", 0, name="Tank", mass_kg=800.0, salt_frac=0.2),
        tank.event(
            "tank_loaded",
            10,
            load_make=MAKE,
            size="large",
            wheels=10,
            mass_kg=80.0,
        ),
    ]
    make = Make("brine_large", "brine_check").run("brine_large", 10)
    make.read("brine_ph", 5.3, 11).read("ph", 5.35, 5)

    class Other:
        pass

    other = Other()
    other.events = events
    known = make.known(ask, 12, others=[other])
    assert known["brine_kg"] == pytest.approx(800, abs=1)
    assert known["cheese_ph"] == 5.35
    assert "brine_kg" not in make.known(ask, 12)


def tank_with_ratio(number, ratio, minute, load_make=None):
    tank = Phone(make=str(uuid.UUID(int=number)), device=1)
    events = [tank.event("tank_opened", 0, name="Tank", mass_kg=800.0, salt_frac=0.2)]
    if load_make is not None:
        wheels = {"size": "large", "wheels": 4, "mass_kg": 32.0}
        events.append(tank.event("tank_loaded", 1, load_make=load_make, **wheels))
    reading = {"quantity": "water_salt_ratio", "value": ratio}
    events.append(tank.event("reading_taken", minute, **reading))
    return SimpleNamespace(events=events)


def test_the_rooms_own_water_for_salt_serves_its_brining(ask):
    make = Make("brine_large", "brine_time").run("brine_large", 0)
    make.read("brine_salt_frac", 0.2, 1)
    assert "water_salt_ratio" not in make.known(ask, 40)
    usual = make.value(ask, 40, "loss_frac")
    other = tank_with_ratio(11, 1.2, 30)
    assert make.known(ask, 40, others=[other])["water_salt_ratio"] == 1.2
    # Less water out for the same salt: less is lost.
    assert make.value(ask, 40, "loss_frac", others=[other]) < usual
    # The tank that the wheels went into goes before a newer one.
    mine = tank_with_ratio(12, 1.6, 20, MAKE)
    assert make.known(ask, 40, others=[other, mine])["water_salt_ratio"] == 1.6
    # And the make's own before both.
    make.read("water_salt_ratio", 1.9, 2)
    assert make.known(ask, 40, others=[other, mine])["water_salt_ratio"] == 1.9


def test_own_wheels_are_read_with_the_rooms_own_water_for_salt(ask):
    earlier = Make("brine_large", "brine_time", make=str(uuid.UUID(int=9)))
    earlier.read("brine_salt_frac", 0.2, -8999)
    earlier.run("brine_large", -9000, -9000 + 2880)
    earlier.read("cheese_salt_frac", 0.0175, -4000, place="large")
    make = Make("brine_large", "brine_time").run("brine_large", 0)
    make.read("brine_salt_frac", 0.2, 1)
    given = {"wanted_salt_frac": {"value": 0.0175}}
    for tanks in ([], [tank_with_ratio(11, 1.2, 30)]):
        # Asked for the very salt that 48 h gave, it gives 48 h back, whatever goes out.
        told = make.value(ask, 40, "time_s", given=given, others=[earlier, *tanks])
        assert told == pytest.approx(48 * 3600, rel=1e-6)


def test_one_analysed_wheel_leaves_a_third_open(ask):
    earlier = Make("brine_large", "brine_time", make=str(uuid.UUID(int=9)))
    earlier.read("brine_salt_frac", 0.2, -8999)
    earlier.run("brine_large", -9000, -9000 + 2880)
    earlier.read("cheese_salt_frac", 0.0175, -4000, place="large")
    make = Make("brine_large", "brine_time").run("brine_large", 0)
    make.read("brine_salt_frac", 0.2, 1)
    (row,) = make.answers(ask, 2, others=[earlier])
    time_s = next(v for v in row["values"] if v["name"] == "time_s")
    # Time goes with one over the diffusivity.
    assert time_s["high"] / time_s["value"] == pytest.approx(1.33, rel=1e-3)
    # 48 h gave 1.75 %: 2.0 % takes longer.
    assert time_s["value"] > 48 * 3600


@pytest.mark.parametrize("salt", [0.0, 0.1])
def test_a_wheel_that_cannot_be_teaches_nothing(ask, salt):
    earlier = Make("brine_large", "brine_time", make=str(uuid.UUID(int=9)))
    earlier.read("brine_salt_frac", 0.05, -8999)
    earlier.run("brine_large", -9000, -9000 + 2880)
    earlier.read("cheese_salt_frac", salt, -4000, place="large")
    make = Make("brine_large", "brine_time").run("brine_large", 0)
    (row,) = make.answers(ask, 2, others=[earlier])
    (told,) = [item for item in row["rests_on"] if item["name"] == "diffusion_m2_s"]
    assert told["from"] == "recipe"
