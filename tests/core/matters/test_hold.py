"""A hold that is not met or not assessed stops the make until somebody decides.

Each row of the rules is 21 CFR 1240.61(b): every particle held continuously at or
above the temperature for the time; the air space of a vat is 3 CCR 584(b).
"""

from tests.core.builders import Phone
from tests.core.matters.gated import HELPER, MAKER, Make


def passed(problems):
    return problems == []


def refused_by(problems):
    """Return the words of the matter that refused a tap, and who decides it."""
    (problem,) = problems
    assert (problem["field"], problem["key"]) == ("step", "stopped")
    return (problem["limit"]["key"], problem["limit"]["role"])


def test_a_hold_that_meets_its_rule_is_no_matter(ask):
    # 145.0 °F under air at 150.0 °F, read each 2 min over 32 min: met.
    make = Make("heat_hold").received().held()
    assert make.matters(ask, 93) == {}
    assert passed(make.tap(ask, "step_begun", 93, step="fans"))


def test_a_dip_at_minute_29_is_told_and_stops_the_next_begin(ask):
    # 144.8 °F at minute 29 starts the clock anew: no 30 min unbroken are left.
    make = Make("heat_hold").received().held(dip_at=29)
    (matter,) = make.matters(ask, 93).values()
    assert (matter["key"], matter["level"]) == ("hold_not_met", "act")
    assert (matter["step"], matter["rule"]) == ("hold", "21 CFR 1240.61(b)")
    assert matter["since_ms"] == make.events[-1]["at_ms"]
    assert matter["reasons"]
    for roles in (HELPER, MAKER):
        told = make.tap(ask, "step_begun", 93, roles, step="fans", why="Hurry")
        assert refused_by(told) == ("matter.hold_not_met", "maker")


def test_air_that_is_too_cold_is_a_reason_of_the_same_matter(ask):
    # 3 CCR 584(b): air at least 5 °F above what is asked of the milk: 150 °F.
    make = Make("heat_hold").received()
    make.add("step_begun", 60, step="hold")
    for minute in range(60, 93, 2):
        make.hot(minute, air_f=149.9)
    make.add("step_ended", 92, step="hold")
    (matter,) = make.matters(ask, 93).values()
    assert matter["key"] in ("hold_not_met", "hold_not_assessed")
    assert any("airspace" in reason["key"] for reason in matter["reasons"])


def test_a_gap_leaves_the_hold_not_assessed_and_stops_as_well(ask):
    make = Make("heat_hold").received().held(every=16)
    (matter,) = make.matters(ask, 93).values()
    assert matter["key"] == "hold_not_assessed"
    told = make.tap(ask, "step_begun", 93, step="fans")
    assert refused_by(told) == ("matter.hold_not_assessed", "maker")


def test_a_skipped_hold_is_not_assessed(ask):
    make = Make("heat_hold").received()
    make.add("step_skipped", 61, step="hold", why="No steam.")
    (matter,) = make.matters(ask, 62).values()
    assert (matter["key"], matter["reasons"][0]["key"]) == (
        "hold_not_assessed",
        "hold_skipped",
    )


def test_before_the_hold_is_over_nobody_works_past_it(ask):
    make = Make("heat_hold").received()
    assert make.matters(ask, 61) == {}
    for kind, data in (
        ("step_begun", {"step": "fans", "why": "Now"}),
        ("step_begun", {"step": "cut", "why": "Now"}),
        ("step_ended", {"step": "rennet"}),
        (
            "ingredient_added",
            {"step": "rennet", "ingredient": "rennet", "amount": 1.0, "unit": "mL"},
        ),
        ("wheels_moulded", {"step": "fill", "size": "small", "count": 3}),
    ):
        told = make.tap(ask, kind, 61, **data)
        assert refused_by(told) == ("matter.hold_wait", None)


def test_a_hold_that_is_held_again_is_judged_by_its_last_end(ask):
    make = Make("heat_hold").received().held(dip_at=29)
    make.decided("heat_hold", "hold_again", 95)
    shown = make.view(ask, 96)
    hold = next(one for one in shown["steps"] if one["key"] == "hold")
    assert hold["status"] == "running"
    assert refused_by(make.tap(ask, "step_begun", 96, step="fans"))[0] == (
        "matter.hold_wait"
    )
    for minute in range(94, 129, 2):
        make.hot(minute)
    make.phone = Phone(1, person="bo")
    make.add("step_ended", 128, step="hold")
    assert make.matters(ask, 129) == {}
    assert passed(make.tap(ask, "step_begun", 129, step="fans"))
    # The second end is another act, not the first one entered twice.
    assert make.view(ask, 129)["to_judge"] == []
    assert make.view(ask, 129)["make"]["milk"]["is"]["class"] == "pasteurised"


def test_a_second_hold_that_dips_is_a_matter_again(ask):
    make = Make("heat_hold").received().held(dip_at=29)
    make.decided("heat_hold", "hold_again", 95)
    make.hot(100)
    make.add("step_ended", 110, step="hold")
    (matter,) = make.matters(ask, 111).values()
    assert matter["decided"] is None
    assert matter["since_ms"] == make.events[-1]["at_ms"]


def test_the_chart_may_show_what_the_readings_do_not(ask):
    make = Make("heat_hold").received().held(every=16)
    make.decided("heat_hold", "chart_shows", 95, "Chart 12, read by Ida.")
    (matter,) = make.matters(ask, 96).values()
    assert matter["decided"]["why"] == "Chart 12, read by Ida."
    assert (matter["decided"]["by"], matter["stops"]) == ("ida", [])
    assert passed(make.tap(ask, "step_begun", 96, step="fans"))
    # A word makes no milk pasteurised.
    assert make.view(ask, 96)["make"]["milk"]["is"]["class"] == "undecided"


def test_the_chart_cannot_make_good_what_was_read_too_cold(ask):
    make = Make("heat_hold").received().held(dip_at=29)
    (matter,) = make.matters(ask, 95).values()
    assert [way["way"] for way in matter["ways"]] == ["hold_again", "discard"]
    (problem,) = make.tap(
        ask,
        "matter_decided",
        95,
        MAKER,
        matter="heat_hold",
        way="chart_shows",
        why="It looks well.",
    )
    assert (problem["key"], problem["limit"]) == ("way_not_open", "chart_shows")


def test_a_discard_lifts_nothing_and_rings_no_more(ask):
    make = Make("heat_hold").received().held(dip_at=29)
    make.decided("heat_hold", "discard", 95)
    (matter,) = make.matters(ask, 96).values()
    assert matter["decided"]["way"] == "discard"
    assert refused_by(make.tap(ask, "step_begun", 96, step="fans"))[0]
    assert refused_by(make.tap(ask, "make_closed", 96, MAKER))[0]
    assert passed(make.tap(ask, "make_abandoned", 96, MAKER, why="Hold not met."))


def test_only_a_maker_decides(ask):
    make = Make("heat_hold").received().held(every=16)
    body = {"matter": "heat_hold", "way": "chart_shows", "why": "I think so."}
    (problem,) = make.tap(ask, "matter_decided", 95, HELPER, **body)
    assert (problem["key"], problem["limit"]) == ("not_allowed", "maker")
    # Both who taps and whose phone it is must be allowed to.
    assert make.tap(ask, "matter_decided", 95, ["maker", "helper"], **body)
    assert passed(make.tap(ask, "matter_decided", 95, MAKER, **body))


def test_a_decision_of_before_is_about_another_matter(ask):
    make = Make("heat_hold").received().held(every=16)
    make.decided("heat_hold", "chart_shows", 80)
    (matter,) = make.matters(ask, 93).values()
    assert matter["decided"] is None


def test_what_was_begun_before_the_matter_stood_goes_on_to_its_end(ask):
    make = Make("heat_hold").received().held()
    make.done("fans", 93, 95)
    make.add("step_begun", 96, step="rennet")
    # A maker finds that a reading was typed wrong.
    low = next(one for one in make.events if one["data"].get("typed") == "145.0")
    make.events.append(
        make.phone.event(
            "entry_corrected",
            97,
            ref=low["id"],
            set={"value": 62.0, "typed": "143.6", "typed_unit": "F"},
            why="Typed wrong",
        )
    )
    assert passed(make.tap(ask, "step_ended", 98, step="rennet"))


def test_a_matter_that_is_gone_is_decided_by_nobody(ask):
    make = Make("heat_hold").received().held()
    body = {"matter": "heat_hold", "way": "chart_shows", "why": "Late."}
    (problem,) = make.tap(ask, "matter_decided", 95, MAKER, **body)
    assert problem["key"] == "matter_is_gone"
