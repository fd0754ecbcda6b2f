import pytest

from server import store
from tests.sync.phones import bare_app, close_app, migrated


@pytest.fixture
def app(tmp_path):
    file = tmp_path / "vatside.sqlite3"
    file.write_bytes(migrated())
    app = bare_app(f"sqlite:///{file}")
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
