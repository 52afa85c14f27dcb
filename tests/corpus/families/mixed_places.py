"""Vendors who mix systems: American export lists in metric, French words over pounds, English from the continent."""

from tests.corpus.columns import (
    Column,
    caliper_column,
    place,
    price_column,
    product_column,
    simple_table,
    weight_column,
)
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, family
from tests.corpus.vendors import VENDORS
from tests.corpus.words import LANGUAGES


@family("american_export", ALL, ("en",))
def american_export(kit: Kit) -> None:
    """An American mill's export list: dollars a metric ton, g/m² and µm."""
    kit.vendor, kit.address = kit.pick(VENDORS["US"])
    kit.currency = "USD"
    sheet = kit.plan.sheet("Export")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, "tonne") for item in items]
    head = kit.pick(("USD/MT", "Price US$ per metric ton", "Price (USD/MT)", "$/metric ton"))
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, head),
    ]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, "tonne"))


@family("quebec_list", ALL, ("en-us",))
def quebec_list(kit: Kit) -> None:
    """French words over points, pounds and Canadian dollars."""
    french = LANGUAGES["fr"]
    kit.vendor, kit.address = VENDORS["CA"][0]
    kit.currency = "CAD"
    sheet = kit.plan.sheet("Tarif")
    sheet.put(0, 0, kit.vendor)
    sheet.put(1, 0, kit.address)
    sheet.put(2, 0, kit.pick(("Prix en dollars canadiens (CAD)", "Tous les prix en CAD")))
    kit.facts.vendor = kit.plan.vendor = kit.vendor
    items = [
        item
        for grade in kit.grades(3)
        if grade in french.boards
        for item in kit.series(grade, 3, kit.pick(french.boards[grade]))
    ]
    basis, head = kit.pick(
        (("short_ton", "Prix CAD/tonne courte (2 000 lb)"), ("cwt", "Prix CAD/cwt"), ("msf", "Prix CAD/MSF"))
    )
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, head),
    ]
    columns[0].head, columns[1].head, columns[2].head = "Désignation", "Épaisseur (pt)", "Grammage (lb/MSF)"
    for row, item, price in zip(place(sheet, 4, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("english_from_the_continent", ALL, ("de", "fr", "es", "sv"))
def english_from_the_continent(kit: Kit) -> None:
    """A continental vendor's letterhead and words for the boards, English headers."""
    english = LANGUAGES["en"].headers
    sheet = kit.plan.sheet("Quotation")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, "tonne") for item in items]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(price_column(kit, prices, f"Price {kit.currency}/t"))
    columns[0].head, columns[1].head, columns[2].head = kit.pick(english["product"]), "Thickness µm", "Grammage g/m²"
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, "tonne"))


@family("two_languages_stacked", ALL, ("de", "fr", "es", "sv"))
def two_languages_stacked(kit: Kit) -> None:
    """One table in the vendor's language, one in English."""
    sheet = kit.plan.sheet("Quotation")
    top = kit.title_block(sheet, 0, 0) + 1
    first, second = kit.grades(2)
    placed = simple_table(kit, sheet, top, 0, kit.series(first, 3), "tonne", extras=False)
    items = kit.series(second, 3, kit.pick(LANGUAGES["en"].boards[second]))
    prices = [kit.price(item, "tonne") for item in items]
    columns = [
        Column("product", "Grade", [item.words for item in items]),
        Column("caliper", "Caliper (µm)", [item.caliper for item in items]),
    ]
    columns += [
        Column("weight", "Substance g/m²", [item.weight for item in items]),
        price_column(kit, prices, f"Price {kit.currency}/tonne"),
    ]
    for row, item, price in zip(place(sheet, placed.below + 1, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, "tonne"))
