"""Freight, energy and other charges beside the price; delivered and not; destinations across."""

from decimal import Decimal

from tests.corpus.columns import Column, caliper_column, money_cell, place, price_column, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.model import CellPlan
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import Charge

EX_WORKS_PRICE = {
    "en-us": "Price FOB mill",
    "en": "Price ex works",
    "de": "Preis ab Werk",
    "fr": "Prix départ usine",
    "es": "Precio EXW",
    "sv": "Pris EXW",
}
DELIVERED_PRICE = {
    "en-us": "Delivered price",
    "en": "Delivered price",
    "de": "Preis frei Haus",
    "fr": "Prix franco",
    "es": "Precio entregado (DAP)",
    "sv": "Pris fritt kund",
}


def _place(kit: Kit) -> str:
    return "en-us" if kit.us else kit.lang.code


def _basis(kit: Kit) -> str:
    return kit.pick(("short_ton", "cwt")) if kit.us else "tonne"


@family("freight_column", ALL)
def freight_column(kit: Kit) -> None:
    """A price at the mill with freight and perhaps an energy surcharge in columns of their own."""
    sheet = kit.plan.sheet("FOB + freight")
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    basis, items = _basis(kit), kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    per = kit.per(basis)
    money = kit.money()
    freight_basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    freights = [
        kit.pick((Decimal("1.85"), Decimal("2.10"), Decimal("2.40")))
        if freight_basis == "cwt"
        else Decimal(kit.rng.randint(25, 60)) * (10 if kit.currency == "SEK" else 1)
        for _ in items
    ]
    percents = [Decimal(kit.pick(("2", "2.5", "3"))) if kit.chance(0.8) else None for _ in items]
    with_energy = kit.chance(0.6)
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(price_column(kit, prices, f"{EX_WORKS_PRICE[_place(kit)]}\n{money}/{per}"))
    columns.append(price_column(kit, freights, f"{kit.head('freight')}\n{money}/{kit.per(freight_basis)}", "freight"))
    if with_energy:
        column = price_column(kit, [percent or Decimal(0) for percent in percents], f"{kit.head('energy')} %", "energy")
        column.cells = [None if percent is None else cell for cell, percent in zip(column.cells, percents, strict=True)]
        columns.append(column)
    placed = place(sheet, top, 0, columns)
    for row, item, price, freight, percent in zip(placed.rows, items, prices, freights, percents, strict=True):
        charges = [Charge("Freight", freight, kit.currency, freight_basis, freight=True)]
        if with_energy and percent is not None:
            charges.append(Charge("Energy", percent, kit.currency, "percent"))
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, delivered=False, charges=charges))


@family("sheeting_column", SHEETS)
def sheeting_column(kit: Kit) -> None:
    """A charge that is not freight: delivered cost stays unknown."""
    sheet = kit.plan.sheet("Rolls and sheeting")
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    basis, items = _basis(kit), kit.range(2)
    prices = [kit.price(item, basis) for item in items]
    charge_basis = "cwt" if kit.us else "tonne"
    amounts = [Decimal("2.50") if kit.us else Decimal(45 + 5 * (index % 3)) for index in range(len(items))]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    columns.append(
        price_column(kit, amounts, f"{kit.head('sheeting')} {kit.money()}/{kit.per(charge_basis)}", "sheeting")
    )
    for row, item, price, amount in zip(place(sheet, top, 0, columns).rows, items, prices, amounts, strict=True):
        charges = [Charge("Sheeting", amount, kit.currency, charge_basis)]
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, charges=charges))


CHARGE_NOTES = {
    "en": ("Energy surcharge {p} % on all prices.", "Freight to your dock {f} {each}, to be added."),
    "de": ("Energiezuschlag {p} % auf alle Preise.", "Fracht {f} {each}, wird zusätzlich berechnet."),
    "fr": ("Surcharge énergie {p} % sur tous les prix.", "Transport {f} {each} en sus."),
    "es": ("Recargo energético {p} % sobre todos los precios.", "Transporte {f} {each}, no incluido, a añadir."),
    "sv": ("Energitillägg {p} % på alla priser.", "Frakt {f} {each} tillkommer."),
}


@family("charges_in_notes", ALL)
def charges_in_notes(kit: Kit) -> None:
    """A surcharge, and perhaps freight, said once for all lines in a footnote."""
    sheet = kit.plan.sheet("Offer")
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    basis, items = _basis(kit), kit.range(3)
    energy, freight = CHARGE_NOTES[kit.lang.code]
    percent = kit.pick((Decimal(2), Decimal(3), Decimal(4)))
    notes, charges = [energy.format(p=percent)], [Charge("Energy", percent, kit.currency, "percent")]
    if kit.chance(0.6):
        amount = Decimal(kit.rng.randint(25, 60)) * (10 if kit.currency == "SEK" else 1)
        charge_basis = "short_ton" if kit.us else "tonne"
        notes.append(freight.format(f=f"{kit.currency} {amount}", each=kit.each(charge_basis)))
        charges.append(Charge("Freight", amount, kit.currency, charge_basis, freight=True))
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    placed = place(sheet, top, 0, columns)
    for offset, note in enumerate(notes):
        sheet.put(placed.below + 1 + offset, 0, note)
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        line = kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, charges=charges))
        if (
            len(charges) == 2
        ):  # freight added to the price: 'not delivered' follows for some readers, is unsaid for others
            line["delivered"] = {"any_of": [None, False]}


@family("delivered_beside_mill", ALL)
def delivered_beside_mill(kit: Kit) -> None:
    """The price at the mill and the delivered price of each board: two offers."""
    sheet = kit.plan.sheet("Offer")
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    basis, items = _basis(kit), kit.range(3)
    at_mill = [kit.price(item, basis) for item in items]
    delivered = [kit.price(item, basis, factor=1.045) for item in items]
    unit = f"{kit.money()}/{kit.per(basis)}"
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(price_column(kit, at_mill, f"{EX_WORKS_PRICE[_place(kit)]} {unit}"))
    columns.append(price_column(kit, delivered, f"{DELIVERED_PRICE[_place(kit)]} {unit}", "delivered"))
    for row, item, first, second in zip(place(sheet, top, 0, columns).rows, items, at_mill, delivered, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, first, basis, delivered=False))
        kit.plan.accept(sheet, row, 4, kit.intent(item, second, basis, delivered=True))


@family("terms_column", ALL)
def terms_column(kit: Kit) -> None:
    """Each row says its own delivery terms."""
    sheet = kit.plan.sheet("Offer")
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    basis, items = _basis(kit), kit.range(3)
    said = [kit.chance(0.5) for _ in items]
    prices = [kit.price(item, basis, factor=1.04 if here else 1.0) for item, here in zip(items, said, strict=True)]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    placed = place(sheet, top, 0, columns)
    sheet.put(top, 4, kit.head("terms"))
    for row, item, price, here in zip(placed.rows, items, prices, said, strict=True):
        sheet.put(row, 4, kit.pick(kit.lang.delivered if here else kit.lang.ex_works))
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, delivered=here))


TOWNS = ("Marrowfield", "Oxbow Junction", "Saltwick", "Elderholt")


@family("destinations_across", SHEETS)
def destinations_across(kit: Kit) -> None:
    """Delivered prices to several places in columns: each an offer of its own."""
    sheet = kit.plan.sheet("Delivered")
    basis = _basis(kit)
    top = kit.title_block(sheet, 0, 0, basis, say="vl") + 1
    items = kit.range(3)
    towns = kit.rng.sample(TOWNS, 3)
    word = {"en": "Delivered", "de": "frei Haus", "fr": "Franco", "es": "Entregado", "sv": "Fritt levererat"}[
        kit.lang.code
    ]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    placed = place(sheet, top + 1, 0, columns)
    sheet.put(top, 3, word)
    sheet.merge(top, 3, top, 5)
    sheet.row(top + 1, 3, towns)
    for row, item in zip(placed.rows, items, strict=True):
        for offset in range(3):
            amount = kit.price(item, basis, factor=1.02 + 0.02 * offset)
            sheet.cells[row, 3 + offset] = money_cell(kit, amount)
            kit.plan.accept(sheet, row, 3 + offset, kit.intent(item, amount, basis, delivered=True))


@family("delivered_sheet", SHEETS)
def delivered_sheet(kit: Kit) -> None:
    """One sheet of mill prices, another of delivered prices: offers of their own."""
    for name, delivered in (("Mill", False), ("Delivered", True)):
        sheet = kit.plan.sheet(name)
        kit.facts.valid = kit.facts.lead = None
        top = kit.title_block(sheet, 0, 0, say="vl")
        sheet.put(top, 0, kit.pick(kit.lang.delivered if delivered else kit.lang.ex_works))
        basis, items = _basis(kit), kit.range(2)
        prices = [kit.price(item, basis, factor=1.05 if delivered else 1.0) for item in items]
        columns = [
            product_column(kit, items),
            caliper_column(kit, items),
            weight_column(kit, items),
            price_column(kit, prices, kit.price_head(basis)),
        ]
        for row, item, price in zip(place(sheet, top + 2, 0, columns).rows, items, prices, strict=True):
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, delivered=delivered))


@family("percent_cells", SHEETS)
def percent_cells(kit: Kit) -> None:
    """An energy surcharge as 0.03 shown as 3 %, or as the words '3 %'."""
    sheet = kit.plan.sheet("Offer")
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    basis, items = _basis(kit), kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    percents = [kit.pick((Decimal(2), Decimal("2.5"), Decimal(3))) for _ in items]
    shown = kit.chance(0.6)
    cells = [CellPlan(percent / 100, fmt="0.0%") if shown else f"{percent} %" for percent in percents]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns += [price_column(kit, prices, kit.price_head(basis)), Column("energy", kit.head("energy"), cells)]
    for row, item, price, percent in zip(place(sheet, top, 0, columns).rows, items, prices, percents, strict=True):
        charges = [Charge("Energy", percent, kit.currency, "percent")]
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, charges=charges))


@family("energy_by_weight", ALL)
def energy_by_weight(kit: Kit) -> None:
    """An energy surcharge in money by weight, and freight, each in its own column."""
    sheet = kit.plan.sheet("Offer")
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    basis, items = _basis(kit), kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    scale = 10 if kit.currency == "SEK" else 1
    unit = f"{kit.currency}/{kit.per('tonne' if not kit.us else 'short_ton')}"
    charge_basis = "short_ton" if kit.us else "tonne"
    energy, freight = ([Decimal(kit.rng.randint(12, 48)) * scale for _ in items] for _ in range(2))
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    columns.append(price_column(kit, energy, f"{kit.head('energy')} {unit}", "energy"))
    columns.append(price_column(kit, freight, f"{kit.head('freight')} {unit}", "freight"))
    for row, item, price, more, carry in zip(
        place(sheet, top, 0, columns).rows, items, prices, energy, freight, strict=True
    ):
        charges = [
            Charge("Energy", more, kit.currency, charge_basis),
            Charge("Freight", carry, kit.currency, charge_basis, freight=True),
        ]
        line = kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, charges=charges))
        line["delivered"] = {"any_of": [None, False]}
