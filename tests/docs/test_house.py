"""The checkout is laid out as promised, and holds only our own work."""

import json
import re
import subprocess

import pytest

from deploy.fetch_modules import FILES
from tests.conftest import ROOT

TOP = {
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "pyproject.toml",
    "server",
    "static",
    "tests",
    "demo",
    "deploy",
}
LOCKS = ["deploy", "tests"]


def tracked():
    listed = subprocess.run(
        ["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True
    )
    return listed.stdout.splitlines()


def python_locks():
    return [
        lock for folder in LOCKS for lock in sorted((ROOT / folder).glob("req*.txt"))
    ]


def test_nothing_else_stands_at_the_top():
    names = {path.split("/")[0] for path in tracked()}
    assert {name for name in names if not name.startswith(".")} <= TOP


def test_no_fetched_module_is_committed():
    fetched = re.compile(r"(^|/)(lib|node_modules|vendor)/|\.min\.|\.wasm$|\.gz$")
    assert [path for path in tracked() if fetched.search(path)] == []


@pytest.mark.parametrize("lock", python_locks(), ids=lambda lock: lock.name)
def test_a_python_lock_has_a_hash_for_all_and_names_no_host(lock):
    text = lock.read_text(encoding="utf-8")
    pins = re.findall(
        r"^\S+==.*(?:\n +--hash=sha256:[0-9a-f]{64}(?: \\)?)+", text, re.M
    )
    assert len(pins) == len(re.findall(r"^\S", text, re.M)) > 0
    assert "://" not in text


def test_the_tests_run_on_the_versions_that_are_shipped():
    pinned = re.compile(r"^(\S+==\S+)", re.M)
    wanted = pinned.findall((ROOT / "deploy" / "requirements.txt").read_text())
    tested = pinned.findall((ROOT / "tests" / "requirements.txt").read_text())
    assert set(wanted) <= set(tested)


def test_the_npm_lock_has_a_hash_for_all_and_names_no_registry():
    lock = json.loads((ROOT / "static" / "package-lock.json").read_text())
    packages = {name: row for name, row in lock["packages"].items() if name}
    assert packages
    for name, row in packages.items():
        assert row["integrity"].startswith("sha512-"), name
        assert "resolved" not in row, name


def test_npm_packages_are_pinned_exactly():
    package = json.loads((ROOT / "static" / "package.json").read_text())
    for name, version in package["dependencies"].items():
        assert re.fullmatch(r"\d+\.\d+\.\d+", version), name


def import_map():
    page = (ROOT / "static" / "index.html").read_text(encoding="utf-8")
    found = re.search(r'<script type="importmap"[^>]*>(.*?)</script>', page, re.S)
    assert found, "index.html has no import map"
    return json.loads(found[1])["imports"]


def test_the_import_map_names_modules_that_are_fetched():
    for name, place in import_map().items():
        assert place.rsplit("/", 1)[-1] in FILES, name


NAME = r"""["']([^"'./][^"']*)["']"""
BARE_IMPORT = re.compile(
    r"^import\b[^\"';(]*" + NAME + r"|^export\s*[{*][^\"';]*from\s*" + NAME, re.M
)
LATE_IMPORT = re.compile(r"\bimport\(\s*" + NAME)


def bare_imports(code):
    found = [first or second for first, second in BARE_IMPORT.findall(code)]
    return set(found + LATE_IMPORT.findall(code))


def test_every_bare_import_of_the_page_is_in_the_import_map():
    names = set(import_map())
    for file in sorted((ROOT / "static" / "js").rglob("*.js")):
        code = file.read_text(encoding="utf-8")
        assert bare_imports(code) <= names, file.name


def test_bare_imports_are_found_in_each_of_their_forms():
    code = """
import { h,
  render } from "one";
import "two";
export { x } from 'three';
import local from "./local.js";
const late = () => import("four");
export const word = 'five';
"""
    assert bare_imports(code) == {"one", "two", "three", "four"}
