"""What a price's column leaves open: whether its figures are what is paid."""

from tracker.intake.columns.column import PriceColumn
from tracker.intake.offers.draft import Draft
from tracker.trade.offer import NoteCode


def doubt_of_column(price: PriceColumn, *, apart: bool, explained: bool) -> str:
    """Why a column may hold no prices to pay, '' where it plainly does. `apart`: its head does not say what those
    beside it do; `explained`: it is asked already what the columns of the table hold."""
    if price.unexplained and not price.column.heads:
        return "" if explained else "no head stands over figures that may be prices"
    if price.unexplained:
        text = f"“{price.column.text}” stands over figures like prices, and does not say what they are"
        return "" if explained else text
    if price.ranged:
        return f"“{price.column.text}” stands over one end, or the middle, of a range of prices"
    return f"“{price.column.text}” does not say what the prices beside it do" if apart else ""


def ask_of_column(draft: Draft, why: str) -> None:
    """Holds back a price because of the columns that it stands in or beside."""
    draft.ask(NoteCode.NUMBER_AMBIGUOUS, "price-column", draft.where, f"Is this the price to pay? In this table {why}.")
