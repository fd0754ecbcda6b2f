"""Which names are answered to, and which address phones are handed."""

import socket

import pytest

from server.api import hosts
from server.api.hosts import Hosts
from server.app import create_app
from server.config import Settings, real_now_ms
from tests.api.conftest import HEADERS
from tests.sync.phones import close_app

HEALTH = "/api/v1/health"


@pytest.fixture
def start(tmp_path, monkeypatch):
    """Give a function that starts a server on a box of invented names."""
    box = {"floorbox", "floorbox.local", "192.168.7.20", "fd00::20"}
    monkeypatch.setattr(hosts, "own_names", lambda: box)
    monkeypatch.setattr(hosts, "LOOK_AGAIN_S", 0.0)
    made = []

    def start_one(**given):
        made.append(create_app(Settings(data_dir=tmp_path, **given)))
        made[-1].box = box
        return made[-1]

    yield start_one
    for app in made:
        close_app(app)


def asked(app, host):
    return app.test_client().get(HEALTH, headers={"Host": host})


@pytest.mark.parametrize(
    "host",
    [
        "localhost",
        "LocalHost:8000",
        "127.0.0.1:8460",
        "127.0.0.2",
        "[::1]:8000",
        "floorbox",
        "FloorBox.local.:8000",
        "192.168.7.20:8000",
        "[fd00::20]",
    ],
)
def test_without_any_setting_the_boxs_own_names_are_answered_to(start, host):
    assert asked(start(), host).status_code == 200


@pytest.mark.parametrize(
    "host",
    [
        "evil.example",
        "localhost.evil.example",
        "192.168.7.21",
        "floorbox.evil.example",
        "floorbox@evil.example",
        "evil.example:8000",
        "[::1",
        "a b",
        "",
    ],
)
@pytest.mark.parametrize("path", ["/", HEALTH, "/api/v1/me", "/core.json", "/none"])
def test_another_name_is_refused_in_words_that_name_the_settings(start, host, path):
    answer = start().test_client().get(path, headers={"Host": host})
    assert answer.status_code == 421
    error = answer.json["error"]
    assert (error["key"], error["field"]) == ("unknown_host", "Host")
    assert "VATSIDE_HOSTS" in error["text"]
    assert "VATSIDE_URL" in error["text"]


def test_named_hosts_the_public_address_and_what_a_source_tells_are_answered_to(start):
    app = start(
        hosts=("vat.example", ".farm.example"), public_url="https://floor.example:8443"
    )
    app.extensions["vatside_hosts"].add_source(lambda: ["Vatside.Home.arpa"])
    for host in (
        "vat.example",
        "a.farm.example",
        "floor.example",
        "vatside.home.arpa:8443",
        "floorbox.local",
    ):
        assert asked(app, host).status_code == 200, host
    for host in ("farm.example.evil.example", "notvat.example", "xfarm.example"):
        assert asked(app, host).status_code == 421, host


def test_a_box_that_was_given_a_new_address_answers_to_it(start):
    app = start()
    assert asked(app, "192.168.7.99").status_code == 421
    app.box.add("192.168.7.99")
    assert asked(app, "192.168.7.99").status_code == 200


def test_names_are_not_looked_up_at_every_bad_request(tmp_path, monkeypatch):
    looked = []
    kept = Hosts(Settings(data_dir=tmp_path))
    monkeypatch.setattr(kept, "_sources", [lambda: looked.append(1) or ["floorbox"]])
    for _ in range(20):
        assert not kept.answers_to("evil.example")
        assert kept.answers_to("floorbox")
    assert looked == [1]


def test_this_very_machine_knows_its_own_name():
    name = socket.gethostname().lower()
    assert {name, name.split(".")[0] + ".local"} <= hosts.own_names()


def code_url(app, host, **headers):
    """Return the address in the picture that pairs a phone, asked for by a name."""
    with app.app_context():
        from server import auth

        code = auth.owner_code(real_now_ms(), 1, even_if_paired=True).code
    http = app.test_client()
    base = f"http://{host}"
    body = {
        "code": code,
        "device": "00000000-0000-4000-8000-000000000001",
        "device_name": "Desk",
        "person_name": "Olive",
    }
    paired = http.post("/api/v1/pair", json=body, headers=HEADERS, base_url=base)
    assert paired.status_code == 200, paired.text
    path = f"/api/v1/people/{paired.json['person']['id']}/pairing"
    return http.post(path, json={}, headers=HEADERS | headers, base_url=base)


def test_a_pairing_address_is_the_boxs_own_or_the_one_that_is_set(start):
    app = start()
    told = code_url(app, "192.168.7.20:8000").json["url"]
    assert told.startswith("http://192.168.7.20:8000/#/pair/")
    app = start(public_url="https://floor.example")
    told = code_url(app, "192.168.7.20:8000").json["url"]
    assert told.startswith("https://floor.example/#/pair/")


def test_no_request_can_put_another_name_into_a_pairing_address(start):
    app = start()
    for odd in ({"Host": "evil.example"}, {"X-Forwarded-Host": "evil.example"}):
        answer = code_url(app, "192.168.7.20", **odd)
        assert answer.status_code in (200, 421)
        assert "evil.example/#" not in answer.text
