"""One spelling for matching: lower case, plain dashes, quotes and spaces, letters without accents.

Folding keeps every character's place, so a span found in folded text is the same span in the text as written.
Spellings that need more than one character ('ü' as 'ue', 'ß' as 'ss') are variants of the word, not of the text.
"""

import re
import unicodedata
from functools import cache

_SAME = {
    "ß": "s", "ø": "o", "ł": "l", "đ": "d", "ð": "d", "ı": "i", "æ": "a", "œ": "o",
    "µ": "u", "μ": "u", "×": "x", "✕": "x", "⨯": "x",
    "º": "°", "⁄": "/", "∕": "/", "﹣": "-", "＋": "+", "＄": "$", "￠": "¢", "￡": "£", "￥": "¥",
    "，": ",", "．": ".",
}  # fmt: skip
_DASHES = "‐‑‒–—―−"
_DOUBLE_QUOTES = "“”„‟″‶"
_SINGLE_QUOTES = "‘’‚‛′`´ʼ"
_SPACES = "\t\n\r\v\f\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000"
# Invisible, but each keeps its place.
_INVISIBLE = "\u200b\u200c\u200d\u200e\u200f\u2060\ufeff\u00ad"
_ASCII_LOWER = str.maketrans("ABCDEFGHIJKLMNOPQRSTUVWXYZ\t\n\r\v\f", "abcdefghijklmnopqrstuvwxyz     ")


def _folded_letter(letter: str) -> str:
    base = unicodedata.normalize("NFD", letter)[0].lower()
    return base if len(base) == 1 else letter


def _table() -> dict[int, str]:
    table = {code: _folded_letter(chr(code)) for code in range(0x41, 0x250) if chr(code).isalpha()}
    table.update({ord(a): b for a, b in _SAME.items()})
    table.update({ord(a.upper()): b for a, b in _SAME.items() if len(a.upper()) == 1 and a.upper() != a and a != "ı"})
    table.update(dict.fromkeys(map(ord, _DASHES), "-"))
    table.update(dict.fromkeys(map(ord, _DOUBLE_QUOTES), '"'))
    table.update(dict.fromkeys(map(ord, _SINGLE_QUOTES), "'"))
    table.update(dict.fromkeys(map(ord, _SPACES + _INVISIBLE), " "))
    # Combining accents that stand alone after their letter.
    table.update(dict.fromkeys(range(0x300, 0x370), " "))
    return table


_TABLE = _table()


# 'Livré' is delivered and 'livre' a pound: the one word of the trade that its accent alone tells from another.
_TOLD_BY_ACCENT = re.compile(r"(?<![^\W\d_])livr(?=é|É)", re.IGNORECASE)


def fold(text: str) -> str:
    """The text as it is matched, of the same length: fold('Prix/t\\u00a0–') is 'prix/t -'.

    The accent of 'livré' stays, and the 'a' of 'prices at a $/t' gets that of 'à $/t'.
    """
    folded = text.translate(_ASCII_LOWER if text.isascii() else _TABLE)
    if "livre" in folded and not text.isascii():
        folded = _with_telling_accents(text, folded)
    return _with_articles(text, folded) if "a $" in folded else folded


def _with_articles(text: str, folded: str) -> str:
    signs = list(folded)
    for article in _ARTICLE.finditer(text):
        signs[article.start()] = "à"
    return "".join(signs)


_ARTICLE = re.compile(r"(?<![^\W_])[aàá](?=\s[$＄])")
"""Before a '$' a small letter is a word, and a capital one Australia's."""


def _with_telling_accents(text: str, folded: str) -> str:
    for match in _TOLD_BY_ACCENT.finditer(text):
        folded = f"{folded[: match.end()]}é{folded[match.end() + 1 :]}"
    return folded


_LONG = (("ä", "ae"), ("ö", "oe"), ("ü", "ue"), ("ß", "ss"), ("æ", "ae"), ("œ", "oe"), ("ø", "oe"), ("å", "aa"))


@cache
def spellings(word: str) -> tuple[str, ...]:
    """A word list's word, folded, in each spelling that people type: 'gültig' also as 'gueltig', 'up to' as 'upto'."""
    if word.isascii():
        plain = fold(word)
        return (plain, plain.replace("up to", "upto")) if "up to" in plain else (plain,)
    long = word.casefold() if "ß" in word else word.lower()
    for letter, letters in _LONG:
        long = long.replace(letter, letters)
    both = (fold(word), fold(long))
    return both if both[0] != both[1] else both[:1]


_LETTERS = r"[^\W\d_²³¹⁰-₟½¼¾ª]+"
# 'F.O.B.' is one word, and its O no sign for a diameter. These letters and no others: 'g.s.m.' is listed as it is.
WRITTEN_WITH_DOTS = (
    "fob", "fas", "fca", "fot", "fab", "lab", "exw", "cif", "cip", "cfr", "cpt", "dap", "ddp", "dpu", "ddu", "dat",
)  # fmt: skip
_TERM = r"(?<![^\W\d_.])(?:" + "|".join(r"\. ?".join(term) for term in WRITTEN_WITH_DOTS) + r")(?![^\W\d_])"
_TOKEN = re.compile(_TERM + "|" + _LETTERS + r"|\d{1,3}(?:[.,']\d{3})+(?!\d)|\d+|[^\w\s.'\-]|[²³¹]")
_SUPERSCRIPTS = {"²": "2", "³": "3", "¹": "1"}


_RUN_OF_LETTERS = re.compile(_LETTERS)


def runs_of_letters(folded: str) -> list[str]:
    """The words of a folded text that need no more to be told than where letters end."""
    return _RUN_OF_LETTERS.findall(folded)


def tokens(folded: str) -> list[tuple[str, int, int]]:
    """Words, digit runs and signs of a folded text with their spans. Dots, hyphens and apostrophes part words."""
    # Nearly every token is a run of letters, which is plain already.
    return [
        (token if (token := match.group()).isalpha() else _plain_token(token), *match.span())
        for match in _TOKEN.finditer(folded)
    ]


@cache
def token_words(folded: str) -> tuple[str, ...]:
    """The same without the spans, which the thousands of words of the lists have no use for. Remembered, as spellings
    are, because many lists hold the words of others."""
    if folded.isascii() and folded.replace(" ", "").isalpha():
        return tuple(folded.split())
    return tuple([_plain_token(token) for token in _TOKEN.findall(folded)])


def _plain_token(token: str) -> str:
    if token.isalpha():
        return token
    if token[0].isalpha():
        return token.replace(".", "").replace(" ", "")
    if token[0].isdigit() and not token.isdigit():
        token = re.sub(r"[.,']", "", token)
    return _SUPERSCRIPTS.get(token, token)
