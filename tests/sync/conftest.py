import os

import pytest
from sqlalchemy import create_engine, text

from server import store
from tests.sync.phones import bare_app, close_app

POSTGRES_URL = os.environ.get("TEST_POSTGRES_URL", "")


@pytest.fixture
def app(tmp_path):
    app = bare_app(f"sqlite:///{tmp_path}/vatside.sqlite3")
    with app.app_context():
        yield app
    close_app(app)


# Set TEST_POSTGRES_URL (its database is emptied) to run these on both.
@pytest.fixture(params=["sqlite", "postgres"] if POSTGRES_URL else ["sqlite"])
def either_app(request, tmp_path):
    """Give an app on each database that there is to test with."""
    url = f"sqlite:///{tmp_path}/vatside.sqlite3"
    if request.param == "postgres":
        url = POSTGRES_URL
        _empty(url)
    app = bare_app(url)
    with app.app_context():
        yield app
        store.db.session.remove()
    close_app(app)


def _empty(url):
    engine = create_engine(url)
    with engine.begin() as connection:
        connection.execute(text("DROP SCHEMA public CASCADE"))
        connection.execute(text("CREATE SCHEMA public"))
    engine.dispose()
