"""A finger on a page, whatever browser shows it.

It finds what a person would see by words and class, waits until it holds still,
may be pressed and lies on top, and presses its middle. A browser's own hand says
how code is run in the page and how a thing is pressed. A press that the page did
not take, because the button moved or turned beneath the finger, is made again.
"""

import contextlib
import json
import time

import pytest

WAIT_S = 60  # a driver on a loaded machine is slow; what fails shows a minute later

# The first or last thing of a kind with these words, as it lies there now.
FIND = """
(css, text, having, isLast) => {
  const reads = (one) => one.textContent.trim();
  const isIt = (one) =>
    (text === null ||
      [one, ...one.querySelectorAll("*")].some((at) => reads(at) === text)) &&
    (having === null || reads(one).includes(having));
  const all = [...document.querySelectorAll(css)].filter(isIt);
  const found = isLast ? all[all.length - 1] : all[0];
  if (!found) return "";
  const box = () => found.getBoundingClientRect();
  const x = () => box().left + box().width / 2;
  const y = () => box().top + box().height / 2;
  let top = document.elementFromPoint(x(), y());
  if (!found.contains(top)) {
    found.scrollIntoView({ block: "center", behavior: "instant" });
    top = document.elementFromPoint(x(), y());
  }
  // What has just come takes no press yet.
  const isFree = found.contains(top) && !found.disabled && !found.closest("[data-new]");
  window.aimedAt = found;
  window.isFelt = false;
  return JSON.stringify([isFree, Math.round(x()), Math.round(y())]);
}
"""
# A button that takes a press is down from then on, and acts when it is let go with
# the same words on it. What is no button of ours takes every press. What has come
# beneath the finger since it was aimed is not pressed: it is new to this person, and
# where the page's own second for what is new is cut short, the page would take it.
FEEL = """
() => {
  if (window.feeling) return;
  const reads = (one) => one.dataset.means ?? one.textContent.replace(/\\d+/g, "#");
  window.feeling = true;
  let words;
  addEventListener("pointerdown", (event) => {
    if (!window.aimedAt.contains(event.target)) event.stopPropagation();
  }, true);
  addEventListener("pointerdown", ({ target }) => {
    const button = target.closest?.("[data-tap]");
    window.isFelt = button
      ? button.classList.contains("is-down")
      : window.aimedAt.contains(target);
    words = button && reads(button);
  });
  addEventListener("pointerup", ({ target }) => {
    const button = target.closest?.("[data-tap]");
    if (button && reads(button) !== words) window.isFelt = false;
  }, true);
}
"""
COUNT = """
(css, text) => [...document.querySelectorAll(css)].filter(
  (one) => text === null || one.textContent.trim() === text).length
"""
READ = "(css) => document.querySelector(css)?.innerText.trim() ?? ''"
FILL = """
(label, value) => {
  const name = (one) => one.querySelector(".field-label")?.textContent.trim();
  const fields = [...document.querySelectorAll("label.field")];
  const field = fields.find((one) => name(one) === label);
  const input = field?.querySelector("input, textarea");
  if (!input) return false;
  const kind = input.tagName === "INPUT" ? HTMLInputElement : HTMLTextAreaElement;
  input.focus();
  Object.getOwnPropertyDescriptor(kind.prototype, "value").set.call(input, value);
  input.dispatchEvent(new InputEvent("input", { bubbles: true }));
  return true;
}
"""


class GoneError(Exception):
    """What was aimed at is no longer on the page."""


class Hand:
    """Finds and presses; a browser gives `run`, `press` and `key`."""

    def run(self, function, *args):
        """Return what a function of the page gives for these arguments."""
        raise NotImplementedError

    def press(self, x, y):
        """Put a finger down on `window.aimedAt`, found at this point, and lift it.

        Raises:
            GoneError: it was drawn anew or moved out of sight meanwhile.
        """
        raise NotImplementedError

    def key(self, letter):
        """Press a key of a keyboard."""
        raise NotImplementedError

    def tap(self, css, text=None, having=None, is_last=False, may_go=False):
        """Press the first thing of a kind: with just these words, or having them.

        With `may_go` it is left when it is there no more: an earlier press took it.
        """
        end = time.monotonic() + WAIT_S
        before = None
        while True:
            found = self.run(FIND, css, text, having, is_last)
            if found and found == before and self.is_felt(*json.loads(found)):
                return
            if may_go and not found:
                return
            if time.monotonic() > end:
                what = text or having or ""
                pytest.fail(f"nothing to press within {WAIT_S} s: {css} {what} {found}")
            before = found
            self.wait(20)

    def is_felt(self, is_free, x, y):
        """Press what is free to be pressed, and tell whether the page took it."""
        if not is_free:
            return False
        self.run(FEEL)
        with contextlib.suppress(GoneError):
            self.press(x, y)
        # A page that is loaded anew by the press remembers nothing.
        return self.run("() => window.isFelt") is not False

    def count(self, css, text=None):
        return self.run(COUNT, css, text)

    def read(self, css):
        return self.run(READ, css)

    def sees(self, css, text=None):
        """Wait until there is such a thing."""
        end = time.monotonic() + WAIT_S
        while not self.count(css, text):
            if time.monotonic() > end:
                pytest.fail(f"not to be seen within {WAIT_S} s: {css} {text or ''}")
            self.wait(20)

    def fill(self, label, value):
        """Write into a labelled line of text."""
        self.sees(".field-label", label)
        assert self.run(FILL, label, value), label

    def wait(self, wait_ms):
        time.sleep(wait_ms / 1000)


class PlaywrightHand(Hand):
    """The hand of a page that Playwright drives.

    Args:
        page: Playwright's page, of a device with touch.
    """

    def __init__(self, page):
        self.page = page

    def run(self, function, *args):
        return self.page.evaluate(f"(args) => ({function})(...args)", list(args))

    def press(self, x, y):
        self.page.touchscreen.tap(x, y)

    def key(self, letter):
        self.page.keyboard.press(letter)

    def wait(self, wait_ms):
        # Playwright hears of page errors only while it is waited here.
        self.page.wait_for_timeout(wait_ms)
