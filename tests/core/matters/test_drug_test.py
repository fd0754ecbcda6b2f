"""The drug-residue test: no milk with a positive result goes on, none without one.

Pasteurized Milk Ordinance, section 6 and appendix N: no positive result; each lot is
tested before it is processed.
"""

from tests.core.builders import MAKE, Phone, at
from tests.core.matters.gated import HELPER, MAKER, RULES, Make
from tests.core.matters.test_hold import passed, refused_by


def received(result=None, ended=4):
    make = Make("drug")
    make.add("step_begun", 1, step="receive")
    make.read("milk_volume_l", 500.0, 2, "receive")
    if result:
        make.read("drug_test", result, 3, "receive")
    if ended:
        make.add("step_ended", ended, step="receive")
    return make


def test_a_negative_test_is_no_matter(ask):
    make = received("negative")
    assert make.matters(ask, 5) == {}
    assert passed(make.tap(ask, "step_begun", 5, step="heat"))


def test_a_test_is_missing_once_the_milk_leaves_the_step(ask):
    make = received(ended=None)
    assert make.matters(ask, 3) == {}
    assert refused_by(make.tap(ask, "step_begun", 3, step="heat", why="Now")) == (
        "matter.drug_test_wait",
        None,
    )
    make = received()
    (matter,) = make.matters(ask, 5).values()
    assert (matter["key"], matter["level"]) == ("drug_test_missing", "act")
    assert matter["rule"] == "Pasteurized Milk Ordinance, section 6 and appendix N"
    assert refused_by(make.tap(ask, "step_begun", 5, step="heat"))[0] == (
        "matter.drug_test_missing"
    )
    # The fact changes: it is read.
    make.read("drug_test", "negative", 6)
    assert make.matters(ask, 7) == {}
    assert passed(make.tap(ask, "step_begun", 7, step="heat"))


def test_a_result_that_stands_elsewhere_is_a_maker_s_word(ask):
    make = received()
    make.decided("drug", "tested_elsewhere", 5, "Slip 118 of the hauler.")
    (matter,) = make.matters(ask, 6).values()
    assert matter["decided"]["way"] == "tested_elsewhere"
    assert passed(make.tap(ask, "step_begun", 6, step="heat"))


def test_a_positive_test_stops_the_make_and_outlasts_a_negative_one(ask):
    make = received("positive")
    (matter,) = make.matters(ask, 5).values()
    assert (matter["key"], matter["level"]) == ("drug_test_positive", "act")
    assert [way["way"] for way in matter["ways"]] == ["confirmed_negative", "discard"]
    make.read("drug_test", "negative", 6)
    (matter,) = make.matters(ask, 7).values()
    assert matter["key"] == "drug_test_positive"
    for roles in (HELPER, MAKER):
        assert refused_by(make.tap(ask, "step_begun", 7, roles, step="heat"))[0] == (
            "matter.drug_test_positive"
        )
    make.decided("drug", "confirmed_negative", 8, "Plate test at the laboratory.")
    assert passed(make.tap(ask, "step_begun", 9, step="heat"))


def test_a_later_positive_test_is_a_new_matter(ask):
    make = received("positive")
    make.decided("drug", "confirmed_negative", 8)
    make.read("drug_test", "positive", 9)
    (matter,) = make.matters(ask, 10).values()
    assert matter["decided"] is None


def test_a_result_that_came_late_stops_what_has_not_begun(ask):
    make = received("negative")
    make.add("step_begun", 5, step="heat")
    make.read("drug_test", "positive", 6)
    # The milk is in the heat by now: that step goes to its end, the next is stopped.
    assert passed(make.tap(ask, "step_ended", 60, step="heat"))
    make.add("step_ended", 60, step="heat")
    assert refused_by(make.tap(ask, "step_begun", 61, step="hold"))[0]


def test_nobody_s_slip_takes_a_positive_test_back_but_a_maker(ask):
    make = received("positive", ended=None)
    test = make.events[-1]
    body = {"ref": test["id"], "why": "Typed wrong"}
    (problem,) = make.tap(ask, "entry_struck", 3.5, HELPER, **body)
    assert (problem["key"], problem["limit"]) == ("not_allowed", "maker")
    assert passed(make.tap(ask, "entry_struck", 3.5, MAKER, **body))
    # What stands on nothing else is taken back at once, as ever.
    make = received("negative", ended=None)
    body["ref"] = make.events[-1]["id"]
    assert passed(make.tap(ask, "entry_struck", 3.5, HELPER, **body))


def test_a_positive_test_rings_until_somebody_decides(ask):
    make = received("positive")
    rung = ask.desk(*make.calls(), ("alarms", at(5), 600.0))[2]["alarms"]
    (alarm,) = [one for one in rung if one["kind"] == "matter"]
    assert (alarm["key"], alarm["priority"]) == ("matter.drug_test_positive", 1)
    assert alarm["matter"] == "matter/drug"
    seen = make.add("alert_acknowledged", 6, alert="matter/drug")
    assert seen["data"]["alert"] == alarm["matter"]
    rung = ask.desk(*make.calls(), ("alarms", at(7), 600.0))[2]["alarms"]
    assert [one["state"] for one in rung] == ["acknowledged"]
    make.decided("drug", "discard", 8)
    assert ask.desk(*make.calls(), ("alarms", at(9), 600.0))[2]["alarms"] == []


def test_a_recipe_without_gates_is_told_of_its_test_and_stopped_by_nothing(ask):
    phone = Phone()
    events = [
        phone.opened(),
        phone.event("step_begun", 1, step="receive"),
        phone.reading("drug_test", "positive", 3, "receive"),
    ]
    begun = phone.event("step_begun", 5, step="heat", why="Now")
    calls = [("set_rules", RULES), ("take", events)]
    shown, told = ask.desk(
        *calls, ("view", MAKE, at(4)), ("tap", begun, HELPER, MAKE, at(5))
    )[2:]
    (matter,) = shown["matters"]
    assert (matter["key"], matter["stops"]) == ("drug_test_positive", [])
    assert shown["alerts"] == []
    assert told["problems"] == []


def test_without_the_rules_a_make_is_shown_as_before(ask):
    make = received("positive")
    shown = ask.desk(("take", make.events), ("view", MAKE, at(5)))[1]
    assert shown["matters"] == []
