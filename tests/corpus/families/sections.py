"""Parts of one file with units of their own: sections, sheets by bracket or place, options priced beside the boards."""

from decimal import Decimal

from tests.corpus.columns import (
    FORMATS,
    caliper_column,
    money_cell,
    place,
    price_column,
    product_column,
    simple_table,
    weight_column,
)
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family


@family("section_says_basis", ALL)
def section_says_basis(kit: Kit) -> None:
    """A line above each table says currency and basis for it alone."""
    sheet = kit.plan.sheet("Prices")
    row = kit.title_block(sheet, 0, 0) + 1
    bases = kit.rng.sample(("short_ton", "cwt", "msf"), 2) if kit.us else kit.rng.sample(("tonne", "kg", "1000m2"), 2)
    first, second = kit.grades(2)
    for grade, basis in ((first, bases[0]), (second, bases[1])):
        sheet.put(row, 0, kit.pick(kit.lang.prices_in).format(currency=kit.money(), each=kit.each(basis)), bold=True)
        placed = simple_table(kit, sheet, row + 1, 0, kit.series(grade, 4), basis, head=kit.head("price"), extras=False)
        row = placed.below + 1


@family("table_per_currency", ALL)
def table_per_currency(kit: Kit) -> None:
    """The same boards in a table for each currency, one under the other."""
    sheet = kit.plan.sheet("Prices")
    row = kit.title_block(sheet, 0, 0) + 1
    basis = "short_ton" if kit.us else "tonne"
    items = kit.range(2)
    for code in ("USD", "CAD") if kit.us else ("EUR", "GBP" if kit.currency != "SEK" else "SEK"):
        sheet.put(row, 0, code, bold=True)
        simple = simple_table(kit, sheet, row + 1, 0, items, basis, currency=code, extras=False)
        row = simple.below + 1


@family("two_level_columns", SHEETS)
def two_level_columns(kit: Kit) -> None:
    """Mill and delivered over small and large orders."""
    sheet = kit.plan.sheet("Prices")
    basis, unit, edge = ("short_ton", "lb", 20000) if kit.us else ("tonne", "t", 10)
    top = kit.title_block(sheet, 0, 0, basis, say="vl") + 1
    items = kit.range(3)
    split = edge * kit.mass_unit(unit)
    placed = place(
        sheet, top + 1, 0, [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    )
    for offset, words in ((3, kit.pick(kit.lang.ex_works)), (5, kit.pick(kit.lang.delivered))):
        sheet.put(top, offset, words, bold=True)
        sheet.merge(top, offset, top, offset + 1)
        sheet.row(top + 1, offset, [f"< {edge} {unit}", f"> {edge} {unit}"])
    fmt = kit.pick(FORMATS[0])
    for row, item in zip(placed.rows, items, strict=True):
        for offset, (low, below) in enumerate(((None, split), (split, None), (None, split), (split, None))):
            delivered = offset > 1
            amount = kit.price(item, basis, factor=1.04 - 0.03 * (offset % 2) + 0.05 * delivered)
            sheet.put(row, 3 + offset, amount, fmt=fmt)
            intent = kit.intent(item, amount, basis, from_kg=low, below_kg=below, delivered=delivered)
            kit.plan.accept(sheet, row, 3 + offset, intent)


@family("sheet_per_place", SHEETS)
def sheet_per_place(kit: Kit) -> None:
    """A sheet of delivered prices for each destination; the letterhead is on the first."""
    basis = "short_ton" if kit.us else "tonne"
    cover = kit.plan.sheet("Cover")
    kit.title_block(cover, 0, 0, basis, say="vl")
    items = kit.range(2)
    for step, town in enumerate(("Marrowfield", "Oxbow Junction")):
        sheet = kit.plan.sheet(town)
        sheet.put(0, 0, f"{kit.pick(kit.lang.delivered)} {town}")
        prices = [kit.price(item, basis, factor=1.03 + 0.03 * step) for item in items]
        columns = [
            product_column(kit, items),
            caliper_column(kit, items),
            weight_column(kit, items),
            price_column(kit, prices, kit.head("price")),
        ]
        for row, item, price in zip(place(sheet, 2, 0, columns).rows, items, prices, strict=True):
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, delivered=True))


OPTIONS = {
    "en": ("Options and extras", (("Two-side coating", "add"), ("Sheeting", "add"), ("Ream wrapping", "add"))),
    "de": (
        "Zuschläge",
        (("Rückseitenstrich", "Zuschlag"), ("Querschneiden", "Zuschlag"), ("Riesverpackung", "Zuschlag")),
    ),
    "fr": (
        "Suppléments",
        (("Couchage verso", "supplément"), ("Mise en format", "supplément"), ("Emballage en rames", "supplément")),
    ),
    "es": (
        "Suplementos",
        (("Estucado reverso", "suplemento"), ("Corte a hoja", "suplemento"), ("Embalaje en resmas", "suplemento")),
    ),
    "sv": ("Tillägg", (("Baksidesbestrykning", "tillägg"), ("Arkning", "tillägg"), ("Risförpackning", "tillägg"))),
}


@family("options_table", ALL)
def options_table(kit: Kit) -> None:
    """A small table of extras that may be ordered: no offers, and no charge that every order pays."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    row = kit.title_block(sheet, 0, 0) + 1
    placed = simple_table(kit, sheet, row, 0, kit.range(2), basis, extras=False)
    title, options = OPTIONS[kit.lang.code]
    sheet.put(placed.below + 1, 0, title, bold=True)
    for offset, (name, kind) in enumerate(options):
        sheet.put(placed.below + 2 + offset, 0, f"{name} ({kind})")
        sheet.put(placed.below + 2 + offset, 1, f"{kit.currency} {kit.rng.randint(30, 90)} {kit.each(basis)}")
    for line in kit.plan.lines:
        for name in ("charges", "delivered_per_tonne", "delivered_per_msf"):
            line.pop(name, None)


@family("title_beside_table", SHEETS)
def title_beside_table(kit: Kit) -> None:
    """The letterhead stands right of the table, not above it."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    kit.title_block(sheet, 0, 8, basis)
    simple_table(kit, sheet, 0, 0, kit.range(3), basis, head=kit.head("price"), extras=False)


@family("remarks_between_rows", ALL)
def remarks_between_rows(kit: Kit) -> None:
    """Lines of text between rows, a withdrawn board, a column of remarks with numbers."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    row = kit.title_block(sheet, 0, 0) + 1
    sheet.row(
        row,
        0,
        [kit.head("product"), kit.caliper_head(), kit.weight_head(), kit.price_head(basis), kit.head("remarks")],
        bold=True,
    )
    new = {
        "en": "new since May, see letter 14",
        "de": "neu seit Mai, siehe Brief 14",
        "fr": "nouveau depuis mai",
        "es": "nuevo desde mayo",
        "sv": "nytt sedan maj",
    }[kit.lang.code]
    gone = {"en": "discontinued", "de": "eingestellt", "fr": "supprimé", "es": "descatalogado", "sv": "utgått"}[
        kit.lang.code
    ]
    for index, item in enumerate(kit.range(3)):
        row += 1
        if index in (2, 5):
            sheet.put(row, 0, kit.pick(kit.lang.noise))
            row += 1
        sheet.row(row, 0, [item.words, item.caliper, item.weight])
        if index == 3:
            sheet.put(row, 3, gone)
            kit.plan.no_price(sheet, row, 3)
            continue
        amount = kit.price(item, basis)
        sheet.cells[row, 3] = money_cell(kit, amount)
        if index % 4 == 1:
            sheet.put(row, 4, new)
        kit.plan.accept(sheet, row, 3, kit.intent(item, amount, basis))


@family("boilerplate_around", ALL)
def boilerplate_around(kit: Kit) -> None:
    """A cover note above, a bank and contact block below, all with numbers."""
    sheet = kit.plan.sheet("Offer")
    basis = kit.natural_basis()
    row = kit.title_block(sheet, 0, 0)
    for line in kit.rng.sample(kit.lang.noise, 3):
        sheet.put(row, 0, line)
        row += 1
    placed = simple_table(kit, sheet, row + 1, 0, kit.range(2), basis, extras=False)
    below = placed.below + 2
    bank = {
        "en": "Bank account",
        "de": "Kontonummer",
        "fr": "Compte bancaire",
        "es": "Cuenta bancaria",
        "sv": "Bankgiro",
    }[kit.lang.code]
    sheet.row(below, 0, [bank, "0044 7711 9902"])
    sheet.row(below + 1, 0, ["E-mail", "sales@example.invalid"])
    sheet.row(below + 2, 0, ["Fax", 5550199])
    sheet.put(below + 3, 0, f"{kit.pick(kit.lang.totals)}: {Decimal('12480.50')}")
