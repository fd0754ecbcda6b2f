import pytest

from server.app import create_app
from server.config import Settings
from tests.alarm.push_service import PushService
from tests.sync.phones import HandClock, close_app, migrated


@pytest.fixture
def service():
    made = PushService()
    yield made
    made.close()


@pytest.fixture
def clock():
    return HandClock()


@pytest.fixture
def app(tmp_path, clock):
    settings = Settings(
        data_dir=tmp_path,
        clock=clock,
        static_dir=tmp_path,
        public_url="https://floor.creamery.org",
        push_contact="mailto:owner@creamery.org",
        push_hosts=("127.0.0.1",),
    )
    (tmp_path / "vatside.sqlite3").write_bytes(migrated())
    app = create_app(settings)
    with app.app_context():
        yield app
    close_app(app)
