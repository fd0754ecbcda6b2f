"""What is typed is in sight at every size, with every bar, and is never lost.

Seen: at 320 px the keys covered the typed value while Save worked, and ran off the
screen; on a phone on its side an alarm cut the bottom row of keys; Back discarded
what was typed.
"""

import pytest

from tests.browser.conftest import until
from tests.browser.test_screens import TOO_WIDE, press, show
from tests.browser.test_which_vat import begun, language, say_something, sized

SIZES = [(320, 568), (360, 740), (412, 839), (740, 360), (568, 320)]
LARGER = [(820, 1180), (1180, 820), (1440, 900)]
KEY_PX = 48  # no key is lower than this, on any phone
# What of a pad is not wholly on the screen with nothing over it, and keys too small.
HIDDEN = """
(least) => {
  const isSeen = (one, x, y) => {
    const top = document.elementFromPoint(x, y);
    return top !== null && (one.contains(top) || top.contains(one));
  };
  const isIn = (one) => [...one.getClientRects()].every((box) =>
    box.top >= 0 && box.bottom <= innerHeight && box.left >= 0 &&
    box.right <= innerWidth && isSeen(one, box.left + 3, box.top + 3) &&
    isSeen(one, box.right - 3, box.bottom - 3));
  const parts = [".keypad h2", ".keypad .whose", ".entered-value", ".entered-unit",
    ".keys .key", ".foot .primary", ".alarm-whose", ".alarm-silence",
    ".undo-area .bar-button"];
  const all = parts.flatMap((css) => [...document.querySelectorAll(css)]);
  const found = all.filter((one) => !one.getClientRects().length || !isIn(one));
  const small = [...document.querySelectorAll(".keys .key")].filter((one) => {
    const box = one.getBoundingClientRect();
    return box.height < least - 0.5 || box.width < least;
  });
  return [...found, ...small].map((one) => one.className + " " + one.textContent);
}
"""


@pytest.fixture
def at_pad(new_phone):
    """A phone at a pad of the second vat, with digits typed."""
    phone = new_phone()
    make = phone.open_make(name="Harvest", vat="Vat 2")
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    phone.page.locator(".keys").wait_for()
    press(phone, "31.8")
    return phone, make


def hidden_at(phone, sizes, texts=("125%", "250%")):
    found = {}
    for text in texts:
        for size in sizes:
            sized(phone, *size, text)
            missing = phone.page.evaluate(HIDDEN, KEY_PX)
            missing += phone.page.evaluate(TOO_WIDE)
            if missing:
                found[(*size, text)] = missing
    return found


def ring(phone):
    """Let another vat's step ring on top of the pad."""
    begun(phone, name="Evening", vat="Round vat")
    phone.page.locator(".alarm-bar").wait_for()


@pytest.mark.everyday
def test_value_vat_keys_and_save_are_in_sight_with_undo_and_an_alarm(at_pad):
    phone, make = at_pad
    assert hidden_at(phone, SIZES) == {}
    ring(phone)
    assert hidden_at(phone, SIZES) == {}
    say_something(phone, make)
    assert hidden_at(phone, SIZES) == {}


def test_a_server_that_is_silent_for_long_leaves_the_pad_whole(at_pad):
    # Three lines of what waits, and that the wall does not know of a deadline.
    phone, make = at_pad
    receive = {"quantity": "drug_test", "value": "negative", "step": "receive"}
    phone.record("step_begun", make=make, data={"step": "receive"})
    phone.record("reading_taken", make=make, data=receive)
    show(phone, f"make/{make}/add/starter/starter")
    phone.page.context.set_offline(True)
    rinse = {"label": "Rinse the moulds", "lasts_s": 3600}
    phone.record("timer_started", make=make, data=rinse)
    phone.page.locator(".alarm-note").wait_for(state="attached")
    lot_is_reached = """
      () => {
        const row = document.querySelector(".keypad-more .row");
        row.scrollIntoView();
        const box = row.getBoundingClientRect();
        const at = [box.left + box.width / 2, box.top + 10];
        return row.contains(document.elementFromPoint(...at));
      }
    """
    for size in SIZES:
        sized(phone, *size, "125%")
        assert phone.page.evaluate(HIDDEN, KEY_PX) == [], size
        assert phone.page.evaluate(lot_is_reached), size


@pytest.mark.parametrize("code", ["en", "es", "fr"])
def test_they_are_at_every_size_in_every_language(at_pad, code):
    phone, make = at_pad
    language(phone, code)
    ring(phone)
    say_something(phone, make)
    assert hidden_at(phone, SIZES + LARGER) == {}


def test_a_refusal_is_in_sight_with_the_value_it_refuses(at_pad):
    phone, _ = at_pad
    press(phone, "⌫⌫⌫⌫111")
    ring(phone)
    phone.page.locator(".keypad-says.is-bad").wait_for()
    seen = """
      () => {
        const box = document.querySelector(".keypad-says").getBoundingClientRect();
        const top = document.elementFromPoint(box.left + 4, box.top + 8);
        return box.height > 20 && box.bottom < innerHeight &&
          top?.className.includes("keypad-says");
      }
    """
    for size in SIZES:
        sized(phone, *size, "125%")
        assert phone.page.evaluate(seen), size
    assert hidden_at(phone, SIZES, ["125%"]) == {}


@pytest.mark.parametrize("size", SIZES)
def test_no_key_moves_when_a_bar_comes(at_pad, size):
    phone, make = at_pad
    sized(phone, *size, "125%")
    four = phone.page.locator(".keys .key").filter(has_text="4")
    before = four.bounding_box()
    ring(phone)
    assert four.bounding_box() == before
    say_something(phone, make)
    assert four.bounding_box() == before


def typed(phone):
    return phone.page.locator(".entered-value").inner_text()


def test_back_keeps_the_digits_and_they_say_that_they_are_not_saved(at_pad):
    phone, make = at_pad
    place = f"make/{make}/reading/receive/milk_temp_c"
    phone.page.locator(".keypad .back").tap()
    until(lambda: "/reading/" not in phone.page.evaluate("location.hash"), "the make")
    show(phone, f"make/{make}/reading/receive/ph")
    assert typed(phone) == "–"  # another pad asks for another figure
    show(phone, place)
    assert typed(phone) == "31.8"
    says = phone.page.locator(".keypad-says")
    assert "not saved yet" in says.inner_text()
    press(phone, "⌫5")
    assert typed(phone) == "31.5"
    assert says.inner_text() == ""
    phone.page.locator(".foot .primary").tap()
    phone.until("state.view.value.log[0].kind === 'reading_taken'", "the reading")
    assert phone.run("return state.view.value.log[0].data.typed") == "31.5"
    show(phone, place)
    assert typed(phone) == "–"  # what was saved is not offered again


def test_a_note_half_written_is_there_again(at_pad):
    phone, make = at_pad
    show(phone, f"make/{make}/note")
    phone.page.locator("textarea").fill("Curd soft at the wall")
    phone.page.locator(".back").tap()
    show(phone, f"make/{make}/note")
    assert phone.page.locator("textarea").input_value() == "Curd soft at the wall"
    phone.page.locator(".foot .primary").tap()
    phone.until("state.view.value.log[0].kind === 'note_added'", "the note")
    show(phone, f"make/{make}/note")
    assert phone.page.locator("textarea").input_value() == ""


def test_the_pad_says_what_is_wanted(at_pad):
    phone, _ = at_pad
    assert "Wanted: ≤ 7.0" in phone.page.locator(".keypad-more").inner_text()
