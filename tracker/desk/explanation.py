"""How one price came to its figure, rung by rung from the cell, and why it is judged as it is."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from tracker.desk.comparison import Comparison, Per, Step
from tracker.desk.ladder import PER_WORDS, Rested, ladder
from tracker.desk.neighbours import own_neighbours
from tracker.desk.rates import Rate
from tracker.desk.verdict_json import verdict_object
from tracker.desk.verdicts import said
from tracker.market.reasons import Wording, reasons
from tracker.trade.days import day_text
from tracker.trade.exact import M2_PER_MSF, half_up
from tracker.trade.offer import Evidence, Note, Offer

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.verdicts import BoardVerdict


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


def explain(desk: Desk, comparison: Comparison, index: int, metric: bool | None = None) -> Explanation:
    """Explains the offer at an index of the comparison's snapshot; sums in metric units, US ones, or (None) those of
    the basis quoted."""
    from tracker.store import files, offers

    with desk.store.reading() as connection:
        stored = offers.get(connection, int(comparison.snapshot.id[index]))
        evidence = files.evidence(connection, stored.file_id, stored.position)
    rate = rate_used(comparison, index)
    offer = stored.offer
    if is_measured(comparison, index):
        offer = replace(offer, grammage_gsm=Decimal(repr(float(comparison.snapshot.grammage_gsm[index]))))
    low, high = comparison.range_of(index) or (None, None)
    rests = Rested(rate, is_measured(comparison, index), low, high, metric)
    return Explanation(
        stored.offer,
        ladder(offer, comparison.footing, rests),
        offer_reasons(comparison, index, metric),
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


def oldest_rate(comparison: Comparison) -> date | None:
    """The day of the oldest exchange rate in the prices shown; None where none was needed or is known."""
    if comparison.judged is None:
        return None
    codes = set(comparison.snapshot.currency[comparison.shown].tolist()) - {-1}
    used = {comparison.snapshot.currencies[code] for code in codes} - {comparison.footing.currency}
    return min((rate.on for code, rate in comparison.judged.rates.items() if code in used), default=None)


def offer_reasons(comparison: Comparison, index: int, metric: bool | None = None) -> tuple[str, ...]:
    """Why an offer is judged as it is, weightiest first, in sentences a buyer can repeat to the vendor; calipers in µm
    where `metric`."""
    judged = comparison.judged
    if judged is None:
        return ()
    wording = _wording(comparison, index)
    judgements = reasons(index, judged.offers, judged.bands, judged.verdicts, wording)
    beside = own_neighbours(comparison, index, metric)
    plainest = [] if beside is None else [beside]
    # The conclusion stands before all, then what needs no market to be believed.
    return (
        *_standing(comparison, index),
        *judgements[:1],
        *plainest,
        *judgements[1:],
        *_doubt(comparison, index),
    )


def _standing(comparison: Comparison, index: int) -> list[str]:
    """What keeps an offer out of the comparison, or the order out of the offer."""
    snapshot, footing = comparison.snapshot, comparison.footing
    told = []
    day, until, newer = footing.as_of, int(snapshot.valid_at_latest[index]), int(snapshot.superseded_by_day[index])
    last_day = "" if until < 0 else day_text(date.fromordinal(until))
    if int(snapshot.valid_until[index]) < 0 <= until:
        told.append(f"Its last day can be read two ways; the later is {last_day}.")
    if 0 <= until < day.toordinal():
        told.append(f"This offer lapsed on {last_day}, so it is not judged.")
    if 0 <= newer <= day.toordinal():
        newer_on = day_text(date.fromordinal(newer))
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
    ratio, places = 1.0, 0
    if per is Per.MSF:
        ratio, places = float(comparison.snapshot.grammage_gsm[index] * float(M2_PER_MSF)) / 1e6, 2
        if ratio != ratio:  # no weight is known, so a tonne can't be said as an area
            ratio, places, per = 1.0, 0, Per.TONNE
        elif comparison.footing.at_caliper_um is not None:
            ratio *= comparison.footing.at_caliper_um / float(comparison.snapshot.caliper_um[index])
    unit = PER_WORDS[per] if per is not comparison.footing.per else comparison.footing.per_words
    return Wording(
        lambda figure: f"{currency} {half_up(figure * ratio, places):,f} {unit}",
        lambda low, high: f"{currency} {half_up(low * ratio, places):,f} to {half_up(high * ratio, places):,f} {unit}",
        lambda figure: f"{currency} {half_up(figure * ratio, places):,f}",
    )


def _doubt(comparison: Comparison, index: int) -> list[str]:
    """Between which figures the price lies, where its weight is an estimate."""
    between = comparison.range_of(index)
    if between is None:
        return []
    places = 0 if comparison.footing.per is Per.TONNE else 2
    low, high = (f"{half_up(end, places):,f}" for end in between)
    figure = f"{comparison.footing.currency} {low} to {high} {comparison.footing.per_words}"
    return [
        f"The basis weight is estimated, so the price is {figure}, not one figure: ask for the weight before arguing."
    ]
