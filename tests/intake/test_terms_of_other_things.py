"""Last days, lead times and smallest orders of something else than the lines of a list are none of theirs."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1 = ["GC1", 450, 300, 1100]


def below(*texts):
    (line,) = lines([HEAD, GC1, *([text] for text in texts)]).values()
    return line


@pytest.mark.parametrize(
    ("head", "text", "day"),
    [
        ("Valid", "from 20 November 2026", None), ("Gültig", "ab 01.12.2026", None),
        ("Validité", "à partir du 15 décembre 2026", None), ("Validez", "desde el 15/12/2026", None),
        ("Giltig", "från 2026-12-01", None),
        ("Valid", "30 days from 20 November 2026", date(2026, 12, 20)), ("Gültig", "14 Tage ab 20.11.2026", date(2026, 12, 4)),
        ("Validité", "30 jours à compter du 20/11/2026", date(2026, 12, 20)),
        ("Validez", "30 días desde el 20/11/2026", date(2026, 12, 20)), ("Giltig", "två veckor från 2026-11-20", date(2026, 12, 4)),
        ("Valid", "20 December 2026", date(2026, 12, 20)), ("Gültig", "bis 20.12.2026", date(2026, 12, 20)),
        ("Validité", "du 20/11/2026 au 20/12/2026", date(2026, 12, 20)), ("Validez", "hasta el 20/12/2026", date(2026, 12, 20)),
        ("Giltig", "t.o.m. 2026-12-20", date(2026, 12, 20)),
    ],
)  # fmt: skip
def test_a_first_day_is_no_last_one(head, text, day):
    (in_column,) = lines([[*HEAD, head], [*GC1, text]]).values()
    (in_form,) = lines([["Grade", "GC1 300 g/m² 450 µm"], ["Price", "1100 EUR/tonne"], [head, text]]).values()
    for line in (in_column, in_form):
        assert line.offer.valid_until == day
        assert ("validity-unread" in codes(line)) == (day is None)


@pytest.mark.parametrize(
    "text",
    [
        "FSC certificate valid until 30 June 2028", "Freight rates valid until 31 December 2026",
        "Rebate program valid through 31 December 2026", "FSC-Zertifikat gültig bis 30.06.2028",
        "Gültigkeit des Zertifikats: 30.06.2028", "Frachtsätze gültig bis 31.12.2026",
        "Energiezuschlag gültig bis 31.12.2026", "Validité du certificat FSC : 30/06/2028",
        "Tarifs de transport valables jusqu'au 31/12/2026", "Certificado FSC válido hasta el 30/06/2028",
        "Recargo energético válido hasta el 31/12/2026", "FSC-certifikatet gäller t.o.m. 2028-06-30",
        "Fraktpriserna gäller t.o.m. 2026-12-31",
    ],
)  # fmt: skip
def test_a_last_day_of_something_else(text):
    assert below(text).offer.valid_until is None
    assert below("Valid until 30 September 2027", text).offer.valid_until == date(2027, 9, 30)


@pytest.mark.parametrize(
    "text",
    [
        "FSC certified. Valid until 31 December 2026", "Prices and freight valid until 31 December 2026",
        "Freight prepaid, valid until 31 December 2026", "Preise inkl. Energiezuschlag gültig bis 31.12.2026",
        "Prix franco, transport compris, valables jusqu'au 31/12/2026",
        "Precios con portes incluidos válidos hasta el 31/12/2026", "Priser inkl. frakt gäller t.o.m. 2026-12-31",
    ],
)  # fmt: skip
def test_a_last_day_of_prices_beside_other_things(text):
    assert below(text).offer.valid_until == date(2026, 12, 31)


def test_a_last_day_that_may_be_a_charge_s_alone():
    line = below("Fuel surcharge 12 EUR/t, valid until 31 December 2026")
    assert line.offer.valid_until is None
    assert "validity-unread" in codes(line)


def test_a_column_of_the_last_days_of_certificates():
    for head in ("Certificate valid until", "Zertifikat gültig bis", "Certifikat giltigt till"):
        (line,) = lines([[*HEAD, head], [*GC1, "30 June 2028"]]).values()
        assert line.offer.valid_until is None
