"""Who may record which kind of entry."""

from .columns import ROLES
from .table import CHANGING, KINDS

# In place of its kind, for a reading that only a maker may change: see `legal`.
LEGAL_READING = "legal_reading"


def may(role: str, kind: str, about: "str | None" = None) -> bool:
    """Tell whether a role may record a kind of event.

    Who may not place a hold may not strike one out either: a correction and a
    strike ask for the role of what they are about, too.

    Args:
        role: one of ROLES.
        kind: a key of KINDS.
        about: kind of the entry that the event is about, LEGAL_READING, or None if
            it is not known; see `legal.about_of`.

    Returns:
        True when the role is at least the one the kind asks for.
    """
    if role not in ROLES or kind not in KINDS:
        return False
    is_known = about is None or about == LEGAL_READING or about in KINDS
    if not is_known and kind in CHANGING:
        return False  # who may record it is not known to this app
    return ROLES.index(role) >= ROLES.index(role_for(kind, about))


def role_for(kind: str, about: "str | None" = None) -> str:
    """Return the least role that may record a kind of event.

    Args:
        kind: a key of KINDS.
        about: kind of the entry that the event is about, LEGAL_READING, or None if
            it is not known; see `legal.about_of`.

    Returns:
        One of ROLES.
    """
    needed = KINDS[kind]["role"]
    if kind not in CHANGING:
        return needed
    if about == LEGAL_READING:
        other = "maker"
    elif about in KINDS:
        other = KINDS[about]["role"]
    else:
        return needed
    return max(needed, other, key=ROLES.index)
