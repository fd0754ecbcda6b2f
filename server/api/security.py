"""Write into the security log what requests did to the doors."""

from flask import Flask, current_app, g, request

from server.auth import RefusedError
from server.store.security_log import SecurityLog

# Refusals that tell of someone trying, and what they are called there.
REFUSALS = {
    "wrong_code": "pairing_failed",
    "too_many_tries": "throttled",
    "too_many_requests": "throttled",
    "over_quota": "throttled",
    "unknown_host": "host_refused",
    "other_origin": "origin_refused",
    "link_unknown": "link_failed",
    "wrong_pin": "pin_failed",
    "too_many_pins": "pin_failed",
}


def init_app(app: Flask) -> None:
    """Open the security log of this app's data folder.

    Args:
        app: the app, with its settings in place.
    """
    log = SecurityLog(app.extensions["vatside"].data_dir)
    app.extensions["vatside_security"] = log


def note(what: str, about: str | None = None, **more: str | None) -> None:
    """Note what this request did; who did it is known from its session.

    Args:
        what: what happened, a key in the past tense.
        about: id of the person, phone or link that it was done to.
        **more: further keys; neither names nor secrets.
    """
    log = current_app.extensions["vatside_security"]
    assert isinstance(log, SecurityLog)
    session = g.get("session")
    if session is not None:
        by, device = session.person.id, session.device.id
        log.note(what, by=by, device=device, about=about, **more)
    else:
        log.note(what, about=about, source=request.remote_addr, **more)


def note_refusal(error: RefusedError) -> None:
    """Note a refusal, if it is one that tells of someone trying.

    Args:
        error: why the request was refused.
    """
    what = REFUSALS.get(error.key)
    if what is not None:
        note(what, why=error.key)
