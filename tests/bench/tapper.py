"""A maker on a phone whose taps are counted, and whose clock is moved on."""

import contextlib
import json
from collections import Counter

from tests.bench.instruments import DAY_S, shown_by
from tests.browser.conftest import ROOT, until
from tests.browser.hand import PlaywrightHand
from tests.browser.maker import Maker

CORE_MS = 400
STEP_S = {"hold": 5.0, "wash_1": 10.0, "wash_2": 10.0, "cut": 10.0, "store": 7200.0}
SLOW_S = 1800.0
SLOW = ("rest", "press_3", "brine_small", "brine_large", "dry", "coat_1", "coat_2")
# Words and the first line of the instruction in the first screenful.
SCREEN = """
() => {
  const isSeen = (box) => box.top < innerHeight && box.bottom > 0 && box.height > 0;
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  let words = 0;
  while (walk.nextNode()) {
    const text = walk.currentNode;
    const range = document.createRange();
    range.selectNodeContents(text);
    if (!isSeen(range.getBoundingClientRect())) continue;
    if (text.parentElement.closest(".heard")) continue;
    words += text.data.split(/\\s+/).filter((one) => /\\w/.test(one)).length;
  }
  const first = document.querySelector(".step-now");
  const top = first ? Math.round(first.getBoundingClientRect().top) : null;
  return { words, top };
}
"""
RECIPE = json.loads((ROOT / "server/recipes/washed-wheel.json").read_text("utf-8"))
TITLES = {step["title"]["en"]: step["key"] for step in RECIPE["steps"]}
ENDS = {
    step["key"]: step["end"]
    for step in RECIPE["steps"]
    if step["end"]["by"] == "reading"
}
# How often wheels are turned: each day, after two weeks twice a week.
TURNS_S = {"dry": ((0.0, DAY_S),), "store": ((0.0, DAY_S), (14 * DAY_S, 3.5 * DAY_S))}
NOW = "() => Date.now()"
OFFERED = """
(typed) => [...document.querySelectorAll("[data-offer]")].some(
  (one) => one.dataset.offer === typed)
"""
DUE = "() => document.querySelector('.row.reading.is-due') !== null"


class Counted(PlaywrightHand):
    """A finger whose presses are counted, of a phone whose clock is moved on."""

    def __init__(self, page, log=None):
        super().__init__(page)
        self.file = log.open("w", encoding="utf-8") if log else None
        self.taps = Counter()
        self.purpose = "the rest"
        self.is_moved = False  # whether the bench moves the clock on

    def is_felt(self, is_free, x, y):
        felt = super().is_felt(is_free, x, y)
        if felt:
            self.taps[self.purpose] += 1
            if self.file:
                what = self.run("() => window.aimedAt.textContent.trim()")
                self.file.write(f"{self.taps.total()}\t{self.purpose}\t{what[:60]}\n")
                self.file.flush()
        return felt

    def fill(self, label, value):
        self.taps[self.purpose] += 1  # into the field; letters are not counted
        super().fill(label, value)

    def key(self, letter):
        self.taps[self.purpose] += 1
        super().key(letter)

    def wait(self, wait_ms):
        self.pass_s(max(0.2, wait_ms / 1000.0))

    def pass_s(self, seconds):
        if self.is_moved:
            self.page.clock.fast_forward(int(seconds * 1000))
            self.page.wait_for_timeout(5)
        else:
            self.page.wait_for_timeout(min(seconds, 0.2) * 1000)

    def move_clock(self):
        """Let the bench move the phone's clock from now on."""
        self.page.clock.install()
        self.is_moved = True

    @contextlib.contextmanager
    def doing(self, purpose):
        before, self.purpose = self.purpose, purpose
        try:
            yield
        finally:
            self.purpose = before


PURPOSES = {
    "Begin": "begin and finish",
    "Finish": "begin and finish",
    "Enter": "readings",
    "Add": "additions",
    "Judge": "judgements",
}


class CountedMaker(Maker):
    """A maker who reads instruments, turns wheels and is counted."""

    def __init__(self, hand, is_moving=False):
        super().__init__(hand)
        self.is_moving = is_moving
        self.begun_ms = {}  # by the step's title
        self.first = {}  # step's title: what its first screenful holds
        self.marks = {}  # step's title: taps before it
        self.turned_ms = 0
        self.last = {}  # (step, quantity): what was entered last

    def act(self, seen):
        if seen["step"] not in self.marks:
            self.marks[seen["step"]] = self.hand.taps.total()
        word = seen["button"].split(" ")[0].rstrip(":")
        purpose = "cautions" if seen["cautions"] else PURPOSES.get(word, "the rest")
        with self.hand.doing(purpose):
            super().act(seen)

    def press_until_changed(self, seen, press):
        press()
        self.until_changed(seen)

    def until_changed(self, seen):
        until(lambda: self.hand.pass_s(0.2) or self.is_changed(seen), f"more: {seen}")

    def read_cautions(self, seen):
        if not seen["hasPad"] and self.hand.count(".foot .primary-does"):
            words = self.hand.read(".foot .primary-does")
            if words in ("Read. Begin now", "Begin now"):
                self.hand.purpose = "begin and finish"
            self.large_button()
            self.until_words(words, seen)
            if "egin now" in words:
                self.done["step_begun"] += 1
                self.begun(seen)
            self.done["cautions_seen"] += 1
            return
        super().read_cautions(seen)

    def until_words(self, words, seen):
        def is_other():
            self.hand.pass_s(0.2)
            now = self.hand.read(".foot .primary-does")
            return now != words or self.is_changed(seen)

        until(is_other, f"other words than {words}")

    def give(self, kind, seen):
        super().give(kind, seen)
        if kind == "step_begun":
            self.begun(seen)

    def begun(self, seen):
        title = self.look()["step"] or seen["step"]
        self.begun_ms[TITLES.get(title)] = self.hand.run(NOW)
        self.first[title] = self.hand.run(SCREEN)

    def at_s(self, step):
        begun_ms = self.begun_ms.get(step)
        return 0.0 if begun_ms is None else (self.hand.run(NOW) - begun_ms) / 1000.0

    def idle(self, seen):
        step = TITLES.get(seen["step"])
        if step in TURNS_S and self.hand.run(NOW) > self.turned_ms + self.turn_s(step):
            with self.hand.doing("turns"):
                self.turn()
            return
        self.hand.pass_s(STEP_S.get(step, SLOW_S if step in SLOW else 30.0))
        # The core needs its own time: meanwhile the moved clock stands all but still.
        self.hand.page.wait_for_timeout(CORE_MS)

    def asked_reading(self, seen):
        step = TITLES.get(seen["step"])
        end = ENDS.get(step)
        if self.hand.run(DUE) or end is None or self.is_there(step, end):
            self.large_button()
            self.reading()
        else:
            self.idle(seen)

    def is_there(self, step, end):
        shows = float(shown_by(step, end["quantity"], self.at_s(step), self.is_moving))
        least, most = end.get("at_least"), end.get("at_most")
        return shows >= least["value"] if least else shows <= most["value"]

    def enter(self, step, quantity):
        typed = shown_by(step, quantity, self.at_s(step), self.is_moving)
        if self.hand.run(OFFERED, typed):
            place = self.look()["place"]
            self.hand.tap(f"[data-offer='{typed}']")
            until(lambda: self.hand.pass_s(0.2) or self.look()["place"] != place, "it")
            self.done["reading_taken"] += 1
            return
        self.type(typed)
        self.save("reading_taken")

    def turn_s(self, step):
        at_s = self.at_s(step)
        return [every_s for from_s, every_s in TURNS_S[step] if at_s >= from_s][-1]

    def turn(self):
        """Say that all wheels were turned."""
        self.turned_ms = self.hand.run(NOW)
        self.hand.tap(".row", having="wheels are turned")
        self.done["wheel_turned"] += 1
        self.hand.pass_s(20.0)
