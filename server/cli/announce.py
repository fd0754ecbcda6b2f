"""Tell people on the terminal where the server is and how to get in."""

from dataclasses import dataclass
from typing import TextIO

import segno

from server.tls import lan_addresses

USUAL_PORTS = {"http": 80, "https": 443}
EVERYWHERE = ("0.0.0.0", "::", "")


@dataclass(frozen=True)
class Entrance:
    """Where people get in.

    Args:
        addresses: of the app, the best one first.
        setup: address where a new phone begins; empty for the app's own.
        root_sha256: fingerprint of the root that phones must take; empty for none.
    """

    addresses: list[str]
    setup: str = ""
    root_sha256: str = ""


def at(scheme: str, host: str, port: int) -> str:
    """Return an address.

    Args:
        scheme: http or https.
        host: name or address.
        port: port.

    >>> at("https", "fd00::12", 8443), at("https", "vat.example", 443)
    ('https://[fd00::12]:8443', 'https://vat.example')
    """
    name = f"[{host}]" if ":" in host else host
    tail = "" if USUAL_PORTS[scheme] == port else f":{port}"
    return f"{scheme}://{name}{tail}"


def urls(host: str, port: int, public_url: str = "") -> list[str]:
    """Return the plain addresses to open on a phone, the best one first.

    Args:
        host: address that the server listens on.
        port: port that it listens on.
        public_url: address that the owner has set; empty for none.
    """
    if public_url:
        return [public_url]
    hosts = [*lan_addresses(), "localhost"] if host in EVERYWHERE else [host]
    return [at("http", name, port) for name in hosts]


def announce(
    entrance: Entrance, codes: list[tuple[str, str]], rate: float, out: TextIO
) -> None:
    """Print where the server is and how to get in.

    Args:
        entrance: where people get in.
        codes: one-time codes, each with whom it lets in.
        rate: how fast the server's clock runs; 1 is the real clock.
        out: where to print.
    """
    print("Vatside is running at", file=out)
    for address in entrance.addresses:
        print(f"  {address}", file=out)
    if rate != 1:
        print(f"Practice clock: {rate:g} times as fast as the real one.", file=out)
    if entrance.setup:
        _explain_setup(entrance, out)
    begin = entrance.setup or entrance.addresses[0]
    link = begin
    for whom, code in codes:
        link = f"{begin}/#/pair/{code}"
        print(f"Enter as {whom}, once: code {code} or", file=out)
        print(f"  {link}", file=out)
        _print_qr(link, out)
    if not codes:
        _print_qr(link, out)
    print("Stop with Ctrl+C.", file=out, flush=True)


def _explain_setup(entrance: Entrance, out: TextIO) -> None:
    print("Every phone begins once at the set-up page, in the picture below:", file=out)
    print(f"  {entrance.setup}", file=out)
    print(
        "It gives the root of this room; compare its fingerprint (SHA-256):", file=out
    )
    print(f"  {entrance.root_sha256}", file=out)


def _print_qr(text: str, out: TextIO) -> None:
    segno.make(text, error="m").terminal(out=out, border=2, compact=True)
