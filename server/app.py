"""Put the server together."""

from flask import Flask
from werkzeug.middleware.proxy_fix import ProxyFix

from server import api, store
from server.config import MAX_BODY_BYTES, Settings, from_environment


def create_app(settings: Settings | None = None) -> Flask:
    """Make the app that answers phones and viewers.

    Nothing is started here: threads begin with the first request that needs
    them, so that the app may be made before the workers fork.

    Args:
        settings: what to run with; None to read the environment.

    Returns:
        The app, its database brought up to date and its recipes imported.
    """
    settings = settings or from_environment()
    settings.data_dir.mkdir(parents=True, exist_ok=True)
    app = Flask("server", static_folder=None)
    app.extensions["vatside"] = settings
    app.config.update(
        SQLALCHEMY_DATABASE_URI=settings.sqlalchemy_url,
        MAX_CONTENT_LENGTH=MAX_BODY_BYTES,
        TRUSTED_HOSTS=list(settings.hosts) or None,
    )
    app.json.sort_keys = False  # type: ignore[attr-defined]
    if settings.proxy_hops:
        hops = settings.proxy_hops
        wsgi_app = ProxyFix(app.wsgi_app, hops, hops, hops, hops)
        app.wsgi_app = wsgi_app  # type: ignore[method-assign]
    store.init_app(app)
    api.init_app(app)
    return app
