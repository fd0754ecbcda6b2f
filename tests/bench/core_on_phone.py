"""Time the core on the phone's interpreter, under Node.js.

Prints a table: start, import, folding one event after another through the
page's host, and the view and board after a tap. Medians over RUNS processes;
a phone is slower than this machine by its own factor.

Use: python -m tests.bench.core_on_phone
"""

import json
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

from deploy.fetch_modules import STATIC, find_node
from server.api.bare_python import bare
from server.api.core_document import core_texts
from server.config import CORE_DIR
from server.core import desk
from tests.core.builders import MAKE, START_MS
from tests.core.test_whole_make import Maker

RUNS = 5
TAPS = 40
SIZES = (500, 2000)
BETWEEN_MS = 300_000  # of the readings that fill a log up
SCRIPT = Path(__file__).with_suffix(".mjs")


class Here:
    """Answers the maker in this process and keeps every event."""

    def __init__(self):
        self.desk = desk.new()
        self.log = []

    def press(self, name, events, now_ms):
        """Take events; return what the maker looks at."""
        self.log.extend(events)
        told = desk.take(self.desk, events)
        view = desk.view(self.desk, MAKE, now_ms)
        focus = [row for row in view["steps"] if row["key"] == view["focus"]]
        return {
            "problems": told["problems"],
            "step": focus[0] if focus else None,
            "alerts": [],
            "ahead_ms": [row["due_ms"] for row in desk.board(self.desk, now_ms)["due"]],
        }


def whole_make():
    """Return the events of a whole make of the house recipe, up to its store."""
    here = Here()
    maker = Maker(here, "bench")
    maker.work()
    return maker.phone, here.log[:-1]


def filled(phone, log, count):
    """Return a log of so many events: cut short, or with readings in the store."""
    log = log[:count]
    while len(log) < count:
        at_ms = log[-1]["at_ms"] + BETWEEN_MS
        event = phone.event(
            "reading_taken",
            (at_ms - START_MS) / 60_000,
            quantity="store_temp_c",
            value=12.5,
            step="store",
        )
        log.append(event)
    return log


def run(node, work):
    """Return the times of one process."""
    with tempfile.NamedTemporaryFile("w", suffix=".json", encoding="utf-8") as file:
        json.dump(work, file)
        file.flush()
        done = subprocess.run(
            [node, str(SCRIPT), file.name],
            check=True,
            capture_output=True,
            encoding="utf-8",
        )
    return json.loads(done.stdout)


def p95(values):
    """Return the value that 95 % of them do not pass."""
    return sorted(values)[int(0.95 * (len(values) - 1))]


def rows_of(times):
    """Return (what, figure, unit) over the runs of one size."""

    def over(name, pick=lambda value: value):
        return statistics.median(pick(one[name]) for one in times)

    return [
        ("start the interpreter", over("boot"), "ms"),
        ("import the core", over("import"), "ms"),
        ("fold one event, median", over("folds", statistics.median), "ms"),
        ("fold one event, 95 %", over("folds", p95), "ms"),
        ("fold them all, one by one", over("folds", sum), "ms"),
        ("first view", over("first_view"), "ms"),
        ("view after a tap", over("views", statistics.median), "ms"),
        ("board after a tap", over("boards", statistics.median), "ms"),
        ("size of the view", over("view_bytes") / 1024, "KiB"),
    ]


def main():
    """Print the table."""
    node = find_node()
    if not node:
        sys.exit("Node.js is needed: run `sh tests/run`, which fetches it.")
    phone, log = whole_make()
    files = core_texts(STATIC, CORE_DIR, lambda path: bare(path.read_text("utf-8")))
    table = []
    for size in SIZES:
        events = filled(phone, log, size + TAPS)
        work = {
            "files": files,
            "make": MAKE,
            "now_ms": events[-1]["at_ms"],
            "events": events[:size],
            "taps": events[size:],
        }
        table.append(rows_of([run(node, work) for _ in range(RUNS)]))
    heads = "".join(f"{size:>9,} events" for size in SIZES)
    sys.stdout.write(f"{'':<28}{heads}\n")
    for cells in zip(*table, strict=True):
        figures = "".join(f"{figure:>12.2f} {unit:<3}" for _, figure, unit in cells)
        sys.stdout.write(f"{cells[0][0]:<28}{figures}\n")
    sys.stdout.write(f"(whole make of the house recipe: {len(log)} events)\n")


if __name__ == "__main__":
    main()
