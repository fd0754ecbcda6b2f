"""The acid by its mark: pH 5.8 at 6 h, of J Food Prot 2006 69(9):2161.

The mark is that of uncooked semi-hard cheese; a reading further than half an hour
from its time was missed, by this tool's own setting in slow_make.json.
"""

from tests.core.builders import MAKE, Phone, at, figure
from tests.core.matters.gated import (
    ALL,
    GATES,
    MAKER,
    RULES,
    Make,
    begin,
    gated_recipe,
)
from tests.core.matters.test_hold import passed, refused_by
from tests.core.step.test_steps import one_step

H = 60


def started(*read):
    """Begin rennet at minute 0; read pH at hours of it, in the step `cut`."""
    make = Make("acid")
    make.add("step_begun", 0, step="rennet")
    for hour, ph in read:
        make.read("ph", ph, hour * H)
    make.done("fill", 7 * H)
    return make


def test_a_ph_of_5_8_at_6_h_is_no_matter_and_5_9_is(ask):
    make = started((6, 5.8))
    assert make.matters(ask, 8 * H) == {}
    assert passed(make.tap(ask, "step_begun", 8 * H, step="salt"))
    make = started((6, 5.9))
    (matter,) = make.matters(ask, 8 * H).values()
    assert (matter["key"], matter["level"]) == ("acid_too_slow", "act")
    assert matter["rule"] == "J Food Prot 2006 69(9):2161"
    assert (matter["reasons"][0]["value"], matter["reasons"][0]["limit"]) == (5.9, 5.8)
    told = make.tap(ask, "step_begun", 8 * H, step="salt")
    assert refused_by(told) == ("matter.acid_too_slow", "maker")


def test_a_ph_reached_before_its_time_is_reached(ask):
    assert started((4.5, 5.7)).matters(ask, 8 * H) == {}


def test_a_ph_that_comes_later_does_not_make_the_mark_good(ask):
    make = started((6, 5.9), (9, 5.3))
    assert list(make.matters(ask, 10 * H)) == ["acid"]


def test_a_mark_that_nobody_read_is_missed_and_not_worked_out(ask):
    make = started((5, 6.0), (7.5, 5.4))
    assert make.matters(ask, 6.4 * H) == {}
    (matter,) = make.matters(ask, 8 * H).values()
    assert (matter["key"], matter["level"]) == ("acid_missed", "check")
    told = make.tap(ask, "step_begun", 8 * H, step="salt")
    assert refused_by(told) == ("matter.acid_missed", "maker")
    make.decided("acid", "goes_by_time", 8 * H, "The meter is broken.")
    assert passed(make.tap(ask, "step_begun", 9 * H, step="salt"))


def test_the_view_asks_again_at_the_instant_that_the_mark_is_missed(ask):
    # Of a step that lasts a day, nothing else changes in the afternoon.
    events = one_step(Phone(), lasts=figure(86400, "s"), end={"by": "time"})
    marked = {**GATES[4], "step": "work", "from_step": "work", "stops": ALL}
    events[0]["data"]["recipe"]["gates"] = [marked]
    calls = [("set_rules", RULES), ("take", events)]
    ahead, after = (
        ask.desk(*calls, ("view", MAKE, now_ms))[2]
        for now_ms in (at(5 * H), at(6.5 * H) + 1)
    )
    assert ahead["next_change_ms"] == at(6.5 * H) + 1
    assert [one["key"] for one in ahead["matters"]] == ["acid_wait"]
    assert [one["key"] for one in after["matters"]] == ["acid_missed"]


def test_where_there_is_no_ph_meter_no_mark_is_missed(ask):
    make = started()
    assert list(make.matters(ask, 8 * H)) == ["acid"]
    make.add("equipment_set", 10, key="ph_meter", value="no")
    assert make.matters(ask, 8 * H) == {}
    assert passed(make.tap(ask, "step_begun", 8 * H, step="salt"))


def titrated(*read, least=None):
    """Begin rennet at minute 0; titrate at hours of it, by a gate that may."""
    instead = {"quantity": "titratable_acidity_frac"}
    if least is not None:
        instead["least"] = figure(least, "fraction lactic")
    stops = [begin("salt", when=["too_slow", "missed"]), *ALL]
    body = gated_recipe([{**GATES[4], "instead": instead, "stops": stops}])
    make = Make(recipe=body)
    make.add("step_begun", 0, step="rennet")
    for hour, frac in read:
        make.read("titratable_acidity_frac", frac, hour * H)
    make.done("fill", 7 * H)
    return make


def test_what_was_titrated_in_time_is_not_missed_and_not_assessed(ask):
    # Seen: "missed", where the acid of the make was titrated at its time.
    for meter in ("yes", "no"):
        make = titrated((6, 0.0032))
        make.add("equipment_set", 10, key="ph_meter", value=meter)
        (matter,) = make.matters(ask, 8 * H).values()
        assert (matter["key"], matter["level"]) == ("acid_not_assessed", "check")
        (reason,) = matter["reasons"]
        assert reason["key"] == "acidity_without_limit"
        assert (reason["value"], reason["after_s"]) == (0.0032, 6 * 3600)
        assert reason["units"] == {"value": "fraction lactic", "after_s": "s"}
        assert passed(make.tap(ask, "step_begun", 8 * H, step="salt"))
        assert refused_by(make.tap(ask, "make_closed", 8 * H, MAKER))
        make.decided("acid", "tests_met", 9 * H, "Staphylococci below the limits.")
        (matter,) = make.matters(ask, 10 * H).values()
        assert matter["stops"] == []


def test_a_recipe_may_have_a_least_acidity_of_its_own(ask):
    # Cheddar's 0.40 % at milling, J Dairy Sci 1968 (abstract), as a figure to try.
    assert titrated((6, 0.0040), least=0.0040).matters(ask, 8 * H) == {}
    make = titrated((6, 0.0039), least=0.0040)
    (matter,) = make.matters(ask, 8 * H).values()
    assert matter["key"] == "acid_too_slow"
    (reason,) = matter["reasons"]
    assert (reason["key"], reason["limit"]) == ("acidity_not_reached", 0.0040)
    told = make.tap(ask, "step_begun", 8 * H, step="salt")
    assert refused_by(told) == ("matter.acid_too_slow", "maker")


def test_a_ph_read_in_time_outweighs_the_titration(ask):
    make = titrated((6, 0.0032))
    make.read("ph", 5.8, 6 * H)
    assert make.matters(ask, 8 * H) == {}
    make = titrated((6, 0.0032))
    make.read("ph", 5.9, 6 * H)
    (matter,) = make.matters(ask, 8 * H).values()
    assert matter["key"] == "acid_too_slow"


def test_without_a_meter_a_titration_can_be_missed_and_without_either_nothing(ask):
    make = titrated((3, 0.0020))
    make.add("equipment_set", 10, key="ph_meter", value="no")
    assert make.matters(ask, 6.4 * H) == {}
    (matter,) = make.matters(ask, 8 * H).values()
    assert matter["key"] == "acid_missed"
    make = titrated()
    for key in ("ph_meter", "titration"):
        make.add("equipment_set", 10, key=key, value="no")
    assert make.matters(ask, 8 * H) == {}


def test_what_is_read_instead_must_be_a_quantity(core):
    wrong = [{**GATES[4], "instead": {"quantity": "sourness"}}]
    (told,) = core("recipe.recipe", "check_recipe", gated_recipe(wrong))
    assert told["field"].endswith("instead.quantity")
    assert told["key"] == "not_a_choice"


def test_what_is_kept_apart_is_salted_and_not_released(ask):
    make = started((6, 6.2))
    make.decided("acid", "keep_apart", 7 * H)
    (matter,) = make.matters(ask, 8 * H).values()
    assert [stop["what"] for stop in matter["stops"]] == ["close", "release"]
    assert passed(make.tap(ask, "step_begun", 8 * H, step="salt"))
    assert make.tap(ask, "make_closed", 8 * H, MAKER)
    make.decided("acid", "tests_met", 9 * H, "Staphylococci below the limits.")
    (matter,) = make.matters(ask, 10 * H).values()
    assert matter["stops"] == []


def test_wheels_go_into_no_tank_past_the_mark(ask):
    make = started((6, 5.9))
    tank = "0193a5b0-0000-7000-8000-0000000000bb"
    make.phone.make = tank
    told = make.tap(
        ask,
        "tank_loaded",
        8 * H,
        load_make=make.events[0]["make"],
        size="small",
        wheels=30,
        mass_kg=42.0,
    )
    assert refused_by(told)[0] == "matter.acid_too_slow"
