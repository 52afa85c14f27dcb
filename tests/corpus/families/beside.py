"""What stands beside offers and is none: old lists, histories, indices, freight tables, totals, decoys."""

from decimal import Decimal

from tests.corpus.columns import (
    Column,
    caliper_column,
    money_cell,
    place,
    price_column,
    product_column,
    simple_table,
    weight_column,
)
from tests.corpus.kit import Kit
from tests.corpus.model import SheetPlan
from tests.corpus.registry import ALL, SHEETS, family


def _current(kit: Kit, sheet: SheetPlan, grades: int = 2, **look) -> tuple[str, int]:
    """The current list with its letterhead; gives the basis and the first free row."""
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    placed = simple_table(kit, sheet, top, 0, kit.range(grades), basis, extras=False, **look)
    return basis, placed.below


def _silent_table(
    kit: Kit, sheet: SheetPlan, top: int, left: int, basis: str, factor: float, head: str | None = None
) -> int:
    """A table that looks like offers and is none."""
    items = kit.range(2)
    prices = [kit.price(item, basis, factor=factor) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, head or kit.price_head(basis)),
    ]
    return place(sheet, top, left, columns).below


@family("superseded_below", ALL)
def superseded_below(kit: Kit) -> None:
    """The old list stands under the new one, marked as superseded."""
    sheet = kit.plan.sheet("Prices")
    basis, row = _current(kit, sheet)
    sheet.put(row + 1, 0, kit.pick(kit.lang.superseded).format(y=2025), bold=True)
    _silent_table(kit, sheet, row + 2, 0, basis, 0.94)


@family("superseded_sheet", SHEETS)
def superseded_sheet(kit: Kit) -> None:
    """The old list is a sheet of its own, marked so in its title."""
    sheet = kit.plan.sheet("2026")
    basis, _ = _current(kit, sheet)
    old = kit.plan.sheet("2025")
    old.put(0, 0, kit.vendor)
    old.put(1, 0, kit.pick(kit.lang.superseded).format(y=2025), bold=True)
    _silent_table(kit, old, 3, 0, basis, 0.94)


@family("previous_price_column", ALL)
def previous_price_column(kit: Kit) -> None:
    """The old price beside the new one, and the change in per cent."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    old = [kit.price(item, basis, factor=0.96) for item in items]
    unit = f"{kit.money()}/{kit.per(basis)}"
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    previous = price_column(kit, old, f"{kit.head('previous')} {unit}", "previous")
    current = price_column(kit, prices, f"{kit.pick(_NEW[kit.lang.code])} {unit}")
    columns += [previous, current] if kit.chance(0.6) else [current, previous]
    columns.append(Column("change", "+/- %", [Decimal("4.2")] * len(items)))
    placed = place(sheet, top, 0, columns)
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, placed.columns["price"], kit.intent(item, price, basis))


_NEW = {
    "en": ("New price", "Price"),
    "de": ("Neuer Preis", "Preis neu"),
    "fr": ("Nouveau prix", "Prix"),
    "es": ("Precio nuevo", "Precio"),
    "sv": ("Nytt pris", "Pris"),
}


@family("list_and_net", ALL)
def list_and_net(kit: Kit) -> None:
    """List price, discount in per cent, net price: the net is the offer."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis) + 1
    items = kit.range(3)
    lists = [kit.price(item, basis) for item in items]
    nets = [(price * Decimal("0.95")).quantize(Decimal("0.01")) for price in lists]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(price_column(kit, lists, kit.pick(kit.lang.headers["list"]), "list"))
    columns.append(Column("discount", f"{kit.pick(kit.lang.headers['discount'])} %", [5] * len(items)))
    columns.append(price_column(kit, nets, kit.pick(kit.lang.headers["net"])))
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, nets, strict=True):
        kit.plan.accept(sheet, row, 5, kit.intent(item, price, basis))


INDEX = {
    "en": ("Board market index", "Month", "Index"),
    "de": ("Kartonindex", "Monat", "Index"),
    "fr": ("Indice du carton", "Mois", "Indice"),
    "es": ("Índice del cartón", "Mes", "Índice"),
    "sv": ("Kartongindex", "Månad", "Index"),
}
FREIGHT = {
    "en": ("Freight rates", "Zone"),
    "de": ("Frachttabelle", "Zone"),
    "fr": ("Barème de transport", "Zone"),
    "es": ("Tarifas de transporte", "Zona"),
    "sv": ("Fraktpriser", "Zon"),
}


@family("index_and_freight_sheets", SHEETS)
def index_and_freight_sheets(kit: Kit) -> None:
    """An index sheet and a freight table beside the price sheet."""
    sheet = kit.plan.sheet("Prices")
    _current(kit, sheet)
    title, month, name = INDEX[kit.lang.code]
    index = kit.plan.sheet("Index")
    index.put(0, 0, title)
    index.row(2, 0, [month, name])
    for line in range(6):
        index.row(3 + line, 0, [kit.lang.months[line], Decimal(kit.rng.randint(11800, 12400)) / 10])
    words, zone = FREIGHT[kit.lang.code]
    freight = kit.plan.sheet("Freight")
    freight.put(0, 0, words)
    freight.row(2, 0, [zone, f"{kit.currency}/{'cwt' if kit.us else 't'}"])
    for line in range(4):
        freight.row(3 + line, 0, [f"{zone} {line + 1}", Decimal(kit.rng.randint(20, 60))])


@family("history_beside", SHEETS)
def history_beside(kit: Kit) -> None:
    """A price history by month under the list."""
    sheet = kit.plan.sheet("Prices")
    _, row = _current(kit, sheet)
    words = {
        "en": "Price history (for information)",
        "de": "Preisentwicklung (zur Information)",
        "fr": "Historique des prix (pour information)",
        "es": "Histórico de precios (informativo)",
        "sv": "Prishistorik (för kännedom)",
    }
    sheet.put(row + 1, 0, words[kit.lang.code])
    sheet.row(row + 2, 0, [kit.head("product"), *kit.lang.months[:5]])
    for line, grade in enumerate(kit.grades(2)):
        item = kit.series(grade, 1)[0]
        sheet.row(
            row + 3 + line, 0, [item.words, *(kit.price(item, "tonne", factor=0.9 + 0.01 * step) for step in range(5))]
        )


@family("totals_and_averages", ALL)
def totals_and_averages(kit: Kit) -> None:
    """Average lines after each group and at the end."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    row = kit.title_block(sheet, 0, 0) + 1
    sheet.row(row, 0, [kit.head("product"), kit.caliper_head(), kit.weight_head(), kit.price_head(basis)], bold=True)
    for grade in kit.grades(3):
        amounts = []
        for item in kit.series(grade, 3):
            row += 1
            amount = kit.price(item, basis)
            amounts.append(amount)
            sheet.row(row, 0, [item.words, item.caliper, item.weight, amount])
            kit.plan.accept(sheet, row, 3, kit.intent(item, amount, basis))
        row += 1
        sheet.put(row, 0, f"{kit.pick(kit.lang.totals)} {item.words}" if kit.chance(0.5) else kit.pick(kit.lang.totals))
        sheet.put(row, 3, (sum(amounts) / len(amounts)).quantize(Decimal("0.01")), places=2)


@family("decoy_numbers", ALL)
def decoy_numbers(kit: Kit) -> None:
    """Item numbers, years, stock and pallets that look like prices, and footnotes full of numbers."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    stock = {
        "en": "Stock (rolls)",
        "de": "Lagerbestand (Rollen)",
        "fr": "Stock (bobines)",
        "es": "Existencias (bobinas)",
        "sv": "Lagersaldo (rullar)",
    }[kit.lang.code]
    year = {"en": "Model year", "de": "Listenjahr", "fr": "Année", "es": "Año", "sv": "År"}[kit.lang.code]
    columns = [
        Column("item", kit.head("item"), [1100 + 15 * index for index in range(len(items))]),
        product_column(kit, items),
    ]
    columns += [Column("year", year, [2026] * len(items)), caliper_column(kit, items), weight_column(kit, items)]
    columns += [
        Column("stock", stock, [kit.rng.randint(600, 1400) for _ in items]),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    placed = place(sheet, top, 0, columns)
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 6, kit.intent(item, price, basis))
    kit.footer(sheet, placed.below + 1, 0, 3)
    sheet.row(placed.below + 5, 0, ["Ref.", 1180, None, 2026])


@family("buyer_named", ALL)
def buyer_named(kit: Kit) -> None:
    """The buyer's name and address stand in the letterhead too."""
    sheet = kit.plan.sheet("Quotation")
    basis = kit.natural_basis()
    sheet.put(0, 0, kit.vendor, bold=True)
    sheet.put(1, 0, kit.address)
    to = {"en": "To: {}", "de": "An: {}", "fr": "À l'attention de : {}", "es": "Para: {}", "sv": "Till: {}"}[
        kit.lang.code
    ]
    sheet.put(2, 0, to.format("Larkmoor Foods Inc., 900 Cannery Row"))
    kit.facts.vendor = kit.plan.vendor = kit.vendor
    simple_table(kit, sheet, 5, 0, kit.range(2), basis)


@family("indicative_prices", ALL)
def indicative_prices(kit: Kit) -> None:
    """Marked as indicative: accepted, with a note in words."""
    sheet = kit.plan.sheet("Budget")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0)
    sheet.put(top, 0, kit.pick(kit.lang.indicative))
    simple_table(kit, sheet, top + 2, 0, kit.range(3), basis)


@family("rebate_notes", ALL)
def rebate_notes(kit: Kit) -> None:
    """Rebates, cash discounts and pallet charges in notes change no price."""
    sheet = kit.plan.sheet("Prices")
    _, row = _current(kit, sheet)
    for offset, line in enumerate(kit.lang.noise):
        sheet.put(row + 1 + offset, 0, line)
    sheet.cells[row + 12, 1] = money_cell(kit, Decimal("1234.00"))
    sheet.put(
        row + 12,
        0,
        {"en": "Licence no.", "de": "Vertragsnr.", "fr": "N° contrat", "es": "N.º de contrato", "sv": "Avtalsnr"}[
            kit.lang.code
        ],
    )
