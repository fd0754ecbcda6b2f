"""PINs: set, changed, reset, and lent cryptography on plain http."""

from typing import Any

from flask import Response, jsonify

from server.api import security
from server.api.body import Blueprint
from server.api.guard import paired, require
from server.auth import RefusedError, pins
from server.config import now_ms, settings
from server.core.log.rights.roles import ACTS
from server.seal import Sealed
from server.shapes import pins as shapes

blp = Blueprint("pins", __name__, description="PINs of those who sign")
OF_PERSON = "/people/<string(maxlength=64):person_id>/pin"


@blp.get("/pins")
@require(ACTS["pin"])
@blp.response(200, shapes.PinsAnswer)
def known_pins() -> Response:
    """Give the wrapped keys, so that a phone can prove acts with no network.

    Only phones of those who sign get them: a wrapped key can be tried against.
    """
    told = pins.known_pins(now_ms())
    return jsonify(
        pins=[
            {**pin.sealed._asdict(), "device": pin.device, "set_ms": pin.set_ms}
            for pin in told.pins
        ],
        granted=[
            {"person": person, "until_ms": until_ms}
            for person, until_ms in sorted(told.granted.items())
        ],
    )


@blp.post(OF_PERSON)
@require(ACTS["pin"])
@blp.arguments(shapes.NewPin)
@blp.response(204)
def set_pin(wanted: dict[str, Any], person_id: str) -> None:
    """Keep a person's new key, which a phone made and a PIN opens.

    403 on another's phone without the owner's leave, and when it is not signed
    with the key before.
    """
    sig = wanted.pop("sig", None)
    pins.set_pin(Sealed(person=person_id, **wanted), paired(), sig, now_ms())
    security.note("pin_set", about=person_id)


@blp.post(OF_PERSON + "/plain")
@require(ACTS["pin"])
@blp.arguments(shapes.PlainPin)
@blp.response(204)
def set_plain_pin(wanted: dict[str, Any], person_id: str) -> None:
    """Set a person's PIN for a page that has no cryptography, on plain http.

    429 with Retry-After after too many wrong ones. The PIN is not kept.
    """
    clock = settings().clock
    pins.set_plain_pin(
        person_id,
        wanted["pin"],
        wanted.get("before"),
        paired(),
        clock.now_ms(),
        clock.rate,
    )
    security.note("pin_set", about=person_id)


@blp.post(OF_PERSON + "/prove")
@require(ACTS["pin"])
@blp.arguments(shapes.PinTry)
@blp.response(200, shapes.ProofShape)
def prove(wanted: dict[str, Any], person_id: str) -> dict[str, str]:
    """Give the proof of one act for its person's PIN.

    For a page that has no cryptography, and for one that was locked after too
    many wrong PINs. 403 for a wrong one, 429 with Retry-After after too many.
    """
    clock = settings().clock
    act = {**wanted["act"], "person": person_id}
    return pins.prove(act, wanted["pin"], clock.now_ms(), clock.rate)


@blp.post(OF_PERSON + "/reset")
@require(ACTS["people"])
@blp.response(200, shapes.GrantShape)
def reset_pin(person_id: str) -> dict[str, Any]:
    """End a person's PIN, and let them set one on any phone for half an hour.

    409 for the owner's own: whoever holds the owner's phone must not sign as the
    owner.
    """
    if person_id == paired().person.id:
        raise RefusedError("own_pin", "person")
    clock = settings().clock
    until_ms = pins.reset_pin(person_id, clock.now_ms(), clock.rate)
    security.note("pin_reset", about=person_id)
    return {"person": person_id, "until_ms": until_ms}
