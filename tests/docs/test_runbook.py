"""The runbook names what there is."""

import re

from server import cli
from server.alarm import keys
from server.auth import code_key
from server.config import DATABASE_NAME
from tests.conftest import ROOT

TEXT = (ROOT / "deploy" / "RUNBOOK.md").read_text(encoding="utf-8")


def test_it_names_commands_that_there_are():
    named = set(re.findall(r"vatside ([a-z-]+)", TEXT))
    known = set(re.findall(r"^    ([a-z-]+)(?: |$)", cli.parser().format_help(), re.M))
    assert {"backup", "restore", "move", "owner-code"} <= named <= known


def test_it_names_the_files_of_the_data_folder():
    for name in (DATABASE_NAME, keys.NAME, code_key.NAME):
        assert f"`{name}`" in TEXT
