"""What is charged on some boards alone: 'A wood levy of 22 euros per tonne is added to the prices of the GC grades'."""

import re
from typing import NamedTuple

from tracker.intake.values.boards.boards_behind import boards_behind, names_of_a_kind
from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.coated_boards import coated_ahead
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.measures_ahead import measures_ahead
from tracker.intake.values.freight.charge_names import charges_named, whole_name
from tracker.intake.values.freight.charge_parts import PARTS
from tracker.intake.values.freight.not_included import not_included
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.relatives import is_relative
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import blanked, outside

_HYPHEN = re.compile(r"(?<=\b[A-Z]{2})(\d?)-(?=[^\W\d_]{5})")
"""That of 'GD2-Positionen' and 'GC-sorterna'."""
_EXCEPT = ("excepted", "exceptions", "the_others")
_STOPS = " ,;:.–-"


class Charged(NamedTuple):
    """What is charged, without the words for the boards that bear it, and these. `unsure`: more is said of it that is
    not read, so that no amount is certain."""

    said: str
    boards: BoardsMeant
    unsure: bool = False


def charged_boards(text: str) -> Charged | None:
    """The boards behind 'on', 'to the prices of' or 'for both', where a sentence adds an amount to those alone; None
    where others are named beside them, or any is excepted."""
    if len(clauses(text)) != 1 or any(phrases(section).find(text) for section in _EXCEPT):
        return None
    text = _by_their_grades(_HYPHEN.sub(r"\1 ", _without_asides(text)))
    if not any(map(str.isdigit, text)) or not _adds(text):
        return None
    bearing = _bearing(text) or _named_apart(text) or _named_at_the_end(text)
    if bearing is not None:
        return _held_open(bearing) if leaves_unread(bearing.said) else bearing
    behind = _borne_behind(text)
    if behind is None or not leaves_unread(behind.said):
        return behind
    # Of 'surcharge $25/ST, payable for CRB in rolls' it is not told who bears it otherwise.
    return None if _stands_apart(text, behind.boards) else _held_open(behind)


def _by_their_grades(text: str) -> str:
    """'On the recycled boards (CRB and URB)' as 'on the CRB and URB'."""
    for match in phrases("charged_on").find(text):
        named = _IN_BRACKETS.match(text, match.end)
        kind = named is not None and not rest_of(named["kind"], (), "families", "coating", "board_goods", "articles")
        if (
            named is not None
            and kind
            and named["kind"].strip()
            and boards_behind(named["grades"]) == (named["grades"], "")
        ):
            return f"{text[: match.end]} {named['grades']}{text[named.end() :]}"
    return text


_IN_BRACKETS = re.compile(r"(?P<kind>[^(),;:]*)\((?P<grades>[^()]+)\)")


def _held_open(charged: Charged) -> Charged:
    """'Surcharge of $25/ST' of 'surcharge of $25/ST … rolls under 20 in wide': what stands behind isn't read. What is
    no charge of every order with it, as the prices include it or small orders bear it, is none without it either."""
    if find_masses(charged.said) or _is_included(charged.said):
        return charged
    ends = [end for _, _, end, _ in prices_within(charged.said)]
    ends += [match.end() for match in _RATE.finditer(charged.said)]
    said = charged.said[: max(ends, default=len(charged.said))]
    return charged._replace(said=said if charges_named(said) else charged.said, unsure=True)


def _is_included(said: str) -> bool:
    within = any(match.value == "within" for match in phrases("relieved").find(said))
    return within and not phrases("negations").find(said)


def _borne_behind(text: str) -> Charged | None:
    """'A levy of 22 €/t on the GC grades', 'auf GC1 kommt ein Zuschlag von 25 €/t'."""
    for match in phrases("charged_on").find(text):
        behind = text[match.end :]
        lead = phrases("both_of").find(behind.lstrip())
        start = next((each.end for each in lead if each.start == 0), 0)
        coated = coated_ahead(behind.lstrip()[start:])
        words, rest = ("", coated[1]) if coated is not None else _boards_ahead(behind.lstrip()[start:])
        if words or coated is not None:
            # 'Is added to the prices': an amount without a charge's name is one beside prices.
            named = any(phrases(section).find(text[: match.start]) for section in ("charges", "surcharge_words"))
            priced = [] if named else phrases("price_words").find(text[match.start : match.end])
            before = text[: match.start + priced[-1].end if priced else match.start]
            told = f"{before.strip()} {_without_verb(rest) if not before.strip() else rest.strip(_STOPS)}"
            said = without_words(told, "no_other_boards").strip(_STOPS)
            boards = coated[0] if coated is not None else boards_named(words)
            also = phrases("as_well").find(rest) or _ends_in(before, "as_well")
            return Charged(said, boards) if boards.some and not (also or boards_named(said).some) else None
    return None


def _ends_in(text: str, section: str) -> bool:
    end = len(text.rstrip())
    return any(match.end == end for match in phrases(section).find(text))


def _stands_apart(text: str, boards: BoardsMeant) -> bool:
    """Whether the boards stand in a part of their own, behind the one with the charge."""
    parts = COMMA.split(text)
    apart = len(parts) > 1 and _adds(parts[0]) and any(map(str.isdigit, parts[0]))
    return apart and not boards_named(parts[0]).some and boards_named(",".join(parts[1:])).some and boards.some


def leaves_unread(said: str) -> bool:
    """Whether more is said of a charge than its name, its amount, its reason and what goes without saying: behind its
    amount, or of rolls or sheets. What stands before the amount may be a part of its name."""
    said = _without_reason(said)
    amounts = [(start, end) for _, start, end, _ in prices_within(said)]
    amounts += [match.span() for match in _RATE.finditer(said)]
    behind = min((start for start, _ in amounts), default=0)
    spans = [(0, behind), *(whole_name(said, match) for match in charges_named(said)), *amounts]
    names = [match.start < behind for match in charges_named(said)]
    # 'Certified 25 €/t surcharge' is on what is certified.
    return bool(rest_of(said, spans, *_READ)) or _of_a_form(blanked(said, amounts)) or len(set(names)) > 1


def _of_a_form(said: str) -> bool:
    """'Rolls 25 €/t'; 'rolls and sheets' are all there is."""
    return bool(outside(phrases("forms").find(said), phrases("charge_filler").find(said)))


def _without_reason(said: str) -> str:
    """'… for raw material', '… wegen der Altpapierpreise' and '… and is not in the prices' without that."""
    spans = [match.span for match in phrases("charge_reasons").find(said)]
    for match in phrases("reasons").find(said):
        end = COMMA.search(said, match.end)
        spans.append((match.start, len(said) if end is None else end.start()))
    start = 0
    for part in PARTS.split(said):
        start = said.index(part, start)
        if _is_beside_prices(part):
            spans.append((start, start + len(part)))
    return blanked(said, spans)


def _is_beside_prices(part: str) -> bool:
    """'Is not in the prices', 'in den Preisen nicht enthalten', and no more than that."""
    denials = phrases("negations").find(part)
    within = phrases("relieved").find(part) or phrases("price_words").find(part)
    spans = [match.span for match in phrases("relieved").find(part) if match.value == "within"]
    return bool(denials and within) and not rest_of(part, spans, *_BESIDE_PRICES)


_BESIDE_PRICES = (
    "relative_words", "negations", "copula", "price_words", "beside_included", "list_names", "prices_shown", "articles",
)  # fmt: skip


_RATE = re.compile(r"\d+(?:[.,]\d+)?\s?%")
_READ = (
    "charge_filler", "all_of_them", "every_board", "to_the_buyer", "charge_verbs", "added_on_top",
    "surcharge_applies", "surcharge_words", "price_words", "relative_words", "no_other_boards",
    "only_these", "prices_shown", "articles", "about", "basis", "per", "currency", "percent", "list_names",
)  # fmt: skip


def _boards_ahead(text: str) -> tuple[str, str]:
    words, rest = boards_behind(text)
    words, rest = (words, rest) if words else names_of_a_kind(text)
    if words:
        return words, rest
    words, rest = measures_ahead(text)
    # The 'carton' of 'on carton above 18 pt' may be one kind of board.
    return (words, rest) if find_grade(words) is None else ("", text)


def _without_verb(rest: str) -> str:
    """'Ein Zuschlag von 40 €/t' of 'kommt ein Zuschlag von 40 €/t', which stands behind the boards."""
    for section in ("charge_verbs", "articles"):
        first = next((match for match in phrases(section).find(rest) if not rest[: match.start].strip(_STOPS)), None)
        rest = rest[first.end :] if first is not None else rest
    return rest.strip(_STOPS)


def _bearing(text: str) -> Charged | None:
    """'Only GD2 bears a surcharge of 18 euros per tonne': the boards stand first."""
    found = next((match for match in phrases("only_these").find(text) if not text[: match.start].strip()), None)
    text = text[found.end :] if found is not None else text
    coated = coated_ahead(text)
    words, rest = ("", coated[1]) if coated is not None else _boards_ahead(text)
    verb = next((match for match in phrases("charge_verbs").find(rest) if not rest[: match.start].strip()), None)
    if verb is None or not (words or coated):
        return None
    said = rest[verb.end :].strip(_STOPS)
    boards = coated[0] if coated is not None else boards_named(words)
    return Charged(said, boards) if boards.some and not boards_named(said).some else None


def _named_apart(text: str) -> Charged | None:
    """'Energy surcharge: 3 %, coated unbleached kraft only': the part of a sentence that names its boards."""
    start = 0
    for part in _APART.split(text):
        only = phrases("only_these").find(part)
        words, rest = _boards_ahead(without_words(part, "only_these", "charged_on").strip(_STOPS)) if only else ("", "")
        told = blanked(text, [(start, start + len(part))]).strip(_STOPS + "()")
        said = f"{told} {rest.strip(_STOPS)}".strip()
        if words and not boards_named(said).some:
            return Charged(said, boards_named(words))
        start += len(part) + 1
    return None


def _named_at_the_end(text: str) -> Charged | None:
    """'Energy surcharge 3 % SBS only': the boards stand right behind the amount."""
    ends = [match.end() for match in _RATE.finditer(text)] or [end for _, _, end, _ in prices_within(text)]
    behind = text[ends[-1] :] if len(set(ends)) == 1 else ""
    words, rest = _boards_ahead(without_words(behind, "only_these").strip(_STOPS))
    alone = bool(words) and not rest.strip(_STOPS) and bool(phrases("only_these").find(behind))
    return Charged(text[: ends[-1]].strip(), boards_named(words)) if alone else None


_APART = re.compile(r"[:()]|,(?=\s)")


def frees_the_others(clause: str) -> bool:
    """'The other grades bear no surcharge', and no more than that."""
    denies = any(phrases(section).find(clause) for section in _DENIALS)
    told = bool(phrases("the_others").find(clause)) and denies
    return told and not rest_of(clause, (), "the_others", "charges", "surcharge_words", "charge_verbs", *_DENIALS)


_DENIALS = ("charge_exempt", "negations", "relieved.waived")


def _adds(text: str) -> bool:
    sections = ("charges", "surcharge_words", "added_on_top", "charge_verbs")
    return any(phrases(section).find(text) for section in sections)


def _without_asides(text: str) -> str:
    """The sentence without what follows its last comma, where that tells of the past alone, '…, der im Herbst bei 35
    Euro lag', or says once more that it comes on top, '…, que no va incluido en el precio'."""
    *said, last = COMMA.split(text)
    if not said or not ((is_relative(last) and phrases("was_then").find(last)) or not_included(last)):
        return text
    return blanked(text, [(len(text) - len(last) - 1, len(text))]).rstrip()
