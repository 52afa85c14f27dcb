"""Few questions, each about one cause: lines that the same answer would settle are asked together."""

import re
from collections.abc import Iterable, Iterator, Sequence

from tracker.intake.offers.draft import DECIMAL, PRICE, Asked, Draft
from tracker.intake.offers.prices.price_changes import CHANGE, STAND
from tracker.intake.offers.prices.rivals import HOLDS
from tracker.trade.basis import Basis
from tracker.trade.grades import grades
from tracker.trade.offer import Choice, Question

_MOST_WORDS = 4
_FIGURE = re.compile(r"\d[\d.,'\s]*")
_CELL = re.compile(r"[A-Z]{1,3}[1-9]\d*")


def questions_of(drafts: Iterable[Draft]) -> tuple[Question, ...]:
    """One question for each key, with every cell that it holds back or doubts, in the order they first arise."""
    first: dict[str, Asked] = {}
    words: dict[str, dict[str, None]] = {}
    cells: dict[str, dict[tuple[str, str], None]] = {}
    for draft in drafts:
        for asked in draft.asked:
            first.setdefault(asked.key, asked)
            cells.setdefault(asked.key, {}).update(dict.fromkeys(_places(draft, asked)))
            words.setdefault(asked.key, {})[asked.words] = None
    return tuple(
        Question(
            key,
            asked.code,
            _text(asked, words[key], tuple(cells[key])),
            asked.words,
            _choices(asked),
            tuple(cells[key]),
        )
        for key, asked in first.items()
    )


def _places(draft: Draft, asked: Asked) -> Iterator[tuple[str, str]]:
    """The price that is held back; ahead of it the basis weight in doubt, since that is where to look."""
    if asked.key == "weight":
        notes = (note for note in draft.notes if (note.code, note.text) == (asked.code, asked.text))
        yield from ((draft.sheet, note.cell) for note in notes if _CELL.fullmatch(note.cell))
    yield draft.sheet, draft.where


def _text(asked: Asked, words: Iterable[str], cells: Sequence[tuple[str, str]]) -> str:
    """The question as first asked, with all that the one answer settles: every word, or the cells that have none."""
    kind, _, about = asked.key.partition(":")
    if kind in _OF_NO_WORDS and not about:
        return _about_prices(asked.text, _prices(cells))
    if kind not in _OF_SEVERAL:
        return asked.text
    # Where the price's own cell says the unit, '1,160 USD/ton' and '1,140 USD/ton' are one.
    several = list(dict.fromkeys(_FIGURE.sub("", each).strip() if kind == "ton" else each for each in words))
    if len(several) < 2:
        return asked.text
    if kind in _ASKED_TOGETHER:
        together = asked.text.replace(f"“{asked.words}”", _quoted(several), 1)
        return together.replace("Is “", "Are “", 1)
    return f"{asked.text} So it is with {_quoted(several[1:])}."


def _about_prices(text: str, prices: str) -> str:
    """'Nothing says what the price in D16 is per.', 'Nothing says in which currency 12 prices in column D are.'"""
    verb = "is" if prices.startswith("the price ") else "are"
    prices, comma, first = prices.partition(", ")
    return text.replace("the prices are", f"{prices}{f' ({first})' if comma else ''} {verb}")


_OF_NO_WORDS = ("currency", "basis")
_ASKED_TOGETHER = ("ton", "weight-basis")
_OF_SEVERAL = (*_ASKED_TOGETHER, "decimal", "weight", "caliper")
"""Questions that one answer settles for several words of the sheet."""


def _quoted(words: Sequence[str]) -> str:
    quoted = [f"“{word}”" for word in words[:_MOST_WORDS]]
    if len(words) > _MOST_WORDS:
        quoted.append(f"{len(words) - _MOST_WORDS} more")
    return _listed(quoted)


def _listed(words: Sequence[str]) -> str:
    return f"{', '.join(words[:-1])} and {words[-1]}" if len(words) > 1 else words[0]


def _prices(cells: Sequence[tuple[str, str]]) -> str:
    """'the price in D16', 'the prices in D5 and D7', '12 prices in column D', '40 prices, the first in D5'."""
    addresses = [cell for _, cell in cells]
    if len(addresses) == 1:
        return f"the price in {addresses[0]}"
    if len(addresses) <= _MOST_WORDS:
        return f"the prices in {_listed(addresses)}"
    columns = list(dict.fromkeys(address.rstrip("0123456789") for address in addresses))
    if len(columns) <= _MOST_WORDS and len({sheet for sheet, _ in cells}) == 1:
        return f"{len(addresses):,} prices in column{'s' if len(columns) > 1 else ''} {_listed(columns)}"
    return f"{len(addresses):,} prices, the first in {addresses[0]}"


def _choices(asked: Asked) -> tuple[Choice, ...]:
    """All answers of the question's kind, or those of them that the sheet leaves open."""
    kind = asked.key.partition(":")[0]
    if kind == HOLDS:
        return tuple(Choice(cell, f"the price in {cell}") for cell in asked.options)
    choices = _FIXED.get(kind, ())
    if kind == DECIMAL:
        choices = _decimal_signs(asked.words)
    elif kind == "grade":
        choices = tuple(Choice(code, f"{code} · {grade.name}") for code, grade in grades().items())
    elif kind in _AS_WRITTEN:
        return tuple(Choice(value, value) for value in asked.options)
    return tuple(choice for choice in choices if not asked.options or choice.value in asked.options)


_AS_WRITTEN = ("currency", PRICE)
"""Questions whose answers say themselves what they mean: a code, a figure of the cell."""
_BASIS_WORDS = {
    Basis.SHORT_TON: "short ton (2,000 lb)",
    Basis.TONNE: "tonne (1,000 kg)",
    Basis.CWT: "hundredweight (100 lb)",
    Basis.LB: "pound",
    Basis.KG: "kilogram",
    Basis.MSF: "1,000 ft²",
    Basis.M2: "m²",
    Basis.THOUSAND_M2: "1,000 m²",
    Basis.THOUSAND_SHEETS: "1,000 sheets",
    Basis.SHEET: "sheet",
}
_FIXED = {
    CHANGE: (Choice(STAND, "yes, the figures are what is paid as they stand"),),
    "basis": tuple(Choice(basis.value, words) for basis, words in _BASIS_WORDS.items()),
    "ton": (Choice("short", "short ton (2,000 lb)"), Choice("metric", "tonne (1,000 kg)")),
    "weight-basis": (Choice("msf", "lb on 1,000 ft²"), Choice("3000ft2", "lb on 3,000 ft²"), Choice("gsm", "g/m²")),
}
_ONE_SIGN = re.compile(r"\d+[.,]\d+")


def _decimal_signs(words: str) -> tuple[Choice, ...]:
    """Either sign, with what the figure in doubt then is: '1234: decimal point, as in 1.5'."""
    found = _ONE_SIGN.search(words)
    as_point = as_comma = ""
    if found is not None:
        as_point = f"{found[0].replace(',', '')}: "
        as_comma = f"{found[0].replace('.', '').replace(',', '.')}: "
    return (Choice(".", f"{as_point}decimal point, as in 1.5"), Choice(",", f"{as_comma}decimal comma, as in 1,5"))
