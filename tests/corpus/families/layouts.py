"""Looser layouts: spacer columns and rows, units apart, two systems in one file, prices with terms in the cell."""

from decimal import Decimal

from tests.corpus.boards import Board
from tests.corpus.columns import (
    Column,
    caliper_column,
    caliper_text,
    money_cell,
    place,
    price_column,
    product_column,
    simple_table,
    weight_column,
    weight_text,
)
from tests.corpus.families.bases import price_words, sheeted
from tests.corpus.families.brackets import weight_brackets
from tests.corpus.families.said_elsewhere import MONEY_FORMATS
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family


def _sized(kit: Kit, items: list[Board]) -> list[Column]:
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


@family("spacer_columns", ALL)
def spacer_columns(kit: Kit) -> None:
    """An empty column stands between the columns of one table."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    spaced: list[Column] = []
    for column in [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]:
        spaced += [column, Column(f"gap {column.key}", "", [None] * len(items))]
    placed = place(sheet, top, 0, spaced[:-1])
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, placed.columns["price"], kit.intent(item, price, basis))


@family("double_spaced", ALL)
def double_spaced(kit: Kit) -> None:
    """An empty row after every row, and after the header."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    simple_table(kit, sheet, top, 0, items, basis, gaps=set(range(len(items))), extras=False)


@family("value_and_unit_apart", ALL)
def value_and_unit_apart(kit: Kit) -> None:
    """Each number is followed by its unit in a cell of its own; headers stand over the numbers only."""
    sheet = kit.plan.sheet("Offer")
    row = kit.title_block(sheet, 0, 0) + 1
    units = ("pt", "lb/MSF") if kit.us else ("µm", "g/m²")
    heads = [
        kit.head("product"),
        kit.head("caliper"),
        None,
        kit.head("weight" if kit.us else "grammage"),
        None,
        kit.head("price"),
        None,
    ]
    sheet.row(row, 0, heads, bold=True)
    for item in kit.range(3):
        row += 1
        basis = kit.pick(("short_ton", "cwt", "msf")) if kit.us else "tonne"
        amount = kit.price(item, basis)
        sheet.row(row, 0, [item.words, item.caliper, units[0], item.weight, units[1]])
        sheet.cells[row, 5] = money_cell(kit, amount)
        sheet.put(row, 6, f"{kit.currency}/{kit.per(basis)}")
        kit.plan.accept(sheet, row, 5, kit.intent(item, amount, basis))


@family("us_and_metric_tables", SHEETS, ("en-us",))
def us_and_metric_tables(kit: Kit) -> None:
    """A domestic table in points and pounds, an export table in µm and g/m² below or beside."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    first, second = kit.grades(2)
    placed = simple_table(kit, sheet, top, 0, kit.series(first, 4), "short_ton", head="USD/short ton", extras=False)
    kit.us, kit.units = False, ("um", "gsm")
    items = kit.series(second, 3)
    prices = [kit.price(item, "tonne") for item in items]
    columns = [
        Column("product", "Grade (export)", [item.words for item in items]),
        Column("caliper", "Caliper µm", [item.caliper for item in items]),
    ]
    columns += [
        Column("weight", "Grammage g/m²", [item.weight for item in items]),
        price_column(kit, prices, "USD per metric ton"),
    ]
    below = kit.chance(0.5)
    at = place(sheet, placed.below + 1 if below else top, 0 if below else 6, columns)
    for row, item, price in zip(at.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, at.columns["price"], kit.intent(item, price, "tonne"))


@family("two_currencies_by_format", ("xlsx", "xlsxw", "xls"), ("en", "de", "fr", "es"))
def two_currencies_by_format(kit: Kit) -> None:
    """Two price columns with one heading; only their number formats differ in currency."""
    sheet = kit.plan.sheet("Prices")
    items = kit.range(3)
    head = f"{kit.head('price')} {kit.each('tonne')}"
    codes = kit.pick((("EUR", "GBP"), ("EUR", "USD"), ("GBP", "EUR")))
    prices = [[kit.price(item, "tonne", code) for item in items] for code in codes]
    columns = _sized(kit, items)
    for code, amounts in zip(codes, prices, strict=True):
        fmt = kit.pick(MONEY_FORMATS[code])
        columns.append(Column(code, head, [money_cell(kit, amount, fmt) for amount in amounts]))
    for row, item, *pair in zip(place(sheet, 0, 0, columns).rows, items, *prices, strict=True):
        for offset, (code, amount) in enumerate(zip(codes, pair, strict=True)):
            kit.plan.accept(sheet, row, 3 + offset, kit.intent(item, amount, "tonne", currency=code))


@family("unit_column_with_sheets", ALL, ("en-us", "en", "de"))
def unit_column_with_sheets(kit: Kit) -> None:
    """Rolls by weight and sheets by the thousand in one list; the size stands where it matters."""
    sheet = kit.plan.sheet("Offer")
    row = kit.title_block(sheet, 0, 0) + 1
    form = "in" if kit.us else "mm"
    words = {"en-us": ("M SHEETS", "CWT"), "en": ("1000 sheets", "tonne"), "de": ("1000 Bogen", "t")}[
        "en-us" if kit.us else kit.lang.code
    ]
    weight_basis = "cwt" if kit.us else "tonne"
    heads = [
        kit.head("product"),
        kit.caliper_head(),
        kit.weight_head(),
        kit.head("size"),
        kit.head("unit"),
        f"{kit.head('price')} ({kit.currency})",
    ]
    sheet.row(row, 0, heads, bold=True)
    for item in kit.range(3):
        row += 1
        sheet.row(row, 0, [item.words, item.caliper, item.weight])
        basis = weight_basis
        if kit.chance(0.5):
            size, item = sheeted(kit, item, form)
            basis = "1000sheets"
            sheet.put(row, 3, size)
        sheet.put(row, 4, words[0] if basis == "1000sheets" else words[1])
        amount = kit.price(item, basis)
        sheet.cells[row, 5] = money_cell(kit, amount)
        kit.plan.accept(sheet, row, 5, kit.intent(item, amount, basis))


@family("bracket_by_grade", SHEETS)
def bracket_by_grade(kit: Kit) -> None:
    """Order sizes down, grades across, one caliper for all in the heading of each block."""
    sheet = kit.plan.sheet("Tariff")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    row = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    _, brackets = weight_brackets(kit)
    boards = [(grade, kit.pick(kit.lang.boards[grade])) for grade in kit.grades(3)]
    name = kit.pick(kit.lang.headers["caliper"])
    for caliper in (14, 20) if kit.us else (400, 520):
        sheet.put(row, 0, f"{name} {caliper} {'pt' if kit.us else 'µm'}", bold=True)
        sheet.put(row + 1, 0, kit.head("quantity"))
        sheet.row(row + 1, 1, [words[0] for _, words in boards], bold=True)
        row += 2
        for step, (size, low, below) in enumerate(brackets):
            sheet.put(row, 0, size)
            for offset, (grade, words) in enumerate(boards, start=1):
                item = kit.series(grade, 1, words)[0]
                item.caliper, item.weight = Decimal(caliper), None
                amount = kit.price(item, basis, factor=1.06 - 0.03 * step - caliper / 10_000)
                sheet.cells[row, offset] = money_cell(kit, amount)
                kit.plan.accept(sheet, row, offset, kit.intent(item, amount, basis, from_kg=low, below_kg=below))
            row += 1
        row += 1


@family("text_price_with_terms", ALL, ("en-us", "en", "de"))
def text_price_with_terms(kit: Kit) -> None:
    """The price's cell also says delivery terms, perhaps on a second line."""
    sheet = kit.plan.sheet("Offer")
    row = kit.title_block(sheet, 0, 0, say="vl") + 1
    sheet.row(
        row,
        0,
        [kit.head("product"), kit.head("caliper"), kit.head("weight" if kit.us else "grammage"), kit.head("price")],
    )
    terms = {
        "en-us": (("FOB mill", False), ("delivered", True)),
        "en": (("ex works", False), ("delivered", True)),
        "de": (("ab Werk", False), ("frei Haus", True)),
    }
    for item in kit.range(3):
        row += 1
        basis = kit.pick(("short_ton", "cwt", "msf")) if kit.us else "tonne"
        said, delivered = kit.pick(terms["en-us" if kit.us else kit.lang.code])
        amount = kit.price(item, basis)
        sheet.row(row, 0, [item.words, caliper_text(kit, item), weight_text(kit, item)])
        sheet.put(row, 3, price_words(kit, amount, basis, kit.currency) + kit.pick((" ", ", ", "\n")) + said)
        kit.plan.accept(sheet, row, 3, kit.intent(item, amount, basis, delivered=delivered))


@family("cents_in_text", ALL, ("en-us",))
def cents_in_text(kit: Kit) -> None:
    """'47.25¢/lb' and '47.25 cents per lb' among prices per ton."""
    sheet = kit.plan.sheet("Offer")
    row = kit.title_block(sheet, 0, 0) + 1
    sheet.row(row, 0, [kit.head("product"), kit.head("caliper"), kit.head("weight"), kit.head("price")])
    for item in kit.range(3):
        row += 1
        sheet.row(row, 0, [item.words, caliper_text(kit, item), weight_text(kit, item)])
        amount = kit.price(item, "lb")
        cents = (amount * 100).quantize(Decimal("0.01"))
        sheet.put(row, 3, kit.pick((f"{cents}¢/lb", f"{cents} ¢ / lb", f"{cents} cents per lb", f"{cents} cts/lb")))
        kit.plan.accept(sheet, row, 3, kit.intent(item, amount, "lb"))
