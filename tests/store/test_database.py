import sqlite3
import threading
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError, OperationalError

from server import store
from server.store import copies, database, log
from server.store.head import locked_head
from server.store.models import Base, LoggedEvent
from tests.sync.phones import NOON_MS, bare_app, close_app

FULL = 2  # sqlite.org/pragma.html#pragma_synchronous: OFF 0, NORMAL 1, FULL 2


def new_event(id_="a", **changed):
    row = log.NewEvent(id_, "make", "device", 1, "note_added", "0" * 64, "{}")
    return row._replace(**changed)


def database_file():
    return Path(store.db.engine.url.database)


def test_every_connection_of_the_pool_waits_for_the_disk(app):
    engine = store.db.engine
    connections = [engine.connect() for _ in range(5)]
    for connection in connections:
        for pragma, wanted in (
            ("synchronous", FULL),
            ("journal_mode", "wal"),
            ("foreign_keys", 1),
            ("busy_timeout", database.BUSY_MS),
        ):
            found = connection.execute(text(f"PRAGMA {pragma}")).scalar_one()
            assert found == wanted, pragma
    for connection in connections:
        connection.close()


def test_a_database_that_cannot_keep_a_write_ahead_log_is_refused(app):
    # SQLite has no write-ahead log for a database in memory.
    with pytest.raises(RuntimeError, match="keeps journal_mode=memory"):
        database._on_sqlite_connect(sqlite3.connect(":memory:"), None)


def test_a_writer_holds_the_lock_from_its_first_word(app):
    other = sqlite3.connect(store.db.engine.url.database, timeout=0)
    with store.writing(), pytest.raises(sqlite3.OperationalError, match="locked"):
        other.execute("BEGIN IMMEDIATE")
    other.execute("BEGIN IMMEDIATE")
    other.close()


def test_a_reader_is_not_kept_out_by_a_writer(app):
    seen = []

    def read():
        with app.app_context():
            seen.append(store.count_events())

    with store.writing():
        log.add_events([new_event()], NOON_MS)
        thread = threading.Thread(target=read)
        thread.start()
        thread.join(timeout=5)
    assert seen == [0]
    assert store.count_events() == 1


def test_a_reader_sees_one_state_though_a_writer_comes_between(database_url):
    app = bare_app(database_url)
    with app.app_context():
        with store.reading():
            before = store.head_n()
            with ThreadPoolExecutor(1) as pool:
                pool.submit(add_elsewhere, app).result()
            assert (store.head_n(), store.count_events()) == (before, 0)
        assert store.count_events() == 1
    close_app(app)


def add_elsewhere(app):
    with app.app_context():
        log.add_events([new_event()], NOON_MS)
        store.db.session.remove()


def add_and_fail():
    with store.writing():
        log.add_events([new_event()], NOON_MS)
        raise ZeroDivisionError


def test_a_failure_takes_everything_back(app):
    with pytest.raises(ZeroDivisionError):
        add_and_fail()
    assert (store.head_n(), store.count_events()) == (0, 0)
    assert log.add_events([new_event()], NOON_MS) == [1]


def add_within_and_fail():
    with store.writing():
        with store.writing():
            log.add_events([new_event()], NOON_MS)
        raise ZeroDivisionError


def test_an_inner_block_joins_the_outer_one(app):
    with pytest.raises(ZeroDivisionError):
        add_within_and_fail()
    assert store.count_events() == 0


def test_a_reader_cannot_become_a_writer(app):
    with store.reading(), pytest.raises(RuntimeError, match="cannot become"):
        log.add_events([new_event()], NOON_MS)
    assert store.count_events() == 0


def test_a_reader_lets_its_connection_go(app):
    store.head_n()
    assert store.db.engine.pool.checkedout() == 0
    log.add_events([new_event()], NOON_MS)
    assert store.db.engine.pool.checkedout() == 0


def test_the_id_is_unique_and_nothing_else_is(app):
    same_but_id = [new_event("a"), new_event("b")]
    assert log.add_events(same_but_id, NOON_MS) == [1, 2]
    with pytest.raises(IntegrityError):
        log.add_events([new_event("a", seq=2, sha256="1" * 64)], NOON_MS)
    assert store.head_n() == 2
    unique = [key for key in LoggedEvent.__table__.columns if key.unique]
    assert [column.name for column in unique] == ["id"]


def test_there_is_one_head_row_for_ever(app):
    with pytest.raises(IntegrityError), store.writing() as session:
        session.execute(text("INSERT INTO head VALUES (2, 0, 0, 'x')"))


def test_the_migrations_make_what_the_models_say(app):
    with store.db.engine.connect() as connection:
        context = MigrationContext.configure(connection)
        assert compare_metadata(context, Base.metadata) == []


def test_starting_again_changes_nothing(app, tmp_path):
    log.add_events([new_event()], NOON_MS)
    epoch = store.epoch()
    again = bare_app(str(store.db.engine.url))
    with again.app_context():
        assert (store.epoch(), store.head_n()) == (epoch, 1)
    close_app(again)


def test_workers_that_start_together_migrate_once(tmp_path):
    url = f"sqlite:///{tmp_path}/new.sqlite3"
    apps, failed = [], []

    def start():
        try:
            apps.append(bare_app(url))
        except OperationalError as error:
            failed.append(error)

    threads = [threading.Thread(target=start) for _ in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    epochs = set()
    for app in apps:
        with app.app_context():
            epochs.add(store.epoch())
        close_app(app)
    assert (failed, len(apps), len(epochs)) == ([], 4, 1)


def test_a_new_epoch_lasts(app):
    first = store.epoch()
    second = store.new_epoch()
    assert second == store.epoch() != first


def test_a_backup_is_whole_though_the_log_is_in_use(app, tmp_path):
    log.add_events([new_event()], NOON_MS)
    with store.writing():
        locked_head()  # a writer at work does not keep the backup out
        copies.copy(database_file(), tmp_path / "copy")
    log.add_events([new_event("b")], NOON_MS)
    copy = bare_app(f"sqlite:///{tmp_path}/copy")
    with copy.app_context():
        assert [row.n for row in store.every_event()] == [1]
        assert log.add_events([new_event("b")], NOON_MS) == [2]
    close_app(copy)
