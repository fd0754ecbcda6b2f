"""A maker at the vat, who knows only what the screen shows and offers."""

import re
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
    button: one(".foot .primary"),
    cautions: all(".cautions li").length,
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
        page: the phone's page, at a make.
        early: titles of steps that are ended before their time, with why.
    """

    def __init__(self, page, early=()):
        self.page = page
        self.early = early
        self.done = Counter()  # kind of entry: how many were made
        self.read = Counter()  # (step's title, button): readings taken
        self.looked = set()  # steps whose curd was judged
        self.began = []  # titles, in order

    def look(self):
        return self.page.evaluate(LOOK)

    def until_changed(self, seen, wait_s=10):
        """Wait until something else is in sight."""

        def is_changed():
            now = self.look()
            return any(now[name] != seen[name] for name in SHOWN)

        until(is_changed, f"the screen to answer: {seen}", wait_s)

    def tap(self, what):
        self.page.locator(what).first.tap()

    def row(self, text):
        """Tap a row or button by its words, exactly as they stand there."""
        rows = self.page.locator(".row, .tap").filter(
            has=self.page.get_by_text(text, exact=True)
        )
        rows.first.tap()

    def choose(self, word):
        choice = self.page.locator(".choice")
        choice.filter(has=self.page.get_by_text(word, exact=True)).tap()

    def erase(self):
        """Take back all digits on the pad."""
        entered = self.page.locator(".entered-value")
        while entered.inner_text() != "–":
            self.page.get_by_label("Remove the last digit").tap()
            self.page.wait_for_timeout(100)

    def type(self, text):
        """Type on the pad; a comma as a keyboard beside it gives it."""
        for before, letter in zip("-" + text, text, strict=False):
            if letter == before:
                self.page.wait_for_timeout(100)  # sooner, it is a key that bounces
            if letter == ",":
                self.page.keyboard.press(letter)
            else:
                key = self.page.locator(".keys .key").filter(
                    has_text=re.compile(f"^{re.escape(letter)}$")
                )
                key.tap()
        entered = self.page.locator(".entered-value")
        until(
            lambda: entered.inner_text() == text.replace(",", "."),
            f"{text} on the pad; {entered.inner_text()}",
            wait_s=2,
        )

    def save(self, kind):
        """Save what is on the pad; say yes when it asks for a second look."""
        place = self.look()["place"]
        self.tap(".foot .primary")
        until(
            lambda: self.look()["isAsking"] or self.look()["place"] != place,
            f"{kind} to be saved",
        )
        if self.look()["isAsking"]:
            self.tap(".foot .primary")
            until(lambda: self.look()["place"] != place, f"{kind} to be kept")
        self.done[kind] += 1

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
            self.give("alert_acknowledged", seen)
        elif word == "Begin":
            self.began.append(seen["step"])
            self.give("step_begun", seen)
        elif word == "Finish":
            self.finish(seen, ".foot .primary")
        elif seen["button"] == "Enter filled moulds":
            self.tap(".foot .primary")
            self.page.locator(".keys").wait_for()
            self.save("wheels_moulded")
        elif word == "Enter":
            self.asked_reading(seen)
        elif word == "Add":
            self.add()
        elif word == "Judge":
            self.judge()
        elif seen["step"] in self.early:
            self.end_early(seen)
        else:
            self.page.wait_for_timeout(100)

    def give(self, kind, seen):
        """Tap the one large button that makes an entry at once."""
        self.tap(".foot .primary")
        self.until_changed(seen)
        self.done[kind] += 1

    def asked_reading(self, seen):
        """Take the reading; when it was taken and the step is over, end the step."""
        asked = (seen["step"], seen["button"])
        if self.read[asked] and self.is_ripe(seen) and self.end_now(seen):
            return
        self.tap(".foot .primary")
        self.reading()
        self.read[asked] += 1

    def is_ripe(self, seen):
        # The figure that ends a step by a reading is what this maker types first.
        return seen["isOver"] or "Over when" in self.page.locator("main").inner_text()

    def end_now(self, seen):
        """End by the row below; False when the screen says what is still missing."""
        row = ".row:has-text('End this step now')"
        if not self.page.locator(row).count():
            return True  # the large button offers it by now
        return self.finish(seen, row)

    def finish(self, seen, what):
        """End the step; enter first what the screen says is missing."""
        self.tap(what)
        self.until_changed(seen)
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
            self.page.locator(f".reading:has-text('{name}')").last.tap()
            self.reading()
        return bool(missing)

    def reading(self):
        until(lambda: "/reading/" in self.look()["place"], "the pad")
        step, quantity = self.look()["place"].split("/")[-2:]
        if quantity == "drug_test":
            self.choose("Negative")
        else:
            self.page.locator(".keys").wait_for()
            self.type(TYPED.get((step, quantity)) or TYPED[quantity])
        self.save("reading_taken")

    def add(self):
        """Put in what the recipe says, from a lot that is named once."""
        self.tap(".foot .primary")
        self.page.locator(".keys").wait_for()
        if self.page.get_by_text("No lot entered yet").count():
            self.page.get_by_text("No lot entered yet").tap()
            self.page.get_by_label("Lot", exact=True).fill("L-204")
            self.page.get_by_label("Use by").fill("2027-03-01")
            self.row("Done")
        self.save("ingredient_added")

    def judge(self):
        self.tap(".foot .primary")
        until(lambda: "/judge/" in self.look()["place"], "the question")
        step = self.look()["place"].split("/")[-1]
        word = JUDGED[step, step in self.looked]
        self.looked.add(step)
        self.choose(word)
        self.save("curd_judged")

    def end_early(self, seen):
        """End a step before its time: the screen says what that means and asks why."""
        self.tap(".row:has-text('End this step now')")
        self.until_changed(seen)
        asked = self.look()
        assert "The time of the recipe is not over." in asked["blockers"]
        missing = [text for text in asked["blockers"] if text.endswith(MISSING)]
        if missing:
            self.row("‹ Back")
            self.until_changed(asked)
            self.tap(f".reading:has-text('{missing[0].removesuffix(MISSING)}')")
            self.reading()
            return
        assert self.page.locator(".foot .primary").is_disabled()
        self.choose("The maker decided so")
        self.tap(".foot .primary")
        self.until_changed(asked)
        self.done["step_ended"] += 1
