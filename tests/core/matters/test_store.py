"""In the store: sixty days for milk that was not pasteurised, and the laboratory.

21 CFR 133.138(a)(1) and its like: cured at not less than 35 °F for at least 60 days
where the milk was not pasteurised; 21 CFR 133.113: phosphatase equivalent of 0.25 g
at most 3 ug; Regulation (EC) 2073/2005, Annex I: staphylococci, listeria.
"""

import pytest

from tests.core.builders import MAKE, at
from tests.core.matters.gated import DAY, MAKER, OWNER, Make
from tests.core.matters.test_hold import passed, refused_by

MOULDED = 10 * 60


def stored(gate="days", treatment="raw", until_day=60, temp_f=54.0, skip=()):
    make = Make(gate, treatment=treatment)
    if treatment == "pasteurised":
        make.read("milk_volume_l", 500.0, 2)
        make.read("fat_frac", 0.04, 2)
        make.held()
    make.done("fill", MOULDED - 10, MOULDED)
    make.add("step_begun", MOULDED + 60, step="store")
    for day in range(until_day + 1):
        if day in skip:
            continue
        minute = MOULDED + day * DAY
        make.read("store_temp_c", (temp_f - 32) / 1.8, minute, "store", temp_f, "F")
    return make


def test_the_59th_day_stops_end_and_closing_and_the_60th_does_not(ask):
    make = stored(until_day=59)
    minute = MOULDED + 59.5 * DAY
    (matter,) = make.matters(ask, minute).values()
    assert matter["key"] == "curing_days_left"
    assert matter["rule"] == "21 CFR 133.138(a)(1)"
    assert (matter["reasons"][0]["value"], matter["reasons"][0]["limit"]) == (59, 60)
    for kind, data in (
        ("step_ended", {"step": "store", "why": "x"}),
        ("make_closed", {}),
    ):
        told = make.tap(ask, kind, minute, MAKER, **data)
        assert refused_by(told) == ("matter.curing_days_left", "maker")
    make = stored(until_day=60)
    minute = MOULDED + 60 * DAY + 1
    assert make.matters(ask, minute) == {}
    assert passed(make.tap(ask, "make_closed", minute, MAKER))


def test_before_the_store_may_end_days_are_no_matter_and_still_stop(ask):
    make = stored(until_day=10)
    minute = MOULDED + 10 * DAY + 5
    assert make.matters(ask, minute) == {}
    told = make.tap(ask, "make_closed", minute, MAKER)
    assert refused_by(told) == ("matter.curing_wait", None)


def test_pasteurised_milk_has_no_sixty_days(ask):
    make = stored(treatment="pasteurised", until_day=29)
    minute = MOULDED + 30 * DAY
    assert make.view(ask, minute)["make"]["milk"]["is"]["class"] == "pasteurised"
    assert make.matters(ask, minute) == {}
    assert passed(make.tap(ask, "step_ended", minute, step="store"))


def test_days_that_nobody_showed_are_told_apart_from_days_left(ask):
    make = stored(until_day=61, skip=range(20, 30))
    minute = MOULDED + 61 * DAY
    (matter,) = make.matters(ask, minute).values()
    assert matter["key"] == "curing_not_shown"
    body = {"matter": "days", "why": "The store's own chart."}
    assert make.tap(ask, "matter_decided", minute, ["helper"], way="discard", **body)
    make.decided("days", "days_shown_elsewhere", minute)
    assert passed(make.tap(ask, "make_closed", minute + 1, MAKER))


def test_nobody_may_say_that_days_were_shown_before_they_passed(ask):
    make = stored(until_day=59)
    (problem,) = make.tap(
        ask,
        "matter_decided",
        MOULDED + 59.5 * DAY,
        OWNER,
        matter="days",
        way="days_shown_elsewhere",
        why="Nearly.",
    )
    assert problem["key"] == "way_not_open"


def test_days_below_35_f_do_not_count(ask):
    make = stored(until_day=61, temp_f=34.0)
    (matter,) = make.matters(ask, MOULDED + 61 * DAY).values()
    assert matter["reasons"][0]["value"] == 0


def lab(*results, treatment="raw", day=70):
    make = stored("lab", treatment, until_day=day)
    for quantity, value in results:
        make.read(quantity, value, MOULDED + 30 * DAY)
    return make


def samples(*counts):
    return [("staph_per_g", float(count)) for count in counts]


def told(make, ask, day=95):
    (matter,) = make.matters(ask, MOULDED + day * DAY).values()
    tests = [reason["test"] for reason in matter["reasons"] if "test" in reason]
    return matter["key"], tests


def test_results_that_the_class_wants_are_awaited_at_the_end_of_the_store(ask):
    make = lab()
    assert make.matters(ask, MOULDED + 15 * DAY) == {}
    assert told(make, ask) == ("lab_awaited", ["staph_counts", "listeria"])
    # A release waits for them; a make may be closed before.
    (matter,) = make.matters(ask, MOULDED + 95 * DAY).values()
    assert [stop["what"] for stop in matter["stops"]] == ["release"]
    good = lab(*samples(900, 900, 900, 900, 900), ("listeria_test", "negative"))
    assert good.matters(ask, MOULDED + 95 * DAY) == {}


def test_a_test_that_is_not_in_the_plan_is_the_owner_s_word(ask):
    make = lab()
    body = {"matter": "lab", "way": "not_in_our_plan", "why": "Agreed in May."}
    minute = MOULDED + 95 * DAY
    (problem,) = make.tap(ask, "matter_decided", minute, MAKER, **body)
    assert (problem["key"], problem["limit"]) == ("not_allowed", "owner")
    assert passed(make.tap(ask, "matter_decided", minute, OWNER, **body))


@pytest.mark.parametrize(
    ("treatment", "result", "test"),
    [
        ("raw", ("listeria_test", "positive"), "listeria"),
        # Raw: at most 100 000/g, the upper figure of the plan.
        ("raw", ("staph_per_g", 110000.0), "staph_counts"),
    ],
)
def test_a_failed_result_stops_the_closing_at_once(ask, treatment, result, test):
    make = lab(result, treatment=treatment)
    assert told(make, ask, day=31) == ("lab_failed", [test])
    minute = MOULDED + 31 * DAY
    assert refused_by(make.tap(ask, "make_closed", minute, MAKER))[0] == (
        "matter.lab_failed"
    )


def reasons(make, ask, day=95):
    (matter,) = make.matters(ask, MOULDED + day * DAY).values()
    return matter["reasons"]


def test_five_samples_are_one_answer_and_four_are_awaited(ask):
    # Regulation (EC) 2073/2005, Annex I, as amended by 1441/2007: n = 5.
    listeria = ("listeria_test", "negative")
    make = lab(*samples(900, 900, 900, 900), listeria)
    assert told(make, ask) == ("lab_awaited", ["staph_counts"])
    (reason,) = reasons(make, ask)
    assert (reason["key"], reason["value"], reason["limit"]) == ("lab_samples", 4, 5)
    assert (
        lab(*samples(900, 900, 900, 900, 900), listeria).matters(
            ask, MOULDED + 95 * DAY
        )
        == {}
    )
    # Each sample is a line of its own in the record.
    record = ask.desk(*make.calls(), ("record", MAKE))[2]
    read = [one["data"] for one in record if one["kind"] == "reading_taken"]
    counts = [one["value"] for one in read if one["quantity"] == "staph_per_g"]
    assert counts == [900.0] * 4


# c = 2 between m and M, of raw milk 10^4 and 10^5 (same Annex).
@pytest.mark.parametrize(
    "counts",
    [
        (10000, 10001, 100000, 900, 900),
        # Two of each set: ten samples are two answers.
        (10001, 10001, 9, 9, 9, 10001, 10001, 9, 9, 9),
    ],
)
def test_samples_meet_the_plan_together(ask, counts):
    make = lab(*samples(*counts), ("listeria_test", "negative"))
    assert make.matters(ask, MOULDED + 95 * DAY) == {}


@pytest.mark.parametrize(
    ("counts", "words"),
    [
        ((10001, 10001, 10001, 900, 900), [("lab_between", 3, 5)]),
        ((100001, 900, 900, 900, 900), [("lab_above", 1, 5)]),
        # Two more could not mend it.
        ((10001, 10001, 10001), [("lab_between", 3, 3)]),
        # A second set does not make the first good.
        ((100001, *[900] * 9), [("lab_above", 1, 5)]),
        # Seen: seven between of fifteen were told, where the first set's two may be.
        (
            (10001, 10001, 9, 9, 9, *[10001] * 5, *[9] * 5),
            [("lab_between", 5, 5)],
        ),
        (
            (100001, *[10001] * 3, 9, 100001, 10001, 9, 9, 9),
            [("lab_above", 1, 5), ("lab_between", 3, 5), ("lab_above", 1, 5)],
        ),
    ],
)
def test_samples_that_do_not_meet_the_plan_are_told_of_the_set_that_decided(
    ask, counts, words
):
    make = lab(*samples(*counts), ("listeria_test", "negative"))
    assert make.matters(ask, MOULDED + 31 * DAY)["lab"]["key"] == "lab_failed"
    first, *plan = reasons(make, ask)
    assert (first["key"], first["test"]) == ("lab_failed", "staph_counts")
    assert [(row["key"], row["value"], row["samples"]) for row in plan] == words
    for row in plan:
        assert row["limit"] == {"lab_above": 100000, "lab_between": 2}[row["key"]]
        if row["key"] == "lab_between":
            assert (row["low"], row["high"]) == (10000, 100000)


def test_a_set_is_named_by_the_day_of_its_last_sample(ask):
    make = lab(*samples(9, 9, 9, 9, 9), ("listeria_test", "negative"))
    for count in (100001.0, 9.0, 9.0):
        make.read("staph_per_g", count, MOULDED + 33 * DAY)
    _, row = reasons(make, ask)
    assert (row["key"], row["at_ms"]) == ("lab_above", at(MOULDED + 33 * DAY))
    assert (row["value"], row["samples"]) == (1, 3)


def test_a_rule_read_where_another_quotes_it_says_so(ask):
    # Regulation (EC) 2073/2005 was read in texts that quote it, not by itself.
    make = lab(*samples(*[100001] * 5))
    (matter,) = make.matters(ask, MOULDED + 31 * DAY).values()
    assert matter["rule"].startswith("Regulation (EC) 2073/2005")
    assert matter["status"] == "secondary"
    hold = Make("heat_hold").received().held(dip_at=29)
    (matter,) = hold.matters(ask, 93).values()
    assert matter["status"] == "read"


def test_a_positive_phosphatase_makes_pasteurised_milk_wait_sixty_days(ask):
    # More than 3 ug, and more than Limburger's 4: not pasteurised, so it is cured.
    make = stored("days", "pasteurised", until_day=29)
    make.read("cheese_phosphatase_ug", 9.0, MOULDED + 20 * DAY)
    minute = MOULDED + 30 * DAY
    assert make.tap(ask, "make_closed", minute, MAKER)[0]["key"] == "stopped"
