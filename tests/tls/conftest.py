import socket
import subprocess

import pytest

from server.tls.folder import Folder
from server.tls.made import instant
from server.tls.renewal import DAY_MS, tend

NOW_MS = 1_795_860_000_000  # 2026-11-28
LAN = ["192.168.1.20"]


@pytest.fixture(autouse=True)
def box(monkeypatch):
    """Let this box have a name, and nothing of ours in its environment."""
    monkeypatch.setattr(socket, "gethostname", lambda: "vatbox")
    for name in ("VATSIDE_TLS_CERT", "VATSIDE_TLS_KEY", "VATSIDE_URL"):
        monkeypatch.delenv(name, raising=False)


@pytest.fixture
def folder(tmp_path):
    """Give a folder with a root and a certificate made now."""
    made = Folder(tmp_path / "tls")
    tend(made, LAN, NOW_MS)
    return made


def days(count):
    """Return so many days from now [ms]."""
    return NOW_MS + count * DAY_MS


def openssl(*arguments):
    """Run openssl; return whether it agreed, and what it said."""
    run = subprocess.run(["openssl", *arguments], capture_output=True, text=True)
    return run.returncode == 0, run.stdout + run.stderr


def verified(root, leaf, *more, at_ms=NOW_MS):
    """Ask openssl, which knows nothing of our code, whether a certificate holds."""
    at_s = str(at_ms // 1000)
    command = ["verify", "-x509_strict", "-attime", at_s, "-CAfile", str(root)]
    return openssl(*command, *more, str(leaf))


def ends(certificate):
    """Return the day on which a certificate ends."""
    return str(instant(int(certificate.not_valid_after_utc.timestamp() * 1000)).date())
