"""The vendor's name in a title, letterhead or label: by legal forms and the trade's own words for firms."""

import re
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.firms.bidders import behind_bid, behind_bidder, without_number
from tracker.intake.values.firms.firm_goods import before_its_works, ends_in_goods, with_goods
from tracker.intake.values.firms.firm_papers import behind_a_paper
from tracker.intake.values.firms.form_fields import before_next_field, behind_asides, first_sentence, without_receipt
from tracker.intake.values.firms.legal_forms import end_of_form, goes_on_as_a_sentence, written_as_form
from tracker.intake.values.firms.own_words import ELIDED, has_words_of_its_own, named_beside_its_trade
from tracker.intake.values.firms.readers import leads_to_a_reader
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, tokens_of

# What parts a name from what follows it on the same line.
_FORMS_BEHIND_COMMA = r"(?:Inc|INC|LLC|Ltd|LTD|L\.?L\.?C|S\.?A|S\.?L|GmbH|AB|Co|Corp|CORP)\b"
BREAK = re.compile(rf"\s(?:[-–—|•·*]+|::)\s|[|•;\n]|,(?!\s*{_FORMS_BEHIND_COMMA})|:\s|\s{{3,}}")
_LONGEST, _SHORTEST = 60, 2
_LABELS, _PLANTS = frozenset({"label", "signs"}), frozenset({"works", "trade", "first"})


@lru_cache(maxsize=4096)
def company_name(text: str) -> str | None:
    """A firm's name at the head of a text: 'Mirrowgate Board Ltd – cartonboard tariff' -> 'Mirrowgate Board Ltd'.

    A legal form ends the name wherever it stands; without one, a word of the trade must end the first part of the
    text and the part must be written as a name, each word with a capital. None otherwise.
    """
    offering = next(filter(None, map(_company_offering, BREAK.split(text.strip()))), None)
    return labelled_company(text) or offering or headed_company(behind_bidder(text) or text)


# 'RFQ 26-311 Paperboard' is the number of a paper; a firm may have a single figure in its name.
_OF_A_PAPER = re.compile(r"\d\d|\d-\d")
_ITS_PAPER = re.compile(
    r"^([^\W\d_]+(?:\s[^\W\d_]+)?)\s+(?:n(?:o|r|°|º)\.?:?\s*)?[\w./-]*\d[\w./-]*\s+(?=[^\W\d])", re.IGNORECASE
)
"""The number behind a paper's name: the 26-77 of 'Offert 26-77 från …'."""
_IN_BRACKETS = re.compile(r"\((?P<label>[^()]{4,40})\)")


def _company_in_prose(text: str) -> str | None:
    """'between Kartonwerk Söllbach AG (supplier) and the buyer': a firm before a label in brackets."""
    for match in _IN_BRACKETS.finditer(text):
        label = match["label"].strip(" \"'“”„«»")
        party = label.startswith("the ") and phrases("company").whole(label[4:]) == "trade"
        if not party and phrases("company").whole(label.removeprefix("the ")) not in _LABELS:
            continue
        before = text[: match.start()].split()
        first = next((at for at in reversed(range(len(before))) if before[at][0].islower()), -1) + 1
        name = headed_company(" ".join(before[first:]))
        if name is not None:
            return name
    return None


def _company_offering(text: str) -> str | None:
    """'Offert 26-77 från Granvassa Kartong': the firm behind words that lead to it without a colon."""
    text = _ITS_PAPER.sub(r"\1 ", text.strip())
    leading = phrases("company").at(tokens_of(text), 0)
    # One word alone, 'mill' or 'from', may begin a name or a sentence.
    if leading is None or leading.value not in _LABELS or leading.after < 2:
        return None
    rest = text[leading.end :].strip()
    forms = [match for match in phrases("company").find(rest) if match.value == "legal"]
    formed = len(forms) == 1 and written_as_form(rest, forms[0])
    return headed_company(rest) if formed or (not forms and has_words_of_its_own(rest)) else None


def headed_company(text: str) -> str | None:
    head = without_receipt(behind_asides(BREAK.split(text.strip(), maxsplit=1)[0].strip()))
    written = head[:1].isupper() and len(head) <= _LONGEST
    if not written or _is_field_to_sign(text, head) or leads_to_a_reader(head):
        return None
    ends = [match for match in phrases("company").find(head) if match.value == "legal" and match.first > 0]
    ends = [match for match in ends if written_as_form(head, match)]
    if ends:
        name = behind_a_paper(head[: end_of_form(head, ends)].strip(" ,"))
        return name if _is_name(head[: ends[0].start].strip(" ,") + " Ltd", may_name_board=True) else None
    if not (_ends_in_trade_word(head) or _begins_as_firm(head)) or not _is_name(head) or _OF_A_PAPER.search(head):
        return None
    if not named_beside_its_trade(head):
        return None
    first = phrases("company").at(tokens_of(head), 0)
    if first is not None and first.value == "desk":
        # 'Vertrieb Karton' signs for a firm.
        return None
    # 'FOB Mill' and 'Unbleached Kraft Paperboard' end in a word of the trade too.
    return None if find_delivery(head) is not None or _is_board(head) else with_goods(text, head)


def _is_field_to_sign(text: str, head: str) -> bool:
    """The 'Acceptance / Company' of 'Acceptance / Company: ____ Signed: ____', also where nobody has signed."""
    return _EMPTY_FIELD.match(text.strip()[len(head) :]) is not None


_EMPTY_FIELD = re.compile(r"\s*:\s*(?:__|$|[^\W\d_]+\s*:)")


@lru_cache(maxsize=1024)
def letterhead_name(text: str) -> str | None:
    """A firm's name as the first words of a sheet, where less is needed: 'Kestrel Ridge Board', 'Papelera Altavega'.

    A word of the trade stands in it, and one that is none of the words boards are described by; or two names are joined
    as partners are: 'Oxbow & Thrale'.
    """
    head = BREAK.split(text.strip(), maxsplit=1)[0].strip()
    if not may_be_a_name(head) or any(phrases(section).find(head) for section in ("price_words", "months")):
        return None
    if _PARTNERS.fullmatch(head) and all(map(has_words_of_its_own, head.split("&"))):
        return with_goods(text, head)
    return with_goods(text, head) if named_beside_its_trade(head) else None


_PARTNERS = re.compile(r"[^\W\d_]{3,} & [^\W\d_]{3,}")


@lru_cache(maxsize=1024)
def name_above_a_contact(text: str) -> str | None:
    """A firm's name as the first words of a sheet, where a telephone or an address for mail stands below it: then
    nothing but the way it is written need say that it is one."""
    head = BREAK.split(text.strip(), maxsplit=1)[0].strip()
    return with_goods(text, head) if may_be_a_name(head) and has_words_of_its_own(head) else None


def _is_board(head: str) -> bool:
    """'Unbleached Kraft Paperboard' is one; 'Silverbark Kraft Mills' begins with a name, 'Cartons Fontvieille' goes on
    with one."""
    board = find_grade(head)
    if board is not None and _makes(head, board.words):
        return False
    if board is None or board.grades or board.coated is not None:
        return board is not None and (bool(board.grades) or head.startswith(board.words))
    return head.startswith(board.words) and not has_words_of_its_own(head[len(board.words) :])


def _makes(head: str, board: str) -> bool:
    """'Ellerby Run Chipboard Mill' and 'Cartonnerie du Carton Gris Lavedan' are works that have a name of their own and
    say what they make."""
    before, named, behind = head.partition(board) if board else before_its_works(head)
    if phrases("works").whole(behind.strip()) == "behind":
        return bool(named) and has_words_of_its_own(before)
    first = phrases("works").at(tokens_of(head), 0)
    return first is not None and first.value == "ahead" and has_words_of_its_own(f"{before[first.end :]} {behind}")


def may_be_a_name(text: str) -> bool:
    """Whether a text is written as a firm's name is, though nothing in it says so: 'Kartonhaus Lindmoor'."""
    head = BREAK.split(text.strip(), maxsplit=1)[0].strip()
    if not head or len(head) > _LONGEST or any(sign.isdigit() for sign in head) or leads_to_a_reader(head):
        return False
    return _is_name(head) and find_delivery(head) is None and not _is_board(head)


def name_of_bidder(text: str) -> str | None:
    """What may be a firm's name behind 'Bid' or 'Anbieter 2' in the head over its prices."""
    name = behind_bid(text) or behind_bidder(text)
    return name if name and (company_name(name) is not None or may_be_a_name(name)) else None


def may_call_a_vendor(text: str) -> bool:
    """Whether a cell under 'Vendor' may be a name: no account's number ('CA5501') or code ('M'), no terms ('DLVD, min
    22,000 lb', 'lead time 8 weeks', 'from stock'), nor 'Mill', which says where the board comes from."""
    name = text.strip()
    number = " " not in name and (len(name) < _SHORTEST or any(sign.isdigit() for sign in name))
    if number or len(name) > _LONGEST or find_delivery(name) is not None or _MANY_FIGURES.search(name):
        return False
    named = lead_text(name) is None and not any(phrases(kind).whole(name) for kind in ("sources", "forms"))
    return named and not any(isinstance(said, _TERMS) for said in statements(name))


_TERMS = (LeadTime, LeadUnread, SaysMinimum, LeastUnread, Validity)
_MANY_FIGURES = re.compile(r"\d[\d.,]{2,}")


def _ends_in_trade_word(head: str) -> bool:
    end = len(tokens_of(head))
    ends = (match for match in phrases("company").find(head) if match.after == end and match.first > 0)
    return any(match.value in ("trade", "first") for match in ends)


def _begins_as_firm(head: str) -> bool:
    """'Papeteries Lorvain' and 'Kartonfabrik Sonthal' say first what the firm is."""
    return any(match.value == "first" and match.first == 0 for match in phrases("company").find(head))


def _is_name(name: str, *, may_name_board: bool = False) -> bool:
    found = re.findall(r"[^\W\d_][\w'’.&-]*", ELIDED.sub("", name))
    # 'Manufacture de carton Noirétang' goes on in small letters between what it is and what it is called.
    board = find_grade(name)
    named_as_firm = may_name_board or _begins_as_firm(name) or (board is not None and _makes(name, board.words))
    small = ("name_particles", "generic_names") if named_as_firm else ("name_particles",)
    named = [word for word in found if word[0].isupper() or all(phrases(one).whole(word) is None for one in small)]
    # 'Mills A and B' are two of them, told apart by letters.
    lettered = all(len(word) == 1 for word in named[1:])
    if lettered or not all(word[0].isupper() for word in named) or goes_on_as_a_sentence(name):
        return False
    forbidden = [one for one in phrases("not_company").find(name) if not ends_in_goods(name, one)]
    if named_as_firm:
        # 'Umeå Falskartong AB' and 'Comptoir du Carton Plat Sarrazin' call themselves by what they make.
        forbidden = [one for one in forbidden if not _tells_goods(name, one)]
    return not forbidden


def _tells_goods(name: str, word: Found[str]) -> bool:
    """The board in a firm's name, first only before words of its own: 'Graukarton Weiler', not 'Graukarton KG'."""
    if find_grade(name[word.start : word.end]) is None:
        return False
    return word.first > 0 or has_words_of_its_own(name[word.end :].removesuffix(" Ltd"))


def labelled_company(text: str) -> str | None:
    """The name behind a label in the same text: 'Supplier: Saltmarrow Paperboard Inc.'.

    Who quotes, signs or sends may be a person or a desk: behind such a label a word must say that it is a firm.
    """
    label, colon, rest = _ASIDE.sub("", text, count=1).partition(":")
    if not colon:
        return _company_in_prose(text)
    kinds = {phrases("company").whole(part) for part in without_number(label).split("/")}
    if kinds <= _PLANTS and " " not in label.strip():
        # 'Mill: Tarn Kartong AB' names who makes it, and 'Mill: Augusta, GA' where.
        return headed_company(rest.strip())
    if not kinds <= _LABELS or not any(sign.isalpha() for sign in rest):
        return None
    name = _without_terms(BREAK.split(rest.strip(), maxsplit=1)[0].strip())
    firm = _firm_of_a_person(name) if "signs" in kinds else None
    if firm is not None:
        return firm
    if name[:1].islower() or _may_be_a_person(name, rest, signs="signs" in kinds):
        # A desk or a person stands before the firm: 'sales desk, Hobbin Paperboard LLC'.
        named = [firm for firm in map(headed_company, rest.split(",")) if firm is not None]
        return named[0] if len(named) == 1 else None
    ahead = before_next_field(name, rest)
    name = name if ahead is None else headed_company(ahead) or ahead
    plain = len(name) <= _LONGEST and not any(sign.isdigit() for sign in name[:2])
    # 'Seller: ________ Buyer: ________' is where both will sign.
    return name if plain and not name.endswith(":") else None


_ITS_NUMBER = re.compile(r"^\d{5,}\s+(?=[^\W\d])|(?<=\w)\s+\(?\d{5,}\)?$")
"""What the buyer keeps a vendor under, written before or behind the name: 'Tarn Kartong AB 100482'."""
_LAST_ASIDE = re.compile(r"\s*\((?P<said>[^()]+)\)$")


def _without_terms(name: str) -> str:
    """'Grelva Cartons (EXW, 3 weeks)' without the terms of its prices, and without the vendor's number; 'Grelva Cartons
    (North)' is a name."""
    name = _ITS_NUMBER.sub("", first_sentence(without_receipt(name)))
    aside = _LAST_ASIDE.search(name)
    return name if aside is None or not statements(aside["said"]) else name[: aside.start()]


_BEHIND = re.compile(r"(?P<person>[^()]+)\((?P<firm>[^()]+)\)")


def _firm_of_a_person(name: str) -> str | None:
    """'Dana Orvik (Owlcombe Mills)' sends for the firm in brackets."""
    behind = _BEHIND.fullmatch(name)
    if behind is None or headed_company(behind["person"].strip()) is not None:
        return None
    return headed_company(behind["firm"].strip())


_ASIDE = re.compile(r"\s*\([^():]*\)(?=\s*:)")
"""'(please fill in)' behind a label."""


def _may_be_a_person(name: str, rest: str, *, signs: bool) -> bool:
    """'Inside sales desk, 555-0119', 'R. Halden (sales)', and 'Anna Berg' behind 'From:'; no name that a word of the
    trade or a legal form shows to be a firm's."""
    if headed_company(name) is not None:
        return False
    if any(match.value == "desk" for match in phrases("company").find(name)) or _INITIALS.match(name):
        return True
    reached = signs or "@" in rest or _TELEPHONE.search(rest) is not None
    return reached and letterhead_name(name) is None


_INITIALS = re.compile(r"(?:[A-Z]\.[ -]?)+[A-Z][a-z]+(?: \(|$)")
_TELEPHONE = re.compile(r"\d[\d ()./-]{5,}\d")
