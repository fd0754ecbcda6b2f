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
    stands: all(".matter-block").length,
    others: all(".tabs .tab:not(.is-chosen)").length,
    hasPad: document.querySelector(".keypad") !== null,
    isAsking: document.querySelector(".is-asking") !== null,
    isOver:
      document.querySelector(".step-card .is-over.countdown:not(.hold-next *)") != null,
    blockers: all(".lines li"),
    isNoStep: document.querySelector(".make") !== null && !one(".step-title"),
  };
}
"""
SHOWN = ("place", "step", "title", "button", "cautions", "stands", "isNoStep")
STUCK_S = 60  # no step of the recipe but the long ones takes so long here
# A press that was felt is answered, on a loaded machine late: one more, made in the
# moment of the answer, would press what the answer brings.
UNANSWERED_S = 10
ROUND = "Enter milk and air space"
# How it says so; the recipe's own words on what comes early may follow.
NOT_OVER = "The time of the recipe is not over."
MISSING = " has not been entered."
PIN = "40718263"
PLANT = "Name of the plant, for the chart"
# What this maker reads off the instruments, by step and quantity; the recipe's
# own targets, or a little beside them. A comma comes from a keyboard.
TYPED = {
    "milk_temp_c": "31.8",
    "milk_age_h": "14",
    "milk_volume_l": "600",
    "fat_frac": "4.1",
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
    ("small", "wheel_mass_kg"): "1.42",
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
        self.has_pin = False  # the first act that asks for one sets it

    def look(self):
        return self.hand.run(LOOK)

    def is_changed(self, seen):
        now = self.look()
        return any(now[name] != seen[name] for name in SHOWN)

    def press_until_changed(self, seen, press):
        """Press as a person does, who presses again what did not answer."""
        press()
        end_s = time.monotonic() + UNANSWERED_S
        while time.monotonic() < end_s:
            if self.is_changed(seen):
                return
            self.hand.wait(50)
        press()
        self.until_changed(seen)

    def until_changed(self, seen):
        """Wait until something else is in sight."""
        until(lambda: self.is_changed(seen), f"the screen to answer: {seen}")

    def read_cautions(self, seen):
        """Say that they are read; the large button would begin the step as well.

        What is tapped lies in what moves when a bar comes or goes, so like anybody
        this maker taps again where nothing has happened for a while.
        """
        # They may fill more than the screen: all of them are to be seen first.
        self.press_until_changed(seen, self.see_to_end_and_read)
        self.done["cautions_seen"] += 1

    def see_to_end_and_read(self):
        while self.hand.count(".foot .primary-does", "More below"):
            self.large_button()
            self.hand.wait(600)
        # Where the button had turned under the finger, they are read and it is begun.
        self.hand.tap(".row, .tap", "I have read this", may_go=True)

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

    def type(self, text, shown=None):
        """Type on the pad, and again when the pad shows something else."""
        shown = shown or text.replace(",", ".")
        for _ in range(3):
            self.press_keys(text)
            end_s = time.monotonic() + 2
            while time.monotonic() < end_s:
                if self.hand.read(".entered-value") == shown:
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
        # Heat-treated, as is usual here, the wheels would lie in the store for 60 days.
        self.hand.tap(".choice", "To be pasteurised")
        self.hand.fill("Batch code", "B-17")
        self.hand.fill("Vat", "Round vat")
        self.name_plant()
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

    def name_plant(self):
        """Say of the equipment what the chart of a hold asks for."""
        self.hand.tap(".row", having="Nothing entered yet")
        self.hand.tap(".row", having=PLANT)
        self.hand.fill(PLANT, "Quernbeck Creamery")
        self.hand.tap(".foot .primary", "Done")
        self.hand.sees("h2", "Heat-treatment record")
        self.row("‹ Back")

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
        elif word == "Stopped":
            self.decide(seen)
        elif seen["step"] in self.early:
            self.end_early(seen)
        elif seen["others"]:
            # A step that was begun stays in front; what else runs is one tap away.
            self.hand.tap(".tabs .tab:not(.is-chosen)")
        else:
            self.idle(seen)

    def idle(self, seen):
        """Wait: nothing is to be done now."""
        self.hand.wait(100)

    def give(self, kind, seen):
        """Tap the one large button that makes an entry at once."""
        self.press_until_changed(seen, self.large_button)
        self.done[kind] += 1

    def asked_reading(self, seen):
        """Take the reading; when it was taken and the step is over, end the step."""
        asked = (seen["step"], seen["button"])
        # Only the last round makes a hold whole: it is read before its end is tried.
        is_tried = self.read[asked] and seen["button"] != ROUND
        if is_tried and self.is_ripe(seen) and self.end_now(seen):
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
        if quantity == "drug_test":
            self.choose("Negative")
            self.save("reading_taken")
        else:
            until(lambda: self.hand.count(".keys") or self.asks_size(), "the pad")
            if self.asks_size():
                self.hand.tap(".row", having="Large wheel")
            self.hand.sees(".keys")
            self.enter("small" if "small" in place else step, quantity)
        if self.hand.count(".foot .second", "Done weighing"):
            seen = self.look()
            self.hand.tap(".foot .second", "Done weighing")
            self.until_changed(seen)
        if "/reading/" in self.look()["place"]:
            self.reading()  # the other thermometer of a round

    def enter(self, step, quantity):
        """Type what is read off the instrument, and save it."""
        self.type(TYPED.get((step, quantity)) or TYPED[quantity])
        self.save("reading_taken")

    def asks_size(self):
        return self.look()["title"].endswith("Which mould size?")

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

    def decide(self, seen):
        """Decide what stands, in a way that lets the work go on: with why and PIN."""
        self.press_until_changed(seen, self.large_button)
        self.hand.sees(".matter-block")
        self.hand.tap(".matter-block .row", having="Go on")
        self.hand.fill("In your words", "Seen by two people, and noted")
        self.hand.tap(".foot .primary", having="Decide")
        if self.has_pin:
            self.pin("Decide")
        else:
            self.pin("Next")
            self.pin("Keep this PIN")
            self.has_pin = True
        until(lambda: not self.hand.count(".pin-pad"), "the PIN to be taken")
        self.done["matter_decided"] += 1
        stands = self.look()
        self.row("‹ Back")
        self.until_changed(stands)

    def pin(self, word):
        """Type the PIN on a pad whose large key says so."""
        self.hand.sees(".pin-pad .foot .primary", word)
        self.type(PIN, shown="●" * len(PIN))
        self.hand.tap(".pin-pad .foot .primary", word)

    def end_early(self, seen):
        """End a step before its time: the screen says what that means and asks why."""
        self.end_row()
        end_s = time.monotonic() + UNANSWERED_S
        while "/end/" not in self.look()["place"]:
            if time.monotonic() > end_s:
                return  # a clock's words moved the row from under the finger
            self.hand.wait(50)
        asked = self.look()
        assert any(text.startswith(NOT_OVER) for text in asked["blockers"]), asked
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
