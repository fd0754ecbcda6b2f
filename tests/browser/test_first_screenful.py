"""Of every step the first screenful alone says what to do now, and until when.

Seen: the instruction stood below the fold in 32 of 42 steps of a small phone, among
52 to 66 words. Here each step of the recipe runs while an alarm stands, on both sizes
of phone and in every language.
"""

import statistics

import pytest

from tests.browser.conftest import until
from tests.browser.test_alarms import start_shift, timer
from tests.browser.test_screens import LATE, see_cautions, show
from tests.browser.test_which_vat import LANGUAGES, language, unread

SIZES = [(360, 740), (412, 839)]
MOST_WORDS = 40
# Steps that need more words, with what they need them for.
MOST_OF = {
    "hold": 52,  # two thermometers, the next round, and how the hold stands
    # Side by side with another step: a tab names each of them.
    "cool": 46,
    "warm": 48,
    "heat_water": 48,
    "brine_small": 50,
    "brine_large": 50,
}
# What the creamery has, so that the figures of press and bed are known.
EQUIPMENT = {
    "bore_m": 0.08,
    "lever_ratio": 1.0,
    "length_m": 1.2,
    "width_m": 0.8,
    "plant_name": "Quern",
}
USUAL = {
    "drug_test": "negative",
    "air_space_temp_c": 66.7,
    "curd_temp_c": 32.0,
    "bed_load_kg": 40.0,
    "wheel_mass_kg": 8.0,
}
# Begin a step as a person at this phone does, and look at it.
BEGIN = """
  const { stayAt } = await import("/js/parts/chosen.js");
  const [make, key, reads] = args;
  stayAt(make, key);
  await record("step_begun", { make, data: { step: key } });
  for (const [quantity, value] of Object.entries(reads)) {
    await record("reading_taken", { make, data: { quantity, value, step: key } });
  }
"""
# Read what it asks for as the recipe wants it, and end it.
END = """
  const [make, key, usual] = args;
  const step = await ask.step({ make, step: key });
  for (const { quantity } of step.readings) {
    const target = step.targets.find((one) => one.quantity === quantity);
    const value = target?.value ?? usual[quantity];
    if (value === undefined) continue;
    await record("reading_taken", { make, data: { quantity, value, step: key } });
  }
  for (const { ingredient, planned } of step.adds) {
    const { value: amount, unit } = planned ?? { value: 1, unit: "pack" };
    const data = { ingredient, amount, unit, step: key };
    await record("ingredient_added", { make, data });
  }
  await record("step_ended", { make, data: { step: key, why: "x" } });
"""
# What of a step is not wholly in sight, and every word that is in part.
LOOK = """
async () => {
  const drawn = (done) => requestAnimationFrame(() => requestAnimationFrame(done));
  await new Promise(drawn);
  const within = (box, { left, top, right, bottom }) => ({
    left: Math.max(box.left, left), top: Math.max(box.top, top),
    right: Math.min(box.right, right), bottom: Math.min(box.bottom, bottom),
  });
  // The part of a box that nothing around it cuts off.
  const seenPart = (box, holder) => {
    let part = within(box, { left: 0, top: 0, right: innerWidth, bottom: innerHeight });
    for (let one = holder; one; one = one.parentElement) {
      if (getComputedStyle(one).overflow !== "visible")
        part = within(part, one.getBoundingClientRect());
    }
    return part;
  };
  const isSeen = ({ left, top, right, bottom }) => right - left > 2 && bottom - top > 2;
  const isWhole = (one) => {
    const box = one.getBoundingClientRect();
    const part = seenPart(box, one.parentElement);
    const under = (y) => document.elementFromPoint((box.left + box.right) / 2, y);
    return isSeen(box)
      && ["left", "top", "right", "bottom"].every(
        (side) => Math.abs(part[side] - box[side]) < 1)
      && [box.top + 2, box.bottom - 2].every((y) => one.contains(under(y)));
  };
  const all = (css) => [...document.querySelectorAll(css)];
  const temps = all(".hold-temps .figure-value");
  const parts = {
    sentence: all(".step-now"),
    number: temps.length ? temps : all(
      ".step-face .figure-value, .step-face:not(:has(.figure-value)) .timer"),
    until: [...all(".step-face .timer"), ...all(".step-face .hold-word")],
    button: all(".foot .primary, .foot .foot-words"),
  };
  const missing = Object.keys(parts).filter(
    (name) => !parts[name].length || !parts[name].every(isWhole));
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const words = [];
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (!node.parentElement.checkVisibility({ visibilityProperty: true })) continue;
    const range = document.createRange();
    for (const { index, 0: word } of node.data.matchAll(/\\S+/g)) {
      if (!/[\\p{L}\\p{N}]/u.test(word)) continue;
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      const boxes = [...range.getClientRects()];
      if (boxes.some((box) => isSeen(seenPart(box, node.parentElement))))
        words.push(word);
    }
  }
  return { missing, words };
}
"""
KEYS = """
  const meant = state.view.value.steps.filter((one) => one.status !== "skipped");
  return meant.map((one) => one.key);
"""


@pytest.fixture
def maker(new_phone):
    """A maker's phone in a shift, at a make of both sizes with an alarm that rings."""
    phone = new_phone()
    start_shift(phone)
    phone.run(LATE)

    def open_make(**data):
        make = phone.open_make(
            name="Evening",
            vat="Long vat",
            milk_l=600,
            equipment=EQUIPMENT,
            moulds=[{"size": "small", "count": 13}, {"size": "large", "count": 5}],
            **data,
        )
        see_cautions(phone, make)
        timer(phone, make, 1, "Rinse the moulds")
        show(phone, f"make/{make}")
        phone.page.locator(".alarm-bar").wait_for()
        return make

    phone.make = open_make
    return phone


def looked_at(phone, key, found):
    """Note of a step what its first screenful lacks, at each size and language."""
    for code in LANGUAGES:
        language(phone, code)
        for wide, high in SIZES:
            phone.page.set_viewport_size({"width": wide, "height": high})
            found[(key, code, wide)] = phone.page.evaluate(LOOK)


def walked(phone, make, keys=None, beside=()):
    """Begin, look at and end each step; only those of `keys` are looked at.

    `beside` names steps that go on while the next one is begun. What comes after the
    last of `keys` is left alone.
    """
    found, on = {}, []
    for key in phone.run(KEYS):
        reads = {"milk_temp_c": 64.5, "air_space_temp_c": 68.0} if key == "hold" else {}
        phone.run(BEGIN, make, key, reads)
        if keys is None or key in keys:
            language(phone, "en")
            title = "state.view.value.steps.find((one) => one.key === args[0]).title.en"
            title = phone.run(f"return {title}", key)
            until(
                lambda title=title: (
                    phone.page.locator(".step-title").inner_text() == title
                    and phone.page.locator(".step-face .timer").count()
                ),
                key,
            )
            if key == "hold":
                phone.page.locator(".hold-temps").wait_for()
            looked_at(phone, key, found)
        if keys and key == keys[-1]:
            break
        on.append(key)
        if key not in beside:
            for one in on:
                phone.run(END, make, one, USUAL)
            on = []
    return found


def misses(found):
    """Return what is missing or too long, by step, language and width."""
    wrong = {}
    for (key, code, wide), seen in found.items():
        most = MOST_OF.get(key, MOST_WORDS)
        if seen["missing"] or len(seen["words"]) > most:
            told = (len(seen["words"]), " ".join(seen["words"]))
            wrong[(key, code, wide)] = (seen["missing"], *told)
    return wrong


def test_every_step_says_in_its_first_screenful_what_to_do_and_until_when(maker):
    make = maker.make(treatment="pasteurised", options={"rind": "coat"})
    found = walked(maker, make, beside=("brine_small",))
    assert len(found) == 42 * len(LANGUAGES) * len(SIZES)
    counts = [len(seen["words"]) for seen in found.values()]
    assert statistics.median(counts) <= 38
    assert misses(found) == {}


# What differs on the other ways.
@pytest.mark.parametrize(
    ("data", "keys"),
    [
        ({"treatment": "heat_treated"}, ["heat", "hold"]),
        ({"treatment": "raw"}, ["warm"]),
        ({"treatment": "raw", "options": {"rind": "wax"}}, ["wax"]),
    ],
    ids=["heat_treated", "raw", "wax"],
)
def test_the_steps_of_other_ways_say_so_too(maker, data, keys):
    found = walked(maker, maker.make(**data), keys)
    assert {key for key, *_ in found} == set(keys)
    assert misses(found) == {}


def test_the_whole_instruction_is_one_scroll_away(maker):
    make = maker.make()
    lines = maker.run("return state.view.value.steps[0].do.map((line) => line.en)")
    assert len(lines) > 1
    for wide, high in SIZES:
        maker.page.set_viewport_size({"width": wide, "height": high})
        show(maker, f"make/{make}")
        scroll = maker.page.locator(".make > .scroll")
        scroll.evaluate("(one) => { one.scrollTop = one.clientHeight; }")
        shown = maker.page.locator(".instruction li").all_inner_texts()
        assert shown == lines
        assert unread(maker, [".step-title", "Receive the milk"]) == []


def height(phone, css):
    return phone.page.locator(css).bounding_box()["height"]


def test_the_bar_is_one_line_with_one_mark_until_something_is_wrong(new_phone):
    phone = new_phone()
    make = phone.open_make(name="Evening", vat="Long vat")
    phone.sent()
    for wide, high in SIZES:
        phone.page.set_viewport_size({"width": wide, "height": high})
        show(phone, f"make/{make}")
        phone.page.locator(".status-mark").wait_for()
        assert height(phone, ".status") <= 76  # one line of buttons of 60 px
        assert unread(phone, [".make-whose", "Long vat"]) == []
        told = phone.page.locator("[role=status].status-words")
        assert height(phone, ".status-words") <= 1  # heard, not seen
        assert "Connected" in told.inner_text()
        assert "All entries sent" in told.inner_text()
    phone.context.set_offline(True)
    told = phone.page.locator(".status-words.is-check", has_text="No network")
    told.wait_for()
    assert phone.page.locator(".status-mark").count() == 0
    assert unread(phone, [".status-words span", "No network"]) == []
    # What waits is told in words too, and nothing moves for what is on its way.
    phone.record("step_begun", make=make, data={"step": "receive"})
    told.get_by_text("1 entry not sent yet").wait_for()
    phone.context.set_offline(False)
    phone.page.locator(".status-mark").wait_for()
    assert height(phone, ".status-words") <= 1
