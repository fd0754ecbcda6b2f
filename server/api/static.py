"""Send the page, the core for the phone, and the headers that guard both."""

from flask import Blueprint, Flask, Response, abort, current_app, request

from server.api import core_document
from server.api.page_file import Page, import_map_hashes
from server.api.shell import Shell
from server.config import CORE_DIR, Settings

# `trusted-types` names the one policy that the page makes, for addresses of
# its own workers. Source of the list: OWASP ASVS 5.0, chapter 3.4.
POLICY = (
    "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'{hashes}; "
    "style-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; "
    "form-action 'self'; frame-ancestors 'none'; "
    "require-trusted-types-for 'script'; trusted-types vatside"
)
HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
}
YEAR_S = 31_536_000

pages = Blueprint("pages", __name__)


def init_app(app: Flask) -> None:
    """Send the page from the settings' folder, and guard every answer.

    Args:
        app: the app, with its settings in place.
    """
    settings = app.extensions["vatside"]
    assert isinstance(settings, Settings)
    app.extensions["vatside_shell"] = Shell(settings.static_dir, CORE_DIR)
    app.register_blueprint(pages)
    app.after_request(_guard)


def _guard(response: Response) -> Response:
    for name, value in HEADERS.items():
        response.headers.setdefault(name, value)
    response.headers.setdefault("Content-Security-Policy", POLICY.format(hashes=""))
    if request.is_secure:
        response.headers["Strict-Transport-Security"] = f"max-age={_strict_s()}"
    if request.path.startswith("/api/"):
        response.headers["Cache-Control"] = "no-store"
    return response


def _strict_s() -> int:
    # Beside a set-up page 0, which also takes back what was said before: a browser
    # holds plain http for forbidden on every port of a name, and would never reach
    # that page again, nor the app under --no-tls.
    here = current_app.extensions["vatside"]
    assert isinstance(here, Settings)
    return YEAR_S if here.setup_port is None else 0


def _shell() -> Shell:
    shell = current_app.extensions["vatside_shell"]
    assert isinstance(shell, Shell)
    return shell


def _send(page: Page | None) -> Response:
    if page is None:
        abort(404)
    takes = request.accept_encodings.quality
    packed, coding = None, ""
    for copy, name in ((page.brotli, "br"), (page.packed, "gzip")):
        if packed is None and copy is not None and takes(name) > 0:
            packed, coding = copy, name
    response = Response(packed or page.body, content_type=page.mime)
    if packed:
        response.headers["Content-Encoding"] = coding
    response.vary.add("Accept-Encoding")
    # The same bytes packed are another representation, so another tag (RFC 9110
    # section 8.8.3.3).
    response.set_etag(page.etag + (f"-{coding}" if packed else ""))
    # Kept, but asked about before each use: a phone never mixes two versions.
    response.headers["Cache-Control"] = "no-cache"
    response.make_conditional(request)
    return response


def _send_page(page: Page | None) -> Response:
    """Send a page, its import map let through by fingerprint."""
    response = _send(page)
    assert page is not None
    hashes = "".join(f" {text}" for text in import_map_hashes(page.body))
    response.headers["Content-Security-Policy"] = POLICY.format(hashes=hashes)
    return response


@pages.get("/")
def index() -> Response:
    """Send the page itself."""
    return _send_page(_shell().index())


@pages.get("/setup")
def check() -> Response:
    """Send the page on which a phone checks itself and joins."""
    return _send_page(_shell().file("setup/check.html"))


@pages.get("/setup/ok.svg")
def probe() -> Response:
    """Send the file by which the set-up page on plain http finds this address."""
    response = _send(_shell().file("setup/ok.svg"))
    response.headers["Cross-Origin-Resource-Policy"] = "cross-origin"
    return response


@pages.get("/core.json")
def core() -> Response:
    """Send the core's files, for the interpreter on the phone."""
    return _send(_shell().core())


@pages.get("/core-later.json")
def core_later() -> Response:
    """Send the files of the core that a phone starts without."""
    return _send(_shell().core(core_document.LATER))


@pages.get("/sw.js")
def worker() -> Response:
    """Send the service worker, which lists what a phone keeps."""
    return _send(_shell().worker())


@pages.get("/index.html")
def index_by_name() -> Response:
    """Send the page under its file's name too."""
    return index()


# Named one by one: a rule for every path would also take the interface's.
@pages.get("/<any(js, css, lib, icons, setup):folder>/<path:path>")
def file(folder: str, path: str) -> Response:
    """Send one file of the page; 404 for anything that is not for sending."""
    return _send(_shell().file(f"{folder}/{path}"))


@pages.get("/<any('manifest.webmanifest', 'favicon.ico'):name>")
def top_file(name: str) -> Response:
    """Send one of the few files that browsers look for at the top."""
    return _send(_shell().file(name))
