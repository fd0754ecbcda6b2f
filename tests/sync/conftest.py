import pytest

from tests.sync.phones import close_app, make_app


@pytest.fixture
def app(tmp_path):
    app = make_app(tmp_path)
    with app.app_context():
        yield app
    close_app(app)
