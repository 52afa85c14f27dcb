"""Sentences with 'delivered' or 'carriage paid' in them that are of other things than the goods of the list."""

import pytest

from tests.intake.sheets import lines


def delivered(note, title="EUR/t"):
    line = lines([[title], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1180], [note]])["D3"]
    assert line.state == "accepted"
    return line.offer.delivered


@pytest.mark.parametrize(
    "note",
    [
        "Returns must be shipped freight prepaid to our warehouse.",
        "Rücksendungen nur frei Haus an unser Lager.",
        "Les retours doivent nous parvenir franco.",
        "Las devoluciones deben enviarse a portes pagados.",
        "Returer sänds fraktfritt till vårt lager.",
        "Prices for tissue are delivered.",
        "Nos papiers graphiques sont livrés franco.",
        "Pulp is delivered to our mill by rail.",
        "Goods delivered remain our property until paid in full.",
        "La marchandise livrée reste notre propriété.",
        "Levererat gods förblir vår egendom tills full betalning skett.",
        "Pallets are wrapped in film and delivered with corner protection.",
        "Ask for our delivered prices.",
        "Please quote your delivery address; we then tell you the delivered price.",
        "The new machine will be delivered in spring 2027.",
        "Die neue Maschine wird im Frühjahr 2027 geliefert.",
        "Files must be delivered as PDF.",
        "Your last order was delivered on 4 May 2026.",
        "Votre dernière commande a été livrée le 4 mai 2026.",
        "The delivered weight is invoiced.",
        "On facture le poids livré.",
        "Se factura el peso entregado.",
        "Empty pallets are collected.",
        "Leere Paletten werden kostenlos abgeholt.",
        "Cores are returned freight collect.",
        "Die Maut ist in der Fracht des Spediteurs enthalten.",
    ],
)
def test_what_is_said_of_other_things_is_said_of_no_price(note):
    assert delivered(note) is None


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("All board is delivered.", True),
        ("They are delivered.", True),
        ("All bids are delivered to Northam, NV.", True),
        ("Tous les montants sont en euros, livré Valmont, taxes en sus.", True),
        ("We have pleasure in quoting, all delivered to your works", True),
        ("Prices are delivered; returns must be sent carriage paid.", True),
        ("Board is delivered free, returns at your cost.", True),
        ("Corrugated and solid board delivered free house.", True),
        ("Goods delivered free house remain our property until paid.", True),
        ("Sheets are delivered free to your dock with corner protection.", True),
        ("Delivered prices, ask for our sample book.", True),
        ("Leverans fritt mottagaren", True),
        ("Lieferung ab Werk", False),
        ("Carriage paid by the customer.", False),
    ],
)
def test_what_is_said_of_the_list_holds(note, told):
    assert delivered(note) is told


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("Die Preise schließen die Anlieferung an Ihre Rampe ein.", True),
        ("Die Preise schließen die Lieferung nicht ein.", False),
        ("Die Preise schließen die Verpackung ein.", None),
        ("Die Lieferung bis zu Ihrem Werk ist darin enthalten.", True),
        ("Die Lieferung bis zu Ihrem Werk ist nicht enthalten.", False),
        ("All sums are in euros per tonne and cover delivery to your warehouse.", True),
        ("Prices do not cover delivery.", False),
        ("Prices include carriage to any address on the mainland.", True),
        ("Los precios llevan incluidos los portes hasta su almacén.", True),
        ("Los precios no incluyen los portes.", False),
        ("Les prix comprennent le port.", True),
        ("Priserna gäller när varan hämtas hos oss.", False),
        ("El género se recoge en nuestro almacén.", False),
    ],
)
def test_freight_in_the_price_in_whole_sentences(note, told):
    assert delivered(note) is told
