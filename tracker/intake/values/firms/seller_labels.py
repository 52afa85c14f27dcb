"""The firm behind a label that systems give who sells: 'Sales organisation: Ferrowick Mills Inc.', and a maker of board
behind one for whose system it is: 'Company code: 1200 Ferrowick Board Mills Inc.'. Behind 'Manufacturer:' stands who
makes the board, which another may sell."""

import re
from functools import lru_cache

from tracker.intake.values.firms.company import company_name, headed_company, labelled_company
from tracker.intake.words.lists import phrases

_ITS_NUMBER = re.compile(r"[A-Z]{0,2}\d{2,}\s+(?=[^\W\d_])")


@lru_cache(maxsize=1024)
def selling_part(text: str) -> str | None:
    """The firm behind 'Sales organisation:', which no buyer has."""
    return _named(text, "sales")


@lru_cache(maxsize=1024)
def maker_s_part(text: str) -> str | None:
    """The firm behind 'Company code:' or 'Mandant:' where it makes paper and board: a buyer's system names the buyer
    there, who makes cartons."""
    name = _named(text, "any")
    return name if name is not None and _makes_board(name) and _has_a_form(name) else None


def _makes_board(name: str) -> bool:
    """'Ferrowick Board Mills', 'Hallbach Papierfabrik'; a mill alone may as well be one of flour, which buys board."""
    kinds = {match.value for match in phrases("paper_makers").find(name)}
    return "any" in kinds or {"mill", "goods"} <= kinds


@lru_cache(maxsize=1024)
def buys_by_system(text: str) -> bool:
    """'Purchasing organisation: 1000', 'Einkaufsinfosatz': the system around it is a buyer's."""
    found = phrases("purchasing").find(text)
    return bool(found) and found[0].first == 0


def names_maker(text: str) -> bool:
    """'Manufacturer: Tarnwick Mills Ltd.'; not 'Manufacturer / supplier: Tarnwick Mills Ltd.'"""
    label, colon, _ = text.partition(":")
    return bool(colon) and all(phrases("makers").whole(part) is not None for part in label.split("/"))


def labelled_seller(text: str) -> str | None:
    """The firm behind a label that calls it more than the board's maker."""
    return None if names_maker(text) else labelled_company(text)


def named_seller(text: str) -> str | None:
    """A firm that a text names in any other way than as the board's maker."""
    return None if names_maker(text) else company_name(text)


def named_or_making(text: str) -> str | None:
    """Such a firm, or its maker of board behind a label of a system."""
    return named_seller(text) or maker_s_part(text)


def _named(text: str, kind: str) -> str | None:
    label, colon, rest = text.partition(":")
    if not colon or labelled_company(text) is not None or phrases("firm_parts").whole(label) != kind:
        return None
    return headed_company(_ITS_NUMBER.sub("", rest.strip(), count=1))


def _has_a_form(name: str) -> bool:
    return any(match.value == "legal" for match in phrases("company").find(name))
