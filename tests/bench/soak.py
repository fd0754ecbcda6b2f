"""Eight hours at the vat: does memory stay flat, is any deadline missed?

Not a test: it takes ten minutes. A recorded day is sent as it falls due by the
server's fast clock, with a phone on the Make screen and the room's wall beside it;
then the same phone watches a make in which nothing happens, by the true clock, and
its work is counted. The wall asks each five true seconds at the latest, so
lateness is told in true seconds.

Use: python -m tests.bench.soak [--hours 8] [--rate 60] [--idle 120]
"""

import argparse
import random
import shutil
import statistics
import tempfile
import time
from pathlib import Path

from playwright.sync_api import sync_playwright

from demo.recorded import MIN_MS, Crew, Recorder
from demo.recorded import Phone as Crewman
from tests.bench.phone import join, push
from tests.bench.table import Row, print_table
from tests.browser.conftest import Creamery, Phone, copy_unpacked

SAMPLES = 16
LATE_S = 6.0  # the wall asks each 5 s
TIMER_EVERY_MS = 17 * MIN_MS  # stand-alone timers beside the steps' deadlines
# When each alarm was first known to the screen [ms of the server's clock].
NOTE_ALARMS = """
async () => {
  const [{ effect }, { alarms }, { clock }] = await Promise.all([
    import("/lib/signals.js"), import("/js/data/alarm.js"), import("/js/data/clock.js"),
  ]);
  window.seenMs = {};
  effect(() => {
    for (const one of alarms.value?.alarms ?? []) {
      window.seenMs[one.id] ??= [clock.nowMs(), one.rings_ms, one.kind];
    }
  });
}
"""

# As the browser does when another app is in front.
HIDE = """
() => {
  Object.defineProperty(document, "visibilityState", { get: () => "hidden" });
  Object.defineProperty(document, "hidden", { get: () => true });
  document.dispatchEvent(new Event("visibilitychange"));
}
"""


def plain_program(folder):
    """Return a copy of the program that serves its modules one by one."""
    copy = folder / "program"
    copy_unpacked(copy, "server", "static")
    return copy


def renderer_mb(session):
    """Return what the phone's page and its worker hold in memory [MB]."""
    rows = session.send("SystemInfo.getProcessInfo")["processInfo"]
    total = 0
    for row in rows:
        if row["type"] == "renderer":
            status = Path(f"/proc/{row['id']}/status").read_text()
            total += int(status.split("VmRSS:")[1].split()[0])
    return total / 1024


def heap_mb(session):
    session.send("HeapProfiler.collectGarbage")
    return session.send("Runtime.getHeapUsage")["usedSize"] / 1e6


def work_ms(session):
    """Return the time this page has worked so far [ms]."""
    rows = session.send("Performance.getMetrics")["metrics"]
    found = {row["name"]: row["value"] for row in rows}
    return 1000 * found["TaskDuration"]


def watch(play, folder, creamery, name, path):
    phone = Phone(play, folder / name, creamery.url)
    phone.open()
    join(phone, creamery.invite(name, "maker"))
    phone.page.goto(f"{creamery.url}/#{path}")
    phone.page.locator("main, .make").first.wait_for()
    return phone


def slope(values):
    """Return how much a sample is above the one before it, by least squares."""
    middle = (len(values) - 1) / 2
    mean = statistics.fmean(values)
    above = sum((at - middle) * (value - mean) for at, value in enumerate(values))
    return above / sum((at - middle) ** 2 for at in range(len(values)))


class Day:
    """A recorded make whose entries are sent as they fall due."""

    def __init__(self, creamery):
        me = creamery.ask("GET", "/me")
        recipe = creamery.ask("GET", "/recipes/washed-wheel")
        chance = random.Random(8)
        maker = Crewman(me["device"], me["person"]["id"], chance)
        moulds = [{"size": row["size"], "count": 6} for row in recipe["moulds"]]
        self.creamery = creamery
        start_ms = self.now_ms()
        given = ("Soak", "S-1", 900.0, moulds, "Vat", "pasteurised")
        recorder = Recorder(recipe, Crew(maker), chance, start_ms, *given)
        recorder.run(start_ms + 12 * 60 * MIN_MS)
        for at_ms in range(start_ms + 10 * MIN_MS, recorder.now_ms, TIMER_EVERY_MS):
            recorder.now_ms = at_ms
            data = {"label": "Check the bed", "lasts_s": 600}
            recorder.record(maker, "timer_started", data)
            started = recorder.events[-1]["id"]
            recorder.now_ms = at_ms + 15 * MIN_MS  # it has rung five minutes
            recorder.record(maker, "timer_stopped", {}, started)
        self.make = recorder.make
        self.waiting = sorted(recorder.events, key=lambda one: one["at_ms"])

    def now_ms(self):
        return self.creamery.ask("GET", "/time")["now"]

    def send_due(self):
        now_ms = self.now_ms()
        ready = [one for one in self.waiting if one["at_ms"] + one["off_ms"] <= now_ms]
        if ready:
            push(self.creamery, ready)
            self.waiting = self.waiting[len(ready) :]


def soak(creamery, day, phone, wall, args):
    """Let the day pass; return the rows of the table."""
    wall.page.evaluate(NOTE_ALARMS)
    page = phone.context.new_cdp_session(phone.page)
    browser = phone.context.browser.new_browser_cdp_session()
    heaps, sizes, told = [], [], {}
    sample_s = args.hours * 3600 / args.rate / SAMPLES
    for _ in range(SAMPLES):
        end_s = time.monotonic() + sample_s
        while time.monotonic() < end_s:
            day.send_due()
            rows = creamery.ask("GET", "/alarms")["alarms"]
            told.update({one["id"]: one for one in rows})
            phone.page.wait_for_timeout(500)
        heaps.append(heap_mb(page))
        sizes.append(renderer_mb(browser))
    seen = wall.page.evaluate("window.seenMs")
    late_s = [(at - rang) / args.rate / 1000 for at, rang, _ in seen.values()]
    missed = [key for key in told if key not in seen]
    half = SAMPLES // 2
    per_hour = SAMPLES / args.hours
    heap_mb_h = slope(heaps[half:]) * per_hour
    size_mb_h = slope(sizes[half:]) * per_hour
    return [
        Row("page's heap, after a quarter", heaps[SAMPLES // 4], "MB", None),
        Row("page's heap, at the end", heaps[-1], "MB", None),
        Row("page's heap, growth, second half", heap_mb_h, "MB/h", 0.1),
        Row("page and worker, at half time", sizes[half], "MB", None),
        Row("page and worker, at the end", sizes[-1], "MB", None),
        Row("page and worker, growth, second half", size_mb_h, "MB/h", 1),
        Row("alarms told by the server", len(told), "", None),
        Row("of them never shown on the wall", len(missed), "", None),
        Row("lateness on the wall, worst", max(late_s, default=0), "s", LATE_S),
    ]


def idle(phone, seconds):
    """Count the work of a screen on which nothing changes but the clock."""
    page = phone.context.new_cdp_session(phone.page)
    page.send("Performance.enable")
    phone.page.wait_for_timeout(10_000)  # what opening leaves behind
    rows = []
    for name, state in (("in sight", "active"), ("out of sight", "hidden")):
        if state == "hidden":
            cover = phone.context.new_page()
            cover.bring_to_front()
            phone.page.evaluate(HIDE)
            phone.page.wait_for_timeout(2000)
        before = work_ms(page)
        phone.page.wait_for_timeout(seconds * 1000)
        share = (work_ms(page) - before) / seconds / 10
        rows.append(Row(f"work while nothing changes, {name}", share, "%", 1))
    return rows


def main():
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--hours", type=float, default=8.0)
    words.add_argument("--rate", type=float, default=60.0)
    words.add_argument("--idle", type=int, default=120, help="seconds")
    args = words.parse_args()
    folder = Path(tempfile.mkdtemp(prefix="vatside-bench-"))
    creamery = Creamery(folder, plain_program(folder))
    creamery.options = ("--replay", f"{args.rate:g}")
    try:
        with sync_playwright() as play:
            creamery.start()
            creamery.own()
            day = Day(creamery)
            day.send_due()
            phone = watch(play, folder, creamery, "Mara", f"/make/{day.make}")
            wall = watch(play, folder, creamery, "Wall", "/wall")
            rows = soak(creamery, day, phone, wall, args)
            wall.close()
            creamery.kill()
            creamery.options = ()
            creamery.start()
            phone.reload()
            rows += idle(phone, args.idle)
            phone.close()
        title = f"{args.hours:g} simulated hours at {args.rate:g} times the clock"
        print_table(title, rows)
    finally:
        creamery.kill()
        shutil.rmtree(folder, ignore_errors=True)


if __name__ == "__main__":
    main()
