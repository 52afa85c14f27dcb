"""Order sizes in titles down a file, each ending where another of its own scale begins: 'Rolls, to 5 t', 'Rolls, over
5 t' and then 'Sheets, to 3 t'."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import NamedTuple

from tracker.intake.offers.orders.bracket_words import brackets_in
from tracker.intake.offers.orders.sizes_by_group import InKg
from tracker.intake.offers.orders.things_sized import Thing, is_apart, may_hold_for, thing_of
from tracker.intake.tables.table import Words
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.brackets_in_kg import KgBracket

TitledSizes = Mapping[tuple[str, int, Bracket] | Bracket, KgBracket]
"""Each title's order size by its sheet and row, and by itself for one that was written anew."""


class _Sized(NamedTuple):
    """A title's order size: where it stands, where it begins, and what it is of."""

    words: Words
    bracket: Bracket
    start: Decimal
    thing: Thing


_Scale = list[_Sized]


def sizes_of_titles(titles: Sequence[Words], in_kg: InKg) -> TitledSizes:
    """The order sizes in kg, of each form, board, delivery and mill by themselves; a scale that says a size again
    begins anew. What a later size may end as well, though it goes on with another scale, is left to be asked."""
    titles = tuple(dict.fromkeys(titles))
    titled = brackets_in(titles)
    written = tuple(dict.fromkeys(bracket for _, bracket in titled))
    found: dict[tuple[str, int, Bracket] | Bracket, KgBracket] = dict(zip(written, in_kg(written), strict=True))
    starts = {bracket: in_kg((bracket,))[0].from_kg or Decimal(0) for bracket in written}
    sized = [
        _Sized(words, bracket, starts[bracket], thing)
        for (words, bracket), thing in zip(titled, _things(titles, titled), strict=True)
    ]
    scales = _scales(sized)
    for scale in scales:
        later = [after for other in scales if other is not scale for after in other[1:]]
        sizes = in_kg(tuple(one.bracket for one in scale))
        for one, size in zip(scale, sizes, strict=True):
            open_ = size.below_kg is None and not size.unread
            doubted = open_ and any(_may_end(after, one, sized) for after in later)
            found[one.words.sheet, one.words.row, one.bracket] = replace(size, unread=size.unread or doubted)
    return found


def size_of_title(sizes: TitledSizes, words: Words, bracket: Bracket) -> KgBracket:
    """What `sizes_of_titles` found for one title."""
    own = sizes.get((words.sheet, words.row, bracket))
    return sizes[bracket] if own is None else own


def _things(titles: Sequence[Words], titled: Sequence[tuple[Words, Bracket]]) -> list[Thing]:
    """What each size is of, by its own words and those right above it: 'Rolls' over 'from 5 t', and 'from 20 t' below.

    Words that nobody knows, as those of mills, tell only where some come again.
    """
    sizes = dict(titled)
    by_row = {(words.sheet, words.row): words for words in titles if words not in sizes}
    around = Thing()
    things: list[Thing] = []
    sheet = ""
    for words, bracket in titled:
        above, row = Thing(), words.row - 1
        while (over := by_row.get((words.sheet, row))) is not None:
            above, row = above.within(thing_of(over.text)), row - 1
        around = above if words.sheet != sheet or above != Thing() else around
        sheet = words.sheet
        things.append(thing_of(words.text, bracket).within(around))
    names = [thing.name for thing in things if thing.name]
    return things if len(set(names)) < len(names) else [thing._replace(name="") for thing in things]


def _scales(titled: Sequence[_Sized]) -> list[_Scale]:
    """The titles of each scale. Of several in turn that say one size, 'North mill, to 5 t' and 'South mill, to 5 t',
    each begins one where they come again, else none."""
    scales: list[_Scale] = []
    for one in titled:
        scale = _scale_of(one, scales)
        if scale is None:
            scale = []
            scales.append(scale)
        else:
            # The last that went on is the one that a title without a name goes on with.
            scales.sort(key=lambda other: other is scale)
        scale.append(one)
    return scales


def _scale_of(one: _Sized, scales: Sequence[_Scale]) -> _Scale | None:
    """The scale that a title goes on with: its own, or for one that names nothing the last."""
    named = one.thing != Thing()
    own = next((scale for scale in reversed(scales) if not named or any(one.thing == of.thing for of in scale)), None)
    if own is not None:
        said = [of.bracket for of in own]
        return own if one.bracket not in said or one.bracket == said[-1] else None
    near = next((scale for scale in reversed(scales) if not any(is_apart(one.thing, of.thing) for of in scale)), None)
    return near if near is not None and _goes_on(one, near) else None


def _goes_on(one: _Sized, scale: _Scale) -> bool:
    """'Orders from 5 t' and then 'Orders from 20 t, rolls only'; not where the size was said, or lies between."""
    starts = [of.start for of in scale]
    if one.bracket in [of.bracket for of in scale]:
        return False
    down = len(starts) > 1 and starts == sorted(starts, reverse=True) and one.start < starts[-1]
    return down or one.start >= max(starts)


def _may_end(after: _Sized, one: _Sized, order: Sequence[_Sized]) -> bool:
    """'Rolls, from 5 t', 'Sheets, from 5 t' and then 'From 20 t'."""
    later = order.index(after) > order.index(one) and after.start > one.start
    return later and may_hold_for(after.thing, one.thing)
