"""Whose word is taken about where a request comes from."""

import itertools

import pytest

from server.api.peers import is_from, source_of
from server.app import create_app
from server.auth.limits import FREE
from server.config import LOOPBACK, NETWORKS, Settings, from_environment
from tests.api.conftest import HEADERS
from tests.sync.phones import close_app

TOLD = {"X-Forwarded-Proto": "https", "X-Forwarded-For": "203.0.113.9"}


@pytest.fixture
def start(tmp_path):
    made = []

    def start_one(**given):
        made.append(create_app(Settings(data_dir=tmp_path, **given)))
        return made[-1].test_client()

    yield start_one
    for app in made:
        close_app(app)


def is_taken_for_https(http, peer):
    answer = http.get(
        "/api/v1/health", headers=TOLD, environ_overrides={"REMOTE_ADDR": peer}
    )
    return "Strict-Transport-Security" in answer.headers


@pytest.mark.parametrize(
    ("given", "peer", "believed"),
    [
        ({}, "127.0.0.1", False),
        ({"proxy_hops": 1}, "127.0.0.1", True),
        ({"proxy_hops": 1}, "::1", True),
        ({"proxy_hops": 1}, "::ffff:127.0.0.1", True),
        ({"proxy_hops": 1}, "192.168.7.66", False),
        ({"proxy_hops": 1}, "", False),
        ({"proxy_hops": 1, "proxy_from": NETWORKS["private"]}, "192.168.7.66", True),
        ({"proxy_hops": 1, "proxy_from": NETWORKS["private"]}, "203.0.113.5", False),
    ],
)
def test_headers_count_only_from_a_proxy_that_may_speak_for_others(
    start, given, peer, believed
):
    assert is_taken_for_https(start(**given), peer) is believed


def guess(http, peer, told):
    body = {
        "code": "AAAA-AAAA",
        "device": "00000000-0000-4000-8000-000000000001",
        "device_name": "x",
    }
    return http.post(
        "/api/v1/pair",
        json=body,
        headers=HEADERS | {"X-Forwarded-For": told},
        environ_overrides={"REMOTE_ADDR": peer},
    ).status_code


def until_slowed(http, peers):
    for tries, (peer, told) in enumerate(peers):
        if guess(http, peer, told) == 429:
            return tries
        assert tries < FREE[True]
    raise AssertionError


def test_made_up_headers_of_a_direct_connection_buy_no_further_tries(start):
    made_up = (("192.168.7.66", f"203.0.113.{n}") for n in itertools.count())
    assert until_slowed(start(proxy_hops=1), made_up) == FREE[False]


def test_phones_behind_a_proxy_are_counted_each_for_itself(start):
    http = start(proxy_hops=1)
    one = (("127.0.0.1", "203.0.113.7") for _ in itertools.count())
    assert until_slowed(http, one) == FREE[False]
    assert guess(http, "127.0.0.1", "203.0.113.8") == 403


def test_addresses_of_one_house_are_one_source(start):
    house = ((f"2001:db8:1:2::{n:x}", "") for n in itertools.count(1))
    assert until_slowed(start(), house) == FREE[False]


def test_what_is_no_address_is_from_nowhere():
    assert not is_from("unix:", LOOPBACK)
    assert source_of("unix:") == source_of(None) == ""
    assert source_of("::ffff:192.0.2.7") == "192.0.2.7"


def test_the_setting_lists_addresses_networks_and_words():
    read = from_environment({"VATSIDE_PROXY_FROM": "192.0.2.7, 10.1.2.3/8,loopback"})
    assert is_from("192.0.2.7", read.proxy_from)
    assert is_from("10.200.0.1", read.proxy_from)
    assert is_from("127.0.0.9", read.proxy_from)
    assert not is_from("192.0.2.8", read.proxy_from)
    assert from_environment({}).proxy_from == LOOPBACK
    with pytest.raises(ValueError, match=r"VATSIDE_PROXY_FROM .* not 'everyone'"):
        from_environment({"VATSIDE_PROXY_FROM": "everyone"})
