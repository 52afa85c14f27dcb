"""The firm behind what its list is called: 'Price list 2027 – Marlow Board Mills', 'Offre de la Cartonnerie Duval'."""

from functools import lru_cache

from tracker.intake.values.firms.company import BREAK, headed_company, letterhead_name
from tracker.intake.values.firms.firm_papers import behind_a_paper
from tracker.intake.values.firms.own_words import has_words_of_its_own
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without


@lru_cache(maxsize=1024)
def titled_company(text: str) -> str | None:
    """The firm that a list's title names last.

    Behind 'Quotation –' the buyer may stand, and a name with no word of the trade may be anybody's; behind 'Quote of'
    and 'Offer from' a firm that quotes does.
    """
    title, *rest = BREAK.split(text.strip())
    whose = behind_a_paper(title)
    if whose != title:
        return (headed_company(whose) if has_words_of_its_own(whose) else None) or letterhead_name(whose)
    plainly = phrases("price_lists").whole(title) is not None
    parts = [part.strip() for part in rest if part.strip()] or [_behind_its_name(title)]
    parts = [part for part in parts if not is_of_a_buyer(part)]
    named_in = (headed_company(part) or (letterhead_name(part) if plainly else None) for part in parts)
    names = [name for name in named_in if name is not None]
    named = len(names) == 1 and any(
        match.value in ("trade", "weak", "first") for match in phrases("company").find(names[0])
    )
    return names[0] if named and phrases("price_lists").find(title) else None


def _behind_its_name(title: str) -> str:
    """The 'Hessemoor Board BV' of 'Export prices Hessemoor Board BV'; what is 'for' a firm is not its list, and behind
    'Customer prices' stands the customer."""
    called = phrases("price_lists").find(title)
    bought = phrases("addressees").find(title) or phrases("buyers_prices").find(title)
    return title[called[-1].end :].strip() if called and not bought else ""


@lru_cache(maxsize=1024)
def company_ahead_of_its_list(text: str) -> str | None:
    """The 'Hazelgrave Mills' of 'Hazelgrave Mills price sheet, FOB mill', the first words of a sheet: a word of the
    trade shows that it is a firm, and one more that it has a name. 'Customer price list' names whom it is for."""
    title = BREAK.split(text.strip())[0]
    called = phrases("price_lists").find(title)
    if not called or called[-1].end != len(title) or phrases("buyers_prices").find(title):
        return None
    ahead = title[: called[-1].start].strip()
    name = letterhead_name(ahead) if ahead and not is_of_a_buyer(ahead) else None
    return name if name is not None and phrases("company").find(name) and has_words_of_its_own(name) else None


def is_of_a_buyer(name: str) -> bool:
    """'Bedarf Kunde', and 'Kunde Muster Karton GmbH', whom that calls a customer; a firm's legal form makes a name of
    'Client Packaging Ltd.' all the same."""
    labels = phrases("addressees").find(name)
    if any(match.value == "legal" for match in phrases("company").find(name)):
        called = (name[label.end :] for label in labels if label.first == 0)
        return any(has_words_of_its_own(_without_its_form(rest)) for rest in called)
    return bool(labels)


def _without_its_form(name: str) -> str:
    return without(name, [match for match in phrases("company").find(name) if match.value == "legal"])
