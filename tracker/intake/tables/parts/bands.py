"""Bands of a sheet: stretches of columns with an empty column between them, where each holds tables of its own."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import chain

from tracker.intake.tables.headerless.headless import describes_board, says_price
from tracker.intake.tables.headers.header_rows import is_header_row
from tracker.intake.tables.headers.heads import PRICE_ROLES, head_of
from tracker.intake.tables.parts.lists_beside import listed_terms, lists_terms_of_boards
from tracker.intake.tables.parts.own_table import has_figure, has_own_table
from tracker.intake.tables.parts.rates import lists_rates, lists_zones
from tracker.intake.tables.table import Words
from tracker.intake.tables.view import View, part_of
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.prices.units_of_codes import unit_led_to

_MOST_STRETCHES = 60


@dataclass(frozen=True, slots=True)
class Bands:
    """Parts that are read for tables by themselves, and stretches of words that only stand beside them."""

    parts: tuple[View, ...]
    beside: tuple[View, ...] = ()
    listed: tuple[Words, ...] = ()
    """What lists of terms beside the boards say."""


def bands_of(view: View) -> Bands:
    """The view cut at empty columns where every part that holds figures has its own header, else whole.

    A stretch of words beside a table (a letterhead, a legend) is no part of the table, unless the table's header row
    names it too. Rates in columns of their own stand apart from the boards whatever heads these.
    """
    stretches = _stretches(view)
    if len(stretches) < 2 or len(stretches) > _MOST_STRETCHES:
        return Bands((view,))
    parts = [part_of(view, view.order, stretch) for stretch in stretches]
    lists = {place: said for place, part in enumerate(parts) if (said := listed_terms(part, view))}
    if lists and len(lists) < len(parts):
        rest = bands_of(_without(view, [parts[place] for place in lists]))
        return replace(rest, listed=(*rest.listed, *chain.from_iterable(lists.values())))
    beside = [part for part in parts if _only_words(part, view)]
    figured = [part for part in parts if part not in beside]
    rates = [part for part in figured if lists_rates(part) or lists_zones(part, view)]
    if rates and len(rates) < len(figured):
        rest = bands_of(_without(view, rates))
        return replace(rest, parts=(*rest.parts, *rates))
    if figured and all(has_own_table(part) for part in figured):
        return Bands(tuple(figured), tuple(beside))
    if not beside or not figured:
        return Bands((view,))
    left, right = min(_left(part) for part in figured), max(_right(part) for part in figured)
    outside = [part for part in beside if _right(part) < left or _left(part) > right]
    kept = part_of(view, view.order, range(left, right + 1))
    return Bands((kept,), tuple(outside))


def _without(view: View, parts: Sequence[View]) -> View:
    """The view with empty columns where these parts stand."""
    taken = {column for part in parts for cells in part.rows.values() for column in cells}
    rest = part_of(view, view.order)
    left = {row: {column: cell for column, cell in view.rows[row].items() if column not in taken} for row in view.order}
    rest.rows = {row: cells for row, cells in left.items() if cells}
    return rest


def _stretches(view: View) -> list[range]:
    """Runs of used columns, cut before a column of labels too; merged titles bridge nothing, because only the cell that
    holds the text counts."""
    used = sorted({column for row in view.order for column in view.columns_of(row)})
    labels = _columns_of_labels(view)
    stretches: list[range] = []
    for column in used:
        if stretches and column == stretches[-1].stop and column not in labels:
            stretches[-1] = range(stretches[-1].start, column + 1)
        else:
            stretches.append(range(column, column + 1))
    return stretches


def _columns_of_labels(view: View) -> frozenset[int]:
    """Columns whose every cell is a label as in 'Vendor:': with the values beside them they are a form."""
    counts: dict[int, int] = {}
    for row in view.order:
        for column, cell in view.rows[row].items():
            if counts.get(column) != 0:
                labels = isinstance(cell.value, str) and cell.text.rstrip().endswith(":")
                counts[column] = counts.get(column, 0) + 1 if labels else 0
        if row >= _LONGEST_WORDS and not any(counts.values()):
            break
    return frozenset(column for column, count in counts.items() if count > 1)


def _only_words(part: View, view: View) -> bool:
    """No figure in the stretch, and no head in line with the heads of a table beside it."""
    if _explains_units(part):
        return True
    if len(part.rows) > _LONGEST_WORDS or any(has_figure(part, row) for row in part.order):
        return False
    if lists_terms_of_boards(part):
        return True
    if any(_priced_beside(part, view, row) for row in part.order):
        return False
    if any(_goes_with_every_row(part, view, row) for row in part.order):
        return False
    lists_boards = any(_lists_boards(part, view, row) or _heads_boards(part, view, row) for row in part.order)
    if _runs_on_below(part, view) and not lists_boards:
        return True
    if _is_letterhead(part) and not any(_plain_head_in_line(part, view, row) for row in part.order):
        return True
    return not (lists_boards or any(_heads_in_line(part, view, row) for row in part.order))


def _explains_units(part: View) -> bool:
    """'A | US$ per short ton' over 'B | US$ per cwt': a key of the codes beside the prices, with or without heads."""
    rows = [tuple(cell.text for _, cell in sorted(part.rows[row].items())) for row in part.order]
    entries = [row for row in rows if len(row) == 2 and unit_led_to(row[1]) is not None]
    return len(entries) >= max(_FEWEST_CODES, len(rows) - 1) and all(len(code) <= _LONGEST_CODE for code, _ in entries)


_FEWEST_CODES = 2
_LONGEST_CODE = 4


def _runs_on_below(part: View, view: View) -> bool:
    """Notes beside a table: sentences that go on below all else, whatever 'About this sheet' above them would head."""
    texts = [cell.text for cells in part.rows.values() for cell in cells.values()]
    sentences = sum(len(text.split()) >= _WORDS_OF_A_SENTENCE for text in texts)
    beside = max((row for row in view.order if view.rows[row].keys() - part.rows.get(row, {}).keys()), default=-1)
    return 3 * sentences >= 2 * len(texts) and part.order[-1] > beside


_WORDS_OF_A_SENTENCE = 4


def _priced_beside(part: View, view: View, row: int) -> bool:
    """'GC2 270 g/m² 440 µm', an empty column and '1 312 €/t': a board of a letter, and its price."""
    cells = view.rows[row].values()
    rest = [cell for cell in cells if cell not in part.rows[row].values()]
    return any(map(describes_board, part.rows[row].values())) and bool(rest) and all(map(says_price, rest))


def _lists_boards(part: View, view: View, row: int) -> bool:
    """Boards named below a word that is no known head, in line with a header row of the rest of the sheet."""
    below = [cell for other in part.order if other > row for cell in part.rows[other].values()]
    named = sum((grade := find_grade(cell.text)) is not None and bool(grade.grades) for cell in below)
    return 2 * named >= len(below) > 0 and _beside_heads(part, view, row)


def _goes_with_every_row(part: View, view: View, row: int) -> bool:
    """'Part' in line with a header, and 'A1', 'A2' … in line with each of the rows below it: a column of that table,
    and neither sentences nor labels that happen to be as many."""
    below = [other for other in view.order if other > row and view.rows[other].keys() - part.rows.get(other, {}).keys()]
    every = len(below) >= _FEWEST_ROWS and all(other in part.rows for other in below)
    if not every or _far_from_the_rest(part, view, row) or not _beside_heads(part, view, row):
        return False
    texts = [cell.text for other in (row, *below) for cell in part.rows[other].values()]
    if any(text.rstrip().endswith(":") for text in texts) or 3 * sum(map(_is_sentence, texts)) >= len(texts):
        return False
    return not _lists_labels(part, below)


def _far_from_the_rest(part: View, view: View, row: int) -> bool:
    """Two empty columns or more between a part and the rest of its header row."""
    rest = view.rows[row].keys() - part.rows[row].keys()
    return min((max(_left(part) - column, column - _right(part)) for column in rest), default=0) > _ONE_EMPTY_BETWEEN


_ONE_EMPTY_BETWEEN = 2


def _is_sentence(text: str) -> bool:
    """'All are shipped freight collect', or 'A = EUR/t' of a key; neither '232 lb/3000 sq ft' nor 'Coated unbleached
    kraft carrier'."""
    words = sum(word.strip(".,;:").isalpha() for word in text.split())
    return (words >= _WORDS_OF_A_SENTENCE and find_grade(text) is None) or " = " in text


_FEWEST_ROWS = 2


def _lists_labels(part: View, rows: Sequence[int]) -> bool:
    """'Supplier | Marlow Board' over 'Valid until | 31 March' is a form, whose every line begins with what it asks."""
    first = [part.rows[row][min(part.rows[row])] for row in rows]
    named = [head for cell in first if (head := head_of(cell)) is not None and head.named]
    return _left(part) != _right(part) and 2 * len(named) >= len(first)


def _heads_boards(part: View, view: View, row: int) -> bool:
    """'Board' in line with the heads of the rest: a column of the table, whatever sentences stand below all of it."""
    named = [cell for cell in part.rows[row].values() if (head := head_of(cell)) is not None and head.board]
    return any(_heads_plainly(cell.text) for cell in named) and _heads_in_line(part, view, row)


_LONGEST_WORDS = 200


def _heads_in_line(part: View, view: View, row: int) -> bool:
    """A row of the stretch that is all heads, in line with a header row of the rest of the sheet."""
    own = [head_of(cell) for cell in part.rows[row].values()]
    if _labels_its_neighbour(part, row):
        return False
    if not all(head is not None and head.named for head in own):
        return False
    if any(head is not None and head.price for head in own):
        # 'Price list carton board' over words alone is the title of a letterhead.
        return False
    return _beside_heads(part, view, row)


def _labels_its_neighbour(part: View, row: int) -> bool:
    """'Vendor: | Fennmere Board Ltd' is a line of a form beside the table, though 'Vendor' heads columns elsewhere."""
    cells = part.rows[row]
    colons = {column: cell.text.rstrip().endswith(":") for column, cell in cells.items()}
    return any(colon and not colons.get(column + 1, True) for column, colon in colons.items())


def _plain_head_in_line(part: View, view: View, row: int) -> bool:
    """'Grade' below a firm's name and in line with a table's heads: a column of that table, parted by a blank one."""
    plain = any(_heads_plainly(cell.text) for cell in part.rows[row].values())
    return plain and _heads_in_line(part, view, row)


def _is_letterhead(part: View) -> bool:
    """A firm's name first, or below a line that is no plain head ('Folding carton board pricing', not 'Grade')."""
    for row in part.order:
        texts = [cell.text for cell in part.rows[row].values()]
        if any(company_name(text) is not None for text in texts):
            return True
        if any(map(_heads_plainly, texts)):
            return False
    return False


def _heads_plainly(text: str) -> bool:
    """'Grade' heads a column of words; 'Carton board pricing' over words is a title."""
    roles = header_roles(text)
    priced = any(reading.role in PRICE_ROLES for reading in roles)
    return bool(roles) and roles[0].strength >= _PLAIN and not priced


_PLAIN = 0.9
"""The strength of a head whose words all name the column."""


def _beside_heads(part: View, view: View, row: int) -> bool:
    """Whether the rest of the sheet has a header in this row."""
    rest = {column: cell for column, cell in view.rows[row].items() if column not in part.rows[row]}
    return bool(rest) and is_header_row(View(view.sheet, {**view.rows, row: rest}, view.merged), row)


def _left(part: View) -> int:
    return min(column for cells in part.rows.values() for column in cells)


def _right(part: View) -> int:
    return max(column for cells in part.rows.values() for column in cells)
