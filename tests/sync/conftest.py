import pytest

from server import store
from tests.sync.phones import bare_app, close_app


@pytest.fixture
def app(tmp_path):
    app = bare_app(f"sqlite:///{tmp_path}/vatside.sqlite3")
    with app.app_context():
        yield app
    close_app(app)


@pytest.fixture
def either_app(database_url):
    """Give an app on each database that there is to test with."""
    app = bare_app(database_url)
    with app.app_context():
        yield app
        store.db.session.remove()
    close_app(app)
