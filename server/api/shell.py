"""What the page is made of, and what a phone keeps to start without a network.

The service worker must list exactly what lies on disk: one file too many and
its installation fails, one too few and the page breaks when the network is
gone. So the list is read from disk and never written by hand.
"""

import hashlib
import json
import re
import threading
from dataclasses import replace
from pathlib import Path
from stat import S_ISREG

from server.api import core_document
from server.api.bare_python import bare
from server.api.core_document import bodies_of, core_texts, squeezed, version_of
from server.api.page_file import MIME, Page, make_page
from server.api.page_stamp import (
    LANGUAGES,
    LATER_STYLE,
    PACK,
    SOURCES,
    is_packed,
    parts_of,
)
from server.config import read_rules

FOLDERS = ("js", "css", "lib", "icons")
# Sent, but not kept: whoever sets a phone up has the network.
SENT_FOLDERS = (*FOLDERS, "setup")
# Other files at the top of the folder belong to the package manager.
TOP = ("index.html", "sw.js", "manifest.webmanifest", "favicon.ico")
# Licences must be readable; a phone need not keep them.
NOT_KEPT = (".txt",)
WORKER = "js/core/worker.js"
# The interpreter, its worker and the plotting library are asked for by name when
# they are needed, never packed.
APART = (
    "/lib/micropython.mjs",
    "/lib/micropython.wasm",
    "/" + WORKER,
)
# Kept once they have been asked for, which the page does in quiet time, after the
# parts of the pack that come later: the first load need not wait for what one screen
# alone shows. The icons are the browser's, for the home screen and pushes. Where the
# rest of the core is kept, the page says that it works offline.
LATER = (
    "/" + LATER_STYLE,
    "/js/parts/later/hands.js",
    "/js/parts/later/pedal.js",
    "/js/parts/later/pin.js",
    "/js/parts/later/pin-pad.js",
    "/js/parts/later/pin-proof.js",
    "/js/parts/later/pin-tries.js",
    "/js/parts/later/seal.js",
    "/js/parts/later/voice.js",
    "/js/parts/later/wet-lock.js",
    "/lib/lang-en.js",
    "/" + core_document.LATER,
    "/lib/uplot.js",
    "/lib/uplot.css",
    *("/" + name for name in LANGUAGES if name != "lib/lang-en.js"),
    "/icons/vatside-180.png",
    "/icons/vatside-192.png",
    "/icons/vatside-512.png",
)
PLAIN_LINES = re.compile(rb"<!-- plain.*?<!-- end plain -->", re.DOTALL)
PACKED_LINES = (
    '<link rel="stylesheet" href="/lib/page.css" />\n'
    '    <script type="module" async src="/lib/first.js"></script>\n'
    '    <script type="module" src="/lib/page.js"></script>'
)
# Asked for together with the page, not once it has been read.
PART_LINE = '\n    <link rel="modulepreload" href="/{}" />'
IS_PART = re.compile(r"^/lib/page-[^/]*\.js$")
# Half of what workers weigh is comments and blanks; they are no part of the pack.
SPARE = re.compile(rb"^[ \t]*(?:(?://|/\*\*.*\*/$).*)?\n|^[ \t]+", re.MULTILINE)
SHELL_LINE = re.compile(rb"^const SHELL = [^\n]*\n")


def _is_sent(path: str) -> bool:
    name = path.rsplit("/", 1)[-1]
    return not name.startswith(".") and Path(name).suffix in MIME


class Shell:
    """The page's files, read once and again whenever one changes on disk.

    Args:
        static_dir: folder with index.html, sw.js and the folders of FOLDERS.
        core_dir: folder of the core's Python files.
    """

    def __init__(self, static_dir: Path, core_dir: Path) -> None:
        self.static_dir = static_dir
        self.core_dir = core_dir
        self._lock = threading.Lock()
        self._core_lock = threading.Lock()
        self._kept: dict[str, tuple[tuple[int, int], Page]] = {}
        self._made: dict[str, tuple[str, Page]] = {}
        self._bares: dict[Path, tuple[tuple[int, int], str]] = {}
        self._pack_mark: tuple[tuple[int, int], ...] | None = None
        self._is_packed = False
        self._parts: tuple[list[str], list[str]] = ([], [])

    def files(self) -> list[str]:
        """Return the addresses of the files on disk that are sent, sorted."""
        found = [
            "/" + path.relative_to(self.static_dir).as_posix()
            for folder in FOLDERS
            for path in (self.static_dir / folder).rglob("*")
            if path.is_file() and _is_sent(path.name)
        ]
        if (self.static_dir / "manifest.webmanifest").is_file():
            found.append("/manifest.webmanifest")
        return sorted(found)

    def kept_files(self) -> list[str]:
        """Return the addresses that a phone keeps, the page itself first."""
        kept = [name for name in self.files() if not name.endswith(NOT_KEPT)]
        if self.is_packed():
            pack = ["/" + name for name in (*PACK, *self._parts[0])]
            kept = [
                name
                for name in kept
                if name in pack
                or name in APART
                or not name.startswith(("/js/", "/css/", "/lib/"))
            ]
        else:
            kept = [name for name in kept if name[1:] not in PACK]
            kept = [name for name in kept if not IS_PART.match(name)]
        kept = [name for name in kept if name not in LATER]
        return ["/", *kept, "/" + core_document.CORE]

    def later_files(self) -> list[str]:
        """Return the addresses of what a phone keeps in quiet time, in that order."""
        parts = self._parts[1] if self.is_packed() else []
        held = {*self.files(), "/" + core_document.LATER}
        return [*("/" + name for name in parts), *(one for one in LATER if one in held)]

    def is_packed(self) -> bool:
        """Tell whether phones get the packed page: it must match its sources."""
        mark = tuple(
            (path.stat().st_mtime_ns, path.stat().st_size)
            for folder in (*SOURCES, "lib")
            for path in sorted((self.static_dir / folder).rglob("*"))
            if path.is_file()
        )
        if self._pack_mark != mark:
            self._pack_mark, self._is_packed = mark, is_packed(self.static_dir)
            self._parts = parts_of(self.static_dir)
        return self._is_packed

    def index(self) -> Page | None:
        """Return the page itself, which names the pack or the plain modules."""
        page = self.file("index.html")
        if page is None or not self.is_packed():
            return page
        parts = "".join(PART_LINE.format(name) for name in self._parts[0])
        mark = page.etag + parts
        made = self._made.get("index")
        if made is None or made[0] != mark:
            body = PLAIN_LINES.sub((PACKED_LINES + parts).encode(), page.body)
            made = (mark, make_page(body, ".html"))
            self._made["index"] = made
        return made[1]

    def file(self, path: str) -> Page | None:
        """Return one file on disk.

        Args:
            path: address below the static folder, without a leading slash.

        Returns:
            The page, or None when there is no such file or it is not for sending.
        """
        parts = path.split("/")
        if ".." in parts or not _is_sent(path):
            return None
        if parts[0] not in (SENT_FOLDERS if len(parts) > 1 else TOP):
            return None
        full = self.static_dir / path
        try:
            stat = full.stat()
        except (OSError, ValueError):  # not there, or no name for a file at all
            return None
        if not S_ISREG(stat.st_mode):
            return None
        mark = (stat.st_mtime_ns, stat.st_size)
        with self._lock:
            kept = self._kept.get(path)
            if kept is None or kept[0] != mark:
                page = make_page(full.read_bytes(), full.suffix)
                if path in (WORKER, "sw.js"):
                    # Any change of the file is a new version of the app all the same.
                    spared = make_page(SPARE.sub(b"", page.body), full.suffix)
                    page = replace(spared, etag=page.etag)
                squeezed = full.with_name(full.name + ".br")
                if parts[0] == "lib" and squeezed.is_file():
                    # Set-up writes both together; other folders are edited by hand.
                    page = replace(page, brotli=squeezed.read_bytes())
                kept = (mark, page)
                self._kept[path] = kept
        return kept[1]

    def core(self, name: str = core_document.CORE) -> Page:
        """Return the core's files and the rules as JSON, in two parts for the phone.

        The files go without docstrings and comments, see `bare_python`. The rules
        are the legal figures: the core reads no file, so they are handed to it.

        Args:
            name: the part, see `core_document`.
        """
        # One thread at a time: CPython 3.11 fails with SystemError ("recursion
        # depth mismatch") when two threads read Python into syntax trees at once.
        with self._core_lock:
            texts = core_texts(self.static_dir, self.core_dir, self._bare)
            rules = read_rules()
            version = version_of(texts, rules)
            made = self._made.get(name)
            if made is None or made[0] != version:
                for part, body in bodies_of(texts, rules).items():
                    copy = squeezed(self.static_dir, part, body)
                    page = replace(make_page(body, ".json"), brotli=copy)
                    self._made[part] = (version, page)
                made = self._made[name]
        return made[1]

    def _bare(self, path: Path) -> str:
        """Return a module without its docstrings, worked out once a version."""
        stat = path.stat()
        mark = (stat.st_mtime_ns, stat.st_size)
        kept = self._bares.get(path)
        if kept is None or kept[0] != mark:
            kept = self._bares[path] = (mark, bare(path.read_text("utf-8")))
        return kept[1]

    def worker(self) -> Page | None:
        """Return the service worker with its first line filled in from disk.

        Raises:
            ValueError: the file does not begin with the line to fill in.
        """
        file = self.file("sw.js")
        if file is None:
            return None
        names, later = self.kept_files(), self.later_files()
        etags = [f"{name} {self._etag(name)}" for name in (*names, *later)]
        version = _fingerprint("\n".join([*etags, file.etag]))
        line = json.dumps({"version": version, "files": names, "later": later})
        made = self._made.get("worker")
        if made is None or made[0] != version:
            filled = f"const SHELL = {line};\n".encode()
            body, count = SHELL_LINE.subn(lambda _: filled, file.body)
            if count != 1:
                raise ValueError("sw.js must begin with: const SHELL = ...")
            made = (version, make_page(body, ".js"))
            self._made["worker"] = made
        return made[1]

    def _etag(self, name: str) -> str:
        if name[1:] in (core_document.CORE, core_document.LATER):
            return self.core(name[1:]).etag
        page = self.index() if name == "/" else self.file(name[1:])
        return page.etag if page else "none"


def _fingerprint(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()[:16]
