"""Tell whether the server answers, and which version it is."""

from importlib.metadata import PackageNotFoundError, version

from flask import Response, jsonify

from server.api.body import Blueprint

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
    """Answer that the server runs. Needs no pairing; says nothing else."""
    return jsonify(ok=True, version=app_version())
