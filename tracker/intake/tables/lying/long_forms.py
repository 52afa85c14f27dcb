"""Forms as programs export them, one field a row, with what holds for the whole form repeated beside every field."""

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.lying.turned import Labels
from tracker.intake.tables.view import View
from tracker.intake.values.heads.roles import Role

_OF_ALL = (Role.VENDOR, Role.CURRENCY, Role.BASIS, Role.DELIVERY_TERMS)


def said_beside_all(view: View, run: Labels) -> list[tuple[Cell, Cell]]:
    """Heads and cells left of a form's labels that say one thing in all of its rows, as exports of forms repeat it:
    'Vendor | Field | Value' over 'Harlow Board Inc. | Grammage | 275'."""
    first = view.order[0] if view.order else 0
    found = []
    for column, head in view.rows.get(first, {}).items():
        cells = [cell for _, cell in view.down(column, run.rows)]
        repeated = len(cells) == len(run.rows) and len({cell.text for cell in cells}) == 1
        said = head_of(head) if column < run.column and first not in run.rows and repeated else None
        if said is not None and said.named and said.role in _OF_ALL:
            found.append((head, cells[0]))
    return found
