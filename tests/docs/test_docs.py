"""What a newcomer must find in the docs is asked from the program itself."""

import re

import pytest

from server import cli
from server.app import create_app
from server.config import Settings
from server.core.log.kinds.table import KINDS
from tests.conftest import ROOT

README = ROOT / "README.md"
DEVELOPERS = ROOT / "DEVELOPERS.md"
DECISIONS = ROOT / "server" / "DECISIONS.md"
MAP_BYTES = 20 * 1024  # what somebody new reads before the first change


def options(script):
    """Return the long options that a shell script understands."""
    text = (ROOT / script).read_text(encoding="utf-8")
    return sorted(set(re.findall(r"^ +(--[a-z-]+)\)", text, re.M)))


def settings():
    text = (ROOT / "server" / "config.py").read_text(encoding="utf-8")
    return sorted(set(re.findall(r'"(VATSIDE_[A-Z_]+|DATABASE_URL)"', text)))


def parts():
    return sorted(
        path.name
        for path in (ROOT / "server").iterdir()
        if path.is_dir() and not path.name.startswith("_")
    )


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_every_kind_of_event_is_explained(kind):
    assert f"`{kind}`" in DEVELOPERS.read_text(encoding="utf-8")


@pytest.mark.parametrize("name", settings())
def test_every_setting_is_explained(name):
    docs = (ROOT / "deploy" / "README.md").read_text(encoding="utf-8")
    assert f"`{name}`" in docs


@pytest.mark.parametrize("name", parts())
def test_every_part_of_the_server_is_explained(name):
    assert f"{name}/" in DEVELOPERS.read_text(encoding="utf-8")


def test_every_command_is_explained():
    commands = re.findall(r"^    ([a-z-]+)(?: |$)", cli.parser().format_help(), re.M)
    docs = README.read_text(encoding="utf-8") + DEVELOPERS.read_text(encoding="utf-8")
    assert "serve" in commands
    assert [name for name in commands if f"vatside {name}" not in docs] == []


def test_every_resource_of_the_api_is_explained(tmp_path):
    rules = create_app(Settings(data_dir=tmp_path)).url_map.iter_rules()
    found = {re.match(r"/api/v1/[a-z.]+", rule.rule) for rule in rules}
    resources = sorted({match[0] for match in found if match})
    docs = DEVELOPERS.read_text(encoding="utf-8")
    assert resources
    assert [name for name in resources if name not in docs] == []


@pytest.mark.parametrize("option", options("demo/run"))
def test_every_option_of_the_demo_is_explained(option):
    assert option in README.read_text(encoding="utf-8")


@pytest.mark.parametrize("command", ["sh demo/run", "sh tests/run"])
def test_the_two_commands_are_told(command):
    assert command in README.read_text(encoding="utf-8")


def test_the_scripts_are_read_for_their_options():
    assert options("demo/run") == [
        "--check",
        "--data",
        "--https-port",
        "--no-seed",
        "--no-tls",
        "--port",
        "--replay",
    ]


def test_the_map_of_the_code_stays_short_enough_to_be_read():
    assert len(DEVELOPERS.read_bytes()) < MAP_BYTES


def test_every_decision_says_why_instead_of_what_and_until_when():
    text = DECISIONS.read_text(encoding="utf-8")
    decisions = re.findall(r"^\*\*(\d+) · (\d{4}-\d\d-\d\d) · .+?\*\*(.+)$", text, re.M)
    assert [int(number) for number, _, _ in decisions] == [
        *range(1, text.count("\n**") + 1)
    ]
    for number, _, words in decisions:
        for part in ("Because ", "Instead of ", "Revisit when "):
            assert part in words, f"{number} lacks {part!r}"
