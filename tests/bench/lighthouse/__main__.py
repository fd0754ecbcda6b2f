"""What Lighthouse thinks of the screens, on a paired phone and on a new one.

Not a test: its performance score depends on the machine. Lighthouse comes from
npm by the lock beside this file, into a folder that is thrown away; it drives the
same browser as the tests, which has paired a phone before.

Use: python -m tests.bench.lighthouse [--runs 3]
"""

import argparse
import json
import os
import shutil
import statistics
import subprocess
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from deploy.fetch_modules import ensure_node
from deploy.pack_page import pack
from tests.bench.phone import join, long_make, push
from tests.browser.conftest import ROOT, Creamery, Phone, free_port

HERE = Path(__file__).parent
CATEGORIES = ("performance", "accessibility", "best-practices")
ASKED = 95
EVENTS = 200


def fetch(folder, node):
    """Return Lighthouse's program, fetched by the lock into a folder."""
    for name in ("package.json", "package-lock.json", ".npmrc"):
        shutil.copy(HERE / name, folder)
    npm = Path(node).parent / "npm"
    subprocess.run([npm, "ci", "--silent"], cwd=folder, check=True)
    return folder / "node_modules/lighthouse/cli/index.js"


def scores(node, program, url, port):
    """Return {category: score of 100} and the audits that cost points."""
    command = [
        *(node, program, url, "--quiet", "--output=json", f"--port={port}"),
        *("--disable-storage-reset", "--no-enable-error-reporting"),
        "--only-categories=" + ",".join(CATEGORIES),
    ]
    told = subprocess.run(command, check=True, capture_output=True, env=os.environ)
    report = json.loads(told.stdout)
    found = {key: 100 * report["categories"][key]["score"] for key in CATEGORIES}
    short = {
        row["id"]
        for key in CATEGORIES
        for row in report["categories"][key]["auditRefs"]
        if row["weight"] and (report["audits"][row["id"]]["score"] or 0) < 0.9
        if report["audits"][row["id"]]["scoreDisplayMode"] in ("binary", "numeric")
    }
    return found, short


def main():
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--runs", type=int, default=3)
    args = words.parse_args()
    pack()  # what phones load
    folder = Path(tempfile.mkdtemp(prefix="vatside-bench-"))
    creamery = Creamery(folder, ROOT)
    try:
        node = ensure_node(npm_too=True)
        (folder / "npm").mkdir()
        program = fetch(folder / "npm", node)
        with sync_playwright() as play:
            creamery.start()
            creamery.own()
            measure(play, creamery, folder, node, program, args.runs)
    finally:
        creamery.kill()
        shutil.rmtree(folder, ignore_errors=True)


def measure(play, creamery, folder, node, program, runs):
    recipe = creamery.ask("GET", "/recipes/washed-wheel")
    me = creamery.ask("GET", "/me")
    make, events = long_make(recipe, me["person"]["id"], me["device"], EVENTS)
    push(creamery, events)
    port = free_port()
    phone = Phone(play, folder / "phone", creamery.url)
    phone.flags = [f"--remote-debugging-port={port}"]
    phone.open()
    screens = [("join (a new phone)", "/#/pair")]
    print(f"\nLighthouse, phone profile, median of {runs}; asked: {ASKED} each")
    print(f"{'screen':<22} {'performance':>12} {'accessibility':>14} {'practices':>10}")
    show(node, program, creamery.url, port, screens, runs)
    join(phone, creamery.invite("Mara", "maker"))
    screens = [("now", "/#/now"), ("make", f"/#/make/{make}"), ("sums", "/#/sums")]
    show(node, program, creamery.url, port, screens, runs)
    phone.close()


def show(node, program, url, port, screens, runs):
    for name, path in screens:
        rounds = [scores(node, program, url + path, port) for _ in range(runs)]
        middle = [
            statistics.median(found[key] for found, _ in rounds) for key in CATEGORIES
        ]
        short = sorted(set().union(*(short for _, short in rounds)))
        print(f"{name:<22} {middle[0]:>12.0f} {middle[1]:>14.0f} {middle[2]:>10.0f}")
        if short:
            print(f"{'':<22} below 90: {', '.join(short)}")


if __name__ == "__main__":
    main()
