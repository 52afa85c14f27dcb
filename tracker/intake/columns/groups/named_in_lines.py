"""What stands in the place of a vendor over a group of prices and is none: 'Paid 2025', 'none (what we paid)'."""

import re
from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.columns.column import Kind, PriceColumn
from tracker.intake.tables.headers.periods import YEAR, is_period, without_periods
from tracker.intake.tables.table import Words
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.firms.no_firms import NoFirm, doubted, no_firm
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases


def without_no_vendors(prices: Sequence[PriceColumn], texts: Sequence[Words]) -> list[PriceColumn]:
    """The prices with those set aside that nobody bids by what stands behind 'Vendor:'; where that tells of another
    year than the sheet's own, it is asked."""
    offers = [price for price in prices if price.kind is Kind.OFFER and price.column.vendor]
    if len({price.column.vendor for price in offers}) < _SEVERAL:
        return list(prices)
    years = _years(" ".join(words.text for words in texts)) or set.intersection(
        *(_years(price.column.vendor) for price in offers)
    )
    return [_of_vendor(price, years) if price in offers else price for price in prices]


_SEVERAL = 2


def _of_vendor(price: PriceColumn, years: set[int]) -> PriceColumn:
    said = within_nobody(price.column.vendor)
    meant = phrases("beside_bids").whole(undated(said))
    found = no_firm(said)
    firm = doubted(found, said) if found is not None else None
    if _paid_before(said, meant):
        return replace(price, vendor=None, kind=Kind.PREVIOUS)
    if firm in (NoFirm.SUMMED, NoFirm.NOT_OFFERED) or (meant is not None and " " in said):
        return replace(price, vendor=None, kind=Kind.LIST)
    if (
        firm is None
        and meant is None
        and not _of_an_earlier_price(said)
        and not is_period(said)
        and _years(said) <= years
    ):
        return price
    return replace(price, vendor=None, unexplained=True, label=price.label or price.column.vendor)


def _paid_before(said: str, meant: str | None) -> bool:
    """'Paid 2025', 'Price paid last year'; a firm may have 'Last' in its name."""
    return _of_an_earlier_price(said, _OUTRIGHT) or (meant is not None and meant != "worked_out")


def _of_an_earlier_price(said: str, strength: float = 0.1) -> bool:
    return header(said).strength(Role.PREVIOUS_PRICE) >= strength and company_name(said) is None


_OUTRIGHT = 0.9


def _years(text: str) -> set[int]:
    return {int(year) for year in YEAR.findall(text)}


def within_nobody(text: str) -> str:
    """'What we paid in 2025' of 'none (what we paid in 2025)', in brackets or behind a dash; another text as it is."""
    parts = _ASIDE.fullmatch(text.strip())
    if parts is None:
        return text
    first = parts["first"].strip()
    aside = (parts["inside"] or parts["behind"]).strip()
    return aside if not first or phrases("nobody").whole(first) is not None else text


_ASIDE = re.compile(r"(?P<first>[^\d(]*?)\s*(?:\((?P<inside>[^()]+)\)|[-–—,:]\s(?P<behind>[^()]+))")


def undated(text: str) -> str:
    """Its words without times, and without the 'in' that leads to one: 'Paid in Q4-26' -> 'Paid'."""
    words = " ".join(_NO_WORD.sub(" ", without_periods(text)).split())
    if words == " ".join(text.split()):
        return words
    leads = (match for match in phrases("leads_to_years").find(words) if match.end == len(words))
    return words[: next((match.start for match in leads), len(words))].strip()


_NO_WORD = re.compile(r"\S*\d\S*|[^\w'’.Ø-]")
