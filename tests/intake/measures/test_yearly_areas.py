"""What is used in a year, counted in the area that basis weights are per."""

from tests.intake.sheets import codes, lines


def test_an_area_a_year_is_no_basis_weight():
    head = ["Grade", "pt", "lb/MSF", "MSF/yr", "US$/MSF"]
    (line,) = lines([head, ["SBS C1S", 14, 60, 5200, 38.35]]).values()
    assert (line.state, round(line.offer.grammage_gsm)) == ("accepted", 293)


def test_two_basis_weights_are_still_asked_about():
    head = ["Grade", "pt", "lb/MSF", "Wt lb/MSF", "US$/MSF"]
    (line,) = lines([head, ["SBS C1S", 14, 60, 75, 38.35]]).values()
    assert codes(line) == {"weight-implausible"}
