"""Who may come in: every path of the interface asks for a paired phone.

Paths are closed unless named here, so that a new one cannot be left open by
forgetting. A request that changes something must also prove that it comes from
our own page: another site's form can send neither the header nor JSON.
"""

from collections.abc import Callable
from functools import wraps
from typing import ParamSpec, TypeVar

from flask import Flask, Response, g, request

from server import auth
from server.api import rate
from server.auth import links
from server.config import settings
from server.store.links import StoredLink

P = ParamSpec("P")
R = TypeVar("R")

PREFIX = "/api/v1"
OPEN = ("/health", "/pair", "/openapi.json")
REMOVED_MAY = ("/sync/push",)  # what they still hold is kept for a look
# Below it a guest's cookie counts and a phone's does not, and nowhere else.
GUEST = "/guest"
COOKIE_S = auth.IDLE_DAYS * 86_400
PHONE_COOKIE = "vatside"
GUEST_COOKIE = "vatside-guest"


def init_app(app: Flask) -> None:
    """Guard every path of the interface.

    Args:
        app: the app.
    """
    app.before_request(_check)


def _check() -> None:
    if not request.path.startswith(PREFIX + "/"):
        return
    path = request.path.removeprefix(PREFIX)
    # Parts of it are asked of the database, and PostgreSQL takes no NUL.
    if not path.isprintable():
        raise auth.RefusedError("not_text", "path")
    if request.method not in ("GET", "HEAD", "OPTIONS"):
        _check_own_page()
    if path in OPEN:
        return
    if path == GUEST or path.startswith(GUEST + "/"):
        if (request.method, path) != ("POST", GUEST):
            rate.count(guest().id)
        return
    session = paired()
    rate.count(session.device.id)
    if path in REMOVED_MAY:
        return
    if session.is_removed:
        raise auth.RefusedError("removed_device")
    if not session.person.active:
        raise auth.RefusedError("inactive_person")


def _check_own_page() -> None:
    if request.headers.get("X-Vatside") != "1":
        raise auth.RefusedError("header_missing", "X-Vatside", "1")
    if request.mimetype != "application/json":
        raise auth.RefusedError("not_json_type", "Content-Type", "application/json")
    origin = request.headers.get("Origin")
    if origin is not None and origin.partition("://")[2] != request.host:
        raise auth.RefusedError("other_origin", "Origin")
    if request.headers.get("Sec-Fetch-Site", "none") not in ("same-origin", "none"):
        raise auth.RefusedError("other_origin", "Sec-Fetch-Site")


def paired() -> auth.Session:
    """Return who sends this request.

    Raises:
        RefusedError: no paired phone does.
    """
    if "session" not in g:
        clock = settings().clock
        token = sent_token()
        found = token and auth.session_of(token, clock.now_ms(), clock.rate)
        if not found:
            raise auth.RefusedError("not_paired")
        g.session = found
    session: auth.Session = g.session
    return session


def guest() -> StoredLink:
    """Return the link through which this request looks.

    Raises:
        RefusedError: no guest sends it, or the link has ended.
    """
    if "guest" not in g:
        token = request.cookies.get(_cookie_name(GUEST_COOKIE))
        if not token:
            raise auth.RefusedError("no_guest")
        g.guest = links.guest_link(token, settings().clock.now_ms())
    link: StoredLink = g.guest
    return link


def require(role: str) -> Callable[[Callable[P, R]], Callable[P, R]]:
    """Ask for a role before a view is entered.

    Args:
        role: the lowest role that may.
    """

    def wrap(view: Callable[P, R]) -> Callable[P, R]:
        @wraps(view)
        def guarded(*args: P.args, **kwargs: P.kwargs) -> R:
            if not paired().is_at_least(role):
                raise auth.RefusedError("role_too_low", limit=role)
            return view(*args, **kwargs)

        return guarded

    return wrap


def _cookie_name(name: str = PHONE_COOKIE) -> str:
    # The prefix makes browsers hold it to this host and to https.
    return f"__Host-{name}" if request.is_secure else name


def sent_token() -> str | None:
    """Return the token that came with this request, if one did."""
    return request.cookies.get(_cookie_name())


def send_token(answer: Response, token: str) -> None:
    """Let the phone keep its token, out of reach of any script.

    Args:
        answer: what is sent.
        token: the token.
    """
    _send_cookie(answer, _cookie_name(), token, COOKIE_S)


def drop_token(answer: Response) -> None:
    """Let the phone forget its token.

    Args:
        answer: what is sent.
    """
    _send_cookie(answer, _cookie_name(), "", 0)


def send_guest_token(answer: Response, token: str, left_s: int) -> None:
    """Let a guest's browser keep its token until the link ends.

    Args:
        answer: what is sent.
        token: the token.
        left_s: how long the link still lasts [s].
    """
    _send_cookie(answer, _cookie_name(GUEST_COOKIE), token, left_s)


def _send_cookie(answer: Response, name: str, token: str, left_s: int) -> None:
    answer.set_cookie(
        name,
        token,
        max_age=left_s,
        secure=request.is_secure,
        httponly=True,
        samesite="Strict",
        path="/",
    )
