"""Units that a text gives each form or market by itself: 'Rolls USD/ST, sheets USD/MSF', 'EUR/t, export in USD/t'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.prices.amounts_named import names_amount
from tracker.intake.values.prices.basis import BasisReading, find_basis
from tracker.intake.values.prices.clauses_of_others import is_of_board
from tracker.intake.values.prices.currency import CurrencyReading, find_currencies
from tracker.intake.values.prices.other_times import without_other_times
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency, price_says
from tracker.intake.values.prices.several_bases import bases_with_places
from tracker.intake.values.prices.units_by_board import boards_of_unit
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, between, tokens_of

_LONGEST = 120
_FEW_WORDS = 5
"""'Sheets per MSF' without a word of money; longer parts may speak of packings."""
_STOPS = re.compile(r",(?!\d)|[;\n()\[\]]|\s[/–—-]\s")
_SENTENCE = re.compile(r"(?<=\.)\s+(?=[^\W\d_])")
_MARKETS = ("export", "home")


@lru_cache(maxsize=8192)
def parts_named(text: str) -> frozenset[str]:
    """The forms and markets that a head or a part of a sentence names: 'roll', 'sheet', 'export', 'home'."""
    forms = {match.value for match in phrases("forms").find(text)}
    return frozenset(forms | {match.value for match in phrases("list_parts").find(text) if match.value in _MARKETS})


@dataclass(frozen=True, slots=True)
class _Part:
    """What stands between two commas. `of`: the forms and markets that it is about, () for all others."""

    of: frozenset[str]
    basis: BasisReading | None
    currency: CurrencyReading | None

    @property
    def unit(self) -> tuple[object, ...]:
        bases = self.basis.bases if self.basis is not None else None
        return bases, self.currency.codes if self.currency is not None else None


def prices_each_form(text: str) -> bool:
    """Whether a text has a unit for rolls and another for sheets: for each by name, or for one of them and all else."""
    bases = [said for said in units_of_parts(text) if isinstance(said, SaysBasis)]
    forms = {form for said in bases for form in said.parts}
    of_all = any(not said.parts for said in bases)
    return forms >= _FORMS or (of_all and bool(_FORMS & forms))


_FORMS = frozenset({"roll", "sheet"})


@lru_cache(maxsize=8192)
def units_of_parts(text: str) -> tuple[SaysBasis | SaysCurrency, ...]:
    """The units of a text with the forms and markets that each is said of; () where one unit is said of all."""
    if not parts_named(text) or _excepts_no_form(text):
        return ()
    told = _without_packing(without_other_times(text))
    said = (_units_between_stops(told) if len(told) <= _LONGEST else ()) or _units_by_turns(told)
    return tuple(_of_boards(replace(one, words=text)) for one in said)


def _of_boards(said: SaysBasis | SaysCurrency) -> SaysBasis | SaysCurrency:
    """What is said of a form with the boards beside it: 'SBS in sheets per 1,000 sheets' is said of SBS alone."""
    of_form = (piece for piece in _pieces(said.words) if parts_named(piece) & said.parts)
    boards = boards_of_unit(next(of_form, ""))
    return replace(said, grades=boards.grades, called=boards.words)


def _excepts_no_form(text: str) -> bool:
    """'EUR per tonne, except our thin boards, per 1,000 sheets' excepts boards; of sheets it names the unit alone."""
    units = [(start, end) for _, start, end in bases_with_places(text)]
    forms = [one for one in phrases("forms").find(text) if not any(a <= one.start < b for a, b in units)]
    return bool(phrases("exceptions").find(text)) and not forms and not parts_named(text) & set(_MARKETS)


def _without_packing(text: str) -> str:
    """'Prices per short ton. Sheets are packed per 1,000 sheets': how many a bundle has is no unit of theirs."""
    for piece in filter(_is_of_packing, _pieces(text)):
        text = text.replace(piece, " " * len(piece))
    return text


def _is_of_packing(piece: str) -> bool:
    """'Sheets are packed per 1,000', 'Bogen werden je 1000 Bogen verpackt', and not 'per cwt for sheets packed on
    skids' nor 'packed sheets per 1,000 sheets', which are sold so."""
    marks = [mark for mark in phrases("done_by_count").find(piece) if not _names_a_form(piece, mark)]
    if not marks or phrases("price_words").find(piece) or find_currencies(piece):
        return False
    counted = any(start >= marks[0].end for _, start, _ in bases_with_places(piece))
    return counted or not any(map(str.isalnum, piece[marks[-1].end :]))


def _names_a_form(piece: str, mark: Found[str]) -> bool:
    """The 'packed' of 'packed sheets' at the beginning."""
    return mark.first == 0 and phrases("forms").at(tokens_of(piece), mark.after) is not None


def _one_currency(text: str) -> tuple[SaysCurrency, ...]:
    """That of all parts, where their units alone go by turns."""
    said = [one for part in clauses(text) for one in price_says(part) if isinstance(one, SaysCurrency)]
    return tuple(said[:1]) if len({(one.currency.codes, one.currency.cents) for one in said}) == 1 else ()


def _units_by_turns(text: str) -> tuple[SaysBasis | SaysCurrency, ...]:
    """'Per tonne for reels and per 1,000 sheets for sheets', 'reels are priced per tonne whereas sheets …': two forms
    and two units by turns, in whatever words, each unit said of the form beside it; 'per tonne; for sheets per 1,000
    sheets' says its first of all others."""
    if charges_named(text) or names_amount(text) or phrases("weight_words").find(text):
        return ()
    units = [unit for unit in bases_with_places(text) if not (_is_weight(text, unit[1]) or _is_a_form(text, unit))]
    forms = [one for one in phrases("forms").find(text) if not any(a <= one.start < b for _, a, b in units)]
    said = sorted([(start, "unit") for _, start, _ in units] + [(one.start, "form") for one in forms])
    turns = [kind for _, kind in said]
    if len({reading.bases for reading, _, _ in units}) < 2 or len({one.value for one in forms}) < len(forms):
        return ()
    if turns == ["unit", "form", "unit"]:
        parts = [frozenset[str](), frozenset({forms[0].value})]
    elif turns in (["form", "unit"] * 2, ["unit", "form"] * 2):
        parts = [frozenset({one.value}) for one in forms]
    else:
        return ()
    bases = [SaysBasis(reading, text, parts=of) for (reading, _, _), of in zip(units, parts, strict=True)]
    # What a sentence about reels says is that of sheets only where it is said to be.
    return (*bases, *(replace(one, parts=of) for one in _one_currency(text) for of in (frozenset[str](), *parts)))


def _is_weight(text: str, start: int) -> bool:
    """'lb per 1,000 sq ft' and 'lb/MSF' tell what board weighs; the pounds of a ton and 'sheets per MSF' do not."""
    weighed = phrases("weight_units").find(text)
    over = any(one.value != "pound" and one.start < start < one.end for one in weighed)
    return over or any(one.end == len(text[:start].rstrip(" /")) for one in weighed)


def _is_a_form(text: str, unit: tuple[BasisReading, int, int]) -> bool:
    """The 'feuilles' of 'les bobines à la tonne, les feuilles au mille': what its unit stands right behind."""
    reading, _, end = unit
    behind = COMMA.split(text[end:])[0]
    return phrases("forms").whole(reading.words) is not None and bool(bases_with_places(behind))


def _units_between_stops(text: str) -> tuple[SaysBasis | SaysCurrency, ...]:
    """Of parts that commas and other stops set apart: 'Rolls USD/ST, sheets USD/MSF'."""
    parts = list(_parts(text))
    units = {part.unit for part in parts}
    apart = [part for part in parts if part.of]
    named = [each for part in apart for each in part.of]
    if len(units) < 2 or len(apart) < len(parts) - 1 or len(named) != len(set(named)):
        return ()
    if any(part.of >= _FORMS for part in apart) and any(part.basis is not None and not part.of for part in parts):
        # 'Rolls are priced per ton whereas sheets are priced (in USD) per MSF' has its forms by turns.
        return ()
    says: list[SaysBasis | SaysCurrency] = []
    for part in parts:
        says += [SaysCurrency(part.currency, text, parts=part.of)] if part.currency is not None else []
        says += [SaysBasis(part.basis, text, parts=part.of)] if part.basis is not None else []
    # 'USD/ST, sheets per MSF': what only one of them says holds for all.
    return tuple(replace(one, parts=frozenset()) if _alone(one, says) else one for one in says)


def _alone(one: SaysBasis | SaysCurrency, says: list[SaysBasis | SaysCurrency]) -> bool:
    return sum(type(other) is type(one) for other in says) == 1


def _parts(text: str) -> Iterator[_Part]:
    of: frozenset[str] = frozenset()
    for piece in _pieces(text):
        if charges_named(piece) or names_amount(piece) or is_of_board(piece):
            continue
        of |= parts_named(piece)
        basis, currency = find_basis(_behind_form(piece)), next(iter(find_currencies(piece)), None)
        if basis is not None and (basis.foreign or (currency is None and len(piece.split()) > _FEW_WORDS)):
            basis = None
        if basis is not None or currency is not None:
            yield _Part(of, basis, currency)
            of = frozenset()


def _behind_form(piece: str) -> str:
    """'Sheets per MSF' says what sheets are priced by, and not how many of them something has."""
    first = next(iter(phrases("forms").find(piece)), None)
    return piece[first.end :] if first is not None and first.first == 0 else piece


def _pieces(text: str) -> Iterator[str]:
    """'Per short ton except sheets, which are per MSF' has its sheets in the second of three."""
    stopped = (piece for part in _sentences(text) for piece in _STOPS.split(part))
    for piece in (piece for part in stopped for piece in _at_colon(part)):
        for part in between(piece, phrases("exceptions").find(piece)):
            yield from between(part, phrases("and_words").find(part))


def _at_colon(piece: str) -> tuple[str, ...]:
    """'Prices in EUR: rolls per tonne' at its colon, behind what is said of all; 'USD/ST: rolls' is one."""
    head, colon, tail = piece.partition(": ")
    of_all = bool(colon) and not parts_named(head) and find_basis(head) is None
    return (head, tail) if of_all and parts_named(tail) else (piece,)


def _sentences(text: str) -> list[str]:
    """Parted before those that begin with a form: 'All prices USD per short ton. Sheets per MSF.'"""
    found: list[str] = []
    for sentence in _SENTENCE.split(text):
        forms = any(match.first <= _FIRST_WORDS for match in phrases("forms").find(sentence))
        if found and not forms:
            found[-1] = f"{found[-1]} {sentence}"
        else:
            found.append(sentence)
    return found


_FIRST_WORDS = 1
