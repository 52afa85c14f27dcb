"""Formulas never calculated, error cells, zero and negative prices; numbers and dates that read two ways."""

from datetime import date
from decimal import Decimal

from tests.corpus.columns import Column, caliper_column, place, price_column, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.model import CellPlan
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import AnyOf


def _sized(kit: Kit, items) -> list[Column]:
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


@family("net_by_formula", ("xlsx", "xlsxw"), resave=False)
def net_by_formula(kit: Kit) -> None:
    """List less discount by a formula; some were never calculated."""
    sheet = kit.plan.sheet("Calc")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis) + 1
    items = kit.range(3)
    lists = [kit.price(item, basis) for item in items]
    columns = [*_sized(kit, items), price_column(kit, lists, kit.pick(kit.lang.headers["list"]), "list")]
    columns.append(Column("discount", kit.pick(kit.lang.headers["discount"]), [Decimal(15)] * len(items)))
    placed = place(sheet, top, 0, columns)
    sheet.put(top, 5, kit.pick(kit.lang.headers["net"]))
    for index, (row, item, price) in enumerate(zip(placed.rows, items, lists, strict=True)):
        net = price - 15
        if index % 3 == 0:
            sheet.cells[row, 5] = CellPlan(None, fmt="#,##0", formula=f"=D{row + 1}-E{row + 1}")
            codes = AnyOf(("formula-without-value", "price-not-positive"))
            kit.plan.refuse(sheet, row, 5, codes)
        else:
            sheet.put(row, 5, net, fmt="#,##0")
            kit.plan.accept(sheet, row, 5, kit.intent(item, net, basis))


@family("calculated_formulas", ("xlsxw",))
def calculated_formulas(kit: Kit) -> None:
    """Every net price is a formula with the value it had when saved."""
    sheet = kit.plan.sheet("Calc")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis) + 1
    items = kit.range(3)
    lists = [kit.price(item, basis) for item in items]
    placed = place(
        sheet, top, 0, [*_sized(kit, items), price_column(kit, lists, kit.pick(kit.lang.headers["list"]), "list")]
    )
    sheet.put(top, 4, kit.pick(kit.lang.headers["net"]))
    for row, item, price in zip(placed.rows, items, lists, strict=True):
        net = price - 20
        sheet.cells[row, 4] = CellPlan(net, fmt="#,##0.00", formula=f"=D{row + 1}-20")
        kit.plan.accept(sheet, row, 4, kit.intent(item, net, basis))
    total = placed.below
    sheet.put(total, 0, kit.pick(kit.lang.totals))
    average = sum(lists) / len(lists)
    sheet.cells[total, 4] = CellPlan(
        average - 20, fmt="#,##0.00", formula=f"=AVERAGE(E{placed.rows[0] + 1}:E{placed.rows[-1] + 1})"
    )


@family("broken_prices", ("xlsx", "xlsxw"))
def broken_prices(kit: Kit) -> None:
    """Error cells, zeros and negative prices among good ones."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(4)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        fault = ("", "", "error", "", "zero", "", "negative")[index % 7]
        if fault == "error":
            sheet.cells[row, 3] = CellPlan(None, error=kit.pick(("#N/A", "#REF!", "#VALUE!", "#DIV/0!")))
            kit.plan.refuse(sheet, row, 3, "error-cell")
        elif fault:
            sheet.cells[row, 3].value = Decimal(0) if fault == "zero" else -price
            kit.plan.refuse(sheet, row, 3, "price-not-positive")
        else:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("price_ranges", ALL)
def price_ranges(kit: Kit) -> None:
    """A few prices are ranges: asked."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index % 4 == 1:
            sheet.put(row, 3, f"{price}{kit.pick(('-', '–', ' - '))}{price + 30}")
            kit.plan.ask(sheet, row, 3, "number-ambiguous")
        else:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("no_offer_words", ALL)
def no_offer_words(kit: Kit) -> None:
    """'call', 'n/q' and dashes stand where a price would."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index % 3 == 2:
            sheet.put(row, 3, kit.pick(kit.lang.no_price))
            kit.plan.no_price(sheet, row, 3)
        else:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


def grouped(value: Decimal, sign: str) -> str:
    return f"{value:,}".replace(",", sign)


@family("grouped_text", ALL, ("en-us", "en", "de", "es", "fr", "sv"))
def grouped_text(kit: Kit) -> None:
    """Prices as text with thousands grouped; one with decimals, or the sign itself, settles the column."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, say="") + 1
    items = [item for item in kit.range(3) if kit.price(item, basis) >= 1000] or kit.series("SBS", 3)
    sign = "'" if kit.country == "CH" else {"en": ",", "de": ".", "es": ".", "fr": " ", "sv": "\u00a0"}[kit.lang.code]
    decimal = "." if sign in ",'" else ","
    prices = [kit.price(item, basis) for item in items]
    prices[-1] += Decimal("0.50")
    cells = [grouped(price.quantize(Decimal(1)), sign) for price in prices[:-1]]
    cells.append(
        grouped(prices[-1].quantize(Decimal("0.01"), rounding="ROUND_DOWN"), sign)
        if decimal == "."
        else _continental(prices[-1], sign)
    )
    placed = place(sheet, top, 0, [*_sized(kit, items), Column("price", kit.price_head(basis), cells)])
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


def _continental(price: Decimal, sign: str) -> str:
    whole, _, decimals = f"{price:.2f}".partition(".")
    return f"{grouped(Decimal(whole), sign)},{decimals}"


@family("grouped_text_open", ALL, ("en-us", "en", "de", "es"))
def grouped_text_open(kit: Kit) -> None:
    """The same without anything that settles the sign: asking is right, and so is the only sensible number."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    items = [item for item in kit.range(3) if kit.price(item, basis) >= 1000] or kit.series("SBS", 3)
    sign = "," if kit.lang.code == "en" else "."
    prices = [kit.price(item, basis) for item in items]
    head = f"{kit.pick(kit.lang.headers['price'])} {kit.currency}/{kit.per(basis)}"
    placed = place(
        sheet, 0, 0, [*_sized(kit, items), Column("price", head, [grouped(price, sign) for price in prices])]
    )
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        line = kit.plan.either(sheet, row, 3, kit.intent(item, price, basis))
        line["remarks"] = "1,234 alone reads two ways"


@family("open_date", ALL)
def open_date(kit: Kit) -> None:
    """A validity that reads as April or as March: left open with a note, the offers stand."""
    sheet = kit.plan.sheet("Offer")
    basis = kit.natural_basis()
    sheet.put(0, 0, kit.vendor)
    kit.facts.vendor = kit.plan.vendor = kit.vendor
    day = date(2026, kit.rng.randint(3, 11), kit.rng.randint(1, 2))
    sheet.put(1, 0, kit.pick(kit.lang.valid_until).format(date=f"{day:%d/%m/%Y}"))
    items = kit.range(2)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, 3, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        if kit.lang.code == "en":
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis), ("date-ambiguous",))
        else:  # a French 03/04 is the third of April to its reader; leaving it open is right too
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))["valid_until"] = {
                "any_of": [day.isoformat(), None]
            }


@family("dates_settle_each_other", ALL)
def dates_settle_each_other(kit: Kit) -> None:
    """A validity column in which one day above 12 fixes the order for all."""
    sheet = kit.plan.sheet("Offer")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0, say="ld") + 1
    items = kit.range(3)
    shape = "%m/%d/%Y" if kit.us else "%d/%m/%Y"
    days = [date(2026, kit.rng.randint(5, 12), kit.pick((1, 2, 3, 15, 28))) for _ in items]
    days[0] = days[0].replace(day=28)
    prices = [kit.price(item, basis) for item in items]
    columns = [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]
    columns.append(Column("valid", kit.head("valid"), [day.strftime(shape) for day in days]))
    for row, item, price, day in zip(place(sheet, top, 0, columns).rows, items, prices, days, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, valid=day))


@family("date_cells", SHEETS)
def date_cells(kit: Kit) -> None:
    """Validity as true dates, in some files counted from 1904."""
    sheet = kit.plan.sheet("Offer")
    kit.plan.date1904 = kit.chance(0.5)
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0, say="ld") + 1
    items = kit.range(3)
    shape = kit.pick(("dd/mm/yyyy", "mm/dd/yyyy", "yyyy-mm-dd", "d mmm yyyy", "dd.mm.yy"))
    days = [date(2026, kit.rng.randint(5, 12), kit.rng.randint(1, 28)) for _ in items]
    prices = [kit.price(item, basis) for item in items]
    columns = [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]
    columns.append(Column("valid", kit.head("valid"), [CellPlan(day, fmt=shape) for day in days]))
    for row, item, price, day in zip(place(sheet, top, 0, columns).rows, items, prices, days, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, valid=day))
