"""Legal forms in a firm's name: 'GmbH & Co. KG', 'Inc.'; where the same letters are none, and where the form ends."""

import re

from tracker.intake.values.freight.delivery import delivery_text
from tracker.intake.words.fold import fold
from tracker.intake.words.likeness import is_listed
from tracker.intake.words.lists import pattern, phrases, words
from tracker.intake.words.phrases import Found, tokens_of

_FORMS_IN_SMALL_LETTERS = frozenset({"gmbh", "plc", "mbh", "ltée", "eg", "ohg"})
_STATES_TOO = frozenset({"NV", "CO", "AS"})
"""Legal forms that are the postal letters of American states and territories as well."""
_BEFORE_KILOGRAM = frozenset("0123456789/")


def written_as_form(head: str, match: Found[str]) -> bool:
    """'Co', 'AB' and 'SA' are forms in capitals only ('as', 'co' are words); the KG of '€/1000 KG' is a kilogram, and
    the AB of 'EUR/T AB WERK' says from where."""
    if delivery_text(head[match.start :]) is not None and not _ends_a_name(head, match):
        return False
    if head[match.start : match.end] == "KG" and head[: match.start].rstrip()[-1:] in _BEFORE_KILOGRAM:
        return False
    if any(_is_a_word(head, one) for one in _forms(head) if one.first <= match.first):
        return False
    form = head[match.start : match.end]
    before = head[: match.start].strip(" ,(")
    if form in _STATES_TOO and " " not in before and not _words_of_trade(before):
        # 'Reno NV' is a place; 'FJORDKARTONG AS' makes board.
        return False
    place = phrases("countries").whole(before)
    if place is not None and form in words("states").get(place, ()):
        # So are 'Calgary AB' and 'Perth WA', where a town of one name is known.
        return False
    if _NUMBERED.match(head[match.end :]):
        # The SA of 'Supply Agreement SA-27-014' begins a number.
        return False
    if form == "inc" and head[match.end : match.end + 1] == ".":
        return True
    return form[0].isupper() or "." in form or form.lower() in _FORMS_IN_SMALL_LETTERS


_NUMBERED = re.compile(r"[-–/]?\d|[-–/]\w*\d|-op\b")


def goes_on_as_a_sentence(head: str) -> bool:
    """'BOARD SOLD AS IS', 'LAS HOJAS SE VENDEN POR PALET': capitals in which the letters of a form are a word; behind a
    firm's name, as in 'FJORDKARTONG AS AS OF MARCH 1', more may follow."""
    first = next(iter(_forms(head)), None)
    return first is not None and _is_a_word(head, first)


def _forms(head: str) -> list[Found[str]]:
    return [match for match in phrases("company").find(head) if match.value == "legal" and match.first > 0]


def _is_a_word(head: str, match: Found[str]) -> bool:
    """Whether a form's letters are a word of the sentence they stand in: 'SKID STOCK AS OF MAY 2', 'KARTON AB 1. MÄRZ',
    'FALSKARTONG SE BILAGA', 'LE CARTON ET SA PALETTE'. Among small letters 'AB' and 'AS' in capitals are forms."""
    form, behind = head[match.start : match.end], head[match.end :].lstrip()
    shouted = not any(map(str.islower, head[: match.end]))
    if (form.isupper() and not shouted) or behind[:1].islower():
        return False
    begun = phrases("words_like_forms").at(tokens_of(head[match.start :]), 0)
    if begun is not None and not _ends_a_name(head, match):
        return True
    too = phrases("forms_that_are_words").whole(form)
    if too == "from" and _says_from_then(behind):
        return True
    ahead = re.findall(r"[^\W\d_]+", head[: match.start])[-1:]
    return too is not None and any(phrases("ahead_of_words").whole(word) is not None for word in ahead)


def _ends_a_name(head: str, match: Found[str]) -> bool:
    """Whether a firm's name stands right before a form that is a word cut short as well: the 'INC' of 'ALDER PAPER INC
    FREIGHT TERMS', not that of 'WHITE TOP BOARD INC FREIGHT'."""
    name = head[: match.start].strip()
    if phrases("forms_cut_short").whole(head[match.start : match.end]) is None or " " not in name:
        return False
    trade = next((found for found in _words_of_trade(name) if found.end == len(name)), None)
    before = re.findall(r"[^\W\d_]{3,}", name[: trade.start]) if trade is not None else []
    return any(not is_listed(fold(word)) for word in before)


def _words_of_trade(name: str) -> list[Found[str]]:
    return [found for found in phrases("company").find(name) if found.value in ("trade", "weak", "first")]


def _says_from_then(behind: str) -> bool:
    """What follows a German 'AB' that says from when or from how much: '1. MÄRZ', '5 T'; '2027-03-01' and
    '1. PRISLISTA' may follow a firm."""
    counted = _COUNTED.match(behind)
    if counted is None:
        return False
    if counted["day"]:
        return phrases("months").at(tokens_of(behind[counted.end() :]), 0) is not None
    return counted["unit"] is None or phrases("order_units").at(tokens_of(counted["unit"]), 0) is not None


_COUNTED = re.compile(r"(?P<day>\d{1,2}\.\s+(?=[^\W\d]))|\d{1,2}\.(?=\d)|\d+ ?(?P<unit>[^\W\d_]+)")


_JOINED = re.compile(rf"[\s&+.,]*{pattern('range', 'and')}?[\s&.]*")


def end_of_form(head: str, ends: list[Found[str]]) -> int:
    """The end of the first legal form, or of forms that follow each other ('GmbH & Co. KG'), with its full stop."""
    end = ends[0].end
    for match in ends[1:]:
        if not _JOINED.fullmatch(head[end : match.start]):
            break
        end = match.end
    if _OF_A_PLACE.fullmatch(head[end:]) and fold(head[ends[0].start : end]).strip(".") in _PARTNERSHIPS:
        return len(head)
    return end + 1 if head[end : end + 1] == "." else end


_PARTNERSHIPS = frozenset({"cie", "cia"})
_OF_A_PLACE = re.compile(r"\.?\s(?:de\s(?:la\s|l['’])?|du\s|des\s|d['’]|del\s)[A-ZÀ-Ý][^\W\d_]+(?:[-\s][^\W\d_]+)?")
"""'Carton & Cie de l'Ognon': the place is a part of the name."""
