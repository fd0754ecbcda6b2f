"""Count the taps and screens from the set-up page to a phone that has joined.

The taps on our own pages are made, against the server as it runs over https. The
taps in the phone's own settings are counted from the steps that the page writes
there, a tap for each "Open", "Tap" and "Come back"; here the root is then put into
the browser's store, as those settings would. Letters typed are not counted.

Use: python -m tests.bench.setup_taps
"""

import contextlib
import os
import re
import signal
import socket
import subprocess
import sys
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from server import auth
from server.app import create_app
from server.config import Settings, real_now_ms
from tests.bench.table import Row, print_table
from tests.browser.conftest import FLAGS, chromium
from tests.conftest import ROOT

WANTED = 9
SYSTEM_TAP = re.compile(r"\b(?:Open|Tap|Come back)\b")
WAIT_MS = 30_000


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


@contextlib.contextmanager
def serving(data):
    """Run the server over https; give the set-up page's address and a code."""
    command = [sys.executable, "-m", "server.cli"]
    subprocess.run([*command, "tls", "--data", data], cwd=ROOT, check=True, stdout=-3)
    ports = ["--port", str(free_port()), "--https-port", str(free_port())]
    server = subprocess.Popen(
        [*command, "serve", "--data", data, "--host", "127.0.0.1", *ports],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        text=True,
        start_new_session=True,
    )
    try:
        for line in server.stdout:
            found = re.search(r"(http://\S+)/#/pair/(\S+)", line)
            if found:
                break
        yield found[1], found[2]
    finally:
        os.killpg(server.pid, signal.SIGTERM)
        server.wait()


def invited(data):
    """Return the long code of a helper's QR picture."""
    with create_app(Settings(data_dir=Path(data))).app_context():
        person = auth.add_person("Ilse Brandt", "helper", real_now_ms())
        return auth.start_pairing(person.id, person.id, real_now_ms(), 1).long


def trust(home, root):
    """Put the root where this browser looks, as a phone's settings would."""
    store = home / ".pki" / "nssdb"
    store.mkdir(parents=True)
    for more in (
        ["-N", "--empty-password"],
        ["-A", "-t", "C,,", "-n", "room", "-i", str(root)],
    ):
        subprocess.run(["certutil", "-d", f"sql:{store}", *more], check=True)


class Phone:
    """A browser with a phone's profile, whose taps and screens are counted."""

    def __init__(self, play, home):
        looks = dict(play.devices["Pixel 7"])
        looks.pop("default_browser_type")
        self.context = play.chromium.launch_persistent_context(
            str(home / "profile"),
            executable_path=chromium(),
            args=FLAGS,
            env={**os.environ, "HOME": str(home)},
            **looks,
        )
        self.context.set_default_timeout(WAIT_MS)
        self.page = self.context.pages[0]
        self.taps, self.screens = 0, 0

    def see(self, selector):
        self.page.locator(selector).first.wait_for()
        self.screens += 1

    def tap(self, selector):
        self.page.tap(selector)
        self.taps += 1


def before_trust(play, home, address):
    """Take the certificate; return the phone's counts and the settings' own steps."""
    phone = Phone(play, home)
    phone.page.goto(address)
    phone.see("[data-screen=take]")
    phone.tap(".foot .primary")
    phone.see("[data-screen=install]")
    steps = phone.page.locator(".steps > li > p").all_inner_texts()
    phone.context.close()
    return phone.taps, phone.screens, [len(SYSTEM_TAP.findall(one)) for one in steps]


def after_trust(play, home, address, name):
    """Come back, go on and join; return the phone's counts."""
    phone = Phone(play, home)
    phone.page.goto(address)
    phone.see("[data-screen=open]")
    phone.tap(".foot .primary")
    phone.see("[data-need=worker][data-state=good]")
    if name:
        phone.tap("#field-name")
        phone.page.keyboard.type(name)
    phone.tap(".foot .primary")
    phone.page.wait_for_url("**/#/now")
    phone.see("#app > .app")
    phone.context.close()
    return phone.taps, phone.screens


def whole_way(play, folder, address, name, root):
    home = folder / (name or "helper")
    home.mkdir()
    taps, screens, system = before_trust(play, home, address)
    trust(home, root)
    more_taps, more_screens = after_trust(play, home, address, name)
    ours, settings = taps + more_taps, sum(system)
    # Each step of the settings is a screen; the last one is the way back.
    seen = screens + more_screens + len(system) - 1
    return [
        Row("taps on our pages", ours, "taps", None),
        Row("taps in the phone's settings", settings, "taps", None),
        Row("all taps, with a tap to go on", ours + settings, "taps", WANTED),
        Row("all taps, when it goes on by itself", ours + settings - 1, "taps", WANTED),
        Row("screens", seen, "", None),
    ]


def main():
    with (
        tempfile.TemporaryDirectory() as data,
        tempfile.TemporaryDirectory() as scratch,
        serving(data) as (page, owners),
        sync_playwright() as play,
    ):
        root = Path(data) / "tls" / "root.pem"
        address = f"{page}/#/pair/{owners}"
        found = whole_way(play, Path(scratch), address, "Asta Quern", root)
        print_table("Android, the owner's first phone, who types a name", found)
        address = f"{page}/#/pair/{invited(data)}"
        found = whole_way(play, Path(scratch), address, "", root)
        print_table("Android, a helper's phone", found)


if __name__ == "__main__":
    main()
