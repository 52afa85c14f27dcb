"""One offer written twice: on another basis beside it (one line, `also`), or in a row that repeats another."""

from collections import Counter
from collections.abc import Iterable, Sequence
from decimal import Decimal
from fractions import Fraction
from itertools import combinations, filterfalse

from tracker.intake.offers.answered import key_about
from tracker.intake.offers.draft import DECIMAL, Draft
from tracker.intake.offers.prices.rivals import HOLDS
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.values.changes.called_outdated import ends_outdated
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.price_kinds import tells_price_kind
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis, BoardMeasure, per_tonne
from tracker.trade.offer import Evidence, NoteCode, State

_MOST = Fraction(1, 100)

Pair = tuple[str, Basis | None, str, Basis | None]
Pairs = frozenset[Pair]
"""Two columns by what their heads say beside their bases, and by those."""


def joined_bases(drafts: Iterable[Draft], paired: Pairs = frozenset()) -> list[Draft]:
    """Prices of one row for the same board, order and delivery in one currency become one offer.

    The first stands for it and names the others in `also`; where they differ by more than 1 % on one basis it is asked.
    `paired`: the columns that hold one price on two bases, as the other rows of their table show.
    """
    kept: list[Draft] = []
    drafts = list(drafts)
    _settle_by_twins(drafts)
    for draft in drafts:
        twin = next((other for other in kept if _same_offer(other, draft, paired)), None)
        if twin is None:
            kept.append(draft)
        else:
            _join(twin, draft)
    return kept


def _settle_by_twins(row: Sequence[Draft]) -> None:
    """'1,245' per ton beside 46.69 per MSF: of its two readings just one makes the same offer of both.

    Where none or several do, the question stays, and the twin is asked about with it: if the two are one offer, no line
    of its own may come of either.
    """
    for draft in row:
        for twin in row if draft.amounts and draft.price is None else ():
            if twin is not draft and twin.basis is not draft.basis and _may_be_same_offer(draft, twin):
                _settle_by(draft, twin)


def _may_be_same_offer(draft: Draft, twin: Draft) -> bool:
    told = draft.basis is not None and twin.basis is not None and not twin.refused and not draft.refused
    same = draft.currency == twin.currency is not None and draft.delivered == twin.delivered
    return told and same and about(draft) == about(twin)


def _settle_by(draft: Draft, twin: Draft) -> None:
    others = twin.amounts if twin.price is None else (twin.price,)
    agreeing = [(one, other) for one in draft.amounts for other in others if _agree(draft, one, twin, other)]
    if len(agreeing) == 1:
        ((draft.price, twin.price),) = agreeing
        draft.settle(DECIMAL)
        twin.settle(DECIMAL)
    elif twin.price is not None:
        question = next(asked for asked in draft.asked if asked.key == DECIMAL)
        twin.ask(question.code, question.key, draft.where, question.text, question.words)


def _agree(draft: Draft, one: Decimal, twin: Draft, other: Decimal) -> bool:
    first, second = _tonne_of(draft, one), _tonne_of(twin, other)
    return first is not None and second is not None and abs(first - second) <= _MOST * max(first, second)


def paired_bases(rows: Iterable[Sequence[Draft]]) -> Pairs:
    """The columns of a table whose prices come to the same money on two bases in most of the rows, and in two at least:
    where they do not in another row, one of the two is wrong, whatever their heads are called."""
    agreeing: Counter[Pair] = Counter()
    all_rows: Counter[Pair] = Counter()
    for row in rows:
        for one, other in combinations(row, 2):
            first, second = tonne(one), tonne(other)
            if first is not None and second is not None and one.basis is not other.basis and _side_by_side(one, other):
                all_rows[_pair(one, other)] += 1
                agreeing[_pair(one, other)] += abs(first - second) <= _MOST * max(first, second)
    return frozenset(pair for pair, count in agreeing.items() if count > 1 and 2 * count > all_rows[pair])


def _pair(one: Draft, other: Draft) -> Pair:
    return one.label, one.basis, other.label, other.basis


def _side_by_side(one: Draft, other: Draft) -> bool:
    """For one board and order, in one currency and on the same terms of delivery."""
    if one.refused or other.refused or one.price is None or other.price is None:
        return False
    if one.currency != other.currency or one.delivered != other.delivered:
        return False
    return about(one)[1:] == about(other)[1:]


def _same_offer(one: Draft, other: Draft, paired: Pairs) -> bool:
    if not _side_by_side(one, other):
        return False
    if (one.basis is None) != (other.basis is None):
        # A price per 100 kg, which is asked about, must not hold back the one per tonne beside it.
        return False
    return one.label == other.label or _pair(one, other) in paired or _one_price(one, other)


def _one_price(one: Draft, other: Draft) -> bool:
    """The same money on two bases, whatever other words their heads have: 'EUR/t | sold at EUR/1000 m²'."""
    first, second = tonne(one), tonne(other)
    if one.basis is other.basis or first is None or second is None or (one.label and other.label):
        return False
    label = one.label or other.label
    if phrases("same_price").find(label) or any(reading.role is Role.PRICE for reading in header_roles(label)):
        # 'Sales price EUR/1000 m²' and 'same in EUR/1000 m²' say no more than 'EUR/t': where they differ, it is asked.
        return True
    return abs(first - second) <= _MOST * max(first, second)


def about(draft: Draft) -> tuple[object, ...]:
    """What an offer is for, apart from its price."""
    return (
        draft.label,
        draft.vendor,
        draft.grade,
        draft.coated_sides,
        draft.caliper_um,
        draft.grammage_gsm,
        draft.sheet_mm,
        draft.from_kg,
        draft.below_kg,
    )


def _join(draft: Draft, twin: Draft) -> None:
    draft.also = (*draft.also, twin.where)
    one, other = tonne(draft), tonne(twin)
    if one is None or other is None:
        if one is other is None and draft.basis is twin.basis and draft.price != twin.price:
            _disagree(draft, twin)
        return
    if abs(one - other) > _MOST * max(one, other):
        _disagree(draft, twin)
    else:
        tell_same_price(draft, twin)


def tell_same_price(draft: Draft, other: Draft) -> None:
    """No line is left of `other`: the one that stands for it says so, with that cell's own words."""
    draft.evidence.append(Evidence("also", other.where, other.cell.text.strip()))


def tonne(draft: Draft) -> Fraction | None:
    """What the offer's price makes a tonne, in its own currency; None where that can't be known."""
    return None if draft.price is None else _tonne_of(draft, draft.price)


def _tonne_of(draft: Draft, price: Decimal) -> Fraction | None:
    if draft.basis is None:
        return None
    return per_tonne(price, draft.basis, BoardMeasure(draft.grammage_gsm, draft.sheet_mm))


def _disagree(draft: Draft, twin: Draft) -> None:
    draft.rival = twin
    pair = sorted((draft, twin), key=lambda each: (each.cell.row, each.cell.column))
    cells = [each.where for each in pair]
    text = (
        f"{' and '.join(cells)} are prices for the same board and order that differ by more than 1 %{_compared(pair)}. "
        "Which one holds?"
    )
    key = key_about(HOLDS, f"{draft.sheet}!{'|'.join(cells)}")
    draft.ask(NoteCode.PRICES_DISAGREE, key, draft.where, text, draft.cell.text, cells)


def _compared(pair: Sequence[Draft]) -> str:
    """': 1,069 and 1,188 USD a tonne', where both can be put on one basis."""
    tonnes = [tonne(each) for each in pair]
    if any(tonne is None for tonne in tonnes):
        return ""
    figures = " and ".join(f"{float(tonne):,.0f}" for tonne in tonnes if tonne is not None)
    money = f"{pair[0].currency} " if pair[0].currency else ""
    return f" once they are on one basis ({figures} {money}a tonne)"


def without_repeats(drafts: Iterable[Draft]) -> list[Draft]:
    """Drops an accepted offer whose row repeats an earlier one in every cell, and in what is said around it, so that it
    is never accepted twice."""
    drafts = list(drafts)
    kept: list[Draft] = []
    seen: set[tuple[object, ...]] = set()
    times = _times_said(drafts)
    for draft in drafts:
        if times[draft.row_words] > 1 and draft.state is State.ACCEPTED:
            key = _all_of(draft)
            if key in seen:
                continue
            seen.add(key)
        kept.append(draft)
    return kept


def disagreeing_rows(drafts: Iterable[Draft]) -> None:
    """Asks about rows of one table that are the same in everything but the price, and that no note calls superseded."""
    drafts = [draft for draft in drafts if not any(ends_outdated(asked.words) for asked in draft.asked)]
    first: dict[tuple[object, ...], Draft] = {}
    times = _times_said(drafts)
    for draft in drafts:
        if times[draft.row_words] == 1 or draft.refused or draft.price is None:
            continue
        # 'DAP 1,285' and 'FCA 1,255' in the price cells of two rows are two offers; '1,285' alone may be either.
        key = (draft.block, draft.row_words, *about(draft), draft.currency, draft.basis)
        earlier = first.setdefault(key, draft)
        if earlier is draft or earlier.price is None or {earlier.delivered, draft.delivered} == {True, False}:
            continue
        if earlier.price != draft.price:
            if not any(asked.code is NoteCode.PRICES_DISAGREE for asked in earlier.asked):
                _disagree(earlier, draft)
            _disagree(draft, earlier)


def words_of_row(whole: WholeRow, uncompared: frozenset[int]) -> str:
    """All that a row says besides its prices, their kind and its number (`uncompared`: their columns), told apart by a
    sign that no cell holds."""
    cells = whole.cells
    told = [cells[index].text for index in sorted(cells) if index not in uncompared]
    texts = list(filterfalse(tells_price_kind, told))
    texts += [] if whole.row.unsure else [line.text for line in whole.row.lines]
    words = "\x1f".join(texts)
    return "\x1f".join([" ".join(text.split()) for text in texts]) if "\n" in words else words


def _times_said(drafts: Iterable[Draft]) -> Counter[str]:
    """How often each row's words come round: once for nearly every row of a long list, which then need not be compared
    any further."""
    return Counter(draft.row_words for draft in drafts)


def _all_of(draft: Draft) -> tuple[object, ...]:
    price = (draft.price, draft.currency, draft.basis, draft.charges, draft.delivered)
    terms = (draft.minimum_kg, draft.lead_days, draft.valid_until)
    return (draft.row_words, *about(draft), draft.product, draft.coated_sides, *price, *terms, draft.unread)
