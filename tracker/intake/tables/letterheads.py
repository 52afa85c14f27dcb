"""Lines of the letterhead right above a header: they look like its groups, and head no column."""

from tracker.intake.tables.view import View
from tracker.intake.values.company import company_name
from tracker.intake.values.role_words import header_roles
from tracker.intake.values.roles import Role
from tracker.intake.values.statements import SaysDate, statements
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def is_letterhead(view: View, row: int) -> bool:
    """'Cartones Brezalta, S.L. | Portes incluidos', 'Lieferant | Kartonwerk AG | Währung | EUR', 'Tarifa 2026/3 |
    válida hasta 31/12': who quotes, or the list's number, at the left edge of the row below. Firms beside each other
    head the prices of each."""
    cells = view.rows[row]
    texts = [cells[column].text for column in sorted(cells)]
    if len(texts) < _FEWEST or min(cells) > min(view.rows.get(row + 1, cells)):
        return False
    firms = [place for place, text in enumerate(texts) if _names_a_firm(text)]
    if firms:
        return len(firms) == 1 and (firms[0] == 0 or (firms[0] == 1 and _leads_to_a_firm(texts[0])))
    return any(map(str.isdigit, texts[0])) and bool(phrases("list_names").at(tokens_of(texts[0]), 0))


def is_stamped(view: View, row: int) -> bool:
    """'EXTRACTION TARIFS | Édité le 13/11/2026', 'RPT_ID | PRC04 | RUN | 2026-11-12 06:14': what a program writes over
    its export, from the first column on. 'bis 31.12. | ab 1.1.2027' over prices heads these."""
    cells = view.rows[row]
    if len(cells) < _FEWEST or min(cells) > min(view.rows.get(row + 1, cells)):
        return False
    return any(isinstance(said, SaysDate) for cell in cells.values() for said in statements(cell.text))


_FEWEST = 2


def _names_a_firm(text: str) -> bool:
    """A column's plain head may be written as a name, and end in a word of the trade: 'NATURE DU CARTON'."""
    roles = header_roles(text)
    return company_name(text) is not None and not (roles and roles[0].strength >= _PLAINLY)


def _leads_to_a_firm(text: str) -> bool:
    """'Lieferant' names what follows, and 'RPT 4411' the report that the firm's program wrote."""
    return any(map(str.isdigit, text)) or any(
        reading.role is Role.VENDOR and reading.strength >= _PLAINLY for reading in header_roles(text)
    )


_PLAINLY = 0.9
