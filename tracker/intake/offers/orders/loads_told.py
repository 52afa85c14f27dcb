"""What a file says that a truckload, half of one, a pallet or a roll weighs: those of all boards, and of a grade."""

import re
from collections.abc import Iterable

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.each_load import is_open, weighed_by_board, weighed_by_measure
from tracker.intake.values.orders.loads import WHOLE_LOADS, load_at_end, load_definitions, loads_of_grades
from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.words.lists import phrases


def loads_told(texts: Iterable[str]) -> dict[str, Mass]:
    """What a truckload, half of one, pallet or roll weighs: 'Truckload = 40,000 lb'. Said two ways, it says nothing."""
    found: dict[str, set[Mass]] = {}
    by_board: set[str] = set()
    for text in texts:
        by_board |= weighed_by_board(text)
        for clause in clauses(text):
            loads = {match.value for match in phrases("bracket").find(clause)} & {*WHOLE_LOADS, "pallet", "roll"}
            # '5 t to 1/2 truck' weighs no truck.
            masses = () if _FRACTION.search(clause) else find_masses(clause)
            whole = len(loads) == 1 and loads.issubset(WHOLE_LOADS) and load_at_end(clause) is None
            if whole and len(masses) == 1 and not is_open(clause, masses[0]):
                found.setdefault(loads.pop(), set()).add(masses[0])
        for definition in load_definitions(text):
            if definition.weight is not None:
                found.setdefault(definition.kind, set()).add(definition.weight)
            if definition.begins is not None:
                found.setdefault(definition.kind, set()).add(definition.begins)
            if definition.full_load is not None:
                found.setdefault("truckload", set()).add(definition.full_load)
    return {load: masses.pop() for load, masses in found.items() if len(masses) == 1 and load not in by_board}


def loads_told_of_grades(texts: Iterable[str]) -> dict[str, dict[str, Mass]]:
    """By grade what its pallets and rolls weigh: 'SBS pallets weigh 2,000 lb'. Said two ways, or of some of its boards
    otherwise, it says nothing."""
    found: dict[str, dict[str, set[Mass]]] = {}
    by_measure: set[str] = set()
    for text in texts:
        by_measure |= weighed_by_measure(text)
        for one in loads_of_grades(text):
            if one.weight is not None and one.grade is not None:
                found.setdefault(one.grade, {}).setdefault(one.kind, set()).add(one.weight)
    return {
        grade: {load: masses.pop() for load, masses in loads.items() if len(masses) == 1 and load not in by_measure}
        for grade, loads in found.items()
    }


_FRACTION = re.compile(r"[½¼¾⅓⅔]|(?<![\d/])\d/\d(?![\d/])")
