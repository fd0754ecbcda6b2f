import pytest

from tests.core.sums.asking import answer, table, values


def identity(core, **given):
    rules = ["us_identity", "codex"]
    return answer(core, "identity", given, rules=rules)


def word(found):
    return found["values"][0]["value"]


def test_the_shares_by_hand(core):
    # 25.3 / 55 = 46 %; 45 / 74.7 = 60.2 %; 1.8 / 45 = 4 %.
    given = {
        "cheese_moisture_frac": 0.45,
        "cheese_fat_frac": 0.253,
        "cheese_salt_frac": 0.018,
    }
    found = values(core, "composition", given, ["codex"])
    assert found[("fdm_frac", None)]["value"] == pytest.approx(0.46)
    assert found[("mnfs_frac", None)]["value"] == pytest.approx(0.6024, abs=5e-5)
    assert found[("salt_in_moisture_frac", None)]["value"] == pytest.approx(0.04)


def test_classes_overlap(core):
    # MFFB 55 %: hard and semi-hard (Codex A-6-1978).
    given = {"cheese_moisture_frac": 0.55 * 0.72, "cheese_fat_frac": 0.28}
    found = answer(core, "composition", given, rules=["codex"])
    firm = [row["value"] for row in found["values"] if row["name"] == "firmness"]
    assert firm == ["hard", "semi_hard"]


@pytest.mark.parametrize(
    ("moisture", "fat", "standard", "verdict"),
    [
        (0.450, 0.253, "gouda", "meets"),
        (0.451, 0.253, "gouda", "does_not_meet"),
        (0.450, 0.220, "gouda", "does_not_meet"),
        (0.450, 0.220, "edam", "meets"),
    ],
)
def test_gouda_and_edam_by_21_cfr_133(core, moisture, fat, standard, verdict):
    found = identity(
        core,
        standard=standard,
        cheese_moisture_frac=moisture,
        cheese_fat_frac=fat,
        milk_was="pasteurised",
    )
    assert word(found) == verdict


def test_raw_gouda_waits_for_its_days(core):
    given = {
        "standard": "gouda",
        "cheese_moisture_frac": 0.40,
        "cheese_fat_frac": 0.30,
        "milk_was": "raw",
    }
    assert word(identity(core, **given, cured_days=59)) == "does_not_meet"
    assert word(identity(core, **given, cured_days=60)) == "meets"


def test_monterey_has_no_raw_route(core):
    found = identity(
        core,
        standard="monterey",
        cheese_moisture_frac=0.40,
        cheese_fat_frac=0.32,
        milk_was="raw",
        cured_days=90,
    )
    assert word(found) == "does_not_meet"


def test_no_laboratory_figure_means_not_assessed(core):
    assert word(identity(core, standard="gouda")) == "not_assessed"


def test_a_standard_known_from_memory_decides_nothing(core):
    found = identity(
        core,
        standard_jurisdiction="codex",
        standard="gouda",
        cheese_moisture_frac=0.45,
        cheese_fat_frac=0.253,
    )
    assert word(found) == "not_assessed"
    assert "note.figure_from_memory" in [row["key"] for row in found["notes"]]


def test_a_chart_holds_the_handbooks_limits(core):
    # NIST 6.3.2.2: mean 50.81, limits 45.8159 and 55.8041.
    flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]
    makes = table(["value"], *[[value] for value in flow])
    row = values(core, "control_chart", {"makes": makes})[("mean", None)]
    assert row["value"] == pytest.approx(50.81)
    assert row["low"] == pytest.approx(45.8159, abs=2e-3)  # printed with 1.128
    assert row["high"] == pytest.approx(55.8041, abs=2e-3)


def test_the_average_of_late_has_the_handbooks_limits(core):
    # NIST 6.3.2.4: half width 3 s sqrt(λ / (2 - λ)); here s is the mean range of
    # 6.3.2.2's data, 1.8778, over 1.12838.
    flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]
    makes = table(["value"], *[[value] for value in flow])
    row = values(core, "control_chart", {"makes": makes})[("average", None)]
    half = 3 * 1.8778 / 1.12838 * (0.3 / 1.7) ** 0.5
    assert row["high"] - 50.81 == pytest.approx(half, abs=5e-4)  # printed to 1e-4
    average = 50.81
    for value in flow:
        average += 0.3 * (value - average)
    assert row["value"] == pytest.approx(average, rel=1e-12)


def test_a_small_shift_that_lasts_moves_the_average_of_late(core):
    flow = [50.0, 50.2, 49.8, 50.2] * 5 + [50.7] * 6
    makes = table(["value"], *[[value] for value in flow])
    found = answer(core, "control_chart", {"makes": makes})
    assert "note.average_beyond" in [row["key"] for row in found["notes"]]
    assert not [row for row in found["values"] if row["name"] == "beyond"]


def test_equal_makes_have_no_average_to_watch(core):
    makes = table(["value"], *[[5.2]] * 12)
    found = values(core, "control_chart", {"makes": makes})
    assert ("average", None) not in found


def test_nine_makes_have_no_limits(core):
    makes = table(["value"], *[[value] for value in range(9)])
    found = answer(core, "control_chart", {"makes": makes})
    assert word(found) == "not_assessed"
    assert found["notes"][0]["key"] == "note.too_few_makes"


def test_a_chart_names_the_makes_that_are_unlike_the_others(core):
    flow = [50.0, 50.2, 49.9, 50.1, 50.0, 49.8, 50.1, 50.0, 49.9, 50.1, 58.0]
    makes = table(["value"], *[[value] for value in flow])
    found = values(core, "control_chart", {"makes": makes})
    assert found[("beyond", "make_11")]["value"] == 58.0


def test_nine_on_one_side_are_a_run(core):
    flow = [50.0, 48.0] * 4 + [50.3] * 9
    makes = table(["value"], *[[value] for value in flow])
    found = values(core, "control_chart", {"makes": makes})
    assert found[("run", "make_17")]["value"] == 50.3


def test_more_than_the_whole_cheese_is_refused(core):
    given = {"cheese_moisture_frac": 0.6, "cheese_fat_frac": 0.5}
    problem = answer(core, "composition", given)["problems"][0]
    assert problem["field"] == "cheese_fat_frac"


def test_a_standard_that_another_code_lacks_is_told(core):
    found = identity(core, standard_jurisdiction="codex", standard="monterey")
    assert word(found) == "not_assessed"
    assert found["notes"][0]["key"] == "note.no_such_standard_there"


def test_identity_without_the_rules_says_so(core):
    assert answer(core, "identity", {"standard": "gouda"})["missing"] == ["rules"]
