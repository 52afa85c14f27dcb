"""Opening a database for work: reached, made where there is none, brought up to date."""

from pathlib import Path

from sqlalchemy.exc import DBAPIError

from tracker.store import schema
from tracker.store.database import CannotOpen, Database, connect, why_not


def open_database(where: str | Path) -> Database:
    """Opens a SQLite file or a server's URL, makes the tables in an empty one and brings an older one up to date.

    CannotOpen, in a sentence, where there is none to reach, it holds something else, or a newer version made it.
    """
    database = connect(where)
    try:
        schema.bring_up_to_date(database)
    except DBAPIError as problem:
        database.close()
        raise CannotOpen(why_not(where, problem)) from problem
    except CannotOpen:
        database.close()
        raise
    return database
