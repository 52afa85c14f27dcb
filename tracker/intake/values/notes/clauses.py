"""The sentences and part sentences of a note, each of which says its own thing."""

import re
from functools import cache, lru_cache

from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases, words
from tracker.intake.words.phrases import tokens_of, without

# A line that goes on in small letters or with a figure, or whose last one ends in a comma or colon, is one with it.
_CLAUSE = re.compile(r"[.;!](?:\s|$)|(?<![,:])\s*\n\s*(?![a-zà-ÿ\d(\s])|\s[–—|·•]\s")


_NO_DECIMALS = re.compile(r"(\d)[.,:]\s?[-–—]{1,2}(?=\s|/|$)(?!\s*\d)")
"""The sign for no decimals in 'EUR 18,– je Tonne', 'CHF 18.–/t' and '18:- per ton'."""


COMMA = re.compile(r",(?!\d)")
"""Between the parts of a clause; that of '1,250' is none."""

COMMA_OF_NO_DAY = re.compile(r",(?!\d|\s(?:19|20)\d\d\b)")
"""The same, where a part may tell a day: not that of 'January 1, 2027'."""


def clauses(text: str) -> list[str]:
    """The sentences and part sentences of a note, parted at full stops, semicolons, line breaks, dashes and dots."""
    return list(_parted(text))


@lru_cache(maxsize=1024)
def _parted(text: str) -> tuple[str, ...]:
    """Remembered for a moment, because dozens of rules look at the clauses of one note in turn."""
    text = _NO_DECIMALS.sub(r"\1", text)
    pieces, start = [], 0
    for match in _CLAUSE.finditer(text):
        if match.group()[0] == "." and _abbreviation(text, match.start()):
            continue
        before, behind = text[start : match.start()], text[match.end() :]
        dash = match.group().strip() in "–—"
        if dash and (_spans_time(before, behind) or _spans_figures(before, behind) or _names_amount(before, behind)):
            continue
        pieces.append(text[start : match.start()])
        start = match.end()
    pieces.append(text[start:])
    return tuple([piece.strip() for piece in pieces if piece.strip()])


_STOP = re.compile(r"[;.]\s")


def sentences_of(text: str) -> list[str]:
    """What stands between full stops and semicolons, with the dashes within: the stop of 'U.S. dollars' is none."""
    stops = stops_in(text, _STOP)
    starts, ends = [0, *(stop.end() for stop in stops)], [*(stop.start() for stop in stops), len(text)]
    return [text[start:end] for start, end in zip(starts, ends, strict=True)]


def stops_in(text: str, stops: re.Pattern[str]) -> list[re.Match[str]]:
    """Where a text has one of these stops, each by its first letter, without the full stops of abbreviations: none in
    'incl. freight'."""
    found = stops.finditer(text)
    return [stop for stop in found if stop.group()[0] != "." or not _abbreviation(text, stop.start())]


def _spans_time(before: str, behind: str) -> bool:
    """'1 July – 30 September', '01/07/2026 – 30/09/2026' and '2026-07-01 – 2026-09-30' are one span of time each."""
    found = tokens_of(before[-12:])
    behind_a_month = bool(found) and phrases("months").at(found, len(found) - 1) is not None
    figures = re.search(r"\d[./]\d{1,4}\.?$|\d{4}-\d\d-\d\d$", before) is not None
    return (behind_a_month or figures) and re.match(r"\d{1,2}\b|\d{4}-\d\d-\d\d\b", behind) is not None


def _spans_figures(before: str, behind: str) -> bool:
    """'3 – 4 weeks': two small figures, the second the larger one; and the 'item 3 – 10 weeks' of one line."""
    low, high = re.search(r"(?<![\d.,])\d{1,2}$", before), re.match(r"(\d{1,3})(?![\d.,]\d)\s*[^\W\d]", behind)
    return low is not None and high is not None and int(low.group()) < int(high[1])


_AMOUNT = re.compile(r"(?:[A-Z]{3}\s?|[$€£]\s?)?\d[\d.,]*\s?(?:%|[$€£]|[A-Z]{3}\b|/)")


def _names_amount(before: str, behind: str) -> bool:
    """'Energy surcharge – $12/ST', 'Fracht — 45 EUR/t': nothing but a charge's name, and what it comes to."""
    if len(before) > _LONGEST_NAME or _AMOUNT.match(behind) is None:
        return False
    named = phrases("charges").find(before)
    rest = without(before, named)
    return bool(named) and not without(rest, phrases("surcharge_words").find(rest)).strip(" .:-")


_LONGEST_NAME = 50
"""Letters of a charge's name."""


_DAY_AND_MONTH = re.compile(r"(?<![\d.])\d{1,2}\.\d{1,2}$")


def _abbreviation(text: str, stop: int) -> bool:
    """A full stop behind one or a few letters known to be cut short, behind a day's number ('31. Dezember'), or in the
    German minus of 'Preise ./. 3 %'."""
    # Nothing farther off tells, and a cell may have thousands of stops.
    before, behind = text[max(0, stop - _NEAR) : stop], text[stop + 1 : stop + 1 + _NEAR].lstrip()
    if before.endswith("./"):
        return True
    if behind[:1].isdigit() and _LETTERS.search(before):
        # 'M.O.Q. 5 t'.
        return True
    last = re.search(r"[^\s.]*$", before)
    word = fold(last.group()).lstrip("([-") if last is not None else ""
    if word.isdigit():
        # '31. Dezember': a day's number before its month.
        following = tokens_of(text[stop : stop + 24])
        if _DAY_AND_MONTH.search(before) and _goes_on(behind):
            # 'vom 01.01. bis 31.03.2027', '1.7. - 30.9.2026'.
            return True
        return len(word) <= 2 and bool(following) and phrases("months").at(following, 0) is not None
    if behind[:1].isdigit() and phrases("months").whole(word) is not None:
        # 'Aug. 31'.
        return True
    return not _ends_a_sentence(f"{before}.", word, behind) and word in _short_forms()


_NEAR = 64
"""Signs before and behind a full stop that are looked at."""


_LETTERS = re.compile(r"(?<![^\W\d_])(?:[^\W\d_]\.){2,}[^\W\d_]$")


def _ends_a_sentence(before: str, word: str, behind: str) -> bool:
    """'USD per short ton. CUK …', 'Camion de 24 t. Prix …', 'exkl. MwSt. Lieferzeit …', 'in dollars U.S. Add …';
    'USD/ton. corta' and 'Min. 5 t. pro Sorte' go on."""
    unit = len(word) > 1 and phrases("basis").whole(word) is not None
    if unit and _begins_with_a_measure(behind):
        # 'USD per short ton. 22 pt and up in CAD'.
        return True
    timed = _tells_a_time(before, behind) or _BEHIND_A_TIME.search(before) is not None
    weighed = _WEIGHED.search(before) is not None
    ends = unit or weighed or _names_tax(before) or _names_whose_money(before) or timed
    return ends and behind[:1].isupper()


def _begins_with_a_measure(behind: str) -> bool:
    figure = _MEASURE.match(behind)
    units = ("caliper_units", "weight_units")
    return figure is not None and any(phrases(of).at(tokens_of(behind[figure.end() :]), 0) for of in units)


_MEASURE = re.compile(r"\d{1,4}(?:[.,]\d+)?\s?(?=\D)")


def _tells_a_time(before: str, behind: str) -> bool:
    """'Delivery: 4-6 wk. Minimum 5 t'; '4 wks. ARO' and '3 Wo. Lieferzeit' go on about the time."""
    figure = _COUNTED.search(before)
    unit = phrases("lead").whole(figure["unit"]) if figure is not None else None
    return unit in _UNITS_OF_TIME and phrases("lead").at(tokens_of(behind[:_LONGEST_TAX]), 0) is None


_COUNTED = re.compile(r"\d\s?(?P<unit>[^\W\d_]{1,6})\.$")
_BEHIND_A_TIME = re.compile(
    rf"\d\s?{pattern('lead', 'day', 'working_day', 'week')}\s{pattern('about', 'any')}\.?$", re.IGNORECASE
)
"""'4 weeks approx.': what is about it stands ahead."""
_UNITS_OF_TIME = ("day", "working_day", "week", "month")


def _names_tax(before: str) -> bool:
    """'Zzgl. MwSt.', 'sin I.V.A.': with tax a vendor has said what is not in his prices."""
    found = phrases("tax").find(before[-_LONGEST_TAX:])
    return bool(found) and found[-1].value in ("named", "with_tax") and found[-1].end >= len(before[-_LONGEST_TAX:]) - 1


def _names_whose_money(before: str) -> bool:
    """'Dollars U.S.'; the 'U.S.' of 'in U.S. Funds' leads to the money that it is of."""
    text = before[-_LONGEST_TAX:]
    found = phrases("currency").find(text)
    return bool(found) and found[-1].end >= len(text) - 1 and " " in text[found[-1].start : found[-1].end]


_LONGEST_TAX = 32
"""Letters of the longest name of a tax, and room for the word before it."""


_WEIGHED = re.compile(r"\d\s?t\.$")


def _goes_on(text: str) -> bool:
    """Behind a day and its month: 'bis 31.03.2027', in capitals as well, '- 30.9.2026'."""
    to = re.match(rf"(?:[-–]|{pattern('range', 'any')})\s*\d", fold(text))
    return text[:1].islower() or to is not None


@cache
def _short_forms() -> frozenset[str]:
    listed = (word for group in words("short_forms").values() for word in group)
    # Of 'env.' and 'environ' only the first is cut short.
    about = (word for group in words("about").values() for word in group if word.endswith("."))
    return frozenset(fold(word).rstrip(".") for word in (*listed, *about))
