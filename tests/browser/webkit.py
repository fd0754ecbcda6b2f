"""A hand on WebKitGTK, by Selenium: the nearest to Safari that runs here.

It is a check of the engine, not of an iPhone: how a phone stops a page, its sound
and its pushes need the phone itself.
"""

import contextlib
import json
import os
import shutil
import subprocess
from pathlib import Path

from selenium.common import (
    MoveTargetOutOfBoundsException,
    NoSuchElementException,
    StaleElementReferenceException,
    WebDriverException,
)
from selenium.webdriver import WebKitGTK, WebKitGTKOptions
from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.common.actions.action_builder import ActionBuilder
from selenium.webdriver.common.actions.interaction import POINTER_TOUCH
from selenium.webdriver.common.actions.pointer_input import PointerInput
from selenium.webdriver.webkitgtk.service import Service

from tests.browser.hand import GoneError, Hand

DRIVER = "WebKitWebDriver"
BROWSERS = Path("/usr/lib")  # Debian keeps it beside its libraries, not on the path
GONE = (
    MoveTargetOutOfBoundsException,
    NoSuchElementException,
    StaleElementReferenceException,
)
PHONE = (447, 839)  # it makes no window narrower than this
# A session bus that starts no service: one of them, the portal of documents, mounts
# a file system in the cache's folder, which outlives the browser and cannot be deleted.
BUS = """<!DOCTYPE busconfig
 PUBLIC "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig>
  <type>session</type>
  <listen>unix:tmpdir=/tmp</listen>
  <policy context="default">
    <allow send_destination="*"/>
    <allow own="*"/>
  </policy>
</busconfig>
"""


def mini_browser():
    """Return where the browser of WebKitGTK lies, or None."""
    return next(iter(sorted(BROWSERS.glob("*/webkit2gtk-*/MiniBrowser"))), None)


class WebKit(Hand):
    """WebKitGTK on a screen that nobody sees.

    Args:
        folder: where its data lies.
    """

    name = "WebKitGTK"

    @staticmethod
    def is_here():
        wanted = (DRIVER, "Xvfb", "dbus-run-session")
        return mini_browser() is not None and all(map(shutil.which, wanted))

    def __init__(self, folder):
        folder.mkdir()
        self.screen = None
        display = self._show()
        # The driver's own session bus, so that nothing of a desk is asked.
        self.bus = folder / "bus.conf"
        self.bus.write_text(BUS)
        script = folder / "driver"
        script.write_text(f'#!/bin/sh\nexec {self.driver_command()} "$@"\n')
        script.chmod(0o755)
        own = {
            "DISPLAY": display,
            "GDK_BACKEND": "x11",
            "LIBGL_ALWAYS_SOFTWARE": "1",
            "HOME": str(folder),
            "XDG_DATA_HOME": str(folder / "data"),
            "XDG_CACHE_HOME": str(folder / "cache"),
        }
        options = WebKitGTKOptions()
        options.binary_location = str(mini_browser())
        options.add_argument("--automation")
        self.driver = WebKitGTK(
            options=options, service=Service(str(script), env={**os.environ, **own})
        )
        self.driver.set_window_size(*PHONE)
        self.driver.set_script_timeout(30)

    def driver_command(self):
        """Return how a shell starts the driver."""
        return f"dbus-run-session --config-file={self.bus} -- {DRIVER}"

    def _show(self):
        """Start a screen in memory; it tells its own number."""
        answer, told = os.pipe()
        self.screen = subprocess.Popen(
            ["Xvfb", "-displayfd", str(told), "-screen", "0", "1024x1024x24"],
            pass_fds=[told],
            stderr=subprocess.DEVNULL,
        )
        os.close(told)
        with os.fdopen(answer) as number:
            return ":" + number.readline().strip()

    def open(self, url):
        self.driver.get(url)

    def reload(self):
        self.driver.refresh()

    def run(self, function, *args):
        text = (
            "const [args, done] = arguments;"
            f"(async () => ({function})(...JSON.parse(args)))()"
            ".then((value) => done(JSON.stringify(value ?? null)));"
        )
        return json.loads(self.driver.execute_async_script(text, json.dumps(args)))

    def press(self, x, y):
        # Where it lies by then: the clocks on the page may have moved it meanwhile.
        finger = PointerInput(POINTER_TOUCH, "finger")
        actions = ActionBuilder(self.driver, mouse=finger)
        try:
            aim = self.driver.execute_script("return window.aimedAt")
            actions.pointer_action.move_to(aim).pointer_down().pointer_up()
            actions.perform()
        except GONE as problem:
            raise GoneError from problem

    def key(self, letter):
        ActionChains(self.driver).send_keys(letter).perform()

    def close(self):
        with contextlib.suppress(WebDriverException):
            self.driver.quit()
        self.screen.kill()
        self.screen.wait()
