"""What vendors call a last day, and days that none is guessed from."""

from datetime import date

import pytest

from tests.intake.readings import offer_below
from tests.intake.sheets import lines
from tracker.intake.values.times.validity import validity


def offer(note):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [note]]).values()
    return line.offer


@pytest.mark.parametrize(
    ("note", "day"),
    [
        ("Quote closes 30 September 2026", "2026-09-30"), ("Quote ends: 2026-09-30", "2026-09-30"),
        ("Offer stands through 30 September 2026", "2026-09-30"), ("Gültig bis Jahresende 2026", "2026-12-31"),
        ("Prix tenus jusqu'à la fin du troisième trimestre 2026", "2026-09-30"),
        ("Prices valid until the end of the third quarter of 2026", "2026-09-30"),
        ("Preise gehalten bis 31.10.2026", "2026-10-31"), ("Gültig im dritten Quartal", "None"),
        ("Precios válidos hasta fin del segundo trimestre 2026", "2026-06-30"),
    ],
)  # fmt: skip
def test_last_days(note, day):
    assert str(offer(note).valid_until) == day


@pytest.mark.parametrize(
    ("said", "last"),
    [
        ("Bindefrist 15. Oktober 2026", date(2026, 10, 15)),
        ("Gültig bis Jahresende 2026", date(2026, 12, 31)),
        ("Gültig bis Ende des dritten Quartals 2026", date(2026, 9, 30)),
        ("Prix tenus jusqu'à la fin du troisième trimestre 2026", date(2026, 9, 30)),
        ("Soumission bonne jusqu'au 31 août 2026", date(2026, 8, 31)),
        ("Valable jusqu'à fin d'année 2026", date(2026, 12, 31)),
        ("Precios válidos hasta el final del tercer trimestre de 2026", date(2026, 9, 30)),
        ("Priserna gäller till slutet av tredje kvartalet 2026", date(2026, 9, 30)),
        ("Giltig till årets slut 2026", date(2026, 12, 31)),
        ("Valid to the end of the third quarter of 2026", date(2026, 9, 30)),
    ],
)
def test_last_days_now_and_then(said, last):
    assert offer_below(said, apart=True).valid_until == last


@pytest.mark.parametrize("said", ["Gültig bis Jahresende", "Valid from the third quarter of 2026"])
def test_no_last_day_is_guessed(said):
    assert offer_below(said, apart=True).valid_until is None


def test_the_day_of_a_span_keeps_its_dash():
    assert offer_below("Valid 1.7. - 30.9.2026", apart=True).valid_until == date(2026, 9, 30)


HEAD = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1 = ["GC1", 450, 300, 1100]


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Quarter 3; these prices lapse on 30 September 2026", date(2026, 9, 30)),
        ("Carriage paid. Offer closes 31/10/2026.", date(2026, 10, 31)),
        ("Prices FOB mill. Ends September 30, 2026. 5-7 weeks.", date(2026, 9, 30)),
        ("Preise frei Haus. Endet am 30.09.2026.", date(2026, 9, 30)),
        ("Delivered prices, EUR per tonne, to end of April 2027", date(2027, 4, 30)),
        ("Fritt kund, priser gäller till och med 31/12 2026, lev. 3 veckor", date(2026, 12, 31)),
        ("Priserna gäller t.o.m. 25/6 2026", date(2026, 6, 25)),
        ("Prix (offre du 12 octobre 2026, valable 30 jours)", date(2026, 11, 11)),
        ("Valid 9/30/2026 - 60 day term", None),
        ("Price list, EUR per tonne, to 1 April 2027", None), ("Our year ends June 30, 2026", None),
        ("Sheets 1/2 2000 per pallet, valid until stocks run out", None),
    ],
)  # fmt: skip
def test_words_before_a_last_day(text, day):
    assert offer_below(text).valid_until == day


def test_good_to_heads_a_column_of_last_days():
    rows = [[*HEAD, "Good to"], [*GC1, "05/28/2026"], ["GC2", 400, 250, 1050, "06/05/2026"]]
    assert [line.offer.valid_until for line in lines(rows).values()] == [date(2026, 5, 28), date(2026, 6, 5)]


@pytest.mark.parametrize(
    "text",
    ["Prices to 31 January 2027", "Recycled board prices to 31 January 2027", "Prix carton jusqu'au 31 janvier 2027",
     "Preise bis 31.01.2027", "Precios cartulina hasta el 31 de enero de 2027", "Priser t.o.m. 2027-01-31"],
)  # fmt: skip
def test_prices_to_the_end_of_a_month(text):
    said = validity(text)
    assert said is not None
    assert said.last_day() == date(2027, 1, 31)


@pytest.mark.parametrize("text", ["Prix au 31 janvier 2027", "Old prices to 31 January 2027"])
def test_other_days_of_prices_end_nothing_for_certain(text):
    said = validity(text)
    assert said is None or said.last_day() is None


@pytest.mark.parametrize(
    "text", ["Offer valid upto 31st May 2026", "Prices upto 31 May 2026", "Rates firm upto 31.05.2026"]
)
def test_up_to_in_one_word(text):
    said = validity(text)
    assert said is not None
    assert said.last_day() == date(2026, 5, 31)


def test_an_order_up_to_a_weight_is_no_last_day():
    assert validity("Orders upto 20 tonnes") is None


@pytest.mark.parametrize(
    "note",
    ["pence per kilo; offer stands till 30 November 2026", "Prices hold good til 30 November 2026",
     "Angebot steht bis 30.11.2026", "Diese Preise halten wir bis 30.11.2026",
     "L'offre tient jusqu'au 30/11/2026", "Nous tenons ces prix jusqu'au 30 novembre 2026",
     "La oferta se mantiene hasta el 30 de noviembre de 2026", "Erbjudandet står till 2026-11-30",
     "Vi håller priserna till 2026-11-30"],
)  # fmt: skip
def test_an_offer_that_stands_till_a_day(note):
    said = validity(note)
    assert said is not None
    assert said.last_day() == date(2026, 11, 30)


@pytest.mark.parametrize("note", ["Die Maschine steht bis 30.11.2026", "The mill is shut till 30 November 2026"])
def test_works_that_stand_still_till_a_day_hold_no_prices(note):
    said = validity(note)
    assert said is None or said.last_day() is None


@pytest.mark.parametrize(
    ("said", "last"),
    [
        ("Prices holding until 31 August 2026", date(2026, 8, 31)),
        ("Trade prices from 1 June 2026, holding until 31 August 2026", date(2026, 8, 31)),
        ("Holding 140 tons in stock until 31 August 2026", None),
        ("Member of Larch Holding, founded 8 May 1987", None),
        ("This quotation remains open until 31 August 2026", date(2026, 8, 31)),
        ("Our warehouse remains open until 31 August 2026", None),
        ("Das Angebot bleibt offen bis 31. August 2026", date(2026, 8, 31)),
        ("Das Büro bleibt offen bis 31. August 2026", None),
        ("Los precios se mantienen hasta el 31 de agosto de 2026", date(2026, 8, 31)),
        ("Se mantienen 140 t en almacén hasta el 31 de agosto de 2026", None),
        ("Priserna står fast till 31 augusti 2026", date(2026, 8, 31)),
        ("Lagret hålls öppet till 31 augusti 2026", None),
    ],
)
def test_what_holds_or_stays_open_is_the_offer_and_nothing_else(said, last):
    assert offer_below(said, apart=True).valid_until == last
    assert last is not None or validity(said) is None


@pytest.mark.parametrize(
    ("note", "day"),
    [
        ("Priserna står vi för till och med 31 augusti 2026.", "2026-08-31"),
        ("Zu diesen Preisen stehen wir bis zum 31.08.2026.", "2026-08-31"),
        ("We stand by these prices until 31 August 2026.", "2026-08-31"),
        ("We will honour these until 31 August 2026.", "2026-08-31"),
        ("Frakten står vi för till och med 31 augusti 2026.", "None"),
        ("We stand by these prices.", "None"),
    ],
)
def test_until_when_a_vendor_stands_by_its_prices(note, day):
    assert str(offer(note).valid_until) == day


@pytest.mark.parametrize(
    "head",
    ["price held until", "Preis gehalten bis", "prix tenu jusqu'au", "precio mantenido hasta", "priset gäller till"],
)
def test_a_column_of_days_until_which_prices_are_held(head):
    rows = [["GC1", 430, 290, 1201, "2027-03-31"], ["GD2", 430, 320, 871, "2027-02-28"]]
    found = lines([["Grade", "µm", "g/m²", "EUR/tonne", head], *rows])
    assert [str(line.offer.valid_until) for line in found.values()] == ["2027-03-31", "2027-02-28"]
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize("said", ["gült. b. 31.03.2027", "Kurzliste, gült. bis 31.03.2027", "gilt b. 31.03.2027"])
def test_last_days_behind_words_cut_short(said):
    assert str(offer(said).valid_until) == "2027-03-31"
