"""Which names this server answers to, and the address that it hands to phones.

A request says itself whom it was meant for, and what it says ends up in pairing
links and pictures. A page of another site can have its own name lead to this
box for a moment and would then be taken for ours. So only names are answered
that are this box's own, that a setting names, or that its certificate holds;
the port is not looked at, for a proxy or a router may show another.
"""

import re
import socket
import threading
import time
from collections.abc import Callable, Iterable
from ipaddress import ip_address
from urllib.parse import urlsplit

from flask import Flask, current_app, request

from server.auth import RefusedError
from server.config import Settings, settings
from server.tls import lan_addresses

HERE = ("localhost",)
LOOK_AGAIN_S = 5.0  # a box that was given a new address answers to it this soon
_HOST = re.compile(r"(?:\[([0-9a-f:.]+)\]|([a-z0-9_.-]+))(?::[0-9]{1,5})?")


class Hosts:
    """The names that are answered to, looked up anew when an unknown one comes.

    Args:
        settings: the server's settings; `hosts` and `public_url` name hosts.
    """

    def __init__(self, settings: Settings) -> None:
        self._named = [name.lower().rstrip(".") for name in settings.hosts]
        public = host_of(urlsplit(settings.public_url).netloc)
        self._fixed = {*HERE, *self._named, *([public] if public else [])}
        self._sources: list[Callable[[], Iterable[str]]] = [own_names]
        self._found: set[str] = set()
        self._looked_s = float("-inf")
        self._lock = threading.Lock()

    def add_source(self, names: Callable[[], Iterable[str]]) -> None:
        """Answer also to the names that a function tells, now and later.

        Args:
            names: asked again whenever an unknown name comes.
        """
        self._sources.append(names)
        self._looked_s = float("-inf")

    def answers_to(self, host: str) -> bool:
        """Tell whether a host is one of ours.

        Args:
            host: as `host_of` returns it.
        """
        return self._knows(host) or (self._look_again() and self._knows(host))

    def _knows(self, host: str) -> bool:
        if host in self._fixed or host in self._found or _is_loopback(host):
            return True
        below = [name for name in self._named if name.startswith(".")]
        return any(host.endswith(name) for name in below)

    def _look_again(self) -> bool:
        if time.monotonic() - self._looked_s < LOOK_AGAIN_S:
            return False
        # One thread looks; only at the very first time the others wait for it.
        is_first = self._looked_s == float("-inf")
        if not self._lock.acquire(blocking=is_first):
            return False
        try:
            told = [name for source in self._sources for name in source()]
            self._found = {name.lower().rstrip(".") for name in told}
            self._looked_s = time.monotonic()
        finally:
            self._lock.release()
        return True


def host_of(netloc: str) -> str | None:
    """Return the host of "host:port" as it is compared, None for no host at all.

    Args:
        netloc: what a Host header or an address says.

    >>> host_of("Floor.Local.:8000"), host_of("[FE80::1]"), host_of("a b")
    ('floor.local', 'fe80::1', None)
    """
    found = _HOST.fullmatch(netloc.lower())
    if found is None:
        return None
    return found[1] or found[2].rstrip(".") or None


def _is_loopback(host: str) -> bool:
    try:
        return ip_address(host).is_loopback
    except ValueError:
        return False


def own_names() -> set[str]:
    """Return this box's own names and addresses, as its network knows them."""
    name = socket.gethostname().lower()
    short = name.split(".")[0]
    return {name, short, f"{short}.local", *lan_addresses(), *_ipv6_address()}


def _ipv6_address() -> list[str]:
    try:
        with socket.socket(socket.AF_INET6, socket.SOCK_DGRAM) as probe:
            # 2001:db8::/32 is kept for documentation (RFC 3849): connecting a
            # datagram socket only looks up the route.
            probe.connect(("2001:db8::1", 9))
            return [str(probe.getsockname()[0])]
    except OSError:  # no such network
        return []


def init_app(app: Flask) -> None:
    """Refuse requests that are meant for another host, before anything else.

    Args:
        app: the app, with its settings in place.
    """
    app.extensions["vatside_hosts"] = Hosts(app.extensions["vatside"])
    app.before_request(_check)


def hosts() -> Hosts:
    """Return the names that the app that is answering answers to."""
    found = current_app.extensions["vatside_hosts"]
    assert isinstance(found, Hosts)
    return found


def _check() -> None:
    said = host_of(request.host)
    if said is None or not hosts().answers_to(said):
        raise RefusedError("unknown_host", "Host", said)


def page_url() -> str:
    """Return the address of the page for links and pictures, without a slash."""
    return settings().public_url or request.host_url.rstrip("/")


def first_page_url() -> str:
    """Return the address where a new phone begins, without a slash.

    While it does not trust the room's root, that is the set-up page, at the host
    by which the phone that asks came.
    """
    port = settings().setup_port
    if port is None:
        return page_url()
    host = host_of(request.host) or HERE[0]
    return f"http://[{host}]:{port}" if ":" in host else f"http://{host}:{port}"
