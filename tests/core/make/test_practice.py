"""A make for practice: everything works in it, and nothing of it counts."""

import pytest

from tests.core.alarm.test_alarms import asked
from tests.core.builders import MAKE, Phone, a_day, at
from tests.core.creamery.test_board import board
from tests.core.creamery.test_clashes import OTHER, of_steps, press, pressing
from tests.core.creamery.test_due import TANK, rows, tank


def practised(events):
    """Return the same events with the make opened for practice."""
    opened = events[0]
    return [{**opened, "data": {**opened["data"], "practice": True}}, *events[1:]]


@pytest.mark.parametrize("is_practice", [True, False])
def test_a_practice_make_says_so_wherever_it_is_shown(ask, is_practice):
    events = [Phone().opened(practice=is_practice)]
    assert ask.view(events, 1)["make"]["practice"] is is_practice
    found = board(ask, events, 1)
    assert [row["practice"] for row in found["makes"]] == [is_practice]
    assert [row["practice"] for row in found["due"]] == [is_practice]


def test_a_make_of_an_older_app_is_real(ask):
    assert ask.view([Phone().opened()], 1)["make"]["practice"] is False


def test_all_of_a_make_day_can_be_practised(ask):
    real, practice = a_day(Phone()), practised(a_day(Phone()))
    told = [ask.view(events, 170) for events in (real, practice)]
    for view in told:
        view["make"].pop("practice")
        view.pop("log")  # the opening stands there as it was entered
    assert told[0] == told[1]


def test_its_record_says_practice(ask):
    events = practised([Phone().opened()])
    lines = ask.desk(("take", events), ("record", MAKE))[1]
    assert lines[0]["data"]["practice"] is True


def test_practice_never_becomes_real_by_a_correction(ask):
    phone = Phone()
    events = practised([phone.opened()])
    fix = {"set": {"practice": False}, "why": "It went well"}
    events.append(phone.event("entry_corrected", 5, ref=events[0]["id"], **fix))
    assert ask.view(events, 6)["make"]["practice"] is True
    told = ask.desk(
        ("take", events[:1]),
        ("check_correction", MAKE, events[0]["id"], {"practice": False}),
    )[1]
    assert told[0]["field"] == "practice"


def test_a_practice_make_is_on_no_chart(ask):
    for events, count in ((a_day(Phone()), 1), (practised(a_day(Phone())), 0)):
        charts = ask.desk(("take", events), ("trends", "small-wheel"))[1]
        (floc,) = [row for row in charts if row["key"] == "floc_time"]
        assert len(floc["points"]) == count


def test_wheels_of_practice_are_in_no_tank(ask):
    real = [Phone().opened(), *tank(Phone(make=TANK, device=1), days=1)]
    for events, count in ((real, 1), (practised(real), 0)):
        assert len(rows(ask, events, 20, "unload")) == count
        (account,) = ask.desk(("take", events), ("tanks", at(60)))[1]
        assert len(account["loads"]) == count
    # Taking out what is not there is no error of the tank's.
    out = Phone(make=TANK, device=1)
    out.seq = 9
    gone = out.event("tank_unloaded", 30, load=real[2]["id"], mass_kg=41.0)
    (account,) = ask.desk(("take", [*practised(real), gone]), ("tanks", at(60)))[1]
    assert (account["loads"], account["notes"]) == ([], [])
    assert account["mass_kg"] == 900.0


def test_practice_waits_where_there_is_real_work(ask):
    events = pressing(MAKE, 0, 30, 25, 35) + pressing(OTHER, 0, 30, 25, 35)
    assert board(ask, events, 5)["clash_count"] == 1
    assert board(ask, practised(events), 5)["clash_count"] == 0
    found = ask.desk(
        ("take", practised(pressing(MAKE, 0, 120, 120, 120))),
        ("clashes_if", of_steps(*press(30, 30, 30)), "raw", at(90), at(1)),
    )[1]
    assert found["count"] == 0


def test_the_owner_is_not_told_of_a_practice_alarm(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Press", lasts_s=300)
    real = [phone.opened(), timer]
    for events, escalated in ((real, True), (practised(real), False)):
        (alarm,) = asked(ask, events, 60)["alarms"]
        assert (alarm["kind"], alarm["state"]) == ("timer", "unacknowledged")
        assert alarm["escalated"] is escalated
        assert (alarm["escalates_ms"] is not None) is escalated
