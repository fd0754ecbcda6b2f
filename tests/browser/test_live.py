"""The owner's live view on a desk, while the room goes on or falls silent."""

import contextlib
import os
import re
import signal
import time
import urllib.error
import urllib.request
import uuid

import pytest

from tests.browser.conftest import WAIT_S, Creamery, Phone, until
from tests.browser.test_screens import show

# How cards look, whatever they say.
LOOK_OF = """(one) => {
  const card = one.querySelector(".live-card");
  return [one, card].map((it) => {
    const look = getComputedStyle(it);
    return [look.opacity, look.filter, look.borderStyle, look.borderColor,
      look.backgroundColor, look.color].join();
  }).join(";");
}"""


class Live:
    """What a desk shows of the live view."""

    def __init__(self, phone):
        self.phone = phone
        self.page = phone.page

    def word(self):
        return self.text(".live-word")

    def card(self):
        return self.text(".live-card")

    def text(self, what):
        # Figure and unit are held together by a space that does not break.
        return self.page.locator(what).inner_text().replace("\u00a0", " ")

    def is_stale(self):
        return self.page.locator("main .sheet.is-stale").count() == 1

    def until_word(self, word, wait_s=WAIT_S):
        until(lambda: word in self.word(), f"{word}: {self.word()}", wait_s)


@pytest.fixture
def room(new_phone):
    """A maker's phone with a make just begun; its id is beside it."""
    phone = new_phone()
    phone.make = phone.open_make()
    phone.record("step_begun", make=phone.make, data={"step": "receive"})
    phone.sent()
    return phone


@pytest.fixture
def desk(room, new_phone):
    """The owner's desk, watching; its clock can be wound on."""
    phone = new_phone("Olga", "owner")
    phone.context.clock.install()
    phone.reload()
    phone.page.set_viewport_size({"width": 1440, "height": 900})
    phone.page.get_by_role("button", name="Live", exact=True).tap()
    phone.page.locator(".live-card").wait_for()
    live = Live(phone)
    live.until_word("LIVE")
    return live


def asked_after(desk):
    """Return the cursors that the desk asks the stream for from now on."""
    found = []

    def note(request):
        asked = re.search(r"/live\?after=(\d+)", request.url)
        if asked:
            found.append(int(asked[1]))

    desk.page.on("request", note)
    return found


@pytest.mark.everyday
def test_the_desk_shows_what_the_room_does_as_it_does_it(room, desk):
    assert not desk.is_stale()
    assert "Receive the milk" in desk.card()
    room.record("step_ended", make=room.make, data={"step": "receive", "why": "full"})
    room.record("step_begun", make=room.make, data={"step": "to_vat"})
    until(lambda: "Pump the milk" in desk.card(), "the next step on the desk", 15)


def test_the_desk_reads_on_from_its_cursor_after_the_server_was_away(
    creamery, room, desk
):
    known = len(creamery.events())
    cursors = asked_after(desk)
    creamery.kill()
    until(desk.is_stale, "the desk to say that its news are old")
    assert "OUT OF DATE" in desk.word()
    room.record("step_ended", make=room.make, data={"step": "receive", "why": "full"})
    room.record("step_begun", make=room.make, data={"step": "to_vat"})
    creamery.start()
    room.sent()
    until(lambda: "Pump the milk" in desk.card(), "the desk to catch up", 60)
    desk.until_word("LIVE", 90)
    assert not desk.is_stale()
    assert cursors
    assert min(cursors) >= known  # nothing is told twice


@pytest.mark.everyday
def test_a_silent_server_makes_the_news_visibly_old(creamery, desk):
    group = creamery.process.pid
    bright = desk.page.locator(".cards").evaluate(LOOK_OF)
    os.killpg(group, signal.SIGSTOP)
    try:
        desk.page.clock.fast_forward("02:00")
        until(desk.is_stale, "the desk to say that its news are old")
        desk.until_word("OUT OF DATE")
        until(lambda: "Updated 2 min" in desk.word(), desk.word())
        assert desk.page.locator(".cards").evaluate(LOOK_OF) != bright
    finally:
        os.killpg(group, signal.SIGCONT)
    desk.until_word("LIVE", 90)
    until(lambda: not desk.is_stale(), "the news to be fresh again")


def test_the_age_of_the_last_word_is_shown_and_grows_with_no_network(desk):
    desk.phone.context.set_offline(True)
    until(desk.is_stale, "the desk to say that its news are old")
    desk.page.clock.fast_forward("20:00")
    until(lambda: "Updated 20 min" in desk.word(), desk.word())
    until(
        lambda: re.search("Last entry from the room 2[0-2] min ago", desk.card()),
        f"the age of the room's last entry: {desk.card()}",
    )
    assert "No network" in desk.page.locator(".status-words").inner_text()


def take_all_places(creamery):
    """Take the one place of each worker, each for another person."""
    other = Creamery(creamery.folder, creamery.program)
    other.url = creamery.url
    names = {"device": str(uuid.uuid4()), "device_name": "Hall desk"}
    other.ask("POST", "/pair", {**names, "code": creamery.invite("Una", "viewer")})
    url = f"{creamery.url}/api/v1/live?after=0"
    taken, refused = [creamery.opener.open(url, timeout=WAIT_S)], []
    end_s = time.monotonic() + WAIT_S
    # The place of the owner's worker is refused to Una, so hers is the other's.
    while len(taken) < 2 and time.monotonic() < end_s:
        try:
            taken.append(other.opener.open(url, timeout=WAIT_S))
        except urllib.error.HTTPError as refusal:
            refused.append((refusal.code, "Retry-After" in refusal.headers))
    assert len(taken) == 2
    assert set(refused) <= {(503, True)}
    return taken


@pytest.fixture
def narrow(monkeypatch):
    """A server that has one place for a viewer in each of its workers."""
    monkeypatch.setenv("VATSIDE_VIEWERS", "1")


def test_a_desk_that_is_refused_the_stream_asks_every_five_seconds(
    narrow, creamery, room, new_phone
):
    taken = take_all_places(creamery)
    phone = new_phone("Olga", "owner")
    phone.page.set_viewport_size({"width": 1440, "height": 900})
    phone.page.get_by_role("button", name="Live", exact=True).tap()
    desk = Live(phone)
    try:
        desk.until_word("CHECKING EVERY 5 SECONDS")
        assert not desk.is_stale()
        room.record("step_ended", make=room.make, data={"step": "receive"})
        room.record("step_begun", make=room.make, data={"step": "to_vat"})
        room.sent()
        until(lambda: "Pump the milk" in desk.card(), "the entry to be asked for", 12)
    finally:
        for stream in taken:
            with contextlib.suppress(OSError):
                stream.close()
    desk.until_word("LIVE", 90)


def test_the_live_view_has_no_control_that_writes(creamery, desk):
    before = creamery.events()
    buttons = desk.page.locator("main button")
    assert buttons.all_inner_texts() == ["Look at this make"]
    assert desk.page.locator("main input, main textarea, main select").count() == 0
    posted = []
    desk.page.on(
        "request",
        lambda one: posted.append(one.post_data_json) if one.method == "POST" else None,
    )
    buttons.first.tap()
    desk.page.locator(".make, .cautions").first.wait_for()
    desk.page.wait_for_timeout(1000)
    assert [body for body in posted if body["events"]] == []
    assert creamery.events() == before


def test_a_watcher_can_open_a_make_and_change_nothing(creamery, room, new_phone):
    phone = new_phone("Buyer", "viewer")
    phone.page.set_viewport_size({"width": 1440, "height": 900})
    phone.page.get_by_role("button", name="Live", exact=True).tap()
    phone.page.get_by_role("button", name="Look at this make").tap()
    phone.page.locator(".make").wait_for()
    assert phone.page.locator(".foot .primary").count() == 0
    words = phone.page.locator("main").inner_text()
    for row in ("Write a note", "Start a timer", "Skip this step", "The whole make"):
        assert row not in words
    before = creamery.events()
    reading = phone.page.locator(".reading").first
    assert reading.evaluate("(one) => one.closest('[inert]') !== null")
    assert creamery.events() == before


def test_a_fast_practice_clock_does_not_make_fresh_news_look_old(
    tmp_path, program, play
):
    server = Creamery(tmp_path, program)
    server.options = ("--replay", "600")
    phone = Phone(play, tmp_path / "phone", server.url)
    try:
        server.start()
        server.own()
        phone.open()
        phone.pair(server.invite("Olga", "owner"))
        phone.open_make()
        show(phone, "live")
        live = Live(phone)
        live.until_word("LIVE")
        # The server says something each 15 s: in between, the news are not old.
        for _ in range(20):
            phone.page.wait_for_timeout(250)
            assert not live.is_stale()
    finally:
        phone.close()
        server.kill()
