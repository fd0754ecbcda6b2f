"""A phone in the make room: it trusts the room's root, and works with no server.

The name that it opens is no localhost, so nothing of this would work over plain http.
"""

import contextlib
from collections import Counter

import pytest
from cryptography.x509 import load_der_x509_certificate
from playwright.sync_api import Error

from server.config import real_now_ms
from server.tls.folder import Folder
from server.tls.made import Permitted, make_leaf, make_root, names_of
from server.tls.names import networks
from server.tls.renewal import DAY_MS
from tests.browser.conftest import until
from tests.browser.maker import Maker
from tests.browser.room import (
    NAME,
    RoomChromium,
    RoomCreamery,
    RoomFirefox,
    RoomWebKit,
)
from tests.browser.test_engines import (
    TITLES,
    all_sent,
    begun_make,
    until_kept,
    words_on_top,
)

pytestmark = [
    # Selenium's own words to itself, about its driver for WebKitGTK.
    pytest.mark.filterwarnings("ignore:setting remote_server_addr"),
]


def leave_to_age(room):
    """Let a room's certificates be 350 days old, and its root's key be away."""
    old_ms = real_now_ms() - 350 * DAY_MS
    names = names_of(room.read_leaf())
    permitted = Permitted(names.dns, networks(names.addresses))
    root = make_root(permitted, "aged", old_ms)
    room.write_root(root)
    room.write_leaf(make_leaf(root, names, old_ms))
    room.root_key.unlink()


@pytest.fixture
def creamery(tmp_path, packed_program, request):
    """A server over https with its owner paired."""
    server = RoomCreamery(tmp_path, packed_program)
    if "nobody_renews" in request.node.name:
        leave_to_age(Folder(server.data / "tls"))
    try:
        server.start()
        server.own()
        yield server
    finally:
        server.kill()


@pytest.fixture
def open_hand(play, creamery, tmp_path):
    """Return a maker of browsers, each trusting a root or none."""
    with contextlib.ExitStack() as all_open:

        def make(engine, root=creamery.root):
            if not engine.is_here():
                pytest.skip(f"{engine.name} cannot be told of a root: see tests/run")
            hand = engine(tmp_path / "browser", play, root)
            return all_open.enter_context(contextlib.closing(hand))

        yield make


@pytest.mark.parametrize(
    "engine", [RoomChromium, RoomFirefox, RoomWebKit], ids=lambda engine: engine.name
)
def test_a_phone_that_trusts_the_root_makes_a_make_with_no_server(
    creamery, open_hand, engine
):
    hand = open_hand(engine)
    make, before = begun_make(creamery)
    code = creamery.invite("Mara", "maker")
    hand.open(f"{creamery.room_url}/#/pair/{code}")
    # Nobody waits here: what has a time is ended before it, with why.
    maker = Maker(hand, early=TITLES.values())
    maker.join()
    hand.open(f"{creamery.room_url}/#/make/{make}")
    hand.reload()
    until_kept(hand)
    assert hand.run("() => [isSecureContext, location.hostname]") == [True, NAME]
    maker.work(stop=TITLES["ripen"])
    all_sent(hand)

    creamery.kill()
    hand.reload()
    until(lambda: maker.look()["step"], "the step from what the phone kept")
    maker.work(stop=TITLES["rennet"])
    assert "not sent yet" in words_on_top(hand)

    creamery.start()
    all_sent(hand)
    events = creamery.events()[before:]
    assert Counter(event["kind"] for event in events) == maker.done
    assert creamery.ask("GET", "/needs-look") == []


def test_a_phone_without_the_root_is_kept_out_and_told_what_to_do(creamery, open_hand):
    hand = open_hand(RoomChromium, root=None)
    with pytest.raises(Error, match="ERR_CERT_AUTHORITY_INVALID"):
        hand.open(creamery.room_url)
    # Its own page about it comes a moment later, and would break off the next one.
    hand.page.wait_for_url("chrome-error://**")
    hand.open(f"{creamery.setup_url}/#/pair/{creamery.invite('Mara', 'maker')}")
    link = hand.page.locator("a[href$='root.crt']")
    link.first.wait_for()
    with hand.page.expect_download() as coming:
        link.first.click()
    taken = load_der_x509_certificate(coming.value.path().read_bytes())
    assert taken == Folder(creamery.data / "tls").read_root()


def test_the_owner_reads_of_a_certificate_that_nobody_renews(creamery, open_hand):
    hand = open_hand(RoomChromium)
    code = creamery.invite("Orla", "owner")
    hand.open(f"{creamery.room_url}/#/pair/{code}")
    Maker(hand).join()
    hand.open(f"{creamery.room_url}/#/people")
    hand.sees("h2", "Phones")
    hand.sees("h2", "https in the room")
    words = hand.page.locator(".is-bad").inner_text()
    assert "renewing it takes the root's key" in words
    assert "vatside tls --root-key FILE" in words
