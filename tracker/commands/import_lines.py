"""What a dry run shows: each line as it was read, its cell and its price first, so that a person can compare them."""

from collections.abc import Iterator

from tracker.desk.take_in import TakenIn
from tracker.trade.exact import UM_PER_POINT
from tracker.trade.offer import Line, State
from tracker.trade.quoted import basis_sign, digits_text, money_text

_MOST_LINES = 60
"""More would scroll what is asked out of sight; --json has them all."""

_STATES = {State.ACCEPTED: "accepted", State.QUESTION: "held by a question", State.REFUSED: "refused"}


def lines_read(taken: TakenIn) -> Iterator[str]:
    """One line an offer: '  D5  $1,240 /ST  SBS  18 pt  Fenlight White', with its state where it is not accepted."""
    lines = taken.reading.lines
    several = len({line.offer.source.sheet for line in lines}) > 1
    rows = [_row(line, several) for line in lines[:_MOST_LINES]]
    widths = [max(map(len, cells)) for cells in zip(*rows, strict=True)]
    for row in rows:
        yield "  " + "  ".join(f"{text:{width}}" for text, width in zip(row, widths, strict=True)).rstrip()
    if len(lines) > _MOST_LINES:
        yield f"  and {len(lines) - _MOST_LINES:,} more; --json has every line"


def _row(line: Line, several: bool) -> tuple[str, ...]:
    offer, source = line.offer, line.offer.source
    caliper = "" if offer.caliper_um is None else f"{float(offer.caliper_um) / float(UM_PER_POINT):.4g} pt"
    cell = f"{source.sheet}!{source.cell}" if several else source.cell
    state = "" if line.state is State.ACCEPTED else _STATES[line.state]
    return cell, _price(line), offer.grade or "", caliper, offer.product, state


def _price(line: Line) -> str:
    """'$1,240 /ST'; what is not known is left away, since it is asked about below."""
    offer = line.offer
    if offer.price is None:
        return offer.source.as_written
    money = money_text(offer.price, offer.currency) if offer.currency else digits_text(offer.price)
    return f"{money} /{basis_sign(offer.basis)}" if offer.basis else money
