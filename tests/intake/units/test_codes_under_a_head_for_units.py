"""Codes below 'Unit code' that a key explains; a key that no column carries settles nothing."""

import pytest

from tests.intake.sheets import codes, lines

KEY = ("A = US$ per cwt", "B = US$ per MSF", "C = US$ per short ton")


def _bases(head, *key):
    heads = ["Board", "Caliper (pt)", "lb/MSF", "Price", head]
    rows = [["SBS", 14, 59, 59.4, "A"], ["SBS", 16, 67, 41.65, "B"], ["CRB", 18, 70, 872, "C"]]
    found = lines([["Tarn Board Mills Inc."], heads, *rows, *([text] for text in key)]).values()
    return [str(line.offer.basis) for line in found], {str(line.state) for line in found}


@pytest.mark.parametrize("key", [KEY, (", ".join(KEY),), ("; ".join(KEY),), ("Unit codes:", *KEY)])
@pytest.mark.parametrize("head", ["Unit code", "Einheit Code", "Code unité", "Código de unidad", "Enhetskod"])
def test_a_code_stands_for_its_unit(head, key):
    assert _bases(head, *key) == (["cwt", "msf", "short_ton"], {"accepted"})


@pytest.mark.parametrize("key", [", ".join(KEY[:2]), "US$ per cwt = A, US$ per MSF = B", "; ".join(KEY[:2])])
def test_a_key_without_a_column_of_codes_gives_no_unit(key):
    rows = [["Tarn Board Mills Inc."], ["Board", "Caliper (pt)", "lb/MSF", "Price"], ["SBS", 14, 59, 59.4], [key]]
    (line,) = lines(rows).values()
    assert "basis-unknown" in codes(line)
