"""Sheets in which a buyer sets vendors' prices beside his own figures, or hands out a form with a part for each."""

import pytest

from tests.intake.sheets import codes, lines, merged

BOARD = ["Board", "µm", "g/m²"]
ROWS = [["GC1", 400, 250], ["GC2", 450, 280]]


def compared(*own, vendors=("Oxbarrow Mills", "Tarnwick Board", "Fellmire Paper"), unit="EUR/t"):
    """Vendors' prices in the first columns, and the buyer's own figures behind them."""
    heads = [[*BOARD, *vendors, *own], [None, None, None, *[unit] * (len(vendors) + len(own))]]
    return [*heads, *([*row, *(1010 - place for place in range(len(vendors) + len(own)))] for row in ROWS)]


@pytest.mark.parametrize(
    "own",
    [
        ["Paid Q3-26", "Lowest"], ["Paid", "Best bid"], ["We pay now", "Average"], ["Current price", "Target"],
        ["Bezahlt Q3/26", "Günstigster"], ["Ist-Preis", "Mittelwert"], ["Payé T3 26", "Moins-disant"],
        ["Prix payé", "Meilleure offre"], ["Pagado 3T 26", "Más bajo"], ["Precio actual", "Mejor oferta"],
        ["Betalt Q3 26", "Lägst"], ["Vi betalar idag", "Bästa anbud"],
    ],
)  # fmt: skip
def test_what_the_buyer_pays_and_works_out_is_no_offer(own):
    found = lines(compared(*own))
    assert sorted(found) == ["D3", "D4", "E3", "E4", "F3", "F4"]
    vendors = {line.offer.vendor for line in found.values()}
    assert vendors == {"Oxbarrow Mills", "Tarnwick Board", "Fellmire Paper"}


def test_a_price_of_nobody_beside_bids_is_asked_about():
    found = lines(compared("Oct 2026"))
    assert {str(found[cell].state) for cell in ("G3", "G4")} == {"question"}
    assert {str(found[cell].state) for cell in ("D3", "E3", "F3")} == {"accepted"}


def test_names_with_their_unit_in_one_head_are_vendors_too():
    heads = [*BOARD, "Oxbarrow Mills EUR/t", "Tarnwick Board EUR/t", "Paid EUR/t"]
    rows = [heads, *([*row, 1010, 1020, 990] for row in ROWS)]
    assert {line.offer.vendor for line in lines(rows).values()} == {"Oxbarrow Mills", "Tarnwick Board"}


def test_one_vendors_own_columns_are_his_offers():
    rows = [[*BOARD, "Freight paid EUR/t", "Collected EUR/t"], *([*row, 1040, 1010] for row in ROWS)]
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert len(found) == 4


def form(asked, answered, heads):
    """A form whose first five columns are the buyer's and whose other two are the vendor's."""
    rows = [[1, "GC1", 235, 370, 180, 1109, 38], [2, "GC2", 255, 420, 95, 1052, 38]]
    first = [asked, None, None, None, None, answered, None]
    return [first, heads, *rows], merged((0, 0, 0, 4), (0, 5, 0, 6))


@pytest.mark.parametrize(
    ("asked", "answered", "heads"),
    [
        ("Demande acheteur", "Réponse fournisseur",
         ["Poste", "Matière", "g/m²", "µm", "Besoin annuel (t)", "Prix €/t", "Transport €/t"]),
        ("Buyer's specification", "Supplier's offer",
         ["Item", "Board", "gsm", "micron", "Annual t", "Price EUR/t", "Freight EUR/t"]),
        ("Buyer", "Supplier", ["Item", "Board", "gsm", "µm", "Annual t", "EUR/t", "Freight EUR/t"]),
        ("Anfrage Einkäufer", "Angebot", ["Pos", "Sorte", "g/m²", "µm", "Jahresbedarf t", "EUR/t", "Fracht EUR/t"]),
        ("Bedarf Kunde", "Angebot", ["Pos", "Sorte", "g/m²", "µm", "Jahresbedarf t", "EUR/t", "Fracht EUR/t"]),
        ("Solicitud comprador", "Respuesta",
         ["Pos.", "Material", "g/m²", "µm", "Necesidad anual (t)", "Precio €/t", "Porte €/t"]),
        ("Inköpare", "Leverantör", ["Pos", "Material", "g/m²", "µm", "Årsbehov (t)", "Pris EUR/t", "Frakt EUR/t"]),
    ],
)  # fmt: skip
def test_a_title_over_the_buyers_columns_says_whose_they_are_and_not_what_they_hold(asked, answered, heads):
    rows, blocks = form(asked, answered, heads)
    found = lines(rows, merged=blocks)
    assert {cell: str(line.state) for cell, line in found.items()} == {"F3": "accepted", "F4": "accepted"}
    offer = found["F3"].offer
    assert (offer.caliper_um, offer.grammage_gsm, offer.vendor) == (370, 235, None)
    assert [charge.price for charge in offer.charges] == [38]


def test_a_property_over_two_units_is_what_both_hold():
    rows = [
        ["Board", "gsm", "Stiffness", None, "EUR/t"], [None, None, "mN", "µm", None],
        ["GC1", 235, 370, 410, 1109], ["GC2", 255, 420, 430, 1050],
    ]  # fmt: skip
    found = lines(rows, merged=merged((0, 2, 0, 3)))
    assert [line.offer.caliper_um for line in found.values()] == [None, None]
    assert not any("caliper-unknown" in codes(line) for line in found.values())


@pytest.mark.parametrize("head", ["Paid Q3-26", "Bezahlt Q3/26", "Prix payé", "Último pagado", "Senast betalt"])
def test_what_was_paid_is_no_offer_beside_any_price(head):
    rows = [[*BOARD, "Price EUR/t", f"{head} EUR/t"], *([*row, 1040, 1010] for row in ROWS)]
    assert sorted(lines(rows)) == ["D2", "D3"]


def test_a_price_called_current_is_one_vendors_offer():
    rows = [[*BOARD, "Current price EUR/t"], *([*row, 1040] for row in ROWS)]
    assert {str(line.state) for line in lines(rows).values()} == {"accepted"}


def under(group):
    heads = [[None, None, None, group, None], [*BOARD, "Tarnwick Board", "Nordhaven Karton"]]
    return lines([["EUR per tonne delivered"], [], *heads, *([*row, 1195 - row[2], 1210 - row[2]] for row in ROWS)])


def test_under_a_word_for_suppliers_each_name_heads_its_prices():
    found = under("Supplier")
    assert {line.offer.vendor for line in found.values()} == {"Tarnwick Board", "Nordhaven Karton"}
    assert {str(line.state) for line in found.values()} == {"accepted"}


COMPARED = [["Comparison"], ["Prices per tonne in EUR, delivered"]]


@pytest.mark.parametrize(
    ("firms", "worked_out"),
    [
        (("Ferrowick Board", "Tarn Board"), ("Average", "Budget")),
        (("Ferrowick Board", "Tarn Board"), ("Lowest", "Highest")),
        (("Nordwald Karton", "Tarn Karton"), ("Mittelwert", "Budget")),
        (("Cartonnerie Lannoy", "Cartons Tarn"), ("Moyenne", "Budget")),
        (("Cartonera Belmonte", "Papelera Tarn"), ("Promedio", "Presupuesto")),
        (("Granvassa Kartong", "Tarn Kartong"), ("Medel", "Budget")),
    ],
)
def test_what_is_worked_out_beside_names_without_a_legal_form_is_no_offer(firms, worked_out):
    rows = [*COMPARED, ["Grade", "g/m²", "µm", *firms, *worked_out]]
    found = lines([*rows, ["GC1", 250, 400, 1228, 1240, 1234, 1250], ["GD2", 300, 385, 1010, 1030, 1020, 1050]])
    assert sorted((cell, line.offer.vendor) for cell, line in found.items()) == [
        ("D4", firms[0]), ("D5", firms[0]), ("E4", firms[1]), ("E5", firms[1]),
    ]  # fmt: skip


@pytest.mark.parametrize(
    "heads", [("Premium Board", "White Board", "Budget"), ("Arctic Board", "Tarn Board", "Budget")]
)
def test_a_budget_beside_qualities_of_board_is_one_of_them(heads):
    rows = [*COMPARED[1:], ["Grade", "g/m²", "µm", *heads], ["GC1", 250, 400, 1228, 1240, 1180]]
    found = lines([*rows, ["GD2", 300, 385, 1010, 1030, 980]])
    assert {cell for cell in found if cell.endswith("3")} == {"D3", "E3", "F3"}
    assert {line.offer.vendor for line in found.values()} == {None}


LIST = ["Grade", "Caliper (pt)"]


@pytest.mark.parametrize(
    "heads",
    [
        ("Dayton Mill", "Akron Mill", "Average"), ("Ferro White Board", "Ferro Print Board", "Average"),
        ("Bright White", "Natural White", "Mean"), ("Rolls Dayton Mill", "Sheets Akron Mill", "Average"),
    ],
)  # fmt: skip
def test_under_a_letterhead_a_mean_makes_no_vendors_of_the_heads_beside_it(heads):
    rows = [[*LIST, *heads], ["SBS", 18, 1228, 1240, 1234], ["CUK", 21, 1010, 1030, 1020]]
    found = lines([["Ferrowick Board Inc"], ["Price list USD/ST"], *rows])
    assert sorted(found) == ["C4", "C5", "D4", "D5"]
    assert {line.offer.vendor for line in found.values()} == {"Ferrowick Board Inc"}
    bids = lines([["Ferrowick Packaging Inc"], ["Comparison of bids, USD/ST"], *rows])
    assert sorted(bids) == ["C4", "C5", "D4", "D5"]


def test_a_column_of_means_that_are_none_is_not_set_aside():
    rows = [[*LIST, "Bright White", "Natural White", "Average"], ["SBS", 18, 1228, 1240, 1260]]
    assert "E4" in lines([["Ferrowick Board Inc"], ["Price list USD/ST"], *rows])


def test_the_mean_of_months_is_asked_about():
    rows = [[*LIST, "April", "May", "Average"], ["SBS", 18, 1300, 1240, 1270], ["CUK", 21, 1110, 1030, 1070]]
    found = lines([["Ferrowick Board Inc"], ["Price list USD/ST"], *rows])
    assert {str(line.state) for line in found.values()} == {"question"}


def test_a_mean_of_prices_that_repeat_is_one_too():
    rows = [
        [*LIST, "White", "Cream", "Grey", "Average"],
        ["SBS", 18, 1228, 1240, 1210, 1226],
        ["SBS", 20, 1228, 1260, 1220, 1236],
    ]
    found = lines([["Ferrowick Board Inc"], ["Price list USD/ST"], *rows])
    assert {cell[0] for cell in found} == {"C", "D", "E"}


def beside_a_mean(letterhead, title, names):
    rows = [[*LIST, *names, "Average"], ["SBS", 18, 1228, 1240, 1234], ["CUK", 21, 1010, 1030, 1020]]
    return lines([[letterhead], [title], *rows])


@pytest.mark.parametrize("letterhead", ["Acme Packaging Inc", "Ferrowick Board Inc"])
def test_names_that_share_nothing_with_the_letterhead_are_not_silently_its_own(letterhead):
    found = beside_a_mean(letterhead, "Prices USD/ST", ("Tarn Board", "Lowton Board"))
    assert sorted(found) == ["C4", "C5", "D4", "D5"]
    assert {str(line.state) for line in found.values()} == {"question"}


@pytest.mark.parametrize(
    "names",
    [("Tarn Mill", "Lowton Mill"), ("Acme White Board", "Acme Print Board"), ("Tarn White Board", "Tarn Board")],
)
def test_its_mills_and_brands_are(names):
    found = beside_a_mean("Acme Paperboard Inc", "Prices USD/ST", names)
    assert {(str(line.state), line.offer.vendor) for line in found.values()} == {("accepted", "Acme Paperboard Inc")}


@pytest.mark.parametrize(
    ("title", "names"),
    [
        ("Board buying 2026, USD/ST", ("Tarn Board", "Lowton Board")),
        ("Kartoneinkauf 2026, USD/ST", ("Tarn Karton", "Lowton Karton")),
        ("Prices USD/ST", ("Tarn Board Inc", "Lowton Paper Inc")),
    ],
)
def test_firms_under_the_name_of_who_buys_are_the_vendors(title, names):
    found = beside_a_mean("Acme Packaging Inc", title, names)
    assert {(str(line.state), line.offer.vendor) for line in found.values()} == {("accepted", name) for name in names}
