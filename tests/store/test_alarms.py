"""One sender of all workers, and what it keeps about phones and walls."""

import threading

import pytest

from server import auth, store
from server.store import alarms, people, pushes
from tests.sync.phones import NOON_MS, a_uuid

LEASE_MS = 30_000
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


def take(holder, now_ms):
    return alarms.take_lease("alarms", holder, now_ms, LEASE_MS)


def test_one_process_has_the_work_until_its_time_is_over(app):
    assert take("one", NOON_MS)
    assert not take("two", NOON_MS + LEASE_MS - 1)
    assert take("one", NOON_MS + 1)
    assert take("two", NOON_MS + LEASE_MS)
    assert not take("one", NOON_MS + LEASE_MS)


def test_a_process_that_keeps_the_work_lengthens_its_time(app):
    take("one", NOON_MS)
    assert take("one", NOON_MS + LEASE_MS - 1)
    assert alarms.lease_until_ms("alarms") == NOON_MS + 2 * LEASE_MS - 1


def test_a_process_that_stops_gives_the_work_up_at_once_and_only_its_own(app):
    take("one", NOON_MS)
    alarms.give_up_lease("alarms", "two")
    assert not take("two", NOON_MS + 1)
    alarms.give_up_lease("alarms", "one")
    assert take("two", NOON_MS + 1)


def test_of_many_that_ask_at_once_one_gets_the_work(app):
    start = threading.Barrier(6)
    got = []

    def ask(holder):
        with app.app_context():
            start.wait()
            got.append(take(holder, NOON_MS))
            store.db.session.remove()

    threads = [threading.Thread(target=ask, args=(str(n),)) for n in range(6)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(got) == [False] * 5 + [True]


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
