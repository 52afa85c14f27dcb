"""The columns of the table over all offers."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.desk.comparison import Comparison, Per
from tracker.desk.freight import FREIGHT_WORDS, where_freight_stands
from tracker.desk.standing import Standing, standing_words
from tracker.desk.verdicts import said
from tracker.window.look import figures
from tracker.window.look.figures import NONE, Units
from tracker.window.quotes.board_names import board_names
from tracker.window.tables.columns import Column, Stand, coded_keys, fixed, text_keys


@dataclass(frozen=True, slots=True)
class Offers:
    """What the offer columns read: the comparison, its marks, the units to show."""

    comparison: Comparison
    marks: NDArray[np.int8]
    units: Units
    of_expected: NDArray[np.float64]
    of_others: NDArray[np.float64]

    def name(self, kind: str, row: int) -> str:
        """The word behind a code column ('vendor', 'grade', 'file'), or a dash."""
        code = int(getattr(self.comparison.snapshot, kind)[row])
        return NONE if code < 0 else getattr(self.comparison.snapshot, f"{kind}s")[code]


def offers(comparison: Comparison, marks: NDArray[np.int8], units: Units) -> Offers:
    """A comparison made ready for the columns; what a cell only looks up is worked out here, once."""
    return Offers(comparison, marks, units, of_expected(comparison), comparison.of_others)


def of_expected(comparison: Comparison) -> NDArray[np.float64]:
    """Price over the going price, one an offer; NaN where either is not known."""
    with np.errstate(invalid="ignore", divide="ignore"):
        return comparison.price / comparison.expected


def price_figure(comparison: Comparison, price: float) -> str:
    """A price on the footing, always with the same places so that a column lines up: 52.08 per MSF, 1,195 per tonne."""
    return figures.figure(price, 2 if comparison.footing.per is Per.MSF else 0)


def per_words(comparison: Comparison) -> str:
    """'USD per MSF'."""
    return f"{comparison.footing.currency} {comparison.footing.per_words.replace('1,000 ft²', 'MSF')}"


def _others_tip(offers: Offers, row: int) -> str:
    count = int(offers.comparison.peers[row])
    if not count:
        return f"No other vendor offers {offers.name('grade', row)}: there is no going price to compare with"
    return f"Compared with {figures.counted(count, 'offer')} of other vendors for {offers.name('grade', row)}"


def _mark(offers: Offers, row: int) -> Standing:
    return Standing(int(offers.marks[row]))


def standing_said(offers: Offers, row: int) -> str:
    """What the price is, in words."""
    return standing_words(offers.comparison, row, _mark(offers, row))


def _order_keys(offers: Offers) -> NDArray[np.float64]:
    snapshot = offers.comparison.snapshot
    return np.nan_to_num(np.where(np.isnan(snapshot.from_kg), snapshot.minimum_kg, snapshot.from_kg), nan=0.0)


def _order_text(offers: Offers, row: int) -> str:
    snapshot = offers.comparison.snapshot
    low, high, minimum = (float(each[row]) for each in (snapshot.from_kg, snapshot.below_kg, snapshot.minimum_kg))
    return figures.order_size(low, high, minimum, offers.units)


def _price_text(offers: Offers, row: int) -> str:
    """The figure, or from where to where it lies when it rests on an estimated weight."""
    between = offers.comparison.range_of(row)
    if between is not None:
        return "–".join(price_figure(offers.comparison, end) for end in between) + "*"
    return price_figure(offers.comparison, float(offers.comparison.price[row]))


def _price_title(comparison: Comparison) -> str:
    """The unit as a heading; at equal caliper shortened, so that it fits its column."""
    if comparison.footing.at_caliper_um is None:
        return per_words(comparison)
    return per_words(comparison).replace(" per MSF", "/MSF")


def _price_tip(offers: Offers, row: int) -> str:
    comparison = offers.comparison
    if np.isnan(comparison.price[row]):
        return "not known on this footing"
    freight = FREIGHT_WORDS[int(where_freight_stands(comparison.snapshot, comparison.is_delivered)[row])]
    shown = price_figure(comparison, float(comparison.price[row]))
    doubt = ""
    if comparison.range_of(row) is not None:
        doubt = f"; the weight is estimated, so it may be {_price_text(offers, row).rstrip('*')}"
    return f"{shown} {per_words(comparison)}, freight {freight}{doubt}"


def _quoted_keys(offers: Offers) -> NDArray[np.float64]:
    return offers.comparison.snapshot.price


def _days(values: NDArray[Any]) -> NDArray[np.float64]:
    return np.where(values < 1, np.nan, values.astype(np.float64))


def _weight_text(offers: Offers, row: int) -> str:
    snapshot = offers.comparison.snapshot
    text = figures.weight(float(snapshot.grammage_gsm[row]), offers.units, estimated=bool(snapshot.estimated[row]))
    return f"{text}°" if row < len(snapshot.measured) and snapshot.measured[row] else text


def verdict_of(offers: Offers, row: int) -> str:
    """What people decided about an offer's board, each decision on a line, the latest first; '' where nobody did."""
    decided = offers.comparison.board_verdicts.get(row, ())
    return "\n".join(f"{said(verdict)[:1].upper()}{said(verdict)[1:]}." for verdict in decided)


def _board_text(offers: Offers, row: int) -> str:
    """The vendor's own words or, where its sheet has none, the grade and the coated sides: 'SBS C1S'."""
    snapshot = offers.comparison.snapshot
    if snapshot.product[row]:
        return snapshot.product[row]
    sides = int(snapshot.coated_sides[row])
    return f"{offers.name('grade', row)} C{sides}S" if sides > 0 else offers.name("grade", row)


def _board_keys(offers: Offers) -> NDArray[np.int64]:
    boards = board_names(offers.comparison.snapshot)
    return text_keys(boards.names)[boards.codes]


def _decided_text(offers: Offers, row: int) -> str:
    decided = offers.comparison.board_verdicts.get(row, ())
    return "" if not decided else "approved" if decided[0].approved else "rejected"


def _decided_keys(offers: Offers) -> NDArray[np.float64]:
    """Approved boards first, then rejected ones, then those nobody decided about."""
    keys = np.full(len(offers.comparison.snapshot), np.nan)
    for row, decided in offers.comparison.board_verdicts.items():
        keys[row] = 0.0 if decided[0].approved else 1.0
    return keys


def _lead_keys(offers: Offers) -> NDArray[np.float64]:
    snapshot = offers.comparison.snapshot
    return np.fmax(snapshot.lead_low, snapshot.lead_high)


OFFER_COLUMNS: tuple[Column, ...] = (
    Column(
        "mark",
        fixed(""),
        text=standing_said,
        keys=lambda o: o.marks,
        stand=Stand.MIDDLE,
        width=26,
        paint="mark",
        paints=lambda o, row: None if _mark(o, row) is Standing.IN_LINE else _mark(o, row),
        tip=standing_said,
        about="What stands out, by shape",
    ),
    Column(
        "grade",
        fixed("Grade"),
        text=lambda o, row: o.name("grade", row),
        keys=lambda o: coded_keys(o.comparison.snapshot.grade, o.comparison.snapshot.grades),
        width=80,
        paint="grade",
        paints=lambda o, row: o.name("grade", row),
    ),
    Column(
        "vendor",
        fixed("Vendor"),
        text=lambda o, row: o.name("vendor", row),
        keys=lambda o: coded_keys(o.comparison.snapshot.vendor, o.comparison.snapshot.vendors),
        width=110,
        share=4,
    ),
    Column(
        "board",
        fixed("Board"),
        text=_board_text,
        keys=_board_keys,
        width=100,
        share=3,
        tip=_board_text,
    ),
    Column(
        "decided",
        fixed("Sample"),
        text=_decided_text,
        keys=_decided_keys,
        width=78,
        tip=verdict_of,
        about="What was decided about the board after a sample; rest the pointer on it for who and why",
    ),
    Column(
        "caliper",
        fixed("Caliper"),
        text=lambda o, row: figures.caliper(float(o.comparison.snapshot.caliper_um[row]), o.units),
        keys=lambda o: o.comparison.snapshot.caliper_um,
        stand=Stand.RIGHT,
        width=70,
    ),
    Column(
        "weight",
        lambda o: figures.weight_unit(o.units) if o else "Weight",
        text=_weight_text,
        keys=lambda o: o.comparison.snapshot.grammage_gsm,
        stand=Stand.RIGHT,
        width=66,
        about="Basis weight; * is an estimate from grade and caliper, ° was measured on samples",
    ),
    Column(
        "quoted",
        fixed("As quoted"),
        text=lambda o, row: o.comparison.snapshot.as_quoted[row],
        keys=_quoted_keys,
        stand=Stand.RIGHT,
        width=122,
        share=1,
    ),
    Column(
        "price",
        lambda o: _price_title(o.comparison) if o else "Price",
        text=_price_text,
        keys=lambda o: o.comparison.price,
        stand=Stand.RIGHT,
        width=112,
        strong=True,
        tip=_price_tip,
    ),
    Column(
        "expected",
        fixed("vs going price"),
        text=lambda o, row: figures.signed_percent(float(o.of_others[row])),
        keys=lambda o: o.of_others,
        stand=Stand.RIGHT,
        width=114,
        tip=_others_tip,
        about="Going price: what other vendors' offers of the grade come to at that caliper and order size; where they "
        "are few, the expected band helps; – where no other vendor offers the grade",
    ),
    Column(
        "order",
        fixed("Order"),
        text=_order_text,
        keys=_order_keys,
        stand=Stand.RIGHT,
        width=98,
        share=1,
    ),
    Column(
        "lead",
        fixed("Lead time"),
        text=lambda o, row: figures.lead_time(
            float(o.comparison.snapshot.lead_low[row]), float(o.comparison.snapshot.lead_high[row])
        ),
        keys=_lead_keys,
        stand=Stand.RIGHT,
        width=80,
    ),
    Column(
        "valid",
        fixed("Valid until"),
        text=lambda o, row: figures.day(int(o.comparison.snapshot.valid_until[row])),
        keys=lambda o: _days(o.comparison.snapshot.valid_until),
        stand=Stand.RIGHT,
        width=98,
    ),
)
