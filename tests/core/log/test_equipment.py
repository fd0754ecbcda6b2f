"""What the creamery has: one table, frozen at the opening, added to since."""

import pytest

from server.core.sums import catalogue
from server.core.sums import equipment as table
from tests.core.builders import MAKE, Phone, at, recipe

GAP = {"gap_max_s": 300.0, "gap_agreed_with": "District inspector"}


def problem(field, key, limit=None):
    return {"field": field, "key": key, "limit": limit}


def opened(**equipment):
    return Phone().opened(equipment=equipment)


def in_effect(ask, *events):
    return ask.desk(("take", list(events)), ("view", MAKE, at(1))), ask.one(
        list(events), "log.equipment", "in_effect"
    )


def test_every_row_takes_unit_limits_and_choices_from_the_sums(core):
    inputs = {}
    for row in catalogue.rows():
        for item in row["inputs"]:
            inputs.setdefault(item["name"], []).append(item)
    for row in core("sums.equipment", "layout"):
        if row["sum"] is None:
            assert row["name"] not in inputs
            continue
        # Each name means one thing in all sums, so any of its inputs will do.
        for item in inputs[row["name"]]:
            for part in ("kind", "unit", "units", "low", "high", "choices"):
                assert row[part] == item[part], (row["name"], part)


def test_every_row_stands_in_a_group_and_once_only(core):
    rows = core("sums.equipment", "layout")
    names = [row["name"] for row in rows]
    assert len(set(names)) == len(names)
    assert [row["group"] for row in rows] == sorted(
        (row["group"] for row in rows), key=table.GROUPS.index
    )
    assert {row["group"] for row in rows} == set(table.GROUPS)


def test_a_row_whose_sum_is_gone_is_told():
    with pytest.raises(ValueError, match="bore_m"):
        table._input("bore_m", "bed_weights")


@pytest.mark.parametrize(
    ("key", "value", "found"),
    [
        ("bore_m", 0.08, []),
        ("bore_m", 1.01, [problem("bore_m", "above", 1.0)]),
        ("bore_m", 0.004, [problem("bore_m", "below", 0.005)]),
        ("bore_m", "80 mm", [problem("bore_m", "not_a_number")]),
        ("bore_m", True, [problem("bore_m", "not_a_number")]),
        ("cylinder_count", 2, []),
        ("cylinder_count", 2.5, [problem("cylinder_count", "not_whole")]),
        ("heating", "power", []),
        ("heating", "sun", [problem("heating", "not_a_choice", ["jacket", "power"])]),
        ("plant_name", "Quernbeck", []),
        ("plant_name", " ", [problem("plant_name", "missing")]),
        ("plant_name", 7, [problem("plant_name", "not_text")]),
        ("plant_name", "x" * 81, [problem("plant_name", "too_long", 80)]),
        ("power_kw", 50, []),
        ("air_pressure_kpa", 101, []),
        ("volume_l", 800, []),
        ("alkali_mol_l", 0.1, []),
        ("reading_sd_ph", 0.05, []),
        ("water_most_c", 65, []),
        ("form", "solution", []),
        ("of_a_newer_app", 12, []),
        ("of_a_newer_app", "word", []),
        ("of_a_newer_app", True, []),
        ("of_a_newer_app", [], [problem("of_a_newer_app", "not_a_number")]),
    ],
)
def test_a_value_is_tried_against_its_row(core, key, value, found):
    assert core("sums.equipment", "check_value", key, value) == found


def test_equipment_of_a_make_is_checked_key_by_key(core):
    check = ("sums.equipment", "check_equipment")
    assert core(*check, {"bore_m": 0.08, "heating": None, "old_key": {}, **GAP}) == []
    assert core(*check, {"bore_m": 8, "heating": "sun"}) == [
        problem("heating", "not_a_choice", ["jacket", "power"]),
        problem("bore_m", "above", 1.0),
    ]
    assert core(*check, []) == [problem("equipment", "not_a_mapping")]


def test_a_gap_is_agreed_with_somebody(core):
    told = core("sums.equipment", "check_equipment", {"gap_max_s": 300})
    assert told == [problem("gap_max_s", "agreed_with_missing")]


@pytest.mark.parametrize(
    ("key", "given", "value", "problems", "ask"),
    [
        # 3.15 in are 80.01 mm, as 1 in is 25.4 mm by definition.
        ("bore_m", {"typed": "3.15", "unit": "in"}, 0.08001, [], []),
        ("water_most_c", {"typed": "149", "unit": "F"}, 65.0, [], []),
        ("bore_m", {"typed": "8", "unit": "m"}, None, ["above"], []),
        ("bore_m", {"typed": "500", "unit": "mm"}, 0.5, [], ["unlikely_high"]),
        ("bore_m", {"typed": "500", "unit": "mm", "sure": True}, 0.5, [], []),
        ("heating", {"value": "power"}, "power", [], []),
        ("plant_name", {"value": "Quernbeck"}, "Quernbeck", [], []),
        ("plant_name", {"value": ""}, None, ["missing"], []),
        ("brand_new", {"value": 1}, None, ["unknown"], []),
    ],
)
def test_what_is_typed_is_read_into_the_rows_unit(
    core, key, given, value, problems, ask
):
    told = core("sums.equipment", "read", key, given)
    if isinstance(value, float):
        assert told["value"] == pytest.approx(value, rel=1e-9)  # one product
    else:
        assert told["value"] == value
    assert [row["key"] for row in told["problems"]] == problems
    assert [row["key"] for row in told["ask"]] == ask


def entry(**data):
    return Phone().event("equipment_set", 5, **data)


def test_the_form_of_an_entry_is_checked_by_the_table_of_kinds(core):
    def check(**data):
        return core("log.kinds.body", "check_data", "equipment_set", data)

    assert check(key="bore_m", value=0.08, typed="80", typed_unit="mm") == []
    assert check(key="bore_m", value=8) == []  # its limits are the sums' own
    assert check(key="gap_max_s", value=300) == [problem("agreed_with", "missing")]
    assert check(key="gap_max_s", value=300, agreed_with="Inspector") == []
    assert check(key="gap_max_s", value=300, agreed_with=7) == [
        problem("agreed_with", "not_text"),
        problem("agreed_with", "not_text"),
    ]
    assert check(value=1) == [problem("key", "missing")]
    assert check(key="bore_m") == [problem("value", "missing")]
    assert check(key="own", value=[]) == [problem("own", "not_a_number")]
    assert check(key="own", value=True) == []
    assert check(key="own", value=" ") == [problem("own", "missing")]
    for key in ("typed", "gap_agreed_with"):
        assert check(key=key, value="x") == [problem("key", "unknown", key)]


def test_what_is_to_be_recorded_keeps_its_limits(core):
    check = ("desk", "check_new")
    assert core(*check, entry(key="bore_m", value=0.08)) == []
    assert core(*check, entry(key="bore_m", value=8)) == [
        problem("bore_m", "above", 1.0)
    ]
    assert core(*check, entry(value=1)) == [problem("key", "missing")]
    assert core(*check, Phone().opened()) == []
    assert core("sums.equipment", "check_limits", Phone().opened()) == []
    assert core("desk", "check", entry(key="bore_m", value=8), "maker") == [
        problem("bore_m", "above", 1.0)
    ]


def test_a_correction_keeps_the_limits_too(ask):
    first = entry(key="bore_m", value=0.08)
    opened_first = Phone(1).opened()
    told = ask.desk(
        ("take", [opened_first, first]),
        ("check_correction", MAKE, first["id"], {"value": 8}),
        ("check_correction", MAKE, first["id"], {"value": 0.063}),
        ("check_correction", MAKE, first["id"], {"why": "new press"}),
        ("check_correction", MAKE, first["id"], {"key": "length_m"}),
    )
    assert told[1:4] == [[problem("bore_m", "above", 1.0)], [], []]
    assert told[4] == [problem("key", "not_correctable")]


def test_what_was_recorded_stays_though_a_limit_is_drawn_tighter(ask):
    told = ask.desk(("take", [Phone(1).opened(), entry(key="bore_m", value=8)]))
    assert told[0]["problems"] == []


def test_only_a_maker_may_set_equipment(core):
    assert core("log.kinds.allowed", "may", "maker", "equipment_set")
    assert not core("log.kinds.allowed", "may", "helper", "equipment_set")


def test_a_make_without_equipment_has_none(ask):
    assert in_effect(ask, Phone().opened())[1] == {"typed": {}}
    assert ask.desk(("desk",))[0]["makes"] == {}


def test_the_opening_is_the_base_and_what_was_set_since_goes_before_it(ask):
    phone = Phone()
    events = [
        phone.opened(
            equipment={
                "bore_m": 0.08,
                "lever_ratio": 4,
                "typed": {"bore_m": ["80", "mm"]},
                "of_old": [1],
            }
        ),
        phone.event("equipment_set", 9, key="bore_m", value=0.063),
        phone.event(
            "equipment_set",
            5,
            key="length_m",
            value=0.9,
            typed="90",
            typed_unit="cm",
        ),
    ]
    wanted = {
        "bore_m": 0.063,
        "lever_ratio": 4,
        "length_m": 0.9,
        "of_old": [1],
        "typed": {"length_m": ["90", "cm"]},
    }
    for order in (events, events[::-1]):
        assert in_effect(ask, *order)[1] == wanted


def test_a_correction_and_a_strike_of_equipment_count(ask):
    phone = Phone()
    start = phone.opened(equipment={"bore_m": 0.08})
    first = phone.event("equipment_set", 5, key="bore_m", value=0.063)
    second = phone.event("equipment_set", 6, key="bore_m", value=0.8)
    events = [start, first, second]
    why = {"why": "misread"}
    fixed = phone.event("entry_corrected", 7, second["id"], set={"value": 0.1}, **why)
    struck = phone.event("entry_struck", 8, second["id"], **why)
    both = phone.event("entry_struck", 9, first["id"], **why)
    renamed = phone.event(
        "entry_corrected", 7, second["id"], set={"key": "length_m"}, **why
    )
    assert in_effect(ask, *events, fixed)[1]["bore_m"] == 0.1
    assert in_effect(ask, *events, struck)[1]["bore_m"] == 0.063
    assert in_effect(ask, *events, struck, both)[1]["bore_m"] == 0.08
    assert "length_m" not in in_effect(ask, *events, renamed)[1]


def test_a_new_gap_does_not_borrow_the_name_of_the_old_one(ask):
    phone = Phone()
    first = phone.opened(equipment=dict(GAP))
    later = phone.event(
        "equipment_set", 5, key="gap_max_s", value=600, agreed_with="Dr. Hale"
    )
    assert in_effect(ask, first, later)[1] == {
        "gap_max_s": 600,
        "gap_agreed_with": "Dr. Hale",
        "typed": {},
    }
    cleared = phone.event("entry_corrected", 6, later["id"], set={}, why="x")
    cleared["data"]["set"] = {"agreed_with": None}
    # Then it stands on nobody's word: the hold does not count it.
    assert "gap_agreed_with" not in in_effect(ask, first, later, cleared)[1]


def test_a_typed_mapping_of_another_form_does_no_harm(ask):
    assert in_effect(ask, opened(bore_m=0.08, typed="80"))[1] == {
        "bore_m": 0.08,
        "typed": {},
    }


def test_an_equipment_entry_stands_in_the_record(ask):
    phone = Phone()
    event = phone.event("equipment_set", 5, key="bore_m", value=0.08, why="new press")
    told = ask.desk(("take", [phone.opened(), event]), ("record", MAKE))
    assert told[0]["problems"] == []
    assert told[1][1]["data"] == {
        "key": "bore_m",
        "value": 0.08,
        "why": "new press",
    }


@pytest.mark.parametrize(
    ("told", "item", "value"),
    [
        ({"bore_m": 0.08}, {"name": "bore_m", "kind": "number"}, 0.08),
        ({"bore_m": "80 mm"}, {"name": "bore_m", "kind": "number"}, None),
        ({"bore_m": 7}, {"name": "bore_m", "kind": "number"}, None),
        ({"bore_m": 1}, {"name": "bore_m", "kind": "series"}, None),
        ({}, {"name": "bore_m", "kind": "number"}, None),
        ({"n": 0.5}, {"name": "n", "kind": "count"}, None),
        ({"n": 1}, {"name": "n", "kind": "count"}, 1),
        ({"gap_max_s": 0.5}, {"name": "gap_max_s", "kind": "number"}, None),
        (
            {"gap_max_s": 0.5, "gap_agreed_with": "Inspector"},
            {"name": "gap_max_s", "kind": "number"},
            0.5,
        ),
        ({"heating": "sun"}, {"name": "heating", "kind": "choice"}, None),
        ({"heating": "power"}, {"name": "heating", "kind": "choice"}, "power"),
    ],
)
def test_a_sum_is_served_only_what_it_could_take(core, told, item, value):
    item = {"low": 0.0, "high": 1.0, "choices": ["jacket", "power"], **item}
    assert core("log.equipment", "served", told, item) == value


def test_a_desk_tells_the_equipment_of_its_makes(core, ask):
    assert core("log.equipment", "of_make", {"makes": {}}, MAKE) == {"typed": {}}
    desk = ask.desk(("take", [opened(bore_m=0.08)]), ("desk",))[1]
    assert core("log.equipment", "of_make", desk, MAKE)["bore_m"] == 0.08


def test_the_recipe_of_the_builder_is_left_alone():
    assert "equipment" not in recipe()


def test_a_row_stands_beside_a_word_of_a_choice_that_there_is(core):
    rows = {row["name"]: row for row in core("sums.equipment", "layout")}
    beside = {name: row["beside"] for name, row in rows.items() if row["beside"]}
    assert beside["power_kw"] == {
        "name": "heating",
        "words": ["power"],
        "usual": False,
    }
    # Rennet told in Soxhlet units or in tablets has no strength in IMCU to ask for.
    assert beside["strength_imcu_per_ml"]["words"] == ["imcu"]
    assert beside["strength_imcu_per_ml"]["usual"] is True
    for told in beside.values():
        assert set(told["words"]) <= set(rows[told["name"]]["choices"])


def altered(call, equipment, edits):
    return call("desk", "alter_equipment", equipment, edits)


def test_what_is_altered_stands_over_what_a_make_had_before(core):
    before = {"power_kw": 30.0, "ph": 1, "typed": {"power_kw": ["30", "kW"]}}
    edit = {"value": 40.0, "typed": ["40", "kW"]}
    found = altered(core, before, {"power_kw": edit})
    assert found["equipment"] == {
        "power_kw": 40.0,
        "ph": 1,
        "typed": {"power_kw": ["40", "kW"]},
    }
    chosen = altered(core, before, {"power_kw": {"value": 40.0}})
    assert chosen["equipment"]["typed"] == {}  # how the value before was typed


def test_what_is_taken_out_goes_with_how_it_was_typed_and_agreed(core):
    before = {
        "gap_max_s": 90,
        "gap_agreed_with": "A",
        "typed": {"gap_max_s": ["90", "s"]},
    }
    found = altered(core, before, {"gap_max_s": None})
    assert found == {"equipment": {"typed": {}}, "is_any": False}


def test_a_new_value_on_nobodys_word_leaves_no_name_standing(core):
    before = {"gap_max_s": 90, "gap_agreed_with": "A", "typed": {}}
    found = altered(core, before, {"gap_max_s": {"value": 60}})
    assert found == {"equipment": {"gap_max_s": 60, "typed": {}}, "is_any": True}
    named = {"gap_max_s": {"value": 60, "agreed_with": "B"}}
    assert altered(core, before, named)["equipment"]["gap_agreed_with"] == "B"
