"""The columns of what was understood: one line an offer, its state first."""

from dataclasses import dataclass

import numpy as np

from tracker.trade.offer import GrammageFrom, Line, State
from tracker.trade.quoted import basis_sign, digits_text, money_text
from tracker.window.look import figures
from tracker.window.look.figures import NONE, Units
from tracker.window.note_words import is_left_out, note_in_list, note_text
from tracker.window.tables.columns import Column, Stand, fixed, text_keys

STATE_WORDS = {State.ACCEPTED: "understood", State.QUESTION: "held by a question", State.REFUSED: "can't be used"}


@dataclass(frozen=True, slots=True)
class Lines:
    """Lines of one reading and the units to show; notes `told_once` for the whole file are not told in each row.
    `asked`: the texts of questions, which stand on cards of their own."""

    lines: tuple[Line, ...]
    units: Units
    several_sheets: bool = False
    told_once: frozenset[str] = frozenset()
    asked: frozenset[str] = frozenset()


def price_words(line: Line) -> str:
    """'$1,240 /ST'; what is not known is asked for in words: '66, currency? per?'."""
    offer = line.offer
    if offer.price is None:
        return offer.source.as_written or NONE
    money = money_text(offer.price, offer.currency) if offer.currency else digits_text(offer.price)
    known = f"{money} /{basis_sign(offer.basis)}" if offer.basis else money
    unknown = [asked for asked, said in (("currency?", offer.currency), ("per?", offer.basis)) if not said]
    return ", ".join((known, " ".join(unknown))) if unknown else known


def own_notes(line: Line, told_once: frozenset[str], asked: frozenset[str] = frozenset()) -> str:
    """The notes that are not of every line, as sentences: what is read nowhere else first."""
    own = [text for text in map(note_in_list, line.notes) if text not in told_once]
    return " ".join(sorted(own, key=lambda text: text in asked))


def _state(line: Line) -> str:
    return "left out, as you decided" if is_left_out(line) else STATE_WORDS[line.state]


def _notes(lines: Lines, row: int) -> str:
    return own_notes(lines.lines[row], lines.told_once, lines.asked)


def _numbers(lines: Lines, field: str) -> np.ndarray:
    values = [getattr(line.offer, field) for line in lines.lines]
    return np.array([np.nan if value is None else float(value) for value in values])


def _cell(lines: Lines, row: int) -> str:
    """'D5', then its sheet's name where the offers stand on several: a long one is cut at its end."""
    source = lines.lines[row].offer.source
    return f"{source.cell}, {source.sheet}" if lines.several_sheets else source.cell


def _weight(lines: Lines, row: int) -> str:
    offer = lines.lines[row].offer
    if offer.grammage_gsm is None:
        return NONE
    estimated = offer.grammage_from is GrammageFrom.ESTIMATED
    return figures.weight(float(offer.grammage_gsm), lines.units, estimated=estimated)


def _order(lines: Lines, row: int) -> str:
    offer = lines.lines[row].offer
    low, high, minimum = (
        float("nan") if kg is None else float(kg) for kg in (offer.from_kg, offer.below_kg, offer.minimum_kg)
    )
    return figures.order_size(low, high, minimum, lines.units)


LINE_COLUMNS: tuple[Column, ...] = (
    Column(
        "state",
        fixed(""),
        text=lambda d, row: _state(d.lines[row]),
        keys=lambda d: np.array([list(State).index(line.state) for line in d.lines]),
        stand=Stand.MIDDLE,
        width=28,
        paint="state",
        paints=lambda d, row: d.lines[row].state,
        tip=lambda d, row: _state(d.lines[row]),
    ),
    Column(
        "cell",
        fixed("Cell"),
        text=_cell,
        keys=lambda d: np.arange(len(d.lines)),
        width=46,
        tip=lambda d, row: _cell(d, row) if d.several_sheets else "",
    ),
    Column(
        "grade",
        fixed("Grade"),
        text=lambda d, row: d.lines[row].offer.grade or NONE,
        keys=lambda d: text_keys([line.offer.grade or "" for line in d.lines]),
        width=72,
        paint="grade",
        paints=lambda d, row: d.lines[row].offer.grade or NONE,
    ),
    Column(
        "board",
        fixed("Board"),
        text=lambda d, row: d.lines[row].offer.product or NONE,
        keys=lambda d: text_keys([line.offer.product for line in d.lines]),
        width=76,
        share=4,
        wraps=True,
        tip=lambda d, row: d.lines[row].offer.product,
    ),
    Column(
        "caliper",
        fixed("Caliper"),
        text=lambda d, row: figures.caliper(d.lines[row].offer.caliper_um, d.units),
        keys=lambda d: _numbers(d, "caliper_um"),
        stand=Stand.RIGHT,
        width=57,
    ),
    Column(
        "weight",
        lambda d: figures.weight_unit(d.units) if d else "Weight",
        text=_weight,
        keys=lambda d: _numbers(d, "grammage_gsm"),
        stand=Stand.RIGHT,
        width=57,
    ),
    Column(
        "price",
        fixed("Price"),
        text=lambda d, row: price_words(d.lines[row]),
        keys=lambda d: _numbers(d, "price"),
        stand=Stand.RIGHT,
        width=120,
        strong=True,
    ),
    Column(
        "order",
        fixed("Order"),
        text=_order,
        keys=lambda d: np.nan_to_num(_numbers(d, "from_kg"), nan=0.0),
        stand=Stand.RIGHT,
        width=92,
        share=1,
    ),
    Column(
        "notes",
        fixed("To know"),
        text=_notes,
        keys=lambda d: text_keys([_notes(d, row) for row in range(len(d.lines))]),
        width=112,
        share=9,
        wraps=True,
        tip=lambda d, row: "\n".join(note_text(note, d.lines[row].offer, d.units) for note in d.lines[row].notes),
    ),
)
