"""What was entered as equipment, or came from the laboratory, is not asked again."""

import pytest

from tests.core.figures.test_step_sums import Make, answers, known


def origin(row, name):
    (found,) = [item["from"] for item in row["known"] if item["name"] == name]
    return found


def test_equipment_set_during_the_make_serves_its_sums(ask):
    make = Make().begin("bed_press_1", 5)
    before = answers(ask, make, "bed_press_1", 6)[("bed_weights", None)]
    assert {"length_m", "width_m"} <= set(before["missing"])
    for key, value in (("length_m", 1.2), ("width_m", 0.8)):
        make.add("equipment_set", 7, key=key, value=value)
    after = answers(ask, make, "bed_press_1", 8)[("bed_weights", None)]
    assert after["missing"] == []
    assert (known(after)["length_m"], known(after)["width_m"]) == (1.2, 0.8)
    assert origin(after, "length_m") == "equipment"


def test_a_value_that_no_sum_could_take_is_asked_for(ask):
    make = Make(equipment={"length_m": 90.0, "width_m": 0.8}).begin("bed_press_1", 5)
    row = answers(ask, make, "bed_press_1", 6)[("bed_weights", None)]
    assert row["missing"] == ["length_m"]


@pytest.mark.parametrize(
    ("equipment", "gap_s"),
    [
        ({}, None),
        ({"gap_max_s": 60}, 60),  # shorter than the tool's own: a maker's to set
        ({"gap_max_s": 300}, None),  # longer, on nobody's word
        ({"gap_max_s": 300, "gap_agreed_with": "Inspector"}, 300),
    ],
)
def test_the_sum_goes_by_the_gap_that_the_hold_goes_by(ask, equipment, gap_s):
    make = Make(equipment=equipment).begin("hold", 5)
    row = answers(ask, make, "hold", 6)[("heat_treatment", None)]
    assert known(row).get("gap_max_s") == gap_s


def test_a_longer_gap_typed_in_a_sum_names_nobody_and_does_not_count(ask):
    make = Make().begin("hold", 5)
    for minute in (5, 10, 15, 20, 25, 30, 35):
        make.read("milk_temp_c", 63.5, minute, "hold", typed_unit="C", typed="63.5")
        make.read("air_space_temp_c", 66.5, minute, "hold", typed_unit="C")
    make.end("hold", 36)

    def notes(gap_s):
        given = {"gap_max_s": {"typed": gap_s, "unit": "s"}}
        row = answers(ask, make, "hold", 37, given)[("heat_treatment", None)]
        return {item["key"][len("note.") :] for item in row["notes"]}

    # Read every 5 min; the tool's own figure is 2 min, in server/rules.
    assert {"gap_needs_name", "gap_too_long"} <= notes("300")
    assert "gap_needs_name" not in notes("120")
    assert "gap_needs_name" not in notes("60")


def test_phosphatase_from_the_laboratory_reaches_the_sum(ask):
    make = Make().begin("hold", 5)
    row = answers(ask, make, "hold", 6)[("heat_treatment", None)]
    assert "phosphatase" not in known(row)
    # 350 mU/L is the limit (Pasteurized Milk Ordinance, as server/rules quotes it).
    make.read("milk_phosphatase_mu_l", 400.0, 5000)
    row = answers(ask, make, "hold", 5001)[("heat_treatment", None)]
    assert known(row)["phosphatase"] == "positive"
