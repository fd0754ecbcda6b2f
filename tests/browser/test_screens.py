"""What a wet, gloved hand meets: sizes, contrast, touches, the pad, the words.

The figures checked here (96 px, 60 px, 12 px, 20/24/56/64 px, contrast 7:1) are
this project's own acceptance figures for work with wet gloves; 7:1 is WCAG 2.2
success criterion 1.4.6.
"""

import re

import pytest
from axe_playwright_python.sync_playwright import Axe

from server.core.log.kinds.columns import ROLES
from server.core.log.kinds.table import KINDS
from server.core.recipe.hazards import HAZARDS
from server.core.recipe.steps.judgements import JUDGEMENTS
from server.core.units.quantities import QUANTITIES
from tests.browser.conftest import ROOT, looked, until

AXE = {
    "runOnly": {
        "type": "rule",
        "values": [
            "color-contrast-enhanced",
            "button-name",
            "label",
            "aria-allowed-attr",
            "aria-valid-attr-value",
            "image-alt",
            "list",
            "nested-interactive",
        ],
    }
}
# All that can be tapped and is in sight, with its box.
TAPS = """
() => [...document.querySelectorAll("button, input, textarea")].map((one) => {
  const box = one.getBoundingClientRect();
  // What has been scrolled out of sight cannot be hit.
  const frame = one.closest(".scroll, .keypad-more")?.getBoundingClientRect();
  // Nor can what lies below a foot that stays in its place.
  const foot = one.closest(".foot") ? null : document.querySelector(".main .foot");
  const stays = foot && getComputedStyle(foot).position === "fixed";
  const end = stays ? foot.getBoundingClientRect().top - 12 : Infinity;
  const top = document.elementFromPoint(
    box.left + box.width / 2, box.top + box.height / 2);
  return {
    name: one.className + " " + (one.textContent || one.type).slice(0, 40),
    key: one.classList.contains("key"), primary: one.classList.contains("primary"),
    left: box.left, right: box.right,
    top: Math.max(box.top, frame?.top ?? 0),
    bottom: Math.min(box.bottom, frame?.bottom ?? Infinity, end),
    width: box.width, height: box.height,
    seen: box.width > 0 && top !== null && (one === top || one.contains(top)),
  };
}).filter((one) => one.seen)
"""
TOO_WIDE = """
() => [...document.querySelectorAll("body *")].filter((one) => {
  const box = one.getBoundingClientRect();
  const wide = document.documentElement.clientWidth;
  return box.width > 0 && (box.right > wide + 1 || box.left < -1);
}).map((one) => one.className + " " + one.textContent.slice(0, 40))
"""
SMALL_TEXT = """
() => {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found = [];
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const holder = node.parentElement;
    if (!node.textContent.trim() || !holder.getClientRects().length) continue;
    if (["SCRIPT", "NOSCRIPT"].includes(holder.tagName)) continue;
    const size = parseFloat(getComputedStyle(holder).fontSize);
    if (size < 20) found.push([size, node.textContent.slice(0, 40)]);
  }
  return found;
}
"""
PLACES = [
    "now", "menu", "live", "makes", "new", "recipes", "recipes/washed-wheel",
    "look", "device", "who", "make/ID", "make/ID/steps", "make/ID/record",
    "make/ID/batch", "make/ID/note", "make/ID/timer", "make/ID/other/receive",
    "make/ID/reading/receive/milk_temp_c", "make/ID/reading/receive/ph",
    "make/ID/reading/receive/drug_test", "make/ID/add/rennet/rennet",
    "make/ID/judge/set", "make/ID/skip/heat", "make/ID/begin/heat",
    "make/ID/mould/fill_moulds", "make/ID/end/receive", "make/ID/curve",
    "make/ID/milk",
    "alarms", "store", "sums", "trends",
]  # fmt: skip


def show(phone, place):
    """Go to a place by its address, as a link or the Back key would."""
    phone.page.evaluate("(place) => { location.hash = '#/' + place; }", place)
    phone.page.wait_for_timeout(350)
    looked(phone.page)


def see_cautions(phone, make):
    """Have all cautions seen already by who taps on this phone, in this shift."""
    phone.record("cautions_seen", make=make, data={"cautions": sorted(HAZARDS)})


LATE = """
  const { loadLate } = await import("/js/screens/late.js");
  await loadLate();
  const drawn = (done) => requestAnimationFrame(() => requestAnimationFrame(done));
  await new Promise(drawn);
"""


def read_cautions(phone):
    phone.run(LATE)  # they come with the later screens, which nothing waits for
    accept = phone.page.get_by_text("I have read this")
    if accept.count():
        accept.tap()
        # A second tap would land on the step's own button, which comes there next.
        accept.wait_for(state="detached")
        looked(phone.page)


def show_new_make(phone):
    """Open a make, show it, read its cautions; return its id."""
    make = phone.open_make()
    show(phone, f"make/{make}")
    phone.page.locator(".primary").wait_for()
    read_cautions(phone)
    return make


@pytest.fixture
def at_make(phone_of_the_day):
    """A maker's phone that shows a make just opened, its cautions read."""
    phone = phone_of_the_day
    phone.begin_anew()
    make = show_new_make(phone)
    yield phone, make
    # So that nothing of it rings or is due for those that come after.
    phone.record("make_abandoned", make=make, data={"why": "Its test is over"})
    assert phone.problems == []


@pytest.mark.parametrize("over", ["make_closed", "make_abandoned"])
def test_a_make_that_is_over_shows_its_step_and_no_cautions(new_phone, over):
    # Seen: the cautions' sheet stood before a make in which nothing can be done.
    phone = new_phone()
    make = phone.open_make()
    show(phone, f"make/{make}")
    phone.page.locator(".cautions").wait_for()
    phone.record(over, make=make, data={"why": "Milk refused"})
    phone.page.locator(".step-card").wait_for()
    assert phone.page.locator(".cautions").count() == 0
    assert phone.page.locator(".foot .primary").count() == 0


def weighed(phone):
    rows = phone.run("return state.view.value.log.map((line) => line.data)")
    return [row for row in rows if row.get("quantity") == "wheel_mass_kg"]


def test_a_wheel_weighed_in_a_step_names_its_size(new_phone):
    # Seen: only the store named it, so the wheels of a step counted for no size.
    phone = new_phone()
    sizes = [{"size": "small", "count": 20}, {"size": "large", "count": 4}]
    make = phone.open_make(moulds=sizes)
    show(phone, f"make/{make}/reading/unmould/wheel_mass_kg")
    phone.page.get_by_text("Which mould size?").wait_for()
    assert problems_of_layout(phone.page, 412, 839) == []
    phone.page.locator(".row", has_text="Large wheel").tap()
    phone.page.locator(".keys").wait_for()
    assert phone.page.get_by_text("Large wheel").is_visible()
    press(phone, "8.05")
    phone.page.locator(".primary").tap()
    until(lambda: len(weighed(phone)) == 1, "the weighing")
    (row,) = weighed(phone)
    assert (row["place"], row["step"], row["typed"]) == ("large", "unmould", "8.05")


def test_of_one_size_and_in_a_step_of_one_size_nobody_is_asked(new_phone):
    phone = new_phone()
    make = phone.open_make(moulds=[{"size": "small", "count": 20}])
    show(phone, f"make/{make}/reading/unmould/wheel_mass_kg")
    phone.page.locator(".keys").wait_for()
    assert phone.page.get_by_text("Small wheel").is_visible()
    sizes = [{"size": "small", "count": 20}, {"size": "large", "count": 4}]
    make = phone.open_make(moulds=sizes)
    show(phone, f"make/{make}/reading/brine_large/wheel_mass_kg")
    phone.page.locator(".keys").wait_for()
    assert phone.page.get_by_text("Large wheel").is_visible()


def gap(one, other):
    across = max(one["left"] - other["right"], other["left"] - one["right"])
    down = max(one["top"] - other["bottom"], other["top"] - one["bottom"])
    return max(across, down)


def problems_of_layout(page, wide, high):
    found = [f"too wide: {text}" for text in page.evaluate(TOO_WIDE)]
    found += [f"small text: {text}" for text in page.evaluate(SMALL_TEXT)]
    taps = page.evaluate(TAPS)
    for place, one in enumerate(taps):
        # On its side the large button may stand beside what it saves.
        across = 0.6 * wide if high > wide else 300
        least = (96, across) if one["primary"] else (60, 60)
        least = (72, 72) if one["key"] and "sign" not in one["name"] else least
        if one["key"] and high < 600:
            least = (48, 60)  # keys shrink before anything of a pad goes out of sight
        if one["height"] < least[0] - 0.5 or one["width"] < least[1] - 0.5:
            found.append(f"small: {one['name']} {one['width']}x{one['height']}")
        if one["primary"] and high > wide and one["top"] < 0.4 * high:
            found.append(f"too high up: {one['name']}")
        for other in taps[:place]:
            if gap(one, other) < 11.5:
                found.append(f"too near: {one['name']} | {other['name']}")
    return found


SIZES = [(360, 740), (412, 839), (820, 1180), (740, 360), (1180, 820)]


# The smallest phone each day; the others take a minute.
@pytest.mark.parametrize(
    ("wide", "high"),
    [pytest.param(*SIZES[0], marks=pytest.mark.everyday), *SIZES[1:]],
)
def test_every_place_keeps_its_sizes_and_gaps(at_make, wide, high):
    phone, make = at_make
    phone.page.set_viewport_size({"width": wide, "height": high})
    found = {}
    for place in PLACES:
        show(phone, place.replace("ID", make))
        assert phone.page.locator("main .sheet").count(), place
        problems = problems_of_layout(phone.page, wide, high)
        if problems:
            found[place] = problems
    assert found == {}


def turned(page, wide, high):
    """Give the screen another size, and a moment to lay itself out in it."""
    page.set_viewport_size({"width": wide, "height": high})
    page.evaluate("() => new Promise((done) => setTimeout(done, 50))")
    looked(page)


def test_nothing_runs_off_the_screen_when_text_is_twice_as_large(at_make):
    phone, make = at_make
    phone.page.evaluate("document.documentElement.style.fontSize = '250%'")
    for place in PLACES:
        show(phone, place.replace("ID", make))
        for wide, high in SIZES:
            turned(phone.page, wide, high)
            assert phone.page.evaluate(TOO_WIDE) == [], (place, wide)
            for box in phone.page.evaluate(TAPS):
                assert not box["primary"] or box["bottom"] <= high, (place, wide)


@pytest.mark.parametrize("text", ["125%", "250%"])
def test_an_alarm_and_undo_leave_room_for_the_step(at_make, text):
    # Seen: with text twice as large an alarm pushed the large button off the screen.
    phone, make = at_make
    phone.page.get_by_role("button", name="Begin: Receive the milk").tap()
    lasts = {"label": "Rinse the moulds in the sink", "lasts_s": 1}
    phone.record("timer_started", make=make, data=lasts)
    phone.page.locator(".alarm-bar").wait_for()
    phone.run("""
      const { lastAct } = await import("/js/parts/acts.js");
      lastAct.value = { ...lastAct.value, untilMs: nowMs() + 600000 };
    """)
    phone.page.evaluate(
        "(size) => { document.documentElement.style.fontSize = size; }", text
    )
    found = {}
    for place in ("make/ID", "make/ID/reading/receive/milk_temp_c"):
        show(phone, place.replace("ID", make))
        for wide, high in SIZES:
            turned(phone.page, wide, high)
            problems = problems_of_layout(phone.page, wide, high)
            names = ["primary", "alarm-silence"]
            if text == "125%" and place == "make/ID":
                names.append("timer")  # the step's one number
            for name in names:
                box = phone.page.locator(f".main .{name}").first.bounding_box()
                if box["y"] < 0 or box["y"] + box["height"] > high:
                    problems.append(f"out of sight: {name} {box}")
            if problems:
                found[place, wide, high] = problems
    assert found == {}


# Marks without a word that is in sight.
WORDLESS = """
() => [...document.querySelectorAll(".main .mark")].filter((one) => {
  const word = one.querySelector(".mark-word").getBoundingClientRect();
  return one.getClientRects().length && !(word.width > 20 && word.height > 10);
}).map((one) => one.textContent)
"""


def test_a_state_keeps_its_word_on_a_small_phone_under_an_alarm(at_make):
    # Seen: to make room the words went, and shape and colour alone were left.
    phone, make = at_make
    phone.page.set_viewport_size({"width": 360, "height": 740})
    phone.page.get_by_role("button", name="Begin: Receive the milk").tap()
    lasts = {"label": "Rinse the moulds in the sink", "lasts_s": 1}
    phone.record("timer_started", make=make, data=lasts)
    phone.page.locator(".alarm-bar").wait_for()
    warm = {"quantity": "milk_temp_c", "value": 9.0, "typed": "9.0", "typed_unit": "C"}
    phone.record("reading_taken", make=make, data={**warm, "step": "receive"})
    phone.page.locator(".step-card .mark").first.wait_for()
    for place in ("make/ID", "make/ID/reading/receive/milk_temp_c"):
        show(phone, place.replace("ID", make))
        word = phone.page.locator(".alarm-bar .mark-word")
        assert word.text_content() in ("CHECK", "ACT NOW", "DUE")
        assert word.is_visible()
        assert phone.page.evaluate(WORDLESS) == [], place
        assert problems_of_layout(phone.page, 360, 740) == [], place
    show(phone, f"make/{make}")
    box = phone.page.locator(".foot .primary").bounding_box()
    assert box["height"] >= 96
    assert 0.4 * 740 <= box["y"] <= 740 - box["height"]


def test_every_text_has_a_contrast_of_at_least_seven_to_one_by_day_and_night(at_make):
    phone, make = at_make
    found = {}
    for place in PLACES:
        show(phone, place.replace("ID", make))
        for scheme in ("light", "dark"):
            phone.page.emulate_media(color_scheme=scheme)
            result = Axe().run(phone.page, options=AXE)
            if result.violations_count:
                found[place, scheme] = result.generate_report()
    assert found == {}


def font_px(phone, selector):
    script = "(one) => parseFloat(getComputedStyle(one).fontSize)"
    return phone.page.locator(selector).first.evaluate(script)


def test_the_step_its_timer_and_the_typed_value_are_large(at_make):
    phone, make = at_make
    assert font_px(phone, ".instruction") >= 24
    phone.page.get_by_role("button", name="Begin: Receive the milk").tap()
    phone.page.locator(".timer").wait_for()
    assert font_px(phone, ".timer") >= 64
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    assert font_px(phone, ".entered-value") >= 56


# --- touches ---


class Finger:
    """Touches as the browser gets them from the screen."""

    def __init__(self, phone):
        self.page = phone.page
        self.cdp = phone.context.new_cdp_session(phone.page)

    def middle(self, locator):
        looked(self.page)
        box = locator.bounding_box()
        return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2

    def send(self, kind, *points):
        rows = [{"x": x, "y": y, "id": n} for n, (x, y) in enumerate(points)]
        self.cdp.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": rows})


@pytest.fixture
def pad(at_make):
    """A phone at the pad for the milk's temperature."""
    phone, make = at_make
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    phone.page.locator(".keys").wait_for()
    return phone


def key(phone, name):
    return phone.page.locator(".keys .key").filter(has_text=re.compile(f"^{name}$"))


def typed(phone):
    return phone.page.locator(".entered-value").inner_text()


def until_typed(phone, text):
    until(lambda: typed(phone) == text, f"{text} on the pad")


def press(phone, text):
    for letter in text:
        key(phone, re.escape(letter)).tap()
        phone.page.wait_for_timeout(90)
    phone.page.wait_for_timeout(200)


@pytest.mark.everyday
def test_a_tap_counts_once_although_a_click_follows_it(pad):
    finger = Finger(pad)
    finger.send("touchStart", finger.middle(key(pad, "4")))
    finger.send("touchEnd")
    pad.page.wait_for_timeout(500)
    until_typed(pad, "4")


def test_a_drop_of_water_beside_the_keys_does_not_swallow_the_tap(pad):
    finger = Finger(pad)
    drop = finger.middle(pad.page.locator(".keypad h2"))
    five = finger.middle(key(pad, "5"))
    finger.send("touchStart", drop)
    finger.send("touchStart", drop, five)
    finger.send("touchEnd", drop)
    finger.send("touchEnd")
    pad.page.wait_for_timeout(500)
    until_typed(pad, "5")


@pytest.mark.everyday
def test_two_keys_touched_at_once_are_one_key_and_the_screen_says_so(pad):
    finger = Finger(pad)
    four, nine = finger.middle(key(pad, "4")), finger.middle(key(pad, "9"))
    finger.send("touchStart", four, nine)
    finger.send("touchEnd")
    pad.page.wait_for_timeout(500)
    until_typed(pad, "4")
    pad.page.get_by_text("Two touches at once").wait_for()


def test_a_finger_that_drifts_35_px_within_the_button_still_taps(at_make):
    phone, _ = at_make
    finger = Finger(phone)
    x, y = finger.middle(phone.page.locator(".primary"))
    finger.send("touchStart", (x, y - 20))
    finger.send("touchMove", (x + 20, y))
    finger.send("touchMove", (x + 20, y + 15))
    finger.send("touchEnd")
    phone.page.locator(".timer").wait_for()


def test_a_finger_that_slides_off_the_button_does_not_tap(at_make):
    phone, _ = at_make
    finger = Finger(phone)
    x, y = finger.middle(phone.page.locator(".primary"))
    finger.send("touchStart", (x, y))
    finger.send("touchMove", (x, y - 90))
    finger.send("touchEnd")
    phone.page.wait_for_timeout(600)
    log = phone.run("return state.view.value.log.map((line) => line.kind)")
    assert "step_begun" not in log


def test_the_button_shows_at_once_that_it_is_touched(at_make):
    phone, _ = at_make
    finger = Finger(phone)
    button = phone.page.locator(".primary")
    before = button.evaluate("(one) => getComputedStyle(one).backgroundColor")
    finger.send("touchStart", finger.middle(button))
    after = button.evaluate("(one) => getComputedStyle(one).backgroundColor")
    finger.send("touchCancel")
    assert before != after


@pytest.mark.everyday
def test_a_step_begins_once_however_often_the_finger_bounces(at_make):
    phone, _ = at_make
    finger = Finger(phone)
    middle = finger.middle(phone.page.locator(".primary"))
    for _ in range(3):
        finger.send("touchStart", middle)
        finger.send("touchEnd")
    until(lambda: "step_begun" in kinds(phone), "the step to begin")
    phone.page.wait_for_timeout(800)
    assert kinds(phone).count("step_begun") == 1


def test_enter_on_a_pedal_or_keyboard_presses_the_button_once(at_make):
    phone, _ = at_make
    phone.page.locator(".primary").focus()
    phone.page.keyboard.down("Enter")
    phone.page.keyboard.down("Enter")  # held: the browser repeats the key
    phone.page.keyboard.up("Enter")
    phone.page.locator(".timer").wait_for()
    log = phone.run("return state.view.value.log.map((line) => line.kind)")
    assert log.count("step_begun") == 1


def test_a_helper_begins_a_step_with_two_taps_from_what_is_due(creamery, new_phone):
    maker, helper = new_phone(), new_phone("Tove", "helper")
    make = maker.open_make()
    maker.sent()
    helper.sent()
    see_cautions(helper, make)  # before, in this shift
    show(helper, "now")
    helper.page.get_by_role("button", name="Begin: Receive the milk").tap()
    helper.page.locator(".primary").filter(has_text="Begin").tap()
    until(
        lambda: any(one["kind"] == "step_begun" for one in creamery.events()),
        "the step to begin on the server",
    )


# --- the pad ---


def test_a_second_point_and_a_third_decimal_are_refused(pad):
    press(pad, "4.")
    key(pad, re.escape(".")).tap()
    press(pad, "25")
    until_typed(pad, "4.2")  # a thermometer is read to one decimal
    # A digit that vanished in silence would be a value silently changed.
    says = pad.page.locator(".keypad-says")
    assert says.inner_text() == "Decimals here: 1 at most."
    key(pad, re.escape(".")).tap()
    pad.page.get_by_text("It has a point already.").wait_for()
    press(pad, "⌫")
    assert (typed(pad), says.inner_text()) == ("4.", "")


def kinds(phone):
    return phone.run("return state.view.value.log.map((line) => line.kind)")


def test_a_large_step_from_the_last_value_asks_for_a_second_look(at_make):
    phone, make = at_make
    data = {"quantity": "ph", "value": 6.5, "step": "receive"}
    phone.record("reading_taken", make=make, data={**data, "typed": "6.5"})
    show(phone, f"make/{make}/reading/receive/ph")
    assert "6.50" in phone.page.locator(".keypad-last").inner_text()
    press(phone, "4.60")
    assert "−1.90" in phone.page.locator(".keypad-last b").inner_text()
    phone.page.locator(".primary").tap()
    phone.page.get_by_text("From 6.50 to 4.60: a large step. Keep it?").wait_for()
    assert kinds(phone).count("reading_taken") == 1
    phone.page.get_by_role("button", name="Type it again").tap()
    until_typed(phone, "4.60")  # nothing entered is lost
    phone.page.locator(".primary").tap()
    phone.page.get_by_role("button", name="Keep 4.60").tap()
    phone.until("state.view.value.log[0].data.value === 4.6", "the reading")


def test_a_comma_on_a_keyboard_is_the_point(pad):
    for letter in "4,5":
        pad.page.keyboard.press(letter)
        pad.page.wait_for_timeout(60)
    until_typed(pad, "4.5")


def test_an_impossible_value_is_refused_with_field_and_limit(pad):
    press(pad, "111")
    # 110 °C is the highest that the table of quantities takes for milk.
    refusal = "Milk temperature cannot be above 110.0\u00a0°C."
    assert pad.page.locator(".keypad-says").inner_text() == refusal
    assert pad.page.locator(".primary").is_disabled()
    until_typed(pad, "111")


@pytest.mark.everyday
def test_an_unlikely_value_asks_and_the_answer_is_not_where_save_was(pad):
    press(pad, "82.5")
    save = pad.page.locator(".primary")
    before = save.bounding_box()
    save.tap()
    keep = pad.page.get_by_role("button", name="Keep 82.5 °C")
    keep.wait_for()
    assert keep.bounding_box()["y"] + keep.bounding_box()["height"] <= before["y"]
    keep.tap()
    pad.until("state.view.value.log[0].kind === 'reading_taken'", "the reading")
    assert pad.run("return state.view.value.log[0].data.value") == 82.5


@pytest.mark.everyday
def test_a_value_that_could_not_be_saved_stays_in_sight_in_red(new_phone):
    phone = new_phone()
    make = show_new_make(phone)
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    press(phone, "4.5")
    phone.page.evaluate("""() => {
      IDBDatabase.prototype.transaction = function () {
        throw new DOMException("planted", "QuotaExceededError");
      };
    }""")
    phone.page.locator(".primary").tap()
    entered = phone.page.locator(".entered.is-bad")
    entered.wait_for()
    until_typed(phone, "4.5")
    red = entered.evaluate("(one) => getComputedStyle(one).color")
    assert red == "rgb(138, 0, 22)"
    assert "Not saved" in phone.page.locator(".bar-act").inner_text()


@pytest.mark.everyday
def test_undo_strikes_the_last_tap_and_the_record_keeps_both(at_make):
    phone, _ = at_make
    phone.page.locator(".primary").tap()
    phone.page.get_by_role("button", name="Undo", exact=True).tap()
    phone.until(
        "state.view.value.steps[0].status === 'ready'", "the step to be ready again"
    )
    line = phone.run(
        "return state.view.value.log.find((line) => line.kind === 'step_begun')"
    )
    assert line["struck"]["why"] == "undo"


# --- words ---


ENGLISH = """
const { TEXTS } = await import("/js/messages/en/index.js");
const { PAGE } = await import("/js/messages/en/page.js");
return { ...TEXTS, ...PAGE };
"""


def catalogue(phone):
    return phone.run(ENGLISH)


@pytest.mark.everyday
def test_every_key_that_a_screen_names_has_a_text(phone_of_the_day, program):
    texts = catalogue(phone_of_the_day)
    missing = []
    for path in sorted((program / "static" / "js").rglob("*.js")):
        if "messages" in path.parts:
            continue
        for which, name in re.findall(
            r"\b(tn?)\(\s*['\"]([\w.]+)['\"]\s*[,)]", path.read_text()
        ):
            names = [f"{name}.one", f"{name}.many"] if which == "tn" else [name]
            missing += [f"{path.name}: {one}" for one in names if one not in texts]
    assert missing == []


# What the wings of the core say by `key`, by how their words begin: of an entry or a
# recipe what is wrong with it, and else as here.
SAID = {
    "formulas": ("note.", "of."),
    "heat": ("note.", "problem.", "record.", "hold.says.", "hold.says.again_"),
    "make": ("note.", "problem."),
    "matters": ("note.", "problem."),
    "step": ("blocker.",),
}
# No refusal: the pad asks once more, or a sum makes a note of its own of it; the name
# of a gate; and how the words of another key begin.
ASKED = {"unlikely_low", "unlikely_high", "jump", "recipe_milk", "above_limit"}
ASKED |= {"other_unit", "far", "hold", "again_"}


def keys_of_core():
    """Return by wing of the core the keys of what it says is wrong."""
    found = {}
    for path in (ROOT / "server/core").rglob("*.py"):
        wing = path.relative_to(ROOT / "server/core").parts[0]
        keys = re.findall(r'"key": "([a-z_]+)"', path.read_text("utf-8"))
        found.setdefault(wing, set()).update(set(keys) - ASKED)
    return found


@pytest.mark.everyday
def test_every_word_of_the_core_has_a_text(phone_of_the_day):
    texts = catalogue(phone_of_the_day)
    keys = keys_of_core()
    assert sum(map(len, keys.values())) > 50
    for wing, names in keys.items():
        said = SAID.get(wing, ("problem.",))
        for name in names:
            assert any(what + name in texts for what in said), (wing, name)
    wanted = [f"quantity.{name}" for name in QUANTITIES]
    wanted += [f"judgement.{name}" for name in JUDGEMENTS]
    wanted += [f"judgement_how.{name}" for name in JUDGEMENTS]
    wanted += [f"line.{kind}" for kind in KINDS] + [f"kind.{kind}" for kind in KINDS]
    wanted += [f"role.{role}" for role in ROLES]
    assert [name for name in wanted if name not in texts] == []


def test_a_quantity_is_shown_to_the_decimals_of_the_core_s_table(phone_of_the_day):
    shown = phone_of_the_day.run(
        """
        const { formOf, unitOf } = await import("/js/format.js");
        const told = (name) => [name, formOf(name).decimals, unitOf(name)];
        return args[0].map(told);
        """,
        [name for name, row in QUANTITIES.items() if row["type"] == "number"],
    )
    for name, decimals, unit in shown:
        moved = 2 if unit == "%" else 0  # a fraction shown in percent
        assert decimals + moved == QUANTITIES[name]["decimals"], name


@pytest.mark.everyday
def test_no_text_promises_what_the_tool_cannot(phone_of_the_day):
    for name, text in catalogue(phone_of_the_day).items():
        assert not re.search(r"\b(safe|safely|compliant)\b", text, re.I), name


def test_each_state_has_its_own_shape_and_word(phone_of_the_day):
    marks = phone_of_the_day.run("""
      const { render } = await import("preact");
      const { html } = await import("/js/parts/html.js");
      const { StateMark } = await import("/js/parts/state-mark.js");
      const { MARKS } = await import("/js/parts/marks.js");
      return Object.keys(MARKS).map((state) => {
        const holder = document.createElement("div");
        render(html`<${StateMark} state=${state} />`, holder);
        const word = holder.textContent.trim();
        const shape = holder.querySelector("svg").innerHTML;
        render(html`<${StateMark} bare state=${state} />`, holder);
        const bare = holder.querySelector("[role=img]");
        return [word, shape, bare.getAttribute("aria-label"), bare.textContent.trim()];
      });
    """)
    assert len(marks) == len({word for word, *_ in marks}) == 11
    assert len({shape for _, shape, *_ in marks}) == 11
    # Where no word stands beside it, a screen reader says the same.
    assert [(label, text) for _, _, label, text in marks] == [
        (word, "") for word, *_ in marks
    ]


@pytest.mark.everyday
def test_a_step_shows_the_mark_that_the_core_tells(at_make):
    phone, _ = at_make
    mark = phone.page.locator(".step-card .mark").first
    mark.wait_for()
    assert "mark-ready" in mark.get_attribute("class")
    phone.page.get_by_role("button", name="Begin: Receive the milk").tap()
    phone.page.locator(".step-card .mark:not(.mark-ready)").first.wait_for()
    told = phone.run("return state.view.value.steps[0].mark")
    assert told in ("running", "due")
    assert f"mark-{told}" in mark.get_attribute("class")
