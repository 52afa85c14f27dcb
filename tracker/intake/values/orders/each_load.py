"""What each pallet, roll or truck weighs, in the words before and behind its weight: 'made up to 750 kg net, whatever
the board', '750 kg to the pallet'; and what says that it is no weight of each of them."""

import re
from collections.abc import Callable, Iterator
from functools import lru_cache

from tracker.intake.values.boards.boards_meant import boards_meant
from tracker.intake.values.boards.grade import find_grade, names_grade
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import Mass, find_masses, mass_text
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found, outside, without

EACH = ("pallet", "roll")
"""Loads that all weigh the same only where a list says so."""
_STOPS = " .:)"


def weight_of_each(text: str) -> Mass | None:
    """The weight that is all a text says, but for words that take nothing from it. 'Max. 1,000 kg', 'about 800 kg' and
    '800 kg gross' are the weight of no load."""
    text = _without_more_of_it(_of_all_boards_taken(text)).strip(_STOPS)
    at_ends = [match for match in phrases("exact_loads").find(text) if _at_an_end(text, match)]
    return mass_text(without(text, at_ends).strip(_STOPS))


def _at_an_end(text: str, match: Found[str]) -> bool:
    """'net' of '750 kg net' and 'exactly' of 'exactly 750 kg', and no word between a figure and its unit."""
    digits = [place for place, sign in enumerate(text) if sign.isdigit()]
    return bool(digits) and (match.end <= digits[0] or match.start > digits[-1])


def weight_ahead(before: str) -> Mass | None:
    """'800 kg per' before 'reel', 'We put 750 kg on each' before 'pallet'; 'about 800 kg per reel' defines nothing."""
    ends = [
        match for section in ("onto_loads", "per") for match in phrases(section).find(before)
        if not before[match.end :].strip()
    ]  # fmt: skip
    if not ends:
        return None
    said = before[: min(match.start for match in ends)]
    begun = [match for match in phrases("packers").find(said) if not said[: match.start].strip()]
    return weight_of_each(said[begun[0].end :] if begun else said)


def said_of_some(clause: str, defining: str) -> bool:
    """'GC1 pallets weigh 750 kg', 'Pallets weigh 750 kg, GD2 800 kg', '… except GD2': no weight of every load."""
    if names_boards(defining) or excepts_boards(clause) or _of_the_least(defining):
        return True
    return any(_weighs_some(part, names_boards) for part in COMMA.split(clause) if defining not in part)


def _weighs_some(part: str, names: Callable[[str], bool]) -> bool:
    """'GD2 800 kg'; 'minimum for GD2 5 t' is an order."""
    return names(part) and bool(find_masses(part)) and not phrases("minimum").find(part)


def names_boards(part: str) -> bool:
    """Whether a part names a grade, or what boards measure: '24 pt 1,800 lb', 'ab 350 g/m² 900 kg'."""
    return names_grade(part) or names_measures(part)


def names_measures(part: str) -> bool:
    """Whether a part names boards by what they measure."""
    for mass in find_masses(part):
        # '1,800 lb' may be a basis weight.
        part = part.replace(mass.words, " ", 1)
    return bool(boards_meant(part).spans)


def grade_of_load(defining: str) -> str | None:
    """'SBS pallets weigh 2,000 lb' is true of SBS; None where a measure tells the boards as well."""
    named = find_grade(defining)
    ahead, _, behind = defining.partition(named.words) if named is not None else (defining, "", "")
    return None if named is None or names_boards(f"{ahead} {behind}") else named.grade


def led_by_a_kind(ahead: str) -> bool:
    """Whether a word right before a load says which of them is meant: 'half pallets', 'damaged pallets'. 'Our full
    pallets' are all of them, and 'SBS pallets' those of a board."""
    word = _LAST_WORD.search(ahead)
    return word is not None and word[1] in rest_of(ahead, (), *_BEFORE_LOADS).split()[-1:]


_LAST_WORD = re.compile(r"(?<!\w)([^\W\d_]+)(?:\s+|-)$")
_BEFORE_LOADS = (
    "whole_loads", "onto_loads", "packers", "weighs", "exact_loads", "all_of_them", "about_lines", "forms", "grades",
    "grade_codes", "articles", "range.and",
)  # fmt: skip


def excepts_boards(clause: str) -> bool:
    """'24 t except GD2', and not '24 t excluding VAT', '… excluding freight' or 'menos de 24 t'."""
    said = outside(phrases("exceptions").find(clause), phrases("bracket").find(clause))
    behind = [clause[match.end :] for match in said]
    return any(not any(phrases(section).find(rest) for section in _MONEY) for rest in behind)


_MONEY = ("tax", "charges", "carriage")


def made_up(text: str) -> list[Found[str]]:
    """Where 'is made up to' stands, which ends in the words of a limit."""
    return [match for match in phrases("made_up").find(text) if match.value == "any"]


def may_be_most(clause: str) -> bool:
    """'Pallets are made up to 750 kg' may be the most that one holds; 'every pallet is …' and '… whatever the board'
    tell what each weighs."""
    every = len(phrases("made_up").find(clause)) > len(made_up(clause)) or phrases("whatever_board").find(clause)
    return bool(made_up(clause)) and not every


def _of_the_least(defining: str) -> bool:
    """'Minimum for pallets: 750 kg' is an order."""
    least, loads = phrases("minimum").find(defining), phrases("bracket").find(defining)
    return bool(least) and any(match.value in EACH and least[0].start < match.start for match in loads)


@lru_cache(maxsize=4096)
def weighed_by_board(text: str) -> frozenset[str]:
    """The loads that weigh something else for some boards: 'Pallets of GD2 hold 800 kg'. What a list says of all of
    them may be meant for the others only."""
    return frozenset(load for clause in clauses(text) for load in _weighed_where(names_boards, clause))


@lru_cache(maxsize=4096)
def weighed_by_measure(text: str) -> frozenset[str]:
    """Those of 'Pallets of 24 pt hold 1,800 lb'. What is said of those of a grade may be meant for its others only."""
    return frozenset(load for clause in clauses(text) for load in _weighed_where(names_measures, clause))


def _weighed_where(names: Callable[[str], bool], clause: str) -> Iterator[str]:
    """'Pallets weigh 800 kg, from 350 g/m² 900 kg': a part without a load of its own goes on with the one before."""
    loads: set[str] = set()
    for part in COMMA.split(clause):
        loads = {match.value for match in phrases("bracket").find(part) if match.value in EACH} or loads
        if _weighs_some(part, names):
            yield from loads


def is_open(clause: str, mass: Mass) -> bool:
    """'About 24 t', 'up to 24 t', '24 t environ' and '24 t except …', which no load need weigh; 'made up to 24 t' is
    what each does."""
    before, _, behind = clause.partition(mass.words)
    words = before if may_be_most(clause) else without(before, made_up(before))
    said = [match for match in phrases("bracket").find(words) if match.value in ("up_to", "below")]
    bounded = bool(said) and not words[said[-1].end :].strip(" .")
    return bounded or excepts_boards(clause) or _ends_in_about(before) or _begins_with_about(behind)


def _ends_in_about(before: str) -> bool:
    found = phrases("about").find(before)
    return bool(found) and not before[found[-1].end :].strip(" .")


def _begins_with_about(behind: str) -> bool:
    found = phrases("about").find(behind)
    return bool(found) and not behind[: found[0].start].strip(" (")


def _without_more_of_it(text: str) -> str:
    """'800 kg and are 40 in wide' without what else the load is; 'and more' would make it no weight of each."""
    for joint in re.finditer(rf"\s{pattern('range', 'and')}\s", text, re.IGNORECASE):
        behind = text[joint.end() :]
        said = any(match.start == 0 for match in phrases("weighs").find(behind))
        if said and not find_masses(behind) and mass_text(text[: joint.start()]) is not None:
            return text[: joint.start()]
    return text


def _of_all_boards_taken(text: str) -> str:
    """'800 kg for all grades', '800 kg whatever the board' and '800 kg for the breaks below' without the last words,
    which take nothing away."""
    for section in ("for_order_sizes", "whatever_board"):
        last = [match for match in phrases(section).find(text) if not text[match.end :].strip(" .)")]
        text = text[: last[0].start] if last else text
    said = phrases("all_of_them").find(text)
    before = text[: said[0].start].split() if said else []
    return " ".join(before[:-1]) if len(before) > 2 and not before[-1][0].isdigit() else text
