"""A served creamery and a browser that takes pictures of its screens."""

import contextlib
import io
import json
import re
import signal
import socket
import subprocess
import sys
import time
import urllib.request
from http.cookiejar import CookieJar
from uuid import uuid4

from PIL import Image

START_S = 30
DAY_MS = 86_400_000
# Resolves once a button takes a press, see static/js/parts/touch-guard.js.
SETTLED = """
async (one) => {
  const frame = () => new Promise(requestAnimationFrame);
  for (await frame(), await frame(); one.closest("[data-new]");) await frame();
}
"""
LATE = """() => performance.getEntriesByType("resource")
  .some((one) => /page-later|screens.later/.test(one.name))"""
WAIT_MS = 180_000  # a new phone reads thousands of entries; on a busy machine slowly
PAINTED_MS = 800  # the core confirms what was painted
# What a picture's page is: width, height [px], whether it is touched.
PHONE = (412, 839, True)
TABLET = (820, 1180, True)
DESK = (1440, 900, False)
LARGEST_BYTES = 150_000  # pictures live in the repository
COLOURS = 256


class Creamery:
    """A seeded creamery, served from a folder of its own.

    Args:
        program: folder of the program, where nobody edits it meanwhile: pages
            would say that there is a new version.
        folder: where its data lies.
        seed: the script that fills it.
    """

    def __init__(self, program, folder, seed):
        with socket.socket() as probe:
            probe.bind(("127.0.0.1", 0))
            self.port = probe.getsockname()[1]
        self.url = f"http://127.0.0.1:{self.port}"
        python = [sys.executable, f"demo/{seed}", "--data", str(folder)]
        subprocess.run(python, cwd=program, check=True)
        command = [sys.executable, "-m", "server.cli", "serve", "--data", str(folder)]
        self.words = folder / "server.txt"
        with self.words.open("wb") as words:
            self.process = subprocess.Popen(
                [*command, "--host", "127.0.0.1", "--port", str(self.port)],
                cwd=program,
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

    def link_for(self, name):
        """Return a link that pairs a phone for a person.

        Args:
            name: of the person.
        """
        people = self.ask("GET", "/people")
        person = next(row["id"] for row in people if row["name"] == name)
        code = self.ask("POST", f"/people/{person}/pairing", {})["code"]
        return f"{self.url}/#/pair/{code}"

    def makes(self):
        """Return the ids of the makes by their names."""
        return {row["name"]: row["id"] for row in self.ask("GET", "/makes")["makes"]}

    def link_for_guest(self, name, make):
        """Return a read-only link to a make.

        Args:
            name: whom it is for.
            make: name of the make.
        """
        until_ms = int(time.time() * 1000) + 7 * DAY_MS
        data = {"name": name, "makes": [self.makes()[make]], "until_ms": until_ms}
        address = self.ask("POST", "/links", data)["url"]
        return f"{self.url}/#{address.split('#')[1]}"

    def stop(self):
        """End the server."""
        self.process.send_signal(signal.SIGTERM)
        self.process.wait(timeout=START_S)


class Camera:
    """A browser that takes pictures.

    Args:
        browser: Playwright's browser.
        size: one of PHONE, TABLET, DESK.
        album: the Album that the pictures go into.
        scheme: "light" or "dark".
    """

    def __init__(self, browser, size, album, scheme="light"):
        wide, high, is_touched = size
        context = browser.new_context(
            viewport={"width": wide, "height": high},
            has_touch=is_touched,
            color_scheme=scheme,
            reduced_motion="reduce",
            locale="en-GB",
            timezone_id="Europe/London",
        )
        context.set_default_timeout(WAIT_MS)
        self.album = album
        self.page = context.new_page()

    def join(self, creamery, name, see):
        """Join the creamery as a person.

        Args:
            creamery: the Creamery.
            name: of the person.
            see: name of a make that is in sight then.
        """
        self.page.goto(creamery.link_for(name))
        self.tap(self.page.get_by_role("button", name="Join"))
        self.page.get_by_text(see).first.wait_for()
        return self

    def tap(self, locator):
        """Press what has stood still for a second: sooner it takes no press.

        Args:
            locator: of what to press; the first of several.
        """
        one = locator.first
        one.wait_for()
        one.evaluate(SETTLED)
        one.click()

    def show(self, *parts, see):
        """Open a place and wait for what should be in sight there.

        Args:
            *parts: of the address.
            see: selector of what to wait for.
        """
        address = "#/" + "/".join(parts)
        self.page.evaluate("(address) => { location.hash = address; }", address)
        self.page.locator(see).first.wait_for()

    def show_make(self, make):
        """Open a make, its cautions read.

        Args:
            make: its id.
        """
        # A step in which nothing is to be done now has no large button.
        self.show("make", make, see=".step-title, .cautions")
        # The cautions come with the later screens, which nothing waits for.
        self.page.wait_for_function(LATE)
        self.page.wait_for_timeout(PAINTED_MS)
        read = self.page.get_by_role("button", name="I have read this")
        if read.count():
            self.tap(read)
        self.page.locator(".step-title").wait_for()

    def bring(self, see):
        """Scroll to what should be in the middle of the picture.

        Args:
            see: selector of it.
        """
        self.page.locator(see).first.evaluate(
            "(one) => one.scrollIntoView({block: 'center'})"
        )

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
        """
        self.page.wait_for_timeout(PAINTED_MS)
        self.album.keep(name, self.page.screenshot(animations="disabled"))


class Album:
    """The folder of the pictures; it knows which were taken.

    Args:
        folder: where they go.
    """

    def __init__(self, folder):
        self.folder = folder
        self.names = []

    def keep(self, name, png):
        """Keep a picture, made small.

        Args:
            name: of the file, without its ending.
            png: bytes of the picture.

        Raises:
            ValueError: the file is too large for the repository.
        """
        path = self.folder / f"{name}.png"
        picture = Image.open(io.BytesIO(png)).convert("RGB")
        few = picture.quantize(COLOURS, dither=Image.Dither.NONE)
        few.save(path, optimize=True)
        size = path.stat().st_size
        if size > LARGEST_BYTES:
            raise ValueError(f"{path} has {size} bytes, more than {LARGEST_BYTES}")
        self.names.append(name)
        print(f"{path.name}: {size} bytes", flush=True)
