"""What a person hears: the phone in front, the wall, a push, and what is not armed.

Sound itself cannot be heard here. The page marks its root `data-ringing` only
after it has started an oscillator in an audio context that runs; the context and
the oscillators are the browser's own.
"""

import json
import time
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.alarm.push_service import PushService
from tests.browser.conftest import until
from tests.browser.test_frozen_timer import CLOCKS
from tests.browser.test_screens import (
    AXE,
    TAPS,
    TOO_WIDE,
    problems_of_layout,
    read_cautions,
    show,
)

# Counts the tones that the browser really started.
TONES = """
  globalThis.tones = 0;
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (...args) {
    globalThis.tones += 1;
    return start.apply(this, args);
  };
"""
RINGING = "document.documentElement.dataset.ringing ?? null"
ALARM = 'const alarm = await import("/js/data/alarm.js");'


def rings(phone):
    return phone.page.evaluate(RINGING)


def tones(phone):
    return phone.page.evaluate("globalThis.tones")


def timer(phone, make, lasts_s, label="Press"):
    return phone.record(
        "timer_started", make=make, data={"label": label, "lasts_s": lasts_s}
    )


def tap(phone, name):
    phone.page.get_by_role("button", name=name, exact=True).first.tap()


def start_shift(phone):
    show(phone, "alarms")
    tap(phone, "Start shift")
    until(lambda: rings(phone) == "2", "the test alarm")
    tap(phone, "I hear it")
    until(lambda: rings(phone) is None, "silence after the test")


def rung(phone, name):
    return phone.page.locator(f'[data-rung="{name}"]')


def alarm_states(phone):
    return phone.run(
        ALARM + "return (alarm.alarms.value?.alarms ?? []).map((one) => one.state)"
    )


def test_a_phone_is_not_armed_before_its_test_was_heard(new_phone):
    phone = new_phone(scripts=[TONES])
    show(phone, "alarms")
    assert rung(phone, "phone").get_attribute("data-armed") == "no"
    assert "No shift" in rung(phone, "phone").inner_text()
    tap(phone, "Start shift")
    until(lambda: rings(phone) == "2", "the test alarm")
    assert tones(phone) > 0
    tap(phone, "I hear nothing")
    until(lambda: rings(phone) is None, "silence")
    assert rung(phone, "phone").get_attribute("data-armed") == "no"
    tap(phone, "Test alarm")
    until(lambda: rings(phone) == "2", "the test alarm again")
    tap(phone, "I hear it")
    phone.page.locator('[data-rung="phone"][data-armed="yes"]').wait_for()


def test_a_timer_rings_at_its_instant_without_a_network_until_it_is_silenced(
    new_phone,
):
    phone = new_phone(scripts=[TONES])
    make = phone.open_make()
    start_shift(phone)
    phone.sent()
    phone.context.set_offline(True)
    show(phone, "now")
    made = timer(phone, make, 3)
    due_ms = made["at_ms"] + made["off_ms"] + 3000
    assert rings(phone) is None
    until(lambda: rings(phone) == "2", "the timer to ring")
    late_ms = phone.run("return nowMs()") - due_ms
    assert 0 <= late_ms < 2000
    assert phone.page.locator(".alarm-bar[data-ringing]").count() == 1
    tap(phone, "Silence")
    until(lambda: rings(phone) is None, "silence")
    assert alarm_states(phone) == ["acknowledged"]
    before = tones(phone)
    time.sleep(3.5)  # longer than its pattern
    assert tones(phone) == before
    # Silenced, never hidden.
    show(phone, "alarms")
    phone.page.get_by_text("Silenced by Mara").wait_for()


def test_a_phone_without_a_shift_shows_the_alarm_and_stays_silent(new_phone):
    phone = new_phone(scripts=[TONES])
    make = phone.open_make()
    show(phone, "now")
    timer(phone, make, 1)
    phone.page.get_by_text("no shift started").wait_for()
    assert (rings(phone), tones(phone)) == (None, 0)


def test_a_page_that_slept_rings_on_waking_and_says_how_late_it_is(new_phone):
    phone = new_phone(scripts=[TONES, CLOCKS])
    make = phone.open_make()
    start_shift(phone)
    show(phone, "now")
    timer(phone, make, 60)
    phone.sent()
    phone.context.set_offline(True)  # or the server's clock would set it right
    # Two minutes in which no timer of the page ran, as a phone that is locked.
    page = phone.context.new_cdp_session(phone.page)
    page.send("Page.setWebLifecycleState", {"state": "frozen"})
    phone.page.evaluate("globalThis.moved = { wall: 120000, mono: 120000 }")
    page.send("Page.setWebLifecycleState", {"state": "active"})
    phone.page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    until(lambda: rings(phone) == "2", "the alarm on waking")
    phone.page.get_by_text("this screen was asleep").wait_for()
    words = phone.page.locator(".alarm-where").inner_text()
    assert "found 60\u00a0s" in words or "found 61\u00a0s" in words, words


def test_a_timer_made_offline_is_told_to_be_not_on_the_wall_yet(new_phone):
    phone = new_phone()
    make = phone.open_make()
    phone.sent()
    show(phone, "now")
    phone.context.set_offline(True)
    timer(phone, make, 600)
    phone.page.get_by_text("1 deadline is not on the wall yet").wait_for()
    phone.context.set_offline(False)
    phone.sent()
    phone.page.get_by_text("not on the wall yet").wait_for(state="detached")


@pytest.fixture
def wall(new_phone):
    """A display that shows the wall, its sound unlocked by one touch."""
    wall = new_phone("Room", role="viewer", scripts=[TONES])
    wall.page.set_viewport_size({"width": 1920, "height": 1080})
    show(wall, "wall")
    return wall


def unlock(wall):
    wall.page.locator(".wall-unlock").click()
    wall.page.locator(".wall-unlock").wait_for(state="detached")


def test_the_wall_rings_with_no_phone_awake_and_a_phone_silences_it(new_phone, wall):
    phone = new_phone()
    make = phone.open_make(vat="Vat 1")
    made = timer(phone, make, 12)
    phone.sent()
    unlock(wall)
    wall.page.locator(".wall-row", has_text="Press").wait_for()
    assert rings(wall) is None
    phone.close()  # no phone is awake
    until(lambda: rings(wall) == "2", "the wall to ring")
    assert tones(wall) > 0
    assert wall.page.locator('[data-alarm="unacknowledged"]').count() == 1
    # A viewer's wall shows no button for what it may not do.
    assert wall.page.get_by_role("button", name="Silence").count() == 0
    other = new_phone("Bo", role="helper")
    other.record("alert_acknowledged", make=make, data={"alert": "timer/" + made["id"]})
    other.sent()
    until(lambda: rings(wall) is None, "the wall to fall silent")
    wall.page.locator('[data-alarm="acknowledged"]').wait_for()
    assert "Silenced by" in wall.page.locator(".wall").inner_text()
    # Seen: "OK" beside what was overdue, because somebody had silenced it.
    assert wall.page.locator(".wall-alarm .mark-word").inner_text() == "SILENCED"


def test_the_wall_is_armed_only_once_its_sound_is_unlocked(new_phone, wall):
    phone = new_phone()
    show(phone, "alarms")
    phone.page.get_by_text("its sound is locked").wait_for()
    assert rung(phone, "wall").get_attribute("data-armed") == "no"
    unlock(wall)
    show(phone, "menu")
    show(phone, "alarms")
    phone.page.locator('[data-rung="wall"][data-armed="yes"]').wait_for()
    # A reload locks the sound again, and the wall says so to all.
    wall.page.reload()
    wall.page.locator(".wall-unlock").wait_for()
    show(phone, "menu")
    show(phone, "alarms")
    phone.page.get_by_text("its sound is locked").wait_for()


def test_a_wall_whose_server_is_silent_looks_old_and_still_rings(
    creamery, new_phone, wall
):
    phone = new_phone()
    make = phone.open_make()
    timer(phone, make, 30)
    phone.sent()
    unlock(wall)
    wall.page.locator(".wall-row", has_text="Press").wait_for()
    wall.until("state.board.value?.makes.length === 1", "the make on its own board")
    assert wall.page.locator(".wall.is-stale").count() == 0
    creamery.kill()
    wall.page.locator(".wall.is-stale").wait_for()
    assert "the server is silent" in wall.page.locator(".wall-word").inner_text()
    until(lambda: rings(wall) == "2", "the wall to ring all the same", wait_s=60)


def test_the_wall_can_be_read_from_five_metres(new_phone, wall):
    phone = new_phone()
    make = phone.open_make()
    for label in ("Press", "Turn"):
        timer(phone, make, 5000, label)
    phone.sent()
    wall.page.locator(".wall-row", has_text="Turn").wait_for()
    # 22 minutes of arc at 5 m are 32 mm; capitals and digits of the page's type
    # are at least 0.7 of its size, and the display is 531 mm wide (24 inches).
    for selector in (".wall-clock", ".wall-time"):
        size_px = wall.page.locator(selector).first.evaluate(
            "(one) => parseFloat(getComputedStyle(one).fontSize)"
        )
        assert 0.7 * size_px * 531 / 1920 >= 32, selector
    assert wall.page.evaluate(TOO_WIDE) == []
    wide = wall.page.locator(".wall").evaluate(
        "(one) => one.scrollHeight <= innerHeight"
    )
    assert wide


def test_an_alarm_put_aside_is_listed_with_its_end_and_silent(new_phone):
    phone = new_phone(scripts=[TONES])
    make = phone.open_make()
    start_shift(phone)
    timer(phone, make, 1)
    until(lambda: rings(phone) == "2", "the timer to ring")
    show(phone, "alarms")
    tap(phone, "Put aside")
    phone.page.get_by_role("button", name="15\u00a0min").tap()
    phone.page.locator("textarea, input").fill("Nel is on it")
    tap(phone, "Put aside for 15\u00a0min")
    until(lambda: rings(phone) is None, "silence")
    phone.page.get_by_text("Put aside by Mara until").wait_for()
    phone.page.get_by_text("Nel is on it").wait_for()
    phone.page.wait_for_timeout(500)
    tap(phone, "Take back")
    until(lambda: rings(phone) == "2", "it to ring again", wait_s=70)


def test_a_push_is_shown_and_opens_the_alarms(new_phone):
    phone = new_phone()
    phone.kept_offline()
    origin = phone.url
    phone.context.grant_permissions(["notifications"], origin=origin)
    session = phone.context.new_cdp_session(phone.page)
    workers = []

    def note(told):
        workers.extend(told["registrations"])

    session.on("ServiceWorker.workerRegistrationUpdated", note)
    session.send("ServiceWorker.enable")
    until(
        lambda: phone.page.wait_for_timeout(50) or bool(workers), "the worker's number"
    )
    number = workers[0]["registrationId"]
    said = {"title": "Vatside: Vat one", "body": "Press: the time is up"}
    said |= {"tag": "make/timer/1", "navigate": "https://elsewhere.org/#/alarms"}
    for data in (json.dumps({"web_push": 8030, "notification": said}), "not json"):
        session.send(
            "ServiceWorker.deliverPushMessage",
            {"origin": origin, "registrationId": number, "data": data},
        )

    def shown():
        return phone.page.evaluate("""async () => {
          const worker = await navigator.serviceWorker.ready;
          return (await worker.getNotifications()).map(
            ({ title, body, tag }) => ({ title, body, tag }));
        }""")

    until(lambda: len(shown()) == 2, "both pushes to be shown")
    first = next(one for one in shown() if one["tag"] == "make/timer/1")
    assert (first["title"], first["body"]) == (said["title"], said["body"])
    # What cannot be read is shown all the same: an unseen push ends them all.
    other = next(one for one in shown() if one["tag"] == "alarm")
    assert other["body"]


def test_each_rung_says_in_words_why_it_is_not_armed(new_phone):
    phone = new_phone()
    show(phone, "alarms")
    words = {
        "phone": "No shift",
        "wall": "No display shows the wall",
        "push": "no contact address",
        "calendar": "cannot be seen from here",
        "owner": "No owner's phone takes pushes",
    }
    for name, why in words.items():
        rung(phone, name).get_by_text(why).wait_for()
        assert rung(phone, name).get_attribute("data-armed") == "no"


def test_the_owner_sets_after_how_many_minutes_to_be_told(creamery, new_phone):
    owner = new_phone("Orla", role="owner")
    show(owner, "alarms")
    tap(owner, "5 min")
    rung(owner, "owner").get_by_text("for 5 min").wait_for()
    assert creamery.ask("GET", "/alarms")["escalate_min"] == 5


@pytest.mark.parametrize(("wide", "high"), [(360, 740), (412, 839), (820, 1180)])
def test_alarms_keep_the_sizes_and_gaps_of_wet_hands(new_phone, wide, high):
    phone = new_phone()
    phone.page.set_viewport_size({"width": wide, "height": high})
    make = phone.open_make()
    timer(phone, make, 1)
    timer(phone, make, 1, "A second timer with a long name")
    show(phone, "alarms")
    phone.page.locator(".alarm-row").nth(1).wait_for()
    found = {}
    pad = f"make/{make}/reading/receive/milk_temp_c"
    for place in ("alarms", "now", f"make/{make}", pad):
        show(phone, place)
        problems = problems_of_layout(phone.page, wide, high)
        if problems:
            found[place] = problems
    assert found == {}
    assert phone.page.evaluate(TAPS)
    # The pad is open, and the alarm leaves room for all of its keys.
    for key in phone.page.locator(".key:visible").all():
        box, foot = key.bounding_box(), phone.page.locator(".foot").bounding_box()
        assert box["y"] + box["height"] <= foot["y"] + 1
    assert phone.page.get_by_role("button", name="Silence").is_visible()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_alarms_and_the_wall_have_a_contrast_of_seven_to_one(new_phone, wall, scheme):
    phone = new_phone()
    make = phone.open_make()
    timer(phone, make, 1)
    timer(phone, make, 900, "Turn")
    phone.sent()
    for page in (phone.page, wall.page):
        page.emulate_media(color_scheme=scheme, reduced_motion="reduce")
    show(phone, "alarms")
    phone.page.locator(".alarm-row").wait_for()
    wall.page.locator(".wall-alarm").wait_for()
    for page in (phone.page, wall.page):
        result = Axe().run(page, options=AXE)
        assert result.violations_count == 0, result.generate_report()


def test_a_step_s_deadline_goes_into_the_phone_s_calendar(new_phone):
    phone = new_phone()
    make = phone.open_make()
    phone.sent()
    show(phone, f"make/{make}")
    read_cautions(phone)
    row = phone.page.get_by_role("button", name="Long deadlines into the calendar")
    row.scroll_into_view_if_needed()
    with phone.page.expect_download() as loading:
        row.tap()
    data = Path(loading.value.path()).read_bytes()
    assert data.startswith(b"BEGIN:VCALENDAR\r\n")
    assert data.count(b"BEGIN:VALARM") >= 1
    phone.context.set_offline(True)
    phone.page.evaluate("dispatchEvent(new Event('offline'))")
    until(lambda: row.is_disabled(), "the row to say that it needs the server")


# A push service of our own in place of the browser's, which needs the internet.
SUBSCRIBES = """
  globalThis.pushManager = {
    kept: null,
    async getSubscription() { return this.kept; },
    async subscribe({ applicationServerKey }) {
      globalThis.keyGiven = applicationServerKey;
      this.kept = { toJSON: () => (POSTED), unsubscribe: async () => true };
      return this.kept;
    },
  };
"""


@pytest.fixture
def service(monkeypatch):
    """A push service on this machine, which the server may push to."""
    monkeypatch.setenv("VATSIDE_PUSH_CONTACT", "mailto:owner@creamery.org")
    monkeypatch.setenv("VATSIDE_PUSH_HOSTS", "127.0.0.1")
    made = PushService()
    yield made
    made.close()


def age_of_subscription(creamery):
    (row,) = creamery.ask("GET", "/push")["subscriptions"]
    return row["posted_s"]


def test_a_phone_turns_pushes_on_and_hears_with_its_page_closed(
    service, creamery, new_phone
):
    browser = service.browser()
    posted = json.dumps(browser.posted())
    phone = new_phone(scripts=[SUBSCRIBES.replace("POSTED", posted)], keeps=True)
    phone.context.grant_permissions(["notifications"], origin=phone.url)
    show(phone, "alarms")
    tap(phone, "All alarms here")
    rung(phone, "push").get_by_text("No push has arrived yet").wait_for()
    key = phone.page.evaluate("globalThis.keyGiven")
    assert key == creamery.ask("GET", "/push")["public_key"]
    tap(phone, "Send a test")
    phone.page.locator('[data-rung="push"][data-armed="yes"]').wait_for()
    assert browser.read(service.came[0][2])["notification"]["title"] == "Vatside: test"
    # Each opening posts it again, so that a server that lost it has it.
    time.sleep(3.1)
    assert age_of_subscription(creamery) >= 3
    phone.reload()
    until(lambda: age_of_subscription(creamery) < 3, "it to be posted again")
    make = phone.open_make()
    timer(phone, make, 4)
    phone.sent()
    phone.close()
    until(lambda: len(service.came) == 2, "the push of the timer")
    said = browser.read(service.came[1][2])["notification"]
    assert said["body"] == "Press: the time is up"
    assert said["navigate"] == f"{creamery.url}/#/alarms"
