"""What a make knows of its cheese, weighed and analysed."""

import pytest

from tests.core.known.making import Make


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


def test_a_hold_not_begun_says_nothing_of_the_milk(ask):
    make = Make("store", "identity").run("store", 5000)
    for row in make.answers(ask, 5001):
        assert "milk_was" not in {item["name"] for item in row["known"]}


# Reg. (EC) 2073/2005, Annex I, Chapter 2: 2.2.3 raw milk, 2.2.4 milk of a lower heat
# treatment than pasteurisation, and ripened cheese of pasteurised milk.
@pytest.mark.parametrize(
    ("treatment", "was", "row"),
    [
        ("raw", "raw", "raw"),
        ("heat_treated", "raw", "thermised"),
        ("pasteurised", None, None),
    ],
)
def test_every_sum_has_its_milk_from_the_one_answer(ask, treatment, was, row):
    def known(name):
        make = Make("store", name, treatment=treatment).run("store", 5000)
        first = make.answers(ask, 5001)[0]
        return {item["name"]: item["value"] for item in first["known"]}

    assert known("identity").get("milk_was") == was
    assert known("staph_counts").get("made_from") == row
    is_cured = (treatment == "pasteurised" and "undecided") or treatment
    assert known("curing_days")["milk_is"] == is_cured
