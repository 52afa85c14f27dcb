"""Places told by figures: '20–29' and '3' under 'Zone (postcode)' are where board goes, and no order sizes. And places
told by the letters of their states: 'Vancouver BC | Calgary AB' names no firm."""

import re
from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_text
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.heads.header import Header, header
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import ORDER_SIZES, Role, RoleReading
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.words.lists import phrases, words

_OUTRIGHT = 0.9


def with_places(columns: Sequence[HeadedColumn]) -> list[HeadedColumn]:
    """The columns with the word for places said before each such figure, as in 'Zone 20–29'."""
    return [_placed(column) for column in columns]


def _placed(column: HeadedColumn) -> HeadedColumn:
    *above, lowest = column.heads or (None,)
    over = next((cell for cell in reversed(above) if cell is not None and _names_places(cell)), None)
    if lowest is None or over is None or not _numbers_a_place(lowest):
        return column
    word, _, _ = head_text(over).partition("(")
    text = f"{word.strip()} {lowest.text.strip()}"
    return replace(column, heads=(*column.heads[:-1], lowest._replace(value=text, text=text, number_format="General")))


def _names_places(cell: Cell) -> bool:
    strongest = header_roles(head_text(cell))
    said = {reading.role for reading in strongest if reading.strength >= _OUTRIGHT}
    return Role.DESTINATION in said and not said.intersection(ORDER_SIZES)


def _numbers_a_place(cell: Cell) -> bool:
    """'3', '20-29', '01', and not '< 5 t' or '5 t', which weigh orders."""
    text = cell.text
    return any(map(str.isdigit, text)) and not any(map(str.isalpha, text)) and not find_masses(text)


def towns_of_states(columns: Sequence[HeadedColumn]) -> frozenset[Cell]:
    """The heads that are towns with the letters of their states behind them: several in a row, of one country, and not
    all of them may be firms by legal forms, as 'Fiskmo AB | Orrvik AB' are."""
    rows: dict[tuple[int, str], list[Cell]] = defaultdict(list)
    for cell in (cell for column in columns for cell in column.heads):
        for country in _countries_of(cell.text):
            rows[cell.row, country].append(cell)
    return frozenset(
        cell
        for (_, country), cells in rows.items()
        if len(cells) > 1 and any(_is_town(cell.text, country) for cell in cells)
        for cell in cells
    )


def as_a_place(head: Header) -> Header:
    """The head of a column of prices to a place, whose name is no firm's."""
    return replace(head, roles=(*head.roles, RoleReading(Role.DESTINATION, _OUTRIGHT, head.text)))


def are_towns(texts: Sequence[str]) -> bool:
    """'Harlow Gap, IN' and 'Mill Ferry (TN)': several names, each set off from the letters of a state of one country;
    'Nova PE' and 'Nova MB' may be boards, and so are two coated with '(PE)'."""
    letters = {match["state"] for text in texts if (match := _OF_A_STATE.match(text.strip())) is not None}
    if all(phrases("plastic_coatings").whole(each) is not None for each in letters):
        return False
    countries = [_countries_of(text) if "," in text or "(" in text else frozenset[str]() for text in texts]
    shared = frozenset.intersection(*countries) if len(countries) > 1 else frozenset()
    return any(_is_town(text, country) for text in texts for country in shared)


# A name of at most three words, and the letters of a state.
_OF_A_STATE = re.compile(
    r"(?P<town>[^\W\d_][\w.'’-]*(?: [^\W\d_][\w.'’-]*){0,2}?)(?:, ?| | ?\()(?P<state>[A-Z]{2,3})\b\)?"
)


def _countries_of(text: str) -> frozenset[str]:
    """The countries that have a state of the letters behind a name: those of 'Calgary AB, CAD/t', and none of 'Item
    ID' and 'GC1 DE'."""
    match = _OF_A_STATE.match(text.strip())
    said = header(match["town"]) if match is not None else None
    # 'Mill Ferry' has a word for a vendor in it, and is no head of one.
    heads = said is not None and any(
        one.role is not Role.DESTINATION and (one.role is not Role.VENDOR or one.strength >= _OUTRIGHT)
        for one in said.roles
    )
    if match is None or said is None or heads or said.grade is not None:
        return frozenset()
    return frozenset(country for country, letters in words("states").items() if match["state"] in letters)


def _is_town(text: str, country: str) -> bool:
    """'Regina SK', where the letters are no legal form, and 'Calgary AB', where the town is known."""
    match = _OF_A_STATE.match(text.strip())
    if match is None:
        return False
    return phrases("company").whole(match["state"]) != "legal" or phrases("countries").whole(match["town"]) == country
