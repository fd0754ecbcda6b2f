"""Who answers for this server's pushes, and where pushes may go.

Push services refuse a contact that nobody can be reached at; one that ends in
.local or .invalid is answered with 403 and no word. And a subscription is an
address that a phone names and this server then calls: only the push services
of browsers are called, or it could be made to knock at any door of the network.
"""

from urllib.parse import urlsplit

from server.config import Settings

# The services that browsers use; a leading point stands for any name below.
SERVICES = (
    "fcm.googleapis.com",
    ".push.apple.com",
    ".push.services.mozilla.com",
    ".notify.windows.com",
)
NOWHERE = (".local", ".localhost", ".invalid", ".test", ".example", ".internal", ".lan")


def contact(settings: Settings) -> tuple[str | None, str | None]:
    """Return the contact that is told to push services, or why there is none.

    Args:
        settings: the server's settings.

    Returns:
        (address, None), or (None, "no_contact" or "contact_unusable").
    """
    wanted = settings.push_contact or settings.public_url
    if not settings.push_contact and not wanted.startswith("https://"):
        return None, "no_contact"
    if not _is_reachable(wanted):
        return None, "contact_unusable"
    return wanted, None


def _is_reachable(address: str) -> bool:
    parts = urlsplit(address)
    if parts.scheme == "mailto":
        user, at, host = parts.path.rpartition("@")
        if not (user and at):
            return False
    elif parts.scheme == "https":
        host = parts.hostname or ""
    else:
        return False
    host = host.lower().rstrip(".")
    name_has_dot = "." in host and not host.replace(".", "").isdigit()
    return name_has_dot and ":" not in host and not host.endswith(NOWHERE)


def may_push_to(endpoint: str, extra_hosts: tuple[str, ...]) -> bool:
    """Tell whether an endpoint is one of a push service.

    Args:
        endpoint: the address that the browser was given.
        extra_hosts: further hosts that the owner trusts; these may be plain http.
    """
    try:
        parts = urlsplit(endpoint)
        host = (parts.hostname or "").lower()
        port = parts.port
    except ValueError:
        return False
    if parts.username is not None or parts.password is not None:
        return False
    if host in extra_hosts:
        return parts.scheme in ("https", "http")
    if parts.scheme != "https" or port not in (None, 443):
        return False
    return any(
        host.endswith(name) if name.startswith(".") else host == name
        for name in SERVICES
    )
