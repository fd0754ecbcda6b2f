import json

import pytest

from server.config import RECIPES_DIR
from tests.core.builders import MAKE, Phone, at, recipe

HOUSE = json.loads((RECIPES_DIR / "washed-wheel.json").read_text("utf-8"))


def test_the_milk_and_the_yield_give_whole_wheels(core):
    found = core("make.opening", "suggestion", recipe(), 500.0)
    # 500 L of milk with 4.0 % fat and 8.95 % solids-not-fat at 4.4 °C weigh
    # 500 * 1.035 kg (Goff, density table, printed to 0.001); a tenth is curd.
    assert found["curd_kg"]["value"] == pytest.approx(51.75, rel=1e-3)
    assert found["curd_kg"]["low"] == pytest.approx(0.09 * 517.5, rel=1e-3)
    # 51.7 kg fill 36 wheels of 1.4 kg, 50.4 kg; a 37th would need 51.8 kg.
    assert found["moulds"] == [{"size": "small", "count": 36}]
    assert found["left_kg"] == pytest.approx(51.7 - 50.4, abs=0.1)
    assert found["ask"] is None


def test_each_size_gets_the_whole_wheels_of_its_share(core):
    found = core("make.opening", "suggestion", HOUSE, 1000)
    curd_kg = found["curd_kg"]["value"]
    for mould, row in zip(HOUSE["moulds"], found["moulds"], strict=True):
        share_kg = curd_kg * mould["share_frac"]["value"]
        wheel_kg = mould["wheel_kg"]["value"]
        assert row["size"] == mould["size"]
        assert row["count"] * wheel_kg <= share_kg < (row["count"] + 1) * wheel_kg
    assert found["left_kg"] >= 0


@pytest.mark.parametrize(("milk_l", "limit"), [(99, 100), (2001, 2000)])
def test_milk_outside_of_the_recipe_is_asked_about(core, milk_l, limit):
    found = core("make.opening", "suggestion", recipe(), milk_l)
    assert found["ask"] == {"key": "recipe_milk", "limit": limit}


@pytest.mark.parametrize("milk_l", [100, 2000])
def test_the_limits_themselves_are_not_asked_about(core, milk_l):
    assert core("make.opening", "suggestion", recipe(), milk_l)["ask"] is None


def test_no_milk_makes_no_cheese(core):
    with pytest.raises(ValueError, match="milk_l"):
        core("make.opening", "suggestion", recipe(), 0)


OTHER = "0193a5b0-0000-7000-8000-00000000000b"
THIRD = "0193a5b0-0000-7000-8000-00000000000c"
ROUND = {
    "bore_m": 0.08,
    "heating": "power",
    "gap_max_s": 300,
    "gap_agreed_with": "District inspector",
    "typed": {"bore_m": ["80", "mm"], "gap_max_s": ["5", "min"]},
}


def make(make_id, at_min, vat=None, equipment=None):
    phone = Phone(make=make_id)
    body = {"name": make_id[-1], "equipment": equipment or {}}
    if vat:
        body["vat"] = vat
    return {**phone.opened(**body), "at_ms": at(at_min)}


def before(ask, vat, *events):
    desk = ask.desk(("take", list(events)), ("desk",))[1]
    return ask.call("make.opening", "equipment_before", desk, vat)


def test_no_earlier_make_has_no_equipment_to_take_over(ask):
    assert before(ask, "Round vat") is None
    assert before(ask, "Round vat", make(MAKE, 0, "Round vat")) is None
    unopened = Phone(make=OTHER).event("equipment_set", 1, key="bore_m", value=0.08)
    assert before(ask, "", unopened) is None


def test_the_newest_make_in_the_same_vat_gives_all_that_it_had(ask):
    older = make(MAKE, 0, "Round vat", {"bore_m": 0.063})
    newer = make(OTHER, 60, "Round vat", ROUND)
    elsewhere = make(THIRD, 90, "Long vat", {"bore_m": 0.05})
    assert before(ask, "Round vat", older, newer, elsewhere) == {
        "equipment": ROUND,
        "left_out": [],
        "make": OTHER,
        "name": "b",
        "vat": "Round vat",
        "opened_ms": at(60),
        "is_same_vat": True,
    }


def test_what_was_set_during_a_make_is_taken_over_too(ask):
    phone = Phone(1, make=OTHER)
    first = make(OTHER, 60, "Round vat", ROUND)
    since = phone.event("equipment_set", 70, key="length_m", value=0.9)
    found = before(ask, "Round vat", first, since)
    assert found["equipment"] == {**ROUND, "length_m": 0.9}


def test_another_vat_takes_over_only_what_is_not_of_the_vat(ask):
    # An agreement and a recorder are of the vat that they were agreed for.
    found = before(ask, "Long vat", make(MAKE, 0, "Round vat", ROUND))
    assert found["equipment"] == {
        "bore_m": 0.08,
        "typed": {"bore_m": ["80", "mm"]},
    }
    assert found["is_same_vat"] is False
    of_vat_only = make(MAKE, 0, "Round vat", {"heating": "power"})
    assert before(ask, "Long vat", of_vat_only) is None


def test_without_a_vat_no_make_is_of_the_same_one(ask):
    found = before(ask, "", make(MAKE, 0, None, {"bore_m": 0.08}))
    assert found["is_same_vat"] is False
    assert found["vat"] is None


def test_a_make_that_came_later_with_nothing_hides_no_older_one(ask):
    older = make(MAKE, 0, "Round vat", ROUND)
    bare = make(OTHER, 60, "Round vat")
    assert before(ask, "Round vat", older, bare)["make"] == MAKE


def test_what_can_no_longer_be_is_left_out_and_told(ask):
    of_old = {"bore_m": 0.08, "lever_ratio": "4:1", "gap_max_s": 300, "own_key": "x"}
    found = before(ask, "Round vat", make(MAKE, 0, "Round vat", of_old))
    assert found["equipment"] == {"bore_m": 0.08, "own_key": "x", "typed": {}}
    assert found["left_out"] == [
        {"field": "gap_max_s", "key": "agreed_with_missing", "limit": None},
        {"field": "lever_ratio", "key": "not_a_number", "limit": None},
    ]


def test_vats_are_named_once_newest_first(ask):
    events = [
        make(MAKE, 0, "Round vat"),
        make(OTHER, 60, "Long vat"),
        make(THIRD, 90),
        Phone(1, make="0193a5b0-0000-7000-8000-00000000000d").event(
            "note_added", 1, text="not opened yet"
        ),
    ]
    desk = ask.desk(("take", events), ("desk",))[1]
    assert ask.call("make.opening", "vats", desk) == ["Long vat", "Round vat"]


def test_what_was_entered_for_practice_is_offered_to_no_real_make(ask):
    tried = make(OTHER, 60, "Round vat", {"bore_m": 0.5})
    tried["data"]["practice"] = True
    real = make(MAKE, 0, "Round vat", ROUND)
    assert before(ask, "Round vat", real, tried)["make"] == MAKE
    assert before(ask, "Round vat", tried) is None
    desk = ask.desk(("take", [tried]), ("desk",))[1]
    assert ask.call("make.opening", "vats", desk) == []
