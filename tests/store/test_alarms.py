"""What the one sender of all workers keeps about people, phones and walls."""

import pytest

from server import auth
from server.store import alarms, people, pushes
from tests.sync.phones import NOON_MS, a_uuid

DAY_MS = 86_400_000


def device(role="maker", name="Ada"):
    person = auth.add_person(name, role, NOON_MS)
    row = people.StoredDevice(a_uuid(), "Pocket", person.id, NOON_MS, NOON_MS, None)
    people.save_device(row, row.id.replace("-", "").ljust(64, "0"))
    return row


def subscription(of, name="one"):
    return pushes.NewSubscription(
        name, f"https://push.example/{name}", "key", "auth", of.id, "all", "https://a.b"
    )


def test_what_a_person_heard_is_kept(app):
    assert alarms.heard("ada") is None
    alarms.save_heard("ada", {"pushed": ["a"]})
    alarms.save_heard("ada", {"pushed": ["b"]})
    assert alarms.heard("ada") == {"pushed": ["b"]}


def test_the_owner_is_told_after_ten_minutes_unless_set_otherwise(app):
    assert alarms.escalate_s() == 600
    alarms.set_escalate_s(300)
    assert alarms.escalate_s() == 300


def test_a_wall_is_listed_while_it_is_paired(app):
    wall = device("viewer", "Room")
    alarms.note_wall(wall.id, False, NOON_MS)
    alarms.note_wall(wall.id, True, NOON_MS + 5)
    assert alarms.walls() == [(wall.id, "Pocket", NOON_MS + 5, True)]
    auth.remove_device(wall.id, NOON_MS)
    assert alarms.walls() == []


def test_a_phone_has_one_subscription_the_newest(app):
    phone = device()
    pushes.save_subscription(subscription(phone, "old"), NOON_MS)
    pushes.save_subscription(subscription(phone, "new"), NOON_MS + 1)
    pushes.save_subscription(subscription(phone, "new"), NOON_MS + 2)
    (found,) = pushes.subscriptions()
    assert (found.id, found.posted_ms, found.role) == ("new", NOON_MS + 2, "maker")


@pytest.mark.parametrize("how", ["removed", "left", "asked"])
def test_nothing_is_sent_to_a_phone_that_is_out_of_use(app, how):
    phone = device()
    pushes.save_subscription(subscription(phone), NOON_MS)
    if how == "removed":
        auth.remove_device(phone.id, NOON_MS)
    elif how == "left":
        auth.change_person(phone.person, NOON_MS, active=False)
    else:
        pushes.remove_subscription(phone.id)
    assert pushes.subscriptions() == []


@pytest.mark.parametrize(
    ("status", "lives"),
    [(201, True), (403, True), (404, False), (410, False), (429, True), (0, True)],
)
def test_a_subscription_goes_only_when_its_service_says_it_is_over(app, status, lives):
    pushes.save_subscription(subscription(device()), NOON_MS)
    pushes.note_sent("one", "alarm", "tag", status, NOON_MS + 1)
    assert [row.id for row in pushes.subscriptions()] == (["one"] if lives else [])
    (found,) = pushes.subscriptions(live_only=False)
    assert (found.status, found.sent_ms) == (status, NOON_MS + 1)
    assert found.ok_ms == (NOON_MS + 1 if status == 201 else None)
    # A page that posts it again has it again.
    pushes.save_subscription(subscription(device(), "one"), NOON_MS + 2)
    assert len(pushes.subscriptions()) == 1
