"""What kind of thing the codes of a column stand for, as the words of their key tell: boards, what prices are per, at
whose freight they are, what else holds for their rows."""

from collections.abc import Callable, Mapping
from typing import NamedTuple

from tracker.intake.tables.headers.keyed_units import UNIT
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.boards.board_words import begins_with_board
from tracker.intake.values.changes.withdrawn import withdrawn
from tracker.intake.values.freight.delivery import find_delivery, terms_in
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.masses import mass_text, mass_units
from tracker.intake.values.prices.units_of_codes import unit_led_to
from tracker.intake.values.times.lead import lead_text
from tracker.intake.words.lists import phrases


class Kind(NamedTuple):
    """`head`: what heads such a column, None where its own head says it. `doubt`: all of the key, which stands in place
    of each value where nobody knows what it is a value of."""

    head: str | None
    doubt: str = ""


_GRADE, _TERMS, _REMARKS, _LEAD, _MINIMUM = "Grade", "Delivery terms", "Remarks", "Lead time", "Minimum"


def kind_of(column: HeadedColumn, key: Mapping[str, str]) -> Kind | None:
    """The kind of what all entries of a key say; None where they say different things, or what is left to the notes."""
    said = list(key.values())
    if any(map(withdrawn, said)):
        return _of_states(column)
    if all(map(begins_with_board, said)):
        return Kind(_GRADE)
    if all(unit_led_to(one) is not None for one in said) and not all(map(_is_form, said)):
        return Kind(UNIT)
    if all(map(_says_freight, said)):
        # Of 'delivered over 20,000 lb' the rows hear all, as a remark of theirs.
        return Kind(_TERMS if all(map(_says_freight_alone, said)) else _REMARKS)
    for role, head, reads in _COUNTED:
        if all(map(reads, said)):
            return _counted(column, key, role, head)
    return Kind(_REMARKS) if _may_be_remarks(column) and all(map(statements, said)) else None


def _of_states(column: HeadedColumn) -> Kind | None:
    """'A = active, D = discontinued' below 'Status', or below 'Availability', where some may be times."""
    roles = header_roles(column.heads[-1].text) if column.heads else ()
    if roles and roles[0].role in (Role.LEAD_TIME, Role.STOCK):
        return Kind(None)
    return Kind(_REMARKS) if _may_be_remarks(column) else None


def _may_be_remarks(column: HeadedColumn) -> bool:
    """A 'Mill' and a 'Grade' stay what they are, whatever is said of some of them."""
    roles = header_roles(column.heads[-1].text) if column.heads else ()
    return not roles or roles[0].strength < _PLAINLY or roles[0].role in _LIKE_REMARKS


def _is_form(said: str) -> bool:
    """'Rolls' and 'skids' tell what comes, and no price is per one for that."""
    return phrases("forms").whole(said) is not None or phrases("bracket").whole(said) in (*VEHICLES, *_PIECES)


_PIECES = ("pallet", "roll", "sheets")


def _says_freight(said: str) -> bool:
    term = find_delivery(said)
    return term is not None and term.delivered is not None


def _says_freight_alone(said: str) -> bool:
    return not rest_of(said, (term.span for term in terms_in(said)))


_COUNTED: tuple[tuple[Role, str, Callable[[str], object]], ...] = (
    (Role.LEAD_TIME, _LEAD, lead_text),
    (Role.MINIMUM, _MINIMUM, mass_text),
)


def _counted(column: HeadedColumn, key: Mapping[str, str], role: Role, head: str) -> Kind | None:
    """Weeks under 'Lead time' are such; under 'L' they may be until when a price holds, and are left to be read by a
    person. Under 'Payment' and 'Order size' they are what these say."""
    roles = header_roles(column.heads[-1].text) if column.heads else ()
    if roles and roles[0].strength >= _PLAINLY:
        return Kind(None) if roles[0].role in (role, Role.REMARKS) else None
    entries = ", ".join(f"{code} = {said}" for code, said in key.items())
    return Kind(head, f"{column.called}: {entries}") if len(key) > 1 else None


_PLAINLY = 0.8
_LIKE_REMARKS = frozenset({Role.REMARKS, Role.DELIVERY_TERMS, Role.PROPERTY, Role.BASIS})


def counts_orders(column: HeadedColumn) -> bool:
    """Whether a column holds quantities: the codes of units right behind it are theirs."""
    roles = header_roles(column.heads[-1].text) if column.heads else ()
    return any(reading.role in _QUANTITIES for reading in roles)


_QUANTITIES = frozenset({Role.MINIMUM, Role.STOCK, *ORDER_SIZES})


def unit_alone(said: str) -> bool:
    """'Short tons', and not 'per short ton'."""
    return bool(mass_units(said))
