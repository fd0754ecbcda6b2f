"""What every sum does alike: typing, limits, asking once more, what it rests on."""

import pytest

from tests.core.sums.asking import answer, table, typed


def the_problem(found):
    assert found["values"] == []
    (problem,) = found["problems"]
    return problem


def test_comma_and_other_units_are_read_without_rounding(core):
    given = {
        "acidity_frac": typed("15,75", "dornic"),
    }
    found = answer(core, "acidity_units", given)
    assert found["values"][0]["value"] == pytest.approx(0.001575, rel=1e-12)


def test_an_impossible_ph_is_refused_with_its_limit(core):
    given = {"target_ph": typed("15")}
    problem = the_problem(answer(core, "acid_forecast", given))
    assert (problem["field"], problem["key"], problem["limit"]) == (
        "target_ph",
        "above",
        8,
    )
    assert (problem["value"], problem["unit"], problem["from"]) == (15, "pH", "input")


def test_a_brine_of_27_percent_cannot_be(core):
    given = {"volume_l": 100, "brine_salt_frac": typed("27", "%")}
    problem = the_problem(answer(core, "brine_make_up", given))
    assert problem["field"] == "brine_salt_frac"
    assert problem["limit"] == 0.266


def test_a_brine_beyond_saturation_is_refused_by_the_formula(core):
    # 26.5 % is more than cold brine holds (26.36 % at 10 °C, Salt Institute).
    given = {"volume_l": 100, "brine_salt_frac": 0.265, "brine_temp_c": 10}
    problem = the_problem(answer(core, "brine_make_up", given))
    assert problem["field"] == "brine_salt_frac"
    assert (problem["key"], problem["from"]) == ("above_saturation", "formula")
    assert (problem["value"], problem["unit"]) == (0.265, "fraction")
    assert problem["limit"] == pytest.approx(0.2636)
    assert problem["figures"] == {"at_c": {"value": 10, "unit": "C"}}


def test_a_target_beyond_the_jacket_is_refused_in_the_makers_words(core):
    given = {
        "vat_temp_c": 32,
        "target_temp_c": 70,
        "jacket_temp_c": 60,
        "tau_s": 2400,
    }
    problem = the_problem(answer(core, "heat_time", given))
    assert problem["field"] == "target_temp_c"
    assert problem["limit"] == 60
    assert (problem["key"], problem["value"]) == ("beyond_jacket", 70)


@pytest.mark.parametrize("text", ["", "abc", "6,4,5", "1e5", "-"])
def test_what_is_no_number_is_refused_and_told(core, text):
    problem = the_problem(answer(core, "acidity_units", {"acidity_frac": typed(text)}))
    assert (problem["key"], problem["value"]) == ("not_a_number", text)


def test_a_unit_of_another_kind_is_refused(core):
    given = {"acidity_frac": typed("6.5", "pH")}
    problem = the_problem(answer(core, "acidity_units", given))
    assert problem["key"] == "unknown_unit"


def test_an_unlikely_value_is_taken_and_asked_about_once_more(core):
    given = {"milk_kg": 500, "starter_frac": typed("5", "%")}
    found = answer(core, "starter_bulk", given)
    assert found["values"][0]["value"] == pytest.approx(25)
    (asked,) = found["ask"]
    assert asked == {"field": "starter_frac", "key": "unlikely_high", "limit": 0.03}


def test_a_value_the_maker_stands_by_is_not_asked_about_again(core):
    sure = {"typed": "5", "unit": "%", "sure": True}
    found = answer(core, "starter_bulk", {"milk_kg": 500, "starter_frac": sure})
    assert found["ask"] == []


def test_what_is_missing_is_named_and_nothing_is_worked_out(core):
    found = answer(core, "wash_water", {"vat_kg": 70.3})
    assert found["missing"] == ["vat_temp_c", "target_temp_c", "water_temp_c"]
    assert found["values"] == []


def test_what_a_make_knows_is_taken_unless_something_is_typed(core):
    known = {
        "milk_kg": {
            "value": 515,
            "from": "make",
            "status": "measured",
            "source": None,
        }
    }
    first = answer(core, "starter_bulk", {}, known)
    # 515 kg at 0.75 % is 3.8625 kg (Guelph's Gouda page).
    assert first["values"][0]["value"] == pytest.approx(3.8625)
    second = answer(core, "starter_bulk", {"milk_kg": 100}, known)
    assert second["values"][0]["value"] == pytest.approx(0.75)
    assert [row["from"] for row in second["rests_on"]] == ["typed", "default"]


def test_an_answer_is_as_weak_as_the_weakest_it_rests_on(core):
    measured = answer(core, "acidity_units", {"acidity_frac": 0.0016})
    assert measured["status"] == "measured"
    read = answer(core, "starter_bulk", {"milk_kg": 100})
    assert read["status"] == "read"
    given = {"aqueous_kg": 94, "washes": table(["drained_kg", "water_kg"], [30, 20])}
    assert answer(core, "lactose_left", given)["status"] == "memory"


def test_readings_out_of_order_are_refused_at_their_row(core):
    given = {"vat_temps": table(["at_min", "value"], [0, 32], [5, 33], [5, 34])}
    problem = the_problem(answer(core, "scald_rate", given))
    assert problem["field"] == "vat_temps.3.at_min"
    assert (problem["key"], problem["limit"], problem["unit"]) == (
        "not_rising",
        5,
        "min",
    )


def test_a_missing_cell_is_told_by_row_and_column(core):
    given = {"vat_temps": table(["at_min", "value"], [0, 32], [5, ""])}
    problem = the_problem(answer(core, "scald_rate", given))
    assert problem["field"] == "vat_temps.2.value"


def test_a_table_typed_in_fahrenheit_is_read_in_celsius(core):
    # 1.8 °F a minute is 1 K a minute.
    rows = [[0, "86"], [1, "87.8"], [2, "89,6"]]
    given = {"vat_temps": dict(table(["at_min", "value"], *rows), unit="F")}
    found = answer(core, "scald_rate", given)
    assert found["values"][0]["value"] == pytest.approx(1 / 60, rel=1e-9)


def test_a_sum_that_is_none_and_an_input_that_is_none_are_told(core):
    assert the_problem(answer(core, "no_such_sum", {}))["key"] == "unknown_sum"
    problem = the_problem(answer(core, "colour", {"mlik_kg": 3}))
    assert (problem["field"], problem["key"]) == ("mlik_kg", "unknown_input")


def test_a_count_must_be_whole(core):
    given = {
        "gauge_kpa": 200,
        "bore_m": 0.063,
        "diameter_m": 0.2,
        "side_by_side": 2.5,
    }
    problem = the_problem(answer(core, "press_pressure", given))
    assert (problem["field"], problem["key"]) == ("side_by_side", "not_whole")


def test_no_value_crashes_a_sum(core):
    """Every sum, with each number at its lowest, at its highest and in between."""
    layout = core("sums.catalogue", "layout")
    for row in layout:
        for share in (0.0, 0.37, 1.0):
            given = {item["name"]: filled(item, share) for item in row["inputs"]}
            found = core("sums.catalogue", "work_out", row["key"], given, {}, {})
            told = found["values"] or found["problems"] or found["missing"]
            assert told or found["notes"], row["key"]
            names = [item["name"] for item in row["inputs"]]
            for problem in found["problems"]:
                assert problem["key"], row["key"]
                assert problem["field"].split(".")[0] in names, problem


def filled(item, share):
    if item["kind"] == "choice":
        return {"value": item["choices"][int(share * (len(item["choices"]) - 1))]}
    if item["kind"] == "series":
        rows = []
        for place in range(int(max(item["low"], 3))):
            row = {c["name"]: filled(c, share)["value"] for c in item["columns"]}
            if "at_min" in row:
                row["at_min"] = place * 10.0
            rows.append(row)
        return {"rows": rows}
    span = item["low"] + share * (item["high"] - item["low"])
    return {"value": int(span) if item["kind"] == "count" else span}


def test_every_sum_gives_only_the_outputs_that_it_announces(core):
    layout = core("sums.catalogue", "layout")
    keys = [row["key"] for row in layout]
    assert len(set(keys)) == len(keys)
    for row in layout:
        names = [item["name"] for item in row["inputs"]]
        assert len(set(names)) == len(names), row["key"]
        for share in (0.1, 0.4):
            given = {item["name"]: filled(item, share) for item in row["inputs"]}
            found = core("sums.catalogue", "work_out", row["key"], given, {}, {})
            announced = [out["name"] for out in row["outputs"]]
            assert {v["name"] for v in found["values"]} <= set(announced), row["key"]


def test_every_default_says_where_it_comes_from(core):
    for row in core("sums.catalogue", "layout"):
        for item in row["inputs"]:
            if item["default"] is not None:
                assert item["default"]["status"] in (
                    "read",
                    "abstract",
                    "practice",
                    "memory",
                    "derived",
                ), (row["key"], item["name"])
                assert item["default"]["source"], (row["key"], item["name"])


@pytest.mark.parametrize(
    ("given", "field", "key"),
    [
        ({"vat_temps": 7}, "vat_temps", "not_a_mapping"),
        ({"vat_temps": {"rows": 7}}, "vat_temps", "not_a_list"),
        ({"vat_temps": {"rows": []}}, "vat_temps", "too_few"),
        (
            {"vat_temps": {"rows": [{"at_min": 0, "value": 32}] * 501}},
            "vat_temps",
            "too_many",
        ),
        ({"vat_temps": {"rows": [7]}}, "vat_temps.1.at_min", "not_a_number"),
        (
            {"vat_temps": {"rows": [{"at_min": 0, "value": "warm"}]}},
            "vat_temps.1.value",
            "not_a_number",
        ),
        (
            {"vat_temps": {"rows": [{"at_min": 0, "value": 999}]}},
            "vat_temps.1.value",
            "above",
        ),
    ],
)
def test_a_table_that_cannot_be_read_is_told_where(core, given, field, key):
    found = core("sums.catalogue", "work_out", "scald_rate", given, {}, {})
    assert (found["problems"][0]["field"], found["problems"][0]["key"]) == (field, key)


def test_unlikely_cells_are_asked_about_by_row(core):
    given = {"vat_temps": table(["at_min", "value"], [0, 32], [5, 99])}
    found = answer(core, "scald_rate", given)
    assert found["ask"] == [
        {"field": "vat_temps.2.value", "key": "unlikely_high", "limit": 95}
    ]


def test_an_unlikely_low_value_is_asked_about_too(core):
    found = answer(core, "colour", {"milk_kg": 5})
    assert found["ask"] == [{"field": "milk_kg", "key": "unlikely_low", "limit": 20}]


def test_colder_than_cold_is_refused(core):
    given = {"milk_l": 100, "fat_frac": 0.04, "milk_temp_c": typed("-500", "F")}
    problem = the_problem(answer(core, "milk_mass", given))
    assert (problem["field"], problem["key"]) == (
        "milk_temp_c",
        "below_absolute_zero",
    )


def test_a_choice_that_is_none_is_refused_with_the_choices(core):
    given = {"milk_kg": 100, "form": "crystals"}
    problem = the_problem(answer(core, "calcium_chloride", given))
    assert problem["key"] == "not_a_choice"
    assert problem["limit"] == ["anhydrous", "dihydrate", "solution"]


def test_what_is_given_must_be_a_mapping(core):
    found = core("sums.catalogue", "work_out", "colour", [1], {}, {})
    assert the_problem(found)["key"] == "not_a_mapping"


def test_a_refusal_is_told_in_the_unit_that_the_sum_asks_for(core):
    # 2 cylinders or more press with 20 kg dead weight on 0.01 m² at least 19.6 kPa.
    given = {
        "cheese_kpa": 5,
        "bore_m": 0.05,
        "diameter_m": 0.11284,
        "dead_weight_kg": 20,
        "side_by_side": 1,
    }
    problem = the_problem(answer(core, "press_gauge", given))
    assert (problem["field"], problem["key"]) == ("cheese_kpa", "below_dead_weight")
    assert (problem["unit"], problem["of"]) == ("kPa", None)
    assert problem["value"] == pytest.approx(5)
    assert problem["limit"] == pytest.approx(19.61, abs=0.01)  # 20 kg × 9.80665 m/s²


def test_a_refusal_of_what_only_follows_from_an_input_names_both(core):
    # 50 kg of cheese of 30 kg of milk: a yield of 167 %.
    given = {"cheese_kg": 50, "milk_kg": 30, "cheese_moisture_frac": 0.4}
    problem = the_problem(answer(core, "actual_yield", given))
    assert (problem["field"], problem["of"]) == ("cheese_kg", "yield_frac")
    assert (problem["key"], problem["limit"], problem["unit"]) == (
        "above",
        1,
        "fraction",
    )
    assert problem["value"] == pytest.approx(5 / 3)


@pytest.mark.parametrize(
    ("amount", "start", "end", "wanted"),
    [
        (1, "h", "min", 60),
        (1, "in", "mm", 25.4),
        (2.5, "%", "fraction", 0.025),
        (1, "gal", "L", 3.785411784),
        (3, "kg", "kg", 3),
    ],
)
def test_units_are_exact_by_definition(core, amount, start, end, wanted):
    assert core("units.table", "convert", amount, start, end) == pytest.approx(wanted)
    back = core("units.table", "convert", wanted, end, start)
    assert back == pytest.approx(amount)


def test_units_of_two_kinds_do_not_convert(core):
    with pytest.raises(ValueError, match="to_unit 'mm' unknown_unit 'time'"):
        core("units.table", "convert", 1, "h", "mm")
