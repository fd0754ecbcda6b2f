"""People, and the phones paired to them."""

from typing import Any

from flask import Response, jsonify

from server import auth, store
from server.api import security
from server.api.body import Blueprint
from server.api.guard import drop_token, paired, require, send_token, sent_token
from server.config import now_ms, settings
from server.core.log.rights.roles import ACTS
from server.shapes import people as shapes
from server.store import pushes

blp = Blueprint("people", __name__, description="People and their paired phones")


def server_now() -> dict[str, Any]:
    """Return which life of the database this is, and the server's clock."""
    clock = settings().clock
    return {"epoch": store.epoch(), "now": clock.now_ms(), "rate": clock.rate}


@blp.get("/me")
@blp.response(200, shapes.MeAnswer)
def me() -> Response:
    """Tell whose phone this is, and everyone who works here.

    Names of those who left stay in the list: the record needs them. The
    cookie is set anew, so that a phone in use is never logged out.
    """
    session = paired()
    clock = settings().clock
    auth.note_seen(session, clock.now_ms(), clock.rate)
    answer = jsonify(
        person=public(session),
        device=session.device.id,
        people=[person._asdict() for person in auth.people()],
        server=server_now(),
    )
    send_token(answer, sent_token() or "")
    return answer


def public(session: auth.Session) -> dict[str, Any]:
    """Return what is told of the person of a phone.

    Args:
        session: the phone.
    """
    person = session.person._asdict()
    return {name: value for name, value in person.items() if name != "active"}


@blp.patch("/me")
@blp.arguments(shapes.Reads)
@blp.response(200, shapes.PersonShape)
def change_me(wanted: dict[str, Any]) -> dict[str, Any]:
    """Change the language and units of the person whose phone this is."""
    session = paired()
    person = auth.change_person(session.person.id, now_ms(), **wanted)
    return public(session._replace(person=person))


@blp.post("/me/sign-out")
@blp.response(204)
def sign_out() -> Response:
    """Sign this phone out: the server forgets its token, and sends it no pushes.

    What still waits on it stays there, and comes once it is paired again.
    """
    session = paired()
    auth.sign_out(session.device, now_ms())
    pushes.remove_subscription(session.device.id)
    security.note("signed_out")
    answer = Response(status=204)
    drop_token(answer)
    return answer


@blp.get("/people")
@blp.response(200, shapes.ListedPerson(many=True))
def list_people() -> list[Any]:
    """List everyone, also those who left."""
    return auth.people()


@blp.post("/people")
@require(ACTS["people"])
@blp.arguments(shapes.NewPerson)
@blp.response(201, shapes.ListedPerson)
def add_person(wanted: dict[str, Any]) -> Any:
    """Add a person. 403 unless the owner asks."""
    added = auth.add_person(wanted["name"], wanted["role"], now_ms())
    security.note("person_added", about=added.id, role=added.role)
    return added


@blp.post("/people/<string(maxlength=64):person_id>")
@require(ACTS["people"])
@blp.arguments(shapes.ChangedPerson)
@blp.response(200, shapes.ListedPerson)
def change_person(wanted: dict[str, Any], person_id: str) -> Any:
    """Change a name, role, language or unit, or let a person leave.

    409 for the last owner.
    """
    changed = auth.change_person(person_id, now_ms(), **wanted)
    if "role" in wanted:
        security.note("role_changed", about=person_id, role=changed.role)
    if "active" in wanted:
        what = "person_came_back" if changed.active else "person_left"
        security.note(what, about=person_id)
    return changed


@blp.get("/devices")
@require(ACTS["people"])
@blp.response(200, shapes.DeviceShape(many=True))
def list_devices() -> list[Any]:
    """List every phone that is or was paired, the newest first."""
    return auth.devices()


@blp.delete("/devices/<string(maxlength=64):device_id>")
@require(ACTS["people"])
@blp.response(204)
def remove_device(device_id: str) -> None:
    """Take a phone out of use at once. What it still sends is kept for a look."""
    if device_id == paired().device.id:
        raise auth.RefusedError("own_device", "id")
    auth.remove_device(device_id, now_ms())
    security.note("phone_removed", about=device_id)
