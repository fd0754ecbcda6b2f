"""Pair a phone by a code."""

import io
from typing import Any

import segno
from flask import Response, jsonify, request

from server import auth
from server.api import security
from server.api.body import Blueprint
from server.api.guard import paired, require, send_token, sent_token
from server.api.hosts import first_page_url
from server.api.peers import source_of
from server.api.people import public, server_now
from server.config import settings
from server.core.log.rights.roles import ACTS
from server.shapes import people as shapes

blp = Blueprint("pairing", __name__, description="Pairing of phones")


@blp.post("/pair")
@blp.arguments(shapes.PairRequest)
@blp.response(200, shapes.PairAnswer)
def pair(wanted: dict[str, Any]) -> Response:
    """Pair the phone that asks, and give it its cookie.

    403 for a wrong, used or ended code; 429 with Retry-After after too many;
    409 when the phone's id belongs to another person's phone.
    """
    clock = settings().clock
    asking = auth.Asking(
        device=wanted["device"],
        device_name=wanted["device_name"],
        person_name=wanted.get("person_name"),
        source=source_of(request.remote_addr),
        token=sent_token(),
    )
    done = auth.pair(wanted["code"], asking, clock.now_ms(), clock.rate)
    person, device = done.session.person.id, done.session.device.id
    security.note("paired", about=device, person=person)
    answer = jsonify(
        person=public(done.session),
        device=done.session.device.id,
        server=server_now(),
    )
    send_token(answer, done.token)
    return answer


@blp.post("/people/<string(maxlength=64):person_id>/pairing")
@require(ACTS["people"])
@blp.response(200, shapes.PairingAnswer)
def start_pairing(person_id: str) -> dict[str, Any]:
    """Make a code for one phone of a person: ten minutes, works once.

    The picture's address has the long code behind the #, which no browser
    sends to any server; `code` is the short one to type.
    """
    clock = settings().clock
    made = auth.start_pairing(person_id, paired().person.id, clock.now_ms(), clock.rate)
    security.note("code_made", about=person_id)
    url = f"{first_page_url()}/#/pair/{made.long}"
    return {
        "code": made.short,
        "url": url,
        "qr_svg": qr_svg(url),
        "expires_ms": made.expires_ms,
    }


def qr_svg(text: str) -> str:
    """Return a QR picture as SVG.

    Args:
        text: what it says.
    """
    out = io.BytesIO()
    segno.make(text, error="m").save(
        out, kind="svg", scale=8, xmldecl=False, svgns=True, border=4
    )
    return out.getvalue().decode()
