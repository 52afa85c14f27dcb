"""Keys of heads in whole sentences: 'TL means 44,000 lb or more', 'Preis A gilt für Aufträge unter 10 t'."""

import re
from collections.abc import Iterator

from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import tokens_of


def meant_by_codes(text: str) -> Iterator[tuple[str, str]]:
    """'TL means 44,000 lb or more, LTL means less than 44,000 lb', 'KM steht für Aufträge unter 5 t'."""
    for part in _BEFORE_CODES.split(text):
        code, _, rest = part.strip().partition(" ")
        verb = phrases("stands_for").at(tokens_of(rest), 0)
        said = rest[verb.end :].strip(" .,:") if verb is not None and _CODE.fullmatch(code) else ""
        if said and (bracket_text(said) is not None or not _is_not_for(rest)):
            yield fold(code), said


_CODE = re.compile(r"[A-Z0-9]{1,6}")
_BEFORE_CODES = re.compile(rf",\s+(?:{pattern('range', 'and')}\s+)?(?=[A-Z]{{1,6}}\s+[^\W\d_])")


def told_of_prices(text: str) -> Iterator[tuple[str, str]]:
    """'Preis A gilt für Aufträge unter 10 t, Preis B für Aufträge ab 10 t': the verb is said once for both, and its
    last word again. What a price is not for, a customer's year and what a roll may weigh explain nothing."""
    told: list[tuple[str, str]] = []
    verb: str | None = None
    for part in (piece for clause in clauses(text) for piece in COMMA.split(clause)):
        led = _PRICE_AND_CODE.match(part)
        if led is None or phrases("price_words").whole(led["name"]) is None:
            verb = None
            continue
        rest = part[led.end() :].strip(" .")
        found = next((one for one in phrases("stands_for").find(rest) if one.first == 0 and one.value == "any"), None)
        if _is_not_for(rest) or _weighs_pieces(rest):
            return
        if found is not None:
            verb = fold(rest[: found.end])
        if verb is not None:
            again = f"{verb.split()[-1]} "
            said = rest[found.end :] if found is not None else rest
            repeats = found is None and " " in verb and fold(said).startswith(again)
            told.append((fold(led["code"]), said[len(again) if repeats else 0 :].strip()))
    yield from told


def _is_not_for(said: str) -> bool:
    """'Nicht unter 5 t', 'all but delivered orders'; the 'menos' of 'menos de 10 t' excepts nothing."""
    sizes = [match.span for match in phrases("bracket").find(said)]
    found = (match for section in _NOT_FOR for match in phrases(section).find(said))
    return any(not any(start <= match.start and match.end <= end for start, end in sizes) for match in found)


_NOT_FOR = ("negations", "exceptions", "excepted", "names_excepted", "yearly")


def _weighs_pieces(said: str) -> bool:
    """'Skids under 2,000 lb' and 'Rollen bis 600 kg' are no orders; '4 skids' are, and 'roll orders under 5 t'."""
    pieces = [match for match in phrases("bracket").find(said) if match.value in ("pallet", "roll")]
    if not pieces or phrases("order_words").find(said) or any(map(str.isdigit, said[: pieces[0].start])):
        return False
    return bool(find_mass_units(said[pieces[0].end :]))


_PRICE_AND_CODE = re.compile(r"\s*(?:[^\W\d_]{2,3}\s+)?(?P<name>[^\W\d_]+)\s+(?P<code>[A-Z]|[IVX]{1,3}|\d)\s+")
