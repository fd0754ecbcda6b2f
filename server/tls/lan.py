"""The addresses under which phones reach this box."""

import contextlib
import socket
import struct
import subprocess
import sys
from collections.abc import Iterable

GET_ADDRESS = 0x8915  # SIOCGIFADDR of Linux
# Bridges of containers and virtual machines: no phone is on the other side.
INNER = ("docker", "br-", "veth", "virbr", "lxc", "podman")
RESOLVE_S = 2.0
_RESOLVE = """
import socket, sys
for name in sys.argv[1:]:
    try:
        rows = socket.getaddrinfo(name, None)
    except OSError:
        continue
    for row in rows:
        print(name, row[4][0], flush=True)
"""


def lan_addresses() -> list[str]:
    """Return the IPv4 addresses under which other machines reach this one.

    The first is the one that the default route uses; a room without a way to
    the internet may have none, so every interface is asked too. Nothing is sent.
    """
    # Looking the host's own name up comes last: a room without a name service
    # would wait seconds for each answer.
    return _outer([*_routed(), *_of_interfaces()]) or _outer(_of_host_name())


def _outer(found: list[str]) -> list[str]:
    outer = [address for address in found if not address.startswith("127.")]
    return list(dict.fromkeys(outer))


def _routed() -> list[str]:
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            # 192.0.2.0/24 is kept for documentation (RFC 5737): connecting a
            # datagram socket only looks up the route.
            probe.connect(("192.0.2.1", 9))
        except OSError:
            return []
        return [str(probe.getsockname()[0])]


def _of_interfaces() -> list[str]:
    if sys.platform != "linux":
        return []
    import fcntl

    found = []
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asked:
        for _, name in socket.if_nameindex():
            request = struct.pack("256s", name.encode()[:15])
            with contextlib.suppress(OSError):  # it has no address
                answer = fcntl.ioctl(asked, GET_ADDRESS, request)
                if not name.startswith(INNER):
                    found.append(socket.inet_ntoa(answer[20:24]))
    return found


def _of_host_name() -> list[str]:
    try:
        rows = socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)
    except OSError:
        return []
    return [str(row[4][0]) for row in rows]


def leads_here(names: Iterable[str], addresses: Iterable[str]) -> list[str]:
    """Return those names that lead to this box, as its own network resolves them.

    Args:
        names: host names.
        addresses: this box's addresses.
    """
    listed, here = list(names), set(addresses)
    # In a process of its own: a resolver without a network may hang far longer
    # than a start may wait, and a thread that hangs must not be forked from.
    command = [sys.executable, "-I", "-S", "-c", _RESOLVE, *listed]
    try:
        run = subprocess.run(command, capture_output=True, timeout=RESOLVE_S)
        said = run.stdout
    except subprocess.TimeoutExpired as late:
        said = late.stdout or b""
    rows = [line.split() for line in said.decode().splitlines()]
    good = {row[0] for row in rows if len(row) == 2 and row[1] in here}
    return [name for name in listed if name in good]
