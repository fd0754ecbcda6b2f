"""A disk that takes nothing: phones are told so, and what is known is still shown."""

import pytest

from tests.store.full_disk import disk_that_is
from tests.sync.phones import note

WORDS = {"full": "disk is full", "read_only": "takes no writing"}


def batch(phone, first):
    """Return more than fits into what is left of the database's pages."""
    return [
        note(phone.device, seq, phone.person, text="warm " * 40)
        for seq in range(first, first + 20)
    ]


@pytest.mark.parametrize("state", ["full", "read_only"])
def test_a_push_is_answered_with_its_own_key_and_nothing_is_lost(app, paired, state):
    kept, waits = batch(paired, 1), batch(paired, 21)
    assert paired.push(*kept).status_code == 200
    with app.app_context(), disk_that_is(state):
        refused = paired.push(*waits)
        assert refused.status_code == 507
        error = refused.json["error"]
        assert error["key"] == {"full": "disk_full"}.get(state, "disk_read_only")
        assert WORDS[state] in error["text"]
        assert int(refused.headers["Retry-After"]) > 2
    answer = paired.push(*waits)
    assert [row["st"] for row in answer.json["results"]] == ["stored"] * 20
    epoch = answer.json["epoch"]
    page = paired.get(f"/sync/pull?epoch={epoch}&after=0&limit=99").json
    ids = [event["id"] for event in (*kept, *waits)]
    assert [row["event"]["id"] for row in page["events"]] == ids


@pytest.mark.parametrize("state", ["full", "read_only"])
def test_what_is_known_is_still_read(app, paired, clock, state):
    epoch = paired.push(*batch(paired, 1)).json["epoch"]
    with app.app_context(), disk_that_is(state):
        paired.push(*batch(paired, 21))
        clock.tick(3_600_000)  # long enough to be written down as seen
        for path in (
            "/me",
            "/makes",
            "/alarms",
            "/push",
            "/recipes",
            f"/sync/pull?epoch={epoch}&after=0&limit=9",
        ):
            answer = paired.get(path)
            assert answer.status_code == 200, (path, answer.text)


@pytest.mark.parametrize("state", ["full", "read_only"])
def test_health_says_so_until_a_write_goes_well(app, client, paired, state):
    epoch = paired.push(*batch(paired, 1)).json["epoch"]

    def told():
        page = paired.get(f"/sync/pull?epoch={epoch}&after=0&limit=9").json
        health = client.get("/api/v1/health")
        assert health.status_code == 200
        assert page["disk"] == health.json["disk"]["state"]
        return health.json

    assert told()["ok"]
    with app.app_context(), disk_that_is(state):
        paired.push(*batch(paired, 21))
        health = told()
        assert (health["ok"], health["disk"]["state"]) == (False, state)
        assert WORDS[state] in health["disk"]["text"]
        assert health["disk"]["free_bytes"] > 0
    paired.push(*batch(paired, 21))
    assert told()["ok"]
