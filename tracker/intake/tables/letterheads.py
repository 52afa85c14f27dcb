"""Lines of the letterhead right above a header: they look like its groups, and head no column."""

from tracker.intake.tables.view import View
from tracker.intake.values.company import company_name
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def is_letterhead(view: View, row: int) -> bool:
    """'Cartones Brezalta, S.L. | Portes incluidos', 'Tarifa 2026/3 | válida hasta 31/12': who quotes, or the list's
    number, at the left edge of the row below. Firms beside each other head the prices of each."""
    cells = view.rows[row]
    first, *others = (cells[column].text for column in sorted(cells))
    if not others or min(cells) > min(view.rows.get(row + 1, cells)):
        return False
    if company_name(first) is not None:
        return not any(company_name(other) is not None for other in others)
    return any(map(str.isdigit, first)) and bool(phrases("list_names").at(tokens_of(first), 0))
