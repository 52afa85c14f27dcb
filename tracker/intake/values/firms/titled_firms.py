"""The firm behind what its list is called: 'Price list 2027 – Marlow Board Mills', 'Offre de la Cartonnerie Duval'."""

from functools import lru_cache

from tracker.intake.values.firms.company import BREAK, has_words_of_its_own, headed_company, letterhead_name
from tracker.intake.values.firms.firm_papers import behind_a_paper
from tracker.intake.words.lists import phrases


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
    named_in = (headed_company(part) or (letterhead_name(part) if plainly else None) for part in parts)
    names = [name for name in named_in if name is not None]
    named = len(names) == 1 and any(
        match.value in ("trade", "weak", "first") for match in phrases("company").find(names[0])
    )
    return names[0] if named and phrases("price_lists").find(title) else None


def _behind_its_name(title: str) -> str:
    """The 'Hessemoor Board BV' of 'Export prices Hessemoor Board BV'; what is 'for' a firm is not its list."""
    called = phrases("price_lists").find(title)
    return title[called[-1].end :].strip() if called else ""
