"""When two offers are the same one at another date: same vendor, board, bracket, currency and delivery."""

from decimal import Decimal
from functools import lru_cache
from hashlib import blake2b

from tracker.trade.offer import GrammageFrom, Offer


def board_key(offer: Offer, vendor_id: int | None, file_id: int) -> int:
    """A signed 64-bit number that is the same for the same offer in a vendor's next sheet.

    Basis and price may change from sheet to sheet and take no part; an estimated weight is not the vendor's word and
    takes none either. Offers of an unnamed vendor are only ever the same within their own file.
    """
    owner = f"v{vendor_id}" if vendor_id is not None else f"f{file_id}"
    quoted = offer.grammage_gsm if offer.grammage_from is GrammageFrom.QUOTED else None
    sides = offer.sheet_mm or (None, None)
    return _key_of(
        owner,
        _folded(offer.product),
        offer.grade,
        offer.coated_sides,
        offer.currency,
        offer.delivered,
        *map(_plain, (offer.caliper_um, quoted, offer.from_kg, offer.below_kg, *sides)),
    )


@lru_cache(4096)
def _key_of(*parts: object) -> int:
    # A list repeats its boards from row to row, so each is reckoned once.
    digest = blake2b(repr(parts).encode(), digest_size=8).digest()
    return int.from_bytes(digest, "big", signed=True)


def _folded(words: str) -> str:
    return " ".join(words.split()).casefold()


@lru_cache(4096)
def _plain(value: Decimal | None) -> str:
    # The same measure however many zeros it is written with, and after the ninth digit of a conversion.
    return "" if value is None else format(value, ".9g")
