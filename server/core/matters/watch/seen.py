"""What a watcher says of its fact: how it stands, since when, resting on what."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.matters import Seen
    from server.shapes.core.words import Keyed

WAIT = "wait"  # not known yet, and nothing is wrong with that


def seen(
    says: str,
    since_ms: "int | None" = None,
    reasons: "list[Keyed] | None" = None,
    rests_on: "list[str] | None" = None,
) -> "Seen":
    """Return a Seen; a fact that is as the gate wants it is None instead.

    Args:
        says: WAIT, or another word of the watcher, as rows of the rules name it.
        since_ms: since when it stands so [ms].
        reasons: list of {"key", ...numbers}.
        rests_on: ids of the entries that it goes by.
    """
    return {
        "says": says,
        "since_ms": since_ms,
        "reasons": reasons or [],
        "rests_on": rests_on or [],
    }
