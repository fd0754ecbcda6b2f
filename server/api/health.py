"""Tell whether the server answers, its version, its room and its certificate."""

from importlib.metadata import PackageNotFoundError, version

from flask import Response, jsonify

from server import tls
from server.api.body import Blueprint
from server.config import real_now_ms, settings
from server.store import disk

blp = Blueprint("health", __name__, description="Whether the server answers")


def app_version() -> str:
    """Return the version of this program, "0" in an uninstalled checkout."""
    try:
        return version("vatside")
    except PackageNotFoundError:
        return "0"


@blp.get("/health")
@blp.response(200)
def health() -> Response:
    """Answer that the server runs, and whether there is room to record.

    Needs no pairing. 200 also where the disk is full: then `ok` is false, and
    what the server knows is still shown and rung. `certificate` is null where
    plain http is served; its `findings` are to be seen to. `secure_url` is where
    a phone that came over plain http can go on, null where none is known.
    """
    found = disk.look()
    return jsonify(
        ok=found.state not in disk.STOPPED,
        version=app_version(),
        disk={**found._asdict(), "text": found.text},
        certificate=tls.state(settings(), real_now_ms()),
        secure_url=_secure_url(),
    )


def _secure_url() -> str | None:
    url = settings().public_url
    return f"{url}/setup" if url.startswith("https://") else None
