import pytest
from alembic import command
from sqlalchemy import text

from server import store
from server.config import real_now_ms
from server.store import migrate, pins
from tests.sync.phones import bare_app, close_app


@pytest.mark.parametrize("is_used", [True, False])
def test_a_creamery_that_worked_without_pins_keeps_what_its_phones_hold(
    tmp_path, is_used, monkeypatch
):
    url = f"sqlite:///{tmp_path}/vatside.sqlite3"
    with monkeypatch.context() as patch:
        patch.setattr(
            migrate.command,
            "upgrade",
            lambda config, _, upgrade=command.upgrade: upgrade(config, "0005"),
        )
        before = bare_app(url)
    with before.app_context():
        engine = store.db.engine
        if is_used:
            with engine.begin() as connection:
                connection.execute(text("UPDATE head SET n = 3"))
    close_app(before)
    began_ms = real_now_ms()
    after = bare_app(url)
    with after.app_context():
        since_ms = pins.proofs_since_ms()
    close_app(after)
    assert began_ms <= since_ms <= real_now_ms() if is_used else since_ms == 0
