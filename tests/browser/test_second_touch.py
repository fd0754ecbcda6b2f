"""A touch never presses what has just come under the finger.

Seen: two touches 333 ms apart on "Read. Begin now" began the pumping and finished
it, since the next button stands in the same place. Touches go in as the browser
gets them from the screen, at places that were measured beforehand.
"""

import re

import pytest

from tests.browser.conftest import looked, until
from tests.browser.test_screens import read_cautions, show

SECOND_MS = 1000  # for so long what is new takes no touch
BOUNCE_MS = 333


class Touch:
    """A finger that looks at nothing: it comes down where it is told."""

    def __init__(self, phone):
        self.page = phone.page
        self.cdp = phone.context.new_cdp_session(phone.page)

    def middle(self, css):
        box = self.page.locator(css).first.bounding_box()
        return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2

    def send(self, kind, *points):
        rows = [{"x": x, "y": y, "id": n} for n, (x, y) in enumerate(points)]
        self.cdp.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": rows})

    def tap(self, spot, then_ms=0):
        self.send("touchStart", spot)
        self.send("touchEnd")
        self.page.wait_for_timeout(then_ms)


def kinds(phone):
    return phone.run("return state.view.value.log.map((line) => line.kind)")


def settled(phone):
    """Wait until all that is in sight may be pressed."""
    phone.page.wait_for_function("() => !document.querySelector('[data-new]')")


@pytest.fixture
def at_cautions(new_phone):
    """A phone before the cautions of a step that a person begins and ends."""
    phone = new_phone()
    make = phone.open_make(vat="Vat 2")
    skipped = {"step": "receive", "why": "Done before"}
    test = {"quantity": "drug_test", "value": "negative"}
    phone.record("reading_taken", make=make, data=test)
    phone.record("step_skipped", make=make, data=skipped)
    show(phone, f"make/{make}")
    phone.page.locator(".primary", has_text="Begin now").wait_for()
    settled(phone)
    return phone, make, Touch(phone)


@pytest.mark.everyday
def test_a_bounce_on_begin_does_not_finish_and_a_look_later_it_does(at_cautions):
    phone, _, finger = at_cautions
    spot = finger.middle(".foot .primary")
    finger.tap(spot, BOUNCE_MS)
    finger.tap(spot, BOUNCE_MS)
    # Slow to answer or quick, neither begins it twice; then the next button is new.
    phone.page.locator(".primary", has_text="Finish").wait_for()
    finger.tap(spot)
    waiting = phone.page.locator(".primary.is-waiting", has_text="Finish")
    waiting.wait_for()  # it does not feel dead: it shows its second running
    phone.page.get_by_text("That had just changed.").wait_for()
    assert kinds(phone).count("step_begun") == 1
    assert "step_ended" not in kinds(phone)
    settled(phone)
    finger.tap(spot)
    until(lambda: "step_ended" in kinds(phone), "the step to end")


@pytest.mark.everyday
def test_another_phone_s_entry_does_not_turn_the_button_under_the_finger(at_cautions):
    phone, make, finger = at_cautions
    read_cautions(phone)
    settled(phone)
    spot = finger.middle(".foot .primary")
    phone.record("step_begun", make=make, data={"step": "to_vat"})
    phone.page.locator(".primary", has_text="Finish").wait_for()
    finger.tap(spot, 200)
    # Nor where the finger lay on it already when it turned.
    settled(phone)
    end = "const ended = record('step_ended', args[0]); await ended;"
    finger.send("touchStart", spot)
    phone.run(end, {"make": make, "data": {"step": "to_vat"}})
    phone.page.locator(".step-title", has_text="Rest the milk").wait_for()
    finger.send("touchEnd")
    phone.page.wait_for_timeout(300)
    assert kinds(phone).count("step_ended") == 1
    assert kinds(phone).count("step_begun") == 1


# What lies under each height of the screen, down its left third.
UNDER = """
() => {
  const under = (y) => document.elementFromPoint(120, y)?.closest("[data-tap]") ?? null;
  const all = Array.from({ length: innerHeight }, (_, y) => under(y));
  const isOther = (one, y) =>
    one?.matches(".make .row") && window.lay && window.lay[y] !== one;
  const turned = all.findIndex((one, y) =>
    all.slice(y, y + 9).every((next, n) => next === one && isOther(next, y + n)));
  window.lay = all;
  return turned;
}
"""
# A row opens a place, or another step.
SHOWN = """
() => location.hash + document.querySelector(".step-title, .cautions")?.textContent
"""


def test_what_an_alarm_pushes_under_the_finger_takes_no_touch(at_cautions):
    phone, make, finger = at_cautions
    read_cautions(phone)
    row = phone.page.locator(".make .row", has_text="Write a note")
    row.evaluate("(one) => one.scrollIntoView({ block: 'center' })")
    settled(phone)
    phone.page.evaluate(UNDER)
    phone.record("timer_started", make=make, data={"label": "Rinse", "lasts_s": 1})
    phone.page.locator(".alarm-bar").wait_for()
    high = phone.page.evaluate(UNDER)
    assert high > 0  # another row than a moment ago lies there
    before = phone.page.evaluate(SHOWN)
    finger.tap((120, high + 4), 300)
    assert phone.page.evaluate(SHOWN) == before


def test_a_pedal_s_second_press_does_not_finish_what_the_first_began(at_cautions):
    phone, make, _ = at_cautions
    read_cautions(phone)
    show(phone, "device")
    phone.page.get_by_text("Use a pedal or clicker").tap()
    show(phone, f"make/{make}")
    phone.page.keyboard.press("PageDown")
    phone.page.locator(".primary", has_text="Finish").wait_for()
    phone.page.wait_for_timeout(BOUNCE_MS)
    phone.page.keyboard.press("PageDown")
    phone.page.wait_for_timeout(200)
    assert "step_ended" not in kinds(phone)
    settled(phone)
    phone.page.keyboard.press("PageDown")
    until(lambda: "step_ended" in kinds(phone), "the step to end")


def test_a_list_that_a_finger_scrolled_may_be_tapped_at_once(at_cautions):
    phone, _, finger = at_cautions
    read_cautions(phone)
    phone.sent()  # what is still to be sent has a line of its own, which goes
    looked(phone.page)
    scroll = ".make > .scroll"
    phone.page.locator(scroll).evaluate("(one) => { one.scrollTop += 400; }")
    phone.page.wait_for_timeout(100)
    row = phone.page.locator(".row", has_text="Write a note")
    row.evaluate("(one) => one.scrollIntoView({ block: 'center' })")
    phone.page.wait_for_timeout(100)
    box = row.bounding_box()
    finger.tap((box["x"] + 40, box["y"] + box["height"] / 2), 300)
    assert "/note" in phone.page.evaluate("location.hash")


def test_quick_fingers_lose_no_digit_and_no_save_on_the_pad(new_phone):
    """Five readings in a row, a tap each 300 ms: only what has just come waits."""
    phone = new_phone()
    make = phone.open_make()
    show(phone, f"make/{make}")
    read_cautions(phone)
    finger = Touch(phone)
    for typed in ("4.2", "4.4", "5", "4.9", "5.1"):
        show(phone, f"make/{make}")
        row = phone.page.locator(".row.reading", has_text="Milk temperature").first
        row.evaluate("(one) => one.scrollIntoView({ block: 'center' })")
        looked(phone.page)
        box = row.bounding_box()
        finger.tap((box["x"] + 40, box["y"] + 30), 300)
        keys = phone.page.locator(".keys .key")
        for letter in typed:
            key = keys.filter(has_text=re.compile(f"^{re.escape(letter)}$"))
            at = key.bounding_box()
            finger.tap((at["x"] + at["width"] / 2, at["y"] + at["height"] / 2), 300)
        finger.tap(finger.middle(".foot .primary"), 300)
        until(lambda: "/reading/" not in phone.page.evaluate("location.hash"), "saved")
    log = phone.run("return state.view.value.log")
    told = [row["data"]["typed"] for row in log if row["kind"] == "reading_taken"]
    assert sorted(told) == ["4.2", "4.4", "4.9", "5", "5.1"]


# A button over the page that is done recording when it is told so.
RECORDING = """
  const [{ Tap }, { html }, { render }] = await Promise.all([
    import("/js/parts/tap.js"), import("/js/parts/html.js"), import("preact"),
  ]);
  const place = document.createElement("div");
  place.style.cssText = "position: fixed; inset: 100px auto auto 100px; z-index: 9";
  document.body.append(place);
  window.recorded = 0;
  const act = () => new Promise((done) => {
    window.recorded += 1;
    window.finish = done;
  });
  render(html`<${Tap} class="recording" onTap=${act}>Record it</${Tap}>`, place);
"""


@pytest.mark.everyday
def test_what_is_being_recorded_is_not_recorded_again_and_says_that_it_waits(new_phone):
    phone = new_phone()
    phone.run(RECORDING)
    settled(phone)
    finger = Touch(phone)
    spot = finger.middle(".recording")
    waiting = phone.page.locator(".recording.is-waiting")

    def recorded():
        return phone.page.evaluate("window.recorded")

    finger.tap(spot)
    until(lambda: recorded() == 1, "the first press to count")
    phone.page.wait_for_timeout(1500)  # longer than a new button waits
    finger.tap(spot)
    waiting.wait_for()
    phone.page.evaluate("window.finish()")
    phone.page.wait_for_timeout(100)
    finger.tap(spot)
    waiting.wait_for()
    assert recorded() == 1
    settled(phone)
    finger.tap(spot)
    until(lambda: recorded() == 2, "the press after a look to count")
