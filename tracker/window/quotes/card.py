"""What a point of a picture says when the pointer rests on it."""

import numpy as np

from tracker.desk.comparison import Per
from tracker.trade.exact import M2_PER_MSF
from tracker.window.look import figures
from tracker.window.look.figures import Units
from tracker.window.quotes.offer_columns import Offers, per_words, price_figure, standing_said, verdict_of

_MSF_IN_1000_M2 = float(1000 / M2_PER_MSF)


def card(offers: Offers, row: int) -> str:
    """Vendor and board, the price as quoted and as compared, the verdict: a few lines."""
    comparison = offers.comparison
    snapshot = comparison.snapshot
    caliper = figures.caliper(float(snapshot.caliper_um[row]), offers.units)
    other = figures.caliper(float(snapshot.caliper_um[row]), figures.other_units(offers.units))
    lines = [
        f"{offers.name('vendor', row)} · {snapshot.product[row]}",
        f"{offers.name('grade', row)}, {caliper} ({other}), quoted {snapshot.as_quoted[row]}",
        _normalised(offers, row),
        standing_said(offers, row),
    ]
    if not comparison.current[row]:
        lines.append("no longer current")
    ratio = float(offers.of_others[row])
    if not np.isnan(ratio):
        lines[3] += f": {figures.beside(ratio)} the going price"
    decided = verdict_of(offers, row)
    return "\n".join([*lines, decided] if decided else lines)


def _normalised(offers: Offers, row: int) -> str:
    """The compared figure, as a range where it rests on an estimated weight, and what the other basis makes of it."""
    comparison = offers.comparison
    between = comparison.range_of(row)
    shown = price_figure(comparison, float(comparison.price[row]))
    if between is not None:
        shown += f"*, perhaps {'–'.join(price_figure(comparison, end) for end in between)}"
    elif not len(comparison.price_low) and comparison.snapshot.estimated[row]:
        shown += "*"
    return f"{shown} {per_words(comparison)} ({' = '.join(_on_other_bases(offers, row))})"


def _on_other_bases(offers: Offers, row: int) -> list[str]:
    """The same price per tonne and per area, save as it is compared; areas as the units in force have them."""
    comparison = offers.comparison
    tonne, msf = float(comparison.per_tonne[row]), float(comparison.per_msf[row])
    told = [] if comparison.footing.per is Per.TONNE else [f"{figures.figure(tonne, 0)} per tonne"]
    if offers.units is Units.METRIC:
        return [*told, f"{figures.figure(msf * _MSF_IN_1000_M2, 2)} per 1,000 m²"]
    return told or [f"{figures.figure(msf, 2)} per MSF"]
