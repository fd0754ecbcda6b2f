"""The files that a server starts from, each read by the program it is for."""

import os
import re
import shutil
import subprocess

import pytest

from server import cli
from server.config import Settings
from tests.conftest import ROOT
from tests.deploy.proxies import NAME, certificate, nginx_config

DEPLOY = ROOT / "deploy"


def program(name):
    found = shutil.which(name)
    if found is None:
        pytest.skip(f"{name} is not installed; tests/run --long installs it if it may")
    return found


def run(*words, **environment):
    return subprocess.run(
        words,
        capture_output=True,
        text=True,
        timeout=60,
        env={**os.environ, **environment},
    )


def test_nginx_takes_its_file(tmp_path):
    found = run(program("nginx"), "-t", "-c", nginx_config(tmp_path, 18443, 18000))
    assert found.returncode == 0, found.stderr
    assert "[warn]" not in found.stderr


def test_caddy_takes_its_file(tmp_path):
    cert, key = certificate(tmp_path)
    found = run(
        program("caddy"),
        *("validate", "--adapter", "caddyfile", "--config", str(DEPLOY / "Caddyfile")),
        VATSIDE_NAME=NAME,
        VATSIDE_TLS_CERT=str(cert),
        VATSIDE_TLS_KEY=str(key),
        HOME=str(tmp_path),
    )
    assert found.returncode == 0, found.stderr
    assert "not formatted" not in found.stderr


def test_systemd_finds_the_service_closed_enough():
    unit = DEPLOY / "vatside.service"
    words = ("security", "--offline=true", "--threshold=20", "--no-pager", str(unit))
    found = run(program("systemd-analyze"), *words)
    if "unrecognized option" in found.stderr:
        pytest.skip("this systemd-analyze reads no file offline")
    # Exposure in tenths: 2.0 of 10 at most.
    assert found.returncode == 0, found.stdout[-400:] + found.stderr


def words_of(text):
    """Return each command line of a text that runs vatside, as words."""
    return [found.split() for found in re.findall(r"bin/vatside ([a-z][^\n#`]*)", text)]


@pytest.mark.parametrize("name", ["vatside.service", "README.md"])
def test_every_command_that_is_told_is_one(name, capsys):
    told = words_of((DEPLOY / name).read_text())
    assert told
    for words in told:
        cli.parser().parse_args(words)


def test_every_setting_that_is_told_is_one():
    known = set(re.findall(r"VATSIDE_\w+", (ROOT / "server/config.py").read_text()))
    for name in ("nginx.conf", "Caddyfile", "README.md"):
        told = set(
            re.findall(r"^\s*#?\s*(VATSIDE_\w+)=", (DEPLOY / name).read_text(), re.M)
        )
        assert told, name
        assert told <= known, name


def test_the_data_folder_of_the_service_is_the_one_it_may_write():
    text = (DEPLOY / "vatside.service").read_text()
    assert "StateDirectory=vatside\n" in text
    assert "--data /var/lib/vatside" in text
    assert Settings(data_dir=ROOT).proxy_hops == 0  # no proxy unless told
