"""Take the README's pictures from the invented creamery.

The creamery is seeded into a folder that is thrown away; the pictures differ
from run to run in the time of day only. Needs the packages and the browser of
the tests.

Use: python demo/screenshots.py [--to DIR]
"""

import argparse
import contextlib
import json
import os
import re
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import time
import urllib.request
from http.cookiejar import CookieJar
from pathlib import Path
from uuid import uuid4

from playwright.sync_api import sync_playwright

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from demo.small_png import small  # noqa: E402

SHOWN = "Evening vat"  # the make in the middle of its day, see seed.py
START_S = 30
# What a picture's page is: width, height [px], whether it is touched.
PHONE = (412, 839, True)
TABLET = (820, 1180, True)
DESK = (1440, 900, False)
LARGEST_BYTES = 150_000  # pictures live in the repository


class Creamery:
    """The seeded creamery, served from a folder of its own.

    Args:
        folder: where its data lies.
    """

    def __init__(self, folder):
        with socket.socket() as probe:
            probe.bind(("127.0.0.1", 0))
            self.port = probe.getsockname()[1]
        self.url = f"http://127.0.0.1:{self.port}"
        python = [sys.executable, "demo/seed.py", "--data", str(folder)]
        subprocess.run(python, cwd=ROOT, check=True)
        command = [sys.executable, "-m", "server.cli", "serve", "--data", str(folder)]
        self.words = folder / "server.txt"
        with self.words.open("wb") as words:
            self.process = subprocess.Popen(
                [*command, "--host", "127.0.0.1", "--port", str(self.port)],
                cwd=ROOT,
                stdout=words,
                stderr=subprocess.STDOUT,
            )
        self.opener = urllib.request.build_opener(
            urllib.request.HTTPCookieProcessor(CookieJar())
        )
        self.wait_until_up()
        self.own()

    def wait_until_up(self):
        """Wait until the server answers.

        Raises:
            RuntimeError: it ended, or gave no answer in time.
        """
        end_s = time.monotonic() + START_S
        while time.monotonic() < end_s and self.process.poll() is None:
            with contextlib.suppress(OSError):
                urllib.request.urlopen(self.url + "/api/v1/health", timeout=2).close()
                return
            time.sleep(0.1)
        raise RuntimeError(f"The server does not answer: {self.words.read_text()}")

    def ask(self, method, path, body=None):
        """Ask the server as its owner; return its answer.

        Args:
            method: of HTTP.
            path: below /api/v1.
            body: what to send, or None.
        """
        request = urllib.request.Request(
            f"{self.url}/api/v1{path}",
            method=method,
            data=None if body is None else json.dumps(body).encode(),
            headers={"Content-Type": "application/json", "X-Vatside": "1"},
        )
        with self.opener.open(request, timeout=START_S) as answer:
            return json.loads(answer.read())

    def own(self):
        """Pair this script as the owner, with the code printed at the start."""
        code = re.search(r"code (\S+)", self.words.read_text())[1]
        names = {"device": str(uuid4()), "device_name": "Office desk"}
        self.ask("POST", "/pair", {**names, "code": code})

    def link_for(self, role):
        """Return a link that pairs a phone of the first person of a role.

        Args:
            role: the role.
        """
        people = self.ask("GET", "/people")
        person = next(row["id"] for row in people if row["role"] == role)
        code = self.ask("POST", f"/people/{person}/pairing", {})["code"]
        return f"{self.url}/#/pair/{code}"

    def stop(self):
        """End the server."""
        self.process.send_signal(signal.SIGTERM)
        self.process.wait(timeout=START_S)


class Camera:
    """A browser that joins as a person and takes pictures.

    Args:
        browser: Playwright's browser.
        creamery: the Creamery.
        size: one of PHONE, TABLET, DESK.
        role: role of the person.
        folder: where the pictures go.
    """

    def __init__(self, browser, creamery, size, role, folder):
        wide, high, is_touched = size
        context = browser.new_context(
            viewport={"width": wide, "height": high},
            has_touch=is_touched,
            color_scheme="light",
            reduced_motion="reduce",
            locale="en-GB",
            timezone_id="Europe/London",
        )
        self.folder = folder
        self.page = context.new_page()
        self.page.goto(creamery.link_for(role))
        self.page.get_by_role("button", name="Join").click()
        self.page.get_by_text(SHOWN).first.wait_for()
        board = creamery.ask("GET", "/makes")
        self.make = next(row["id"] for row in board["makes"] if row["name"] == SHOWN)

    def show(self, *parts, see):
        """Open a place and wait for what should be in sight there.

        Args:
            *parts: of the address.
            see: selector of what to wait for.
        """
        address = "#/" + "/".join(parts)
        self.page.evaluate("(address) => { location.hash = address; }", address)
        self.page.locator(see).first.wait_for()

    def show_make(self):
        """Open the make, its cautions read."""
        self.show("make", self.make, see=".foot .primary")
        read = self.page.get_by_role("button", name="I have read this")
        if read.count():
            read.click()
        self.page.locator(".step-title").wait_for()

    def press(self, keys):
        """Press keys of the pad.

        Args:
            keys: what to press.
        """
        for key in keys:
            shown = re.compile(f"^{re.escape(key)}$")
            self.page.locator(".keys .key").filter(has_text=shown).click()
            self.page.wait_for_timeout(100)

    def take(self, name):
        """Take a picture of what is in sight.

        Args:
            name: of the file, without its ending.

        Raises:
            ValueError: the file is too large for the repository.
        """
        self.page.wait_for_timeout(600)  # the core confirms what was painted
        path = self.folder / f"{name}.png"
        path.write_bytes(small(self.page.screenshot(animations="disabled")))
        size = path.stat().st_size
        if size > LARGEST_BYTES:
            raise ValueError(f"{path} has {size} bytes, more than {LARGEST_BYTES}")
        print(f"{path}: {size} bytes")


def take_phone(camera):
    """Take the pictures of a phone.

    Args:
        camera: a Camera.
    """
    camera.show("now", see=".card")
    camera.take("phone-now")
    camera.show_make()
    camera.take("phone-make")
    make = ("make", camera.make)
    camera.show(*make, "steps", see=".step-row")
    camera.page.locator(".step-row.is-running").first.evaluate(
        "(row) => row.scrollIntoView({block: 'center'})"
    )
    camera.take("phone-steps")
    camera.show(*make, "record", see=".record-time")
    camera.take("phone-record")
    camera.show(*make, "reading", "wash_1", "curd_temp_c", see=".keys")
    camera.press("33.8")
    camera.take("phone-keypad")


def take_all(creamery, folder):
    """Take every picture.

    Args:
        creamery: the Creamery.
        folder: where the pictures go.
    """
    found = os.environ.get("CHROMIUM") or shutil.which("chromium")
    with sync_playwright() as play:
        browser = play.chromium.launch(
            executable_path=found or None, args=["--no-sandbox"]
        )
        take_phone(Camera(browser, creamery, PHONE, "maker", folder))
        tablet = Camera(browser, creamery, TABLET, "helper", folder)
        tablet.show_make()
        tablet.take("tablet-make")
        desk = Camera(browser, creamery, DESK, "owner", folder)
        desk.show("live", see=".live-card")
        desk.page.get_by_text("LIVE", exact=True).wait_for()
        desk.take("desk-live")
        browser.close()


def main():
    """Seed, serve, take the pictures and clean up."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument(
        "--to", type=Path, default=ROOT / "demo" / "screenshots", metavar="DIR"
    )
    folder = parser.parse_args().to
    folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as data:
        creamery = Creamery(Path(data))
        try:
            take_all(creamery, folder)
        finally:
            creamery.stop()


if __name__ == "__main__":
    main()
