"""Alarms over HTTP: what the wall asks, pushes, calendar files."""

from dataclasses import replace

import icalendar
import pytest

from server.app import create_app
from server.config import Settings, real_now_ms
from tests.alarm.push_service import PushService
from tests.core.builders import Phone, at, figure, step
from tests.core.step.test_steps import with_steps
from tests.sync.phones import close_app

CONTACT = "mailto:owner@creamery.org"


@pytest.fixture
def service():
    made = PushService()
    yield made
    made.close()


@pytest.fixture
def app(tmp_path, clock):
    app = create_app(
        Settings(
            data_dir=tmp_path,
            clock=clock,
            static_dir=tmp_path,
            push_contact=CONTACT,
            push_hosts=("127.0.0.1",),
        )
    )
    yield app
    close_app(app)


class Maker(Phone):
    """A paired phone that pushes what it records."""

    def __init__(self, paired):
        super().__init__(person=paired.person)
        self.paired = paired
        self.device = paired.device

    def send(self, *events):
        results = self.paired.push(*events).json["results"]
        assert [row["st"] for row in results] == ["stored"] * len(events)


@pytest.fixture
def maker(paired):
    return Maker(paired)


def timer(maker, at_min=1, lasts_s=300):
    return maker.event("timer_started", at_min, label="Press", lasts_s=lasts_s)


def key_of(answer):
    return answer.status_code, answer.json["error"]["key"]


@pytest.mark.parametrize("path", ["/alarms", "/push", "/makes/x/calendar.ics"])
def test_who_is_not_paired_learns_nothing(client, path):
    assert key_of(client.get("/api/v1" + path)) == (401, "not_paired")


def test_the_wall_is_told_what_rings_and_what_will_with_no_phone_awake(
    pair, maker, clock
):
    wall = pair("viewer")
    made = timer(maker)
    maker.send(maker.opened(vat="Vat 1"), made)
    clock.tick(2 * 60_000)
    before = wall.get("/alarms").json
    assert before["alarms"] == []
    assert [row["due_ms"] for row in before["deadlines"]] == [at(6)]
    assert (before["now"], before["rate"]) == (at(2), 1)
    assert before["next_change_ms"] <= at(6)
    assert [row["vat"] for row in before["makes"]] == ["Vat 1"]
    assert before["escalate_min"] == 10
    clock.tick(4 * 60_000)
    (alarm,) = wall.get("/alarms").json["alarms"]
    assert (alarm["matter"], alarm["state"]) == (
        "timer/" + made["id"],
        "unacknowledged",
    )
    maker.send(maker.event("alert_acknowledged", 6, alert=alarm["matter"]))
    (alarm,) = wall.get("/alarms").json["alarms"]
    assert alarm["state"] == "acknowledged"


def test_a_make_that_is_over_is_not_on_the_wall(maker):
    maker.send(maker.opened(), maker.event("make_closed", 0))
    assert maker.paired.get("/alarms").json["makes"] == []


def test_only_the_owner_sets_when_the_owner_is_told(pair, maker):
    owner = pair("owner")
    answer = maker.paired.post("/alarms/settings", {"escalate_min": 5})
    assert key_of(answer) == (403, "role_too_low")
    assert owner.post("/alarms/settings", {"escalate_min": 5}).status_code == 200
    assert maker.paired.get("/alarms").json["escalate_min"] == 5


@pytest.mark.parametrize("wrong", [0, 121, "soon", None])
def test_a_time_out_of_its_limits_changes_nothing(pair, wrong):
    owner = pair("owner")
    answer = owner.post("/alarms/settings", {"escalate_min": wrong})
    assert answer.status_code == 422
    assert answer.json["error"]["field"] == "escalate_min"
    assert owner.get("/alarms").json["escalate_min"] == 10


def test_a_wall_that_was_heard_of_lately_lives(pair, monkeypatch):
    wall = pair("viewer")
    assert wall.post("/alarms/wall", {"sound": True}).status_code == 200
    (row,) = wall.get("/alarms").json["walls"]
    assert (row["device"], row["sound"], row["lives"]) == (wall.device, True, True)
    assert 0 <= row["age_s"] < 10
    real_ms = real_now_ms()
    monkeypatch.setattr("server.api.alarms.real_now_ms", lambda: real_ms + 61_000)
    (row,) = wall.get("/alarms").json["walls"]
    assert not row["lives"]


def subscribe(phone, browser, **changed):
    return phone.post("/push/subscriptions", browser.posted() | changed)


def test_a_phone_subscribes_and_gets_a_test_that_it_can_read(paired, service):
    browser = service.browser()
    assert subscribe(paired, browser).status_code == 200
    answer = paired.post("/push/test")
    assert answer.json == {"status": 201}
    ((_, headers, body),) = service.came
    said = browser.read(body)
    assert said["web_push"] == 8030
    assert said["notification"]["navigate"] == "http://localhost/#/alarms/test"
    shown = paired.get("/push").json
    (row,) = shown["subscriptions"]
    assert (row["mine"], row["lives"], row["status"]) == (True, True, 201)
    assert row["ok_s"] is not None
    assert shown["public_key"] in headers["Authorization"]
    assert shown["why_not"] is None


def test_a_phone_sees_its_own_subscription_and_the_owner_all(pair, service):
    ada, bo, nel = pair(), pair(name="Bo"), pair("owner", "Nel")
    subscribe(ada, service.browser("a"))
    subscribe(bo, service.browser("b"))

    def listed(phone):
        return {row["device"] for row in phone.get("/push").json["subscriptions"]}

    assert listed(ada) == {ada.device}
    assert listed(nel) == {ada.device, bo.device}
    assert "endpoint" not in nel.get("/push").json["subscriptions"][0]


def test_the_owner_s_missing_subscription_is_told(pair, service):
    ada, nel = pair(), pair("owner", "Nel")
    assert not ada.get("/push").json["owner_live"]
    subscribe(nel, service.browser())
    assert ada.get("/push").json["owner_live"]


def test_a_phone_that_wants_no_pushes_gets_none(paired, service):
    subscribe(paired, service.browser())
    assert paired.delete("/push/subscriptions").status_code == 204
    assert key_of(paired.post("/push/test")) == (422, "no_subscription")
    assert service.came == []


@pytest.mark.parametrize(
    ("changed", "field", "key"),
    [
        (
            {"endpoint": "http://192.168.1.1/reboot"},
            "endpoint",
            "not_a_push_service",
        ),
        ({"endpoint": "https://example.org/x"}, "endpoint", "not_a_push_service"),
        ({"wants": "some"}, "wants", "not_a_choice"),
        ({"keys": {"auth": "MDEyMzQ1Njc4OWFiY2RlZg"}}, "keys.p256dh", "missing"),
        (
            {"keys": {"auth": "MDEyMzQ1Njc4OWFiY2RlZg", "p256dh": "BAAA"}},
            "keys.p256dh",
            "not_a_push_key",
        ),
    ],
)
def test_an_unsound_subscription_is_refused_and_not_kept(
    paired, service, changed, field, key
):
    answer = subscribe(paired, service.browser(), **changed)
    assert answer.status_code == 422
    error = answer.json["error"]
    assert (error["field"], error["key"]) == (field, key)
    assert paired.get("/push").json["subscriptions"] == []


def test_a_secret_of_the_wrong_length_is_refused(paired, service):
    keys = {**service.browser().posted()["keys"], "auth": "MDEy"}
    answer = subscribe(paired, service.browser(), keys=keys)
    assert answer.json["error"]["field"] == "keys.auth"


def test_a_server_without_a_contact_says_so(app, paired, service):
    subscribe(paired, service.browser())
    app.extensions["vatside"] = replace(app.extensions["vatside"], push_contact="")
    assert paired.get("/push").json["why_not"] == "no_contact"
    assert key_of(paired.post("/push/test")) == (422, "no_contact")
    assert service.came == []


def overnight(maker):
    night = [
        step("fill", closes_day=True),
        step(
            "press",
            ["fill"],
            lasts=figure(43200, "s", 36000, 50400),
        ),
    ]
    events = [maker.opened(recipe=with_steps(*night))]
    events += [
        maker.event("step_begun", 0, step="fill"),
        maker.event("step_ended", 1, step="fill"),
        maker.event("step_begun", 2, step="press"),
    ]
    maker.send(*events)


def test_a_pressing_overnight_goes_into_the_phone_s_calendar(maker, clock):
    overnight(maker)
    clock.tick(3 * 60_000)
    answer = maker.paired.get(f"/makes/{maker.make}/calendar.ics")
    assert answer.status_code == 200
    assert answer.mimetype == "text/calendar"
    assert "attachment" in answer.headers["Content-Disposition"]
    (event,) = icalendar.Calendar.from_ical(answer.data).walk("VEVENT")
    assert event.start.timestamp() * 1000 == at(2 + 720)
    assert len(event.walk("VALARM")) == 2  # the time, and the end of its band


def test_one_step_s_deadline_is_given_however_short(maker):
    one = step("rest", lasts=figure(600, "s", 500, 700))
    maker.send(
        maker.opened(recipe=with_steps(one)), maker.event("step_begun", 0, step="rest")
    )
    path = f"/makes/{maker.make}/calendar.ics"
    assert key_of(maker.paired.get(path)) == (422, "no_deadline")
    answer = maker.paired.get(path + "?step=rest")
    (event,) = icalendar.Calendar.from_ical(answer.data).walk("VEVENT")
    assert event.start.timestamp() * 1000 == at(10)


def test_a_calendar_speaks_to_who_taps_or_else_to_the_phone_s_person(maker, clock):
    overnight(maker)
    clock.tick(3 * 60_000)
    path = f"/makes/{maker.make}/calendar.ics"
    maker.paired.patch("/me", {"language": "es"})
    assert "se acabó el tiempo" in maker.paired.get(path).text
    assert "c’est l’heure" in maker.paired.get(path + "?language=fr").text
    assert key_of(maker.paired.get(path + "?language=x")) == (422, "not_a_choice")


def test_an_unknown_make_has_no_calendar(paired):
    path = "/makes/0193a5b0-0000-7000-8000-0000000000ff/calendar.ics"
    assert key_of(paired.get(path)) == (404, "unknown_make")
