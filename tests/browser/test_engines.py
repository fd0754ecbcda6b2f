"""The offline make in the other two engines: the same finger, the same taps.

From the link of a code to the cut: the server is killed at the hold, the page opens
again from what the phone kept, goes on, and sends all when it is back.
Chromium makes the whole cheese in test_whole_make.py.
"""

import contextlib
import json
from collections import Counter

import pytest

from tests.browser.conftest import ROOT, Creamery, until
from tests.browser.firefox import Firefox
from tests.browser.maker import Maker
from tests.browser.webkit import WebKit

pytestmark = [
    pytest.mark.long,
    # Selenium's own words to itself, about its driver for WebKitGTK.
    pytest.mark.filterwarnings("ignore:setting remote_server_addr"),
]
RECIPE = json.loads((ROOT / "server/recipes/washed-wheel.json").read_text("utf-8"))
TITLES = {step["key"]: step["title"]["en"] for step in RECIPE["steps"]}


@pytest.fixture
def creamery(tmp_path, packed_program):
    """A server with its owner paired; its clock is the true one.

    A driver that answers slowly would press, on a fast clock, what has moved since.
    """
    server = Creamery(tmp_path, packed_program)
    try:
        server.start()
        server.own()
        yield server
    finally:
        server.kill()


@pytest.fixture(params=[Firefox, WebKit], ids=lambda engine: engine.name)
def hand(request, tmp_path):
    if not request.param.is_here():
        pytest.skip(f"{request.param.name} is not installed: see tests/run")
    browser = request.param(tmp_path / "browser")
    with contextlib.closing(browser):
        yield browser


def words_on_top(hand):
    return hand.read(".status-words")


def all_sent(hand):
    def is_sent():
        words = words_on_top(hand)
        return "Connected" in words and "All entries sent" in words

    until(is_sent, "all entries to be sent", wait_s=60)


def is_kept(hand):
    """Tell whether the page would open with no network: its own worker answers."""
    return hand.run(
        "async () => (await navigator.serviceWorker.ready,"
        " navigator.serviceWorker.controller !== null)"
    )


def test_an_offline_make_goes_on_from_what_the_phone_kept(creamery, hand):
    code = creamery.invite("Mara", "maker")
    hand.open(f"{creamery.url}/#/pair/{code}")
    # Nobody waits here: what has a time is ended before it, with why.
    maker = Maker(hand, early=TITLES.values())
    maker.join()
    make = maker.open_make(RECIPE["title"]["en"], small=13)
    hand.reload()
    until(lambda: is_kept(hand), "the page to be kept")
    maker.work(stop=TITLES["hold"])
    all_sent(hand)

    creamery.kill()
    maker.work(stop=TITLES["starter"])
    hand.reload()
    until(lambda: maker.look()["step"], "the step from what the phone kept")
    until(lambda: "not sent yet" in words_on_top(hand), "what waits to be counted")
    maker.work(stop=TITLES["cut"])
    assert maker.look()["place"].split("/")[2] == make

    creamery.start()
    all_sent(hand)
    events = creamery.events()
    assert Counter(event["kind"] for event in events) == maker.done
    assert sorted(event["seq"] for event in events) == list(range(1, len(events) + 1))
    assert creamery.ask("GET", "/needs-look") == []
