"""What a heading over a table says for all of it: order size, delivery terms, the board itself; grids of two sizes."""

from decimal import Decimal

from tests.corpus.boards import Board
from tests.corpus.columns import caliper_column, money_cell, place, price_column, product_column, weight_column
from tests.corpus.families.brackets import weight_brackets
from tests.corpus.kit import Kit
from tests.corpus.model import SheetPlan
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.words.units import UNIT_WORDS


def _basis(kit: Kit) -> str:
    return kit.pick(("short_ton", "cwt")) if kit.us else "tonne"


def _table(kit: Kit, sheet: SheetPlan, top: int, items: list[Board], prices: list[Decimal], head: str):
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, head),
    ]
    return place(sheet, top, 0, columns)


ORDERS = {"en": "Orders {}", "de": "Bestellmenge {}", "fr": "Commande {}", "es": "Pedidos {}", "sv": "Order {}"}


@family("table_per_bracket", ALL)
def table_per_bracket(kit: Kit) -> None:
    """The same boards again in a table for each order size, said in a heading."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    row = kit.title_block(sheet, 0, 0, say="vdl") + 1
    items = kit.range(2, 2, 3)
    head = kit.price_head(basis)
    _, brackets = weight_brackets(kit)
    for step, (words, low, below) in enumerate(brackets[:3]):
        sheet.put(row, 0, ORDERS[kit.lang.code].format(words), bold=True)
        prices = [kit.price(item, basis, factor=1.06 - 0.03 * step) for item in items]
        placed = _table(kit, sheet, row + 1, items, prices, head)
        for at, item, price in zip(placed.rows, items, prices, strict=True):
            kit.plan.accept(sheet, at, 3, kit.intent(item, price, basis, from_kg=low, below_kg=below))
        row = placed.below + 1


@family("table_per_terms", ALL)
def table_per_terms(kit: Kit) -> None:
    """Prices at the mill in one table, delivered prices in the next."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    row = kit.title_block(sheet, 0, 0, say="vl") + 1
    items = kit.range(2, 2, 3)
    head = kit.price_head(basis)
    for delivered in (False, True):
        sheet.put(row, 0, kit.pick(kit.lang.delivered if delivered else kit.lang.ex_works), bold=True)
        prices = [kit.price(item, basis, factor=1.05 if delivered else 1.0) for item in items]
        placed = _table(kit, sheet, row + 1, items, prices, head)
        for at, item, price in zip(placed.rows, items, prices, strict=True):
            kit.plan.accept(sheet, at, 3, kit.intent(item, price, basis, delivered=delivered))
        row = placed.below + 1


@family("sides_across", SHEETS)
def sides_across(kit: Kit) -> None:
    """Sizes down, coated one side and two sides across."""
    sheet = kit.plan.sheet("SBS")
    basis = _basis(kit)
    row = kit.title_block(sheet, 0, 0, basis) + 1
    sheet.row(row, 0, [kit.head("product"), kit.caliper_head(), kit.weight_head(), "C1S", "C2S"], bold=True)
    for item in kit.series("SBS", 4, ("SBS", None)):
        row += 1
        sheet.row(row, 0, [item.words, item.caliper, item.weight])
        for offset, sides in ((3, 1), (4, 2)):
            amount = kit.price(item, basis, factor=1.0 + 0.03 * (sides - 1))
            sheet.cells[row, offset] = money_cell(kit, amount)
            kit.plan.accept(sheet, row, offset, kit.intent(item, amount, basis, sides=sides))


@family("caliper_and_weight_across", SHEETS)
def caliper_and_weight_across(kit: Kit) -> None:
    """One grade: its calipers across, each with its weight in the row below; order sizes down."""
    sheet = kit.plan.sheet("Matrix")
    basis = _basis(kit)
    row = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    items = kit.series(kit.grades(1)[0], 4)
    sheet.put(row, 0, items[0].words, bold=True)
    names = [
        f"{kit.pick(kit.lang.headers[key])} ({kit.pick(UNIT_WORDS[unit])})"
        for key, unit in (("caliper", kit.units[0]), ("weight" if kit.us else "grammage", kit.units[1]))
    ]
    sheet.row(row + 1, 0, [names[0], *(item.caliper for item in items)])
    sheet.row(row + 2, 0, [names[1], *(item.weight for item in items)])
    _, brackets = weight_brackets(kit)
    for step, (words, low, below) in enumerate(brackets):
        at = row + 3 + step
        sheet.put(at, 0, words)
        for offset, item in enumerate(items, start=1):
            amount = kit.price(item, basis, factor=1.06 - 0.03 * step)
            sheet.cells[at, offset] = money_cell(kit, amount)
            kit.plan.accept(sheet, at, offset, kit.intent(item, amount, basis, from_kg=low, below_kg=below))


ROLLS = {
    "en": ("Rolls", "Sheets"),
    "de": ("Rollen", "Bogen"),
    "fr": ("Bobines", "Feuilles"),
    "es": ("Bobinas", "Hojas"),
    "sv": ("Rullar", "Ark"),
}


@family("rolls_and_sheets", SHEETS)
def rolls_and_sheets(kit: Kit) -> None:
    """Prices for rolls and for sheets side by side, both by weight: two offers, or asked which is meant."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    top = kit.title_block(sheet, 0, 0, basis) + 1
    items = kit.range(3)
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    pair = [[kit.price(item, basis, factor=factor) for item in items] for factor in (1.0, 1.06)]
    columns += [price_column(kit, prices, name, name) for prices, name in zip(pair, ROLLS[kit.lang.code], strict=True)]
    for row, item, rolls, sheets in zip(place(sheet, top, 0, columns).rows, items, *pair, strict=True):
        kit.plan.either(sheet, row, 3, kit.intent(item, rolls, basis))
        kit.plan.either(sheet, row, 4, kit.intent(item, sheets, basis))


@family("caliper_ranges", ALL)
def caliper_ranges(kit: Kit) -> None:
    """One price for a range of calipers, no weight: neither size is certain, so it is asked."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    row = kit.title_block(sheet, 0, 0) + 1
    sheet.row(row, 0, [kit.head("product"), kit.head("caliper"), kit.price_head(basis)], bold=True)
    for grade in kit.grades(3):
        item = kit.series(grade, 1)[0]
        for low, high in ((14, 18), (20, 24)) if kit.us else ((350, 450), (500, 600)):
            row += 1
            sheet.row(row, 0, [item.words, f"{low}{kit.pick('-–')}{high} {'pt' if kit.us else 'µm'}"])
            sheet.cells[row, 2] = money_cell(kit, kit.price(item, basis, factor=1.05 if low in (14, 350) else 1.0))
            kit.plan.ask(sheet, row, 2)


@family("quantity_discount_note", ALL)
def quantity_discount_note(kit: Kit) -> None:
    """Discounts by quantity in a note: the list stands as written, or is asked."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, say="vdl") + 1
    items = kit.range(2)
    prices = [kit.price(item, basis) for item in items]
    placed = _table(kit, sheet, top, items, prices, kit.price_head(basis))
    size = ("20,000 lb", "40,000 lb") if kit.us else ("10 t", "20 t")
    words = {
        "en": "Quantity discount: 2 % from {}, 4 % from {}.",
        "de": "Mengenrabatt: 2 % ab {}, 4 % ab {}.",
        "fr": "Remise quantitative : 2 % à partir de {}, 4 % à partir de {}.",
        "es": "Descuento por cantidad: 2 % desde {}, 4 % desde {}.",
        "sv": "Mängdrabatt: 2 % från {}, 4 % från {}.",
    }[kit.lang.code]
    sheet.put(placed.below + 1, 0, words.format(*size))
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.either(sheet, row, 3, kit.intent(item, price, basis))
