"""What is kept of a code does not tell the code, and each code ends."""

import hashlib
import sqlite3
import stat
from contextlib import closing

import pytest
from alembic import command
from sqlalchemy import create_engine, text

from server import auth
from server.auth import code_key, codes
from server.store import migrate
from tests.sync.phones import NOON_MS, a_uuid

DAY_MS = 86_400_000


def pair(code, now_ms=NOON_MS, name=None):
    asking = auth.Asking(a_uuid(), "Pocket", name, "here", None)
    return auth.pair(code, asking, now_ms, 1)


def invite():
    person = auth.add_person("Ada", "maker", NOON_MS).id
    return auth.start_pairing(person, person, NOON_MS, 1)


def kept_of_codes(tmp_path):
    with closing(sqlite3.connect(tmp_path / "vatside.sqlite3")) as opened:
        rows = opened.execute("SELECT long_hash, short_hash FROM pairings").fetchall()
    return {one for row in rows for one in row if one}


def test_nothing_kept_of_a_code_can_be_tried_out_without_the_key(app, tmp_path):
    made, owners = invite(), auth.owner_code(NOON_MS, 1)
    plain = {
        hashlib.sha256(codes.as_meant(code).encode()).hexdigest()
        for code in (made.short, made.long, owners.code)
    }
    kept = kept_of_codes(tmp_path)
    assert len(kept) == 3
    assert not kept & plain
    pair(made.short)
    pair(owners.code, name="Olive")


def test_the_key_is_made_once_and_the_servers_user_alone_may_read_it(app, tmp_path):
    first = code_key.key_of(tmp_path)
    assert code_key.key_of(tmp_path) == first
    assert len(first) == 32
    assert stat.S_IMODE((tmp_path / code_key.NAME).stat().st_mode) == 0o600
    assert code_key.key_of(tmp_path / "..") != first
    (tmp_path / ".." / code_key.NAME).unlink()


def test_another_key_ends_the_codes_that_are_open_and_no_phone(app, tmp_path):
    token = pair(invite().long).token
    made = invite()
    (tmp_path / code_key.NAME).unlink()
    with pytest.raises(auth.RefusedError, match="wrong_code"):
        pair(made.long)
    assert auth.session_of(token, NOON_MS, 1) is not None
    pair(invite().short)


def test_a_file_that_is_no_key_is_named(app, tmp_path):
    (tmp_path / code_key.NAME).write_bytes(b"short")
    with pytest.raises(ValueError, match="is not a key for codes"):
        invite()


def test_a_code_of_the_owner_works_for_a_day(app):
    made = auth.owner_code(NOON_MS, 1)
    assert made.expires_ms == NOON_MS + DAY_MS
    with pytest.raises(auth.RefusedError, match="wrong_code"):
        pair(made.code, NOON_MS + DAY_MS, "Olive")
    assert auth.people() == []
    pair(made.code, NOON_MS + DAY_MS - 1, "Olive")


def test_on_a_fast_clock_it_works_for_a_real_day(app):
    assert auth.owner_code(NOON_MS, 60).expires_ms == NOON_MS + 60 * DAY_MS


@pytest.mark.parametrize("typed", ["", "\ud800", "\0", "é" * 26, "🧀"])
def test_anything_may_be_typed_for_a_code(app, typed):
    with pytest.raises(auth.RefusedError, match="wrong_code"):
        pair(typed)


def test_open_codes_of_an_older_version_end_and_used_ones_stay_known(
    database_url, tmp_path
):
    # Older than the tables that stand in either of them.
    (tmp_path / "vatside.sqlite3").unlink(missing_ok=True)
    engine = create_engine(database_url)
    with engine.begin() as connection:
        config = migrate._config(connection)
        if engine.dialect.name == "postgresql":
            connection.execute(text("DROP SCHEMA public CASCADE"))
            connection.execute(text("CREATE SCHEMA public"))
        command.upgrade(config, "0006")
        connection.execute(
            text(
                "INSERT INTO pairings (long_sha256, short_sha256, used_ms)"
                " VALUES ('open', 'o', NULL), ('used', 'u', 7)"
            )
        )
        command.upgrade(config, "head")
        rows = connection.execute(
            text("SELECT long_hash, short_hash, expires_ms, used_ms FROM pairings")
        ).all()
    engine.dispose()
    assert [tuple(row) for row in rows] == [("used", "u", 7, 7)]
