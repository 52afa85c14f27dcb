"""What each pallet, roll or truck weighs, in the words before and behind its weight: 'made up to 750 kg net, whatever
the board', '750 kg to the pallet'; and what says that it is no weight of each of them."""

import re
from functools import lru_cache

from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.notes.clauses import clauses
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
    if names_grade(defining) or excepts_boards(clause) or _of_the_least(defining):
        return True
    return any(names_grade(part) and find_masses(part) for part in re.split(r",(?!\d)", clause) if defining not in part)


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
    parts = (part for clause in clauses(text) for part in re.split(r",(?!\d)", clause))
    of_boards = (part for part in parts if names_grade(part) and find_masses(part))
    loads = (match.value for part in of_boards for match in phrases("bracket").find(part))
    return frozenset(load for load in loads if load in EACH)


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
