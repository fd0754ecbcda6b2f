import pytest

from tests.sync.phones import close_app, make_app, migrated


@pytest.fixture
def app(tmp_path):
    (tmp_path / "vatside.sqlite3").write_bytes(migrated())
    app = make_app(tmp_path)
    with app.app_context():
        yield app
    close_app(app)
