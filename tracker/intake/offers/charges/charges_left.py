"""Charges that a text names with an amount and that no rule understood: the cost with them is not known.

'Mind an energy surcharge in the order of 28 €/t' may well be charged; without it a price would look like all of it.
"""

from collections.abc import Iterable
from dataclasses import replace
from decimal import Decimal

from tracker.intake.offers.charges.charges import note_open_charge
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import at, evidence_of
from tracker.intake.tables.table import Words
from tracker.intake.values.freight.additions_below import never_added
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of
from tracker.intake.values.freight.charged_measures import bounds_a_size
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.not_included import without_denied
from tracker.intake.values.notes.money_told import MoneyTold
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import joined
from tracker.intake.words.phrases import blanked
from tracker.trade.offer import OPEN, Charge, Evidence


def open_what_is_left(
    left: Iterable[tuple[Words, MoneyTold]], listed: Iterable[tuple[Words, ChargeWords]], drafts: Iterable[Draft]
) -> None:
    """Gives each line of a sheet whose cost would look whole the charges that its texts name and that were not counted,
    as not known; those of a sheet without offers are of all lines. `listed`: those of its tables without offers."""
    drafts = tuple(drafts)
    charges = [(words, charge) for words, told in left if (charge := _named_in(words, told)) is not None]
    # What a row of a table charges some of its prices is on none of the others.
    counted = {charge.label for draft in drafts for charge in draft.charges}
    unread = ((words, charge.label) for words, charge in listed if charge.label not in counted)
    charges += [(words, Charge(label, Decimal(0), OPEN, None)) for words, label in unread]
    if not charges:
        return
    offering = {draft.sheet for draft in drafts}
    whole = [draft for draft in drafts if draft.delivered or any(charge.freight for charge in draft.charges)]
    for words, charge in charges:
        for draft in whole:
            if draft.sheet == words.sheet or words.sheet not in offering:
                where = at(words.cell) if draft.sheet == words.sheet else f"{words.sheet}!{at(words.cell)}"
                _open(draft, charge, evidence_of("charges", where, words.text))


def _named_in(words: Words, told: MoneyTold) -> Charge | None:
    """The charge that a part of a text names, where nothing in it was read and no word frees anything of it. Freight
    may be that of prices without it."""
    named = charges_named(told.words) if any(map(str.isdigit, told.words)) else []
    label = label_of(told.words, named) if named else _size_with_amount(told.words)
    if not label or told.old or never_added(words.text):
        return None
    if named and named[0].value == ChargeKind.FREIGHT:
        return None
    understood = any(not isinstance(one, _OF_PRICES) for one in told.of_clause)
    # The 'under' of 'rolls under 20 in' makes no condition of it.
    conditions = ("not_charge",) if named else ()
    freed = joined(*conditions, "relieved", "optional", "tax").find(without_denied(told.words))
    return None if understood or freed else Charge(label, Decimal(0), OPEN, None)


def _size_with_amount(part: str) -> str:
    """The 'Schmalrollen unter 600 mm' of 'Schmalrollen unter 600 mm 40 EUR/t' below 'Zuschläge:', which names no charge
    by itself; '' of what bounds no size."""
    amounts = [(start, end) for _, start, end, _ in prices_within(part)]
    return blanked(part, amounts).strip(" :,.+") if amounts and bounds_a_size(part) else ""


_OF_PRICES = (SaysBasis, SaysCurrency, Delivery)
"""What the amount itself says, read as if it were said of the prices; and the 'geliefert' of 'Zuschlag 38 EUR/t auf
Positionen, die in Bogen geliefert werden'."""


def _open(draft: Draft, charge: Charge, evidence: Evidence) -> None:
    if draft.basis is None or any(one.label == charge.label for one in draft.charges):
        return
    own = replace(charge, basis=draft.basis)
    draft.charges = (*draft.charges, own)
    draft.evidence.append(evidence)
    note_open_charge(draft, own)
