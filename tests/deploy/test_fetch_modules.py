import gzip
import json
import shutil

import pytest

from deploy import fetch_modules


@pytest.fixture
def checkout(tmp_path, monkeypatch):
    """A copy of what the script reads and writes, to be spoilt."""
    static = tmp_path / "static"
    shutil.copytree(fetch_modules.LIB, static / "lib")
    for name in fetch_modules.NPM_FILES:
        shutil.copy(fetch_modules.STATIC / name, static)
    monkeypatch.setattr(fetch_modules, "STATIC", static)
    monkeypatch.setattr(fetch_modules, "LIB", static / "lib")
    monkeypatch.setattr(fetch_modules, "STAMP", static / "lib" / ".stamp")
    return static


def test_what_was_fetched_is_current(checkout):
    assert fetch_modules.is_current()


def test_a_changed_lock_asks_for_a_new_fetch(checkout):
    lock = checkout / "package-lock.json"
    lock.write_text(lock.read_text() + "\n")
    assert not fetch_modules.is_current()


def test_a_missing_module_asks_for_a_new_fetch(checkout):
    (checkout / "lib" / "preact.js").unlink()
    assert not fetch_modules.is_current()


def test_the_squeezed_copy_holds_the_same_bytes():
    for name in fetch_modules.FILES:
        squeezed = (fetch_modules.LIB / f"{name}.gz").read_bytes()
        assert gzip.decompress(squeezed) == (fetch_modules.LIB / name).read_bytes()


def test_no_module_points_at_a_source_map_that_is_not_there():
    for name in fetch_modules.FILES:
        assert b"sourceMappingURL" not in (fetch_modules.LIB / name).read_bytes(), name


def test_each_package_that_is_shipped_has_its_notice():
    lock = json.loads((fetch_modules.STATIC / "package-lock.json").read_text())
    notices = (fetch_modules.LIB / "THIRD_PARTY_NOTICES.txt").read_text("utf-8")
    # The packer is a tool of set-up; nothing of it is shipped.
    names = [
        name.removeprefix("node_modules/")
        for name, row in lock["packages"].items()
        if name and not row.get("dev")
    ]
    assert names
    assert [name for name in names if f"{name}\n\n" not in notices] == []


def test_a_node_too_old_is_passed_over(tmp_path, monkeypatch):
    old = tmp_path / "node"
    old.write_text("#!/bin/sh\necho v12.22.0\n")
    old.chmod(0o755)
    monkeypatch.setenv("PATH", str(tmp_path))
    assert fetch_modules.find_node() != str(old)
