"""Whether a text says of the prices beside it that they are no longer in force, in five languages."""

import pytest

from tracker.intake.values.changes.list_age import Age, age_of_list, age_of_name, age_of_row

_SUPERSEDED = [
    "Vorgängerliste 2025", "Vorgängerliste 2025, ersetzt", "Vorjahresliste",
    "SUPERSEDED - list of 2025", "Price list 2025 (old)", "Price list 2025, superseded", "This list is superseded",
    "These prices are no longer valid", "Superseded by the list of 1 May 2026 - EUR per tonne DAP", "Old prices",
    "B. Previous list (superseded, for reference only)", "£/t delivered (superseded)",
    "Price list 26-1, effective 1 April 2026 - SUPERSEDED, for reference only",
    "Preisliste 2025 (alt)", "Diese Preisliste ist ungültig", "Ersetzt durch Preisliste 2026-2", "Liste 4, ersetzt",
    "Tarif 2025 (périmé)", "Ce tarif est annulé", "ANCIEN TARIF n° 11 – annulé et remplacé par le tarif n° 12",
    "Tarifa 2025 - antigua", "Esta tarifa queda anulada", "Tarifa enero 2026 – ANULADA, sólo a título informativo",
    "Prislista 2025 (gammal)", "Denna prislista gäller inte längre", "Tidigare priser, ersatta 2026-07-01",
]  # fmt: skip
_IN_FORCE = [
    "Changes from the previous price list are shown in bold", "Prices unchanged from previous list",
    "Prices are 3 % above the previous price list", "Price list 7 (previous list: 1 May 2026)",
    "Prices hold until superseded", "Prices valid until further notice or until withdrawn", "Void where prohibited.",
    "Price list valid until replaced by a new list", "Expired quotes are not honoured",
    "Orders cancelled after release are charged at list price", "All previous prices are void.",
    "New price list - replaces old price list", "New grades (prices unchanged from previous list)",
    "Änderungen gegenüber der alten Preisliste sind fett", "Preise gelten bis zum Widerruf", "Ersetzt Liste 4",
    "Preiserhöhung gegenüber alte Preisliste: 3 %", "Preise gültig bis ersetzt durch neue Liste",
    "Changements par rapport au tarif précédent en gras", "Les commandes annulées sont facturées",
    "Prix valables jusqu'à ce que remplacés par un nouveau tarif",
    "Cambios respecto a la lista anterior en negrita", "Los pedidos anulados son facturados",
    "Ändringar mot föregående prislista i fetstil", "Priser gäller tills de ersätts av ny lista",
]  # fmt: skip
_DOUBTFUL = [
    "Price list 2025 is superseded", "Previous price list withdrawn 1 November", "Obsolete grades",
    "Prices for reference only", "Bisherige Preise +3 %", "Old prices in brackets", "Basis: old price list of 2025",
    "Changes vs. list 2025 (superseded) in bold", "Gamla priser inom parentes",
]  # fmt: skip


@pytest.mark.parametrize("text", _SUPERSEDED)
def test_a_mark_that_is_said_of_the_list_itself(text):
    assert age_of_list(text) is Age.SUPERSEDED


@pytest.mark.parametrize("text", _IN_FORCE)
def test_words_about_other_lists_orders_and_days_to_come_are_no_mark(text):
    assert age_of_list(text) is Age.IN_FORCE


@pytest.mark.parametrize("text", _DOUBTFUL)
def test_words_that_may_be_meant_either_way_are_a_matter_for_a_person(text):
    assert age_of_list(text) is Age.DOUBTFUL


def test_a_mark_in_the_name_of_a_sheet_or_column_is_about_it_whatever_else_the_name_says():
    for name in ("Rev 13 - SUPERSEDED", "OLD - do not use", "Q3 2026 (abgelaufen)", "Kraft (annulé)", "Upphävd"):
        assert age_of_name(name) is Age.SUPERSEDED
    assert age_of_list("Kraft grades (withdrawn)") is Age.DOUBTFUL
    for name in ("Prices 2026", "Price valid until withdrawn", "", "-"):
        assert age_of_name(name) is Age.IN_FORCE


@pytest.mark.parametrize(
    ("remark", "age"),
    [
        ("superseded 1 Oct 2026", Age.SUPERSEDED), ("(obsolete)", Age.SUPERSEDED), ("annulé", Age.SUPERSEDED),
        ("ersetzt durch GC2", Age.SUPERSEDED), ("anulada", Age.SUPERSEDED), ("utgått", Age.SUPERSEDED),
        ("withdrawn 1 Dec", Age.DOUBTFUL), ("price no longer valid", Age.DOUBTFUL), ("Preis ungültig", Age.DOUBTFUL),
        ("status: obsolete", Age.DOUBTFUL), ("obsolete grade", Age.DOUBTFUL),
        ("Old price 1,120", Age.IN_FORCE), ("alter Preis 1.120", Age.IN_FORCE), ("ancien prix 1 120", Age.IN_FORCE),
        ("precios anteriores 1.120", Age.IN_FORCE), ("gamla priser 1 120", Age.IN_FORCE),
        ("cancelled orders charged 50 %", Age.IN_FORCE), ("expired FSC certificate", Age.IN_FORCE),
        ("Zertifikat abgelaufen", Age.IN_FORCE), ("certificat annulé", Age.IN_FORCE), ("void-free", Age.IN_FORCE),
        ("replaces obsolete grade", Age.IN_FORCE), ("do not use for food", Age.IN_FORCE),
    ],
)  # fmt: skip
def test_a_remark_marks_its_row_only_where_it_speaks_of_the_row(remark, age):
    assert age_of_row(remark) is age
