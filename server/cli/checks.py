"""Look whether a server could be started with this data."""

import json
import ssl
import subprocess
import sys
import time
import urllib.request
from pathlib import Path

from server.api.shell import Shell
from server.app import create_app
from server.config import (
    CORE_DIR,
    DEFAULT_HTTPS_PORT,
    RECIPES_DIR,
    Settings,
    real_now_ms,
)
from server.core.desk.recipes import check_recipe
from server.core.recipe.hazards import HAZARDS
from server.shapes import Problem
from server.store import copies, disk
from server.tls import Served, served
from server.tls.standing import findings

START_S = 15.0
LOOK_S = 0.1


def in_words(problem: Problem) -> str:
    """Return one problem of a check as a line of text.

    Args:
        problem: {"field", "key", "limit"}, with the "value" where it is told.

    >>> in_words({"field": "steps.heat.lasts.unit", "key": "missing", "limit": None})
    'steps.heat.lasts.unit: missing'
    """
    words = f"{problem['field']}: {problem['key'].replace('_', ' ')}"
    value = dict(problem).get("value")
    if value is not None:
        words += f" (value {json.dumps(value)})"
    if problem["limit"] is None:
        return words
    if problem["key"] == "unknown_caution":
        # The word itself, and what might have been meant.
        known = ", ".join(sorted(HAZARDS))
        return f"{words} {json.dumps(problem['limit'])}; known are {known}"
    return f"{words} (limit {json.dumps(problem['limit'])})"


def problems(
    settings: Settings,
    port: int | None = None,
    https_port: int = DEFAULT_HTTPS_PORT,
) -> list[str]:
    """Return all that would keep a server from working, in words.

    Args:
        settings: what the server would run with.
        port: also start it there and ask it; None to leave that out.
        https_port: where its https is to be then, where it has a certificate.
    """
    found = [
        *_database_problems(settings),
        *_disk_problems(settings),
        *_recipe_problems(RECIPES_DIR),
        *page_problems(Shell(settings.static_dir, CORE_DIR)),
        *(f"https: {one.text}" for one in findings(settings, real_now_ms())),
    ]
    if port is not None and not found:
        found.extend(_answer_problems(settings, port, https_port))
    return found


def _database_problems(settings: Settings) -> list[str]:
    file = settings.database_file
    try:
        create_app(settings)
        if file is not None:
            copies.check_file(file)
    except Exception as problem:
        # Whatever keeps the app from being made is what the check is for.
        return [f"database: {problem}"]
    return []


def _disk_problems(settings: Settings) -> list[str]:
    file = settings.database_file
    if file is None:  # on another machine perhaps; its own tools look after it
        return []
    found = disk.of_folder(file.resolve().parent)
    return [] if found.state == disk.FINE else [f"disk: {found.text}"]


def _recipe_problems(folder: Path) -> list[str]:
    found = []
    for file in sorted(folder.glob("*.json")):
        try:
            recipe = json.loads(file.read_text("utf-8"))
        except ValueError as problem:
            found.append(f"{file.name}: {problem}")
            continue
        found.extend(f"{file.name}: {in_words(row)}" for row in check_recipe(recipe))
    return found


def page_problems(shell: Shell) -> list[str]:
    """Return what the page lacks, in words.

    Args:
        shell: the page's files.
    """
    wanted = ("index.html", "sw.js", "manifest.webmanifest", "lib/micropython.wasm")
    found = [f"page: {name} is missing" for name in wanted if not shell.file(name)]
    if not found:
        shell.worker()
    return found


def _answer_problems(settings: Settings, port: int, https_port: int) -> list[str]:
    kept = served(settings)
    command = [sys.executable, "-m", "server.cli", "serve", "--host", "127.0.0.1"]
    command += ["--data", str(settings.data_dir), "--port", str(port)]
    command += ["--https-port", str(https_port)]
    command += [] if settings.https else ["--no-tls"]
    if kept is not None and kept.room is None:
        command += ["--tls-cert", str(kept.certificate), "--tls-key", str(kept.key)]
    pages = [f"http://127.0.0.1:{port}/"]
    scheme, asked = ("http", port) if kept is None else ("https", https_port)
    pages.append(f"{scheme}://127.0.0.1:{asked}/api/v1/health")
    with subprocess.Popen(command, stdout=subprocess.DEVNULL) as process:
        try:
            return _ask(pages, _trust(kept), process)
        finally:
            process.terminate()


def _trust(kept: Served | None) -> ssl.SSLContext | None:
    if kept is None:
        return None
    if kept.room is not None:
        return ssl.create_default_context(cafile=kept.room.root)
    # Whether its chain and names are good was looked at; here it is asked by an
    # address that it need not be for.
    unchecked = ssl.create_default_context()
    unchecked.check_hostname = False
    unchecked.verify_mode = ssl.CERT_NONE
    return unchecked


def _ask(
    pages: list[str],
    trust: ssl.SSLContext | None,
    process: "subprocess.Popen[bytes]",
) -> list[str]:
    *plain, health = pages
    end_s = time.monotonic() + START_S
    while time.monotonic() < end_s:
        if process.poll() is not None:
            return [f"server: it ended by itself, with exit code {process.returncode}"]
        try:
            for page in plain:
                urllib.request.urlopen(page, timeout=START_S).close()
            with urllib.request.urlopen(
                health, timeout=START_S, context=trust
            ) as answer:
                is_ok = json.load(answer)["ok"]
                return [] if is_ok else [f"server: {health} is not ok"]
        except OSError:
            time.sleep(LOOK_S)
    return [f"server: no answer from {health} within {START_S:g} s"]
