"""How one price came to its figure, rung by rung from the cell, and why it is judged as it is."""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from tracker.desk.comparison import Comparison, Per, Step
from tracker.desk.quotes import kilograms_per_msf
from tracker.desk.rates import Rate
from tracker.desk.verdict_json import verdict_object
from tracker.desk.verdicts import said
from tracker.market.reasons import Wording, reasons
from tracker.trade.basis import BY_WEIGHT, Basis, BoardMeasure, area_of, mass_of, per_msf, per_tonne
from tracker.trade.exact import KG_PER_TONNE, M2_PER_MSF, plain_text
from tracker.trade.footing import delivered_cost_known
from tracker.trade.offer import Charge, Evidence, GrammageFrom, Note, Offer

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.verdicts import BoardVerdict

_PER_WORDS = {Per.TONNE: "per tonne", Per.MSF: "per 1,000 ft²"}


@dataclass(frozen=True, slots=True)
class Explanation:
    """One offer explained: the ladder to its figure, the sentences of its verdict, what the sheet itself said, and what
    people decided about the board, the latest first."""

    offer: Offer
    steps: tuple[Step, ...]
    reasons: tuple[str, ...]
    notes: tuple[Note, ...]
    evidence: tuple[Evidence, ...]
    rate: Rate | None
    verdict: dict[str, Any]
    board_verdicts: tuple[BoardVerdict, ...] = ()


def explain(desk: Desk, comparison: Comparison, index: int) -> Explanation:
    """Explains the offer at an index of the comparison's snapshot."""
    from tracker.store import files, offers

    with desk.store.reading() as connection:
        stored = offers.get(connection, int(comparison.snapshot.id[index]))
        evidence = files.evidence(connection, stored.file_id, stored.position)
    rate = rate_used(comparison, index)
    offer = stored.offer
    if is_measured(comparison, index):
        offer = replace(offer, grammage_gsm=Decimal(repr(float(comparison.snapshot.grammage_gsm[index]))))
    return Explanation(
        stored.offer,
        _ladder(offer, comparison, rate, is_measured(comparison, index)),
        offer_reasons(comparison, index),
        stored.notes,
        evidence,
        rate,
        verdict_object(comparison, index),
        comparison.board_verdicts.get(index, ()),
    )


def is_measured(comparison: Comparison, index: int) -> bool:
    """The figures go by a weight that was measured on a sample, not by the claimed one."""
    return comparison.footing.measured_weight and bool(comparison.snapshot.measured[index])


def board_verdict(comparison: Comparison, index: int) -> str | None:
    """The latest decision on an offer's board, with who and when, in words; None where nobody decided."""
    decided = comparison.board_verdicts.get(index)
    return said(decided[0]) if decided else None


def rate_used(comparison: Comparison, index: int) -> Rate | None:
    """The exchange rate in an offer's figures; None where none was needed or none is known."""
    currency = comparison.snapshot.currencies[comparison.snapshot.currency[index]]
    if comparison.judged is None or currency == comparison.footing.currency:
        return None
    return comparison.judged.rates.get(currency)


def offer_reasons(comparison: Comparison, index: int) -> tuple[str, ...]:
    """Why an offer is judged as it is, weightiest first, in sentences a buyer can repeat to the vendor."""
    judged = comparison.judged
    if judged is None:
        return ()
    wording = _wording(comparison, index)
    judgements = reasons(index, judged.offers, judged.bands, judged.verdicts, wording)
    return (*_standing(comparison, index), *judgements)


def _standing(comparison: Comparison, index: int) -> list[str]:
    """What keeps an offer out of the comparison, or the order out of the offer."""
    snapshot, footing = comparison.snapshot, comparison.footing
    told = []
    day, until, newer = footing.as_of, int(snapshot.valid_until[index]), int(snapshot.superseded_by_day[index])
    if 0 <= until < day.toordinal():
        told.append(f"This offer lapsed on {type(day).fromordinal(until).isoformat()}, so it is not judged.")
    if 0 <= newer <= day.toordinal():
        newer_on = type(day).fromordinal(newer).isoformat()
        told.append(f"A newer offer of the same board came on {newer_on}, so this one is not judged.")
    if is_measured(comparison, index):
        weight = float(snapshot.grammage_gsm[index])
        told.append(f"Figured at the {weight:.1f} g/m² that samples of this board measured, not at the claimed weight.")
    minimum = float(snapshot.minimum_kg[index])
    if footing.order_kg is not None and footing.order_kg < minimum:
        told.append(f"The order of {footing.order_kg:,.0f} kg is below this vendor's minimum of {minimum:,.0f} kg.")
    return told


def _wording(comparison: Comparison, index: int) -> Wording:
    currency, per = comparison.footing.currency, comparison.footing.per
    if per is Per.TONNE:
        return Wording(lambda figure: f"{currency} {figure:,.0f} {_PER_WORDS[per]}")
    ratio = float(kilograms_per_msf(comparison.snapshot)[index]) / 1000
    if ratio != ratio:  # no weight is known, so a tonne can't be said as an area
        return Wording(lambda figure: f"{currency} {figure:,.0f} {_PER_WORDS[Per.TONNE]}")
    return Wording(lambda figure: f"{currency} {figure * ratio:,.2f} {_PER_WORDS[per]}")


def _ladder(offer: Offer, comparison: Comparison, rate: Rate | None, measured: bool) -> tuple[Step, ...]:
    footing = comparison.footing
    source = offer.source
    where = f"sheet “{source.sheet}”, cell {source.cell}" if source.sheet else f"cell {source.cell}"
    assert offer.price is not None
    assert offer.basis is not None
    quoted = f"{offer.currency} {plain_text(offer.price)} per {_BASIS_WORDS[offer.basis]}"
    steps = [
        Step("as written", source.as_written or plain_text(offer.price), source.cell),
        Step(f"read in {where}", quoted),
    ]
    figure, step = _on_footing(offer, footing.per, measured)
    steps.append(step)
    if footing.delivered and delivered_cost_known(offer) and figure is not None:
        price = figure
        for charge in offer.charges:
            added, text = _charge(charge, offer, price, footing.per)
            figure = None if figure is None or added is None else figure + added
            steps.append(Step(charge.label or "charge", text))
        if offer.charges and figure is not None:
            steps.append(Step(f"delivered, {_PER_WORDS[footing.per]}", f"{offer.currency} {float(figure):,.2f}"))
    if figure is not None and offer.currency != footing.currency:
        steps.append(_exchange(figure, offer, comparison, rate))
    final = steps.pop()
    steps.append(Step(final.label, final.text, final.cell, final.estimate, last=True))
    return tuple(steps)


_BASIS_WORDS = {
    Basis.SHORT_TON: "short ton",
    Basis.TONNE: "tonne",
    Basis.CWT: "cwt (100 lb)",
    Basis.LB: "lb",
    Basis.KG: "kg",
    Basis.MSF: "1,000 ft²",
    Basis.M2: "m²",
    Basis.THOUSAND_M2: "1,000 m²",
    Basis.THOUSAND_SHEETS: "1,000 sheets",
    Basis.SHEET: "sheet",
}


def _on_footing(offer: Offer, per: Per, measured: bool) -> tuple[Fraction | None, Step]:
    """The price alone on the chosen basis, with its sum written out."""
    assert offer.price is not None
    assert offer.basis is not None
    board, price = offer.measure, plain_text(offer.price)
    figure = (per_tonne if per is Per.TONNE else per_msf)(offer.price, offer.basis, board)
    estimated = offer.grammage_from is GrammageFrom.ESTIMATED and not measured
    estimate = estimated and (offer.basis in BY_WEIGHT) != (per is Per.TONNE)
    if figure is None:
        return None, Step(_PER_WORDS[per], f"not known: {_lacking(board)} is not quoted")
    size, whole, unit = (
        (mass_of(offer.basis, board), Fraction(KG_PER_TONNE), "kg")
        if per is Per.TONNE
        else (area_of(offer.basis, board), M2_PER_MSF, "m²")
    )
    assert size is not None
    text = f"{price} × {_figure(whole)} ÷ {_figure(size)} {unit}{_through(offer, per, measured)} = {float(figure):,.2f}"
    return figure, Step(f"{_PER_WORDS[per]} in {offer.currency}", text, estimate=estimate)


def _through(offer: Offer, per: Per, measured: bool) -> str:
    """The basis weight that turns a weight into an area or back, where the sum goes through one."""
    if (offer.basis in BY_WEIGHT) == (per is Per.TONNE) or offer.grammage_gsm is None:
        return ""
    if measured:
        return f" (at {float(offer.grammage_gsm):.1f} g/m² measured)"
    marked = " estimated" if offer.grammage_from is GrammageFrom.ESTIMATED else ""
    return f" (at {_figure(Fraction(offer.grammage_gsm))} g/m²{marked})"


def _lacking(board: BoardMeasure) -> str:
    return "the basis weight" if not board.grammage_gsm else "the sheet size"


def _charge(charge: Charge, offer: Offer, price: Fraction, per: Per) -> tuple[Fraction | None, str]:
    if charge.basis is None:
        added = price * Fraction(charge.price) / 100
        return added, f"{plain_text(charge.price)} % of the price = {float(added):,.2f}"
    converted = (per_tonne if per is Per.TONNE else per_msf)(charge.price, charge.basis, offer.measure)
    quoted = f"{plain_text(charge.price)} per {_BASIS_WORDS[charge.basis]}"
    return converted, f"{quoted} = {float(converted):,.2f}" if converted is not None else f"{quoted}: not convertible"


def _exchange(figure: Fraction, offer: Offer, comparison: Comparison, rate: Rate | None) -> Step:
    into = comparison.footing.currency
    if rate is None:
        return Step(f"in {into}", f"not known: there is no rate of {offer.currency} on {comparison.footing.as_of}")
    amount = float(figure) * float(rate.factor)
    text = f"× {float(rate.factor):.6g} = {amount:,.2f} ({rate.said(comparison.footing.as_of)})"
    return Step(f"{_PER_WORDS[comparison.footing.per]} in {into}", text)


def _figure(value: Fraction) -> str:
    return f"{float(value):,.9g}"
