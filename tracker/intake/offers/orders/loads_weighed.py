"""Order sizes that are called by a load, or are bare figures, in the weight that the file gives them."""

from collections.abc import Mapping
from dataclasses import replace

from tracker.intake.columns.sizes.order_sizes import BARE
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.values.orders.bracket_pieces import HALF_LOAD, PIECES_OR_TONS
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.values.orders.loads import WHOLE_LOADS, counted_to_load, ending_at, load_at_end
from tracker.intake.values.orders.masses import Mass
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found
from tracker.trade.quantities import MassUnit


def weighed(bracket: Bracket, facts: FileFacts, *, halves: bool) -> Bracket:
    """The order size in the weights that the file gives: its sizes by name, the weight of its loads, the unit of its
    order sizes and its tons; as it is where the file gives none. `halves`: half loads have prices of their own."""
    return (
        _by_name(bracket, facts.sizes)
        or _up_to_a_load(bracket.words, facts.loads)
        or _in_titles_unit(bracket, facts.order_units)
        or _in_short_tons(bracket, pounds=facts.units.pound_file)
        or _counted_in_loads(bracket, facts.loads)
        or _of_load(bracket, facts.loads, halves=halves)
    )


def _by_name(bracket: Bracket, sizes: Mapping[str, Bracket]) -> Bracket | None:
    """'Stufe 2' and 'B', which the file explains elsewhere."""
    named = sizes.get(fold(bracket.words).strip()) if bracket.not_weight else None
    return None if named is None else replace(named, words=bracket.words)


def _in_titles_unit(bracket: Bracket, units: tuple[MassUnit, ...]) -> Bracket | None:
    """A bare '5 - 10' under a title that says what order sizes are in."""
    return bracket_text(bracket.words, units) if bracket.not_weight == BARE and units else None


def _in_short_tons(bracket: Bracket, *, pounds: bool) -> Bracket | None:
    """'ST' is pieces or short tons: the latter in a file in pounds. One without a figure that can be told stays open to
    question."""
    told = bracket.not_weight == PIECES_OR_TONS and (bracket.start is not None or bracket.end is not None)
    return replace(bracket, not_weight="") if told and pounds else None


def _counted_in_loads(bracket: Bracket, loads: Mapping[str, Mass]) -> Bracket | None:
    """'2-4 truckloads'. What is counted goes on from one whole load to the next."""
    each = loads.get(bracket.not_weight)
    if each is None or (bracket.start is None and bracket.end is None):
        return None
    start = each.times(bracket.start) if bracket.start is not None else None
    end = each.times(bracket.end) if bracket.end is not None else None
    return replace(bracket, start=start, end=end, not_weight="", step=None if bracket.not_weight == HALF_LOAD else each)


def _up_to_a_load(words: str, loads: Mapping[str, Mass]) -> Bracket | None:
    """'20,000 lb to T/L' and '5 rolls up to a truckload', which end at the load's weight; in another unit where the
    file gives no weight of one."""
    counted = counted_to_load(words)
    if counted is not None:
        return _weighed_to_load(words, *counted, loads)
    load = load_at_end(words)
    if load is None:
        return None
    weight = loads.get(load.value)
    told = None if weight is None else ending_at(words, load, weight)
    return told or Bracket(words, not_weight="other_unit")


def _weighed_to_load(words: str, size: Bracket, load: Found[str], loads: Mapping[str, Mass]) -> Bracket:
    each, end = loads.get(size.not_weight), loads.get(load.value)
    if each is None or end is None or size.start is None:
        return Bracket(words, not_weight="other_unit")
    return Bracket(words, start=each.times(size.start), end=end)


def _of_load(bracket: Bracket, loads: Mapping[str, Mass], *, halves: bool) -> Bracket:
    """A load by its name alone: 'truckload', 'LTL', which ends where half a load has its own price, 'half truck'."""
    if bracket.start or bracket.end:
        return _of_part_loads(bracket, loads)
    load, words = bracket.not_weight, bracket.words
    full = loads.get("truckload")
    if load in WHOLE_LOADS and load in loads:
        return Bracket(words, start=loads[load])
    if load == HALF_LOAD and load in loads:
        return Bracket(words, start=loads[load], end=full, alone=full is None)
    if load == "part_load" and halves:
        return Bracket(words, end=loads[HALF_LOAD]) if HALF_LOAD in loads else bracket
    if load == "part_load" and (full or load in loads):
        return Bracket(words, start=loads.get(load), end=full)
    return bracket


def _of_part_loads(bracket: Bracket, loads: Mapping[str, Mass]) -> Bracket:
    """'LTL, 10,000 lb and more' ends where a truckload begins; where that is, only a size beside it may say."""
    part_load = any(match.value == "part_load" for match in phrases("bracket").find(bracket.words))
    if not part_load or bracket.end is not None or bracket.not_weight:
        return bracket
    full = loads.get("truckload")
    return replace(bracket, end=full, alone=full is None)
