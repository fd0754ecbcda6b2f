"""Say which of a phone's own numbers are here."""

from server.store.held import Have, held_of


def have(device: str) -> Have:
    """Return what is here of one phone's counting, in the log or aside.

    Args:
        device: id of the phone.
    """
    return held_of(device)
