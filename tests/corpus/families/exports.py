"""Lists out of a business system: price units, short column names, gross beside net, blanks, future prices."""

from datetime import date, timedelta
from decimal import Decimal

from tests.corpus.boards import Board
from tests.corpus.columns import Column, caliper_column, money_cell, place, price_column, product_column, weight_column
from tests.corpus.families.bases import sheeted
from tests.corpus.kit import Kit
from tests.corpus.model import CellPlan
from tests.corpus.registry import ALL, SHEETS, family


def _sized(kit: Kit, items: list[Board]) -> list[Column]:
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


UNITS = {
    (1, "t"): "tonne",
    (1000, "kg"): "tonne",
    (1, "kg"): "kg",
    (1000, "m²"): "1000m2",
    (1, "m²"): "m2",
    (100, "kg"): None,
}


@family("price_unit_quantity", ALL, ("de", "en", "fr", "es", "sv"))
def price_unit_quantity(kit: Kit) -> None:
    """Price, how many units it is for, and the unit in three columns; 100 kg is no basis of ours."""
    sheet = kit.plan.sheet("Export")
    names = {
        "de": ("Preis", "Preiseinheit", "Mengeneinheit"),
        "en": ("Price", "Price per", "Unit"),
        "fr": ("Prix", "Prix pour", "Unité"),
        "es": ("Precio", "Precio por", "Unidad"),
        "sv": ("Pris", "Pris per", "Enhet"),
    }[kit.lang.code]
    items = kit.range(4)
    columns = _sized(kit, items)
    chosen = [kit.pick(tuple(UNITS)) for _ in items]
    prices = [
        kit.price(item, "kg") * 100 if UNITS[unit] is None else kit.price(item, UNITS[unit])
        for item, unit in zip(items, chosen, strict=True)
    ]
    columns += [Column("price", f"{names[0]} {kit.currency}", [money_cell(kit, price) for price in prices])]
    columns += [Column("per", names[1], [n for n, _ in chosen]), Column("unit", names[2], [unit for _, unit in chosen])]
    for row, item, price, unit in zip(place(sheet, 0, 0, columns).rows, items, prices, chosen, strict=True):
        if UNITS[unit] is None:
            kit.plan.ask(sheet, row, 3, "basis-unknown")
        else:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, UNITS[unit]))


@family("system_column_names", ("csv", "xlsx", "xlsxw"), ("en-us", "en"))
def system_column_names(kit: Kit) -> None:
    """Names with underscores, as a system exports them."""
    sheet = kit.plan.sheet("export")
    items = kit.range(3)
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    unit = {"short_ton": "ST", "cwt": "CWT", "tonne": "MT"}[basis]
    size = ("CALIPER_PT", "BASIS_WT_LB_MSF") if kit.us else ("CALIPER_UM", "GRAMMAGE_GSM")
    head = ["ITEM_NO", "ITEM_DESC", *size, "UNIT_PRICE", "CURRENCY", "UOM", "EAN"]
    if kit.chance(0.5):
        head = [name.lower() for name in head]
    sheet.row(0, 0, head)
    for row, item in enumerate(items, start=1):
        amount = kit.price(item, basis)
        sheet.row(
            row,
            0,
            [
                f"{70000 + row}",
                item.words,
                item.caliper,
                item.weight,
                None,
                kit.currency,
                unit,
                str(7300000000000 + row),
            ],
        )
        sheet.cells[row, 4] = money_cell(kit, amount, "General")
        kit.plan.accept(sheet, row, 4, kit.intent(item, amount, basis))


GROSS = {
    "de": "inkl. 19 % MwSt.",
    "fr": "TTC (TVA 20 %)",
    "es": "con IVA 21 %",
    "sv": "inkl. moms 25 %",
    "en": "incl. 20 % VAT",
}


@family("gross_beside_net", ALL, ("de", "fr", "es", "sv", "en"))
def gross_beside_net(kit: Kit) -> None:
    """Net price, and the same with value-added tax: the net is the offer."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    rate = {"de": "1.19", "fr": "1.20", "es": "1.21", "sv": "1.25", "en": "1.20"}[kit.lang.code]
    nets = [kit.price(item, "tonne").quantize(Decimal("0.01")) for item in items]
    unit = f"{kit.money()}/{kit.per('tonne')}"
    columns = [*_sized(kit, items), price_column(kit, nets, f"{kit.pick(kit.lang.headers['net'])} {unit}")]
    gross = [(net * Decimal(rate)).quantize(Decimal("0.01")) for net in nets]
    columns.append(
        price_column(kit, gross, f"{kit.pick(kit.lang.headers['price'])} {GROSS[kit.lang.code]} {unit}", "gross")
    )
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, nets, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, "tonne"))


@family("blank_prices", ALL)
def blank_prices(kit: Kit) -> None:
    """Some rows have no price at all."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(4)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index % 3 == 1:
            del sheet.cells[row, 3]
        else:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("announced_increase", ALL)
def announced_increase(kit: Kit) -> None:
    """A price until a day and another from the next: both may be taken in, or asked about."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis, say="dl") + 1
    items = kit.range(3)
    last = kit.pick((date(2026, 6, 30), date(2026, 9, 30)))
    until, since = {
        "en": ("until {}", "from {}"),
        "de": ("bis {}", "ab {}"),
        "fr": ("jusqu'au {}", "à partir du {}"),
        "es": ("hasta {}", "desde {}"),
        "sv": ("till {}", "från {}"),
    }[kit.lang.code]
    month = kit.lang.months
    words = [
        form.format(f"{day.day} {month[day.month - 1]} {day.year}")
        for form, day in ((until, last), (since, last + timedelta(days=1)))
    ]
    now, then = ([kit.price(item, basis, factor=factor) for item in items] for factor in (1.0, 1.05))
    name = kit.pick(kit.lang.headers["price"])
    columns = [
        *_sized(kit, items),
        price_column(kit, now, f"{name} {words[0]}"),
        price_column(kit, then, f"{name} {words[1]}", "then"),
    ]
    for row, item, first, second in zip(place(sheet, top, 0, columns).rows, items, now, then, strict=True):
        kit.plan.either(sheet, row, 3, kit.intent(item, first, basis))["valid_until"] = {
            "any_of": [last.isoformat(), None]
        }
        kit.plan.either(sheet, row, 4, kit.intent(item, second, basis))


@family("units_in_number_format", ("xlsx", "xlsxw", "xls", "xlsb"))
def units_in_number_format(kit: Kit) -> None:
    """Caliper, weight and price are numbers whose formats say their units."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    basis, money = ("short_ton", f'#,##0" {kit.currency}/ST"') if kit.us else ("tonne", f'#,##0" {kit.currency}/t"')
    size = ('0" pt"', '0" lb/MSF"') if kit.us else ('0" µm"', '0" g/m²"')
    names = [kit.head("product"), kit.head("caliper"), kit.head("weight" if kit.us else "grammage"), kit.head("price")]
    sheet.row(top, 0, names, bold=True)
    for row, item in enumerate(items, start=top + 1):
        amount = kit.price(item, basis)
        sheet.put(row, 0, item.words)
        for column, value, fmt in ((1, item.caliper, size[0]), (2, item.weight, size[1]), (3, amount, money)):
            sheet.cells[row, column] = CellPlan(value, fmt=fmt)
        kit.plan.accept(sheet, row, 3, kit.intent(item, amount, basis))


@family("crosstab_units_in_format", ("xlsx", "xlsxw", "xls"))
def crosstab_units_in_format(kit: Kit) -> None:
    """Calipers across are numbers formatted as '18 pt'."""
    sheet = kit.plan.sheet("Matrix")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis) + 1
    calipers = [Decimal(n) for n in ((14, 16, 18, 24) if kit.us else (380, 440, 500))]
    sheet.put(top, 0, kit.head("product"))
    for offset, caliper in enumerate(calipers, start=1):
        sheet.cells[top, offset] = CellPlan(caliper, fmt='0" pt"' if kit.us else '0" µm"', bold=True)
    for row, grade in enumerate(kit.grades(3), start=top + 1):
        words = kit.pick(kit.lang.boards[grade])
        sheet.put(row, 0, words[0])
        for offset, caliper in enumerate(calipers, start=1):
            item = kit.series(grade, 1, words)[0]
            item.caliper, item.weight = caliper, None
            amount = kit.price(item, basis, factor=1.05 - 0.01 * offset)
            sheet.cells[row, offset] = money_cell(kit, amount)
            kit.plan.accept(sheet, row, offset, kit.intent(item, amount, basis))


@family("family_and_finish", SHEETS)
def family_and_finish(kit: Kit) -> None:
    """The grade merged over its rows, the coated sides written once in the next column."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    row = kit.title_block(sheet, 0, 0) + 1
    heads = [kit.head("product"), kit.head("coating"), kit.caliper_head(), kit.weight_head(), kit.price_head(basis)]
    sheet.row(row, 0, heads, bold=True)
    row += 1
    for grade, words in (("SBS", "SBS"), ("CRB", "CRB" if kit.us else "GD2")):
        start = row
        sheet.put(row, 0, words)
        for finish, sides in (("C1S", 1), ("C2S", 2)) if grade == "SBS" else (("C1S", 1),):
            sheet.put(row, 1, finish)
            for item in kit.series(grade, 2, (words, sides)):
                amount = kit.price(item, basis, factor=1.03 if sides == 2 else 1.0)
                sheet.row(row, 2, [item.caliper, item.weight])
                sheet.cells[row, 4] = money_cell(kit, amount)
                kit.plan.accept(sheet, row, 4, kit.intent(item, amount, basis))
                row += 1
        sheet.merge(start, 0, row - 1, 0)


@family("starred_prices", ALL)
def starred_prices(kit: Kit) -> None:
    """A star behind some prices points to a footnote: the number is plain, asking is right too."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    note = {
        "en": "* while stocks last",
        "de": "* solange Vorrat reicht",
        "fr": "* dans la limite des stocks",
        "es": "* hasta agotar existencias",
        "sv": "* så länge lagret räcker",
    }
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index % 3 == 1:
            sheet.put(row, 3, f"{price}*")
            kit.plan.either(sheet, row, 3, kit.intent(item, price, basis))
        else:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))
    sheet.put(placed.below + 1, 0, note[kit.lang.code])


@family("tolerances_in_cells", ALL, ("en-us", "en", "de"))
def tolerances_in_cells(kit: Kit) -> None:
    """Weights with their tolerance: the nominal weight counts, asking is right too."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    columns = [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]
    columns[2].cells = [f"{item.weight} ± {3 if kit.us else 12}" for item in items]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.either(sheet, row, 3, kit.intent(item, price, basis))


@family("cents_per_sheet", ALL, ("de", "en"))
def cents_per_sheet(kit: Kit) -> None:
    """Small lots in cents or pence a sheet."""
    sheet = kit.plan.sheet("Sheets")
    kit.currency = "EUR" if kit.lang.code == "de" else "GBP"
    head = (
        kit.pick(("Cent/Bogen", "Preis in Cent je Bogen", "€-Cent/Bogen"))
        if kit.currency == "EUR"
        else kit.pick(("pence per sheet", "Price p/sheet"))
    )
    if kit.lang.code == "de" and head != "€-Cent/Bogen":
        head = f"{head} (EUR)"
    top = kit.title_block(sheet, 0, 0) + 1
    sheet.row(top, 0, [kit.head("product"), kit.caliper_head(), kit.weight_head(), kit.head("size"), head], bold=True)
    for row, plain in enumerate(kit.range(2), start=top + 1):
        words, item = sheeted(kit, plain, "mm")
        amount = kit.price(item, "sheet", factor=1.6, places=3)
        sheet.row(row, 0, [item.words, item.caliper, item.weight, words])
        sheet.cells[row, 4] = money_cell(kit, (amount * 100).quantize(Decimal("0.1")))
        kit.plan.accept(sheet, row, 4, kit.intent(item, amount, "sheet"))
