"""How long a slow phone takes for each sum and for each step's sums.

Not a test: machines differ. The interpreter and the core files that phones get
run in the main thread of a page, since only that is slowed down by Chromium's
throttle. Each sum is asked with values from the middle of each input's likely
range; each step's sums are asked of a make that has all its entries, with the
same values for what the make cannot know. A call is timed from text to text,
as the app's worker makes it.

Use: python -m tests.bench.sums_on_phone [--slow 4] [--times 25] [--only KEY]
"""

import argparse
import functools
import http.server
import json
import os
import random
import statistics
import threading
import uuid

from playwright.sync_api import sync_playwright

from demo.recorded import MIN_MS, Crew, Phone, Recorder
from server.api import core_document
from server.api.shell import Shell
from tests.bench.table import percentile
from tests.browser.conftest import FLAGS, ROOT

LIMIT_MS = 20.0  # asked of each answer
ROWS = 8  # readings in a table, as many as an hour of a make has
WHOLE_MAKE_MIN = 120 * 24 * 60  # the demo's recipe is in its store by then
PAGE = b"<!doctype html><title>Sums</title><script type=module src=/bench.js></script>"
# The app's worker in a page: the same start, the same heap, the same calls.
SCRIPT = b"""
import { loadMicroPython } from "/lib/micropython.mjs";
const timed = async (act) => {
  const from = performance.now();
  const value = await act();
  return { ms: performance.now() - from, value };
};
let host;
const start = async () => {
  const python = await loadMicroPython({
    url: "/lib/micropython.wasm", heapsize: 16 * 1024 * 1024,
  });
  const parts = ["/core.json", "/core-later.json"];
  const [shipped, later] = await Promise.all(
    parts.map(async (part) => (await fetch(part)).json()),
  );
  Object.assign(shipped.files, later.files);
  const unpacked = await timed(() => {
    const encoder = new TextEncoder();
    const names = Object.keys(shipped.files);
    const sheets = names.map((name) => encoder.encode(shipped.files[name]));
    const index = names.map((name, place) => `${name} ${sheets[place].length}`);
    python.FS.mkdirTree("/lib");
    python.FS.writeFile("/lib/shelf.py", shipped.files["shelf.py"]);
    const whole = names.map((name) => shipped.files[name]).join("");
    python.FS.writeFile("/lib/sheaf", encoder.encode(whole));
    python.pyimport("shelf").take("/lib/sheaf", index.join("\\n"));
  });
  const started = await timed(() => {
    host = python.pyimport("host");
    host.take_rules(JSON.stringify(shipped.rules));
  });
  return [unpacked.ms, started.ms];
};
// Begun by the page itself, as the worker begins it. Begun from outside it, the
// interpreter lost its memory's bounds between the start and the first call.
const booted = start();
window.boot = () => booted;
window.ask = (text, times) => {
  const spans = [];
  let answer;
  for (let n = 0; n < times; n += 1) {
    const from = performance.now();
    answer = host.call(text);
    spans.push(performance.now() - from);
  }
  return { spans, answer: JSON.parse(answer) };
};
"""
HEADERS = {
    "Content-Security-Policy": "default-src 'self'; "
    "script-src 'self' 'wasm-unsafe-eval'",
    # With these two, Chromium's clock tells microseconds apart.
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Embedder-Policy": "require-corp",
}


class Files(http.server.BaseHTTPRequestHandler):
    """Sends the page, its script, and what the app would send of the core.

    Args:
        shell: the app's files.
    """

    def __init__(self, *args, shell):
        self.shell = shell
        super().__init__(*args)

    def do_GET(self):
        """Answer with one file, or 404."""
        if self.path == "/":
            body, mime = PAGE, "text/html"
        elif self.path == "/bench.js":
            body, mime = SCRIPT, "text/javascript"
        else:
            name = self.path[1:]
            is_core = name in (core_document.CORE, core_document.LATER)
            page = self.shell.core(name) if is_core else self.shell.file(name)
            if page is None:
                self.send_error(404)
                return
            body, mime = page.body, page.mime
        self.send_response(200)
        for name, text in {**HEADERS, "Content-Type": mime}.items():
            self.send_header(name, text)
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *args):
        """Say nothing: the table is all that is printed."""


def likely(item, place=0):
    """Return a likely value of one input; the place-th row of a table falls a little.

    Args:
        item: the input's layout.
        place: row of a table.
    """
    if item["kind"] == "choice":
        return item["choices"][0]
    if item["name"] == "at_min":
        return 10.0 * place
    if item["name"] == "ph":
        return 6.6 - 0.04 * place
    low = item["low"] if item["ask_low"] is None else item["ask_low"]
    high = item["high"] if item["ask_high"] is None else item["ask_high"]
    share = 0.4 + 0.01 * place
    value = low + share * (high - low)
    return int(value) if item["kind"] == "count" else value


def given(row):
    """Return what is typed for a sum: all that it must have and has no default.

    Args:
        row: the sum's layout.
    """
    found = {}
    for item in row["inputs"]:
        if item["default"] is not None or item["optional"]:
            continue
        if item["kind"] == "series":
            rows = [
                {column["name"]: likely(column, place) for column in item["columns"]}
                for place in range(max(ROWS, int(item["low"])))
            ]
            found[item["name"]] = {"rows": rows}
        else:
            found[item["name"]] = {"value": likely(item)}
    for name, value in ASKED.get(row["key"], {}).items():
        found[name] = {"value": value} if not isinstance(value, dict) else value
    return found


# Values that only make sense together.
ASKED = {
    "heat_forecast": {"jacket_temp_c": 90.0, "target_temp_c": 63.0},
    "heat_time": {
        "vat_temp_c": 32,
        "target_temp_c": 38,
        "jacket_temp_c": 60,
        "tau_s": 2400,
    },
    "jacket_needed": {"vat_temp_c": 32, "target_temp_c": 38},
    "vat_time_constant": {"jacket_temp_c": 90.0},
    "milk_mass": {"milk_l": 1000.0},
    "standardise_fat": {"fat_frac": 0.04, "target_fat_frac": 0.03, "added_fat_frac": 0},
    "rennet_dose": {"strength_imcu_per_ml": 175},
    "acid_forecast": {
        "target_ph": 5.4,
        "ph_readings": {
            "rows": [{"at_min": 20.0 * n, "ph": 6.6 - 0.03 * n} for n in range(8)]
        },
    },
    "acid_ends": {
        "target_ph": 5.4,
        "ph_readings": {
            "rows": [{"at_min": 30.0 * n, "ph": 6.6 - 0.04 * n} for n in range(6)]
        },
    },
    "staph_counts": {"counts": {"rows": [{"count_per_g": 200.0}] * 5}},
    "slow_make": {"slow_mark": "ph_at_6_h_washed", "ph": 5.7, "at_h": 6.0},
    "calcium_chloride": {"form": "dihydrate"},
    "wash_water": {"vat_temp_c": 31, "target_temp_c": 37, "water_temp_c": 60},
    "wash_rest": {
        "vat_kg": 700,
        "added_kg": 150,
        "vat_now_c": 36,
        "target_temp_c": 37,
        "water_temp_c": 60,
    },
    "wash_temp": {
        "vat_kg": 700,
        "vat_temp_c": 31,
        "target_temp_c": 37,
        "water_kg": 200,
    },
    "lactose_left": {
        "aqueous_kg": 940,
        "washes": {"rows": [{"drained_kg": 300, "water_kg": 200}] * 2},
    },
    "press_programme": {
        "bore_m": 0.063,
        "moulds": {
            "rows": [
                {"diameter_m": 0.3, "side_by_side": 1},
                {"diameter_m": 0.13, "side_by_side": 2},
            ]
        },
    },
    "setting_own": {
        "settings": {
            "rows": [
                {"given_imcu_per_l": 40, "set_min": 16},
                {"given_imcu_per_l": 60, "set_min": 11},
            ]
        },
        "given_imcu_per_l": 50,
    },
    "press_gauge": {"cheese_kpa": 20, "bore_m": 0.063, "diameter_m": 0.3},
    "block_plan": {
        "curd_kg": 100,
        "length_m": 1.5,
        "width_m": 0.8,
        "large_kg": 8,
        "small_kg": 1.4,
    },
    "expected_yield": {"protein_frac": 0.033},
    "wheel_plan": {
        "curd_kg": 100,
        "curd_low_kg": 95,
        "curd_high_kg": 105,
        "sizes": {"rows": [{"wheel_kg": 8}, {"wheel_kg": 1.4}]},
    },
    "actual_yield": {"milk_kg": 1000, "cheese_kg": 100},
    "brine_strength": {"method": "baume", "baume": 19},
    "brine_top_up": {"brine_kg": 500, "brine_salt_frac": 0.19, "wanted_salt_frac": 0.2},
    "brine_make_up": {"brine_salt_frac": 0.2},
    "brine_time": {"brine_salt_frac": 0.2, "diameter_m": 0.3, "height_m": 0.108},
    "brine_factor": {
        "cheese_salt_frac": 0.018,
        "brined_s": 172800,
        "diameter_m": 0.3,
        "height_m": 0.108,
        "brine_salt_frac": 0.2,
    },
    "humidity": {"dry_c": 13, "wet_c": 12},
    "weight_loss": {"start_kg": 8, "now_kg": 7.8},
    "loss_forecast": {
        "weighings": {
            "rows": [{"at_day": n, "loss_frac": 0.005 * n} for n in range(1, 9)]
        },
        "days": 20,
    },
    "composition": {"cheese_moisture_frac": 0.42, "cheese_fat_frac": 0.29},
}


class Page:
    """The interpreter in a slowed page.

    Args:
        browser: Chromium.
        phone: a phone's profile.
        url: address of the bench's page.
        slow: how many times slower than this machine.
    """

    def __init__(self, browser, phone, url, slow):
        self.context = browser.new_context(**phone)
        self.page = self.context.new_page()
        session = self.context.new_cdp_session(self.page)
        session.send("Emulation.setCPUThrottlingRate", {"rate": slow})
        self.page.goto(url)
        self.page.wait_for_function("window.boot")
        self.unpack_ms, self.start_ms = self.page.evaluate("boot()")

    def ask(self, name, *args, times=1):
        """Ask the desk; return what it answers and how long each time took [ms].

        Args:
            name: a function of the core's desk.
            args: its arguments after the desk.
            times: how often it is asked.
        """
        text = json.dumps({"module": "desk", "name": name, "args": args, "desk": True})
        told = self.page.evaluate("([t, n]) => ask(t, n)", [text, times])
        if "error" in told["answer"]:
            raise RuntimeError(told["answer"]["error"]["text"])
        return told["answer"]["ok"], told["spans"]


def whole_make():
    """Return the recorder of a make that has all its entries."""
    path = ROOT / "server" / "recipes" / "washed-wheel.json"
    recipe = json.loads(path.read_text("utf-8"))
    chance = random.Random(500)
    maker = Phone(str(uuid.UUID(int=1)), str(uuid.UUID(int=2)), chance)
    start_ms = 1_780_000_000_000
    moulds = [{"size": row["size"], "count": 6} for row in recipe["moulds"]]
    given = ("Bench", "B-1", 900.0, moulds, "Vat", "pasteurised")
    recorder = Recorder(recipe, Crew(maker), chance, start_ms, *given)
    recorder.run(start_ms + WHOLE_MAKE_MIN * MIN_MS)
    return recorder


def told_of(answers):
    """Return in a few words what came of it: values, or what was refused."""
    problems = [row["text"] for found in answers for row in found["problems"]]
    missing = [name for found in answers for name in found["missing"]]
    if problems or missing:
        return "; ".join(problems + missing)[:60]
    return f"{sum(len(found['values']) for found in answers)} values"


def sum_rows(page, times, only):
    """Return (what, spans, what it answered) of each sum alone."""
    layout, _ = page.ask("sums_catalogue")
    rows = []
    for row in layout:
        if only in ("", row["key"]):
            page.ask("sum", row["key"], given(row))
            answer, spans = page.ask("sum", row["key"], given(row), times=times)
            rows.append((row["key"], spans, told_of([answer])))
    return rows


def step_rows(page, times, only):
    """Return (what, spans for one answer, what it answered) of each step's sums."""
    layout, _ = page.ask("sums_catalogue")
    typed = {row["key"]: given(row) for row in layout}
    recorder = whole_make()
    make, now_ms = recorder.make, recorder.now_ms
    count = len(recorder.events)
    page.ask("take", recorder.events)
    page.ask("view", make, now_ms)
    rows = []
    for step in recorder.recipe["steps"]:
        if not step.get("sums") or only not in ("", step["key"]):
            continue
        known, _ = page.ask("step_sums", make, step["key"], now_ms)
        lacking = {
            name: typed[found["key"]][name]
            for found in known
            for name in found["missing"]
            if name in typed[found["key"]]
        }
        asked = (make, step["key"], now_ms, lacking)
        each = []
        for _ in range(times):
            # Asked anew after an entry, which forgets what the sums have kept.
            note = {"text": "bench", "step": step["key"]}
            page.ask("take", [recorder.record(recorder.crew.maker, "note_added", note)])
            answers, spans = page.ask("step_sums", *asked)
            each.append(spans[0] / len(answers))
        told = f"{len(answers)} answers, {told_of(answers)}"
        rows.append((step["key"], each, told))
    return rows, count


def print_rows(title, rows):
    """Print rows of (what, spans [ms], what it answered), slowest first."""
    print(f"\n{title}\n")
    head = ("", "least ms", "median ms", "p95 ms", "of limit", "answered")
    print("{:<20} {:>9} {:>9} {:>9} {:>9}  {}".format(*head))
    for what, spans, told in sorted(rows, key=lambda row: -statistics.median(row[1])):
        middle, late = statistics.median(spans), percentile(spans, 0.95)
        share = middle / LIMIT_MS
        # The least is what it takes while nothing else runs on the machine.
        figures = f"{min(spans):>9.1f} {middle:>9.1f} {late:>9.1f} {share:>9.2f}"
        print(f"{what:<20} {figures}  {told}")


def firsts(open_page):
    """Print what a phone pays before its first answer, in fresh pages."""
    print("\nOnce, in a page just opened [ms]\n")
    for name, args in (
        ("sums_topics", ()),
        ("sums_catalogue", ("wash",)),
        ("sums_catalogue", ()),
        ("sum", ("milk_mass", {"milk_l": {"value": 500.0}})),
        ("sum", ("humidity", {"dry_c": {"value": 13}, "wet_c": {"value": 12}})),
    ):
        spans = []
        for _ in range(3):
            page = open_page()
            page.ask("board", 0)  # the app's own start
            spans += page.ask(name, *args)[1]
            page.context.close()
        what = " ".join([name, *(arg for arg in args if isinstance(arg, str))])
        print(f"{'first ' + what:<28} {statistics.median(spans):>9.1f}")
    recorder = whole_make()
    page = open_page()
    page.ask("take", recorder.events)
    page.ask("view", recorder.make, recorder.now_ms)
    for key in ("receive", "brine_large"):
        (span,) = page.ask("step_sums", recorder.make, key, recorder.now_ms)[1]
        print(f"{'then step_sums ' + key:<28} {span:>9.1f}")
    page.context.close()


def main():
    """Print the tables."""
    words = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    words.add_argument("--slow", type=float, default=4.0)
    words.add_argument("--times", type=int, default=25)
    words.add_argument("--port", type=int, default=0)
    words.add_argument("--only", default="", help="key of one sum or one step")
    args = words.parse_args()
    shell = Shell(ROOT / "static", ROOT / "server" / "core")
    files = functools.partial(Files, shell=shell)
    server = http.server.ThreadingHTTPServer(("127.0.0.1", args.port), files)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    url = f"http://127.0.0.1:{server.server_port}/"
    with sync_playwright() as play:
        path = os.environ.get("CHROMIUM")
        browser = play.chromium.launch(executable_path=path, args=FLAGS)
        phone = play.devices["Pixel 7"]

        def open_page():
            return Page(browser, phone, url, args.slow)

        title = f"main thread, Pixel 7 profile, processor slowed {args.slow:g}x"
        page = open_page()
        alone = sum_rows(page, args.times, args.only)
        if alone:
            print_rows(f"Each sum alone: {title}", alone)
        steps, count = step_rows(page, args.times, args.only)
        if steps:
            print_rows(f"Each answer of a step after an entry, make of {count}", steps)
        page.context.close()
        if not args.only:
            firsts(open_page)
        browser.close()
    server.shutdown()


if __name__ == "__main__":
    main()
