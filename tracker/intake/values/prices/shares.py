"""'% of base price', 'in % vom Grundpreis': what a column's figures are a share of, so that they are no prices."""

import re
from functools import lru_cache

from tracker.intake.values.heads.roles import MONEY, ON_TOP, PRICES
from tracker.intake.values.times.dates import without_dates
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import without

_SHARE = re.compile(r"(?<![\d\w])(?<!\d\s)(?P<sign>%)")


@lru_cache(maxsize=4096)
def share_of_price(text: str) -> int | None:
    """Where a head names the price that its figures are a share of; None where it names none."""
    return next((end for _, end in _signs(text) if _is_of_a_price(text[end:])), None)


@lru_cache(maxsize=4096)
def is_share_of_another(text: str) -> bool:
    """'% of freight', '% lt. Vereinbarung': a share of something else than the price, or of what nobody can tell."""
    return any(_is_of_another(text[end:], leads=not text[:start].strip(" (")) for start, end in _signs(text))


def _is_of_another(behind: str, *, leads: bool) -> bool:
    """'% Energiezuschlag' names the charge behind its sign, '% Q4' and '% ab 1.11.' say since when it is charged."""
    named = _named_behind(behind)
    if named is not None:
        return not any(role in PRICES for role in _roles(named)) and not phrases("price_words").find(named)
    charges = [match for match in phrases("headers").find(behind) if match.value in ON_TOP]
    return leads and bool(_WORD.search(without_words(without(without_dates(behind), charges), "since", "percent")))


_WORD = re.compile(r"[^\W\d_]{2,}")


def is_share(text: str) -> bool:
    """A head that begins with the sign for a percentage."""
    return any(not text[:start].strip(" (") for start, _ in _signs(text))


_CUT_SHORT = re.compile(r"(?<![^\W\d_])[^\W\d_]{2,}\.(?!\w)|(?<![\w-])[A-ZÄÖÜÅÉ]{2,4}(?![\w-])")


@lru_cache(maxsize=4096)
def is_share_cut_short(text: str) -> bool:
    """'E-surch. %', 'EFS %': a percentage of what only who knows the letters can tell; it may well come on top."""
    return bool(_signs(text)) and _CUT_SHORT.search(text) is not None


def _signs(text: str) -> list[tuple[int, int]]:
    sign = _SHARE.search(text)
    return [(match.start, match.end) for match in phrases("percent").find(text)] + (
        [] if sign is None else [sign.span("sign")]
    )


def _named_behind(behind: str) -> str | None:
    """What stands behind the little word that leads to what the share is of; None where no such word leads there."""
    found = phrases("shares_of").find(behind)
    return next((behind[match.end :] for match in found if not behind[: match.start].strip(" ,:)(")), None)


def _roles(text: str) -> list[str]:
    return [match.value for match in phrases("headers").find(text)]


def _is_of_a_price(behind: str) -> bool:
    """'of base price', 'vom Listenpreis', and not the 'EUR/t' of 'Price incl. 3 % EUR/t'."""
    named = _named_behind(behind) or ""
    return bool(phrases("price_words").find(named)) or any(role in MONEY for role in _roles(named))
