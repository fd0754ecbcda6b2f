"""The HTTP interface: one blueprint a resource, all under /api/v1."""

from flask import Flask

from server.api import (
    alarms,
    errors,
    guard,
    health,
    hosts,
    links,
    live,
    makes,
    needs_look,
    packing,
    pairing,
    people,
    pins,
    push,
    rate,
    recipes,
    security,
    static,
    sync,
)

RESOURCES = (
    health,
    pairing,
    people,
    pins,
    sync,
    live,
    recipes,
    makes,
    needs_look,
    alarms,
    push,
    links,
)


def init_app(app: Flask) -> None:
    """Register every resource, the page and the OpenAPI document.

    Args:
        app: the app, with its settings and its store already in place.
    """
    app.config.update(
        API_TITLE="Vatside",
        API_VERSION="v1",
        OPENAPI_VERSION="3.0.3",
        OPENAPI_URL_PREFIX=guard.PREFIX,
        OPENAPI_JSON_PATH="openapi.json",
    )
    rate.init_app(app)
    security.init_app(app)
    hosts.init_app(app)
    documented = errors.DocumentedApi(app)
    for resource in RESOURCES:
        documented.register_blueprint(resource.blp, url_prefix=guard.PREFIX)
    guard.init_app(app)
    errors.init_app(app)
    static.init_app(app)
    packing.init_app(app)
