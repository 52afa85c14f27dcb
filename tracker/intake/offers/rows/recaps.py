"""Tables and blocks of rows that repeat offers which stand elsewhere: 'RECAP of the lowest bid per item'.

What a title calls so is passed over price by price where the same board's offer is found; what is not found is asked.
"""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from tracker.intake.offers.answered import key_about
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.prices.twins import tonne
from tracker.intake.tables.table import Words
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.trade.offer import NoteCode, PassedOver

_LONGEST = 100
"""Longer texts are notes, that may speak of a summary sent apart."""
_NEAR = Fraction(1, 1000)
"""How far a price that was put on another unit may be from it, by rounding (our choice)."""


def mark_recaps(drafts: Iterable[Draft], titles: Sequence[Words], sheet: str) -> None:
    """Keeps with each draft the words that call the table, its block of rows or its sheet a recap of others."""
    around = next(filter(None, map(_recap, (*(words.text for words in reversed(titles)), sheet))), "")
    for draft in drafts:
        _, headings = draft.block
        own = (_recap(words.text) for words in headings.own) if headings is not None else iter(())
        draft.recap = next(filter(None, own), around)


def _recap(text: str) -> str:
    return text if len(text) <= _LONGEST and phrases("recaps").find(text) else ""


def without_recaps(drafts: list[Draft]) -> tuple[list[Draft], list[PassedOver]]:
    """The drafts without those of a recap that stand elsewhere, and what is told of these; others beside them, and all
    under words that say they were copied, are asked about."""
    others = [draft for draft in drafts if not draft.recap and not draft.refused]
    recaps = [draft for draft in drafts if draft.recap and draft.price is not None]
    if not others or not recaps:
        return drafts, []
    by_board: dict[object, list[Draft]] = {}
    for draft in others:
        by_board.setdefault(_board(draft), []).append(draft)
    repeats = {id(draft) for draft in recaps if any(_same(draft, other) for other in by_board.get(_board(draft), ()))}
    repeating = {draft.recap for draft in recaps if id(draft) in repeats}
    for draft in recaps:
        if id(draft) not in repeats and (draft.recap in repeating or _says_copied(draft.recap)):
            _ask(draft)
    return [draft for draft in drafts if id(draft) not in repeats], [*_told(recaps, repeats)]


def _board(draft: Draft) -> object:
    return draft.grade, draft.caliper_um, draft.currency


def _same(draft: Draft, other: Draft) -> bool:
    """One price for one board of one vendor, on whatever unit; a recap need not repeat every term."""
    if draft.vendor is not None and other.vendor is not None and fold(draft.vendor) != fold(other.vendor):
        return False
    if draft.product and other.product and fold(draft.product) != fold(other.product):
        return False
    told = ((draft.grammage_gsm, other.grammage_gsm), (draft.sheet_mm, other.sheet_mm))
    if any(one is not None and two is not None and one != two for one, two in told):
        return False
    if None not in (draft.delivered, other.delivered) and draft.delivered is not other.delivered:
        return False
    if draft.from_kg is not None and (draft.from_kg, draft.below_kg) != (other.from_kg, other.below_kg):
        return False
    if draft.basis is other.basis:
        return draft.price == other.price
    one, two = tonne(draft), tonne(other)
    return one is not None and two is not None and abs(one - two) <= _NEAR * two


def _says_copied(text: str) -> bool:
    return any(match.value == "copied" for match in phrases("recaps").find(text))


def _ask(draft: Draft) -> None:
    text = f"“{draft.recap}” calls this price a repeat, and it stands nowhere else in the file. Is it offered?"
    draft.ask(NoteCode.NUMBER_AMBIGUOUS, key_about("recap", draft.recap), draft.where, text, draft.recap)


def _told(recaps: Iterable[Draft], repeats: set[int]) -> Iterator[PassedOver]:
    rows = dict.fromkeys((draft.sheet, draft.cell.row, draft.recap) for draft in recaps if id(draft) in repeats)
    for sheet, row, words in rows:
        yield PassedOver(sheet, str(row + 1), f"“{words}” repeats an offer that stands elsewhere")
