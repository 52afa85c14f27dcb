"""Lead times that a whole sentence says without a name for them: 'Plan on five weeks from the mill'."""

import pytest

from tests.intake.lead_times.notes import UNREAD, lead_below


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Plan on five weeks from the mill.", (35, 35)),
        ("Plan on 30 days.", None),
        ("Orders come off the machine two weeks after they are confirmed.", (14, 14)),
        ("Orders are ready at the counter 2 working days after we get them.", (3, 3)),
        ("The mill asks for five weeks from the day it confirms.", (35, 35)),
        ("We need drawings five weeks from the day you confirm.", None),
        ("Please allow five to six weeks from a clear order.", (35, 42)),
        ("Wir versenden ein bis zwei Wochen nach Bestellung.", (7, 14)),
        ("Wir liefern ein bis zwei Mal pro Woche.", None),
        ("La fabrication demande six semaines.", (42, 42)),
        ("La fabrication demande six semaines de préavis.", None),
        ("Le départ se fait trois jours ouvrés après la commande.", (5, 5)),
        ("Comptez deux à trois semaines à partir de votre confirmation.", (14, 21)),
        ("Comptez deux à trois jours pour un devis.", None),
        ("Necesitamos de tres a cuatro semanas para fabricar.", (21, 28)),
        ("Necesitamos los planos de tres a cuatro semanas para fabricar.", None),
        ("Fabricamos en seis semanas.", (42, 42)),
        ("Fabricamos en seis turnos.", None),
        ("Entregamos a los doce días de recibida la orden.", (12, 12)),
        ("Vi behöver tolv dagar från beställning.", (12, 12)),
        ("Vi behöver ritning tolv dagar från beställning.", None),
        ("Leveranstiden från bruk är tre till fyra veckor.", (21, 28)),
    ],
)
def test_sentences_of_sales_desks(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Mill goods take six weeks.", (42, 42)),
        ("Mill goods take six weeks, stock is here.", UNREAD),
        ("Mill goods take six weeks; other goods are in stock.", UNREAD),
    ],
)
def test_the_time_of_mill_goods_is_that_of_all_where_none_are_in_stock(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Everything listed is on our floor", (0, 0)),
        ("Alles liegt am Lager", (0, 0)),
        ("Allt på listan finns hemma på lagret", (0, 0)),
        ("Todo el material está en estantería", (0, 0)),
        ("Nicht alles liegt am Lager", None),
        ("Everything on our floor today is sold.", None),
    ],
)
def test_all_that_is_listed_is_there(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Lead time 4 weeks, five for reels.", UNREAD),
        ("The mill needs four weeks from the day it confirms, five for heavy board.", UNREAD),
        ("Lieferzeit 4 Wochen, fünf für Rollen.", UNREAD),
        ("Délai 4 semaines, cinq pour les bobines.", UNREAD),
        ("Plazo 4 semanas, cinco para bobinas.", UNREAD),
        ("Leveranstid 4 veckor, fem för rullar.", UNREAD),
        ("Lead time 4 weeks, free for reels.", (28, 28)),
        ("Abholbereit sind wir nach sechs Arbeitstagen.", (9, 9)),
    ],
)
def test_a_number_that_goes_on_for_some_is_another_time(text, lead):
    assert lead_below(text) == lead
