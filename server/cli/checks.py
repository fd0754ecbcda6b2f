"""Look whether a server could be started with this data."""

import json
import subprocess
import sys
import time
import urllib.request
from pathlib import Path
from typing import Any

from server.api.shell import Shell
from server.app import create_app
from server.config import CORE_DIR, RECIPES_DIR, Settings
from server.core.recipe import check_recipe
from server.store import copies, disk

START_S = 15.0
LOOK_S = 0.1


def in_words(problem: dict[str, Any]) -> str:
    """Return one problem of a check as a line of text.

    Args:
        problem: {"field", "key", "limit"}.

    >>> in_words({"field": "steps.heat.lasts.unit", "key": "missing", "limit": None})
    'steps.heat.lasts.unit: missing'
    """
    words = f"{problem['field']}: {problem['key'].replace('_', ' ')}"
    if problem["limit"] is None:
        return words
    return f"{words} (limit {json.dumps(problem['limit'])})"


def problems(settings: Settings, port: int | None = None) -> list[str]:
    """Return all that would keep a server from working, in words.

    Args:
        settings: what the server would run with.
        port: also start it there and ask it; None to leave that out.
    """
    found = [
        *_database_problems(settings),
        *_disk_problems(settings),
        *_recipe_problems(RECIPES_DIR),
        *page_problems(Shell(settings.static_dir, CORE_DIR)),
    ]
    if port is not None and not found:
        found.extend(_answer_problems(settings, port))
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


def _answer_problems(settings: Settings, port: int) -> list[str]:
    command = [sys.executable, "-m", "server.cli", "serve", "--host", "127.0.0.1"]
    command += ["--data", str(settings.data_dir), "--port", str(port)]
    with subprocess.Popen(command, stdout=subprocess.DEVNULL) as process:
        try:
            return _ask(f"http://127.0.0.1:{port}/api/v1/health", process)
        finally:
            process.terminate()


def _ask(url: str, process: "subprocess.Popen[bytes]") -> list[str]:
    end_s = time.monotonic() + START_S
    while time.monotonic() < end_s:
        if process.poll() is not None:
            return [f"server: it ended by itself, with exit code {process.returncode}"]
        try:
            with urllib.request.urlopen(url, timeout=START_S) as answer:
                return [] if json.load(answer)["ok"] else [f"server: {url} is not ok"]
        except OSError:
            time.sleep(LOOK_S)
    return [f"server: no answer from {url} within {START_S:g} s"]
