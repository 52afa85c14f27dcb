"""What every table is made with: names of constraints, the row's number, references."""

from typing import Any

from sqlalchemy import CheckConstraint, Column, ForeignKey, Integer, MetaData, Table, Text, UniqueConstraint

metadata = MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
        "fk": "fk_%(table_name)s_%(column_0_N_name)s_%(referred_table_name)s",
        "pk": "pk_%(table_name)s",
    }
)


def table(name: str, *contents: Column[Any] | CheckConstraint | UniqueConstraint) -> Table:
    """A table whose rows have a number of their own."""
    # AUTOINCREMENT: the number of a deleted row is never given to another one, because the change log still names it.
    return Table(name, metadata, Column("id", Integer, primary_key=True), *contents, sqlite_autoincrement=True)


def to(other: str, *, nullable: bool = False) -> Column[int]:
    """A reference to a row of another table."""
    return Column(f"{other}_id", Integer, ForeignKey(f"{other}.id"), nullable=nullable, index=True)


def words(name: str) -> Column[str]:
    """Text that rows made before the column was there have none of."""
    return Column(name, Text, nullable=False, server_default="")
