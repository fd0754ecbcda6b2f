"""Where the data lies, which clock runs, and every other setting.

Settings come from the command line or the environment and are fixed once the
app is made. Nothing else in the server reads the environment.
"""

import json
import os
import time
from collections.abc import Mapping
from dataclasses import dataclass, field
from ipaddress import IPv4Network, IPv6Network, ip_network
from pathlib import Path
from typing import Any

from flask import current_app

HERE = Path(__file__).resolve().parent
RECIPES_DIR = HERE / "recipes"
CORE_DIR = HERE / "core"
RULES_DIR = HERE / "rules"
DATABASE_NAME = "vatside.sqlite3"
DEFAULT_PORT = 8000
DEFAULT_HTTPS_PORT = 8443
THREADS = 32  # per worker; a client that is waited for holds none
VIEWERS = 500  # live streams per worker; none of them holds a thread
MAX_BODY_BYTES = 1 << 20
# A make has about 200 entries of half a kilobyte; a phone that sends all of a
# fortnight again after a restore stays below, too.
PHONE_EVENTS = 20_000
PHONE_MB = 50
PHONE_REQUESTS = 1200

Network = IPv4Network | IPv6Network
LOOPBACK: tuple[Network, ...] = (ip_network("127.0.0.0/8"), ip_network("::1/128"))
# Addresses of one's own network: RFC 1918 section 3, RFC 4193 section 3.1.
_OWN = ("10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "fc00::/7")
NETWORKS = {
    "loopback": LOOPBACK,
    "private": (*LOOPBACK, *(ip_network(text) for text in _OWN)),
}


def read_rules() -> dict[str, Any]:
    """Return the legal figures by the id of their rule, as the core takes them."""
    found = [
        json.loads(path.read_text("utf-8")) for path in sorted(RULES_DIR.glob("*.json"))
    ]
    return {rule["id"]: rule for rule in found}


def real_now_ms() -> int:
    """Return the box's own wall clock [ms since 1970 UTC]."""
    return time.time_ns() // 1_000_000


@dataclass(frozen=True)
class Clock:
    """The server's clock: the real one, or a faster one for replay and practice.

    All workers of one server must show the same time, so a fast clock is told
    by two instants and a rate, never by when a process started.

    Args:
        rate: how many seconds pass here in one real second; 1 is the real clock.
        real_ms: real instant at which the fast clock was set [ms].
        shown_ms: what the fast clock showed at that instant [ms].
    """

    rate: float = 1.0
    real_ms: int = 0
    shown_ms: int = 0

    def __post_init__(self) -> None:
        """Refuse a clock that stands still, runs backwards or leaps."""
        if not 1 <= self.rate <= 3600:
            raise ValueError(f"a clock runs 1 to 3600 times as fast, not {self.rate:g}")

    def now_ms(self) -> int:
        """Return the server's time [ms since 1970 UTC]."""
        return self.at(real_now_ms())

    def at(self, real_ms: int) -> int:
        """Return what this clock shows at a real instant [ms].

        Args:
            real_ms: the real instant [ms].
        """
        if self.rate == 1:
            return real_ms
        return self.shown_ms + int((real_ms - self.real_ms) * self.rate)


def _static_dir() -> Path:
    # A built wheel carries the page inside the package; a checkout has it beside.
    packed = HERE / "_static"
    return packed if packed.is_dir() else HERE.parent / "static"


@dataclass(frozen=True)
class Settings:
    """Everything that may differ between two servers.

    Args:
        data_dir: folder of the database and its backups; made at need.
        database_url: SQLAlchemy address; empty for SQLite in `data_dir`.
        clock: the server's clock.
        static_dir: folder of the page.
        threads: threads a worker has: requests that it answers at once.
        viewers: live streams one worker holds before it answers 503.
        proxy_hops: reverse proxies in front whose headers are believed.
        proxy_from: networks that the nearest of them speaks from.
        hosts: host names this server answers to besides its own; one that begins
            with a point stands for all below it.
        phone_events: entries that one phone may send in a day.
        phone_mb: their size [MB].
        phone_requests: requests that one phone may make in a minute of each worker.
        public_url: address that phones use, for links; empty to take the request's.
        push_contact: who answers for this server's pushes, mailto: or https:.
        push_hosts: further hosts that pushes may go to, plain http allowed.
        https: whether https is served where there is a certificate.
        tls_cert: file of a certificate that the owner brings, with its chain.
        tls_key: file of its key.
        setup_port: where new phones are led first; None for straight to the app.
    """

    data_dir: Path
    database_url: str = ""
    clock: Clock = field(default_factory=Clock)
    static_dir: Path = field(default_factory=_static_dir)
    threads: int = THREADS
    viewers: int = VIEWERS
    proxy_hops: int = 0
    proxy_from: tuple[Network, ...] = LOOPBACK
    hosts: tuple[str, ...] = ()
    phone_events: int = PHONE_EVENTS
    phone_mb: int = PHONE_MB
    phone_requests: int = PHONE_REQUESTS
    public_url: str = ""
    push_contact: str = ""
    push_hosts: tuple[str, ...] = ()
    https: bool = True
    tls_cert: Path | None = None
    tls_key: Path | None = None
    setup_port: int | None = None

    @property
    def sqlalchemy_url(self) -> str:
        """Return the database's address, with the driver that we ship named."""
        if not self.database_url:
            return f"sqlite:///{self.data_dir.resolve() / DATABASE_NAME}"
        for scheme in ("postgres://", "postgresql://"):
            if self.database_url.startswith(scheme):
                return "postgresql+psycopg://" + self.database_url[len(scheme) :]
        return self.database_url

    @property
    def database_file(self) -> Path | None:
        """Return SQLite's file, or None when another database is used."""
        prefix = "sqlite:///"
        if not self.sqlalchemy_url.startswith(prefix):
            return None
        return Path(self.sqlalchemy_url[len(prefix) :])


def from_environment(environ: Mapping[str, str] | None = None) -> Settings:
    """Read the settings from the environment.

    Args:
        environ: variables to read; None for the process's own.

    Raises:
        ValueError: a variable is set to something that cannot be meant.
    """
    values = os.environ if environ is None else environ
    return Settings(
        data_dir=Path(values.get("VATSIDE_DATA", "vatside-data")),
        database_url=values.get("DATABASE_URL", ""),
        threads=_whole(values, "VATSIDE_THREADS", THREADS, low=2),
        viewers=_whole(values, "VATSIDE_VIEWERS", VIEWERS, low=1),
        proxy_hops=_whole(values, "VATSIDE_PROXY_HOPS", 0, low=0),
        proxy_from=_networks(values, "VATSIDE_PROXY_FROM"),
        phone_events=_whole(values, "VATSIDE_PHONE_EVENTS", PHONE_EVENTS, low=200),
        phone_mb=_whole(values, "VATSIDE_PHONE_MB", PHONE_MB, low=2),
        phone_requests=_whole(values, "VATSIDE_PHONE_REQUESTS", PHONE_REQUESTS, low=60),
        hosts=_names(values, "VATSIDE_HOSTS"),
        public_url=values.get("VATSIDE_URL", "").rstrip("/"),
        push_contact=values.get("VATSIDE_PUSH_CONTACT", "").strip(),
        push_hosts=_names(values, "VATSIDE_PUSH_HOSTS"),
        tls_cert=_file(values, "VATSIDE_TLS_CERT"),
        tls_key=_file(values, "VATSIDE_TLS_KEY"),
    )


def _file(values: Mapping[str, str], name: str) -> Path | None:
    text = values.get(name, "").strip()
    return Path(text) if text else None


def _names(values: Mapping[str, str], name: str) -> tuple[str, ...]:
    listed = values.get(name, "").split(",")
    return tuple(one.strip() for one in listed if one.strip())


def _networks(values: Mapping[str, str], name: str) -> tuple[Network, ...]:
    found: list[Network] = []
    for word in _names(values, name) or ("loopback",):
        try:
            found += NETWORKS.get(word) or [ip_network(word, strict=False)]
        except ValueError as problem:
            raise ValueError(
                f"{name} must list addresses (192.0.2.7), networks (192.0.2.0/24), "
                f"loopback or private, not {word!r}"
            ) from problem
    return tuple(found)


def _whole(values: Mapping[str, str], name: str, default: int, low: int) -> int:
    text = values.get(name, "")
    if not text:
        return default
    if not text.isdecimal() or int(text) < low:
        raise ValueError(f"{name} must be a whole number from {low}, not {text!r}")
    return int(text)


def settings() -> Settings:
    """Return the settings of the app that is answering."""
    found = current_app.extensions["vatside"]
    assert isinstance(found, Settings)
    return found


def now_ms() -> int:
    """Return the server's time, by the clock of the app that is answering [ms]."""
    return settings().clock.now_ms()
