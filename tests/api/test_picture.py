"""The first picture of a far viewer: small, open makes only, and who was heard."""

import gzip
import json

from tests.api.test_makes import began, opening
from tests.sync.phones import NOON_MS, a_uuid, note

MIN_MS = 60_000


def opened(phone, seq=1):
    make = a_uuid()
    phone.push(opening(phone, make, seq), began(phone, make, "receive", seq + 1))
    return make


def test_the_picture_holds_what_the_board_says_of_open_makes(pair, paired):
    make = opened(paired)
    over = opened(paired, 3)
    end = note(paired.device, 5, paired.person, kind="make_abandoned", make=over)
    told = paired.push(end | {"data": {"why": "milk refused"}}).json["results"]
    viewer = pair("viewer", "Vera")
    board = viewer.get("/makes").json
    assert len(board["makes"]) == 2, told
    picture = viewer.get("/makes?open=true").json
    (shown,) = picture["makes"]
    assert shown == next(row for row in board["makes"] if row["id"] == make)
    assert picture["now_ms"] == NOON_MS
    assert picture["server"]["now"] == NOON_MS
    assert "due" not in picture


def test_a_picture_asked_for_in_other_words_is_refused(paired):
    answer = paired.get("/makes?open=perhaps")
    assert answer.status_code == 422
    assert answer.json["error"]["key"] == "not_yes_or_no"


def test_the_picture_tells_when_each_other_phone_was_heard(pair, paired, clock):
    viewer = pair("viewer", "Vera")
    clock.tick(5 * MIN_MS)
    opened(paired)
    clock.tick(2 * MIN_MS)
    (phone,) = viewer.get("/makes?open=true").json["phones"]
    assert phone == {
        "device": paired.device,
        "name": "Pocket",
        "person": paired.person,
        "heard_ms": NOON_MS + 5 * MIN_MS,
    }


def test_a_phone_silent_for_a_day_or_removed_is_not_in_the_room(pair, paired, clock):
    owner = pair("owner", "Olive")
    clock.tick(25 * 60 * MIN_MS)
    helper = pair("helper", "Hal")
    phones = owner.get("/makes?open=true").json["phones"]
    assert [row["device"] for row in phones] == [helper.device]
    owner.delete(f"/devices/{helper.device}")
    assert owner.get("/makes?open=true").json["phones"] == []


def test_the_picture_of_one_make_fits_into_one_packet(pair, paired):
    opened(paired)
    viewer = pair("viewer", "Vera")
    body = viewer.get("/makes?open=true").get_data()
    # 1,460 bytes is what one Ethernet packet carries of TCP over IPv4.
    assert len(gzip.compress(body, 5)) < 1460, json.loads(body)
