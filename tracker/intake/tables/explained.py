"""Tables with what their keys explain in place of letters and codes: in heads, in columns of codes, behind prices."""

from collections.abc import Sequence

from tracker.intake.tables.headers.code_parts import with_code_parts
from tracker.intake.tables.headers.keyed_units import with_keyed_units
from tracker.intake.tables.headers.keys import with_keyed_heads
from tracker.intake.tables.headers.lettered_heads import with_lettered_heads
from tracker.intake.tables.headers.letters_of_prices import with_letters_of_prices
from tracker.intake.tables.rows.keyed_columns import with_keyed_columns
from tracker.intake.tables.rows.keyed_prices import with_keyed_prices
from tracker.intake.tables.rows.keyed_sheets import with_keyed_sheets
from tracker.intake.tables.rows.keyed_sizes import with_keyed_sizes
from tracker.intake.tables.table import SheetTables, Words


def explained(found: SheetTables, legends: Sequence[Words]) -> SheetTables:
    """Each kind of key in turn; `legends`: what sheets of words alone say."""
    keyed = with_keyed_columns(with_keyed_sheets(found, legends), legends)
    lettered = with_letters_of_prices(with_lettered_heads(keyed, legends))
    headed = with_code_parts(with_keyed_heads(lettered, legends))
    return with_keyed_units(with_keyed_sizes(with_keyed_prices(headed, legends), legends), legends)
