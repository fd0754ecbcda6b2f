"""Have a certificate ready before the server starts, and hand it to gunicorn."""

from typing import TextIO

from server.config import Settings, real_now_ms
from server.tls import Served, TlsError, lan_addresses, served
from server.tls.context import FreshContext
from server.tls.own import read_pair
from server.tls.renewal import tend
from server.tls.standing import findings


def ready(settings: Settings, out: TextIO) -> Served | None:
    """Return the certificate to serve with, renewed where it is due.

    What does not keep the server from working is said, and it starts: a make
    goes on, and alarms must.

    Args:
        settings: what to run with.
        out: where to say what is to be seen to.

    Returns:
        The certificate; None where there is none, or none is wanted.

    Raises:
        TlsError: there is one that cannot be used.
    """
    kept = served(settings)
    if kept is None:
        return None
    now_ms = real_now_ms()
    said = ""
    if kept.room is not None:
        try:
            tend(kept.room, lan_addresses(), now_ms)
        except TlsError as problem:
            said = str(problem)
            print(said, file=out)
    # Alone it decides whether the server can start.
    read_pair(kept.certificate, kept.key)
    for one in findings(settings, now_ms):
        if one.text != said:
            print(one.text, file=out)
    out.flush()
    return kept


def gunicorn_settings(kept: Served) -> dict[str, object]:
    """Return the settings by which gunicorn speaks https.

    Args:
        kept: the certificate.
    """
    fresh = FreshContext(kept.certificate, kept.key)
    return {
        "certfile": str(kept.certificate),
        "keyfile": str(kept.key),
        "ssl_context": lambda config, default: fresh.context,
    }
