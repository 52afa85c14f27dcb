"""What a firm's list or goods are called before its name: 'Quote of', 'Preisliste der', 'Bogenware der'; and papers
that ask for such lists."""

import re

from tracker.intake.words.lists import phrases


def behind_a_paper(text: str) -> str:
    """What stands behind the word for whose a list is; the text itself where it begins with no list or goods.

    'Offer to' and 'Angebot für' lead to a buyer.
    """
    for joint in phrases("whose_list").find(text):
        before, name = text[: joint.start].strip(), text[joint.end :].strip()
        if name[:1].isupper() and _is_paper(before):
            return name
    return text


def _is_paper(words: str) -> bool:
    """'Offre', 'Price list 2027', 'Bogenware'; not 'Offer for Tarnwick Cartons' before 'from our mill'."""
    if phrases("letters_to").find(words):
        return False
    return bool(phrases("list_names").find(words)) or phrases("wares").whole(words) is not None


def asks_for_offers(text: str) -> bool:
    """'Request for quotation 26-14', 'Marlow Cartons - RFQ'; not 'Your inquiry of May 2' nor 'Reply to RFQ 26-14'."""
    return any(found.start == 0 for part in _PARTS.split(text.strip()) for found in phrases("inquiries").find(part))


_PARTS = re.compile(r"\s[-–—|•]\s|[|•;\n]|,\s")


def makes_an_offer(text: str) -> bool:
    """'Quotation 5521', 'Marlow Mills - price list'; 'Request for quotation' asks for one."""
    parts = _PARTS.split(text.strip())
    return any(found.start == 0 for part in parts for found in phrases("list_names").find(part))
