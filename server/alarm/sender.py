"""Hand one push to the service of one browser, encrypted for that browser alone."""

import logging
from typing import Any

from cryptography.hazmat.primitives.asymmetric import ec

from server.alarm.endpoint import read_endpoint
from server.alarm.message import Message
from server.store.pushes import Subscription

log = logging.getLogger(__name__)

WAIT_S = 10.0
UNREACHABLE = 0  # in place of a status


def send(
    subscription: Subscription,
    message: Message,
    key: ec.EllipticCurvePrivateKey,
    contact: str,
) -> int:
    """Send one push; failures are answers, not exceptions.

    Args:
        subscription: the browser.
        message: what it is told.
        key: the server's key.
        contact: who answers for this server.

    Returns:
        The service's status; 201 when it took the push, UNREACHABLE when no
        service answered.
    """
    # Loaded at the first push: it brings in more than all the rest of the server.
    from py_vapid import Vapid02
    from pywebpush import WebPushException, webpush
    from requests import RequestException, Session

    session = Session()
    # A service that sends us elsewhere is not followed: only its own host was
    # looked at when the phone subscribed.
    session.max_redirects = 0
    session.trust_env = False
    headers: dict[str, str | int | float] = {
        "Urgency": message.urgency,
        "Topic": message.topic,
    }
    try:
        answer: Any = webpush(
            {
                "endpoint": subscription.endpoint,
                "keys": {"p256dh": subscription.p256dh, "auth": subscription.auth},
            },
            message.text(subscription.page),
            vapid_private_key=Vapid02(private_key=key),
            vapid_claims={"sub": contact},
            ttl=message.ttl_s,
            headers=headers,
            timeout=WAIT_S,
            requests_session=session,
        )
        status = int(answer.status_code)
    except WebPushException as problem:
        status = _status_of(problem)
    except (RequestException, ValueError, TypeError) as problem:
        log.warning("push to %s could not be sent: %s", _host(subscription), problem)
        return UNREACHABLE
    finally:
        session.close()
    level = logging.INFO if status in (200, 201, 202) else logging.WARNING
    log.log(level, "push %s to %s: %d", message.what, _host(subscription), status)
    return status


def _status_of(problem: Any) -> int:
    answer = getattr(problem, "response", None)
    return UNREACHABLE if answer is None else int(answer.status_code)


def _host(subscription: Subscription) -> str:
    # The rest of an endpoint is a secret: whoever has it may send.
    where = read_endpoint(subscription.endpoint)
    return "nowhere" if where is None else f"{where.host}:{where.port}"


def is_point(text: bytes) -> bool:
    """Tell whether bytes are a public key that a push can be encrypted for.

    Args:
        text: the uncompressed point.
    """
    try:
        ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), text)
    except ValueError:
        return False
    return len(text) == 65
