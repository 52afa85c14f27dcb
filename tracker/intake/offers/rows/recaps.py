"""Tables and blocks of rows that repeat offers which stand elsewhere: 'RECAP of the lowest bid per item'.

What a title calls so is passed over price by price where an offer is found that differs from it in nothing; another
price of the same offer is asked about. Many a list is called a summary: what differs in its terms is an offer.
"""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from tracker.intake.offers.answered import key_about
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.prices.twins import tonne
from tracker.intake.tables.table import Words
from tracker.intake.values.prices.units_of_parts import parts_named
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.trade.basis import BoardMeasure, per_tonne
from tracker.trade.offer import GrammageFrom, NoteCode, PassedOver

_LONGEST = 100
"""Longer texts are notes, that may speak of a summary sent apart."""
_NEAR = Fraction(1, 1000)
"""How far a price that was put on another unit may be from it, by rounding (our choice)."""


def mark_recaps(drafts: Iterable[Draft], titles: Sequence[Words], sheet: str) -> None:
    """Keeps with each draft the words that call the table, its block of rows or its sheet a recap of others."""
    around = next(filter(None, map(_recap, (*(words.text for words in reversed(titles)), sheet))), "")
    parts = frozenset().union(*(parts_named(words.text) for words in titles))
    for draft in drafts:
        _, headings = draft.block
        own = [words.text for words in headings.own] if headings is not None else []
        draft.recap = next(filter(None, map(_recap, own)), around)
        draft.parts = parts.union(*map(parts_named, own))


def _recap(text: str) -> str:
    return text if len(text) <= _LONGEST and phrases("recaps").find(text) else ""


def without_recaps(drafts: list[Draft]) -> tuple[list[Draft], list[PassedOver]]:
    """The drafts without those of a recap that stand elsewhere, and what is told of these.

    Asked about are those that have another price there, others beside repeats, and all under words that say they were
    copied.
    """
    others = [draft for draft in drafts if not draft.recap and not draft.refused]
    recaps = [draft for draft in drafts if draft.recap and draft.price is not None]
    if not others or not recaps:
        return drafts, []
    by_board: dict[object, list[Draft]] = {}
    for draft in others:
        by_board.setdefault(_board(draft), []).append(draft)
    alike = {id(draft): [one for one in by_board.get(_board(draft), ()) if _one_offer(draft, one)] for draft in recaps}
    repeats = {id(draft) for draft in recaps if any(_repeats(draft, other) for other in alike[id(draft)])}
    repeating = {draft.recap for draft in recaps if id(draft) in repeats}
    for draft in recaps:
        if id(draft) not in repeats and (alike[id(draft)] or draft.recap in repeating or _says_copied(draft.recap)):
            _ask(draft, alike[id(draft)])
    return [draft for draft in drafts if id(draft) not in repeats], [*_told(recaps, repeats)]


def _board(draft: Draft) -> object:
    return draft.grade, draft.caliper_um, draft.currency, draft.sheet_mm, draft.from_kg, draft.below_kg


def _one_offer(draft: Draft, other: Draft) -> bool:
    """One board of one vendor for one order; a recap need not repeat the terms, but has no others."""
    names = ((draft.vendor, other.vendor), (draft.product, other.product))
    if any(one and two and fold(one) != fold(two) for one, two in names):
        return False
    weighed = {draft.grammage_from, other.grammage_from} == {GrammageFrom.QUOTED}
    if (weighed and draft.grammage_gsm != other.grammage_gsm) or _apart(draft.coated_sides, other.coated_sides):
        return False
    if draft.parts and other.parts and draft.parts.isdisjoint(other.parts):
        return False
    terms = (
        (draft.minimum_kg, other.minimum_kg), (draft.lead_days, other.lead_days),
        (draft.valid_until, other.valid_until), (draft.delivered, other.delivered),
        (draft.charges or None, other.charges),
    )  # fmt: skip
    return all(one is None or one == two for one, two in terms)


def _apart(one: object, two: object) -> bool:
    return None not in (one, two) and one != two


def _repeats(draft: Draft, other: Draft) -> bool:
    """The price of that offer, on whatever unit. Whether what is said of sheets repeats what is said of no form, nobody
    can tell."""
    if draft.parts != other.parts:
        return False
    if draft.basis is other.basis:
        return draft.price == other.price
    one, two = _tonne_as(draft, other), tonne(other)
    return one is not None and two is not None and abs(one - two) <= _NEAR * two


def _tonne_as(draft: Draft, other: Draft) -> Fraction | None:
    """What the price makes a tonne of the other's board, whose weight the recap may leave out."""
    if draft.price is None or draft.basis is None:
        return None
    return per_tonne(draft.price, draft.basis, BoardMeasure(other.grammage_gsm, other.sheet_mm))


def _says_copied(text: str) -> bool:
    return any(match.value == "copied" for match in phrases("recaps").find(text))


def _ask(draft: Draft, alike: Sequence[Draft]) -> None:
    elsewhere = f"{alike[0].where} says {alike[0].cell.text.strip()}" if alike else "it stands nowhere else in the file"
    text = f"“{draft.recap}” calls this price a repeat, and {elsewhere}. Is it offered?"
    draft.ask(NoteCode.NUMBER_AMBIGUOUS, key_about("recap", draft.recap), draft.where, text, draft.recap)


def _told(recaps: Iterable[Draft], repeats: set[int]) -> Iterator[PassedOver]:
    rows = dict.fromkeys((draft.sheet, draft.cell.row, draft.recap) for draft in recaps if id(draft) in repeats)
    for sheet, row, words in rows:
        yield PassedOver(sheet, str(row + 1), f"“{words}” repeats an offer that stands elsewhere")
