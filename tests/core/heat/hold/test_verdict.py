"""The verdict on a hold: what its readings meet."""

from tests.core.builders import MAKE, Phone, at
from tests.core.heat.holding import RULES, Hold, every_two_minutes, hold_recipe, whole


def test_a_step_that_is_no_hold_has_no_verdict(ask):
    answers = ask.desk(
        ("set_rules", RULES),
        ("take", [Phone().opened(recipe=hold_recipe())]),
        ("step", MAKE, "heat", at(1)),
    )
    assert "verdict" not in answers[2]


def test_a_whole_hold_reads_as_pasteurised(ask):
    hold = whole()
    every_two_minutes(hold, 0, 30)
    hold.add("step_ended", 31, step="hold")
    verdict = hold.step(ask, 32)["verdict"]
    assert verdict["class"] == "reads_as_pasteurised"
    assert verdict["meaning"] == "counts_as_pasteurised"
    assert verdict["unit"] == "F"
    assert verdict["hold"]["held_s"] == 1800


def test_a_hold_that_still_runs_is_not_assessed(ask):
    hold = whole()
    every_two_minutes(hold, 0, 10)
    verdict = hold.step(ask, 11)["verdict"]
    assert verdict["class"] == "not_assessed"
    assert verdict["reasons"][0]["key"] == "hold_not_over"


def test_a_hold_ended_early_is_heat_treated_only(ask):
    hold = whole()
    every_two_minutes(hold, 0, 28)
    hold.add("step_ended", 29, step="hold", why="no more steam")
    verdict = hold.step(ask, 32)["verdict"]
    assert verdict["class"] == "heat_treated_only"
    assert verdict["meaning"] == "handle_as_unpasteurised"
    assert verdict["if_not_met"] == "us_curing"


def test_equipment_set_after_the_hold_completes_its_record(ask):
    hold = Hold()
    hold.add("reading_taken", -6, quantity="milk_volume_l", value=500.0)
    hold.fat(0.04)
    every_two_minutes(hold, 0, 30)
    hold.add("step_ended", 31, step="hold")
    assert hold.step(ask, 32)["verdict"]["class"] == "not_assessed"
    hold.add("equipment_set", 33, key="plant_name", value="Quernbeck")
    assert hold.step(ask, 34)["verdict"]["class"] == "reads_as_pasteurised"
    hold.add("equipment_set", 35, key="sweetened", value="yes")
    # Sweetened milk is asked 150 °F (21 CFR 1240.61, footnote 1).
    assert hold.step(ask, 36)["verdict"]["class"] == "heat_treated_only"


def test_time_of_filling_and_emptying_is_held_longer(ask):
    def held_31_min(equipment):
        hold = whole(equipment)
        every_two_minutes(hold, 0, 30)
        hold.read(31, 145.0, 150.0)
        hold.add("step_ended", 32, step="hold")
        return hold.step(ask, 33)["verdict"]

    # 30 min and 60 s are 31 min; 61 s more than that were not held.
    assert held_31_min({"extra_hold_s": 60})["class"] == "reads_as_pasteurised"
    assert held_31_min({"extra_hold_s": 61})["class"] == "heat_treated_only"
    assert held_31_min({"extra_hold_s": "x"})["class"] == "reads_as_pasteurised"


def test_a_plant_not_named_leaves_the_record_incomplete(ask):
    hold = Hold()
    hold.add("reading_taken", -6, quantity="milk_volume_l", value=500.0)
    hold.fat(0.04)
    every_two_minutes(hold, 0, 30)
    hold.add("step_ended", 31, step="hold")
    verdict = hold.step(ask, 32)["verdict"]
    assert verdict["class"] == "not_assessed"
    assert verdict["reasons"] == [
        {"key": "record_incomplete", "missing": ["plant_name"]}
    ]


def test_a_reading_in_the_other_unit_is_a_reading_not_taken(ask):
    hold = whole()
    every_two_minutes(hold, 0, 30)
    hold.read(31, 63.0, 66.0, "C")
    hold.add("step_ended", 32, step="hold")
    verdict = hold.step(ask, 33)["verdict"]
    assert verdict["unit"] == "F"
    assert verdict["hold"]["held_s"] == 1800


def test_a_recorder_above_the_indicator_is_warned_of(ask):
    hold = whole()
    every_two_minutes(hold, 0, 30)
    for typed in ("146", "145"):
        hold.add(
            "reading_taken",
            10,
            quantity="recorder_temp_c",
            value=(float(typed) - 32) / 1.8,
            typed=typed,
            typed_unit="F",
            step="hold",
        )
    hold.add("step_ended", 31, step="hold")
    (warning,) = hold.step(ask, 32)["verdict"]["warnings"]
    assert warning["key"] == "recorder_reads_above_indicator"
    assert (warning["value"], warning["limit"]) == (146, 145)


def test_the_recorder_alone_is_no_reading(ask):
    hold = whole()
    hold.add("reading_taken", 5, quantity="recorder_temp_c", value=64.0, step="hold")
    verdict = hold.step(ask, 6)["verdict"]
    assert verdict["class"] == "not_assessed"
    assert [row["key"] for row in verdict["reasons"]] == ["no_readings"]
