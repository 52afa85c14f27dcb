"""The last day of prices, and that of seals, leases and fairs that a letter speaks of as well."""

import pytest

from tests.intake.sheets import lines

LAST = "2027-03-31"


def until(note):
    (line,) = lines([["Grade", "pt", "lb/MSF", "USD/ST"], ["SBS C1S", 16, 67, 1230], [], [note]]).values()
    return line.offer.valid_until and line.offer.valid_until.isoformat()


@pytest.mark.parametrize(
    "note",
    ["Our forest seal is valid until 30 June 2029.", "The lease of our depot expires on 30 June 2029.",
     "Our membership, which we renewed in May, is valid until 30 June 2029.",
     "Our carrier's rates are valid until 30 June 2029.", "The ISO 14001 approval expires 30 June 2029.",
     "Unser Waldsiegel gilt bis 30. Juni 2029.", "Bis 30. Juni 2029 gilt unser Waldsiegel.",
     "Gültigkeit unseres Waldsiegels: 30.06.2029", "Notre label forêt est valable jusqu'au 30 juin 2029.",
     "Le bail de notre dépôt expire le 30 juin 2029.", "Nuestro sello forestal vence el 30 de junio de 2029.",
     "Vårt skogsmärke gäller till och med den 30 juni 2029.", "Medlemskapet gäller t.o.m. 30 juni 2029."],
)  # fmt: skip
def test_what_has_a_last_day_of_its_own_says_none_of_prices(note):
    assert until(note) is None


@pytest.mark.parametrize(
    "note",
    ["Our winter tariff is valid until 31 March 2027.", "They are good until 31 March 2027.",
     "The amounts, which we checked twice, are valid until 31 March 2027.",
     "Please note that all of this is valid until 31 March 2027.", "Contract period until 31 March 2027.",
     "Unsere Winterliste gilt bis 31. März 2027.", "Bis 31. März 2027 gelten unsere Preise.",
     "Gültigkeit der Preise: 31.03.2027", "Le barème est valable jusqu'au 31 mars 2027.",
     "Las condiciones son válidas hasta el 31 de marzo de 2027.", "Beloppen gäller till och med den 31 mars 2027."],
)  # fmt: skip
def test_prices_and_the_papers_with_them_hold_until_theirs(note):
    assert until(note) == LAST


@pytest.mark.parametrize(
    "note",
    ["The offer, which at first expired on 10 January, now stands until 31 March 2027.",
     "Das Angebot, das zunächst am 10. Januar ablief, gilt nun bis zum 31. März 2027.",
     "L'offre, qui expirait d'abord le 10 janvier, est maintenue jusqu'au 31 mars 2027.",
     "La oferta, que al principio vencía el 10 de enero, se mantiene ahora hasta el 31 de marzo de 2027.",
     "Offerten, som först gällde till den 10 januari, gäller nu till och med den 31 mars 2027."],
)  # fmt: skip
def test_what_a_list_once_held_to_is_told_beside_its_last_day(note):
    assert until(note) == LAST


def test_a_last_day_may_stand_in_such_a_clause_alone():
    assert until("The offer, which is valid until 31 March 2027, replaces that of May.") == LAST
    assert until("Our forest seal, which is valid until 30 June 2029, is shown below.") is None


@pytest.mark.parametrize(
    "note",
    ["Rate card effective 1 September 2026, good through 31 March 2027", "Book stays in force until 31 March 2027",
     "Prisernas giltighet: till 31 mars 2027", "Stand 25.09.2026, Angebote beider Lieferanten gültig bis 31.03.2027",
     "Good through 31 March 2027, or until the reels are gone"],
)  # fmt: skip
def test_cards_books_and_offers_of_several_hold_until_theirs(note):
    assert until(note) == LAST


def test_an_end_that_is_no_day_is_told():
    (line,) = lines([["Grade", "pt", "lb/MSF", "USD/ST"], ["SBS C1S", 16, 67, 1230], [],
                     ["Prices hold until the next mill announcement"]]).values()  # fmt: skip
    assert "validity-unread" in {note.code.value for note in line.notes}
