"""'CRB: better than SBS, from stock': a board that another is held against gets none of its terms."""

import pytest

from tests.intake.sheets import lines

_HEADS = {
    "en": ("Grade", "Weight g/m²", "Price EUR/t"),
    "de": ("Sorte", "Gewicht g/m²", "Preis EUR/t"),
    "fr": ("Sorte", "Grammage g/m²", "Prix EUR/t"),
    "es": ("Calidad", "Gramaje g/m²", "Precio EUR/t"),
    "sv": ("Kvalitet", "Ytvikt g/m²", "Pris EUR/t (1000 kg)"),
}


def _read(language, note):
    boards = (["GC1", 250, 1200], ["GD2", 300, 900], ["GZ", 280, 1300])
    return [line.offer for line in lines([list(_HEADS[language]), *boards, [], [note]]).values()]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "GD2: better than GC1, lead time 4 weeks"),
        ("en", "GD2 as good as GC1, lead time 4 weeks"),
        ("en", "GD2: a replacement for GC1, lead time 4 weeks"),
        ("en", "GD2, equivalent to GC1, lead time 4 weeks"),
        ("en", "GD2 instead of GC1: lead time 4 weeks"),
        ("en", "Unlike GC1, GD2 has a lead time of 4 weeks"),
        ("de", "GD2: besser als GC1, Lieferzeit 4 Wochen"),
        ("de", "GD2 (Ersatz für GC1) Lieferzeit 4 Wochen"),
        ("de", "GD2 statt GC1: Lieferzeit 4 Wochen"),
        ("fr", "GD2 meilleur que GC1, délai 4 semaines"),
        ("fr", "GD2 en remplacement de GC1 : délai 4 semaines"),
        ("es", "GD2 mejor que GC1, plazo de entrega 4 semanas"),
        ("es", "GD2 en sustitución de GC1: plazo de entrega 4 semanas"),
        ("sv", "GD2 bättre än GC1, leveranstid 4 veckor"),
        ("sv", "GD2 ersätter GC1: leveranstid 4 veckor"),
    ],
)
def test_the_board_that_a_note_is_about_has_its_time_alone(language, note):
    assert [offer.lead_days for offer in _read(language, note)] == [None, (28, 28), None]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "GD2, stronger than GC1, is delivered"),
        ("de", "GD2, steifer als GC1, frei Haus"),
        ("fr", "GD2, plus rigide que GC1, franco"),
        ("es", "GD2, mejor que GC1, entregado"),
        ("sv", "GD2, bättre än GC1, fritt levererat"),
    ],
)
def test_so_it_has_its_delivery(language, note):
    assert [offer.delivered for offer in _read(language, note)] == [None, True, None]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "GC1 and GD2: lead time 4 weeks, better than GZ"),
        ("de", "GC1 und GD2: Lieferzeit 4 Wochen, besser als GZ"),
        ("fr", "GC1 et GD2 : délai 4 semaines, meilleur que GZ"),
        ("es", "GC1 y GD2: plazo de entrega 4 semanas, mejor que GZ"),
        ("sv", "GC1 och GD2: leveranstid 4 veckor, bättre än GZ"),
    ],
)
def test_two_boards_told_together_both_have_it(language, note):
    assert [offer.lead_days for offer in _read(language, note)] == [(28, 28), (28, 28), None]


def test_a_difference_and_two_times_are_of_both():
    assert [offer.charges for offer in _read("en", "GC1 costs 40 EUR/t more than GD2")] == [(), (), ()]
    leads = [offer.lead_days for offer in _read("en", "GD2 6 weeks instead of GC1 4 weeks")]
    assert leads[0] != (42, 42)
    assert leads[1] != (28, 28)
