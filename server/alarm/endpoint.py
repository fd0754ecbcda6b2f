"""Read the address that a browser names for its pushes, in one way only.

Two parsers of one address are two opinions of where it leads: one may see a
path after a backslash where the other sees a host. So the address is taken only
when it is written in the plainest way there is, in which all parsers agree, and
what is checked and what is called both come from this one reading.
"""

import re
from typing import NamedTuple

# The services that browsers use; a leading point stands for any name below.
SERVICES = (
    "fcm.googleapis.com",
    ".push.apple.com",
    ".push.services.mozilla.com",
    ".notify.windows.com",
)
LONGEST_NAME = 253  # RFC 1035 section 2.3.4
PORTS = {"https": 443, "http": 80}

# Host names as RFC 952 and RFC 1123 section 2.1 have them, path and query as
# RFC 3986 has them; no user, no fragment, no escapes in the host.
_LABEL = r"[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?"
_PLAIN = re.compile(
    rf"(?P<scheme>https?)://(?P<host>{_LABEL}(?:\.{_LABEL})*)(?::(?P<port>[0-9]{{1,5}}))?"
    r"(?:/[A-Za-z0-9._~!$&'()*+,;=:@%/?-]*)?"
)


class Endpoint(NamedTuple):
    """Where a push goes: its parts, and the address as it was written."""

    scheme: str
    host: str
    port: int
    url: str

    @property
    def is_address(self) -> bool:
        """Tell whether the host is a number and no name."""
        # A last label that begins with a digit makes an address of any host,
        # also "0x7f.1" and "2130706433", in some resolver.
        return self.host.rsplit(".", 1)[-1][0].isdigit()


def read_endpoint(text: str) -> Endpoint | None:
    """Return where an address leads, None unless all parsers would agree on it.

    Args:
        text: the address that the browser was given.
    """
    found = _PLAIN.fullmatch(text)
    if found is None or len(found["host"]) > LONGEST_NAME:
        return None
    port = int(found["port"]) if found["port"] else PORTS[found["scheme"]]
    if not 1 <= port <= 65535:
        return None
    return Endpoint(found["scheme"], found["host"], port, text)


def push_endpoint(text: str, extra_hosts: tuple[str, ...]) -> Endpoint | None:
    """Return where pushes to an address go, None when they may not go there.

    Args:
        text: the address that the browser was given.
        extra_hosts: further hosts that the owner trusts, each a name or
            "name:port"; these may be plain http.
    """
    found = read_endpoint(text)
    if found is None:
        return None
    if {found.host, f"{found.host}:{found.port}"} & set(extra_hosts):
        return found
    if found.scheme != "https" or found.port != 443 or found.is_address:
        return None
    return found if _is_service(found.host) else None


def _is_service(host: str) -> bool:
    return any(
        host.endswith(name) if name.startswith(".") else host == name
        for name in SERVICES
    )
