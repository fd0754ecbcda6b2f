"""From SQLite to PostgreSQL with every row and number."""

import pytest
from sqlalchemy import create_engine, select, text

from server import auth, cli, store
from server.store import log, pushes
from server.store.copies import BackupError
from server.store.hold import SERVER, InUseError, hold
from server.store.models import Base
from server.store.move import move
from tests.sync.phones import NOON_MS, a_uuid, bare_app, close_app, make_app

MANY = 1100  # more than goes at once


@pytest.fixture
def data(tmp_path):
    """Give a data folder in which something stands in many tables."""
    app = make_app(tmp_path)
    with app.app_context():
        person = auth.add_person("Ada", "owner", NOON_MS).id
        code = auth.start_pairing(person, person, NOON_MS, 1).long
        asking = auth.Asking(a_uuid(), "Pocket", None, "here", None)
        auth.pair(code, asking, NOON_MS, 1)
        rows = [
            log.NewEvent(a_uuid(), None, None, n, None, "0" * 64, '"é🧀"')
            for n in range(MANY)
        ]
        log.add_events(rows, NOON_MS)
        pushes.note_sent("one", "alarm", "tag", 201, NOON_MS)
    close_app(app)
    return tmp_path


def rows_of(url):
    """Return all rows but those of the one head, whose epoch is new."""
    engine = create_engine(url)
    with engine.connect() as connection:
        found = {
            table.name: sorted(map(repr, connection.execute(select(table))))
            for table in Base.metadata.sorted_tables
            if table.name != "head"
        }
    engine.dispose()
    return found


def test_every_row_is_there_and_life_goes_on(data, postgres, capsys, monkeypatch):
    url = postgres.new_database()
    sqlite = f"sqlite:///{data}/vatside.sqlite3"
    before = rows_of(sqlite)
    monkeypatch.setenv("DATABASE_URL", url)
    assert cli.main(["move", "--data", str(data)]) == 0
    assert f"Copied {MANY} events" in capsys.readouterr().out
    assert rows_of(url) == before == rows_of(sqlite)
    assert len(before["events"]) == MANY
    for name in ("recipes", "people", "devices", "pairings", "push_log", "leases"):
        assert before[name], name
    app = make_app(data, url)
    with app.app_context():
        event = log.NewEvent(a_uuid(), None, None, None, None, "0" * 64, "{}")
        assert log.add_events([event], NOON_MS) == [MANY + 1]
        # Numbers that the database gives itself go on as well.
        assert auth.owner_code(NOON_MS, 1, even_if_paired=True) is not None
        pushes.note_sent("one", "alarm", "tag", 201, NOON_MS)
    close_app(app)


def test_it_is_another_life_of_the_database(data, postgres):
    url = postgres.new_database()
    move(data / "vatside.sqlite3", url)
    epochs = set()
    for address in (f"sqlite:///{data}/vatside.sqlite3", url):
        app = bare_app(address)
        with app.app_context():
            epochs.add(store.epoch())
        close_app(app)
    assert len(epochs) == 2


def test_a_database_that_holds_something_is_refused_and_left_as_it_is(data, postgres):
    url = postgres.new_database()
    app = bare_app(url)
    with app.app_context():
        auth.add_person("Bo", "maker", NOON_MS)
    close_app(app)
    before = rows_of(url)
    with pytest.raises(BackupError, match="not empty"):
        move(data / "vatside.sqlite3", url)
    assert rows_of(url) == before


def test_a_move_under_a_running_server_is_refused(data, postgres):
    with hold(data / "vatside.sqlite3", SERVER), pytest.raises(InUseError):
        move(data / "vatside.sqlite3", postgres.new_database())


def test_a_move_to_nowhere_is_refused_in_words(data, capsys, monkeypatch):
    monkeypatch.delenv("DATABASE_URL", raising=False)
    assert cli.main(["move", "--data", str(data)]) == 1
    assert "DATABASE_URL" in capsys.readouterr().err


def test_a_database_that_is_out_of_reach_is_named(data, tmp_path):
    with pytest.raises(BackupError, match="cannot be used"):
        move(
            data / "vatside.sqlite3",
            f"postgresql+psycopg://postgres@/none?host={tmp_path}",
        )


def test_a_dump_put_back_begins_a_new_life_when_told(data, postgres, tmp_path):
    url = postgres.new_database()
    move(data / "vatside.sqlite3", url)
    dump, fresh = postgres.folder / "dump", "restored"
    socket = ["-h", str(postgres.folder), "-U", "postgres"]
    name = url.split("?")[0].rpartition("/")[2]
    postgres.run("pg_dump", *socket, "--format=custom", f"--file={dump}", name)
    postgres.create(fresh)
    postgres.run("pg_restore", *socket, f"--dbname={fresh}", str(dump))
    engine = create_engine(postgres.url(fresh))
    with engine.begin() as connection:
        connection.execute(text("UPDATE head SET epoch = gen_random_uuid()"))
    engine.dispose()
    assert rows_of(postgres.url(fresh)) == rows_of(url)
    epochs = set()
    for address in (url, postgres.url(fresh)):
        app = bare_app(address)
        with app.app_context():
            epochs.add(store.epoch())
            assert store.head_n() == MANY
        close_app(app)
    assert len(epochs) == 2
