"""How fast a slow phone answers: tap to paint, offline reopening, first load.

Not a test: machines differ. It starts a real server, gives a real Chromium
with a phone's profile a make of many events, slows its processor down, and
prints medians and worst cases beside the figures asked for.

Two times are told for a tap. Until the next paint is what the browser itself
counts for an interaction (Event Timing): the button answers the finger. Until the
painted answer is longer: the core has checked the entry, it is on disk, and the
screen shows what follows from it.

Use: python -m tests.bench.phone [--events 2000] [--slow 4] [--slower 6] [--taps 20]
"""

import argparse
import json
import random
import shutil
import statistics
import tempfile
import time
import urllib.request
from pathlib import Path

from playwright.sync_api import sync_playwright

from demo.recorded import MIN_MS, Crew, Recorder
from demo.recorded import Phone as Crewman
from deploy.pack_page import pack
from tests.bench.table import Row, percentile, print_table
from tests.browser.conftest import ROOT, Creamery, Phone

TAP_MS = 50
SLOWER_TAP_MS = 100
# Painted is when the frame after the change has been handed over: a message
# posted from the frame's own callback is delivered once it has been drawn.
WATCH = """
() => {
  window.answers = [];
  let tappedMs = null, before = '';
  const shown = () => document.querySelector('.primary')?.textContent ?? '';
  addEventListener('pointerup', (event) => {
    tappedMs = event.timeStamp;
    before = shown();
  }, true);
  const painted = (then) => requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => then(performance.now());
    channel.port2.postMessage(0);
  });
  new MutationObserver(() => {
    if (tappedMs === null || shown() === before) return;
    const fromMs = tappedMs;
    tappedMs = null;
    painted((ms) => window.answers.push(ms - fromMs));
  }).observe(document.body, {subtree: true, childList: true, characterData: true});
}
"""

# What the browser counts of each interaction, rounded by it to 8 ms.
COUNT_TAPS = """
() => {
  window.interactions = {};
  new PerformanceObserver((list) => {
    for (const one of list.getEntries()) {
      if (!one.interactionId) continue;
      const known = window.interactions[one.interactionId] ?? 0;
      window.interactions[one.interactionId] = Math.max(known, one.duration);
    }
  }).observe({ type: "event", durationThreshold: 16 });
}
"""

# Marks of a page that opens: when the step's large button could first be used,
# that is, when the core has confirmed what was painted from the saved view.
OPENING = """
() => {
  if (window.openedMs) return window.openedMs;
  const button = document.querySelector('.primary:not([disabled])');
  return button ? (window.openedMs = performance.now()) : 0;
}
"""
# When the last saved view of the make was first drawn, before the core has run.
SAVED_VIEW = """
  new MutationObserver((_, observer) => {
    if (!document.querySelector('.step-card')) return;
    observer.disconnect();
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => { window.savedViewMs = performance.now(); };
      channel.port2.postMessage(0);
    });
  }).observe(document, {subtree: true, childList: true});
"""
FIRST_PAINT = """
() => performance.getEntriesByType('paint')
  .filter((entry) => entry.name === 'first-contentful-paint')
  .map((entry) => entry.startTime)[0] ?? 0
"""


def long_make(recipe, person, device, count):
    """Return (make id, events) of a make of `count` events that waits for a hand."""
    chance = random.Random(500)
    start_ms = time.time_ns() // 1_000_000 - 24 * 60 * MIN_MS
    maker = Crewman(device, person, chance)
    moulds = [{"size": row["size"], "count": 6} for row in recipe["moulds"]]
    given = ("Bench", "B-1", 900.0, moulds, "Vat", "pasteurised")
    recorder = Recorder(recipe, Crew(maker), chance, start_ms, *given)
    recorder.run(start_ms + 48 * 60 * MIN_MS, stop_at="bed_rotate")
    struck = recorder.events[-1]
    why = {"why": "the bench begins here"}
    recorder.record(maker, "entry_struck", why, struck["id"])
    missing = count - len(recorder.events)
    for _ in range(max(0, missing)):
        recorder.now_ms += 1000
        data = {"quantity": "curd_temp_c", "value": 37.0, "step": "stir_2"}
        recorder.record(maker, "reading_taken", data)
    return recorder.make, recorder.events


def push(creamery, events):
    for first in range(0, len(events), 200):
        body = {
            "api": 1,
            "app": "bench",
            "epoch": creamery.epoch(),
            "t0": time.time_ns() // 1_000_000,
            "events": events[first : first + 200],
        }
        answer = creamery.ask("POST", "/sync/push", body)
        odd = [row for row in answer["results"] if row["st"] != "stored"]
        if odd:
            raise RuntimeError(f"the server did not take {odd[0]}")


def slow_down(phone, rate):
    session = phone.context.new_cdp_session(phone.page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": rate})
    return session


def first_load_kb(url, accepted):
    """Return what a first visit transfers to work without a network after, [KB].

    `accepted` names the compressions that the browser takes.

    The browser fetches some files twice, for the page and for the service
    worker; its own cache answers the second time, so each counts once.
    """
    names = ["/sw.js"]
    with urllib.request.urlopen(url + "/sw.js") as answer:
        line = answer.readline().decode()
    names += json.loads(line.removeprefix("const SHELL = ").rstrip(";\n"))["files"]
    total = 0
    for name in names:
        request = urllib.request.Request(url + name)
        request.add_header("Accept-Encoding", accepted)
        with urllib.request.urlopen(request) as answer:
            total += len(answer.read()) + len(str(answer.headers))
    return total / 1024


def join(phone, code):
    """Pair the phone as a person would, and let it keep the app."""
    page = phone.page
    page.goto(f"{phone.url}/#/pair/{code}")
    page.locator("input").nth(1).fill("Bench phone")
    page.locator(".primary:not([data-new])").tap()
    page.wait_for_url("**/#/now")
    page.evaluate("navigator.serviceWorker.ready.then(() => null)")
    page.reload()
    phone.painted()


def tap_times(phone, make, taps, rate):
    """Return ([ms to the painted answer], [ms to the next paint]) of taps."""
    page = phone.page
    page.goto("about:blank")
    page.goto(f"{phone.url}/#/make/{make}")
    page.locator(".primary").wait_for()
    page.wait_for_timeout(2000)  # the core is filled, quiet time is used up
    page.evaluate(WATCH)
    page.evaluate(COUNT_TAPS)
    session = slow_down(phone, rate)
    for _ in range(taps):
        before = page.evaluate("answers.length")
        page.locator(".primary:not([data-new])").tap()
        page.wait_for_function("n => answers.length > n", arg=before)
        page.wait_for_timeout(450)  # longer than the guard against repeats
        if page.locator(".undo-area .bar-button").count():
            before = page.evaluate("answers.length")
            page.locator(".undo-area .bar-button:not([data-new])").first.tap()
            page.wait_for_function("n => answers.length > n", arg=before)
            page.wait_for_timeout(450)
    page.wait_for_timeout(700)
    session.detach()
    answers = page.evaluate("answers")
    next_paints = page.evaluate("Object.values(interactions)")
    # What took less than 16 ms is not told: it counts as that.
    return answers, next_paints + [16] * max(0, len(answers) - len(next_paints))


def reopen_times(phone, make, runs, rate):
    """Return ([first paint], [saved view], [usable]), reopened offline [ms]."""
    paints, views, usable = [], [], []
    phone.context.add_init_script(SAVED_VIEW)
    for _ in range(runs):
        phone.context.set_offline(True)
        page = phone.context.new_page()
        session = phone.context.new_cdp_session(page)
        session.send("Emulation.setCPUThrottlingRate", {"rate": rate})
        page.goto(f"{phone.url}/#/make/{make}")
        page.locator(".primary").wait_for()
        usable.append(page.evaluate(OPENING))
        paints.append(page.evaluate(FIRST_PAINT))
        views.append(page.evaluate("window.savedViewMs"))
        page.close()
        phone.context.set_offline(False)
    return paints, views, usable


def main():
    pack()  # what phones load
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--events", type=int, default=2000)
    words.add_argument("--slow", type=float, default=4.0)
    words.add_argument("--slower", type=float, default=6.0)
    words.add_argument("--taps", type=int, default=20)
    words.add_argument("--runs", type=int, default=7)
    args = words.parse_args()
    folder = Path(tempfile.mkdtemp(prefix="vatside-bench-"))
    creamery = Creamery(folder, ROOT)
    try:
        with sync_playwright() as play:
            creamery.start()
            creamery.own()
            measure(play, creamery, folder, args)
    finally:
        creamery.kill()
        shutil.rmtree(folder, ignore_errors=True)


def measure(play, creamery, folder, args):
    recipe = creamery.ask("GET", "/recipes/washed-wheel")
    me = creamery.ask("GET", "/me")
    make, events = long_make(recipe, me["person"]["id"], me["device"], args.events)
    push(creamery, events)
    load_kb = {one: first_load_kb(creamery.url, one) for one in ("br, gzip", "gzip")}
    phone = Phone(play, folder / "phone", creamery.url)
    phone.open()
    join(phone, creamery.invite("Mara", "maker"))
    rows = []
    for rate, asked_ms in ((args.slow, TAP_MS), (args.slower, SLOWER_TAP_MS)):
        answers, paints = tap_times(phone, make, args.taps, rate)
        rows += [
            Row(
                f"tap to next paint, p95, {rate:g}x",
                percentile(paints, 0.95),
                "ms",
                asked_ms,
            ),
            Row(
                f"tap to answer, median, {rate:g}x",
                statistics.median(answers),
                "ms",
                None,
            ),
            Row(
                f"tap to answer, p95, {rate:g}x",
                percentile(answers, 0.95),
                "ms",
                asked_ms,
            ),
        ]
    phone.page.wait_for_timeout(3000)  # the saved view is written in quiet time
    phone.page.goto("about:blank")
    paints, views, usable = reopen_times(phone, make, args.runs, args.slow)
    phone.close()
    rows += [
        Row("offline reopen, first paint", statistics.median(paints), "ms", 300),
        Row("offline reopen, saved view", statistics.median(views), "ms", None),
        Row("offline reopen, usable step", statistics.median(usable), "ms", 1000),
        Row("offline reopen, usable, worst", max(usable), "ms", None),
        Row("first load, brotli", load_kb["br, gzip"], "KB", 320),
        Row("first load, gzip", load_kb["gzip"], "KB", 400),
    ]
    title = f"Pixel 7 profile, slowed {args.slow:g}x unless said, {len(events)} events"
    print_table(title, rows)


if __name__ == "__main__":
    main()
