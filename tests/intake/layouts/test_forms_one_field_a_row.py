"""What vendors answered on a portal, exported with one field of the form a row."""

import pytest

from tests.intake.sheets import lines

ENGLISH = ["Vendor", "Item", "Field", "Value", "Unit", "Entered"]
FIELDS = {
    "Buyer's code": ("60310", None), "Description": ("FBB GC2, coated one side", None), "Grammage": ("275", "g/m²"),
    "Caliper": ("455", "µm"), "Target price": ("1190", "EUR/t"), "Price offered": ("1,217.50", "EUR/t"),
    "Incoterm": ("DAP", None), "Lead time": ("4", "weeks"), "Minimum order": ("5", "t"),
    "Valid until": ("31 Dec 2026", None),
}  # fmt: skip
GERMAN = ["Lieferant", "Position", "Feld", "Wert", "Einheit", "Erfasst"]
FELDER = {
    "Artikelnummer": ("60310", None), "Bezeichnung": ("Faltschachtelkarton GC2", None),
    "Flächengewicht": ("275", "g/m²"),
    "Dicke": ("455", "µm"), "Zielpreis": ("1190", "EUR/t"), "Angebotspreis": ("1.217,50", "EUR/t"),
    "Lieferbedingung": ("DAP", None), "Lieferzeit": ("4", "Wochen"), "Mindestmenge": ("5", "t"),
    "Gültig bis": ("31.12.2026", None),
}  # fmt: skip


def exported(head, *forms):
    rows = [head]
    for item, form in enumerate(forms, start=1):
        stamp = f"2026-09-22 10:4{item}"
        rows += [["Harlow Bend Ltd", str(item), field, value, unit, stamp] for field, (value, unit) in form.items()]
    return rows


@pytest.mark.parametrize(("head", "form"), [(ENGLISH, FIELDS), (GERMAN, FELDER)])
def test_each_form_is_one_offer_with_its_own_terms(head, form):
    first, second, third = form, dict(form), dict(form)
    names = list(form)
    second[names[2]], second[names[3]], second[names[-1]] = ("350", "g/m²"), (None, "µm"), ("15 Nov 2026", None)
    third[names[5]] = ("no bid", "EUR/t")
    found = [line.offer for line in lines(exported(head, first, second, third)).values()]
    assert [offer.source.cell for offer in found] == ["D7", "D17"]
    assert [(offer.grammage_gsm, offer.caliper_um) for offer in found] == [(275, 455), (350, None)]
    assert {offer.vendor for offer in found} == {"Harlow Bend Ltd"}
    assert {(str(offer.price), offer.currency, offer.basis) for offer in found} in (
        {("1217.50", "EUR", "tonne")},
        {("1217.5", "EUR", "tonne")},
    )
    assert [str(offer.valid_until) for offer in found] == ["2026-12-31", "2026-11-15"]
    assert {(offer.lead_days, offer.minimum_kg, offer.delivered) for offer in found} == {((28, 28), 5000, True)}


def test_vendors_that_take_turns_keep_their_own_answers():
    rows = exported(ENGLISH, FIELDS, FIELDS)
    for row in rows[11:]:
        row[0] = "Saltmarrow Mills"
    assert [line.offer.vendor for line in lines(rows).values()] == ["Harlow Bend Ltd", "Saltmarrow Mills"]
