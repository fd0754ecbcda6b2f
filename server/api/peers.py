"""Who speaks to this server: a phone itself, or a proxy on behalf of one.

A proxy's headers tell the phone's address, the name and whether the way is
encrypted. Anyone can write such headers, so they count only when the other end
of the connection is a proxy that a setting lets speak for others.
"""

from collections.abc import Iterable
from ipaddress import IPv6Address, IPv6Network, ip_address
from typing import TYPE_CHECKING

from werkzeug.middleware.proxy_fix import ProxyFix

from server.config import Network

if TYPE_CHECKING:
    from _typeshed.wsgi import StartResponse, WSGIApplication, WSGIEnvironment

IPV6_HOUSE = 64  # bits: a home or phone has a whole network of this length


def believe_proxies(
    app: "WSGIApplication", hops: int, believed: tuple[Network, ...]
) -> "WSGIApplication":
    """Return an app that believes the headers of proxies, and of nobody else.

    Args:
        app: the app behind them.
        hops: how many proxies a request passes, each of which adds to the headers.
        believed: networks that the nearest proxy speaks from.
    """
    through_proxy = ProxyFix(app, hops, hops, hops, hops)

    def choose(
        environ: "WSGIEnvironment", start_response: "StartResponse"
    ) -> Iterable[bytes]:
        if is_from(environ.get("REMOTE_ADDR", ""), believed):
            return through_proxy(environ, start_response)
        return app(environ, start_response)

    return choose


def is_from(address: str, networks: tuple[Network, ...]) -> bool:
    """Tell whether an address lies in one of some networks.

    Args:
        address: as the socket tells it; anything else lies in none.
        networks: the networks.
    """
    try:
        found = ip_address(address)
    except ValueError:
        return False
    if isinstance(found, IPv6Address) and found.ipv4_mapped:
        found = found.ipv4_mapped
    return any(found in network for network in networks)


def source_of(address: str | None) -> str:
    """Return under which name tries from an address are counted.

    A home has all addresses of an IPv6 network, so the network counts.

    Args:
        address: of the phone, None when not known.

    >>> source_of("2001:db8:1:2:3:4:5:6"), source_of("192.0.2.7")
    ('2001:db8:1:2::/64', '192.0.2.7')
    """
    try:
        found = ip_address(address or "")
    except ValueError:
        return ""
    if not isinstance(found, IPv6Address):
        return str(found)
    if found.ipv4_mapped:
        return str(found.ipv4_mapped)
    return str(IPv6Network((found, IPV6_HOUSE), strict=False))
