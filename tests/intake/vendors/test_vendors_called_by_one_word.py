"""A name of one word among firms is a vendor's where it has a price and a lead time of its own, as theirs have."""

import pytest

from tests.intake.sheets import lines, merged

# Title, heads of the boards, those of each vendor, two firms.
LANGUAGES = {
    "de": ("Angebotsvergleich, EUR/t", "Sorte", "Preis", "Lieferzeit (Wo.)", "Fenwold Karton AG", "Orrick Werke"),
    "en": ("Bid comparison, EUR/t", "Grade", "Price", "Lead time (wks)", "Fenwold Board Ltd", "Orrick Mills"),
    "es": ("Comparativo, EUR/t", "Calidad", "Precio", "Plazo (sem.)", "Cartonera Fenwold", "Papelera Orrick"),
    "fr": ("Comparatif des offres, €/t", "Qualité", "Prix", "Délai (sem.)", "Cartons Fenwold", "Papeteries Orrick"),
    "sv": ("Offertjämförelse, EUR/t", "Kvalitet", "Pris", "Leveranstid (v)", "Fenwold Kartong AB", "Orrick Bruk AB"),
}  # fmt: skip


def compared(language, name, *, weeks=True, title=None):
    compares, board, price, lead, first, last = LANGUAGES[language]
    under = [price, lead] if weeks else [price]
    names = [cell for one in (first, name, last) for cell in (one, *[None] * (len(under) - 1))]
    figures = [cell for at, one in enumerate((1265, 1249, 1272)) for cell in (one, *([4 + at] if weeks else []))]
    heads = [[board, "g/m²", "µm", *names], [None, None, None, *under * 3]]
    blocks = merged((2, 3, 2, 4), (2, 5, 2, 6), (2, 7, 2, 8)) if weeks else ()
    found = lines([[title or compares], [], *heads, ["GC1", 240, 385, *figures]], merged=blocks)
    return [(line.offer.vendor, str(line.state)) for line in found.values()]


@pytest.mark.parametrize("language", LANGUAGES)
def test_one_word_between_firms_is_a_vendor(language):
    *_, first, last = LANGUAGES[language]
    assert compared(language, "Orvelune") == [
        (first, "accepted"),
        ("Orvelune", "accepted"),
        (last, "accepted"),
    ]


@pytest.mark.parametrize("language", LANGUAGES)
def test_one_word_over_a_price_alone_may_be_anything(language):
    assert (None, "question") in compared(language, "Orvelune", weeks=False)


@pytest.mark.parametrize(
    ("language", "word"),
    [("de", "Bestand"), ("de", "Plan"), ("en", "Spot"), ("en", "Budget"), ("es", "Contrato"), ("es", "Nacional"),
     ("fr", "Contrat"), ("fr", "Référence"), ("fr", "Allemagne"), ("sv", "Lager"), ("sv", "Budget")],
)  # fmt: skip
def test_a_word_of_the_trade_between_firms_is_none(language, word):
    vendors = [vendor for vendor, state in compared(language, word) if state == "accepted"]
    assert word not in vendors


TITLES = {"de": "Preise EUR/t", "en": "Prices EUR/t", "es": "Precios EUR/t", "fr": "Prix EUR/t", "sv": "Priser EUR/t"}


@pytest.mark.parametrize("language", LANGUAGES)
def test_where_nothing_says_that_bids_are_compared_it_may_be_a_town_and_is_asked(language):
    *_, first, last = LANGUAGES[language]
    found = compared(language, "Brackwell", title=TITLES[language])
    assert found == [(first, "accepted"), (None, "question"), (last, "accepted")]
