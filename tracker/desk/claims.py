"""What is claimed of a sample's board: by the vendor's price sheet, or by a data sheet and typed in."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.readings import property_said
from tracker.desk.sample_boards import BoardFound, board_of
from tracker.desk.sample_numbers import no_such_sample
from tracker.desk.trouble import Trouble
from tracker.trade.readings import reading

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.board_claims import OfferedBoard

_OF_A_QUOTE = (("caliper", "caliper_um"), ("grammage", "grammage_gsm"))


@dataclass(frozen=True, slots=True)
class Claim:
    """One claim in the property's own unit, and who says so. typed: the id of one that was typed in, else None."""

    property: str
    value: Decimal
    source: str
    typed: int | None = None


@dataclass(frozen=True, slots=True)
class Claims:
    """The claims by property; one typed in stands before the price sheet's. board: the vendor's name of it, '' where
    its sheet names none. found: it is known which offers are of it. why_not: why not, or why they claim nothing.
    choices: the vendor's names of the boards it may be, where several fit."""

    by_property: dict[str, Claim]
    board: str
    found: bool
    why_not: str
    choices: tuple[str, ...] = ()


def claim(desk: Desk, number: int, property_name: str, value: str, unit: str = "", source: str = "") -> Edit:
    """Keeps what a data sheet claims, in the place of an earlier claim of that property.

    Trouble for a property that is not measured, a unit it is not measured in, or what is no number above 0.
    """
    from tracker.store import measurements
    from tracker.store import samples as kept

    found = property_said(property_name)
    read = reading(value, found, unit)
    if isinstance(read, str):
        raise Trouble(f"The claim “{value}” was not kept: {read}")
    values = {
        "property": found.key,
        "unit": found.unit,
        "source": source.strip() or "data sheet",
        "said_on": desk.today,
    }
    # In the words that were typed: whoever types 18 (pt) looks for 18, not for 457.2.
    text = f"claimed of sample {number}: {found.name.lower()} {' '.join((value.strip(), unit or found.unit))}"
    with writing(desk, text) as pen:
        try:
            kept.get(pen.connection, number)
        except KeyError:
            raise no_such_sample(number) from None
        change = measurements.put_claim(pen, number, values, read)
    return Edit(text, (change,))


def take_back(desk: Desk, number: int, property_name: str) -> Edit:
    """Takes a typed claim back. Trouble where none was typed."""
    from tracker.store import measurements

    key = property_said(property_name).key
    text = f"took back the claim of {key} of sample {number}"
    with writing(desk, text) as pen:
        found = [each.id for each in measurements.claims_of(pen.connection, number) if each.property == key]
        if not found:
            raise Trouble(f"Nobody typed a claim of {key} for sample {number}.")
        change = measurements.remove_claim(pen, found[0])
    return Edit(text, (change,))


def claims(desk: Desk, number: int) -> Claims:
    """Every claim of one sample's board. Trouble where there is no such sample."""
    from tracker.store import measurements
    from tracker.store import samples as kept

    with desk.store.reading() as connection:
        try:
            request = kept.get(connection, number)
        except KeyError:
            raise no_such_sample(number) from None
        board = board_of(connection, request)
        typed = measurements.claims_of(connection, number)
    found = _of_quote(board)
    for each in typed:
        found[each.property] = Claim(each.property, each.value, each.source, each.id)
    name = request.product or (board.offers[0].product if board.offers else "")
    return Claims(found, name, bool(board.offers or request.product), board.why_not, board.choices)


def _of_quote(board: BoardFound) -> dict[str, Claim]:
    """The latest offer that says it counts; a weight that was estimated is no claim."""
    found = {}
    for key, field in _OF_A_QUOTE:
        for offer in board.offers:
            value: Decimal | None = getattr(offer, field)
            if value:
                found[key] = Claim(key, value, _said_by(offer))
                break
    return found


def _said_by(offer: OfferedBoard) -> str:
    where = f"{offer.sheet}, {offer.cell}" if offer.sheet else offer.cell
    return f"price sheet {offer.file} ({where}) of {offer.received.isoformat()}"
