"""What is wrong is said in words that tell what to do."""

from dataclasses import replace

import pytest

from server.config import Settings
from server.tls import served, state
from server.tls.findings import room_findings
from server.tls.made import ends_ms
from server.tls.refused import TlsError
from server.tls.renewal import DAY_MS, Asked, tend
from tests.tls.conftest import LAN, NOW_MS, days


def keys(folder, lan=LAN, at_ms=NOW_MS):
    return [one.key for one in room_findings(folder, lan, at_ms)]


def text(folder, key, lan=LAN, at_ms=NOW_MS):
    (found,) = (one for one in room_findings(folder, lan, at_ms) if one.key == key)
    return found.text


def test_a_room_that_is_well_has_nothing_to_see_to(folder):
    assert keys(folder) == []
    assert keys(folder, at_ms=days(300)) == []


def test_the_warning_begins_three_weeks_before_the_end(folder):
    end_ms = ends_ms(folder.read_leaf())
    assert keys(folder, at_ms=end_ms - 21 * DAY_MS - 1000) == []
    assert keys(folder, at_ms=end_ms - 21 * DAY_MS) == ["ends_soon"]
    assert keys(folder, at_ms=end_ms) == ["ended"]
    assert "vatside tls" in text(folder, "ended", at_ms=end_ms)


def test_a_root_key_that_is_away_is_called_for_two_months_ahead(folder):
    folder.root_key.unlink()
    end_ms = ends_ms(folder.read_leaf())
    assert keys(folder, at_ms=end_ms - 61 * DAY_MS) == []
    soon_ms = end_ms - 60 * DAY_MS
    assert keys(folder, at_ms=soon_ms) == ["root_key_away"]
    assert "vatside tls --root-key FILE" in text(folder, "root_key_away", at_ms=soon_ms)
    assert keys(folder, at_ms=end_ms - DAY_MS) == ["root_key_away"]
    assert "vatside tls --root-key FILE" in text(folder, "ended", at_ms=end_ms)


def test_an_address_that_moved_asks_for_a_fixed_one_for_two_weeks(folder):
    tend(folder, ["192.168.1.33"], days(1))
    said = text(folder, "address_changed", ["192.168.1.33"], days(2))
    assert "192.168.1.20 to 192.168.1.33" in said
    assert "fixed address in the router" in said
    assert keys(folder, ["192.168.1.33"], days(16)) == []


def test_a_second_network_beside_the_first_is_no_change(folder):
    tend(folder, [*LAN, "10.8.0.1"], days(1))
    assert keys(folder, [*LAN, "10.8.0.1"], days(1)) == []


def test_an_address_that_the_certificate_lacks_asks_for_the_absent_key(folder):
    folder.root_key.unlink()
    tend(folder, ["192.168.1.33"], days(1))
    said = text(folder, "address_lacking", ["192.168.1.33"], days(1))
    assert "192.168.1.33" in said
    assert "--root-key FILE" in said
    assert "old address back" in said


def test_what_the_root_may_not_vouch_for_is_named(folder):
    tend(folder, LAN, NOW_MS, Asked(names=("cheese.example",)))
    assert "cheese.example" in text(folder, "name_outside")
    said = text(folder, "address_outside", ["203.0.113.7"])
    assert "203.0.113.7" in said
    assert "--new-root" in said


def test_a_root_near_its_end_is_named_half_a_year_before(folder):
    end_ms = ends_ms(folder.read_root())
    at_ms = end_ms - 179 * DAY_MS
    tend(folder, LAN, at_ms)
    assert keys(folder, at_ms=at_ms) == ["root_ends_soon"]
    assert "--new-root" in text(folder, "root_ends_soon", at_ms=at_ms)
    assert "root_ended" in keys(folder, at_ms=end_ms)


def test_a_clock_that_was_never_set_is_the_one_cause_named(folder):
    said = text(folder, "clock_wrong", at_ms=5000)
    assert "Set the clock" in said


def test_a_clock_behind_the_certificate_is_told_to_be_set(folder):
    tend(folder, LAN, days(300))
    assert "set the clock" in text(folder, "not_yet_valid")


def test_a_key_that_does_not_fit_its_certificate_is_named(folder):
    content = folder.leaf.read_bytes()
    cut = content.index(b"-----BEGIN CERTIFICATE")
    folder.leaf.write_bytes(folder.root_key.read_bytes() + content[cut:])
    assert "does not fit its certificate" in text(folder, "key_does_not_fit")


def test_a_key_that_others_may_read_is_named_with_what_to_type(folder):
    folder.root_key.chmod(0o644)
    assert f"chmod 600 {folder.root_key}" in text(folder, "key_open")


def test_half_a_room_is_not_complete(folder):
    folder.leaf.unlink()
    assert keys(folder) == ["incomplete"]
    folder.root.write_text("nothing")
    assert keys(folder) == ["unreadable"]


@pytest.fixture
def settings(folder):
    return Settings(data_dir=folder.path.parent)


def test_a_server_shows_the_rooms_certificate_unless_told_not_to(settings, tmp_path):
    assert served(settings).room is not None
    assert served(replace(settings, https=False)) is None
    assert served(Settings(data_dir=tmp_path / "empty")) is None


@pytest.mark.parametrize("name", ["tls_cert", "tls_key"])
def test_half_of_an_owners_pair_is_refused(settings, name, tmp_path):
    given = replace(settings, **{name: tmp_path / "file.pem"})
    missing = "VATSIDE_TLS_KEY" if name == "tls_cert" else "VATSIDE_TLS_CERT"
    with pytest.raises(TlsError, match=f"{missing} is not set"):
        served(given)


def test_the_state_tells_the_end_and_what_to_see_to_but_not_who_reads_keys(
    settings, folder, monkeypatch
):
    monkeypatch.setattr("server.tls.standing.lan_addresses", lambda: LAN)
    folder.leaf.chmod(0o644)
    told = state(settings, NOW_MS)
    assert told["ends_ms"] == ends_ms(folder.read_leaf())
    assert told["findings"] == []
    assert NOW_MS < told["renews_ms"] < told["ends_ms"]
    folder.root_key.unlink()
    late = state(settings, told["ends_ms"] - DAY_MS)
    assert late["findings"] == ["root_key_away"]
    assert late["renews_ms"] is None
