"""The page that brings a phone to trust this server, over plain http.

Whoever opens it trusts nothing yet, and whoever sits on the network may read
along or change it. So it holds nothing of the app and nothing secret, takes no
input, and repeats nothing of the request. The one-time code that the QR carries
stands behind the #, which browsers send to nobody.
"""

from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlsplit

from flask import Flask, Response, jsonify, redirect

from server.config import real_now_ms
from server.setup.profile import profile
from server.shapes.setup import SetupFacts

MIME = {
    ".html": "text/html; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".svg": "image/svg+xml",
}
# Cross-Origin-Opener-Policy is left out: browsers ignore it on plain http, and
# say so on their console.
HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Cache-Control": "no-store",
}
POLICY = (
    "default-src 'self'; connect-src 'self'{probed}; object-src 'none'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'; "
    "require-trusted-types-for 'script'; trusted-types 'none'"
)
# The one file that the page asks other names of this server for, to learn
# whether the phone finds and trusts them.
PROBE = "ok.svg"


def create_setup_app(facts: Callable[[], SetupFacts]) -> Flask:
    """Make the app that is served over plain http beside the real one.

    Args:
        facts: asked at each request, since certificates and addresses are renewed
            while the server runs; it must not fail.
    """
    app = Flask("server.setup", static_folder=None)

    @app.get("/")
    def page() -> Response:
        return _file(facts(), "index.html")

    @app.get("/setup/<name>")
    def file(name: str) -> Response:
        return _file(facts(), name)

    @app.get("/root.crt")
    def certificate() -> Response:
        return _download(facts().root_der, "application/x-x509-ca-cert", "crt")

    @app.get("/root.mobileconfig")
    def configuration() -> Response:
        mime = "application/x-apple-aspen-config"
        return _download(profile(facts()), mime, "mobileconfig")

    @app.get("/facts.json")
    def told() -> Response:
        now = facts()
        return jsonify(
            fingerprint=now.root_sha256,
            secure_urls=now.secure_urls,
            now_ms=real_now_ms(),
        )

    @app.get("/<path:path>")
    def elsewhere(path: str) -> Response:
        return _home()

    @app.after_request
    def guard(response: Response) -> Response:
        for name, value in HEADERS.items():
            response.headers.setdefault(name, value)
        policy = POLICY.format(probed=_probed(facts().secure_urls))
        response.headers["Content-Security-Policy"] = policy
        return response

    return app


def _home() -> Response:
    # A browser keeps what stands behind the # on the way.
    answer = redirect("/")
    assert isinstance(answer, Response)
    return answer


def _file(facts: SetupFacts, name: str) -> Response:
    folder: Path = facts.static_dir / "setup"
    mime = MIME.get(Path(name).suffix)
    if mime is None or name.startswith(".") or not (folder / name).is_file():
        return _home()
    answer = Response((folder / name).read_bytes(), content_type=mime)
    if name == PROBE:
        answer.headers["Cross-Origin-Resource-Policy"] = "cross-origin"
    return answer


def _download(body: bytes, mime: str, suffix: str) -> Response:
    answer = Response(body, content_type=mime)
    named = f'attachment; filename="vatside-root.{suffix}"'
    answer.headers["Content-Disposition"] = named
    return answer


def _probed(secure_urls: tuple[str, ...]) -> str:
    """Return the sources that the page may ask: each name, secure and plain.

    Args:
        secure_urls: https addresses of the app.
    """
    parts = [urlsplit(url) for url in secure_urls]
    # A policy has no way to name an address of IPv6.
    named = [part for part in parts if "[" not in part.netloc]
    return "".join(f" https://{one.netloc} http://{one.hostname}:*" for one in named)
