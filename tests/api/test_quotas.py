"""Fair quotas: told in words, with when to come again, and nothing lost."""

import pytest

from server import sync
from server.api.rate import MOST_KEPT, Rate
from server.app import create_app
from server.config import Settings
from server.store.security_log import lines
from tests.sync.phones import HandClock, close_app, note

DAY_MS = 86_400_000


@pytest.fixture
def clock():
    return HandClock()


@pytest.fixture
def app(tmp_path, clock):
    app = create_app(
        Settings(data_dir=tmp_path, clock=clock, phone_events=10, phone_requests=60)
    )
    yield app
    close_app(app)


def notes(phone, first, count):
    return [note(phone.device, first + n, phone.person) for n in range(count)]


def stored(answer):
    assert answer.status_code == 200, answer.text
    return [row["st"] for row in answer.json["results"]]


def test_a_batch_beyond_the_day_is_refused_whole_and_fits_later(
    paired, clock, tmp_path
):
    assert stored(paired.push(*notes(paired, 1, 8))) == ["stored"] * 8
    late = notes(paired, 9, 4)
    answer = paired.push(*late)
    error = answer.json["error"]
    assert (answer.status_code, error["key"], error["limit"]) == (429, "over_quota", 10)
    assert "stays on it" in error["text"]
    assert "VATSIDE_PHONE_EVENTS" in error["text"]
    # Two of ten too many: a fifth of a day.
    wait_s = int(answer.headers["Retry-After"])
    assert wait_s == pytest.approx(86_400 / 5, abs=1)
    assert len(paired.get("/sync/pull").json["events"]) == 8
    clock.tick(wait_s * 1000)
    assert stored(paired.push(*late)) == ["stored"] * 4
    last = [row for row in lines(tmp_path) if row["what"] == "throttled"]
    assert [(row["device"], row["why"]) for row in last] == [
        (paired.device, "over_quota")
    ]


def test_what_is_here_already_costs_nothing(paired):
    batch = notes(paired, 1, 10)
    for wanted in ("stored", "duplicate", "duplicate"):
        assert stored(paired.push(*batch)) == [wanted] * 10
    assert paired.push(*notes(paired, 11, 1)).status_code == 429
    assert stored(paired.push(*batch)) == ["duplicate"] * 10


def test_what_needs_a_look_costs_as_much(paired):
    odd = [one | {"kind": "of_a_newer_app"} for one in notes(paired, 1, 10)]
    assert stored(paired.push(*odd)) == ["needs_look"] * 10
    assert paired.push(*notes(paired, 11, 1)).status_code == 429


def test_one_phone_s_day_is_not_another_s(paired, pair):
    other = pair("helper", "Bo")
    paired.push(*notes(paired, 1, 10))
    assert paired.push(*notes(paired, 11, 1)).status_code == 429
    assert stored(other.push(*notes(other, 1, 10))) == ["stored"] * 10


def test_size_is_counted_as_it_is_kept(app, paired, clock):
    sender = sync.Sender(paired.device, paired.person, removed=False)
    long = [one | {"data": {"text": "x" * 2000}} for one in notes(paired, 1, 3)]
    with app.app_context():
        quota = sync.Quota(events=100, size_bytes=5000)
        for entry in long[:2]:
            sync.push([entry], None, sender, clock.now_ms(), quota)
        with pytest.raises(sync.OverQuotaError):
            sync.push([long[2]], None, sender, clock.now_ms(), quota)
    assert len(paired.get("/sync/pull").json["events"]) == 2


def test_who_asks_too_often_is_told_to_wait_and_another_is_not(paired, pair):
    other = pair("helper", "Bo")
    answers = [paired.get("/time") for _ in range(70)]
    slowed = [one for one in answers if one.status_code == 429]
    assert 0 < len(slowed) <= 70 - 59
    error = slowed[0].json["error"]
    assert (error["key"], error["limit"]) == ("too_many_requests", 60)
    assert int(slowed[0].headers["Retry-After"]) >= 1
    assert other.get("/time").status_code == 200


def test_a_minute_s_worth_may_come_at_once_then_one_for_each_that_falls_free():
    rate = Rate(60)
    assert [rate.wait_s("a", 0.0) for _ in range(60)] == [0.0] * 60
    assert rate.wait_s("a", 0.0) == pytest.approx(1.0)
    assert rate.wait_s("b", 0.0) == 0.0
    assert rate.wait_s("a", 1.0) == 0.0
    assert rate.wait_s("a", 1.0) > 0.0


def test_askers_that_rest_are_forgotten():
    rate = Rate(60)
    for number in range(MOST_KEPT + 1):
        rate.wait_s(str(number), number * 2.0)
    assert len(rate._free_s) <= 3


def test_by_default_a_busy_day_is_far_below(tmp_path):
    usual = Settings(data_dir=tmp_path)
    # Eight makes of 200 entries, all on one phone, each with its recipe of 60 kB.
    assert usual.phone_events > 10 * 8 * 200
    assert usual.phone_mb * 1_000_000 > 10 * 8 * (200 * 600 + 60_000)
