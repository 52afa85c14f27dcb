"""Currency, basis, size or grade said outside header and row: in formats, legends, footnotes, sheet names, headings."""

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
from tests.corpus.families.questions import in_inches
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.words.units import UNIT_WORDS

MONEY_FORMATS = {
    "USD": ("[$USD] #,##0.00", '"US$" #,##0.00', "[$$-409]#,##0.00"),
    "EUR": ("#,##0.00 [$€-407]", '#,##0.00\\ "€"', "[$€-2] #,##0.00", '"EUR" #,##0.00'),
    "GBP": ("[$£-809]#,##0.00", '"£"#,##0.00'),
    "SEK": ("#,##0.00 [$SEK]", '#,##0.00 "SEK"', "#,##0.00\\ [$kr-41D]"),
    "CHF": ("[$CHF] #,##0.00", '"CHF" #,##0.00'),
}


def _unit_only(kit: Kit, basis: str) -> str:
    return f"{kit.head('price')} {kit.each(basis)}"


@family("currency_in_format", ("xlsx", "xlsxw", "xls"))
def currency_in_format(kit: Kit) -> None:
    """Only the number format says the currency."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    items = kit.range(3)
    fmt = kit.pick(MONEY_FORMATS[kit.currency])
    if basis in ("lb", "kg"):
        fmt = fmt.replace("0.00", "0.0000")
    prices = [kit.price(item, basis) for item in items]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(Column("price", _unit_only(kit, basis), [money_cell(kit, price, fmt) for price in prices]))
    for row, item, price in zip(place(sheet, 0, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("mixed_currency_formats", ("xlsx", "xlsxw", "xls"), ("en", "de", "fr", "es"))
def mixed_currency_formats(kit: Kit) -> None:
    """Rows differ in currency by number format alone."""
    sheet = kit.plan.sheet("Prices")
    basis = "tonne"
    items = kit.range(3)
    codes = [kit.pick(("EUR", "GBP", "USD")) for _ in items]
    prices = [kit.price(item, basis, code) for item, code in zip(items, codes, strict=True)]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(
        Column(
            "price",
            _unit_only(kit, basis),
            [money_cell(kit, price, kit.pick(MONEY_FORMATS[code])) for price, code in zip(prices, codes, strict=True)],
        )
    )
    for row, item, price, code in zip(place(sheet, 0, 0, columns).rows, items, prices, codes, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, currency=code))


@family("basis_in_format", ("xlsx", "xlsxw", "xls", "xlsb"), ("en-us", "en", "de"))
def basis_in_format(kit: Kit) -> None:
    """The number format carries currency and basis: '"$"#,##0"/ST"'."""
    sheet = kit.plan.sheet("Prices")
    basis, fmt = (
        kit.pick((("short_ton", '"US$"#,##0"/ST"'), ("msf", '"US$"0.00"/MSF"'), ("cwt", '"US$"0.00"/cwt"')))
        if kit.us
        else ("tonne", f'#,##0 "{kit.currency}/t"')
    )
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(Column("price", kit.head("price"), [money_cell(kit, price, fmt) for price in prices]))
    for row, item, price in zip(place(sheet, 0, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("said_in_footnote", ALL)
def said_in_footnote(kit: Kit) -> None:
    """A bare 'price' column; a footnote says currency and basis."""
    sheet = kit.plan.sheet("Sheet1")
    basis = kit.natural_basis()
    star = kit.pick(("*", " 1)", ""))
    placed = simple_table(kit, sheet, 0, 0, kit.range(3), basis, head=kit.head("price") + star)
    sentence = kit.pick(kit.lang.prices_in).format(currency=kit.money(), each=kit.each(basis))
    sheet.put(placed.below + 1, 0, f"{star.strip()} {sentence}".strip())


@family("said_in_sheet_name", SHEETS)
def said_in_sheet_name(kit: Kit) -> None:
    """The sheet's name says currency and basis."""
    basis, name = (
        kit.pick((("short_ton", "USD per short ton"), ("msf", "USD per MSF"), ("cwt", "Prices USD-cwt")))
        if kit.us
        else ("tonne", f"{kit.currency} per tonne" if kit.lang.code == "en" else f"{kit.currency} per 1000 kg")
    )
    sheet = kit.plan.sheet(name)
    simple_table(kit, sheet, 0, 0, kit.range(3), basis, head=kit.head("price"))


@family("said_in_legend", ALL)
def said_in_legend(kit: Kit) -> None:
    """A legend beside the table explains units and currency."""
    sheet = kit.plan.sheet("Sheet1")
    basis = kit.natural_basis()
    items = kit.range(3)
    placed = simple_table(kit, sheet, 0, 0, items, basis, head=kit.head("price"), textual=False, extras=False)
    for column, key, unit in (
        ("caliper", "caliper", kit.units[0]),
        ("weight", "weight" if kit.us else "grammage", kit.units[1]),
    ):
        sheet.put(0, placed.columns[column], kit.pick(kit.lang.headers[key]))
        name = sheet.cells[0, placed.columns[column]].value
        sheet.put(1 if column == "caliper" else 2, 7, f"{name}: {kit.pick(UNIT_WORDS[unit])}")
    sheet.put(3, 7, f"{sheet.cells[0, placed.columns['price']].value}: {kit.money()} {kit.each(basis)}")


@family("coating_column", ALL)
def coating_column(kit: Kit) -> None:
    """Coated sides stand in a column of their own."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.series("SBS", 3, ("SBS", None)) + kit.series("CRB", 2, ("GD2" if not kit.us else "CRB", "coat"))
    finish = [kit.pick((("C1S", 1), ("C2S", 2))) for _ in items[:3]] + [("C1S", 1)] * 2
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        Column("coating", kit.head("coating"), [words for words, _ in finish]),
        caliper_column(kit, items),
    ]
    columns += [weight_column(kit, items), price_column(kit, prices, kit.price_head(basis))]
    for row, item, price, (_, sides) in zip(place(sheet, top, 0, columns).rows, items, prices, finish, strict=True):
        kit.plan.accept(sheet, row, 4, kit.intent(item, price, basis, sides=sides))


@family("caliper_only", ALL)
def caliper_only(kit: Kit) -> None:
    """No basis weight anywhere: an estimate may be shown, never called quoted."""
    _one_size(kit, "weight")


@family("weight_only", ALL)
def weight_only(kit: Kit) -> None:
    """No caliper anywhere: it is never estimated."""
    _one_size(kit, "caliper")


def _one_size(kit: Kit, missing: str) -> None:
    sheet = kit.plan.sheet("Prices")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "cwt", "msf")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    for item in items:
        setattr(item, missing, None)
    items = list({(item.words, item.caliper, item.weight): item for item in items}.values())
    prices = [kit.price(item, basis) for item in items]
    size = caliper_column(kit, items) if missing == "weight" else weight_column(kit, items)
    columns = [product_column(kit, items), size, price_column(kit, prices, kit.price_head(basis))]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 2, kit.intent(item, price, basis))


@family("inches_and_3000", ALL, ("en-us",))
def inches_and_3000(kit: Kit) -> None:
    """Calipers in inches, weights per 3,000 ft²."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    kit.units = ("pt", "lb_3000")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    in_inches(kit, items)
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("caliper_without_unit", ALL)
def caliper_without_unit(kit: Kit) -> None:
    """No unit for the caliper; only one is possible for board."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    shape = kit.pick(("as is", "other"))
    if shape == "other" and kit.us:
        in_inches(kit, items)
    elif shape == "other":
        for item in items:
            item.caliper, item.caliper_unit = (item.caliper / 1000).quantize(Decimal("0.01")), "mm"
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        Column("caliper", kit.head("caliper"), [item.caliper for item in items]),
        weight_column(kit, items),
    ]
    columns.append(price_column(kit, prices, kit.price_head(basis)))
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("trade_name_explained_in_cell", ALL)
def trade_name_explained_in_cell(kit: Kit) -> None:
    """The mill's name with the grade in brackets beside it."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = []
    for grade, name in zip(
        kit.grades(3), kit.rng.sample(("Corraline White", "Hushfold", "Ivernal 2", "Brindlecote"), 3), strict=True
    ):
        words, sides = kit.pick(kit.lang.boards[grade])
        items += kit.series(
            grade, 3, (kit.pick((f"{name} ({words})", f"{name} – {words}", f'{words} "{name}"')), sides)
        )
    simple_table(kit, sheet, top, 0, items, basis)
