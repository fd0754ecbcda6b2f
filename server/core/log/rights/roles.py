"""Who may do what: what may be recorded, and what else a creamery lets people do.

The table of events names the least role for each kind. What is done in the app and
is no entry stands here beside it: the server asks for it before it answers, and the
page shows only what will be answered.
"""

from ..kinds.columns import ROLES
from ..kinds.table import KINDS

# The least role for each; "work" is any hand at the vat.
ACTS = {
    "work": "helper",
    "pin": "maker",  # whose acts ask for a proof
    "recipes": "maker",
    "needs_look": "maker",
    "people": "owner",
    "links": "owner",
    "escalation": "owner",
    "server": "owner",
}


def rights() -> "dict[str, list[str]]":
    """Return the roles that may do each thing, by a kind of event or a key of ACTS."""
    least = {kind: KINDS[kind]["role"] for kind in KINDS}
    least.update(ACTS)
    return {act: list(ROLES[ROLES.index(least[act]) :]) for act in least}
