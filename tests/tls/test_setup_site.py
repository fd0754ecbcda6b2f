"""Which addresses people are told, and where plain http leads."""

import pytest

from server.app import create_app
from server.cli import setup_site
from server.cli.setup_site import Site, create_way_on
from server.config import Settings
from server.tls import Served, lan
from server.tls.lan import lan_addresses, leads_here
from server.tls.refused import TlsError
from server.tls.renewal import tend
from tests.sync.phones import close_app
from tests.tls.conftest import LAN, days


@pytest.fixture
def network(monkeypatch):
    """Let this box have one address; return the names that lead to it."""
    found = []
    monkeypatch.setattr(setup_site, "lan_addresses", lambda: LAN)
    monkeypatch.setattr(setup_site, "leads_here", lambda names, addresses: found)
    return found


@pytest.fixture
def site(folder, network):
    """Give a function that returns the site of a room."""

    def make(host="0.0.0.0", **given):
        settings = Settings(data_dir=folder.path.parent, **given)
        kept = Served(folder.leaf, folder.leaf, folder)
        return Site(settings, kept, host, 8000, 8443)

    return make


def test_a_name_goes_first_once_the_network_knows_it(site, network):
    assert site().secure_urls() == [
        "https://192.168.1.20:8443",
        "https://vatbox.local:8443",
        "https://vatside.home.arpa:8443",
    ]
    network.append("vatside.home.arpa")
    assert site().secure_urls() == [
        "https://vatside.home.arpa:8443",
        "https://192.168.1.20:8443",
        "https://vatbox.local:8443",
    ]


def test_the_address_that_the_owner_set_goes_before_all(site):
    told = site(public_url="https://floor.vatbox.local:8443").secure_urls()
    assert told[0] == "https://floor.vatbox.local:8443"
    assert "https://192.168.1.20:8443" in told


def test_a_server_at_one_address_tells_that_one_alone(site):
    assert site("127.0.0.1").secure_urls() == ["https://127.0.0.1:8443"]
    assert site("127.0.0.1").entrance().setup == "http://127.0.0.1:8000"


def test_the_setup_page_is_told_by_address_for_names_may_not_be_known(site):
    entrance = site().entrance()
    assert entrance.setup == "http://192.168.1.20:8000"
    assert entrance.root_sha256 == site().facts().root_sha256


def test_a_new_address_is_told_as_soon_as_the_certificate_holds_it(
    site, folder, monkeypatch
):
    running = site()
    moved = ["192.168.1.33"]
    monkeypatch.setattr(setup_site, "lan_addresses", lambda: moved)
    assert "https://192.168.1.33:8443" not in running.secure_urls()
    tend(folder, moved, days(1))
    assert running.secure_urls()[0] == "https://192.168.1.33:8443"
    assert running.facts().secure_urls == tuple(running.secure_urls())


def test_a_browser_is_never_told_to_keep_off_the_setup_pages_plain_http(tmp_path):
    for port, told in ((8000, "max-age=0"), (None, "max-age=31536000")):
        app = create_app(Settings(data_dir=tmp_path, setup_port=port))
        answer = app.test_client().get("/", base_url="https://localhost")
        assert answer.headers["Strict-Transport-Security"] == told
        close_app(app)


def test_files_in_the_middle_of_a_change_leave_the_page_with_what_was_told(
    site, folder
):
    running = site()
    before = running.facts()
    folder.root.unlink()
    assert running.facts() == before
    with pytest.raises(TlsError, match="vatside tls"):
        site().facts()


def test_an_owners_certificate_needs_no_setup_page_and_plain_http_leads_on(
    folder, network
):
    settings = Settings(data_dir=folder.path.parent)
    kept = Served(folder.leaf, folder.leaf, None)
    own = Site(settings, kept, "0.0.0.0", 80, 443)
    assert own.entrance().setup == ""
    assert own.secure_urls()[0] == "https://vatbox.local"
    answer = own.app().test_client().get("/#/now", base_url="http://vat.example")
    assert answer.headers["Location"] == "https://vat.example"


def test_plain_http_leads_to_the_address_that_the_owner_set():
    http = create_way_on("https://floor.example", 8443).test_client()
    for path in ("/", "/js/app.js", "/api/v1/me"):
        answer = http.get(path, base_url="http://evil.example")
        assert answer.status_code == 302
        assert answer.headers["Location"] == "https://floor.example"
    http = create_way_on("", 8443).test_client()
    answer = http.get("/", base_url="http://[fd00::12]:8000")
    assert answer.headers["Location"] == "https://[fd00::12]:8443"


def test_a_name_leads_here_when_it_resolves_to_an_address_of_this_box():
    assert leads_here(["localhost"], ["127.0.0.1"]) == ["localhost"]
    assert leads_here(["localhost"], ["192.168.1.20"]) == []


def test_a_network_that_does_not_answer_holds_no_start_up(monkeypatch):
    said_one = "print('a.local', '10.0.0.5', flush=True); import time; time.sleep(60)"
    monkeypatch.setattr(lan, "_RESOLVE", said_one)
    monkeypatch.setattr(lan, "RESOLVE_S", 0.5)
    assert leads_here(["a.local", "b.local"], ["10.0.0.5"]) == ["a.local"]


def test_the_addresses_of_this_box_hold_no_loopback():
    assert [one for one in lan_addresses() if one.startswith("127.")] == []


def test_a_room_without_a_name_service_waits_for_none(monkeypatch):
    def hangs():
        pytest.fail("the host's own name was looked up")

    monkeypatch.setattr(lan, "_of_host_name", hangs)
    monkeypatch.setattr(lan, "_routed", list)
    found = ["127.0.0.1", "192.168.1.20", "10.8.0.1", "192.168.1.20"]
    monkeypatch.setattr(lan, "_of_interfaces", lambda: found)
    assert lan_addresses() == ["192.168.1.20", "10.8.0.1"]
    monkeypatch.setattr(lan, "_of_interfaces", lambda: ["127.0.0.1"])
    monkeypatch.setattr(lan, "_of_host_name", lambda: ["127.0.1.1", "10.0.0.5"])
    assert lan_addresses() == ["10.0.0.5"]
