from pathlib import Path

import pytest

from server.alarm.contact import contact, may_push_to
from server.config import Settings


def settings(**given):
    return Settings(data_dir=Path("unused"), **given)


@pytest.mark.parametrize(
    "address", ["mailto:owner@creamery.org", "https://creamery.org/contact"]
)
def test_a_real_address_is_told_to_push_services(address):
    assert contact(settings(push_contact=address)) == (address, None)


def test_the_page_s_own_https_address_will_do():
    found = contact(settings(public_url="https://floor.creamery.org"))
    assert found == ("https://floor.creamery.org", None)


@pytest.mark.parametrize("url", ["", "http://192.168.1.4:8000"])
def test_without_an_address_there_are_no_pushes(url):
    assert contact(settings(public_url=url)) == (None, "no_contact")


@pytest.mark.parametrize(
    "address",
    [
        "mailto:owner@floor.local",  # answered with 403 by one push service
        "mailto:owner@localhost",
        "mailto:@creamery.org",
        "mailto:owner",
        "https://floor.invalid",
        "https://192.168.1.4",
        "https://[::1]/",
        "http://creamery.org",
        "owner@creamery.org",
    ],
)
def test_an_address_where_nobody_can_be_reached_is_refused(address):
    assert contact(settings(push_contact=address)) == (None, "contact_unusable")


@pytest.mark.parametrize(
    "endpoint",
    [
        "https://fcm.googleapis.com/fcm/send/abc",
        "https://web.push.apple.com/QGuI",
        "https://updates.push.services.mozilla.com/wpush/v2/abc",
        "https://wns2-by3p.notify.windows.com/w/?token=abc",
    ],
)
def test_pushes_go_to_the_services_of_browsers(endpoint):
    assert may_push_to(endpoint, ())


@pytest.mark.parametrize(
    "endpoint",
    [
        "http://fcm.googleapis.com/x",
        "https://fcm.googleapis.com.evil.org/x",
        "https://evilfcm.googleapis.com/x",
        "https://fcm.googleapis.com:8443/x",
        "https://user@fcm.googleapis.com/x",
        "https://push.apple.com.evil.org/x",
        "https://127.0.0.1/x",
        "http://192.168.1.1/reboot",
        "https://fcm.googleapis.com:port/x",
        "file:///etc/passwd",
        "",
    ],
)
def test_no_other_door_is_knocked_at(endpoint):
    assert not may_push_to(endpoint, ())


def test_a_host_that_the_owner_trusts_is_pushed_to_and_no_other():
    assert may_push_to("http://127.0.0.1:9000/push", ("127.0.0.1",))
    assert not may_push_to("http://127.0.0.2:9000/push", ("127.0.0.1",))
    assert not may_push_to("ftp://127.0.0.1/push", ("127.0.0.1",))
