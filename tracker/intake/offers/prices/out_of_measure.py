"""Prices far outside what board costs: told, and asked about where no board ever cost so much or so little."""

from decimal import Decimal
from fractions import Fraction

from tracker.intake.grid import Cell
from tracker.intake.offers.boards.physics import absurd, far_off
from tracker.intake.offers.draft import Draft
from tracker.intake.values.prices.money import price_text
from tracker.trade.basis import BoardMeasure
from tracker.trade.offer import LineEvidence, NoteCode


def look_over(draft: Draft) -> None:
    """A price far outside what board costs is told; one that no board ever cost is asked, unless the row itself says
    currency, basis and a figure that reads one way: then it is certain what was written, and the verdict says that it
    looks like another basis."""
    if draft.price is None or draft.currency is None:
        return
    tonne = far_off_at(draft, draft.price)
    if tonne is not None:
        text = f"This makes {float(tonne):,.0f} {draft.currency} a tonne, far outside what board usually costs."
        certain = _row_says(draft, "currency", "basis") and not _two_figures(draft.cell)
        if absurd(tonne, draft.currency) and not certain:
            draft.ask(NoteCode.OUTSIDE_USUAL_RANGE, draft.price_key, draft.where, text, draft.cell.text.strip())
        else:
            draft.note(NoteCode.OUTSIDE_USUAL_RANGE, draft.where, text)


def far_off_at(draft: Draft, price: Decimal) -> Fraction | None:
    """What a price of this board, in the offer's money and unit, is per tonne where that is far outside what board
    usually costs; None where it is not."""
    if draft.currency is None or draft.basis is None:
        return None
    return far_off(price, draft.currency, draft.basis, BoardMeasure(draft.grammage_gsm, draft.sheet_mm))


def _two_figures(cell: Cell) -> bool:
    """'1.090 €/t' is two figures, of which other columns' signs chose one."""
    said = price_text(cell.text) if isinstance(cell.value, str) else None
    return said is not None and len(said.amounts) > 1


def _row_says(draft: Draft, *fields: str) -> bool:
    """Cells of the price's own row say all of these."""
    row = _row_of(draft.where)
    said = {each.field for each in LineEvidence(tuple(draft.evidence)) if _row_of(each.said_by) == row}
    return said.issuperset(fields)


def _row_of(address: str) -> str:
    return address.lstrip("ABCDEFGHIJKLMNOPQRSTUVWXYZ")
