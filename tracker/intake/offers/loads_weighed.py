"""Order sizes that are called by a load, or are bare figures, in the weight that the file gives them."""

from collections.abc import Mapping
from dataclasses import replace

from tracker.intake.columns.order_sizes import BARE
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.values.brackets import HALF_LOAD, PIECES_OR_TONS, Bracket, bracket_text
from tracker.intake.values.masses import Mass, find_masses
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found


def weighed(bracket: Bracket, facts: FileFacts, *, halves: bool) -> Bracket:
    """A truckload or less than one, in the weight that the file gives a truckload; 'ST' in short tons in pounds; bare
    figures in the unit that a title gives the order sizes."""
    named = facts.sizes.get(fold(bracket.words).strip()) if bracket.not_weight else None
    if named is not None:
        return replace(named, words=bracket.words)
    ends_at = _load_at_its_end(bracket.words)
    if ends_at is not None:
        return _up_to_a_load(bracket.words, ends_at, facts.loads)
    if bracket.not_weight == BARE and facts.order_units:
        return bracket_text(bracket.words, facts.order_units) or bracket
    if bracket.not_weight == PIECES_OR_TONS and facts.units.pound_file:
        return replace(bracket, not_weight="")
    each = facts.loads.get(bracket.not_weight)
    if each is not None and (bracket.start is not None or bracket.end is not None):
        start = each.times(bracket.start) if bracket.start is not None else None
        end = each.times(bracket.end) if bracket.end is not None else None
        # What is counted goes on from one whole load to the next.
        step = None if bracket.not_weight == HALF_LOAD else each
        return replace(bracket, start=start, end=end, not_weight="", step=step)
    return bracket if bracket.start or bracket.end else _of_load(bracket, facts.loads, halves=halves)


def _load_at_its_end(words: str) -> Found[str] | None:
    """The load that a size from some weight goes up to: the 'T/L' of '20,000 lb to T/L'."""
    load = next((match for match in phrases("bracket").find(words) if match.value in _WHOLE_LOADS), None)
    before = words[: load.start].rstrip() if load is not None else ""
    masses = find_masses(before)
    joint = before[before.rfind(masses[-1].words) + len(masses[-1].words) :].strip() if masses else ""
    joined = joint in _DASHES or phrases("range").whole(joint) == "any" or phrases("bracket").whole(joint) == "up_to"
    return load if joint and joined else None


_WHOLE_LOADS = ("truckload", "railcar")
_DASHES = ("-", "–", "—")


def _up_to_a_load(words: str, load: Found[str], loads: Mapping[str, Mass]) -> Bracket:
    weight = loads.get(load.value)
    told = None if weight is None else bracket_text(f"{words[: load.start]}{weight.words}{words[load.end :]}")
    return (
        replace(told, words=words, end_included=False) if told is not None else Bracket(words, not_weight="other_unit")
    )


def _of_load(bracket: Bracket, loads: Mapping[str, Mass], *, halves: bool) -> Bracket:
    """A load by its name alone: 'truckload', 'LTL', which ends where half a load has its own price, 'half truck'."""
    load, words = bracket.not_weight, bracket.words
    full = loads.get("truckload")
    if load in ("truckload", "railcar") and load in loads:
        return Bracket(words, start=loads[load])
    if load == HALF_LOAD and load in loads:
        return Bracket(words, start=loads[load], end=full, alone=full is None)
    if load == "part_load" and halves:
        return Bracket(words, end=loads[HALF_LOAD]) if HALF_LOAD in loads else bracket
    if load == "part_load" and (full or load in loads):
        return Bracket(words, start=loads.get(load), end=full)
    return bracket
