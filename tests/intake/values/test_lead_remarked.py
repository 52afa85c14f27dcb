"""Lead times in what a row says of itself: read where it is sure, else told as unread."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_unread import LeadUnread


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("restocking, 15 working days", (21, 21)), ("Nachschub, 15 Arbeitstage", (21, 21)),
        ("entrega 45 días", (45, 45)), ("lev.tid 5-6 veckor", (35, 42)), ("endast 6 arbetsdagar", (9, 9)),
        ("ships 3 weeks after order", (21, 21)),
        ("fully booked; price holds for now, allow 7 weeks", (49, 49)), ("(this one runs 6 weeks)", (42, 42)),
        ("dauert 6 Wochen", (42, 42)), ("demande 6 semaines", (42, 42)), ("tarda 6 semanas", (42, 42)),
        ("tar 6 veckor", (42, 42)), ("3 weeks, min 2 t", (21, 21)), ("ab Lager", (0, 0)),
    ],
)  # fmt: skip
def test_a_time_that_is_sure(text, days):
    said = lead_remarked(text)
    assert isinstance(said, LeadTime)
    assert said.days == days


@pytest.mark.parametrize(
    "text",
    [
        "30 days", "made every 8 weeks", "about a month, 2 months at most", "erst wieder in KW 34", "rupture, 2 mois",
        "from stock, sheets 3 weeks", "hasta 6 semanas", "nästa körning om 5 veckor",
    ],
)  # fmt: skip
def test_a_time_that_may_be_one(text):
    assert isinstance(lead_remarked(text), LeadUnread)


@pytest.mark.parametrize(
    "text",
    [
        "payment terms 30 days", "30 Tage netto", "valid 2 weeks", "gültig 14 Tage", "paiement à 30 jours",
        "pago a 30 días", "betalning 30 dagar", "reel 38 w", "FSC Mix", "20 pt", "SBS C1S 16 pt, 44 in rolls",
    ],
)  # fmt: skip
def test_other_times_and_figures(text):
    assert lead_remarked(text) is None


def test_what_a_remark_leaves_open_is_not_the_list_s_own():
    rows = [["Lead time 3 weeks, EUR/t"], ["Board", "g/m²", "µm", "Price", "Remarks"]]
    rows += [["GC1", 250, 405, 1290, "made every 8 weeks"], ["GC2", 250, 405, 1240, "FSC Mix"]]
    rows += [["GD2", 350, 465, 880, "only 6 working days"]]
    found = list(lines(rows).values())
    assert [line.offer.lead_days for line in found] == [None, (21, 21), (9, 9)]
    assert "lead-time-unread" in codes(found[0])


@pytest.mark.parametrize("head", ["Bem.", "Rmks", "Obs.", "Anm."])
def test_heads_of_remarks_are_cut_short(head):
    rows = [["Board", "g/m²", "µm", "EUR/t", head], ["GC1", 250, 405, 1290, "6 Wochen"], ["GC2", 250, 405, 1240]]
    found = lines([["Lieferzeit 3 Wochen"], *rows]).values()
    assert [line.offer.lead_days for line in found] == [(42, 42), (21, 21)]
