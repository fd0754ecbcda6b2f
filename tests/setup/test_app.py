import plistlib
from pathlib import Path

import pytest

from server.setup import create_setup_app
from server.shapes.setup import SetupFacts, fingerprint

# Any bytes will do: the app passes the certificate on without reading it.
DER = bytes(range(256)) * 2
STATIC = Path(__file__).resolve().parents[2] / "static"
URLS = (
    "https://vat.home.arpa:8443",
    "https://192.168.7.20:8443",
    "https://[fd00::7]:8443",
)


@pytest.fixture
def facts():
    return SetupFacts(DER, fingerprint(DER), URLS, STATIC)


@pytest.fixture
def http(facts):
    return create_setup_app(lambda: facts).test_client()


def directives(answer):
    parts = answer.headers["Content-Security-Policy"].split("; ")
    return {part.split(" ")[0]: part.split(" ")[1:] for part in parts}


def test_the_certificate_goes_out_as_it_is(http):
    answer = http.get("/root.crt")
    assert answer.content_type == "application/x-x509-ca-cert"
    assert answer.data == DER


def test_the_profile_holds_the_certificate(http):
    answer = http.get("/root.mobileconfig")
    assert answer.content_type == "application/x-apple-aspen-config"
    profile = plistlib.loads(answer.data)
    assert profile["PayloadType"] == "Configuration"
    [root] = profile["PayloadContent"]
    assert root["PayloadType"] == "com.apple.security.root"
    assert root["PayloadContent"] == DER
    assert profile["PayloadUUID"] != root["PayloadUUID"]


def test_the_profile_is_the_same_each_time_and_another_for_another_root(http, facts):
    other = SetupFacts(DER[1:], fingerprint(DER[1:]), URLS, STATIC)
    others = create_setup_app(lambda: other).test_client()
    mine = [http.get("/root.mobileconfig").data for _ in range(2)]
    assert mine[0] == mine[1]
    ids = [
        plistlib.loads(data)["PayloadUUID"]
        for data in (mine[0], others.get("/root.mobileconfig").data)
    ]
    assert ids[0] != ids[1]


def test_the_facts_name_fingerprint_addresses_and_time(http, monkeypatch):
    monkeypatch.setattr("server.setup.real_now_ms", lambda: 1_800_000_000_123)
    assert http.get("/facts.json").json == {
        "fingerprint": fingerprint(DER),
        "secure_urls": list(URLS),
        "now_ms": 1_800_000_000_123,
    }


@pytest.mark.parametrize(
    "path",
    [
        "/api/v1/health",
        "/setup/../index.html",
        "/setup/..%2Findex.html",
        "/setup/.hidden.svg",
        "/setup/none.js",
        "/setup/notes.txt",
        "/js/app.js",
        "/core.json",
        "/js//app.js",
    ],
)
def test_every_other_path_leads_to_the_page(http, path):
    answer = http.get(path, follow_redirects=False)
    assert (answer.status_code, answer.headers["Location"]) == (302, "/")


@pytest.mark.parametrize(
    "path", ["/", "/else//where", "/root.crt/", "/facts.json", "/root.crt"]
)
def test_the_name_asked_for_is_not_repeated(http, path):
    answer = http.get(path, headers={"Host": "evil.example"})
    assert "evil" not in str(answer.headers)
    assert b"evil" not in answer.data


def test_nothing_can_be_sent_to_it(http):
    assert http.post("/", data={"code": "x"}).status_code == 405


@pytest.mark.parametrize("path", ["/", "/elsewhere", "/root.crt", "/facts.json"])
def test_every_answer_is_guarded(http, path):
    answer = http.get(path)
    assert answer.headers["X-Content-Type-Options"] == "nosniff"
    assert answer.headers["Referrer-Policy"] == "no-referrer"
    assert answer.headers["Cache-Control"] == "no-store"
    policy = directives(answer)
    assert policy["default-src"] == ["'self'"]
    assert policy["trusted-types"] == ["'none'"]
    for name in ("object-src", "base-uri", "form-action", "frame-ancestors"):
        assert policy[name] == ["'none'"]


def test_the_page_may_ask_this_servers_own_names_and_no_others(http):
    assert directives(http.get("/"))["connect-src"] == [
        "'self'",
        "https://vat.home.arpa:8443",
        "http://vat.home.arpa:*",
        "https://192.168.7.20:8443",
        "http://192.168.7.20:*",
    ]


def test_other_names_of_the_server_may_be_asked_for_the_probe_alone(http):
    policy = "Cross-Origin-Resource-Policy"
    assert http.get("/setup/ok.svg").headers[policy] == "cross-origin"
    assert http.get("/").headers[policy] == "same-origin"


def test_a_fingerprint_of_another_certificate_is_refused():
    with pytest.raises(ValueError, match="root_sha256"):
        SetupFacts(DER, fingerprint(b"other"), URLS, STATIC)


def test_a_plain_address_is_refused():
    with pytest.raises(ValueError, match="https, not 'http://vat'"):
        SetupFacts(DER, fingerprint(DER), ("http://vat",), STATIC)
