"""One board that two sheets of a file price differently: 'Folding grades' has it at 890, 'All grades' at 935."""

from collections.abc import Iterable
from itertools import combinations

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.prices.twins import about
from tracker.intake.words.lists import phrases
from tracker.trade.offer import Answers, NoteCode

_MOST = 5000
"""Prices of a file that are compared: sheets of longer lists are extracts for different buyers (our choice)."""


def ask_across_sheets(drafts: Iterable[Draft], answers: Answers) -> None:
    """Asks about boards that stand on two sheets with two prices, where the sheets have most boards for themselves.

    Lists that are the same board by board, and price each for another place or time, disagree about nothing.
    """
    sheets: dict[str, dict[tuple[object, ...], Draft]] = {}
    drafts = list(drafts)
    for draft in drafts if len(drafts) <= _MOST else ():
        if not draft.refused and draft.price is not None and draft.grade is not None:
            sheets.setdefault(draft.sheet, {}).setdefault(_offered(draft), draft)
    for (name, one), (other_name, other) in combinations(sheets.items(), 2):
        shared = one.keys() & other.keys()
        if 2 * len(shared) >= min(len(one), len(other)) or _of_other_forms(name, other_name):
            continue
        for key in sorted(shared, key=lambda key: (one[key].cell.row, one[key].cell.column)):
            if one[key].price != other[key].price:
                _ask(one[key], other[key], answers)
                _ask(other[key], one[key], answers)


def _of_other_forms(name: str, other: str) -> bool:
    """Sheets called 'Rolls' and 'Sheets'."""
    forms = [{match.value for match in phrases("forms").find(each)} for each in (name, other)]
    return all(forms) and forms[0].isdisjoint(forms[1])


def _offered(draft: Draft) -> tuple[object, ...]:
    terms = (draft.delivered, draft.valid_until, draft.minimum_kg, draft.lead_days)
    return (*about(draft), draft.product.casefold(), draft.currency, draft.basis, *terms)


def _ask(draft: Draft, other: Draft, answers: Answers) -> None:
    asked = any(asked.code is NoteCode.PRICES_DISAGREE for asked in draft.asked)
    if asked or draft.price_key in answers.settled:
        return
    text = f"{other.where} on the sheet “{other.sheet}” gives the same board and order another price, {other.price}."
    words = f"{draft.price:f}"
    draft.ask(NoteCode.PRICES_DISAGREE, draft.price_key, draft.where, f"{text} Which one holds?", words, (words,))
