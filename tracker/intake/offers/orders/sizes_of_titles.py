"""Order sizes in titles down a file, each ending where another of its own scale begins: 'Rolls, to 5 t', 'Rolls, over
5 t' and then 'Sheets, to 3 t'."""

from collections.abc import Hashable, Mapping, Sequence

from tracker.intake.offers.orders.sizes_by_group import InKg, forms_in
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.brackets_in_kg import KgBracket

TitledSizes = Mapping[tuple[str, int, Bracket] | Bracket, KgBracket]
"""Each title's order size by its sheet and row, and by itself for one that was written anew."""


def sizes_of_titles(titled: Sequence[tuple[Words, Bracket]], in_kg: InKg) -> TitledSizes:
    """The order sizes in kg, of each form and board by themselves; a scale that says a size again begins anew."""
    written = tuple(dict.fromkeys(bracket for _, bracket in titled))
    found: dict[tuple[str, int, Bracket] | Bracket, KgBracket] = dict(zip(written, in_kg(written), strict=True))
    for scale in _scales(titled):
        sizes = in_kg(tuple(bracket for _, bracket in scale))
        for (words, bracket), size in zip(scale, sizes, strict=True):
            found[words.sheet, words.row, bracket] = size
    return found


def size_of_title(sizes: TitledSizes, words: Words, bracket: Bracket) -> KgBracket:
    """What `sizes_of_titles` found for one title."""
    own = sizes.get((words.sheet, words.row, bracket))
    return sizes[bracket] if own is None else own


def _scales(titled: Sequence[tuple[Words, Bracket]]) -> list[list[tuple[Words, Bracket]]]:
    """The titles of each scale. Of several in turn that say one size, 'North mill, to 5 t' and 'South mill, to 5 t',
    each begins none."""
    scales: list[list[tuple[Words, Bracket]]] = []
    going_on: dict[Hashable, list[tuple[Words, Bracket]]] = {}
    for words, bracket in titled:
        board = find_grade(words.text)
        thing = forms_in(words.text), board.grades if board is not None else ()
        scale = going_on.get(thing)
        sizes = [size for _, size in scale or ()]
        if scale is None or (bracket in sizes and bracket != sizes[-1]):
            scale = going_on[thing] = []
            scales.append(scale)
        scale.append((words, bracket))
    return scales
