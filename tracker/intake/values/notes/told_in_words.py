"""What a sentence says that codes and the letters of prices stand for: 'TL means 44,000 lb or more', 'Preis A gilt für
Aufträge unter 10 t, Preis B für Aufträge ab 10 t', 'Column A is for orders under 5 tonnes, and column B for the rest'.
"""

import re
from collections.abc import Iterator, Sequence

from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.bracket_pieces import PIECES_OR_TONS
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.orders.worded_brackets import bracket_behind_words
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import pattern, phrases, without_words
from tracker.intake.words.phrases import tokens_of

_PRICE_AND_CODE = re.compile(
    r"\s*(?:[^\W\d_]{1,3}\s+){0,2}(?P<name>[^\W\d_]+(?:\s[^\W\d_]{4,})?)\s+(?P<code>[A-Z]|[IVX]{1,4}|\d)\s+"
)
_AND = re.compile(rf"\s{pattern('range', 'and')}\s")


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


def told_in_words(text: str) -> Iterator[tuple[str, str]]:
    """The letters, folded, and what each is for: the verb is said once for all, and its last word again. What a price
    is not for, a customer's year and what a roll may weigh explain nothing; nor does a column of something else than
    order sizes."""
    told: list[tuple[str, str]] = []
    verb: str | None = None
    for part in (piece for clause in clauses(text) for piece in _parts(clause)):
        led = _led(part)
        if led is None:
            verb = None
            continue
        rest = part[led.end() :].strip(" .")
        found = next((one for one in phrases("stands_for").find(rest) if one.first == 0 and one.value == "any"), None)
        if _is_not_for(rest) or _weighs_pieces(rest):
            return
        if found is not None:
            verb = fold(rest[: found.end])
        if verb is None:
            continue
        again = f"{verb.split()[-1]} "
        said = rest[found.end :] if found is not None else rest
        repeats = found is None and " " in verb and fold(said).startswith(again)
        said = said[len(again) if repeats else 0 :].strip()
        named = phrases("tiers").whole(led["name"]) is not None
        if named and not _is_only_a_size(said):
            said = _beyond([other for _, other in told], said)
            if not said:
                return
        # 'A' may stand over the prices as well as 'Column A'.
        codes = (led["code"], f"{led['name']} {led['code']}") if named else (led["code"],)
        told.extend((fold(code), said) for code in codes)
    yield from told


def _parts(clause: str) -> Iterator[str]:
    """A clause at its commas, and at an 'and' before another of those prices."""
    for part in map(str.strip, COMMA.split(clause)):
        start = 0
        for joint in _AND.finditer(part):
            if _led(part[joint.end() :]) is not None:
                yield part[start : joint.start()]
                start = joint.end()
        yield part[start:]


def _led(part: str) -> re.Match[str] | None:
    """The 'Price A' or 'column B' that a part begins with."""
    led = _PRICE_AND_CODE.match(part)
    known = led is not None and any(phrases(section).whole(led["name"]) is not None for section in _NAMES)
    return led if known else None


_NAMES = ("price_words", "tiers")


def _is_only_a_size(said: str) -> bool:
    """'Orders under 5 tonnes', 'los de 4 toneladas o más', and not 'samples under 5 kg'."""
    size = bracket_text(said) or bracket_behind_words(said)
    if size is None or size.not_weight not in ("", PIECES_OR_TONS):
        return False
    ahead = said.partition(size.words)[0]
    return not any(map(str.isalnum, without_words(ahead, "goods_of_a_size", "order_words")))


def _beyond(told: Sequence[str], said: str) -> str:
    """'The rest', behind 'orders under 5 tonnes', are those from 5 tonnes on; '' for what may be anything else."""
    sizes = {*told}
    others = phrases("the_others").find(said)
    rest = rest_of(said, (one.span for one in others), "order_words", "goods_of_a_size")
    if not others or rest or len(sizes) != 1:
        return ""
    size = bracket_text(first := sizes.pop()) or bracket_behind_words(first)
    amount = _AMOUNT.search(size.words) if size is not None and (size.start is None) != (size.end is None) else None
    if size is None or amount is None:
        return ""
    if size.start is None:
        return f"{'>' if size.end_included else '≥'} {amount[0]}"
    return f"{'≤' if size.start_excluded else '<'} {amount[0]}"


_AMOUNT = re.compile(r"\d[\d.,]*\s*[^\s\d]+")


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
