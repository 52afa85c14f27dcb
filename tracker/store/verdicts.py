"""What people decided about a vendor's board: approved for a use, or rejected and why."""

from dataclasses import dataclass
from datetime import date

from sqlalchemy import Connection, select

from tracker.store import vendors
from tracker.store.changes import Pen
from tracker.store.tables import board_verdict, vendor


@dataclass(frozen=True, slots=True)
class BoardVerdict:
    """One decision on one board of one vendor; `sample` is the number of the sample it rests on, or None."""

    id: int
    vendor: str
    product: str
    approved: bool
    for_what: str
    because: str
    on: date
    by: str
    sample: int | None


def add(
    pen: Pen,
    vendor_name: str,
    product: str,
    approved: bool,
    for_what: str,
    because: str,
    on: date,
    by: str,
    sample: int | None,
) -> int:
    """Adds a decision; gives the log's entry. `by`: whose decision it is, '' for who is logged in."""
    values = {
        "vendor_id": vendors.id_of(pen, vendor_name),
        "product": product,
        "sample_request_id": sample,
        "approved": approved,
        "for_what": for_what,
        "because": because,
        "said_on": on,
        "said_by": by or pen.who,
    }
    return pen.insert(board_verdict, values)[1]


def listing(connection: Connection) -> tuple[BoardVerdict, ...]:
    """Every decision, the latest first."""
    query = select(board_verdict, vendor.c.name.label("vendor_name")).join(vendor)
    rows = connection.execute(query.order_by(board_verdict.c.said_on.desc(), board_verdict.c.id.desc())).mappings()
    return tuple(
        BoardVerdict(
            row["id"],
            row["vendor_name"],
            row["product"],
            row["approved"],
            row["for_what"],
            row["because"],
            row["said_on"],
            row["said_by"],
            row["sample_request_id"],
        )
        for row in rows
    )
