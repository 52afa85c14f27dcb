"""Currencies by sign, code and name. A sign that several countries share comes back with all of them."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache, lru_cache

from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Found, Phrases, Token, tokens_of

DOLLARS = ("USD", "CAD", "AUD", "NZD", "HKD", "SGD", "TWD", "MXN", "CLP", "COP", "ARS", "UYU", "DOP")
"""Currencies that are written with a bare $, pesos among them."""
SHARED: dict[str, tuple[str, ...]] = {
    "dollar": DOLLARS,
    "krona": ("SEK", "NOK", "DKK", "ISK"),
    "yen": ("JPY", "CNY"),
    "rupee": ("INR", "PKR", "LKR", "NPR"),
    "franc": ("CHF",),
    "peso": ("MXN", "CLP", "COP", "ARS", "UYU", "DOP"),
    "dirham": ("MAD", "AED"),
    "cent": (*DOLLARS, "EUR"),
}


@dataclass(frozen=True, slots=True)
class CurrencyReading:
    """The ISO 4217 codes that a sign or name may mean. `cents`: it names the hundredth part (¢, p).

    `bare_dollar`: a '$' (or '¢') without a country, which is USD unless the file names another dollar or an address
    outside the United States.
    """

    codes: tuple[str, ...]
    words: str
    cents: bool = False
    bare_dollar: bool = False

    @property
    def code(self) -> str | None:
        """The one currency it can be, or None."""
        return self.codes[0] if len(self.codes) == 1 else None


_COATINGS = frozenset({"c1s", "c2s", "c0s"})


class _Currencies(Phrases[tuple[str, bool]]):
    """The S of 'C1S $/ST' ends a coating, and makes no dollar of Singapore; 'TT$' names a country that is not known."""

    def at(self, found: Sequence[Token], place: int) -> Found[tuple[str, bool]] | None:
        match = super().at(found, place)
        if match is None:
            return None
        around = [word for word, _, _ in found[max(0, place - 2) : place + 1]]
        ends_a_coating = len(around) == len("c1s") and "".join(around) in _COATINGS
        if ends_a_coating and found[place - 2][2] == found[place][1] - 1:
            return None
        if found[place][0] == "ft" and place and found[place - 1][0] == "sq":
            # The forint of Hungary is written like a foot.
            return None
        if any(is_other(found, place) for is_other in (_ends_per_cent, _tells_apart, _hundred)):
            return None
        return None if _behind_letters(found, place) or _parted(found, match) else match


def _parted(found: Sequence[Token], match: Found[tuple[str, bool]]) -> bool:
    """The 't' of '4.2 t - €795' and its '€' have more between them than the two of 'T €'; the 'a' of 'a $45 fee' is a
    word, and that of 'A $ 1,228' and 'Price A $/t' Australia's."""
    letter, sign = found[match.first], found[match.after - 1]
    if match.after - match.first == 1 or len(letter[0]) > 1:
        return False
    article = letter[0] == "a" and sign[1] > letter[2] and _counts_money(found, match)
    return article or found[match.first + 1][1] - letter[2] > 1


def _counts_money(found: Sequence[Token], match: Found[tuple[str, bool]]) -> bool:
    """A figure right behind the sign, in a sentence."""
    glued = match.after < len(found) and found[match.after][1] == found[match.after - 1][2]
    figure = glued and found[match.after][0][0].isdigit()
    return figure and any(word.isalpha() for word, *_ in (*found[: match.first], *found[match.after :]))


def _ends_per_cent(found: Sequence[Token], place: int) -> bool:
    """The 'cent' of '10 per cent' and 'cinq pour cent' is no hundredth of a dollar."""
    shares = phrases("percent").among(found) if found[place][0] == "cent" else []
    return any(share.first < place < share.after for share in shares)


def _hundred(found: Sequence[Token], place: int) -> bool:
    """The 'cent' of 'commandes de cent tonnes' counts tonnes; that of '98 cent kg' is counted itself, and 'Cent pound'
    and 'Price cent kg' tell what a price is in."""
    if found[place][0] != "cent" or place in (0, len(found) - 1) or found[place - 1][0][0].isdigit():
        return False
    unit = phrases("basis").at(found, place + 1)
    several = unit is not None and unit.first == place + 1 and found[place + 1][0].endswith("s")
    return several and not phrases("price_words").among(found[:place])


def _tells_apart(found: Sequence[Token], place: int) -> bool:
    """The C of 'Zone C $/cwt' tells one place from the next, and makes no dollar of Canada; so does the A of 'List A
    $', and of 'Price A $/ST', as board is not sold in such units where other dollars with a letter are. It is in
    Canada: the C of 'All prices C $/ST' is its dollar's, for no class is called so. That of 'Price C $/ST' may be."""
    letter, sign = found[place], found[place + 1] if place + 1 < len(found) else ("", 0, 0)
    apart = len(letter[0]) == 1 and letter[0].isalpha() and sign[0] == "$" and sign[1] > letter[2]
    if not apart or not place or letter[1] - found[place - 1][2] > 1:
        return False
    named = found[place - 1][0]
    if letter[0] == "c" and phrases("price_lists").whole(named) and not phrases("list_names").whole(named):
        return False
    if phrases("headers").whole(named) in ("destination", "grade") or phrases("tiers").whole(named) is not None:
        return True
    units = phrases("basis").among(found[place + 2 : place + 2 + _LONGEST_UNIT])
    return phrases("headers").whole(named) == "price" and bool(units) and units[0].value in _AMERICAN


_AMERICAN = frozenset({"short_ton", "cwt", "msf", "lb"})
_LONGEST_UNIT = 4


def _behind_letters(found: Sequence[Token], place: int) -> bool:
    """A '$' right behind a letter or two that are no currency with it."""
    before = found[place - 1] if place and found[place][0] == "$" else ("", 0, 0)
    if not before[0].isalpha() or len(before[0]) > _LONGEST_COUNTRY or before[2] != found[place][1]:
        return False
    # The S of 'C1S$' stands behind a figure.
    return place == 1 or not (found[place - 2][0].isdigit() and found[place - 2][2] == before[1])


_LONGEST_COUNTRY = 3


@cache
def currency_phrases() -> Phrases[tuple[str, bool]]:
    """Every currency's words -> (code or shared sign, whether it is the hundredth part)."""
    meanings: dict[tuple[str, bool], tuple[str, ...]] = {
        (key, False): found for key, found in words("currency").items()
    }
    meanings.update({(key, True): found for key, found in words("cents").items()})
    return _Currencies(meanings)


def reading_of(key: str, cents: bool, text: str) -> CurrencyReading:
    """A word list's key as a reading: 'EUR' is certain, 'dollar' and 'krona' are several."""
    if key == "CAD" and text.endswith(" can"):
        # '$ can.' is Canada's; in 'prices in $ can change' no country is named.
        return CurrencyReading(("CAD", "USD"), text, cents)
    if key == "krona" and cents and "ö" in text.casefold():
        # Denmark and Norway spell it 'øre', and Iceland's krona has no such part.
        return CurrencyReading(("SEK",), text, cents)
    return CurrencyReading(SHARED.get(key, (key,)), text, cents, bare_dollar=key == "dollar")


@lru_cache(maxsize=8192)
def currency_text(text: str) -> CurrencyReading | None:
    """A text that is a currency and nothing else: 'USD', '(€)', 'US dollars', 'pence'."""
    meaning = currency_phrases().whole(text)
    return None if meaning is None else reading_of(meaning[0], meaning[1], text.strip())


# One letter is a currency only beside a number or a unit; 'ft', 'fr' and 'lei' are other words in a sentence, and 's/'
# is 'sans'.
NOT_IN_SENTENCES = frozenset({"c", "p", "ft", "fr", "ct", "fs", "lei", "x", "m n", "s/", "rp"})


# 'KC' in a legend is a board; crowns and złoty stand so in a text all in capitals only.
_CODES_IN_CAPITALS = frozenset({"KC", "ZL"})


def _is_of_a_longer_word(text: str, match: Found[tuple[str, bool]]) -> bool:
    """The 'S./' of 'dollars U.S./ton' and the 'RS' of 'schedule RS-14' name no money."""
    before, behind = text[max(0, match.start - 1) : match.start], text[match.end : match.end + 2]
    letters = text[match.start : match.start + 1].isalpha()
    return letters and (before == "." or (behind[:1] == "-" and behind[1:].isdigit()))


@lru_cache(maxsize=8192)
def find_currencies(text: str) -> tuple[CurrencyReading, ...]:
    """Every currency that a sentence, title or header names, in order; single letters and 'Ft' are left alone."""
    folded = fold(text)
    found = []
    for match in currency_phrases().among(tokens(folded)):
        piece = folded[match.start : match.end]
        if (
            piece.strip(".") not in NOT_IN_SENTENCES
            and not _is_a_code(text, match)
            and not _is_another_word(text, match)
            and not _is_of_a_longer_word(text, match)
            and not counts_a_hundred(text, match)
        ):
            found.append(reading_of(match.value[0], match.value[1], without_ton(text, match)))
    return tuple(found)


def without_ton(text: str, match: Found[tuple[str, bool]]) -> str:
    """The words of a currency: the '€' of '5 t €/t', where 't€' by itself counts thousands of euros."""
    said = text[match.start : match.end]
    letter, _, sign = said.partition(" ")
    return sign.strip() if sign and letter == "t" and text[: match.start].rstrip()[-1:].isdigit() else said


def is_no_money(text: str, match: Found[tuple[str, bool]]) -> bool:
    """The French 'cent' that is a hundred, and the 't €' behind a weight: both are read by themselves."""
    return counts_a_hundred(text, match) or without_ton(text, match) != text[match.start : match.end]


def counts_a_hundred(text: str, match: Found[tuple[str, bool]]) -> bool:
    """The French 'cent' of 'les cent livres' is a hundred."""
    return match.value[1] and any(
        unit.start <= match.start and match.end < unit.end for unit in phrases("basis").find(text)
    )


_WORDS_TOO = frozenset({"ils", "try", "pen", "mad", "ron", "cop", "bob", "ars"})


def _is_another_word(text: str, match: Found[tuple[str, bool]]) -> bool:
    """'Ils sont valables' and 'Try us' name no money, where 'ILS' among small letters does, and 'mad' behind
    'Currency:'."""
    piece = text[match.start : match.end]
    if piece.casefold() not in _WORDS_TOO or _is_called_money(text, match):
        return False
    return not piece.isupper() or (text.isupper() and text != piece)


def _is_called_money(text: str, match: Found[tuple[str, bool]]) -> bool:
    """'Currency: mad', 'PRICES IN ILS PER TONNE': nothing follows but a stop or a unit."""
    before, behind = text[: match.start].rstrip(" :="), text[match.end :].lstrip()
    words_behind = behind[:1].isalpha() and phrases("per").at(tokens_of(behind), 0) is None
    goes_on = words_behind or behind[:1] in ("'", "’")
    named = any(one.value == "currency" and one.end == len(before) for one in phrases("headers").find(before))
    counted = next((one for one in phrases("counted_in").find(before) if one.end == len(before)), None)
    priced = counted is not None and bool(phrases("price_words").find(before[: counted.start]))
    return not goes_on and (named or priced)


def _is_a_code(text: str, match: Found[tuple[str, bool]]) -> bool:
    return text[match.start : match.end] in _CODES_IN_CAPITALS and not text.isupper()


@lru_cache(maxsize=4096)
def counted_in_thousands(text: str, currency: str) -> bool:
    """Whether a text speaks of thousands of a currency ('Precios en miles de CLP', 'tkr'): no plain prices."""
    if phrases("money_thousands").whole(currency) == "glued":
        return True
    at = text.find(currency)
    counts = phrases("money_thousands").find(text[: max(at, 0)])
    # The '000' of '1 200 000 €' ends a figure.
    return any(not text[match.end : at].strip(" .") and not _ends_in_figure(text[: match.start]) for match in counts)


def _ends_in_figure(text: str) -> bool:
    return text.rstrip(" .,'’\u00a0\u202f")[-1:].isdigit()


def _said_once(one: str, other: str) -> str:
    """The words of two namings, without saying 'USD USD'."""
    return one if other in one.split() or not other else f"{one} {other}".strip()


def combined(one: CurrencyReading, other: CurrencyReading) -> CurrencyReading:
    """Two namings of one currency: '$' and 'USD' are USD; two that exclude each other leave both open."""
    both = tuple(code for code in one.codes if code in other.codes)
    joined = both or (*one.codes, *(code for code in other.codes if code not in one.codes))
    bare = one.bare_dollar and other.bare_dollar
    return CurrencyReading(joined, _said_once(one.words, other.words), one.cents or other.cents, bare)


def with_country(reading: CurrencyReading, behind: str) -> CurrencyReading | None:
    """The 'US' that stands alone behind 'cents per pound' says whose cents they are; None where the words say none of
    those that the sign may mean."""
    code = phrases("whose_money").whole(behind)
    return replace(reading, codes=(code,), bare_dollar=False) if code in reading.codes else None
