"""Wet, gloved or busy hands: the lock against water, a pedal, a voice.

The figures (120 px, about 1.5 s, 64 px) are this project's own acceptance figures.
Touches go in as the browser gets them from the screen.
"""

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.conftest import looked, press_when_seen, until
from tests.browser.test_screens import (
    AXE,
    SIZES,
    TOO_WIDE,
    Finger,
    font_px,
    read_cautions,
    show,
)

HOLD_MS = 1700  # a little over the 1.5 s that the bar asks for


@pytest.fixture
def at_make(new_phone):
    """A maker's phone that shows a make just opened, its cautions read."""
    phone = new_phone()
    make = phone.open_make()
    show(phone, f"make/{make}")
    phone.page.locator(".primary").wait_for()
    read_cautions(phone)
    return phone, make


def begun(phone):
    """Begin the step on the screen, so that its clock runs."""
    phone.page.locator(".foot .primary").tap()
    phone.page.locator(".timer").wait_for()


def kinds(phone):
    return phone.run("return state.view.value.log.map((line) => line.kind)")


def struck(phone):
    body = "return state.view.value.log.filter((line) => line.struck)"
    return [line["kind"] for line in phone.run(body)]


def lock(phone):
    phone.page.get_by_role("button", name="Lock the screen against water").tap()
    bar(phone).wait_for()


def bar(phone):
    return phone.page.locator(".lock-hold")


def is_locked(phone):
    return phone.page.locator(".wet-lock").count() == 1


def until_unlocked(phone):
    phone.page.locator(".wet-lock").wait_for(state="detached")


def until_told(phone, kind):
    """Wait until such an entry is in the log; how many, the test says."""
    until(lambda: kind in kinds(phone), kind)


def hold(phone, held_ms=HOLD_MS, finger=None, others=(), at=None):
    finger = finger or Finger(phone)
    finger.send("touchStart", finger.middle(at or bar(phone)), *others)
    phone.page.wait_for_timeout(held_ms)
    finger.send("touchEnd")
    phone.page.wait_for_timeout(150)


def test_one_tap_locks_and_a_long_hold_unlocks(at_make):
    phone, _ = at_make
    lock(phone)
    assert phone.page.get_by_text("To unlock: hold the bar").is_visible()
    box = bar(phone).bounding_box()
    assert min(box["width"], box["height"]) >= 120
    hold(phone)
    until_unlocked(phone)
    assert kinds(phone).count("step_begun") == 0


def test_a_hold_shows_its_progress_and_says_when_to_let_go(at_make):
    phone, _ = at_make
    lock(phone)
    finger = Finger(phone)
    finger.send("touchStart", finger.middle(bar(phone)))
    phone.page.wait_for_timeout(700)
    width = "(one) => one.getBoundingClientRect().width"
    filled = phone.page.locator(".hold-fill").evaluate(width)
    assert 0.1 < filled / bar(phone).bounding_box()["width"] < 0.9
    phone.page.get_by_text("Now let go").wait_for()
    assert is_locked(phone)  # nothing under the finger can be hit by letting go late
    finger.send("touchEnd")
    until_unlocked(phone)


@pytest.mark.parametrize("held_ms", [40, 1000, 7000])
def test_a_tap_a_short_hold_and_a_drop_that_stays_do_not_unlock(at_make, held_ms):
    phone, _ = at_make
    lock(phone)
    hold(phone, held_ms)
    assert is_locked(phone)


def test_two_contacts_on_the_bar_do_not_unlock(at_make):
    phone, _ = at_make
    lock(phone)
    finger = Finger(phone)
    x, y = finger.middle(bar(phone))
    hold(phone, finger=finger, others=[(x + 60, y)])
    assert is_locked(phone)
    hold(phone)
    until_unlocked(phone)


def test_a_drop_elsewhere_does_not_keep_the_finger_from_unlocking(at_make):
    phone, _ = at_make
    lock(phone)
    finger = Finger(phone)
    drop, middle = (40, 200), finger.middle(bar(phone))
    finger.send("touchStart", drop)
    finger.send("touchStart", drop, middle)
    phone.page.wait_for_timeout(HOLD_MS)
    finger.send("touchEnd", drop)
    phone.page.wait_for_timeout(150)
    finger.send("touchEnd")
    until_unlocked(phone)


def test_a_hold_that_drifts_35_px_still_unlocks(at_make):
    phone, _ = at_make
    lock(phone)
    finger = Finger(phone)
    x, y = finger.middle(bar(phone))
    finger.send("touchStart", (x, y - 20))
    finger.send("touchMove", (x + 30, y))
    phone.page.wait_for_timeout(HOLD_MS)
    finger.send("touchEnd")
    until_unlocked(phone)


def test_no_touch_reaches_the_screen_beneath_the_lock(at_make):
    phone, _ = at_make
    finger = Finger(phone)
    spots = [
        finger.middle(phone.page.locator(name).first)
        for name in (".foot .primary", ".status-button", ".row")
    ]
    lock(phone)
    for spot in spots:
        finger.send("touchStart", spot)
        phone.page.wait_for_timeout(60)
        finger.send("touchEnd")
    finger.send("touchStart", *spots)
    phone.page.wait_for_timeout(400)
    finger.send("touchEnd")
    phone.page.wait_for_timeout(400)
    assert is_locked(phone)
    assert "step_begun" not in kinds(phone)
    assert phone.page.evaluate("location.hash").count("/") == 2


def test_the_clock_of_the_step_stays_large_under_the_lock(at_make):
    phone, _ = at_make
    begun(phone)
    lock(phone)
    timer = phone.page.locator(".lock-shown .timer").first
    before = timer.inner_text()
    assert font_px(phone, ".lock-shown .timer") >= 64
    until(lambda: timer.inner_text() != before, "the clock to go on", 10)


def test_the_lock_outlives_a_reload_with_no_network(at_make):
    phone, _ = at_make
    phone.kept_offline()
    lock(phone)
    phone.page.wait_for_timeout(1000)
    phone.context.set_offline(True)
    phone.reload()
    bar(phone).wait_for()
    hold(phone)
    until_unlocked(phone)
    phone.reload()
    assert not is_locked(phone)


def test_the_enter_key_leaves_the_lock_and_a_held_key_is_one_press(at_make):
    phone, _ = at_make
    lock(phone)
    phone.page.wait_for_timeout(1100)  # the tap's own click is past
    name = phone.page.get_by_role("button", name="Hold to unlock")
    name.focus()
    phone.page.keyboard.press("Enter")
    until_unlocked(phone)


def test_an_alarm_shows_under_the_lock_and_the_same_hold_silences_it(at_make):
    phone, make = at_make
    phone.record("timer_started", make=make, data={"label": "Rinse", "lasts_s": 1})
    lock(phone)
    phone.page.locator(".wet-lock .alarm-bar").wait_for()
    assert "Rinse" in phone.page.locator(".wet-lock .alarm-bar").inner_text()
    assert phone.page.get_by_text("To silence: hold the bar").is_visible()
    hold(phone)
    assert is_locked(phone)
    until(lambda: kinds(phone)[0] == "alert_acknowledged", "the entry")
    phone.page.locator(".wet-lock .alarm-bar").wait_for(state="detached")
    hold(phone)
    until_unlocked(phone)


# --- a pedal or clicker ---


def use_pedal(phone, keys=None):
    """Turn the pedal on as a person does, and let it learn keys where given."""
    show(phone, "device")
    phone.page.get_by_text("Use a pedal or clicker").tap()
    for words, key in (keys or {}).items():
        phone.page.get_by_text(words, exact=True).tap()
        phone.page.get_by_text("Press your pedal now").wait_for()
        phone.page.keyboard.press(key)
        phone.page.get_by_text(words, exact=True).wait_for()


def press_key(phone, key, wait_ms=700):
    phone.page.keyboard.press(key)
    phone.page.wait_for_timeout(wait_ms)


def press_seen_key(phone, key):
    """Press a key once what it presses has stood there for its second."""
    looked(phone.page)
    press_key(phone, key)


def test_no_key_presses_a_step_before_a_pedal_is_turned_on(at_make):
    phone, _ = at_make
    for key in ("PageDown", "ArrowRight", "b", "PageUp"):
        press_key(phone, key, 200)
    assert "step_begun" not in kinds(phone)


@pytest.mark.parametrize("key", ["PageDown", "ArrowRight", "Enter", "Space"])
def test_a_usual_key_presses_the_large_button_once_however_long_it_is_held(
    at_make, key
):
    phone, make = at_make
    use_pedal(phone)
    show(phone, f"make/{make}")
    for _ in range(5):
        phone.page.keyboard.down(key)  # held: the browser repeats the key
    phone.page.keyboard.up(key)
    for _ in range(4):  # another pedal sends whole presses while it is held
        press_key(phone, key, 100)
    phone.page.wait_for_timeout(600)
    until_told(phone, "step_begun")
    assert kinds(phone).count("step_begun") == 1
    assert phone.page.get_by_role("button", name="Undo", exact=True).is_visible()


def test_a_learnt_key_acts_and_is_kept_over_a_reload(at_make):
    phone, make = at_make
    use_pedal(phone, {"Presses the large button": "F9"})
    phone.reload()
    show(phone, f"make/{make}")
    # Until the core has told the cautions, no step can be begun.
    phone.page.locator(".foot .primary:enabled").wait_for()
    press_seen_key(phone, "PageDown")
    assert "step_begun" not in kinds(phone)  # what was learnt takes its place
    press_seen_key(phone, "F9")
    until_told(phone, "step_begun")
    assert kinds(phone).count("step_begun") == 1


def test_the_other_key_silences_the_alarm(at_make):
    phone, make = at_make
    use_pedal(phone)
    show(phone, f"make/{make}")
    phone.record("timer_started", make=make, data={"label": "Rinse", "lasts_s": 1})
    phone.page.locator(".alarm-bar").wait_for()
    press_seen_key(phone, "PageUp")
    until(lambda: kinds(phone)[0] == "alert_acknowledged", "the entry")
    phone.page.locator(".alarm-bar").wait_for(state="detached")


def test_no_key_but_enter_acts_while_a_value_is_typed(at_make):
    phone, make = at_make
    use_pedal(phone)
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    phone.page.locator(".keys .key").filter(has_text="4").tap()
    for key in ("PageDown", "ArrowRight", "Space", "F5", "b"):
        press_key(phone, key, 400)
    assert phone.page.locator(".entered-value").inner_text() == "4"
    assert "reading_taken" not in kinds(phone)
    press_seen_key(phone, "Enter")  # the key touched last has no say in it
    until(lambda: kinds(phone)[0] == "reading_taken", "the entry")
    assert phone.run("return state.view.value.log[0].data.typed") == "4"


def test_enter_presses_what_a_keyboard_has_brought_into_focus(at_make):
    phone, make = at_make
    use_pedal(phone)
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    phone.page.keyboard.press("Tab")
    phone.page.locator(".keys .key").filter(has_text="7").focus()
    press_seen_key(phone, "Enter")
    assert phone.page.locator(".entered-value").inner_text() == "7"


def test_the_pedal_works_under_the_lock_and_what_it_did_can_be_undone(at_make):
    phone, make = at_make
    use_pedal(phone)
    show(phone, f"make/{make}")
    lock(phone)
    press_seen_key(phone, "PageDown")
    assert is_locked(phone)
    until_told(phone, "step_begun")
    assert kinds(phone).count("step_begun") == 1
    assert phone.page.locator(".lock-said").is_visible()
    hold(phone)
    phone.page.get_by_role("button", name="Undo", exact=True).tap()
    phone.until("state.view.value.steps[0].status === 'ready'", "the step to be undone")


# --- the voice ---

VOICE = """
(() => {
  globalThis.spoken = [];
  const voices = LANGS.map((lang) => ({ lang, name: lang, localService: true }));
  globalThis.SpeechSynthesisUtterance = class {
    constructor(text) { this.text = text; }
  };
  const speech = {
    getVoices: () => voices, cancel() {}, addEventListener() {},
    speak(words) { spoken.push([words.lang, words.text]); },
  };
  Object.defineProperty(globalThis, "speechSynthesis", { value: speech });
})();
"""


def voice_phone(new_phone, *langs):
    phone = new_phone(scripts=[VOICE.replace("LANGS", str(list(langs)))])
    show(phone, "device")
    return phone, phone.page.locator(".row").filter(has_text="Read entries aloud")


def test_an_entry_is_read_aloud_with_its_unit_and_what_comes_next(new_phone):
    phone, option = voice_phone(new_phone, "de-DE", "en-GB")
    option.filter(has_text="Off").tap()
    option.filter(has_text="On").wait_for()
    make = phone.open_make()
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    for name in "42":
        phone.page.locator(".keys .key").filter(has_text=name).tap()
        phone.page.wait_for_timeout(120)
        if name == "4":
            phone.page.locator(".keys .key").filter(has_text=".").tap()
            phone.page.wait_for_timeout(120)
    phone.page.wait_for_timeout(300)
    phone.page.locator(".foot .primary").tap()
    phone.page.wait_for_function("() => spoken.length === 2")
    lang, words = phone.page.evaluate("spoken[1]")
    assert lang == "en-GB"
    assert words.startswith("Milk temperature 4.2 °C saved. Next: ")
    assert len(words) > len("Milk temperature 4.2 °C saved. Next: .")
    phone.reload()
    show(phone, "device")
    assert "On" in option.inner_text()


def test_without_a_voice_for_the_language_the_option_says_so(new_phone):
    _, option = voice_phone(new_phone, "de-DE")
    option.filter(has_text="no voice for this language").wait_for()
    assert option.is_disabled()


def test_nothing_is_said_until_a_person_asks_for_it(new_phone):
    phone, option = voice_phone(new_phone, "en-GB")
    option.filter(has_text="Says what was saved").wait_for()
    make = phone.open_make()
    phone.record("note_added", make=make, data={"text": "Fog."})
    show(phone, f"make/{make}")
    read_cautions(phone)
    begun(phone)
    phone.page.wait_for_timeout(500)
    assert phone.page.evaluate("spoken") == []


# --- how the lock fits ---


@pytest.mark.parametrize("text", ["125%", "250%"])
def test_the_lock_keeps_its_number_and_its_bar_in_sight_at_every_size(at_make, text):
    phone, make = at_make
    begun(phone)
    phone.record("timer_started", make=make, data={"label": "Rinse", "lasts_s": 1})
    lock(phone)
    phone.page.locator(".wet-lock .alarm-bar").wait_for()
    phone.page.evaluate(
        "(size) => { document.documentElement.style.fontSize = size; }", text
    )
    found = []
    for wide, high in SIZES:
        phone.page.set_viewport_size({"width": wide, "height": high})
        phone.page.wait_for_timeout(300)
        found += [(wide, text) for text in phone.page.evaluate(TOO_WIDE)]
        box = bar(phone).bounding_box()
        if box["y"] + box["height"] > high or min(box["width"], box["height"]) < 120:
            found.append((wide, high, "bar", box))
        timer = phone.page.locator(".lock-shown .timer").first.bounding_box()
        shown = phone.page.locator(".lock-shown").bounding_box()
        # Twice as large on a phone, what rings comes first and fills the screen.
        if text == "125%" and (
            timer["y"] + timer["height"] > shown["y"] + shown["height"]
        ):
            found.append((wide, high, "timer", timer))
    assert found == []


def test_the_lock_has_names_and_contrast(at_make):
    phone, _ = at_make
    begun(phone)
    lock(phone)
    result = Axe().run(phone.page, options=AXE)
    assert result.violations_count == 0, result.generate_report()


# --- touches: neither lost nor doubled ---


def undo_button(phone):
    return phone.page.get_by_role("button", name="Undo", exact=True)


def touch(phone, locator, drift=(0, 0), held_ms=0, drop=None):
    """Touch a button: with a drop beside it, drifting, or held, as wet hands do."""
    finger = Finger(phone)
    x, y = finger.middle(locator)
    x, y = x - drift[0] / 2, y - drift[1] / 2  # so that it ends within the button
    others = [drop] if drop else []
    if drop:
        finger.send("touchStart", drop)
    finger.send("touchStart", *others, (x, y))
    if any(drift):
        finger.send("touchMove", *others, (x + drift[0] / 2, y + drift[1] / 2))
        finger.send("touchMove", *others, (x + drift[0], y + drift[1]))
    if held_ms:
        phone.page.wait_for_timeout(held_ms)
    finger.send("touchEnd", *others)
    if drop:
        finger.send("touchEnd")
    phone.page.wait_for_timeout(450)


def touch_seen(phone, locator, **given):
    """Touch a button once it was looked at; again where the page left the touch out."""
    press_when_seen(phone.page, lambda: touch(phone, locator, **given))


WAYS = {
    "plain": {},
    "drifting 35 px": {"drift": (28, 21)},  # by Pythagoras 35
    "held": {"held_ms": 1200},
    "with a drop": {"drop": (206, 330)},
    "with a drop, drifting": {"drop": (206, 330), "drift": (28, 21)},
}


@pytest.mark.parametrize("way", WAYS)
def test_a_wet_touch_on_the_step_button_and_on_undo_counts_once(at_make, way):
    phone, _ = at_make
    touch_seen(phone, phone.page.locator(".foot .primary"), **WAYS[way])
    until_told(phone, "step_begun")
    assert kinds(phone).count("step_begun") == 1
    undo_button(phone).wait_for()
    touch_seen(phone, undo_button(phone), **WAYS[way])
    until(lambda: struck(phone) == ["step_begun"], "what was undone")
    # The touch was one: nothing else began, ended or was read.
    assert sorted(kinds(phone)) == ["cautions_seen", "make_opened", "step_begun"]


@pytest.mark.parametrize("way", WAYS)
def test_a_wet_touch_on_a_digit_is_one_digit(at_make, way):
    phone, make = at_make
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    phone.page.locator(".keys").wait_for()
    keys = phone.page.locator(".keys .key")
    given = {**WAYS[way]}
    if "drop" in given:
        given["drop"] = (206, 20)  # on the words on top, where nothing is tapped
    touch(phone, keys.filter(has_text="5"), **given)
    assert phone.page.locator(".entered-value").inner_text() == "5"


def test_undo_and_the_step_button_touched_at_once_are_one_touch(at_make):
    phone, _ = at_make
    begun(phone)
    finger = Finger(phone)
    undo_button(phone).wait_for()
    looked(phone.page)
    spots = [finger.middle(undo_button(phone))]
    spots.append(finger.middle(phone.page.locator(".foot .primary")))
    finger.send("touchStart", *spots)
    finger.send("touchEnd")
    phone.page.wait_for_timeout(600)
    until(lambda: struck(phone) == ["step_begun"], "what was undone")
    assert "/reading/" not in phone.page.evaluate("location.hash")
    phone.page.get_by_text("Two touches at once").wait_for()


# --- what stands on the step screen ---


def small_recipe(phone, *lasting):
    """Open a make of steps that only last: each the recipe's own key, and how long."""
    body = """
      const whole = state.recipes.value.find((one) => one.id === "washed-wheel");
      const steps = args[0].map(([key, value]) => {
        const one = whole.steps.find((step) => step.key === key);
        const { source, status } = one.lasts;
        return {
          key, title: one.title, do: one.do, place: one.place, after: [],
          end: { by: "time" }, lasts: { value, unit: "s", source, status },
        };
      });
      const { curve, gates, milk, ...rest } = whole;
      const { treatments, usual_treatment, ...plain } = milk; // none of its steps holds
      const recipe = { ...rest, milk: plain, steps, ingredients: [] };
      const made = await record("make_opened", { data: {
        name: "Vat one", batch: "B1", milk_l: recipe.milk.low_l, recipe } });
      await actions.openMake(made.make);
      return made.make;
    """
    make = phone.run(body, list(lasting))
    show(phone, f"make/{make}")
    phone.page.locator(".primary").wait_for()
    read_cautions(phone)
    return make


@pytest.mark.parametrize("lasts_s", [36000, 86400, 60 * 86400])
def test_a_long_timer_stays_within_its_card(new_phone, lasts_s):
    phone = new_phone()
    make = small_recipe(phone, ["press_3", lasts_s])
    begun(phone)
    phone.record("timer_started", make=make, data={"label": "Turn", "lasts_s": lasts_s})
    found = []
    for wide, high in SIZES:
        for text in ("125%", "250%"):
            phone.page.evaluate(
                "(size) => { document.documentElement.style.fontSize = size; }", text
            )
            phone.page.set_viewport_size({"width": wide, "height": high})
            phone.page.wait_for_timeout(200)
            for timer in phone.page.locator(".timer").all():
                card = phone.page.locator(".step-card").bounding_box()
                over = timer.evaluate("(one) => one.scrollWidth - one.clientWidth")
                if text == "125%" and font_px(phone, ".timer") < 56:
                    found.append((wide, "small", font_px(phone, ".timer")))
                box = timer.bounding_box()
                if over > 1 or box["x"] + box["width"] > card["x"] + card["width"]:
                    found.append((wide, text, timer.inner_text(), over))
    assert found == []


def test_the_running_step_is_shown_and_the_earlier_open_one_named_beneath(new_phone):
    phone = new_phone()
    small_recipe(phone, ["press_1", 600], ["press_3", 3600])
    titles = phone.run("return state.view.value.steps.map((one) => one.title.en)")
    assert phone.page.locator(".step-title").inner_text() == titles[0]
    phone.page.locator(".row").filter(has_text=titles[1]).first.tap()
    read_cautions(phone)
    begun(phone)
    phone.reload()
    phone.page.locator(".timer").wait_for()
    assert phone.page.locator(".step-title").inner_text() == titles[1]
    beneath = phone.page.get_by_text(f"Still open: {titles[0]}")
    card = phone.page.locator(".step-card").bounding_box()
    assert beneath.bounding_box()["y"] >= card["y"] + card["height"]
    beneath.tap()
    phone.page.locator(".step-title").filter(has_text=titles[0]).wait_for()


# --- held, where a make ends; undone, where it goes on ---


def at_the_end(phone, make, title, reason):
    """Open what ends a make, with its reason given; only the hold is left to do."""
    show(phone, f"make/{make}/batch")
    phone.page.locator(".row").filter(has_text=title).first.tap()
    phone.page.locator(".choice").filter(has_text=reason).tap()
    phone.page.locator(".hold-bar:enabled").wait_for()


@pytest.mark.parametrize(
    ("title", "reason", "state"),
    [
        ("Close the make", "All steps are done", "closed"),
        ("Give the make up", "The milk was refused", "abandoned"),
    ],
)
def test_what_ends_a_make_is_held_not_tapped(at_make, title, reason, state):
    phone, make = at_make
    at_the_end(phone, make, title, reason)
    finger = Finger(phone)
    bar_ = phone.page.locator(".hold-bar")
    x, y = finger.middle(bar_)
    finger.send("touchStart", (x, y))  # a tap
    finger.send("touchEnd")
    finger.send("touchStart", (x, y))  # a hold that slides off
    phone.page.wait_for_timeout(1100)
    finger.send("touchMove", (x, y - 200))
    finger.send("touchEnd")
    phone.page.wait_for_timeout(500)
    assert phone.run("return state.view.value.make.state") == "running"
    hold(phone, 1100, finger, at=bar_)
    phone.until(f"state.view.value.make.state === '{state}'", "the make to end")


def test_a_key_ends_a_make_with_two_presses_never_with_one(at_make):
    phone, make = at_make
    at_the_end(phone, make, "Close the make", "All steps are done")
    phone.page.wait_for_timeout(1100)  # what was touched before is past
    for _ in range(4):
        phone.page.locator(".hold-bar").focus()
        phone.page.keyboard.down("Enter")  # held: the browser repeats the key
    phone.page.keyboard.up("Enter")
    phone.page.get_by_text("Press once more").wait_for()
    assert phone.run("return state.view.value.make.state") == "running"
    phone.page.keyboard.press("Enter")
    phone.until("state.view.value.make.state === 'closed'", "the make to end")


def test_everyday_acts_offer_undo_at_once(at_make):
    phone, make = at_make
    begun(phone)
    undo_button(phone).wait_for(timeout=1000)  # the bar is painted after the step
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    phone.page.locator(".keys .key").filter(has_text="4").tap()
    phone.page.wait_for_timeout(300)
    phone.page.locator(".foot .primary").tap()
    phone.page.get_by_text("Milk temperature 4.0").first.wait_for()
    undo_button(phone).tap()
    phone.until(
        "state.view.value.log.filter((line) => line.struck).length === 1", "the undo"
    )
    until(lambda: struck(phone) == ["reading_taken"], "what was undone")


@pytest.mark.parametrize(("wide", "high"), [(360, 740), (412, 839)])
def test_the_keys_stay_beneath_the_finger_when_bars_come_and_go(at_make, wide, high):
    # Seen: undo went, the keys moved by a row, and 7.1 stood there instead of 4.1.
    phone, make = at_make
    phone.page.set_viewport_size({"width": wide, "height": high})
    place = f"make/{make}/reading/receive/milk_temp_c"
    show(phone, place)
    four = phone.page.locator(".keys .key").filter(has_text="4")
    before = four.bounding_box()
    show(phone, f"make/{make}")
    begun(phone)
    phone.record("timer_started", make=make, data={"label": "Rinse", "lasts_s": 1})
    phone.page.locator(".alarm-bar").wait_for()
    show(phone, place)
    assert undo_button(phone).is_visible()
    assert phone.page.locator(".alarm-silence").is_visible()
    assert four.bounding_box() == before
    entered = phone.page.locator(".entered-value").bounding_box()
    keys = phone.page.locator(".keys").bounding_box()
    assert entered["y"] + entered["height"] <= keys["y"] + 1
