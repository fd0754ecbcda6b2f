"""A maker at the vat, who knows only what the screen shows and offers."""

import time
from collections import Counter

import pytest

from tests.browser.conftest import until

# What is in sight, read in one go.
LOOK = """
() => {
  const one = (what) => document.querySelector(what)?.textContent.trim() ?? "";
  const all = (what) =>
    [...document.querySelectorAll(what)].map((found) => found.textContent.trim());
  return {
    place: location.hash,
    step: one(".step-title"),
    title: one(".keypad-title h2, .sheet-head h1"),
    button: one(".foot .primary-does") || one(".foot .primary"),
    cautions: all(".cautions li").length,
    others: all(".tabs .tab:not(.is-chosen)").length,
    hasPad: document.querySelector(".keypad") !== null,
    isAsking: document.querySelector(".is-asking") !== null,
    isOver: document.querySelector(".step-card .countdown.is-over") !== null,
    blockers: all(".lines li"),
    isNoStep: document.querySelector(".make") !== null && !one(".step-title"),
  };
}
"""
SHOWN = ("place", "step", "title", "button", "cautions", "isNoStep")
STUCK_S = 30  # no step of the recipe but the long ones takes so long here
MISSING = " has not been entered."
# What this maker reads off the instruments, by step and quantity; the recipe's
# own targets, or a little beside them. A comma comes from a keyboard.
TYPED = {
    "milk_temp_c": "31.8",
    "milk_age_h": "14",
    "milk_volume_l": "600",
    "air_space_temp_c": "67.1",
    "indicator_temp_c": "64.2",
    "recorder_temp_c": "64.0",
    "curd_temp_c": "37.0",
    "water_temp_c": "61.0",
    "whey_drained_l": "180",
    "water_added_l": "66",
    "press_gauge_kpa": "100",
    "wheel_mass_kg": "8.05",
    "brine_salt_frac": "20",
    "brine_ph": "5.20",
    "brine_temp_c": "12.5",
    "store_temp_c": "12.5",
    "store_humidity_frac": "85",
    ("receive", "milk_temp_c"): "4,2",
    ("rest", "milk_temp_c"): "4.1",
    ("heat", "milk_temp_c"): "64.2",
    ("hold", "milk_temp_c"): "64.1",
    ("starter", "ph"): "6.62",
    ("ripen", "ph"): "6.55",
    ("cut", "ph"): "6.48",
    ("drain_1", "ph"): "6.45",
    ("stir", "curd_temp_c"): "31.5",
    ("wash_1", "curd_temp_c"): "34.6",
    ("turn_2", "ph"): "5.70",
    ("unmould", "ph"): "5.42",
}
JUDGED = {
    ("set", False): "Flocculation: first flakes",
    ("set", True): "Clean break",
    ("cut", False): "Even",
    ("weights_off", False): "Knitted",
}


class Maker:
    """Taps what the screen offers, and remembers how often it did.

    Args:
        hand: the hand on the phone, see `hand.Hand`, at a make.
        early: titles of steps that are ended before their time, with why.
    """

    def __init__(self, hand, early=()):
        self.hand = hand
        self.early = early
        self.done = Counter()  # kind of entry: how many were made
        self.read = Counter()  # (step's title, button): readings taken
        self.looked = set()  # steps whose curd was judged
        self.began = []  # titles, in order

    def look(self):
        return self.hand.run(LOOK)

    def is_changed(self, seen):
        now = self.look()
        return any(now[name] != seen[name] for name in SHOWN)

    def press_until_changed(self, seen, press):
        """Press as a person does, who presses again what did not answer."""
        for _ in range(4):
            press()
            end_s = time.monotonic() + 2.5
            while time.monotonic() < end_s:
                if self.is_changed(seen):
                    return
                self.hand.wait(50)
        self.until_changed(seen)

    def until_changed(self, seen, wait_s=10):
        """Wait until something else is in sight."""
        what = f"the screen to answer: {seen}"
        until(lambda: self.is_changed(seen), what, wait_s)

    def read_cautions(self, seen):
        """Say that they are read; the large button would begin the step as well.

        What is tapped lies in what moves when a bar comes or goes, so like anybody
        this maker taps again where nothing has happened for a while.
        """
        self.row("I have read this")
        end = time.monotonic() + 5
        while not self.is_changed(seen) and time.monotonic() < end:
            self.hand.wait(100)
        if not self.is_changed(seen):
            self.row("I have read this")
        self.until_changed(seen)
        self.done["alert_acknowledged"] += 1

    def large_button(self):
        self.hand.tap(".foot .primary")

    def row(self, text):
        """Tap a row or button by its words, exactly as they stand there."""
        self.hand.tap(".row, .tap", text)

    def choose(self, word):
        self.hand.tap(".choice", word)

    def erase(self):
        """Take back all digits on the pad."""
        while self.hand.read(".entered-value") != "–":
            self.hand.tap("[aria-label='Remove the last digit']")
            self.hand.wait(100)

    def type(self, text):
        """Type on the pad, and again when the pad shows something else."""
        for _ in range(3):
            self.press_keys(text)
            end_s = time.monotonic() + 2
            while time.monotonic() < end_s:
                if self.hand.read(".entered-value") == text.replace(",", "."):
                    return
                self.hand.wait(50)
            self.erase()
        pytest.fail(f"{text} does not come on the pad")

    def press_keys(self, text):
        """Press the keys of a figure; a comma as a keyboard beside it gives it."""
        for before, letter in zip("-" + text, text, strict=False):
            if letter == before:
                self.hand.wait(100)  # sooner, it is a key that bounces
            if letter == ",":
                self.hand.key(letter)
            else:
                self.hand.tap(".keys .key", letter)

    def save(self, kind):
        """Save what is on the pad; say yes when it asks for a second look."""
        place = self.look()["place"]
        self.large_button()
        until(
            lambda: self.look()["isAsking"] or self.look()["place"] != place,
            f"{kind} to be saved",
        )
        if self.look()["isAsking"]:
            self.large_button()
            until(lambda: self.look()["place"] != place, f"{kind} to be kept")
        self.done[kind] += 1

    def join(self):
        """Join by the link: its code stands there already."""
        self.hand.sees(".field-label", "Name of this phone")
        self.hand.fill("Name of this phone", "Vat room")
        self.hand.tap(".foot .primary", "Join")
        self.hand.sees("button", "Start a new make")

    def open_make(self, recipe, small):
        """Start a make on the screen for it; return its id from the address."""
        self.hand.tap("button", "Start a new make")
        self.choose(recipe)
        self.type("600")
        self.hand.tap(".foot .primary", "Next")
        self.hand.fill("Batch code", "B-17")
        self.hand.fill("Vat", "Round vat")
        # Wheels are suggested from the milk; this maker has other small moulds.
        self.hand.tap(".row", having="Small wheel")
        self.erase()
        self.type(str(small))
        self.hand.tap(".foot .primary", "Next")
        self.hand.tap(".foot .primary", "Start this make")
        until(lambda: "#/make/" in self.look()["place"], "the make to open")
        self.hand.sees(".foot .primary")
        self.done["make_opened"] += 1
        return self.look()["place"].split("/")[2]

    def work(self, stop=None):
        """Do what the screen offers until a step's title comes up, or none is left.

        A step that waits for its time is waited for; the server's clock is fast.
        """
        moved_s = time.monotonic()
        count = self.done.total()
        while True:
            seen = self.look()
            if seen["isNoStep"] or (stop and seen["step"] == stop):
                return
            self.act(seen)
            if self.done.total() != count:
                moved_s, count = time.monotonic(), self.done.total()
            if time.monotonic() - moved_s > STUCK_S:
                pytest.fail(f"nothing to do for {STUCK_S} s: {seen}")

    def act(self, seen):
        word = seen["button"].split(" ")[0].rstrip(":")
        if seen["cautions"]:
            self.read_cautions(seen)
        elif seen["hasPad"]:
            # With the page's clock quickened what has just moved may be pressed.
            self.row("‹ Back")
            self.until_changed(seen)
        elif word == "Begin":
            self.began.append(seen["step"])
            self.give("step_begun", seen)
        elif word == "Finish":
            self.finish(seen, self.large_button)
        elif seen["button"] == "Enter filled moulds":
            self.large_button()
            self.hand.sees(".keys")
            self.save("wheels_moulded")
        elif word == "Enter":
            self.asked_reading(seen)
        elif word == "Add":
            self.add()
        elif word == "Judge":
            self.judge()
        elif seen["step"] in self.early:
            self.end_early(seen)
        elif seen["others"]:
            # A step that was begun stays in front; what else runs is one tap away.
            self.hand.tap(".tabs .tab:not(.is-chosen)")
        else:
            self.hand.wait(100)

    def give(self, kind, seen):
        """Tap the one large button that makes an entry at once."""
        self.press_until_changed(seen, self.large_button)
        self.done[kind] += 1

    def asked_reading(self, seen):
        """Take the reading; when it was taken and the step is over, end the step."""
        asked = (seen["step"], seen["button"])
        if self.read[asked] and self.is_ripe(seen) and self.end_now(seen):
            return
        self.large_button()
        self.reading()
        self.read[asked] += 1

    def is_ripe(self, seen):
        # The figure that ends a step by a reading is what this maker types first.
        return seen["isOver"] or "Over when" in self.hand.read("main")

    def end_now(self, seen):
        """End by the row below; False when the screen says what is still missing."""
        if "End this step now" not in self.hand.read("main"):
            return True  # the large button offers it by now
        return self.finish(seen, self.end_row)

    def end_row(self):
        self.hand.tap(".row", having="End this step now")

    def finish(self, seen, end):
        """End the step; enter first what the screen says is missing."""
        self.press_until_changed(seen, end)
        asked = self.look()
        if "/end/" not in asked["place"]:
            self.done["step_ended"] += 1
            return True
        missing = [
            text.removesuffix(MISSING)
            for text in asked["blockers"]
            if text.endswith(MISSING)
        ]
        self.row("‹ Back")
        self.until_changed(asked)
        for name in dict.fromkeys(missing):
            self.hand.tap(".reading", having=name, is_last=True)
            self.reading()
        return bool(missing)

    def reading(self):
        until(lambda: "/reading/" in self.look()["place"], "the pad")
        place = self.look()["place"].split("/")
        step, quantity = place[place.index("reading") + 1 :][:2]
        if self.look()["title"].endswith("Which mould size?"):
            self.hand.tap(".row", having="Large wheel")
        if quantity == "drug_test":
            self.choose("Negative")
        else:
            self.hand.sees(".keys")
            self.type(TYPED.get((step, quantity)) or TYPED[quantity])
        self.save("reading_taken")

    def add(self):
        """Put in what the recipe says, from a lot that is named once."""
        self.large_button()
        self.hand.sees(".keys")
        if "No lot entered yet" in self.hand.read("main"):
            self.hand.tap(".row, .tap", having="No lot entered yet")
            self.hand.fill("Lot", "L-204")
            self.hand.fill("Use by", "2027-03-01")
            self.row("Done")
        self.save("ingredient_added")

    def judge(self):
        self.large_button()
        until(lambda: "/judge/" in self.look()["place"], "the question")
        step = self.look()["place"].split("/")[-1]
        word = JUDGED[step, step in self.looked]
        self.looked.add(step)
        self.choose(word)
        self.save("curd_judged")

    def end_early(self, seen):
        """End a step before its time: the screen says what that means and asks why."""
        self.end_row()
        end_s = time.monotonic() + 5
        while "/end/" not in self.look()["place"]:
            if time.monotonic() > end_s:
                return  # a clock's words moved the row from under the finger
            self.hand.wait(50)
        asked = self.look()
        assert "The time of the recipe is not over." in asked["blockers"]
        missing = [text for text in asked["blockers"] if text.endswith(MISSING)]
        # One at the end counts only when the end has come: it is entered once.
        missing = [text for text in missing if (seen["step"], text) not in self.read]
        if missing:
            self.read[seen["step"], missing[0]] += 1
            self.row("‹ Back")
            self.until_changed(asked)
            name = missing[0].removesuffix(MISSING)
            # What the end asks for stands below what the beginning asked for.
            self.hand.tap(".reading", having=name, is_last=True)
            self.reading()
            return
        assert self.hand.count(".foot .primary[disabled]")
        self.choose("The maker decided so")
        self.large_button()
        self.until_changed(asked)
        self.done["step_ended"] += 1
