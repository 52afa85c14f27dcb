"""The price spread as a Drawing: price against caliper with the grade's band, or a strip by grade or by vendor."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from tracker.desk.comparison import Comparison, Per
from tracker.desk.standing import Standing
from tracker.trade.grades import grades
from tracker.window.look import figures
from tracker.window.look.figures import Units
from tracker.window.quotes.drawing import Drawing
from tracker.window.quotes.frame import far_off_words, held_in
from tracker.window.quotes.geometry import ribbon, spread, thinned
from tracker.window.quotes.joins import boards_of, first_ids, joined
from tracker.window.quotes.offer_columns import Offers, of_expected, per_words, price_figure

MOST_POINTS = 25_000
_MOST_LABELS = 14
_MOST_STRIPS = 12
_LETTERS_ENOUGH = 5
PER_TONNE_HERE = "Per tonne here, as per MSF every caliper has a band of its own."
_CALIPER_SPREAD_UM = 4.0
_LEAST_WIDTH_UM = 250.0


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing with its title and, in words, what it shows. unit: of its y, where it is not the footing's."""

    drawing: Drawing
    title: str
    caption: str
    unit: str = ""


def drawable(offers: Offers, rows: NDArray[np.intp], other: NDArray[np.float64]) -> NDArray[np.intp]:
    """Rows whose price and other coordinate are known, thinned where there are more than the eye can use."""
    known = known_rows(offers, rows, other)
    standing_out = offers.marks[known] <= Standing.BELOW
    return thinned(known, standing_out, MOST_POINTS)


def known_rows(offers: Offers, rows: NDArray[np.intp], other: NDArray[np.float64]) -> NDArray[np.intp]:
    """Rows whose price and other coordinate are known: those that could be drawn."""
    return rows[np.isfinite(offers.comparison.price[rows]) & np.isfinite(other[rows])]


def thin_words(known: NDArray[np.intp], drawn: NDArray[np.intp]) -> str:
    """Says where not all that could be drawn is drawn; '' where it is."""
    if len(drawn) >= len(known):
        return ""
    return f" Of {len(known):,} offers {len(drawn):,} are drawn, all that stand out among them."


def without_words(offers: int, lacking: str) -> str:
    """Says how many offers have no place in the picture, and for want of what; '' where all have one."""
    return f" {figures.counted(offers, 'offer')} not drawn: no {lacking}." if offers else ""


def against_caliper(offers: Offers, rows: NDArray[np.intp], grade: str) -> Picture:
    """Price against caliper; the band of the one grade as a ribbon."""
    comparison, units = offers.comparison, offers.units
    snapshot = comparison.snapshot
    chosen = drawable(offers, rows, snapshot.caliper_um)
    step = figures.caliper_value(1.0, units)
    exact_x = snapshot.caliper_um[chosen] * step
    band = None
    if grade:
        band = ribbon(exact_x, comparison.band_low[chosen], comparison.band_high[chosen], bucket=25.4 * step / 2)
    boards = boards_of(snapshot, chosen)
    drawing = Drawing(
        rows=chosen,
        x=exact_x + spread(first_ids(boards, snapshot.id[chosen]), _CALIPER_SPREAD_UM * step),
        y=comparison.price[chosen],
        marks=offers.marks[chosen],
        labels=labels_of(offers, chosen),
        ribbons=[] if band is None else [band],
        notes=[] if band is None else [(float(band.x[-1]), float(band.low[-1]), "expected band")],
        faint=~comparison.current[chosen],
        joins=joined(boards, snapshot.from_kg[chosen]),
        x_ticks=_caliper_ticks(exact_x, units),
        least_width=_LEAST_WIDTH_UM * step,
        x_unit=f" {figures.caliper_unit(units)}",
        x_also=_other_unit(units),
        y_also=also_per_short_ton(comparison, units),
    )
    drawing = prices_held_in(drawing, offers, comparison)
    if not grade:
        words = "Choose a grade to see its expected band."
    elif band is None:
        words = "No band: set the market level of SBS, or take in three current SBS offers."
    else:
        words = f"{band_words(comparison, grade)}{outside_words(comparison, chosen)}"
    title = f"{grade or 'All grades'}: price against caliper"
    more = " A line joins one board's order sizes." if len(drawing.joins) else ""
    known = known_rows(offers, rows, snapshot.caliper_um)
    without = without_words(len(rows) - len(known), "caliper or price on this footing")
    return Picture(drawing, title, f"{words}{without}{more}{far_off_words(drawing)}{thin_words(known, chosen)}")


def by_strip(offers: Offers, rows: NDArray[np.intp], grade: str) -> Picture:
    """Prices by grade or, within one grade, by vendor."""
    comparison = like_with_like(offers.comparison)
    snapshot = comparison.snapshot
    codes, names = (snapshot.vendor, snapshot.vendors) if grade else (snapshot.grade, snapshot.grades)
    across = np.where(codes < 0, np.nan, codes.astype(np.float64))
    chosen = drawable(offers, rows, across)
    thin = thin_words(known_rows(offers, rows, across), chosen)
    strips = _most_common(codes[chosen], names)
    if not grade:
        in_trade = list(grades())
        strips = np.array(sorted(strips, key=lambda code: _place(names[code], in_trade)), dtype=np.intp)
    place_of = np.full(len(names), -1)
    place_of[strips] = np.arange(len(strips))
    chosen = chosen[place_of[codes[chosen]] >= 0]
    place = place_of[codes[chosen]].astype(np.float64)
    boxes = [
        (strip - 0.36, strip + 0.36, *_band_of(comparison, chosen[place == strip])) for strip in range(len(strips))
    ]
    boards = boards_of(snapshot, chosen)
    drawing = Drawing(
        rows=chosen,
        x=place + spread(first_ids(boards, snapshot.id[chosen]), 0.26),
        y=comparison.price[chosen],
        marks=offers.marks[chosen],
        labels=labels_of(offers, chosen),
        faint=~comparison.current[chosen],
        boxes=[box for box in boxes if np.isfinite(box[2])],
        joins=joined(boards, snapshot.from_kg[chosen]),
        y_also=also_per_short_ton(comparison, offers.units),
        x_ticks=[(float(strip), word) for strip, word in enumerate(called([names[code] for code in strips]))],
    )
    drawing = prices_held_in(drawing, offers, comparison)
    left_out = "" if len(strips) == len(np.unique(codes[rows])) else f" The {len(strips)} with most offers are shown."
    kind = "vendor" if grade else "grade"
    words = f"Each strip is a {kind}; behind it the expected bands of its boards, from lowest to highest."
    if comparison is not offers.comparison:
        words = f"{PER_TONNE_HERE} {words}"
    title = f"{grade or 'All grades'}: prices by {kind}"
    return Picture(drawing, title, f"{words}{left_out}{far_off_words(drawing)}{thin}", per_words(comparison))


def prices_held_in(drawing: Drawing, offers: Offers, comparison: Comparison) -> Drawing:
    """A drawing of prices on the comparison's footing in which no far-off one squashes the others."""
    return held_in(
        drawing,
        lambda place: label_of(offers, int(drawing.rows[place])),
        lambda price: price_figure(comparison, price),
    )


def _caliper_ticks(x: NDArray[np.float64], units: Units) -> list[tuple[float, str]]:
    """The calipers that are really there, while they are few enough to be read side by side."""
    there = np.unique(np.round(x, 1 if units is Units.US else 0))
    few = len(there) <= (_MOST_STRIPS if units is Units.US else 8)
    return [(float(each), f"{each:g} {figures.caliper_unit(units)}") for each in there] if few else []


def _other_unit(units: Units) -> tuple[float, str]:
    """From a caliper as shown to the other system's."""
    other = figures.other_units(units)
    return figures.caliper_value(figures.caliper_um_of(1.0, units), other), f" {figures.caliper_unit(other)}"


def also_per_short_ton(comparison: Comparison, units: Units) -> tuple[float, str] | None:
    """From a price per tonne to one per short ton, for those who buy by it; None on any other footing."""
    per_tonne = comparison.footing.per is Per.TONNE and units is Units.US
    return (figures.kg_per_ton(Units.US) / figures.kg_per_ton(Units.METRIC), " /ST") if per_tonne else None


def labels_of(offers: Offers, rows: NDArray[np.intp]) -> list[tuple[int, str]]:
    """Words for the offers that stand out, the furthest from the going price first."""
    marks = offers.marks[rows]
    standing_out = np.flatnonzero(marks <= Standing.BELOW)
    with np.errstate(invalid="ignore", divide="ignore"):
        distance = np.abs(np.log(of_expected(offers.comparison)[rows[standing_out]]))
    furthest = standing_out[np.argsort(-np.nan_to_num(distance, nan=0.0), kind="stable")][
        : _MOST_LABELS if len(rows) < 1000 else _MOST_LABELS // 2
    ]
    return [(int(place), label_of(offers, int(rows[place]))) for place in furthest]


def label_of(offers: Offers, row: int, *, caliper: bool = True) -> str:
    """'Tolmere 18 pt +34 %': whose board it is, of which caliper, and how far off."""
    thick = figures.caliper(float(offers.comparison.snapshot.caliper_um[row]), offers.units)
    where = " ".join([_short(offers.name("vendor", row)), *([thick] if caliper else [])])
    if offers.marks[row] == Standing.SLIP:
        return f"{where}: another basis?"
    ratio = float(offers.of_expected[row])
    return where if np.isnan(ratio) else f"{where} {figures.signed_percent(ratio)}"


def _short(name: str) -> str:
    """A name's first word: enough to know it by, short enough to stand in a picture."""
    return name.split()[0] if name else name


def _place(name: str, known: list[str]) -> tuple[int, str]:
    return (known.index(name) if name in known else len(known), name)


def called(names: Sequence[str]) -> list[str]:
    """Each name by its first word, by more of them where that is short or another's too: enough to tell them apart."""
    firsts = [_short(name) for name in names]
    return [name if firsts.count(first) > 1 else _enough_of(name) for name, first in zip(names, firsts, strict=True)]


def _enough_of(name: str) -> str:
    words = name.split()
    taken = words[:1]
    for word in words[1:]:
        if len(" ".join(taken)) >= _LETTERS_ENOUGH and taken[-1].isalpha():
            break
        taken.append(word)
    return " ".join(taken)


def like_with_like(comparison: Comparison) -> Comparison:
    """Per area thick and thin boards of a grade can't share one band: then per tonne, unless one caliper was chosen."""
    footing = comparison.footing
    if footing.per is Per.TONNE or footing.at_caliper_um is not None:
        return comparison
    with np.errstate(invalid="ignore", divide="ignore"):
        tonnes = comparison.per_tonne / comparison.per_msf
    return replace(
        comparison,
        footing=replace(footing, per=Per.TONNE),
        price=comparison.per_tonne,
        expected=comparison.expected * tonnes,
        band_low=comparison.band_low * tonnes,
        band_high=comparison.band_high * tonnes,
    )


def _band_of(comparison: Comparison, rows: NDArray[np.intp]) -> tuple[float, float]:
    low, high = comparison.band_low[rows], comparison.band_high[rows]
    known = np.isfinite(low) & np.isfinite(high)
    return (float(low[known].min()), float(high[known].max())) if known.any() else (np.nan, np.nan)


def _most_common(codes: NDArray[np.int32], names: list[str]) -> NDArray[np.intp]:
    """Codes of the fullest strips, the fullest first."""
    counts = np.bincount(codes, minlength=len(names)) if len(codes) else np.zeros(len(names), dtype=np.intp)
    fullest = np.argsort(-counts, kind="stable")[:_MOST_STRIPS]
    return fullest[counts[fullest] > 0]


def outside_words(comparison: Comparison, rows: NDArray[np.intp]) -> str:
    """How many of these lie above or below their own expected band: a whole grade may, and then no price of it is out
    of line with the others; '' where none does."""
    price, low, high = comparison.price[rows], comparison.band_low[rows], comparison.band_high[rows]
    with np.errstate(invalid="ignore"):
        beside = {"above": int((price > high).sum()), "below": int((price < low).sum())}
    told = [f"{many:,} {'lies' if many == 1 else 'lie'} {where} the band" for where, many in beside.items() if many]
    return f" Of {figures.counted(len(rows), 'offer')} drawn, {' and '.join(told)}." if told else ""


def band_words(comparison: Comparison, grade: str) -> str:
    """Where the ribbon comes from: 'Expected band: level of SBS 1,455 USD/t of 1 Oct 2026 (…), ratio …'."""
    judged = comparison.judged
    known = judged is not None and grade in comparison.snapshot.grades
    source = judged.bands.sources[comparison.snapshot.grades.index(grade)] if judged is not None and known else ""
    return f"Expected band: {source}." if source else "The ribbon is the grade's expected band."
