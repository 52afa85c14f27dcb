"""Who quotes an offer: the firm of its row or column, of its sheet or file, else the mill that it comes from."""

from tracker.intake.columns.column import PriceColumn
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.terms.terms_said import Terms
from tracker.intake.values.firms.company import company_name


def fill_vendor(draft: Draft, terms: Terms, price: PriceColumn, vendor: Said[str] | None) -> None:
    """`vendor`: of the sheet or the file. A merchant who names himself quotes the board of 'Mill: Dover'; where 'Mill'
    names a firm in full, either may be who quotes, and nobody is named."""
    if terms.vendor is not None or price.vendor is not None:
        draft.vendor = terms.vendor or price.vendor
    elif vendor is None:
        draft.vendor = terms.maker
    elif terms.maker is None or company_name(terms.maker) is None:
        draft.vendor = vendor.value
        draft.evidence.append(vendor.evidence("vendor"))
