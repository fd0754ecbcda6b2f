"""The HTTP interface: one blueprint a resource, all under /api/v1.

A module here offers `blp`, its blueprint; this list is the one place that
names them.
"""

from importlib import import_module
from importlib.util import find_spec

from flask import Flask
from flask_smorest import Api

PREFIX = "/api/v1"
RESOURCES = (
    "health",
    "pairing",
    "people",
    "sync",
    "live",
    "recipes",
    "makes",
    "needs_look",
)


def init_app(app: Flask) -> Api:
    """Register every resource, the page and the OpenAPI document.

    Args:
        app: the app, with its settings and its store already in place.

    Returns:
        The documented interface.
    """
    app.config.update(
        API_TITLE="Vatside",
        API_VERSION="v1",
        OPENAPI_VERSION="3.0.3",
        OPENAPI_URL_PREFIX=PREFIX,
        OPENAPI_JSON_PATH="openapi.json",
    )
    api = Api(app)
    for name in RESOURCES:
        if find_spec(f"server.api.{name}") is None:
            continue
        module = import_module(f"server.api.{name}")
        api.register_blueprint(module.blp, url_prefix=PREFIX)
    for name in ("errors", "static"):
        if find_spec(f"server.api.{name}") is not None:
            import_module(f"server.api.{name}").init_app(app)
    return api
