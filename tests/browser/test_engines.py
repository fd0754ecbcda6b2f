"""The offline make in the other two engines: the same finger, the same taps.

From the starter to the rennet: the server is killed as the milk ripens, the page opens
again from what the phone kept, goes on, and sends all when it is back.
Chromium makes the whole cheese in test_whole_make.py.
"""

import contextlib
import json
import random
import time
from collections import Counter

import pytest

from demo.recorded import MIN_MS, Crew, Recorder
from demo.recorded import Phone as Crewman
from tests.bench.phone import push
from tests.browser.conftest import ROOT, Creamery, until
from tests.browser.firefox import Firefox
from tests.browser.maker import Maker
from tests.browser.webkit import WebKit

pytestmark = [
    # Selenium's own words to itself, about its driver for WebKitGTK.
    pytest.mark.filterwarnings("ignore:setting remote_server_addr"),
]
RECIPE = json.loads((ROOT / "server/recipes/washed-wheel.json").read_text("utf-8"))
TITLES = {step["key"]: step["title"]["en"] for step in RECIPE["steps"]}
IS_KEPT = """
async () => navigator.serviceWorker.controller !== null &&
  (await caches.match("/core-later.json", { ignoreVary: true })) !== undefined
"""


@pytest.fixture
def creamery(tmp_path, packed_program, packed_ready):
    """A server with its owner paired; its clock is the true one.

    A driver that answers slowly would press, on a fast clock, what has moved since.
    """
    server = Creamery(tmp_path, packed_program, packed_ready)
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


def until_kept(hand):
    """Wait until the page would open and work with no network.

    Its own worker answers, and has what the core takes last. A wait within the page
    would end with the driver's patience.
    """
    until(lambda: hand.run(IS_KEPT), "the page to be kept", wait_s=90)


def begun_make(creamery):
    """Record a make up to its starter, as the day shift left it; return its id."""
    me = creamery.ask("GET", "/me")
    chance = random.Random(7)
    crewman = Crewman(me["device"], me["person"]["id"], chance)
    moulds = [{"size": row["size"], "count": 4} for row in RECIPE["moulds"]]
    start_ms = time.time_ns() // 1_000_000 - 24 * 60 * MIN_MS
    given = ("Evening make", "B-17", 600.0, moulds, "Round vat", "pasteurised")
    recorder = Recorder(RECIPE, Crew(crewman), chance, start_ms, *given)
    recorder.run(start_ms + 24 * 60 * MIN_MS, stop_at="starter")
    # The hand-over: its beginning was tapped too soon.
    why = {"why": "the next shift begins it"}
    recorder.record(crewman, "entry_struck", why, recorder.events[-1]["id"])
    push(creamery, recorder.events)
    return recorder.make, len(recorder.events)


def test_an_offline_make_goes_on_from_what_the_phone_kept(creamery, hand):
    make, before = begun_make(creamery)
    code = creamery.invite("Mara", "maker")
    hand.open(f"{creamery.url}/#/pair/{code}")
    # Nobody waits here: what has a time is ended before it, with why.
    maker = Maker(hand, early=TITLES.values())
    maker.join()
    hand.open(f"{creamery.url}/#/make/{make}")
    hand.reload()
    until_kept(hand)
    maker.work(stop=TITLES["ripen"])
    all_sent(hand)

    creamery.kill()
    maker.work(stop=TITLES["rennet"])
    hand.reload()
    until(lambda: maker.look()["step"], "the step from what the phone kept")
    until(lambda: "not sent yet" in words_on_top(hand), "what waits to be counted")
    maker.work(stop=TITLES["set"])
    assert maker.look()["place"].split("/")[2] == make

    creamery.start()
    all_sent(hand)
    events = creamery.events()[before:]
    assert Counter(event["kind"] for event in events) == maker.done
    assert sorted(event["seq"] for event in events) == list(range(1, len(events) + 1))
    assert creamery.ask("GET", "/needs-look") == []
