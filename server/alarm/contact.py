"""Who answers for this server's pushes.

Push services refuse a contact that nobody can be reached at; one that ends in
.local or .invalid is answered with 403 and no word.
"""

from urllib.parse import urlsplit

from server.config import Settings

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
    try:
        parts = urlsplit(address)
    except ValueError:  # a bracket that is not closed, and the like
        return False
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
