"""What holds for the alarms of every log of events."""

import json

from hypothesis import given, settings
from hypothesis import strategies as st

from server.core import desk as desk_of
from server.core.alarm import alarms as alarms_of
from tests.conftest import through_json
from tests.core.builders import MAKE, Phone, at
from tests.core.test_properties import NOWS, logs

ESCALATE_S = 600
MANY = settings(max_examples=150)
FEW = settings(max_examples=15)  # each is a whole fold on the phone's interpreter


def asked(log, now_min):
    desk = desk_of.new()
    desk_of.take(desk, log)
    return through_json(alarms_of.alarms(desk, at(now_min), ESCALATE_S))


@MANY
@given(logs(), NOWS)
def test_an_alarm_is_told_once_has_begun_and_says_when_it_changes(log, now_min):
    found = asked(log, now_min)
    json.dumps(found, allow_nan=False)
    ids = [row["id"] for row in found["alarms"]]
    assert len(ids) == len(set(ids))
    for row in found["alarms"]:
        assert row["rings_ms"] <= found["now_ms"]
        assert row["due_ms"] <= row["rings_ms"]
        assert row["priority"] in (1, 2, 3)
        assert row["state"] in alarms_of.STATES
        assert (row["escalates_ms"] is not None) == (row["state"] == "unacknowledged")
        assert row["escalated"] == (
            row["escalates_ms"] is not None and row["escalates_ms"] <= found["now_ms"]
        )
    assert found["next_change_ms"] is None or found["next_change_ms"] > found["now_ms"]


@MANY
@given(logs(), NOWS, st.randoms(use_true_random=False))
def test_the_order_of_arrival_does_not_change_what_rings(log, now_min, chance):
    shuffled = list(log)
    chance.shuffle(shuffled)
    assert asked(shuffled, now_min) == asked(log, now_min)


@MANY
@given(logs(), NOWS)
def test_acknowledging_silences_all_and_hides_nothing(log, now_min):
    open_ = [
        row for row in asked(log, now_min)["alarms"] if row["state"] == "unacknowledged"
    ]
    phone = Phone(device=1)
    phone.seq = 5000
    words = [
        phone.event("alert_acknowledged", now_min, alert=row["matter"]) for row in open_
    ]
    after = {row["id"]: row["state"] for row in asked(log + words, now_min)["alarms"]}
    assert {after[row["id"]] for row in open_} <= {"acknowledged"}
    assert "unacknowledged" not in after.values()


@MANY
@given(logs(), NOWS, st.sampled_from([60, 3600, 28800]))
def test_what_is_put_aside_comes_back_when_its_time_is_over(log, now_min, for_s):
    open_ = [
        row for row in asked(log, now_min)["alarms"] if row["state"] == "unacknowledged"
    ]
    phone = Phone(device=1)
    phone.seq = 5000
    shelves = [
        phone.event(
            "alarm_shelved", now_min, alert=row["matter"], for_s=for_s, why="Known"
        )
        for row in open_
    ]
    during = {row["id"]: row for row in asked(log + shelves, now_min)["alarms"]}
    later_min = now_min + for_s / 60
    after = asked(log + shelves, later_min)["alarms"]
    for row in open_:
        assert during[row["id"]]["state"] == "shelved"
        assert during[row["id"]]["shelved"]["until_ms"] == at(later_min)
    assert "shelved" not in {row["state"] for row in after if row["id"] in during} - {
        row["state"] for row in asked(log, later_min)["alarms"]
    }


@FEW
@given(logs(), NOWS)
def test_the_phone_rings_for_what_the_server_rings_for(ask_phone, log, now_min):
    desk = ask_phone.desk(("take", log), ("desk",))[1]
    found = ask_phone.call("alarm.alarms", "alarms", desk, at(now_min), ESCALATE_S)
    assert found == asked(log, now_min)
    assert all(row["make"] == MAKE for row in found["alarms"])
