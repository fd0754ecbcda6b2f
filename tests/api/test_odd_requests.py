"""Requests that no phone of ours sends: each is refused in words, none trips."""

import logging
import re

import pytest
import schemathesis
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from server.api import RESOURCES
from server.api.body import Blueprint
from tests.api.conftest import HEADERS
from tests.core import builders

V1 = "/api/v1"
SMALL = settings(
    max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture]
)


@pytest.fixture(autouse=True)
def nothing_is_logged(caplog):
    yield
    loud = [row for row in caplog.records if row.levelno >= logging.ERROR]
    assert [row.getMessage() for row in loud] == []


def refused(answer, status, key):
    assert answer.status_code == status, answer.text
    assert set(answer.json["error"]) == {"key", "text", "field", "limit"}
    assert answer.json["error"]["key"] == key


DEEP = {
    "lists": b"[" * 1000 + b"]" * 1000,
    "mappings": b'{"code":' * 1000 + b"1" + b"}" * 1000,
    "unclosed": b"[" * 100_000,
    "below the limit of Python": b"[" * 101 + b"]" * 101,
}


@pytest.mark.parametrize("path", ["/pair", "/guest"])
@pytest.mark.parametrize("body", DEEP.values(), ids=DEEP.keys())
def test_a_body_nested_too_deeply_is_not_json_here(client, path, body):
    refused(client.post(V1 + path, data=body, headers=HEADERS), 400, "not_json")


def test_a_number_of_thousands_of_digits_is_refused_by_its_field(client, pair):
    digits = b"9" * 5000
    answer = client.post(
        f"{V1}/pair", data=b'{"code":' + digits + b"}", headers=HEADERS
    )
    refused(answer, 422, "too_long")
    settings_path = "/alarms/settings"
    body = b'{"escalate_min":' + digits + b"}"
    refused(pair("owner").post(settings_path, data=body), 422, "not_whole")


@pytest.mark.parametrize("origin", ["http://[::1", "http://[", "http://]", "null", ""])
def test_an_origin_that_is_no_address_is_another_site(client, origin):
    headers = HEADERS | {"Origin": origin}
    refused(client.post(f"{V1}/pair", data="{}", headers=headers), 403, "other_origin")


@pytest.mark.parametrize(
    "name",
    ["a" * 3000 + ".js", "a/" * 3000 + "b.js", "a%00.js", "%ff.js", ".js", "..%2fa.js"],
)
def test_a_name_that_no_file_can_have_is_not_found(client, name):
    refused(client.get(f"/js/{name}"), 404, "not_found")


@pytest.mark.parametrize("spoilt", ["\0", "\ud800", "a\udfffb"])
def test_a_recipe_with_text_that_no_database_takes_is_refused_by_its_field(
    paired, spoilt
):
    recipe = builders.recipe() | {"id": "own-wheel"}
    for changed, field in (
        ({"id": f"own{spoilt}"}, "id"),
        ({"about": {"en": "Ours", "es": f"La{spoilt}"}}, "about.es"),
        ({"steps": [recipe["steps"][0] | {"x": [spoilt]}]}, "steps.0.x.0"),
    ):
        answer = paired.post("/recipes", recipe | changed)
        refused(answer, 422, "unsound_recipe")
        assert answer.json["problems"][0]["field"] == field
        assert answer.json["problems"][0]["key"] == "not_text"
    refused(paired.get("/recipes/own-wheel"), 404, "unknown_recipe")


@pytest.mark.parametrize(
    "path",
    [
        "/recipes/a%00",
        "/makes/%00/view",
        "/makes/a%00b/record",
        "/guest/makes/%00/view",
    ],
)
def test_a_nul_in_a_path_is_no_question_for_a_database(paired, path):
    refused(paired.get(path), 422, "not_text")


def test_every_resource_reads_its_body_in_the_one_way():
    assert all(isinstance(resource.blp, Blueprint) for resource in RESOURCES)


def test_a_body_may_be_packed_on_every_path(client):
    headers = HEADERS | {"Content-Encoding": "gzip"}
    refused(client.post(f"{V1}/pair", data=b"{}", headers=headers), 400, "not_gzip")


PATHS = [
    "/",
    "/js/",
    "/core.json",
    "/sw.js",
    V1,
    *(
        f"{V1}/{one}"
        for one in (
            "pair",
            "guest",
            "sync/push",
            "sync/pull",
            "live",
            "makes",
            "recipes",
            "links",
            "people",
            "me",
            "health",
            "openapi.json",
            "needs-look/1/settle",
            "push",
        )
    ),
]
METHODS = ["GET", "POST", "PUT", "PATCH", "DELETE", "HEAD", "OPTIONS", "TRACE", "A"]
LATIN = st.characters(codec="latin-1", exclude_characters="\r\n")
VALUES = st.text(LATIN, max_size=40) | st.sampled_from(
    ["application/json", "1", "-1", "gzip", "gzip;q=nan", "bytes=9-0", "W/\"", "[::1",
     "http://[::1", "9" * 5000, "vatside=x", "a=b;q=1e999", "Thu, 99 Foo 0000"]
)  # fmt: skip
NAMES = st.sampled_from(
    ["CONTENT_TYPE", "CONTENT_LENGTH", *(f"HTTP_{one}" for one in (
        "HOST", "ORIGIN", "COOKIE", "X_VATSIDE", "CONTENT_ENCODING", "ACCEPT_ENCODING",
        "ACCEPT", "RANGE", "IF_NONE_MATCH", "IF_MODIFIED_SINCE", "LAST_EVENT_ID",
        "SEC_FETCH_SITE", "X_FORWARDED_FOR", "X_FORWARDED_PROTO", "X_FORWARDED_HOST",
        "X_FORWARDED_PORT", "AUTHORIZATION", "TRANSFER_ENCODING", "EXPECT",
    ))]
)  # fmt: skip
OURS = {"CONTENT_TYPE": "application/json", "HTTP_X_VATSIDE": "1"}


@SMALL
@given(
    method=st.sampled_from(METHODS),
    path=st.sampled_from(PATHS) | st.text(LATIN, max_size=30).map("/".__add__),
    tail=st.text(LATIN, max_size=12),
    query=st.text(LATIN, max_size=20),
    odd=st.dictionaries(NAMES, VALUES, max_size=5),
    body=st.binary(max_size=60) | st.sampled_from([b"{}", b"[]", *DEEP.values()]),
    is_ours=st.booleans(),
)
def test_no_bytes_of_a_stranger_make_the_server_fail(
    client, method, path, tail, query, odd, body, is_ours
):
    given = (OURS if is_ours else {}) | {"CONTENT_LENGTH": str(len(body))} | odd
    answer = client.open(
        path="/",
        method=method,
        input_stream=None,
        data=body,
        environ_overrides={"PATH_INFO": path + tail, "QUERY_STRING": query, **given},
    )
    assert answer.status_code < 500, (answer.status_code, answer.text)
    if answer.status_code >= 400 and method != "HEAD":
        assert set(answer.json) >= {"error"}
    answer.close()


def test_what_the_document_allows_never_fails_whatever_the_values(app, pair):
    """Ask every documented path with what its own description makes up."""
    owner = pair("owner")
    cookies = {"vatside": owner.http.get_cookie("vatside").value}
    described = schemathesis.openapi.from_wsgi(f"{V1}/openapi.json", app)
    for found in described.get_all_operations():
        operation = found.ok()

        @settings(max_examples=4, suppress_health_check=list(HealthCheck))
        @given(case=operation.as_strategy())
        def ask(case):
            answer = case.call(headers=HEADERS, cookies=cookies)
            assert answer.status_code != 500, (case.path, answer.text)

        if not re.search("/live$", operation.path):
            ask()
