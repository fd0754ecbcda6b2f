"""What leaves for a push service, read as the service and the browser read it."""

import logging
import time

import pytest

from server.alarm import keys
from server.alarm.message import Message, of_test
from server.alarm.sender import UNREACHABLE, is_point, send
from server.store.pushes import Subscription
from tests.alarm.push_service import read_ticket

CONTACT = "mailto:owner@creamery.org"
MESSAGE = Message("alarm", "make/timer/1", "Vatside: Vat one", "Press: é", "/#/x", 600)


def subscription(browser):
    posted = browser.posted()
    return Subscription(
        id="1",
        endpoint=posted["endpoint"],
        **posted["keys"],
        device="d",
        wants="all",
        page="https://floor.creamery.org",
        posted_ms=0,
        sent_ms=None,
        status=None,
        ok_ms=None,
        dropped_ms=None,
        person="p",
        language=None,
        role="maker",
        device_name="Pocket",
    )


@pytest.fixture
def key(tmp_path):
    return keys.private_key(tmp_path)


def test_the_browser_reads_a_declarative_message(service, key):
    browser = service.browser()
    assert send(subscription(browser), MESSAGE, key, CONTACT) == 201
    ((path, headers, body),) = service.came
    assert path == "/push/one"
    assert headers["Content-Encoding"] == "aes128gcm"
    assert browser.read(body) == {
        "web_push": 8030,
        "notification": {
            "title": "Vatside: Vat one",
            "body": "Press: é",
            "tag": "make/timer/1",
            "navigate": "https://floor.creamery.org/#/x",
        },
    }


def test_the_service_is_told_who_sends_how_urgent_and_for_how_long(service, key):
    send(subscription(service.browser()), MESSAGE, key, CONTACT)
    ((_, headers, _),) = service.came
    assert (headers["TTL"], headers["Urgency"]) == ("600", "high")
    assert len(headers["Topic"]) == 32  # RFC 8030 section 5.4: no more than 32
    claims, public = read_ticket(headers["Authorization"])
    assert claims["sub"] == CONTACT
    assert claims["aud"] == service.url
    # RFC 8292 section 2: not more than 24 hours ahead.
    assert 0 < claims["exp"] - time.time() <= 86_400
    assert public == keys.public_text(key)


def test_the_same_alarm_has_the_same_topic_and_another_one_another():
    def topic(tag):
        return Message("alarm", tag, "", "", "", 60).topic

    assert topic("a") == topic("a") != topic("b")


@pytest.mark.parametrize("status", [201, 403, 404, 410, 429, 500])
def test_the_service_s_answer_is_told_and_logged(service, key, caplog, status):
    service.status = status
    with caplog.at_level(logging.INFO, "server.alarm.sender"):
        assert send(subscription(service.browser()), MESSAGE, key, CONTACT) == status
    assert f"push alarm to 127.0.0.1:{service.server.server_port}: {status}" in (
        caplog.text
    )
    assert "/push/one" not in caplog.text  # whoever has it may send


def test_a_service_that_is_not_there_is_an_answer_too(service, key):
    browser = service.browser()
    service.close()
    assert send(subscription(browser), MESSAGE, key, CONTACT) == UNREACHABLE


def test_a_service_that_sends_us_elsewhere_is_not_followed(service, key):
    service.status = 307
    service.headers = {"Location": f"{service.url}/inside"}
    assert send(subscription(service.browser()), MESSAGE, key, CONTACT) == UNREACHABLE
    assert [path for path, _, _ in service.came] == ["/push/one"]


def test_a_weekly_test_is_visible_and_not_urgent():
    weekly = of_test(weekly=True, language=None)
    assert weekly.urgency == "normal"
    assert weekly.title
    assert of_test(weekly=False, language=None).urgency == "high"


def test_only_a_point_of_the_curve_is_a_key(service):
    browser = service.browser()
    assert is_point(browser.point)
    assert not is_point(browser.point[:-1])
    assert not is_point(b"\x04" + b"\x01" * 64)
