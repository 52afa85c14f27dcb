"""Heads that a key explains: 'A | B | C' over prices, and 'A = less than 10,000 lb' below them or on another sheet;
'Price A | Price B', and 'A = EUR per tonne, EXW'; 'Bs.Wt' over figures, and 'Bs.Wt: pounds per 1,000 sq ft'; 'CT', and
'CT – time to dispatch'."""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from tracker.intake.tables.headers.heads import head_of_words
from tracker.intake.tables.headers.keys import Keys, Told, key_of
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.heads.header import header, without_unit
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.bracket_pieces import PIECES_OR_TONS, VEHICLES
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.values.orders.worded_brackets import bracket_behind_words
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis

_FEWEST = 2


def with_keyed_heads(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with the order sizes and terms that a key gives in place of the letters that stand for them, and with
    the units it gives their measures, and what it says in place of heads that nobody knows. `elsewhere`: what sheets
    of words alone say."""
    keys = Keys(found, elsewhere)
    if not keys:
        return found
    return replace(found, tables=tuple(_with_heads(table, keys.of_table(table)) for table in found.tables))


def _with_heads(table: Table, told: Sequence[Told]) -> Table:
    """Order sizes and terms only where the key explains two heads of one table at least: a single letter may mean
    anything."""
    told = [one for one in told if not one.label]
    sizes = sizes_in(told)
    if sizes:
        loads = (one._replace(said=_load(one.said)) for one in told if one.code not in sizes)
        sizes |= key_of(one for one in loads if one.said)
    sizes |= key_of(one for one in told if one.code not in sizes and _names_terms(one.said))
    units = key_of(one for one in told if _names_unit(one.said))
    return _with_units(_explained(_in_words(table, key_of(told)), sizes), units)


def _in_words(table: Table, key: Mapping[str, str]) -> Table:
    """The table with what a key of several of its heads says in place of those that nobody knows by themselves: 'CT',
    which might be cents, by 'CT – time to dispatch'."""
    told = [column for column in table.columns if column.heads and fold(column.heads[-1].text).strip() in key]
    said = {column: key[fold(column.heads[-1].text).strip()] for column in told if len(told) >= _FEWEST}
    whole = {column: words for column, words in said.items() if _tells_more(column.heads[-1].text, words)}
    columns = tuple(_with_head(column, whole[column]) if column in whole else column for column in table.columns)
    return replace(table, columns=columns) if whole else table


def _tells_more(head: str, said: str) -> bool:
    """'Time to dispatch after your order' and 'euro for one tonne' tell what a head that nobody knows is, and 'days
    from order' in what 'LT' counts; a size or an answer is no head."""
    told, own = header(said), header_roles(head)
    if told.bracket is not None or header(head).bracket is not None:
        return False
    known = own[0].role if own and own[0].strength >= _PLAINLY else None
    counts = told.lead_unit is not None and told.role is Role.LEAD_TIME
    if known is not None:
        return known is Role.LEAD_TIME and counts and header(head).lead_unit is None
    as_head = head_of_words(said)
    if as_head is None or as_head.across or as_head.answers_itself:
        return False
    return counts or (as_head.named and not as_head.unit) or (told.currency is not None and told.basis is not None)


def _with_head(column: HeadedColumn, text: str) -> HeadedColumn:
    *above, lowest = column.heads
    return replace(column, heads=(*above, lowest._replace(value=text, text=text)))


def sizes_in(told: Sequence[Told]) -> dict[str, str]:
    """The letters that stand for order sizes, folded, with what is said of each."""
    return key_of(told_sizes(told))


def told_sizes(told: Sequence[Told]) -> list[Told]:
    """The entries that say order sizes, each with its unit."""
    return [one for one in _with_one_unit(told) if _size(one.said) is not None]


def _size(said: str) -> Bracket | None:
    """'Less than 10,000 lb', 'orders under 5 t', '44,000 lb or more on one truck'."""
    load = next((match for match in phrases("in_one_load").find(said) if not said[match.end :].strip(" .")), None)
    size = said if load is None else said[: load.start]
    return bracket_text(said) or bracket_behind_words(said) or bracket_text(size) or bracket_behind_words(size)


def _load(said: str) -> str:
    """The 'camión completo' of 'para quien se lleve un camión completo', beside the price of lighter orders; '' for
    what does not end in a load."""
    words = said.strip(" .").split()
    ends = (" ".join(words[start:]) for start in range(min(len(words), _MOST_BEFORE)))
    sizes = ((end, bracket_text(end)) for end in ends if not any(map(str.isdigit, said)))
    return next((end for end, size in sizes if size is not None and size.not_weight in VEHICLES), "")


_MOST_BEFORE = 7


def _with_one_unit(told: Sequence[Told]) -> Iterator[Told]:
    """'A = up to three tonnes, B = over three and up to ten': the unit of all sizes, where they are in one, stands
    beside some alone."""
    read = [bracket_text(one.said) for one in told]
    ends = [end for size in read if size is not None for end in (size.start, size.end) if end is not None and end.units]
    several = sum(size is not None for size in read) >= _FEWEST
    unit = ends[0].words.lstrip("0123456789., ") if several and len({end.units for end in ends}) == 1 else ""
    for one, size in zip(told, read, strict=True):
        bare = bracket_text(one.said, ends[0].units) if unit and size is None else None
        yield one if bare is None or bare.alone else one._replace(said=f"{one.said} {unit}")


def _names_terms(said: str) -> bool:
    """'EUR per tonne, EXW', 'delivered': in what a price is, at whose freight or to which place."""
    told = header(said)
    priced = told.currency is not None and told.basis is not None
    return priced or told.delivery is not None or (told.role is Role.DESTINATION and told.roles[0].strength >= _PLAINLY)


_PLAINLY = 0.8


def _names_unit(said: str) -> bool:
    """'thickness in points', 'pounds per 1,000 sq ft': the unit of a measure, no measure, and nothing besides."""
    told = header(said)
    measured = len(told.weight_units) == 1 or told.caliper_unit is not None
    return measured and told.currency is None and not (told.weights or told.calipers) and not _goes_on(said)


def _goes_on(said: str) -> bool:
    """'Thickness in points is given in the description' tells more than a unit."""
    rest = list(said)
    known = (match for section in _OF_MEASURES for match in phrases(section).find(said))
    for match in known:
        rest[match.start : match.end] = " " * (match.end - match.start)
    return any(len(word) > _SMALL_WORD for word in re.findall(r"[^\W\d_]+", "".join(rest)))


_OF_MEASURES = ("weight_units", "caliper_units", "headers", "per", "articles", "basis", "weight_words")
_SMALL_WORD = 3


def _with_units(table: Table, units: Mapping[str, str]) -> Table:
    columns = tuple(_with_unit(column, units) for column in table.columns)
    return table if columns == table.columns else replace(table, columns=columns)


def _with_unit(column: HeadedColumn, units: Mapping[str, str]) -> HeadedColumn:
    """The column with the unit behind its head, where the head names none itself."""
    said = units.get(fold(column.heads[-1].text).strip()) if column.heads else None
    if said is None or _names_unit(column.heads[-1].text) or _counts(column.heads[-1].text):
        return column
    return _with_head(column, f"{column.heads[-1].text} ({said})")


def _counts(head: str) -> bool:
    """'Pos' and 'Item' number the rows."""
    roles = header_roles(head)
    return bool(roles) and roles[0].role is Role.ITEM


def _explained(table: Table, key: Mapping[str, str]) -> Table:
    named = {column: place for column in table.columns if (place := _lettered(column, key)) is not None}
    if len(key) < _FEWEST or len(named) < _FEWEST:
        return table
    sized = {_size(key[_code_of(column.heads[place].text)]) is not None for column, place in named.items()}
    if len(sized) > 1:
        # 'TL = 42,000 lb or more; LTL = anything below that': what is below that is no term of delivery.
        return table
    columns = (_headed(column, key, named[column]) if column in named else column for column in table.columns)
    return replace(table, columns=tuple(columns))


def _lettered(column: HeadedColumn, key: Mapping[str, str]) -> int | None:
    """Which of a column's heads has a letter of the key, the lowest first: 'Price A' may stand over '€/t'."""
    places = reversed(range(len(column.heads)))
    return next((place for place in places if _code_of(column.heads[place].text) in key), None)


def _code_of(head: str) -> str:
    """The letter that a head is, or that tells a price from those beside it: the a of 'A', of 'Price A' and of 'Price A
    EUR/t'."""
    said = header(head)
    unit = said.currency is not None and said.basis is not None
    words = fold(without_unit(said).strip(" /,;") if unit else head).split()
    named = " ".join(words[:-1])
    priced = phrases("price_words").whole(named) is not None or price_unit(named) is not None
    return (words[-1] if priced else " ".join(words)).strip("()")


_TONS_OR_PIECES = re.compile(r"\bST\b\.?")


def _headed(column: HeadedColumn, key: Mapping[str, str], place: int) -> HeadedColumn:
    head = column.heads[place]
    said = key[_code_of(head.text)]
    size = _size(said)
    said = size.words if size is not None and bracket_text(said) is None else said
    basis = header(head.text).basis
    if size is not None and size.not_weight == PIECES_OR_TONS and basis is not None and Basis.SHORT_TON in basis.bases:
        # Beside 'USD/ST' no pieces are ordered.
        said = _TONS_OR_PIECES.sub("short tons", said)
    code = re.search(rf"\(?\b{re.escape(_code_of(head.text))}\b\)?", fold(head.text))
    if code is None:
        return column
    named, unit = head.text[: code.start()], head.text[code.end() :]
    worded = named.strip() and phrases("tiers").whole(named) is None
    text = f"{named.strip()} {said} {unit.strip()}".strip() if worded else f"{said} {unit.strip()}".strip()
    heads = (*column.heads[:place], head._replace(value=text, text=text), *column.heads[place + 1 :])
    return replace(column, heads=heads)
