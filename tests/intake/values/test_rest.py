"""What is left of a part once what is understood is taken out."""

import pytest

from tracker.intake.values.notes.rest import rest_of


@pytest.mark.parametrize(
    ("part", "rest"),
    [
        ("a minimum for each order", ""), ("the minimum of this grade", ""), ("minimum by rail", "rail"),
        ("Mindestmenge je Sorte", ""), ("Mindestmenge im Export", "Export"), ("commande minimum par qualité", ""),
        ("mínimo por referencia", ""), ("minsta order per kvalitet", ""), ("not a minimum", "not"),
    ],
)  # fmt: skip
def test_the_rest_of_a_part(part, rest):
    assert rest_of(part, (), "minimum") == rest


def test_the_longest_phrase_of_all_lists_goes_first():
    assert rest_of("Lieferung in der Regel", ()) == ""
    assert rest_of("claims and orders", (), "ordered.any") == "claims"
    assert rest_of("claims and orders", (), "ordered") == ""


def test_spans_are_taken_out():
    assert rest_of("minimum 5 t by rail", [(8, 11)], "minimum") == "rail"
