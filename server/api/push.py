"""Pushes: the server's key, a browser's subscription, and a test."""

import base64
import binascii
import hashlib
from typing import Any

from flask import Response, jsonify

from server import alarm
from server.alarm import keys
from server.alarm.contact import contact
from server.alarm.endpoint import push_endpoint
from server.alarm.sender import is_point
from server.api.body import Blueprint
from server.api.guard import paired
from server.api.hosts import page_url
from server.auth import RefusedError
from server.config import real_now_ms, settings
from server.shapes import alarms as shapes
from server.store import pushes

AUTH_BYTES = 16  # RFC 8291 section 3.2

blp = Blueprint("push", __name__, description="Pushes to phones")


@blp.get("/push")
@blp.response(200)
def push() -> Response:
    """Tell the server's public key and how pushes fare.

    A phone sees its own subscription, the owner all of them. `why_not` is a key
    when this server cannot push at all; `sends` whether some worker was seen to
    look for alarms within the last half minute.
    """
    session = paired()
    _, why_not = contact(settings())
    rows = pushes.subscriptions(live_only=False)
    real_ms = real_now_ms()
    return jsonify(
        public_key=keys.public_text(keys.private_key(settings().data_dir)),
        why_not=why_not,
        sends=alarm.some_worker_sends(),
        subscriptions=[
            _shown(row, session.device.id, real_ms)
            for row in rows
            if row.device == session.device.id or session.is_at_least("owner")
        ],
        owner_live=any(row.role == "owner" and row.dropped_ms is None for row in rows),
    )


def _shown(row: pushes.Subscription, mine: str, real_ms: int) -> dict[str, Any]:
    def age_s(at_ms: int | None) -> int | None:
        return None if at_ms is None else max(0, real_ms - at_ms) // 1000

    return {
        "device": row.device,
        "device_name": row.device_name,
        "person": row.person,
        "mine": row.device == mine,
        "endpoint_sha256": row.id,
        "wants": row.wants,
        "lives": row.dropped_ms is None,
        "status": row.status,
        "posted_s": age_s(row.posted_ms),
        "sent_s": age_s(row.sent_ms),
        "ok_s": age_s(row.ok_ms),
    }


@blp.post("/push/subscriptions")
@blp.arguments(shapes.NewSubscription)
@blp.response(200, shapes.Written)
def subscribe(wanted: dict[str, Any]) -> dict[str, bool]:
    """Keep this browser's subscription; to be posted again at each opening.

    422 when the endpoint is no push service of a browser, or a key is not one.
    """
    if push_endpoint(wanted["endpoint"], settings().push_hosts) is None:
        raise RefusedError("not_a_push_service", "endpoint")
    for name, is_sound in (("p256dh", is_point), ("auth", _is_secret)):
        if not is_sound(_bytes(wanted["keys"][name], name)):
            raise RefusedError("not_a_push_key", "keys." + name)
    pushes.save_subscription(
        pushes.NewSubscription(
            id=hashlib.sha256(wanted["endpoint"].encode()).hexdigest(),
            endpoint=wanted["endpoint"],
            p256dh=wanted["keys"]["p256dh"],
            auth=wanted["keys"]["auth"],
            device=paired().device.id,
            wants=wanted["wants"],
            page=page_url(),
        ),
        real_now_ms(),
    )
    return {"ok": True}


def _is_secret(data: bytes) -> bool:
    return len(data) == AUTH_BYTES


def _bytes(text: str, name: str) -> bytes:
    try:
        return base64.urlsafe_b64decode(text.rstrip("=") + "=" * (-len(text) % 4))
    except (binascii.Error, ValueError) as problem:
        raise RefusedError("not_a_push_key", "keys." + name) from problem


@blp.delete("/push/subscriptions")
@blp.response(204)
def unsubscribe() -> None:
    """Send nothing to this phone any more."""
    pushes.remove_subscription(paired().device.id)


@blp.post("/push/test")
@blp.response(200, shapes.TestAnswer)
def test() -> dict[str, int]:
    """Send a visible test to this phone now, and tell what its service said.

    422 when this server has no contact, or the phone no live subscription.
    """
    _, why_not = contact(settings())
    if why_not is not None:
        raise RefusedError(why_not)
    mine = [row for row in pushes.subscriptions() if row.device == paired().device.id]
    if not mine:
        raise RefusedError("no_subscription")
    return {"status": alarm.delivery().send_test(mine[0], real_now_ms())}
