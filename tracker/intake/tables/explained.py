"""Tables with what their keys explain in place of letters and codes: in heads, in columns of codes, behind prices."""

from collections.abc import Sequence

from tracker.intake.tables.headers.code_parts import with_code_parts
from tracker.intake.tables.headers.keyed_heads import with_keyed_heads
from tracker.intake.tables.headers.keyed_units import with_keyed_units
from tracker.intake.tables.headers.keys import texts_apart, with_keys_apart
from tracker.intake.tables.headers.lettered_heads import with_lettered_heads
from tracker.intake.tables.headers.letters_of_prices import with_letters_of_prices
from tracker.intake.tables.rows.keyed_columns import with_keyed_columns
from tracker.intake.tables.rows.keyed_prices import with_keyed_prices
from tracker.intake.tables.rows.keyed_sheets import with_keyed_sheets
from tracker.intake.tables.rows.keyed_sizes import with_keyed_sizes
from tracker.intake.tables.table import SheetTables, Words


def explained(found: SheetTables, legends: Sequence[Words]) -> SheetTables:
    """Each kind of key in turn; `legends`: what sheets of words alone say.

    Keys with the head of their column go first: their codes mean nothing elsewhere, and are gone for the others. Heads
    come before what stands below them, which is told by its head. Columns of units come last, as the code of a unit may
    stand in any column that is none of sizes.
    """
    legends = texts_apart(legends)
    keyed = with_keyed_columns(with_keyed_sheets(with_keys_apart(found), legends), legends)
    lettered = with_letters_of_prices(with_lettered_heads(keyed, legends))
    headed = with_code_parts(with_keyed_heads(lettered, legends))
    return with_keyed_units(with_keyed_sizes(with_keyed_prices(headed, legends), legends), legends)
