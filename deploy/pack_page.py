"""Pack the page's own modules and styles into a few files, with esbuild.

The modules stay what developers read and what the server sends from a checkout
that has changed since; the pack is what phones load. Nothing is renamed beyond
what minifying does, and nothing third-party is committed.
"""

import importlib.util
import json
import re
import shutil
import subprocess
import tempfile
from collections.abc import Iterable
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
STATIC = ROOT / "static"
PACKER = STATIC / "lib" / ".esbuild"
# Old phones in a cellar; the newest syntax that all of them read.
TARGET = "es2022"
IMPORT_MAP = re.compile(r'"([^"]+)": "/(lib/[^"]+)"')


class PackError(RuntimeError):
    """Say that the page could not be packed."""


def page_stamp() -> Any:
    """Return the module that ties a pack to its sources, loaded by its place."""
    return _module("page_stamp")


def _module(name: str) -> Any:
    place = ROOT / "server" / "api" / f"{name}.py"
    spec = importlib.util.spec_from_file_location(name, place)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def _apart() -> list[str]:
    """Return the modules that the page asks for by address when it needs them."""
    return ["--external:/lib/uplot.js"]


def _aliases() -> list[str]:
    """Return the import map of index.html in the packer's words."""
    text = (STATIC / "index.html").read_text("utf-8")
    return [
        f"--alias:{name}={STATIC / path}" for name, path in IMPORT_MAP.findall(text)
    ]


def pack() -> None:
    """Bring the pack up to date with its sources; do nothing when it is.

    Raises:
        PackError: a module does not parse; esbuild's own words were printed.
    """
    squeeze_core()
    stamp = page_stamp()
    if stamp.is_packed(STATIC):
        return
    found = stamp.sources_stamp(STATIC)
    (STATIC / stamp.STAMP).unlink(missing_ok=True)
    _pack_one("js/first.js", "lib/first.js", "--format=esm")
    _pack_one("css/app.css", "lib/page.css", "--external:/icons/*")
    _pack_one("css/later.css", stamp.LATER_STYLE)
    for name in stamp.LANGUAGES:
        _pack_one(f"js/messages/{name[-5:-3]}/index.js", name, "--format=esm")
    first, later = _pack_screens()
    _squeeze(
        path
        for path in sorted((STATIC / "lib").iterdir())
        if path.suffix in (".js", ".mjs", ".css", ".wasm")
    )
    (STATIC / stamp.STAMP).write_text(stamp.stamp_of(found, first, later), "utf-8")


def _pack_one(source: str, target: str, *more: str) -> None:
    _run_packer(source, f"--outfile={STATIC / target}", *more)


def _pack_screens() -> tuple[list[str], list[str]]:
    """Pack the page, and what it asks for later into parts of its own.

    Returns:
        Names of the parts that the page loads at once, and of those that come later.
    """
    for old in (STATIC / "lib").glob("page-*.js*"):
        old.unlink()
    with tempfile.TemporaryDirectory(prefix="vatside-pack-") as scratch:
        told = Path(scratch) / "told.json"
        _run_packer(
            "js/app.js",
            f"--outdir={STATIC / 'lib'}",
            "--format=esm",
            "--splitting",
            "--entry-names=page",
            "--chunk-names=page-[name]-[hash]",
            f"--metafile={told}",
            *_apart(),
            *_aliases(),
        )
        return _parts(json.loads(told.read_text("utf-8"))["outputs"])


def _parts(outputs: dict[str, Any]) -> tuple[list[str], list[str]]:
    by_name = {f"lib/{Path(path).name}": outputs[path] for path in outputs}
    first: list[str] = []
    asked = ["lib/page.js"]
    while asked:
        for row in by_name[asked.pop()]["imports"]:
            name = f"lib/{Path(row['path']).name}"
            is_new = name in by_name and name not in first
            if row["kind"] == "import-statement" and is_new:
                first.append(name)
                asked.append(name)
    later = sorted(set(by_name) - {*first, "lib/page.js"})
    return sorted(first), later


def _run_packer(source: str, *more: str) -> None:
    packed = subprocess.run(
        [
            str(PACKER),
            str(STATIC / source),
            "--bundle",
            "--minify",
            f"--target={TARGET}",
            "--legal-comments=none",  # licences are in THIRD_PARTY_NOTICES.txt
            "--log-level=warning",
            "--tsconfig-raw={}",  # none that lies above the program's folder
            *more,
        ],
        check=False,
        cwd=STATIC,
    )
    if packed.returncode:
        raise PackError(f"{source} could not be packed; the reason stands above.")


def squeeze_core() -> None:
    """Bring the smallest copies of the core's parts up to date with its files.

    Raises:
        PackError: there is no Node.js to compress with, or it failed.
    """
    document, bare = _module("core_document"), _module("bare_python").bare
    texts = document.core_texts(
        STATIC, ROOT / "server" / "core", lambda path: bare(path.read_text("utf-8"))
    )
    bodies = document.bodies_of(texts, document.rules_of(ROOT / "server" / "rules"))
    for name, body in bodies.items():
        if document.squeezed(STATIC, name, body) is None:
            _squeeze_document(document, name, body)


def _squeeze_document(document: Any, name: str, body: bytes) -> None:
    (STATIC / document.stamp_of(name)).unlink(missing_ok=True)
    with tempfile.TemporaryDirectory(prefix="vatside-core-") as scratch:
        plain = Path(scratch) / name
        plain.write_bytes(body)
        _squeeze([plain])
        shutil.copy(f"{plain}.br", STATIC / document.copy_of(name))
    (STATIC / document.stamp_of(name)).write_text(document.mark_of(body), "utf-8")


# Node.js has the compressor within; Python would need one more package.
SQUEEZE = """
const { brotliCompressSync, constants } = require("node:zlib");
const { readFileSync, writeFileSync } = require("node:fs");
const params = { [constants.BROTLI_PARAM_QUALITY]: 11 };
for (const file of process.argv.slice(1)) {
  writeFileSync(file + ".br", brotliCompressSync(readFileSync(file), { params }));
}
"""


def _squeeze(paths: Iterable[Path]) -> None:
    """Write the smallest copy of each file beside it, for phones that take it.

    Args:
        paths: the files.

    Raises:
        PackError: there is no Node.js, or it failed; its own words were printed.
    """
    from deploy.fetch_modules import find_node

    node = find_node()
    files = [str(path) for path in paths]
    if (
        not node
        or subprocess.run([node, "-e", SQUEEZE, *files], check=False).returncode
    ):
        raise PackError("The page could not be compressed; Node.js is needed for it.")
