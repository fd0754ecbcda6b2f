"""A PostgreSQL of the tests' own, on a socket in a folder that goes with it."""

import os
import pwd
import shutil
import subprocess
import tempfile
from pathlib import Path

import pytest
from sqlalchemy import create_engine, make_url, text

from server.store.migrate import bring_up_to_date
from tests.sync.phones import migrated

DEBIAN = Path("/usr/lib/postgresql")
QUICK = "-c fsync=off -c listen_addresses='' -c max_connections=120"


def programs():
    """Return the folder of PostgreSQL's programs, None when there are none."""
    on_path = shutil.which("initdb")
    found = [Path(on_path).resolve().parent] if on_path else []
    found += sorted(DEBIAN.glob("*/bin"), key=lambda path: -int(path.parent.name))
    return next((path for path in found if (path / "pg_dump").exists()), None)


def why_not():
    """Return why there can be no cluster here, None when there can."""
    if programs() is None:
        return "PostgreSQL is not installed here (apt-get install postgresql)"
    if os.getuid() == 0 and _postgres() is None:
        return "PostgreSQL refuses to run as root, and there is no user postgres"
    return None


def short_folder():
    """Return where temporary files go: the address of a socket has 107 bytes."""
    usual = tempfile.gettempdir()
    return usual if len(usual) < 40 else "/tmp"


def _postgres():
    try:
        return pwd.getpwnam("postgres")
    except KeyError:
        return None


class Cluster:
    """A running PostgreSQL; each database in it is a test's own."""

    def __init__(self):
        self.folder = Path(tempfile.mkdtemp(prefix="vat-pg-", dir=short_folder()))
        self.user = "postgres" if os.getuid() == 0 else pwd.getpwuid(os.getuid())[0]
        if os.getuid() == 0:
            os.chown(self.folder, _postgres().pw_uid, _postgres().pw_gid)
        data = str(self.folder / "data")
        self.run("initdb", "-D", data, "-U", "postgres", "-A", "trust", "-N")
        options = f"{QUICK} -k {self.folder}"
        log = str(self.folder / "log")
        self.run("pg_ctl", "-D", data, "-w", "-l", log, "-o", options, "start")
        self.made = 0
        # Migrated once: a copy of it takes less than all the migrations.
        self.create("pattern")
        engine = create_engine(self.url("pattern"))
        bring_up_to_date(engine)
        engine.dispose()

    def run(self, program, *arguments):
        subprocess.run(
            [str(programs() / program), *arguments],
            check=True,
            user=self.user if os.getuid() == 0 else None,
            cwd=self.folder,
            stdout=subprocess.DEVNULL,
        )

    def url(self, name):
        return f"postgresql+psycopg://postgres@/{name}?host={self.folder}"

    def tell(self, words):
        engine = create_engine(self.url("postgres"), isolation_level="AUTOCOMMIT")
        with engine.connect() as connection:
            connection.execute(text(words))
        engine.dispose()

    def create(self, name, pattern="template1"):
        self.tell(f"CREATE DATABASE {name} TEMPLATE {pattern}")

    def new_database(self):
        """Return the address of a database that holds no entry."""
        self.made += 1
        self.create(f"vat{self.made}", "pattern")
        return self.url(f"vat{self.made}")

    def drop(self, url):
        """Let a database go, whoever still holds it."""
        name = make_url(url).database
        self.tell(f"DROP DATABASE {name} WITH (FORCE)")

    def close(self):
        data = str(self.folder / "data")
        self.run("pg_ctl", "-D", data, "-m", "immediate", "-w", "stop")
        shutil.rmtree(self.folder)


@pytest.fixture(scope="session")
def postgres():
    """Give a PostgreSQL, or skip and say why there is none."""
    reason = why_not()
    if reason:
        pytest.skip(reason)
    cluster = Cluster()
    yield cluster
    cluster.close()


@pytest.fixture(params=["sqlite", "postgres"])
def database_url(request, tmp_path):
    """Give the address of an empty database of each kind."""
    if request.param == "sqlite":
        file = tmp_path / "vatside.sqlite3"
        file.write_bytes(migrated())
        yield f"sqlite:///{file}"
        return
    cluster = request.getfixturevalue("postgres")
    url = cluster.new_database()
    yield url
    cluster.drop(url)
