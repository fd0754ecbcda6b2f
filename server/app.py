"""Put the server together."""

import json
import logging
from pathlib import Path

from flask import Flask

from server import alarm, api, auth, live, store
from server.alarm import keys
from server.api.peers import believe_proxies
from server.auth import code_key
from server.config import (
    MAX_BODY_BYTES,
    RECIPES_DIR,
    Settings,
    from_environment,
    now_ms,
)
from server.core.desk.recipes import check_recipe
from server.store import receipts
from server.store.files import make_folder
from server.store.recipes import store_recipe

log = logging.getLogger(__name__)


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
    make_folder(settings.data_dir)
    app = Flask("server", static_folder=None)
    app.extensions["vatside"] = settings
    app.config.update(
        SQLALCHEMY_DATABASE_URI=settings.sqlalchemy_url,
        MAX_CONTENT_LENGTH=MAX_BODY_BYTES,
    )
    app.json.sort_keys = False  # type: ignore[attr-defined]
    if settings.proxy_hops:
        believing = believe_proxies(
            app.wsgi_app, settings.proxy_hops, settings.proxy_from
        )
        app.wsgi_app = believing  # type: ignore[assignment, method-assign]
    store.init_app(app)
    live.init_app(app, settings.viewers, auth.still_good)
    alarm.init_app(app, live.ask)
    api.init_app(app)
    with app.app_context():
        make_keys(settings)
        import_recipes(RECIPES_DIR)
    return app


def make_keys(settings: Settings) -> None:
    """Make the keys of the data folder now: at their first use it may be full.

    Args:
        settings: what the app runs with.
    """
    try:
        keys.private_key(settings.data_dir)
        code_key.key_of(settings.data_dir)
        receipts.make_ready()
    except (OSError, ValueError) as problem:
        # Whoever needs the key says so again; all else works without.
        log.error("a key of the data folder is not ready: %s", problem)


def import_recipes(folder: Path) -> None:
    """Keep the recipes that came with the program, each content once.

    A bundled recipe that has changed becomes a new version; what is kept is
    never overwritten, for makes refer to it.

    Args:
        folder: where the recipes' files are.

    Raises:
        ValueError: a file is not a sound recipe.
    """
    for file in sorted(folder.glob("*.json")):
        recipe = json.loads(file.read_text("utf-8"))
        problems = check_recipe(recipe)
        if problems:
            raise ValueError(f"{file.name} is not a sound recipe: {problems[0]}")
        store_recipe(recipe, now_ms(), None)
