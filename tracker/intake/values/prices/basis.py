"""What a price is per, by the words alone. 'ton' stays two things until the file says which."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache

from tracker.intake.values.prices.counted_units import count_of, thousand_of
from tracker.intake.values.prices.papers_of_prices import is_of_paper
from tracker.intake.words.fold import fold
from tracker.intake.words.likeness import is_listed, nearest_word
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, Phrases, Token, tokens_of
from tracker.trade.basis import Basis

_TONS = frozenset({Basis.SHORT_TON, Basis.TONNE})
# Words that mean a tonne to those who write them, though alone they don't settle it.
_TONELADA = ("tonelada", "toneladas")
_METRIC_WORDS = ("t", "to", *_TONELADA)


@dataclass(frozen=True, slots=True)
class BasisReading:
    """What a unit word may mean.

    `bases`: the possible bases; one is certain, two is the ambiguous ton. `foreign`: a unit that is known but not
    converted (ream, roll, 100 sheets, 100 kg, long ton …); then `bases` is empty, or the word may be either.
    `needs_sheet`: a thousand or a piece of something, which is sheets only beside a sheet size.
    `metric_hint`: a lone 't', 'to' or 'tonelada', which means a tonne in a metric file.
    """

    bases: frozenset[Basis]
    words: str
    foreign: str | None = None
    needs_sheet: bool = False
    metric_hint: bool = False

    @property
    def basis(self) -> Basis | None:
        """The one basis it can be, or None. What needs a sheet size is certain only for the caller who has one."""
        return next(iter(self.bases)) if len(self.bases) == 1 and self.foreign is None else None

    @property
    def ambiguous_ton(self) -> bool:
        return self.bases == _TONS


def hints_at_tonne(word: str) -> bool:
    """'t', 'to' and 'tonelada', as written: 'T' and 'ton' are as often short tons."""
    return fold(word).strip(". ") in _METRIC_WORDS and word.strip(". ") != "T"


def is_tonelada(words: str) -> bool:
    """Whether the ton of these words is spelt out in Spanish, and not cut to a letter that others share."""
    return any(token in _TONELADA for token, _, _ in tokens_of(words))


@cache
def basis_phrases() -> Phrases[str]:
    """Every unit's words -> the word list's key."""
    return phrases("basis")


@cache
def per_words() -> Phrases[str]:
    """Words that stand between a price and its unit: 'per', 'je', 'la' …"""
    return phrases("per")


def reading_of(key: str, text: str) -> BasisReading:
    """A word list's key as a reading. `text` is the unit as written, because its capitals matter ('t', 'St')."""
    if key == "ton":
        return BasisReading(_TONS, text, metric_hint=hints_at_tonne(text))
    if key == "thousand":
        return BasisReading(frozenset({Basis.THOUSAND_SHEETS}), text, needs_sheet=True)
    if key == "each":
        return BasisReading(frozenset({Basis.SHEET}), text, needs_sheet=True)
    if key in set(Basis):
        # 'St.' is a piece in German and 'st' in Swedish, 'ST' a short ton.
        foreign = "piece" if text.strip(" .") in ("St", "st") else None
        return BasisReading(frozenset({Basis(key)}), text, foreign)
    return BasisReading(frozenset(), text, foreign=key)


def unit_at(found: Sequence[Token], place: int, text: str) -> tuple[BasisReading, int] | None:
    """The unit that begins at this token, and the number of the token after it. '1 t' and 'one tonne' are a ton as
    't' is."""
    match = basis_phrases().at(found, place)
    if match is None and _is_one(found, place):
        unit = unit_at(found, place + 1, text)
        # 'Par une palette' tells how something comes.
        return unit if unit is None or found[place][0] == "1" or unit[0].bases else None
    if match is not None and _counts_money(found, place):
        return None
    if match is not None and match.value == Basis.SHEET:
        ton = basis_phrases().at(found, match.after) if match.after < len(found) else None
        if ton is not None and ton.value == "ton":
            # 'Sheet ton' may be a short ton cut short, and is no sheet.
            return BasisReading(frozenset({Basis.SHEET, *_TONS}), text[match.start : ton.end]), ton.after
    if match is not None and match.value != "thousand":
        match = _with_explanation(found, match)
        return reading_of(match.value, text[match.start : match.end]), match.after
    counted = count_of(found, place, text) if match is None else thousand_of(found, match, text)
    if counted is None:
        return None
    key, after = counted
    return reading_of(key, text[found[place][1] : found[after - 1][2]]), after


def _misspelt_unit_at(found: Sequence[Token], place: int, text: str) -> tuple[BasisReading, int] | None:
    """'per hundredwieght', '/ Tonnne': a unit's long word with one letter wrong, or a shorter one with one too many, as
    long as all words that it may be mean the same."""
    word, start, end = found[place]
    near = nearest_word(word, "basis")
    meant = (near,) if near is not None else _one_letter_less(word)
    units = [unit_at([*found[:place], (each, start, end), *found[place + 1 :]], place, text) for each in meant]
    keys = {None if unit is None else (unit[0].bases, unit[0].foreign, unit[1]) for unit in units}
    return units[0] if len(keys) == 1 else None


def _one_letter_less(word: str) -> tuple[str, ...]:
    """The words of units in one that has a letter twice too often: 'tonnne', 'sheeet', and no 'tonnes' or '10000'."""
    if len(word) < _SHORTEST_MISSPELT or not word.isalpha() or is_listed(word):
        return ()
    shorter = {word[:place] + word[place + 1 :] for place in range(1, len(word)) if word[place] == word[place - 1]}
    return tuple(one for one in sorted(shorter) if basis_phrases().whole(one) is not None)


_SHORTEST_MISSPELT = 4


def _counts_money(found: Sequence[Token], place: int) -> bool:
    """The thousands of 'EUR 000/t', where those of 'per 000' and "£/'000" are what a price is for."""
    if found[place][0] != "000":
        return False
    before = next((at for at in range(place - 1, -1, -1) if found[at][0] not in "'’"), None)
    return before is None or (found[before][0] != "/" and per_words().at(found, before) is None)


def _is_one(found: Sequence[Token], place: int) -> bool:
    """A single 1, once, in figures or in words, with a word behind it."""
    one = found[place][0] == "1" or phrases("count_words").whole(found[place][0]) == "1"
    return one and place + 1 < len(found) and found[place + 1][0].isalpha()


def _with_explanation(found: Sequence[Token], match: Found[str]) -> Found[str]:
    """'ton (2,000 lb)' and 'cwt (100 lb)': what stands in brackets says which ton, or only repeats the unit."""
    after = match.after
    if after >= len(found) or found[after][0] not in "(=":
        return match
    inner = basis_phrases().at(found, after + 1) if after + 1 < len(found) else None
    if inner is None:
        return match
    end = inner.after + 1 if inner.after < len(found) and found[inner.after][0] == ")" else inner.after
    agreed = {match.value, inner.value}
    if match.value == "ton" and inner.value in ("short_ton", "tonne", "long_ton"):
        return Found(inner.value, match.start, found[end - 1][2], match.first, end)
    if len(agreed) == 1:
        return Found(match.value, match.start, found[end - 1][2], match.first, end)
    return match


def basis_in_a_word(text: str) -> BasisReading | None:
    """What a price is per where one word says both: 'Tonnenpreis', 'kilopris'."""
    found = phrases("unit_prices").find(text)
    return reading_of(found[0].value, text[found[0].start : found[0].end]) if len(found) == 1 else None


@lru_cache(maxsize=16384)
def basis_text(text: str) -> BasisReading | None:
    """A text that says what a price is per and nothing else: 'ST', '/cwt', 'per ton of 2,000 lb', 'M SHEETS'."""
    found = [token for token in tokens_of(text) if token[0] not in "[]:;*"]
    if len(found) > 2 and found[0][0] == "(" and found[-1][0] == ")":
        found = found[1:-1]
    # 'Each' and 'ea' by themselves lead to nothing, and are a piece.
    place = min(after_per(found, 0, weak=True), len(found) - 1)
    if place < 0:
        return None
    unit = unit_at(found, place, text)
    return unit[0] if unit is not None and unit[1] == len(found) else None


@lru_cache(maxsize=16384)
def find_basis(text: str) -> BasisReading | None:
    """The first unit in a header or sentence that follows '/', 'per', 'je', 'par' …: 'Price per ton' -> ton."""
    found = _found_basis(text)
    return None if found is None else found[0]


def basis_span(text: str) -> tuple[int, int] | None:
    """The numbers of the first token of 'per' and of the token after the unit that find_basis reads."""
    found = _found_basis(text)
    return None if found is None else (found[1], found[2])


def _found_basis(text: str) -> tuple[BasisReading, int, int] | None:
    return next(found_bases(text), None)


def found_bases(text: str) -> Iterator[tuple[BasisReading, int, int]]:
    """Every unit that follows 'per', with the numbers of the first token of 'per' and of the token after the unit."""
    found = tokens_of(text)
    for place in range(len(found)):
        after = after_per(found, place, weak=False)
        if place < after < len(found) and not _counts_something(found, place):
            unit = unit_at(found, after, text) or _misspelt_unit_at(found, after, text)
            other = unit is not None and (_is_board(found, after, unit[0]) or _are_several(found, after, unit[0]))
            if unit is not None and not (
                other or are_goods(found, after, unit[0]) or _is_paper(found, place, after, unit)
            ):
                yield unit[0], place, unit[1]


def _is_paper(found: Sequence[Token], place: int, after: int, unit: tuple[BasisReading, int]) -> bool:
    return Basis.SHEET in unit[0].bases and is_of_paper(found, place, after, unit[1])


def _is_board(found: Sequence[Token], after: int, reading: BasisReading) -> bool:
    """'Pour le carton gris', 'para el cartón': board, and no carton that prices are per."""
    return reading.foreign == "carton" and phrases("articles").whole(found[after - 1][0]) is not None


def _are_several(found: Sequence[Token], after: int, reading: BasisReading) -> bool:
    """'Los palets van incluidos', 'le prix comprend les palettes': how board comes, and nothing that prices are per."""
    things = reading.foreign in _THINGS or Basis.SHEET in reading.bases
    return things and phrases("per_several").whole(found[after - 1][0]) == "any"


def are_goods(found: Sequence[Token], after: int, reading: BasisReading) -> bool:
    """'Prix pour bobines', 'prices for sheets': what is sold, and no unit; 'pour la bobine' and 'for 1,000 sheets' are
    what prices are per."""
    several = after > 0 and phrases("per_several").whole(found[after - 1][0]) == "goods"
    return several and phrases("several_goods").whole(reading.words) is not None


_THINGS = frozenset({"pallet", "roll", "carton", "truckload", "ream"})


_GRAMS = frozenset({"g", "gr", "grs", "gm", "gms", "gram", "grams", "gramm", "grammes", "gramos"})


def _counts_something(found: Sequence[Token], per: int) -> bool:
    """'lb/MSF', '1,500 sheets per pallet' and '2 t per grade' are weights and packings, not what a price is per, where
    'rolls - per MSF' and 'rolls (per MSF)' name what is sold first."""
    before = per - 1
    while before >= 0 and found[before][0] in "()":
        before -= 1
    if before < 0 or _dotted(found, before) or _counts_money(found, before):
        return False
    # A dash is no token, but leaves a gap.
    apart = before < per - 1 or found[per][1] > found[before][2] + 1
    if apart and phrases("forms").at(found, before) is not None and not _is_counted(found, before):
        return False
    return found[before][0] in _GRAMS or basis_phrases().at(found, before) is not None


def _is_counted(found: Sequence[Token], place: int) -> bool:
    """The sheets of '500 sheets (per ream)', and not the reels of 'GC2 reels (per tonne)'."""
    if place == 0 or not found[place - 1][0].isdigit():
        return False
    return place == 1 or found[place - 2][2] < found[place - 1][1]


def _dotted(found: Sequence[Token], place: int) -> bool:
    """The t of '€ h.t. la tonne' ends a short form and is no ton."""
    if place == 0:
        return False
    (one, _, end), (other, start, _) = found[place - 1], found[place]
    return len(one) == len(other) == 1 and one.isalpha() and start == end + 1 and one + other == "ht"


def after_per(found: Sequence[Token], place: int, *, weak: bool) -> int:
    """The token after '/', 'per', 'por la' … at this place; the place itself where there is none.

    `weak`: 'a', 'the' count too.
    """
    end = min(len(found), place + _MOST_BEFORE_A_UNIT)
    while place < end:
        per = per_words().at(found, place)
        if found[place][0] == "/":
            place += 1
        elif per is not None and (weak or per.value == "strong"):
            place = per.after
        else:
            break
    return place


_MOST_BEFORE_A_UNIT = 8
"""Words such as those of 'per each the'; of a thousand 'a' in a row none leads to a unit."""
