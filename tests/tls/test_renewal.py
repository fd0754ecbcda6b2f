import threading

import pytest

from server.store.security_log import lines
from server.tls import watch as watching
from server.tls.folder import Folder
from server.tls.made import names_of
from server.tls.refused import TlsError
from server.tls.renewal import PROGRAM_MS, Asked, renews_ms, see, tend
from server.tls.watch import Watch
from tests.tls.conftest import LAN, NOW_MS, days, verified


def serial(folder):
    return folder.read_leaf().serial_number


def test_a_second_look_makes_nothing(folder):
    before = {path: path.read_bytes() for path in folder.path.iterdir()}
    assert tend(folder, LAN, days(1)) == (False, "", ())
    del before[folder.room]  # keeps when an address was last seen, by days
    assert {path: path.read_bytes() for path in before} == before


def test_a_certificate_is_renewed_once_two_thirds_of_its_life_are_over(folder):
    # 397 days, begun 30 days ago: two thirds end 234 days and 16 hours from now.
    at_ms = renews_ms(folder.read_leaf())
    assert days(234) < at_ms < days(235)
    before = serial(folder)
    assert tend(folder, LAN, at_ms - 1000).leaf == ""
    assert serial(folder) == before
    assert tend(folder, LAN, at_ms).leaf == "age"
    assert serial(folder) != before
    assert verified(folder.root, folder.leaf, at_ms=days(500))[0]
    last = list(lines(folder.path.parent))[-1]
    assert (last["what"], last["why"]) == ("certificate_made", "age")


def test_a_new_address_brings_a_new_certificate_that_keeps_the_old_one(folder):
    assert tend(folder, ["192.168.7.9"], days(1)).leaf == "address"
    held = names_of(folder.read_leaf()).addresses
    assert held[:2] == ("192.168.7.9", "192.168.1.20")
    # Back again: nothing to be made.
    assert tend(folder, LAN, days(2)).leaf == ""
    for address in held:
        assert verified(folder.root, folder.leaf, "-verify_ip", address)[0]


def test_an_address_not_seen_for_a_month_is_left_out_next_time(folder):
    tend(folder, ["192.168.7.9"], days(10))
    tend(folder, ["192.168.7.9"], days(250))
    assert "192.168.1.20" not in names_of(folder.read_leaf()).addresses


def test_a_cable_pulled_out_changes_nothing(folder):
    before = serial(folder)
    assert tend(folder, [], days(1)).leaf == ""
    assert serial(folder) == before
    assert folder.read_room().moved_from == ""


def test_looking_every_minute_writes_the_card_once_a_day_at_most(folder):
    room = folder.read_room()
    assert see(room, LAN, NOW_MS + 60_000) == room
    assert see(room, LAN, days(2)).seen == {LAN[0]: days(2)}


def test_a_name_given_later_is_added_when_the_root_permits_it(folder):
    asked = Asked(names=("floor.vatbox.local",))
    assert tend(folder, LAN, days(1), asked).leaf == "name"
    assert "floor.vatbox.local" in names_of(folder.read_leaf()).dns


def test_names_outside_of_the_root_are_left_out_and_remembered(folder):
    asked = Asked(names=("cheese.example",), addresses=("203.0.113.9",))
    assert tend(folder, LAN, days(1), asked).leaf == ""
    held = names_of(folder.read_leaf())
    assert "cheese.example" not in held.dns
    assert "203.0.113.9" not in held.addresses
    done = tend(folder, LAN, days(1), Asked(new_root=True))
    assert done.root
    held = names_of(folder.read_leaf())
    assert "cheese.example" in held.dns
    assert "203.0.113.9" in held.addresses
    assert verified(folder.root, folder.leaf, at_ms=days(1))[0]


def test_a_new_root_keeps_the_one_before_under_another_name(folder):
    root, key = folder.root.read_bytes(), folder.root_key.read_bytes()
    aside = tend(folder, LAN, days(1), Asked(new_root=True)).aside
    assert [path.read_bytes() for path in aside] == [root, key]
    again = tend(folder, LAN, days(1), Asked(new_root=True)).aside
    assert not set(again) & set(aside)
    assert folder.root.read_bytes() != root


def test_without_the_roots_key_nothing_is_renewed_and_nothing_lost(folder):
    folder.root_key.unlink()
    before = folder.leaf.read_bytes()
    assert tend(folder, ["10.0.0.5"], days(300)).leaf == ""
    assert folder.leaf.read_bytes() == before


def test_the_roots_key_from_elsewhere_renews_at_once_and_stays_there(folder, tmp_path):
    key = folder.root_key.rename(tmp_path / "stick.pem")
    assert tend(folder, LAN, days(1), Asked(root_key=key)).leaf == "asked"
    assert not folder.root_key.exists()
    assert verified(folder.root, folder.leaf, at_ms=days(360))[0]


def test_the_key_of_another_root_is_refused(folder, tmp_path):
    other = Folder(tmp_path / "other")
    tend(other, LAN, NOW_MS)
    before = folder.leaf.read_bytes()
    with pytest.raises(TlsError, match="does not fit the root"):
        tend(folder, LAN, days(1), Asked(root_key=other.root_key))
    assert folder.leaf.read_bytes() == before


def test_a_lost_certificate_without_the_roots_key_says_what_to_bring(folder):
    folder.root_key.unlink()
    folder.leaf.unlink()
    with pytest.raises(TlsError, match="--root-key FILE"):
        tend(folder, LAN, days(1))


@pytest.mark.parametrize("damage", ["cut", "other_key", "other_root"])
def test_a_certificate_that_cannot_be_used_is_made_anew(folder, tmp_path, damage):
    other = Folder(tmp_path / "other")
    tend(other, LAN, NOW_MS)
    text = folder.leaf.read_bytes()
    if damage == "cut":
        folder.leaf.write_bytes(text[:-200])
    if damage == "other_key":
        cut = text.index(b"-----BEGIN CERTIFICATE")
        there = other.leaf.read_bytes()
        key = there[: there.index(b"-----BEGIN CERTIFICATE")]
        folder.leaf.write_bytes(key + text[cut:])
    if damage == "other_root":
        folder.leaf.write_bytes(other.leaf.read_bytes())
    assert tend(folder, LAN, days(1)).leaf == "unfit"
    assert verified(folder.root, folder.leaf)[0]


def test_a_root_that_ended_says_to_make_a_new_one(folder):
    with pytest.raises(TlsError, match=r"ended on 2036-10-2\d.*--new-root"):
        tend(folder, LAN, days(3700))


def test_a_clock_that_was_never_set_makes_no_certificate(tmp_path):
    folder = Folder(tmp_path / "tls")
    with pytest.raises(TlsError, match=r"clock says 1970-01-01.*Set the clock"):
        tend(folder, LAN, 5000)
    with pytest.raises(TlsError, match="Set the clock"):
        tend(folder, LAN, PROGRAM_MS - 1)
    assert not folder.path.exists()


def test_a_root_made_by_a_clock_far_ahead_is_named_once_the_clock_is_right(tmp_path):
    folder = Folder(tmp_path / "tls")
    tend(folder, LAN, days(400))
    with pytest.raises(TlsError, match=r"Set the clock\. If it is right.*--new-root"):
        tend(folder, LAN, NOW_MS)


def test_a_certificate_made_by_a_clock_far_ahead_is_made_anew(folder):
    tend(folder, LAN, days(300))
    assert tend(folder, LAN, days(1)).leaf == "age"
    assert verified(folder.root, folder.leaf)[0]


class Lapse:
    """A clock and a network that a test moves."""

    def __init__(self):
        self.now_ms = NOW_MS
        self.lan = LAN


def watch_of(folder, lapse):
    return Watch(folder, lambda: lapse.lan, lambda: lapse.now_ms)


def test_the_watch_renews_by_its_clock_and_follows_the_address(folder, caplog):
    lapse = Lapse()
    watch = watch_of(folder, lapse)
    assert watch.look() == ""
    lapse.now_ms = days(240)
    assert watch.look() == "age"
    lapse.lan = ["192.168.1.33"]
    assert watch.look() == "address"
    assert "another address" in caplog.text


def test_the_watch_says_once_what_it_cannot_do_and_goes_on(folder, caplog):
    lapse = Lapse()
    watch = watch_of(folder, lapse)
    lapse.now_ms = days(3700)
    assert (watch.look(), watch.look()) == ("", "")
    assert caplog.text.count("--new-root") == 1
    lapse.now_ms = days(240)
    assert watch.look() == "age"


def test_two_do_not_make_certificates_at_once(folder):
    done = []

    def make():
        done.append(tend(folder, ["10.0.0.5"], days(1)).leaf)

    with folder.locked():
        other = threading.Thread(target=make)
        other.start()
        before = serial(folder)
        other.join(0.1)
        assert done == []
        assert serial(folder) == before
    other.join(30)
    assert done == ["address"]


def test_the_watch_looks_again_and_again_until_it_is_told_to_stop(folder, monkeypatch):
    monkeypatch.setattr(watching, "EVERY_S", 0.001)
    asked, stop = threading.Semaphore(0), threading.Event()

    def addresses():
        asked.release()
        return LAN

    Watch(folder, addresses, lambda: NOW_MS).start(stop)
    for _ in range(3):
        assert asked.acquire(timeout=30)
    stop.set()
