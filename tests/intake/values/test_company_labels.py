"""Who stands behind a label: a firm, or a person or desk of one."""

import pytest

from tracker.intake.values.company import company_name


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Quoted by: Larch Board Sales Inc.", "Larch Board Sales Inc."),
        ("Quoted by: Ferrowick Cartonboard", "Ferrowick Cartonboard"),
        ("Supplier: Kestrel Ridge", "Kestrel Ridge"),
        ("From: Anna Berg, Larch Board Ltd", "Larch Board Ltd"),
        ("Quoted by: Inside sales desk, 555-0119", None),
        ("Quoted by: R. Halden (sales)", None),
        ("From: Anna Berg", None),
        ("Supplier: Verkaufsinnendienst", None),
        ("Établi par : Service commercial", None),
        ("Elaboró: Departamento de ventas", None),
        ("Från: Innesälj", None),
    ],
)
def test_a_person_or_a_desk_behind_a_label_is_no_firm(text, name):
    assert company_name(text) == name
