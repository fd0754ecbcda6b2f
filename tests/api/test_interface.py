import gzip
import json
import re
from dataclasses import replace

import pytest

from server.api.guard import GUEST, PREFIX
from tests.core import builders

CHANGING = {"POST", "PUT", "PATCH", "DELETE"}
OPEN = {"/health", "/pair", "/openapi.json"}


def routes(app):
    """Give each path of the interface with its methods, as OpenAPI writes it."""
    found = {}
    for rule in app.url_map.iter_rules():
        if rule.rule.startswith(PREFIX) and rule.rule != f"{PREFIX}/openapi.json":
            path = re.sub(r"<(?:[^:<>]+:)?([^<>]+)>", r"{\1}", rule.rule)
            found.setdefault(path, set()).update(rule.methods - {"HEAD", "OPTIONS"})
    return found


def test_the_document_lists_every_route_and_method(app, client):
    document = client.get(f"{PREFIX}/openapi.json").json
    listed = {
        path: {name.upper() for name in item} - {"PARAMETERS"}
        for path, item in document["paths"].items()
    }
    assert listed == routes(app)
    for path, item in document["paths"].items():
        for method in set(item) - {"parameters"}:
            assert item[method]["summary"], f"{method} {path} is not described"


def test_every_route_but_three_asks_for_a_paired_phone(app, client):
    headers = {"X-Vatside": "1", "Content-Type": "application/json"}
    for path, methods in routes(app).items():
        if path.removeprefix(PREFIX) in OPEN:
            continue
        path = re.sub(r"\{[^}]*\}", "1", path)
        for method in methods:
            if (method, path) == ("POST", PREFIX + GUEST):
                continue  # where a guest gives the secret of a link
            answer = client.open(path, method=method, headers=headers, data="{}")
            assert answer.status_code == 401, f"{method} {path}"
            is_guests = path.startswith(PREFIX + GUEST)
            key = "no_guest" if is_guests else "not_paired"
            assert answer.json["error"]["key"] == key


def test_every_changing_route_asks_for_the_pages_own_header(app, paired):
    for path, methods in routes(app).items():
        path = re.sub(r"\{[^}]*\}", "1", path)
        for method in methods & CHANGING:
            answer = paired.http.open(path, method=method, data="{}")
            assert answer.status_code == 403, f"{method} {path}"
            assert answer.json["error"]["key"] == "header_missing"


def test_health_tells_no_more_than_its_version_its_room_and_its_certificate(client):
    answer = client.get(f"{PREFIX}/health")
    told = {"ok", "version", "disk", "certificate", "secure_url"}
    assert set(answer.json) == told
    assert answer.json["ok"] is True
    assert answer.json["certificate"] is None
    assert answer.json["secure_url"] is None


@pytest.mark.parametrize(
    ("public_url", "secure_url"),
    [
        ("https://vat.creamery.example", "https://vat.creamery.example/setup"),
        ("http://vat.home.arpa:8000", None),
    ],
)
def test_a_phone_on_plain_http_is_told_of_a_secure_address(
    app, client, public_url, secure_url
):
    own = app.extensions["vatside"]
    app.extensions["vatside"] = replace(own, public_url=public_url)
    assert client.get(f"{PREFIX}/health").json["secure_url"] == secure_url


@pytest.fixture
def large(paired):
    paired.post("/recipes", builders.recipe() | {"id": "own-wheel"})
    return "/recipes/own-wheel"


def test_large_answers_are_packed_for_those_who_take_it(paired, large):
    plain = paired.get(large)
    packed = paired.get(large, headers={"Accept-Encoding": "gzip, br"})
    assert "Content-Encoding" not in plain.headers
    assert packed.headers["Content-Encoding"] == "gzip"
    assert int(packed.headers["Content-Length"]) == len(packed.data) < len(plain.data)
    assert json.loads(gzip.decompress(packed.data)) == plain.json
    assert "Accept-Encoding" in packed.headers["Vary"]


def test_small_answers_and_streams_go_as_they_are(paired):
    headers = {"Accept-Encoding": "gzip"}
    assert "Content-Encoding" not in paired.get("/time", headers=headers).headers
    stream = paired.get("/live", headers=headers)
    assert "Content-Encoding" not in stream.headers
    stream.close()
