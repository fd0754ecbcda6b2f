"""What this server may be called, and what its root may vouch for."""

import re
import socket
from collections.abc import Iterable
from ipaddress import IPv4Network, IPv6Network, ip_address, ip_network
from typing import NamedTuple

from server.tls.refused import TlsError

# home.arpa is kept for private networks (RFC 8375): the router's own name
# service can answer it, and no public one ever will.
ROOM_NAME = "vatside.home.arpa"
THIS_BOX = ("localhost",)
LOOPBACK = ("127.0.0.1", "::1")
# Addresses that lead nowhere outside one network (RFC 1918, 3927, 4193) and the
# box itself: another router, or another DHCP lease, stays within them.
PRIVATE = tuple(
    ip_network(text)
    for text in (
        "10.0.0.0/8",
        "172.16.0.0/12",
        "192.168.0.0/16",
        "169.254.0.0/16",
        "127.0.0.0/8",
        "fc00::/7",
        "::1/128",
    )
)
_LABEL = re.compile(r"(?!-)[a-z0-9-]{1,63}(?<!-)")
LONGEST_NAME = 253

Network = IPv4Network | IPv6Network


class Names(NamedTuple):
    """Host names and addresses, the best ones first."""

    dns: tuple[str, ...]
    addresses: tuple[str, ...]


def name_as_meant(text: str) -> str:
    """Return a host name as it stands in a certificate.

    Args:
        text: as typed.

    Raises:
        TlsError: it is no host name.

    >>> name_as_meant("Floor.Home.ARPA.")
    'floor.home.arpa'
    """
    name = text.strip().rstrip(".").lower()
    labels = name.split(".")
    good = all(_LABEL.fullmatch(label) for label in labels)
    if not good or len(name) > LONGEST_NAME or labels[-1].isdigit():
        raise TlsError(
            f"{text!r} is no host name: write it as in {ROOM_NAME}, with letters, "
            "digits, hyphens and dots; no port, no star, no https://."
        )
    return name


def address_as_meant(text: str) -> str:
    """Return an address as it stands in a certificate.

    Args:
        text: as typed.

    Raises:
        TlsError: it is no address of one machine.

    >>> address_as_meant(" 192.168.001.020")
    Traceback (most recent call last):
    server.tls.refused.TlsError: ...
    >>> address_as_meant("FD00:0::12")
    'fd00::12'
    """
    try:
        address = ip_address(text.strip())
    except ValueError:
        address = None
    if address is None or address.is_unspecified or address.is_multicast:
        raise TlsError(
            f"{text!r} is no address of this box: write it as in 192.168.1.20."
        )
    return str(address)


def host_names() -> tuple[str, ...]:
    """Return the names that this box has without anybody giving one.

    The first is announced by the box itself where it speaks mDNS; the second
    answers once the router is told of it.
    """
    host = socket.gethostname().split(".")[0].lower()
    known = _LABEL.fullmatch(host) and host != "localhost"
    return (f"{host}.local", ROOM_NAME) if known else (ROOM_NAME,)


def networks(addresses: Iterable[str]) -> tuple[Network, ...]:
    """Return what a root may vouch for, so that these addresses are in it.

    An address outside of private networks is taken alone: its neighbours belong
    to strangers.

    Args:
        addresses: addresses of this box.
    """
    own = [ip_network(address) for address in addresses]
    alone = [one for one in own if not any(_is_in(one, wide) for wide in PRIVATE)]
    return (*PRIVATE, *dict.fromkeys(alone))


def _is_in(one: Network, wide: Network) -> bool:
    return one.version == wide.version and one.network_address in wide


def is_name_in(name: str, permitted: Iterable[str]) -> bool:
    """Return whether a root that permits these names may vouch for a name.

    Args:
        name: host name.
        permitted: names; each permits what stands below it too (RFC 5280, 4.2.1.10).
    """
    return any(name == one or name.endswith("." + one) for one in permitted)


def is_address_in(address: str, permitted: Iterable[Network]) -> bool:
    """Return whether a root that permits these networks may vouch for an address.

    Args:
        address: an address.
        permitted: networks.
    """
    one = ip_network(address)
    return any(_is_in(one, wide) for wide in permitted)
