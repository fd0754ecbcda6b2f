"""A creamery over https, and browsers that trust its root and nothing else of it.

The host name is mapped to this machine, so that a browser takes the server for one
of the room: only `localhost` and 127.0.0.0/8 are trusted without a certificate. Each
browser is told of the root within its own folder; nothing of this machine changes.
"""

import contextlib
import os
import shlex
import shutil
import ssl
import subprocess
import sys
import urllib.request
from types import MappingProxyType

from tests.browser.conftest import FLAGS, WAIT_S, Creamery, chromium, free_port
from tests.browser.firefox import Firefox
from tests.browser.hand import PlaywrightHand
from tests.browser.webkit import WebKit

NAME = "vatside.home.arpa"
RULES = f"--host-resolver-rules=MAP {NAME} 127.0.0.1"
AUTHORITIES = "/etc/ssl/certs/ca-certificates.crt"
TRUST = ("-t", "C,,", "-n", "Vatside room")


class RoomCreamery(Creamery):
    """A server over https, with the set-up page beside it."""

    def __init__(self, folder, program):
        super().__init__(folder, program)
        self.https_port = free_port()
        self.options = ("--https-port", str(self.https_port))
        self.setup_url = f"http://{NAME}:{self.port}"
        self.room_url = f"https://{NAME}:{self.https_port}"
        self.url = f"https://127.0.0.1:{self.https_port}"
        command = [sys.executable, "-m", "server.cli", "tls", "--only"]
        command += ["--data", str(self.data)]
        subprocess.run(command, cwd=program, check=True, stdout=subprocess.DEVNULL)

    def start(self):
        if not self.starts:
            known = ssl.create_default_context(cafile=self.root)
            secure = urllib.request.HTTPSHandler(context=known)
            cookies = urllib.request.HTTPCookieProcessor()
            self.opener = urllib.request.build_opener(cookies, secure)
        super().start()

    @property
    def root(self):
        return self.data / "tls" / "root.pem"

    def is_up(self):
        assert self.process.poll() is None, self.words.read_text()
        with contextlib.suppress(OSError):
            self.opener.open(self.url + "/api/v1/health", timeout=5).close()
            return True
        return False


def trust(folder, root):
    """Let browsers that keep their trust in a folder (NSS) trust a root."""
    folder.mkdir(parents=True, exist_ok=True)
    where = ("-d", f"sql:{folder}")
    subprocess.run(["certutil", "-N", *where, "--empty-password"], check=True)
    subprocess.run(["certutil", "-A", *where, *TRUST, "-i", str(root)], check=True)


class RoomChromium(PlaywrightHand):
    """Chromium as a phone, with a trust of its own.

    Args:
        folder: where its data lies.
        play: Playwright.
        root: the root that it trusts; None for none.
    """

    name = "Chromium"

    @staticmethod
    def is_here():
        return shutil.which("certutil") is not None

    def __init__(self, folder, play, root):
        home = folder / "home"
        home.mkdir(parents=True)
        if root is not None:
            trust(home / ".pki" / "nssdb", root)
        device = dict(play.devices["Pixel 7"])
        device.pop("default_browser_type", None)
        self.browser = play.chromium.launch_persistent_context(
            str(folder / "profile"),
            executable_path=chromium(),
            headless=True,
            args=[*FLAGS, RULES],
            env={**os.environ, "HOME": str(home)},
            **device,
        )
        self.browser.set_default_timeout(WAIT_S * 1000)
        super().__init__(self.browser.pages[0])

    def open(self, url):
        self.page.goto(url)

    def reload(self):
        self.page.reload()

    def close(self):
        self.browser.close()


class RoomFirefox(Firefox):
    """Firefox whose profile trusts the root, and finds the room's name here."""

    settings = MappingProxyType({"network.dns.localDomains": NAME})

    @staticmethod
    def is_here():
        return Firefox.is_here() and shutil.which("certutil") is not None

    def __init__(self, folder, play, root):
        trust(folder, root)
        super().__init__(folder)


class RoomWebKit(WebKit):
    """WebKitGTK in a bubble with authorities and names of its own.

    It takes both from the system's files; in the bubble others lie in their place.
    """

    @staticmethod
    def is_here():
        return WebKit.is_here() and shutil.which("bwrap") is not None

    def __init__(self, folder, play, root):
        self.own = folder.with_name("bubble")
        self.own.mkdir()
        (self.own / "authorities").write_bytes(root.read_bytes())
        (self.own / "hosts").write_text(f"127.0.0.1 localhost {NAME}\n")
        super().__init__(folder)

    def driver_command(self):
        bubble = ["bwrap", "--dev-bind", "/", "/", "--die-with-parent"]
        bubble += ["--ro-bind", str(self.own / "authorities"), AUTHORITIES]
        bubble += ["--ro-bind", str(self.own / "hosts"), "/etc/hosts"]
        return f"{shlex.join(bubble)} -- {super().driver_command()}"
