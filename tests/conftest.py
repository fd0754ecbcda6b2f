import builtins
import contextlib
import importlib
import importlib.util
import json
import queue
import socket
import subprocess
import sys
import threading
from pathlib import Path

import pytest
from coverage import Coverage
from hypothesis import settings

from deploy.fetch_modules import LIB, find_node
from server.core.log import apart
from tests.store.cluster import database_url, postgres  # noqa: F401

ROOT = Path(__file__).resolve().parent.parent
ANSWER_S = 60
CREAMERY_MS = 1_795_600_000_000

# The same examples on every run, so that a red run can be repeated anywhere.
settings.register_profile("house", derandomize=True, deadline=None)
settings.load_profile("house")


def through_json(value):
    return json.loads(json.dumps(value, allow_nan=False))


def call_on_server(module, name, *args, **kwargs):
    """Call the core here, with what the phone would get and give."""
    function = getattr(importlib.import_module(f"server.core.{module}"), name)
    return through_json(function(*through_json(args), **through_json(kwargs)))


@contextlib.contextmanager
def untraced():
    """Measure no coverage meanwhile: tracing makes the core four times as slow."""
    measuring = Coverage.current()
    if measuring:
        measuring.stop()
    try:
        yield
    finally:
        if measuring:
            measuring.start()


# Hundreds of examples drawn for a property run the lines that its neighbours run
# with one.
@pytest.hookimpl(wrapper=True)
def pytest_runtest_call(item):
    is_property = getattr(getattr(item, "obj", None), "is_hypothesis_test", False)
    with untraced() if is_property else contextlib.nullcontext():
        return (yield)


@pytest.fixture(autouse=True)
def no_make_breaks():
    """Let a fault that the core answers around end the test that meets it."""

    def fail(stream, what, fault):
        raise fault

    apart.LISTENERS.append(fail)
    yield
    if fail in apart.LISTENERS:
        apart.LISTENERS.remove(fail)


@pytest.fixture
def makes_may_break(no_make_breaks):
    """Leave a fault to what the core does about it: that is what is tested."""
    apart.LISTENERS.pop()


def beside_core(name, file):
    """Load a file as if it stood in the core; return what calls it, and its end."""
    full = f"server.core.{name}"
    spec = importlib.util.spec_from_file_location(full, file)
    module = importlib.util.module_from_spec(spec)
    sys.modules[full] = module
    spec.loader.exec_module(module)
    return call_on_server, lambda: sys.modules.pop(full)


class Phone:
    """The phone's interpreter, one process for as long as the tests run."""

    def __init__(self, extra=None):
        node = find_node()
        if not node or not (LIB / "micropython.wasm").is_file():
            pytest.fail(
                "The phone's interpreter needs Node.js and static/lib: "
                "run `sh tests/run`, or `python deploy/fetch_modules.py`.",
                pytrace=False,
            )
        script = str(ROOT / "tests" / "phone" / "phone.mjs")
        self.process = subprocess.Popen(
            [node, script, *([str(extra)] if extra else [])],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            encoding="utf-8",
            bufsize=1,
        )
        self.lines = queue.Queue()
        self.reader = threading.Thread(target=self._read, daemon=True)
        self.reader.start()
        assert self._next() == {"ready": True}

    def _read(self):
        for line in self.process.stdout:
            self.lines.put(line)
        self.lines.put("")

    def _next(self):
        line = self.lines.get(timeout=ANSWER_S)
        assert line, "the phone's interpreter ended; its words are on stderr"
        return json.loads(line, parse_constant=pytest.fail)

    def __call__(self, module, name, *args, **kwargs):
        request = {"module": module, "name": name, "args": args, "kwargs": kwargs}
        # As a browser writes it: the phone's parser does not join the two
        # halves of an escaped character beyond U+FFFF.
        line = json.dumps(request, allow_nan=False, ensure_ascii=False)
        self.process.stdin.write(line + "\n")
        answer = self._next()
        if "error" in answer:
            # The core's own exceptions are ValueErrors; others keep their kind.
            kind = getattr(builtins, answer["error"]["type"], ValueError)
            raise kind(answer["error"]["text"])
        return answer["ok"]

    def close(self):
        self.process.stdin.close()
        self.process.wait(timeout=ANSWER_S)
        self.reader.join(timeout=ANSWER_S)
        self.process.stdout.close()


@pytest.fixture(scope="session")
def phone():
    process = Phone()
    yield process
    process.close()


@pytest.fixture(scope="session", params=["server", "phone"])
def core(request):
    """Call the core by name: core("formulas.heat.heat", "cooling_time_s", 38.0, …).

    Each test that asks for it runs on both interpreters.
    """
    if request.param == "server":
        return call_on_server
    return request.getfixturevalue("phone")


@pytest.fixture(scope="session")
def demo_creamery():
    """Return the demo's entries at CREAMERY_MS: by phone, by make, of the tank."""
    from demo import seed

    recipe = json.loads(seed.RECIPE.read_text("utf-8"))
    with untraced():
        by_person, makes = seed.all_makes(recipe, CREAMERY_MS)
        return by_person, makes, seed.brine_tank(by_person, makes, CREAMERY_MS)


@pytest.fixture(autouse=True, scope="session")
def network_off():
    """Let tests reach this machine only."""
    connect = socket.socket.connect

    def connect_here(self, address):
        host = address[0] if isinstance(address, tuple) else "localhost"
        if host not in ("localhost", "127.0.0.1", "::1"):
            raise OSError(f"tests may not reach the network: {host}")
        return connect(self, address)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(socket.socket, "connect", connect_here)
        yield
