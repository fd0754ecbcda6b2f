"""Two vats at the same step: nothing ends, begins or rings without saying whose.

Seen: "Heal the curd: the time is up" above "Finish: Heal the curd", no vat named
anywhere, and one tap ended the wrong vat's step.
"""

import pytest

from tests.browser.conftest import until
from tests.browser.test_screens import read_cautions, show

PHONES = [(320, 568), (360, 740), (412, 839), (740, 360)]
# A make of steps that only last, each the recipe's own key and its seconds.
MAKE = """
  const whole = state.recipes.value.find((one) => one.id === "washed-wheel");
  const steps = args[1].map(([key, value]) => {
    const one = whole.steps.find((step) => step.key === key);
    const { source, status } = one.lasts;
    return { key, title: one.title, do: one.do, place: one.place, after: [],
      end: { by: "time" }, lasts: { value, unit: "s", source, status } };
  });
  const { curve, gates, milk, ...rest } = whole; // both name steps of the whole
  const { treatments, usual_treatment, ...plain } = milk; // none of its steps holds
  const recipe = { ...rest, milk: plain, steps, ingredients: [] };
  const made = await record("make_opened", { data: {
    batch: "B1", milk_l: recipe.milk.low_l, recipe, ...args[0] } });
  for (const { key } of steps.slice(0, 1)) {
    await record("step_begun", { make: made.make, data: { step: key } });
  }
  return made.make;
"""
# Undo and an alarm at once, for as long as is looked.
KEEP_UNDO = """
  const { lastAct } = await import("/js/parts/acts.js");
  lastAct.value = { ...lastAct.value, untilMs: nowMs() + 600000 };
"""
# Where each of these can be read: wholly within the screen, with nothing on top.
READABLE = """
(wanted) => wanted.filter(([css, words]) => {
  const isSeen = (one, x, y) => {
    const top = document.elementFromPoint(x, y);
    return top !== null && (one.contains(top) || top.contains(one));
  };
  const isIn = (one) => {
    const lines = [...one.getClientRects()];
    return lines.length > 0 && lines.every(({ left, top, right, bottom }) =>
      isSeen(one, left + 1, top + 2) && isSeen(one, right - 1, bottom - 2));
  };
  const all = [...document.querySelectorAll(css)];
  return !all.some((one) => one.textContent.includes(words) && isIn(one));
})
"""
LANGUAGES = {
    "en": ("Finish: ", "Other vat: Round vat"),
    "es": ("Terminar: ", "Otra cuba: Round vat"),
    "fr": ("Terminer\u00a0: ", "Autre cuve\u00a0: Round vat"),
}


def begun(phone, lasts_s=1, steps=None, **data):
    """Open a make whose first step runs already; return its id."""
    return phone.run(MAKE, data, steps or [["heal", lasts_s]])


@pytest.fixture
def two_vats(new_phone):
    """A phone at the second vat's make, while the first one's step rings."""
    phone = new_phone()
    ringing = begun(phone, name="Evening", vat="Round vat")
    make = begun(phone, name="Harvest", vat="Vat 2")
    show(phone, f"make/{make}")
    phone.page.locator(".foot .primary").wait_for()
    phone.page.locator(".alarm-bar").wait_for()
    return phone, make, ringing


def language(phone, code):
    body = "await (await import('/js/messages/index.js')).setLanguage(args[0])"
    phone.run(body, code)


def say_something(phone, make):
    """Record what can be undone, so that the bar with Undo stands on top."""
    body = """
      const { act } = await import("/js/parts/acts.js");
      await act("note_added", { make: args[0], data: { text: "Dull" } }, args[1]);
    """
    phone.run(body + KEEP_UNDO, make, "The note about the dull knives was saved")
    phone.page.locator(".undo-area .bar").wait_for()


def sized(phone, wide, high, text):
    phone.page.set_viewport_size({"width": wide, "height": high})
    phone.page.evaluate(
        "(size) => { document.documentElement.style.fontSize = size; }", text
    )
    phone.page.wait_for_timeout(150)


def unread(phone, *wanted):
    return phone.page.evaluate(READABLE, list(wanted))


def unread_at(phone, wanted, sizes=PHONES, texts=("125%", "250%")):
    found = {}
    for text in texts:
        for size in sizes:
            sized(phone, *size, text)
            missing = unread(phone, *wanted)
            if missing:
                found[(*size, text)] = missing
    return found


@pytest.mark.everyday
def test_under_bars_the_open_vat_and_the_ringing_one_are_both_named(two_vats):
    phone, make, _ = two_vats
    say_something(phone, make)
    wanted = [(".foot .whose", "Vat 2"), (".alarm-whose", LANGUAGES["en"][1])]
    assert unread_at(phone, wanted) == {}
    # With text of its usual size, above the step as well as on the button.
    assert unread_at(phone, [(".make-whose", "Vat 2")], texts=["125%"]) == {}


@pytest.mark.parametrize("code", LANGUAGES)
def test_the_vats_are_named_in_every_language(two_vats, code):
    phone, make, _ = two_vats
    language(phone, code)
    say_something(phone, make)
    ends, other = LANGUAGES[code]
    button = phone.page.locator(".foot .primary")
    assert button.inner_text().startswith(ends)
    assert button.inner_text().endswith("Vat 2")
    wanted = [(".foot .whose", "Vat 2"), (".alarm-whose", other)]
    assert unread_at(phone, wanted) == {}


MILK = {
    "en": "undecided",
    "es": "pendiente",
    "fr": "à décider",
}


def test_the_class_of_the_milk_can_be_read_under_an_alarm(two_vats):
    # Seen: a phone's head hid it as long as anything rang.
    phone, _, _ = two_vats
    found = {}
    for code, words in MILK.items():
        language(phone, code)
        milk = ".make-milk > [aria-hidden]"  # beside it the whole is heard
        phone.page.locator(milk, has_text=words).wait_for()
        wanted = [(milk, words), (".make-whose", "Vat 2")]
        upright = [(320, 568), (360, 740), (412, 839)]
        found |= {
            (code, *size): missing
            for size, missing in unread_at(phone, wanted, upright, ["125%"]).items()
        }
    assert found == {}


def test_show_leads_to_the_step_that_rings_and_the_list_is_one_tap_further(two_vats):
    phone, _, ringing = two_vats
    phone.page.locator(".alarm-show").tap()
    until(lambda: phone.page.evaluate("location.hash") == f"#/make/{ringing}", "it")
    phone.page.locator(".make-whose", has_text="Round vat").wait_for()
    assert phone.page.locator(".foot .primary").inner_text().endswith("Round vat")
    # There already: nothing more to show, and no other vat.
    assert phone.page.locator(".alarm-show").count() == 0
    whose = phone.page.locator(".alarm-whose")
    assert whose.inner_text() == "Round vat"
    phone.page.locator(".alarm-more").tap()
    phone.page.locator(".alarm-row").first.wait_for()
    assert phone.page.locator(".alarm-row").count() == 2


def test_show_leads_to_the_very_step_although_another_was_looked_at(new_phone):
    phone = new_phone()
    both = [["stir", 1], ["heal", 400]]
    ringing = begun(phone, steps=both, name="Evening", vat="Round vat")
    other = begun(phone, 400, name="Harvest", vat="Vat 2")
    show(phone, f"make/{ringing}")
    phone.page.locator(".step-title", has_text="Stir the curd").wait_for()
    phone.page.locator(".row", has_text="Heal the curd").first.tap()
    phone.page.locator(".step-title", has_text="Heal the curd").wait_for()
    show(phone, f"make/{other}")
    phone.page.locator(".alarm-show").tap()
    phone.page.locator(".step-title", has_text="Stir the curd").wait_for()


def test_a_make_without_a_vat_is_named_and_so_is_one_of_two_in_the_same(new_phone):
    phone = new_phone()
    begun(phone, 400, name="Harvest", vat="Vat 2")
    for data, whose in (
        ({"name": "Trial"}, "Trial"),
        ({"name": "Evening", "vat": "Vat 2"}, "Vat 2 · Evening"),
    ):
        make = begun(phone, **data)
        show(phone, f"make/{make}")
        button = phone.page.locator(".foot .primary .whose")
        button.wait_for()
        assert button.inner_text() == whose


def test_pads_sheets_cautions_and_undo_say_whose(new_phone):
    phone = new_phone()
    make = phone.open_make(name="Harvest", vat="Vat 2")
    show(phone, f"make/{make}")
    phone.page.locator(".cautions").wait_for()
    whose = ("main .whose", "Vat 2")
    missing = {"cautions": unread(phone, whose, (".primary .whose", "Vat 2"))}
    read_cautions(phone)
    phone.page.locator(".foot .primary").tap()
    phone.page.locator(".undo-area .whose", has_text="Vat 2").wait_for()
    for place in (
        "reading/receive/milk_temp_c", "reading/receive/drug_test", "note", "timer",
        "skip/heat", "begin/heat", "end/receive", "add/rennet/rennet", "judge/set",
    ):  # fmt: skip
        show(phone, f"make/{make}/{place}")
        missing[place] = unread(phone, whose)
    assert {place: row for place, row in missing.items() if row} == {}


@pytest.mark.everyday
def test_after_begin_the_step_begun_stays_until_the_make_is_left(new_phone):
    # Seen: "Begin: Cool" led to the cautions before fitting the knives.
    phone = new_phone()
    make = phone.open_make(vat="Vat 2")
    for step in ("receive", "to_vat", "rest", "heat", "hold", "mark_chart"):
        phone.record("step_skipped", make=make, data={"step": step, "why": "Test"})
    phone.record("step_skipped", make=make, data={"step": "drain_jacket", "why": "x"})
    show(phone, f"make/{make}")
    phone.page.locator(".foot .primary").tap()
    phone.until(
        "state.view.value.steps.some((one) => one.status === 'running')", "the step"
    )
    running = "state.view.value.steps.find((one) => one.status === 'running')"
    title = phone.run(f"return {running}.title.en")
    assert phone.run("return state.view.value.focus") != phone.run(
        f"return {running}.key"
    )
    assert phone.page.locator(".step-title").inner_text() == title
    show(phone, "now")
    show(phone, f"make/{make}")
    phone.page.locator(".cautions, .step-title").first.wait_for()
    assert phone.page.locator(".step-title", has_text=title).count() == 0
