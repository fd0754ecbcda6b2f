"""Who is told what, once, and who is told when nobody answers."""

import pytest

from server import auth, live, store
from server.alarm import Delivery, message
from server.config import Settings, settings
from server.store import alarms as kept
from server.store import pushes
from tests.alarm.floor import MINUTE, REAL_MS, Listener, add, delivery
from tests.core.builders import MAKE, Phone, at, recipe
from tests.store.full_disk import disk_that_is

WEEK = 7 * 24 * 60 * MINUTE


def timer(phone, at_min, label="Press", lasts_s=300):
    return phone.event("timer_started", at_min, label=label, lasts_s=lasts_s)


def seen(phone, at_min, timer):
    return phone.event("alert_acknowledged", at_min, alert="timer/" + timer["id"])


@pytest.fixture
def phone(app):
    phone = Phone()
    add(phone.opened(vat="Vat 1"))
    return phone


def turn(sends, at_min):
    sends.turn(at(at_min), REAL_MS + int(at_min * MINUTE))


def test_a_timer_reaches_every_phone_at_work_once(app, phone, service):
    ada, bo = Listener(service, "Ada"), Listener(service, "Bo", "helper")
    made = timer(phone, 1)
    add(made)
    sends = delivery()
    turn(sends, 5.9)
    assert service.came == []
    for at_min in (6, 6.1, 8):
        turn(sends, at_min)
    for person in (ada, bo):
        assert person.heard() == [
            {
                "title": "Vatside: Make · Vat 1",
                "body": "Press: the time is up",
                "tag": f"{MAKE}/timer/{made['id']}",
                "navigate": "https://floor.creamery.org/#/alarms",
            }
        ]
    headers = service.came[0][1]
    assert headers["Urgency"] == "high"
    # Until the owner is told of it, ten minutes after it began to ring.
    assert headers["TTL"] == "600"


def test_each_person_hears_it_in_their_own_language(app, phone, service):
    ada, bo = Listener(service, "Ada"), Listener(service, "Bo", "helper")
    auth.change_person(bo.person, at(0), language="es")
    add(timer(phone, 1))
    turn(delivery(), 6)
    assert ada.heard()[0]["body"] == "Press: the time is up"
    assert bo.heard()[0]["body"] == "Press: se acabó el tiempo"


def test_another_worker_does_not_tell_it_again(app, phone, service):
    Listener(service, "Ada")
    add(timer(phone, 1))
    turn(delivery(), 6)
    turn(delivery(), 6.1)
    assert len(service.came) == 1


def test_what_is_answered_before_its_turn_is_not_sent(app, phone, service):
    Listener(service, "Ada")
    made = timer(phone, 1)
    add(made, seen(phone, 6, made))
    turn(delivery(), 7)
    assert service.came == []


def test_more_than_two_a_minute_are_merged_into_one(app, phone, service):
    ada = Listener(service, "Ada")
    sends = delivery()
    for place in range(5):
        add(timer(phone, 0.01 * place, f"T{place}", 60))
        turn(sends, 1 + 0.01 * place)
    assert len(ada.heard()) == 2
    turn(sends, 2.0)
    assert ada.titles()[2:] == ["Vatside: 3 alarms"]
    assert ada.heard()[2]["body"].splitlines() == [
        f"Make · Vat 1: T{place}: the time is up" for place in (2, 3, 4)
    ]
    turn(sends, 3)
    assert len(ada.heard()) == 3


def test_an_owner_elsewhere_hears_only_what_nobody_answers(app, phone, service):
    ada = Listener(service, "Ada")
    nel = Listener(service, "Nel", "owner", "unanswered")
    made = timer(phone, 1)
    add(made)
    sends = delivery()
    turn(sends, 6)
    turn(sends, 15.9)
    assert (len(ada.heard()), nel.heard()) == (1, [])
    turn(sends, 16)
    turn(sends, 17)
    assert len(ada.heard()) == 1
    (told,) = nel.heard()
    assert told["title"] == "Nobody has answered for 10 min"
    assert told["body"] == "Make · Vat 1: Press: the time is up"
    assert told["tag"] == f"nobody/{MAKE}/timer/{made['id']}"


def test_an_owner_at_work_hears_both(app, phone, service):
    nel = Listener(service, "Nel", "owner", "all")
    add(timer(phone, 1))
    sends = delivery()
    turn(sends, 6)
    turn(sends, 16)
    assert nel.titles() == ["Vatside: Make · Vat 1", "Nobody has answered for 10 min"]


def test_the_owner_is_told_after_the_time_that_was_set(app, phone, service):
    kept.set_escalate_s(180)
    nel = Listener(service, "Nel", "owner", "unanswered")
    add(timer(phone, 1))
    turn(delivery(), 9)
    assert nel.titles() == ["Nobody has answered for 3 min"]


def test_an_answer_in_time_spares_the_owner(app, phone, service):
    nel = Listener(service, "Nel", "owner", "unanswered")
    made = timer(phone, 1)
    add(made, seen(phone, 12, made))
    turn(delivery(), 17)
    assert nel.heard() == []


def test_what_rings_anew_after_its_shelf_is_sent_anew(app, phone, service):
    ada = Listener(service, "Ada")
    made = timer(phone, 1)
    add(made)
    sends = delivery()
    turn(sends, 6)
    matter = "timer/" + made["id"]
    add(phone.event("alarm_shelved", 7, alert=matter, for_s=600, why="Lunch"))
    turn(sends, 10)
    assert len(ada.heard()) == 1
    turn(sends, 17)
    assert len(ada.heard()) == 2


@pytest.mark.parametrize("status", [404, 410])
def test_a_dead_subscription_is_dropped_and_not_tried_again(
    app, phone, service, status
):
    Listener(service, "Ada")
    add(timer(phone, 1))
    service.status = status
    sends = delivery()
    turn(sends, 6)
    add(timer(phone, 5))
    turn(sends, 10)
    assert len(service.came) == 1
    assert pushes.subscriptions() == []
    (dead,) = pushes.subscriptions(live_only=False)
    assert dead.status == status


def test_a_refused_key_is_kept_in_sight_and_not_tried_again_for_the_same_alarm(
    app, phone, service
):
    Listener(service, "Ada")
    add(timer(phone, 1))
    service.status = 403
    sends = delivery()
    turn(sends, 6)
    turn(sends, 8)
    assert len(service.came) == 1
    assert [row.status for row in pushes.subscriptions()] == [403]


@pytest.mark.parametrize("status", [429, 503])
def test_a_busy_service_is_tried_three_times_half_a_minute_apart(
    app, phone, service, status
):
    ada = Listener(service, "Ada")
    add(timer(phone, 1))
    service.status = status
    sends = delivery()
    for at_min, tried in ((6, 1), (6.4, 1), (6.5, 2), (7, 3), (8, 3), (9, 3)):
        turn(sends, at_min)
        assert len(ada.heard()) == tried, at_min


def test_a_phone_that_heard_nothing_for_a_week_gets_a_visible_test(app, service):
    ada = Listener(service, "Ada")
    sends = delivery()
    sends.turn(at(0), REAL_MS + WEEK - 1)
    assert ada.heard() == []
    sends.turn(at(0), REAL_MS + WEEK)
    sends.turn(at(0), REAL_MS + WEEK + MINUTE)
    (told,) = ada.heard()
    assert told["title"] == "Vatside: test"
    assert "once a week" in told["body"]
    sends.turn(at(0), REAL_MS + 2 * WEEK)
    assert len(ada.heard()) == 2


def test_a_test_that_fails_is_tried_again_a_day_later(app, service):
    ada = Listener(service, "Ada")
    service.status = 403
    sends = delivery()
    for days, tried in ((7, 1), (7.5, 1), (8, 2)):
        sends.turn(at(0), REAL_MS + int(days * WEEK / 7))
        assert len(ada.heard()) == tried, days


def test_without_a_contact_nothing_is_sent(app, phone, service):
    Listener(service, "Ada")
    add(timer(phone, 1))
    mute = Delivery(live.ask, Settings(data_dir=settings().data_dir))
    turn(mute, 6)
    assert service.came == []


def test_every_push_is_logged(app, phone, service):
    Listener(service, "Ada")
    add(timer(phone, 1))
    turn(delivery(), 6)
    with store.reading() as session:
        rows = session.execute(
            store.db.text("select what, status, at_ms from push_log")
        ).all()
    assert [tuple(row) for row in rows] == [("alarm", 201, REAL_MS + 6 * MINUTE)]


def test_a_make_that_cannot_be_read_silences_no_other(app, phone, service):
    ada = Listener(service, "Ada")
    other = Phone(device=1, make="0193a5b0-0000-7000-8000-00000000000b")
    old = recipe()
    old["steps"][0]["readings"] = None
    add(other.opened(recipe=old, name="Old", vat="Vat 2"), timer(phone, 1))
    turn(delivery(), 6)
    assert [row["body"].split("\n") for row in ada.heard()] == [
        [
            "Old · Vat 2: This make cannot be shown and its timers do not ring. "
            "Look at it.",
            "Make · Vat 1: Press: the time is up",
        ]
    ]


@pytest.mark.parametrize("state", ["full", "read_only"])
def test_a_disk_that_takes_nothing_silences_nobody_and_rings_nobody_twice(
    app, phone, service, state
):
    ada, olive = Listener(service, "Ada"), Listener(service, "Olive", "owner")
    add(timer(phone, 1))
    sends = delivery()
    with disk_that_is(state):
        for at_min in (6, 6.1, 8, 16, 16.1):
            turn(sends, at_min)
        assert len(ada.heard()) == 1
        assert len(olive.heard()) == 2  # the alarm, and that nobody answered it
        if state == "read_only":  # a full one may still have room within a page
            assert kept.heard(ada.person) is None
    sends._notified._tried_s -= 60  # it tries again now and then
    turn(sends, 17)
    assert len(kept.heard(ada.person)["pushed"]) == 1
    assert pushes.subscriptions()[0].status == 201
    turn(delivery(), 17.1)
    assert len(ada.heard()) == 1


def test_on_a_disk_that_takes_nothing_the_weekly_test_goes_out_once(
    app, phone, service
):
    ada = Listener(service, "Ada")
    sends = delivery()
    with disk_that_is("read_only"):
        for minute in range(3):
            sends.turn(at(0), REAL_MS + WEEK + minute * MINUTE)
        assert len(ada.heard()) == 1


def test_a_push_put_off_before_the_clock_was_set_back_goes_at_once(app, phone, service):
    Listener(service, "Ada")
    add(timer(phone, 1))
    sends = delivery()
    service.status = 503
    sends.turn(at(6), REAL_MS)
    service.status = 201
    sends.turn(at(6), REAL_MS - 60 * MINUTE)
    assert len(service.came) == 2


def test_nobody_counts_as_told_by_a_server_that_has_no_key(app, phone, service):
    ada = Listener(service, "Ada")
    add(timer(phone, 1))
    sends = delivery()
    (settings().data_dir / "push-key.pem").write_bytes(b"no key")
    with pytest.raises(ValueError, match=r"load|deserialize|PEM|key"):
        turn(sends, 6)
    (settings().data_dir / "push-key.pem").unlink()
    turn(sends, 6.1)
    assert len(ada.heard()) == 1


def test_what_cannot_be_worded_for_one_person_reaches_the_others(
    app, phone, service, monkeypatch, caplog
):
    ada, bo = Listener(service, "Ada"), Listener(service, "Bo", "helper")
    auth.change_person(bo.person, at(0), language="es")
    right = message.of_alarms

    def wrong(news, now_ms, language):
        if language == "es":
            raise KeyError("a word that is missing")
        return right(news, now_ms, language)

    monkeypatch.setattr(message, "of_alarms", wrong)
    add(timer(phone, 1))
    sends = delivery()
    for at_min in (6, 6.1, 6.2):
        turn(sends, at_min)
    assert [row["body"] for row in ada.heard()] == ["Press: the time is up"]
    assert bo.heard() == []
    lines = [row for row in caplog.records if row.name == "server.alarm.delivery"]
    assert [bo.person in line.getMessage() for line in lines] == [True]
    # Once it can be worded, it is told: nothing counted as told before.
    monkeypatch.setattr(message, "of_alarms", right)
    turn(sends, 7)
    assert [row["body"] for row in bo.heard()] == ["Press: se acabó el tiempo"]
