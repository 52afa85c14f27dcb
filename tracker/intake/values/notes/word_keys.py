"""Keys whose entries are words: 'grün = ab Lager, gelb = Anfertigung, Lieferzeit 5 Wochen', 'Standard: minimum 2 t'."""

import re
from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.changes.price_changes import changes_of_row
from tracker.intake.values.changes.withdrawn import withdrawn
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.relieved_charges import NoCharge
from tracker.intake.values.notes.clauses import sentences_of, stops_in
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.notes.topics import OF_TERMS, topic_of
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_of_some, lead_remarked, stock_lead
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import joined, pattern, phrases

_WORD = r"[\"'“„«]?(?P<word>[^\W\d_][^=:;,.\n]{0,29}?)[\"'”“»]?"
_EQUAL = "="
_SIGNS = (_EQUAL, ":", rf"\s[-–—]\s|\s{pattern('stands_for', 'any', 'code')}\s")
"""What stands between a word and what it is for; one of them in all of a text."""
_ENTRIES = tuple(re.compile(rf"\s*{_WORD}\s*(?:{sign})\s*(?P<said>\S.*?)\s*", re.DOTALL) for sign in _SIGNS)
_BEHIND = tuple(re.compile(rf"[;\n|·]|[,.]\s+(?=[^=:;,.\n]{{1,30}}?(?:{sign}))") for sign in _SIGNS)
_LABEL = re.compile(r"[^:=;,\n]{1,30}:\s*(?=[^=:;,\n]{1,30}=)")
_LONGEST = 3


class WordKey(NamedTuple):
    """A word, folded, and what is said of the rows that have it. `names`: it says nothing of terms itself, as 'Lead
    time' does. `alone`: it can be nothing but a key, whether or not a row has it."""

    word: str
    said: str
    names: bool
    alone: bool


@lru_cache(maxsize=4096)
def word_keys(text: str) -> tuple[WordKey, ...]:
    """What a text explains of words, one after the other; () where any part is no entry or is about boards or their
    form ('GC2 = 5 weeks'), and where no entry tells terms."""
    for number, sign in enumerate(_ENTRIES):
        body = text[found.end() :] if number == 0 and (found := _LABEL.match(text)) is not None else text
        entries = [sign.fullmatch(part) for part in _parts(body, number)]
        # 'Freight: 40 EUR/t' says what the amount is, be there a row with that word.
        topics = number > 0 and any(entry is not None and topic_of(entry["word"], *_OF_MONEY) for entry in entries)
        if entries and not topics and all(entry is not None and _is_entry(**entry.groupdict()) for entry in entries):
            told = [_key(entry["word"], entry["said"], equal=number == 0) for entry in entries if entry]
            # The 'T = US$ per short ton' of codes is read with their column; 'Pallets: $12/ST' is a charge.
            coded = number > 0 or all(len(one.word) <= _LONGEST_CODE for one in told)
            tells = tells_more_than_money if coded else tells_terms
            # 'Verrick: EXW. All prices valid until 30 June. Tolland: delivered' is no key and nothing else.
            whole = all(len(sentences_of(one.said)) == 1 for one in told[:-1])
            return tuple(told) if whole and any(tells(_first(one.said)) for one in told) else ()
    return ()


_LONGEST_CODE = 2


def without_rest(text: str) -> tuple[str, str]:
    """A key, and a sentence behind it that holds for all prices or is of their money: 'green = ex stock, yellow = 5
    weeks. All prices delivered'. Any other may go on about the last word."""
    for stop in stops_in(text, _STOP):
        key, rest = text[: stop.start()], text[stop.end() :]
        if _is_of_all(rest) and word_keys(key):
            return key, rest
    return text, ""


def _is_of_all(sentence: str) -> bool:
    """'Validity: 31 December' says what it is of itself."""
    label, sign, _ = sentence.partition(":")
    if sign or "=" in sentence:
        return "=" not in sentence and bool(topic_of(label, *OF_TERMS, *_OF_MONEY))
    return not of_orders(sentence) or bool(joined("all_of_them", "price_words").find(sentence))


def _first(said: str) -> str:
    """The first sentence: 'Tn = tonelada de 1.000 kg. Validez: …' explains a unit."""
    return next(iter(sentences_of(said)), said)


_STOP = re.compile(r"\.\s+(?=[^\W\d_])")


def _parts(text: str, sign: int) -> Iterator[str]:
    """Its entries; what stands behind a comma with a word that tells terms goes on: 'gelb: Anfertigung, Lieferzeit: 5
    Wochen'."""
    whole = ""
    for part in _BEHIND[sign].split(text.strip(" .")):
        entry = _ENTRIES[sign].fullmatch(part)
        before = _ENTRIES[sign].fullmatch(whole)
        told = before is not None and tells_terms(before["said"])
        if whole and (entry is None or (topic_of(entry["word"], *OF_TERMS) and not told)):
            whole = f"{whole}, {part.strip()}"
            continue
        if whole:
            yield whole
        whole = part
    if whole:
        yield whole


def as_key(text: str) -> str:
    """A cell or a word as keys call it."""
    return " ".join(fold(text).strip(" .:=\"'“”„«»").split())


@lru_cache(maxsize=8192)
def words_in_cell(text: str) -> frozenset[str]:
    """What a cell may be called by in a key: all of it, and its parts where it lists several."""
    if len(text) > _LONGEST_CELL:
        return frozenset()
    return frozenset(filter(None, map(as_key, (text, *_LISTED.split(text)))))


_LONGEST_CELL = 40
_LISTED = re.compile(r"\s*[,;/+&]\s*")


def _key(word: str, said: str, *, equal: bool) -> WordKey:
    names = _is_name(word)
    return WordKey(as_key(word), without_name(said), names, equal and names and of_orders(_first(said)))


def without_name(said: str) -> str:
    """What is said behind what a key calls its rows: 'S = special width: lead time 6 weeks'."""
    name, colon, rest = said.partition(":")
    named = colon and ":" not in rest and len(name.split()) <= _LONGEST_NAME
    return rest.strip() if named and not _says_more(name) and statements(rest) else said


_LONGEST_NAME = 4


def _says_more(name: str) -> bool:
    """'Lead time' is what the note tells, 'If cut to sheets' when it holds, 'SBS' of which boards."""
    told = topic_of(name, *OF_TERMS) or statements(name) or find_grade(name) or any(map(str.isdigit, name))
    return bool(told) or any(phrases(section).find(name) for section in ("only_if", "exceptions", "optional"))


def _is_entry(word: str, said: str) -> bool:
    """'To = 1000 kg' explains a unit, and no word of a row."""
    return _is_short(word) and not (said[:1].isdigit() and find_mass_units(word))


def _is_short(word: str) -> bool:
    """A few words, none of which names boards, the form that they come in, all rows or all others."""
    few = len(word.split()) <= _LONGEST and not any(map(str.isdigit, word))
    return few and find_grade(word) is None and not joined("forms", "all_of_them", "the_others").find(word)


def _is_name(word: str) -> bool:
    """'Grün' and 'B'; the 'Lead time' of 'Lead time = 5 weeks' tells what the entry is of, and so does 'Making'."""
    if len(word) == 1:
        return True
    told = topic_of(word, *OF_TERMS, *_OF_MONEY) or statements(word) or lead_remarked(word)
    return not told and not any(phrases(section).find(word) for section in _NO_NAMES)


_OF_MONEY = ("charges", "minimum", "price_words", "valid")
_NO_NAMES = (
    "only_if", "exceptions", "optional", "contact", "legend_labels", "made_so", "stores",
    "from_stock", "sources",
)  # fmt: skip


def tells_terms(said: str) -> bool:
    """Whether anything is said of prices, of how goods come, or that they do no more."""
    return bool(statements(said) or changes_of_row(said)) or withdrawn(said) or _of_time(said)


def tells_more_than_money(said: str) -> bool:
    """The same, but for what prices are in and per."""
    return of_orders(said) or bool(changes_of_row(said)) or withdrawn(said)


def of_orders(said: str) -> bool:
    """Whether anything is said of when and how goods come, or of what is charged beside."""
    return any(isinstance(one, _OF_ORDERS) for one in statements(said)) or _of_time(said)


def _of_time(said: str) -> bool:
    return lead_of_some(said) is not None or stock_lead(said) is not None


_OF_ORDERS = (LeadTime, LeadUnread, SaysMinimum, LeastUnread, Delivery, Validity, ChargeWords, NoCharge)
