"""Which database the desk works on, and opening it."""

from __future__ import annotations

import getpass
import tomllib
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.store.database import Database

_APPLICATION = "paperboard-tracker"


@dataclass
class Desk:
    """A database in use, the day that counts as today, and who works here (for the change log)."""

    database: str
    who: str
    said_today: date | None = None
    _opened: list[Database] = field(default_factory=list, repr=False)

    @property
    def today(self) -> date:
        """The day given, else the day that the database itself is set to (the demo's), else the calendar's.

        The calendar's is looked up each time: a window may stand open overnight.
        """
        return self.said_today or self._set_day or date.today()

    @cached_property
    def _set_day(self) -> date | None:
        from tracker.store import settings

        with self.store.reading() as connection:
            fixed = settings.get(connection, settings.TODAY)
        return date.fromisoformat(fixed) if isinstance(fixed, str) else None

    @cached_property
    def store(self) -> Database:
        """The open database; opened (made, brought up to date) when first asked for."""
        from tracker.store.database import CannotOpen
        from tracker.store.opening import open_database

        try:
            opened = open_database(self.database)
        except CannotOpen as problem:
            raise Trouble(str(problem)) from problem
        self._opened.append(opened)
        return opened

    def close(self) -> None:
        """Lets go of the database. The desk may be used again: it then opens it anew."""
        while self._opened:
            self._opened.pop().close()
        self.__dict__.pop("store", None)


def open_desk(database: str | None = None, today: date | None = None, who: str | None = None) -> Desk:
    """A desk on the database named (a path of a SQLite file, or postgresql+psycopg://…), else on the user's own.

    Trouble when it can't be opened, or was made by a newer version.
    """
    desk = desk_on(database, today, who)
    _ = desk.store
    return desk


def desk_on(database: str | None = None, today: date | None = None, who: str | None = None) -> Desk:
    """The same, but the database is opened (and made, if there is none) only once something needs it."""
    return Desk(_expanded(database or default_database()), who or _user(), today)


def load_store(desk: Desk) -> None:
    """Loads what it takes to open the desk's database and to store a file, while there is time for it.

    Opens nothing: a file that can't be read makes no database.
    """
    for module in ("answers", "files", "layouts", "opening", "settings"):
        import_module(f"tracker.store.{module}")
    if not is_server(desk.database):
        import_module("sqlalchemy.dialects.sqlite")


def is_there(desk: Desk) -> bool:
    """Its database exists already. A server counts as there: whether it answers shows when it is asked."""
    return is_server(desk.database) or Path(desk.database).is_file()


def desk_if_there(database: str | None = None) -> Desk | None:
    """A desk only where its database exists already."""
    desk = desk_on(database)
    return desk if is_there(desk) else None


def refuse_missing(desk: Desk) -> None:
    """Trouble where there is no database yet: looking must not make one."""
    if not is_there(desk):
        raise Trouble(
            f"There is no database at {desk.database}: check its name. Taking in a sheet, logging a sample or opening "
            "the window makes one."
        )


def _expanded(where: str) -> str:
    """With the home folder written out where a shell has left its ~."""
    return where if is_server(where) else str(Path(where).expanduser())


def is_server(database: str) -> bool:
    """True for a URL, False for the path of a file."""
    return "://" in database


def default_database() -> str:
    """The database the user chose, else tracker.sqlite in the user's data folder."""
    chosen = _settings().get("database")
    if isinstance(chosen, str) and chosen:
        return chosen
    from platformdirs import user_data_path

    return str(user_data_path(_APPLICATION, appauthor=False) / "tracker.sqlite")


def settings_file() -> Path:
    """Where the choice of database is kept, outside any database."""
    from platformdirs import user_config_path

    return user_config_path(_APPLICATION, appauthor=False) / "settings.toml"


def _settings() -> dict[str, object]:
    file = settings_file()
    try:
        return tomllib.loads(file.read_text(encoding="utf-8"))
    except FileNotFoundError:
        return {}
    except (OSError, ValueError) as problem:
        raise Trouble(
            f"The settings in {file} can't be read ({problem}): mend or delete that file, "
            "or name a database with --database."
        ) from problem


def _user() -> str:
    try:
        return getpass.getuser()
    except (OSError, KeyError, ImportError):
        return "unknown"
