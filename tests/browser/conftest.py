"""Real phones against a real server: Chromium with a phone's profile, and gunicorn.

A `Phone` keeps its profile folder when its browser is killed, so it can be
opened again as the same phone. Page code is asked with `phone.run`, whose text
sees the app's own modules: the ones that the screens use.
"""

import contextlib
import http.cookiejar
import json
import os
import re
import shutil
import signal
import socket
import subprocess
import sys
import time
import urllib.request
import uuid
from pathlib import Path

import pytest
from playwright.sync_api import Error, Locator, sync_playwright

from tests.browser.nursery import nursery

ROOT = Path(__file__).resolve().parent.parent.parent
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
WAIT_S = 30
LONGEST = ("test_pictures.py", "test_whole_make.py", "test_first_screenful.py")
MODULES = """
const [state, actions, { record }, db, desk, ask, { clock, nowMs }, sync] =
  await Promise.all([
    import("/js/data/state.js"), import("/js/data/actions.js"),
    import("/js/data/record.js"), import("/js/data/db.js"),
    import("/js/data/desk.js"), import("/js/data/ask.js"),
    import("/js/data/clock.js"), import("/js/data/sync.js"),
  ]);
"""

# To fetch and keep each module of the unpacked page is a third of the work of a test,
# and most tests never leave the network: a phone keeps the app when it is asked to.
KEEP_LATER = """
(() => {
  const workers = navigator.serviceWorker;
  if (!workers) return;
  const register = workers.register.bind(workers);
  const asked = new Promise((resolve) => { window.keepNow = resolve; });
  workers.register = async (...given) => {
    if (!(await workers.getRegistration())) await asked;
    return register(...given);
  };
})();
"""


# As if a person had looked at the screen for a while; see parts/touch-guard.js. From
# then on it is noted whether a press was left out: the button shows it for a second at
# most, which a loaded machine may need to ask.
LOOK = """
async () => {
  window.isLeftOut = false;
  if (!window.watchesLeftOut) {
    window.watchesLeftOut = new MutationObserver((changes) => {
      const isNow = ({ target }) => target.classList.contains("is-waiting");
      if (changes.some(isNow)) window.isLeftOut = true;
    });
    const classes = { subtree: true, attributeFilter: ["class"] };
    window.watchesLeftOut.observe(document.documentElement, classes);
  }
  if (!document.querySelector('script[src="/lib/page.js"]')) {
    (await import("/js/parts/touch-guard.js")).settle(document.documentElement);
  }
  // The packed page shares no modules: there a second has to pass.
  while (document.querySelector("[data-new]")) await new Promise(requestAnimationFrame);
}
"""


def looked(page):
    """Let a second pass for what has just come on the screen, without waiting it."""
    page.evaluate(LOOK)


def is_left_out(page):
    """Tell whether the page left a press out since it was looked at."""
    with contextlib.suppress(Error):  # the press may have loaded another page
        return page.evaluate("window.isLeftOut")


def press_when_seen(page, press):
    """Press what was looked at; again where it moved or turned in between."""
    for _ in range(5):
        looked(page)
        press()
        if not is_left_out(page):
            return


@pytest.fixture(scope="session", autouse=True)
def _taps_of_a_person_who_looks():
    """Let `tap` press what the person has seen; touches by hand come unlooked."""
    tap = Locator.tap

    def tap_when_seen(locator, **given):
        locator.wait_for()
        press_when_seen(locator.page, lambda: tap(locator, **given))

    Locator.tap = tap_when_seen
    yield
    Locator.tap = tap


def pytest_collection_modifyitems(items):
    """Leave all that is not marked `everyday` to the long profile: each takes seconds.

    Everyday are the ways by which an entry could be lost, doubled or pressed unseen,
    and one look at each kind of screen.
    """
    here = Path(__file__).parent
    # What takes minutes begins first, so that nothing waits for it alone at the end.
    items.sort(key=lambda item: item.path.name not in LONGEST)
    for item in items:
        if here in item.path.parents:
            item.add_marker(pytest.mark.browser)
            if not item.get_closest_marker("everyday"):
                item.add_marker(pytest.mark.long)


def until(question, what, wait_s=WAIT_S):
    """Ask again until the answer is true; return it, or fail with what was wanted."""
    end = time.monotonic() + wait_s
    while True:
        answer = question()
        if answer:
            return answer
        if time.monotonic() > end:
            pytest.fail(f"not within {wait_s} s: {what}; last answer {answer!r}")
        time.sleep(0.05)


def chromium():
    """Return where the browser lies; None for the one that Playwright keeps."""
    return os.environ.get("CHROMIUM") or shutil.which("chromium")


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


class Creamery:
    """One server with its own data, and the owner's way in."""

    options = ()  # further words of its command line
    owner = "Orla"

    def __init__(self, folder, program, nursery=None):
        self.folder = folder
        self.program = program
        self.nursery = nursery  # of the same program, or None
        self.port = free_port()
        self.url = f"http://127.0.0.1:{self.port}"
        self.process = None
        self.starts = 0
        jar = http.cookiejar.CookieJar()
        self.opener = urllib.request.build_opener(
            urllib.request.HTTPCookieProcessor(jar)
        )

    def start(self):
        """Start the server; the same data, the same port, each time."""
        self.starts += 1
        self.words = self.folder / f"server-{self.starts}.txt"
        where = ("--data", str(self.data), "--port", str(self.port))
        self.process = self._serve("serve", *where, *self.options)
        until(self.is_up, f"the server to answer: {self.words.read_text()}")

    def _serve(self, *arguments):
        if self.nursery:
            return self.nursery.serve(self.words, *arguments)
        with self.words.open("wb") as words:
            return subprocess.Popen(
                [sys.executable, "-m", "server.cli", *arguments],
                cwd=self.program,
                stdout=words,
                stderr=subprocess.STDOUT,
                # A group of its own, so that a kill takes the workers too.
                start_new_session=True,
            )

    @property
    def data(self):
        return self.folder / "data"

    def is_up(self):
        if self.process.poll() is not None:
            pytest.fail(f"the server ended: {self.words.read_text()}")
        try:
            with urllib.request.urlopen(self.url + "/api/v1/health", timeout=5):
                return True
        except OSError:
            return False

    def kill(self):
        """End the server and its workers as a power cut would."""
        if self.process:
            with contextlib.suppress(ProcessLookupError):
                os.killpg(self.process.pid, signal.SIGKILL)
            self.process.wait(timeout=WAIT_S)
            self.process = None

    def ask(self, method, path, body=None):
        """Ask the server as its owner."""
        request = urllib.request.Request(
            f"{self.url}/api/v1{path}",
            method=method,
            data=None if body is None else json.dumps(body).encode(),
            headers={"Content-Type": "application/json", "X-Vatside": "1"},
        )
        with self.opener.open(request, timeout=WAIT_S) as answer:
            return json.loads(answer.read() or "null")

    def own(self):
        """Pair the owner's desk, with the code printed at the first start."""
        code = re.search(r"code (\S+)", self.words.read_text())[1]
        names = {"device": str(uuid.uuid4()), "device_name": "Office desk"}
        self.ask("POST", "/pair", {**names, "code": code, "person_name": self.owner})

    def invite(self, name, role):
        """Return a code that pairs one phone for a person, new or known."""
        new = {"name": name, "role": role}
        known = [one for one in self.ask("GET", "/people") if one["name"] == name]
        person = known[0] if known else self.ask("POST", "/people", new)
        return self.ask("POST", f"/people/{person['id']}/pairing", {})["code"]

    def events(self):
        """Return the whole log as the server tells it."""
        rows, after = [], 0
        while True:
            path = f"/sync/pull?epoch={self.epoch()}&after={after}&limit=500"
            page = self.ask("GET", path)
            rows += page["events"]
            after = page["next"]
            if not page["more"]:
                return [row["event"] for row in rows]

    def epoch(self):
        return self.ask("GET", "/me")["server"]["epoch"]


class Phone:
    """One phone: a browser profile that outlives its browser."""

    def __init__(self, play, folder, url):
        self.play = play
        self.folder = folder
        self.url = url
        self.problems = []
        self.context = None
        self.scripts = []
        self.flags = []
        self.settings = {}  # of the browser, in place of a Pixel 7's

    def open(self, offline=False):
        device = {**self.play.devices["Pixel 7"], **self.settings}
        device.pop("default_browser_type", None)
        self.context = self.play.chromium.launch_persistent_context(
            str(self.folder),
            executable_path=chromium(),
            headless=True,
            args=[*FLAGS, *self.flags],
            **device,
        )
        self.context.set_default_timeout(WAIT_S * 1000)
        for script in self.scripts:
            self.context.add_init_script(script)
        self.context.set_offline(offline)
        self.page = self.context.pages[0]
        self.watch(self.page)
        self.page.goto(self.url)
        self.painted()

    def reload(self):
        self.page.reload()
        self.painted()

    def begin_anew(self):
        """Load the page as after a restart: what is left is what the phone keeps."""
        self.page.goto("about:blank")
        self.page.set_viewport_size(self.play.devices["Pixel 7"]["viewport"])
        self.page.emulate_media(color_scheme="light")
        self.page.goto(self.url)
        self.painted()
        self.until("state.unsent.value !== null", "what the phone holds")

    def painted(self):
        self.page.locator("#app > .app").wait_for(state="attached")

    def watch(self, page):
        page.on("pageerror", lambda error: self.problems.append(str(error)))
        page.on("console", self._hear)

    def _hear(self, message):
        # A browser reports what the policy blocked on its console only.
        if "Content Security Policy" in message.text or "Trusted" in message.text:
            self.problems.append(message.text)

    def run(self, body, *args, page=None):
        """Run page code that sees the app's modules; `args` is its list."""
        text = f"async (args) => {{ {MODULES} {body} }}"
        return (page or self.page).evaluate(text, list(args))

    def record(self, kind, **given):
        return self.run("return record(args[0], args[1])", kind, given)

    def pair(self, code):
        self.run("return actions.pair(args[0], {device_name: args[1]})", code, "Phone")
        self.until("state.recipes.value.length > 0", "the recipes")

    def until(self, claim, what, wait_s=WAIT_S):
        until(lambda: self.run(f"return {claim}"), what, wait_s)

    def sent(self):
        """Wait until the server has acknowledged everything."""
        self.run('sync.kick("asked")')
        self.until(
            "(await db.pending()).count === 0 && !state.syncing.value",
            "all entries to be sent",
        )

    def keep(self):
        """Let the service worker begin, which tests hold back; see KEEP_LATER."""
        self.page.evaluate("window.keepNow?.()")

    def kept_offline(self):
        self.keep()
        self.until('state.offlineReady.value === "ready"', "the app to be kept")
        self.reload()
        until(
            lambda: self.page.evaluate("navigator.serviceWorker.controller !== null"),
            "the service worker to answer",
        )
        # Until then the page knows neither its person nor what waits.
        self.until("state.unsent.value !== null", "what the phone holds")

    def open_make(self, gates=False, **data):
        """Open a make with the first recipe on the phone; return its id.

        Most tests begin its steps in any order, so its gates are left out unless
        they are asked for.
        """
        body = """
          const { gates, ...free } = state.recipes.value[0];
          const recipe = args[1] ? state.recipes.value[0] : free;
          const made = await record("make_opened", {data: {
            name: "Vat one", batch: "B1", milk_l: recipe.milk.low_l, recipe,
            treatment: "pasteurised", ...args[0],
          }});
          await actions.openMake(made.make);
          return made.make;
        """
        self.until("state.recipes.value.length > 0", "the recipes")
        return self.run(body, data, gates)

    def kill(self):
        """End the browser as an empty battery would."""
        mark = f"--user-data-dir={self.folder}".encode()
        for entry in Path("/proc").iterdir():
            try:
                words = (entry / "cmdline").read_bytes().split(b"\0")
            except OSError:
                continue  # not a process, or gone meanwhile
            if mark in words and not any(word.startswith(b"--type=") for word in words):
                os.kill(int(entry.name), signal.SIGKILL)
        self.close()

    def close(self):
        with contextlib.suppress(Error):  # it may have been killed
            self.context.close()


@pytest.fixture(scope="session")
def play():
    with sync_playwright() as playing:
        yield playing


@pytest.fixture(scope="session")
def program(tmp_path_factory):
    """A copy of the program that nobody edits while the tests run."""
    copy = tmp_path_factory.mktemp("program")
    # Without the pack: tests ask the modules that the screens use, one by one.
    # test_whole_make.py runs the packed page.
    copy_unpacked(copy, "server", "static")
    return copy


@pytest.fixture(scope="session")
def ready(program):
    """Where the servers of `program` are forked from."""
    with nursery(program) as kept:
        yield kept


def copy_unpacked(copy, *names):
    """Copy folders of the program, but for what was made of them here."""
    for name in names:
        shutil.copytree(ROOT / name, copy / name, ignore=_made_here)


def _made_here(folder, names):
    made = {"__pycache__", "node_modules"}
    return made | {"page.js"} if folder == str(ROOT / "static" / "lib") else made


@pytest.fixture(scope="session")
def packed_program(tmp_path_factory):
    """A copy of the program with the page packed, as it is installed."""
    copy = tmp_path_factory.mktemp("packed")
    copy_unpacked(copy, "server", "static", "deploy")
    pack(copy)
    return copy


@pytest.fixture(scope="session")
def packed_ready(packed_program):
    """Where the servers of `packed_program` are forked from."""
    with nursery(packed_program) as kept:
        yield kept


def pack(copy):
    packing = "from deploy.pack_page import pack; pack()"
    subprocess.run([sys.executable, "-c", packing], cwd=copy, check=True)


@contextlib.contextmanager
def owned(server):
    """Let a server run, with its owner paired."""
    try:
        server.start()
        server.own()
        yield server
    finally:
        server.kill()


@pytest.fixture
def creamery(tmp_path, program, ready):
    """A server that runs, with its owner paired."""
    with owned(Creamery(tmp_path, program, ready)) as server:
        yield server


@pytest.fixture(scope="module")
def phone_of_the_day(play, tmp_path_factory, program, ready):
    """A maker's phone that keeps the app, for all tests of a file that ask for it.

    What a test looks at is a make of its own. One that stops the server, fills the
    phone or counts entries asks for `creamery` and `new_phone`.
    """
    folder = tmp_path_factory.mktemp("day")
    with owned(Creamery(folder, program, ready)) as server:
        phone = Phone(play, folder / "phone", server.url)
        phone.open()
        phone.pair(server.invite("Mara", "maker"))
        phone.kept_offline()
        yield phone
        phone.close()


@pytest.fixture
def new_phone(play, creamery, tmp_path):
    """Return a maker of phones; all are closed at the end, without page errors."""
    made = []

    def make(
        name="Mara",
        role="maker",
        paired=True,
        scripts=(),
        flags=(),
        url=None,
        keeps=False,  # the app at once, as outside of tests
    ):
        folder = tmp_path / f"phone-{len(made)}"
        phone = Phone(play, folder, url or creamery.url)
        first = [] if keeps else [KEEP_LATER]
        phone.scripts, phone.flags = [*first, *scripts], list(flags)
        made.append(phone)
        phone.open()
        if paired:
            phone.pair(creamery.invite(name, role))
        return phone

    yield make
    for phone in made:
        phone.close()
    assert [phone.problems for phone in made] == [[] for _ in made]
