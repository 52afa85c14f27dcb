"""What a row's own remarks say of its price: 'price per tonne', 'Preis in CHF'."""

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.money import basis_claim, currency_claim, unit_of_text
from tracker.intake.offers.rows import WholeRow
from tracker.intake.offers.said import at
from tracker.intake.offers.settle import Claim
from tracker.intake.values.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.roles import Role
from tracker.intake.values.statements import Statement, statements
from tracker.intake.words.lists import phrases


def remarked(whole: WholeRow, columns: Columns) -> list[tuple[Cell, Statement]]:
    """What the row's own remarks say of its prices: 'price per tonne', 'Preis in CHF', or a unit of price alone."""
    remarks = [whole.cells[column.index] for column in columns.of(Role.REMARKS) if column.index in whole.cells]
    priced = [cell for cell in remarks if isinstance(cell.value, str) and _speaks_of_prices(cell.text)]
    return [(cell, said) for cell in priced for said in statements(cell.text)]


def _speaks_of_prices(text: str) -> bool:
    """'Preis in CHF', and 'in CHF' by itself; 'Rolle' and 't' may be said of anything."""
    if phrases("price_words").find(text):
        return True
    first, _, rest = text.strip().partition(" ")
    unit = unit_of_text(rest if rest and phrases("header_filler").whole(first) is not None else text)
    return unit is not None and unit.currency is not None


def currencies_in(said_beside: list[tuple[Cell, Statement]]) -> tuple[Claim[str], ...]:
    """The currencies among what remarks say."""
    said = ((cell, one) for cell, one in said_beside if isinstance(one, SaysCurrency))
    return tuple(currency_claim(one.currency, at(cell), cell.text.strip()) for cell, one in said)


def bases_in(said_beside: list[tuple[Cell, Statement]], facts: FileFacts) -> tuple[Claim[str], ...]:
    """What prices are per, among what remarks say."""
    said = ((cell, one) for cell, one in said_beside if isinstance(one, SaysBasis))
    return tuple(basis_claim(one.basis, at(cell), cell.text.strip(), facts) for cell, one in said)
