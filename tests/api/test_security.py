"""What requests leave in the security log, and what they must not."""

import pytest

from server.store.security_log import NAME, lines
from tests.api.conftest import PairedPhone
from tests.api.test_makes import opening
from tests.sync.phones import NOON_MS, a_uuid


@pytest.fixture
def told(tmp_path):
    """Give a function that tells what was logged since it was last asked."""
    seen = [0]

    def news():
        found = list(lines(tmp_path))[seen[0] :]
        seen[0] += len(found)
        return [{name: row[name] for name in row if name != "at"} for row in found]

    return news


def test_pairing_is_told_by_ids_alone(pair, told):
    maker = pair("maker", "Maren Okello")
    (line,) = told()
    assert line.pop("source")
    wanted = {"what": "paired", "about": maker.device, "person": maker.person}
    assert line == wanted


def test_what_the_owner_changes_is_told_with_who_did_it(pair, told):
    owner, helper = pair("owner", "Olive Quern"), pair("helper", "Al Fay")
    told()
    make = a_uuid()
    owner.push(opening(owner, make))
    owner.post(f"/people/{helper.person}", {"role": "maker", "name": "Al Faye"})
    owner.post(f"/people/{helper.person}/pairing", {})
    added = owner.post("/people", {"name": "Nel Vance", "role": "viewer"}).json
    wanted = {"name": "Vet", "makes": [make], "until_ms": NOON_MS + 1000}
    link = owner.post("/links", wanted).json["id"]
    owner.delete(f"/links/{link}")
    owner.delete(f"/devices/{helper.device}")
    owner.post(f"/people/{helper.person}", {"active": False})
    owner.post(f"/people/{helper.person}", {"active": True})
    lines = told()
    assert [(row["what"], row["about"]) for row in lines] == [
        ("role_changed", helper.person),
        ("code_made", helper.person),
        ("person_added", added["id"]),
        ("link_made", link),
        ("link_taken_back", link),
        ("phone_removed", helper.device),
        ("person_left", helper.person),
        ("person_came_back", helper.person),
    ]
    assert {(row["by"], row["device"]) for row in lines} == {
        (owner.person, owner.device)
    }
    assert lines[0]["role"] == "maker"


def test_a_refused_change_is_not_told_as_made(pair, told):
    owner = pair("owner")
    told()
    assert owner.post(f"/people/{owner.person}", {"role": "maker"}).status_code == 409
    assert owner.delete(f"/devices/{owner.device}").status_code == 409
    assert told() == []


def test_strangers_who_try_are_told_without_what_they_tried(client, told, tmp_path):
    stranger = PairedPhone(client, a_uuid(), "")
    ask = {"code": "K7QM3XHD", "device": stranger.device, "device_name": "Pocket"}
    for _ in range(7):
        stranger.post("/pair", ask)
    stranger.post("/guest", {"token": "t" * 43})
    stranger.post("/pair", ask, headers={"Origin": "https://evil.example"})
    client.get("/api/v1/health", headers={"Host": "evil.example"})
    whats = [row["what"] for row in told()]
    assert whats == [
        *["pairing_failed"] * 5,
        *["throttled"] * 2,
        "link_failed",
        "origin_refused",
        "host_refused",
    ]
    text = (tmp_path / NAME).read_text()
    for secret in ("K7QM", "evil", "127.0.0.1", "Pocket", "ttt", stranger.device):
        assert secret not in text


def test_no_name_code_token_or_address_is_ever_written(pair, told, tmp_path):
    owner = pair("owner", "Olive Quern")
    made = owner.post(f"/people/{owner.person}/pairing", {}).json
    text = (tmp_path / NAME).read_text()
    cookie = owner.http.get_cookie("vatside").value
    for secret in (
        *("Olive", "Quern", "Pocket", "127.0.0.1"),
        *(made["code"], made["code"].replace("-", ""), cookie),
        made["url"].rpartition("/")[2],
    ):
        assert secret not in text
