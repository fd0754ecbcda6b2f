"""Which addresses pushes go to, compared with where the HTTP client would go."""

from dataclasses import replace

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from requests import Request, RequestException, Session
from requests.adapters import HTTPAdapter

from server import live
from server.alarm import Delivery
from server.alarm.endpoint import SERVICES, push_endpoint
from server.config import settings
from tests.alarm.floor import REAL_MS, Listener
from tests.core.builders import at

TRUSTED = ("127.0.0.1", "push.farm.example:8443")


@pytest.mark.parametrize(
    "endpoint",
    [
        "https://fcm.googleapis.com/fcm/send/abc",
        "https://web.push.apple.com/QGuI",
        "https://updates.push.services.mozilla.com:443/wpush/v2/abc==",
        "https://wns2-by3p.notify.windows.com/w/?token=abc%2b",
    ],
)
def test_pushes_go_to_the_services_of_browsers(endpoint):
    assert push_endpoint(endpoint, ()).url == endpoint


@pytest.mark.parametrize(
    "endpoint",
    [
        r"https://10.0.0.5\.push.apple.com/x",
        "https://10.0.0.5/.push.apple.com/x",
        "https://10.0.0.5#.push.apple.com/x",
        "https://10.0.0.5?.push.apple.com/x",
        "https://10.0.0.5%2f.push.apple.com/x",
        "https://user@fcm.googleapis.com/x",
        "https://10.0.0.5@fcm.googleapis.com/x",
        "https://:@fcm.googleapis.com/x",
        "https://fcm.googleapis.com:8443/x",
        "https://fcm.googleapis.com:port/x",
        "https://fcm.googleapis.com:/x",
        "https://fcm.googleapis.com./x",
        "https://fcm.googleapis.com/x\r\nX-Other: 1",
        "https://fcm.googleapis.com/x\n",
        "https://fcm.googleapis.com/x y",
        "https://fcm.googleapis.com/é",
        "https://web.push.apple。com/x",
        "https://ｗeb.push.apple.com/x",
        "https://.push.apple.com/x",
        "https://a..push.apple.com/x",
        "https://push.apple.com.evil.example/x",
        "https://fcm.googleapis.com.evil.example/x",
        "https://evilfcm.googleapis.com/x",
        "https://127.0.0.1/x",
        "https://2130706433/x",
        "https://0x7f.1/x",
        "https://[::1]/x",
        "https://[::ffff:10.0.0.5%25.push.apple.com]/x",
        "http://fcm.googleapis.com/x",
        "http://192.168.1.1/reboot",
        "//fcm.googleapis.com/x",
        "https:fcm.googleapis.com/x",
        "file:///etc/passwd",
        "",
    ],
)
def test_no_other_door_is_knocked_at(endpoint):
    assert push_endpoint(endpoint, ()) is None


def test_a_host_that_the_owner_trusts_is_pushed_to_and_no_other():
    assert push_endpoint("http://127.0.0.1:9000/push", TRUSTED)
    assert not push_endpoint("http://127.0.0.2:9000/push", TRUSTED)
    assert not push_endpoint("ftp://127.0.0.1/push", TRUSTED)
    assert push_endpoint("https://push.farm.example:8443/x", TRUSTED)
    assert not push_endpoint("https://push.farm.example/x", TRUSTED)


def where_the_client_goes(url):
    """Ask the HTTP client itself which host it would open a connection to."""
    sent = Session().prepare_request(Request("POST", url))
    where, _ = HTTPAdapter().build_connection_pool_key_attributes(sent, verify=True)
    return where["scheme"], where["host"], where["port"] or 443


NAMES = [name.lstrip(".") for name in SERVICES]
ODD = [*"./\\@:#?%&[];,=~^| \t\n\0é。", "%2f", "%5c", "%00", ":443", ":80", "a", "x-1"]
HOSTS = ["https://", "http://", "10.0.0.5", "127.0.0.1", "evil.example"]
PIECES = st.sampled_from([*NAMES, *HOSTS, *ODD])


@given(st.lists(PIECES, max_size=8).map("".join).map("https://".__add__))
@example(r"https://10.0.0.5\.push.apple.com/x")
def test_the_host_that_was_checked_is_the_host_that_is_called(url):
    checked = push_endpoint(url, TRUSTED)
    if checked is None:
        return
    try:
        called = where_the_client_goes(checked.url)
    except RequestException:
        return  # the client refuses it too: nothing is called
    assert called[:2] == (checked.scheme, checked.host)
    assert called[2] == checked.port
    assert checked.host in TRUSTED or checked.host.endswith(tuple(NAMES))


@given(st.sampled_from(NAMES), st.from_regex(r"[a-z0-9]{1,9}", fullmatch=True))
def test_every_plain_address_of_a_service_is_taken(name, label):
    url = f"https://{label}.{name}/{label}"
    below = push_endpoint(url, ())
    if "." + name not in SERVICES:
        assert below is None
        url = f"https://{name}/{label}"
    checked = push_endpoint(url, ())
    assert where_the_client_goes(url) == (checked.scheme, checked.host, checked.port)


def test_a_host_that_is_no_longer_trusted_is_not_called_again(app, service):
    Listener(service, "Mara")
    for trusted, calls in ((("127.0.0.1",), 1), ((), 0)):
        called = []

        def send(to, *_, called=called):
            called.append(to.endpoint)
            return 201

        now = replace(settings(), push_hosts=trusted)
        # A week on, when the browser's weekly test is due.
        Delivery(live.ask, now, send).turn(at(0), REAL_MS + 7 * 86_400_000)
        assert len(called) == calls
