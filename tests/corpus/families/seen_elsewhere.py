"""Shapes that sheets written by hand for review showed: counted truckloads, price adjustments, years, mails."""

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
    weight_column,
    weight_text,
)
from tests.corpus.families.bases import price_words, sheeted
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import LB


def _sized(kit: Kit, items: list[Board]) -> list[Column]:
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


def _basis(kit: Kit) -> str:
    return kit.pick(("short_ton", "cwt")) if kit.us else "tonne"


@family("counted_truckloads", ALL, ("en-us",))
def counted_truckloads(kit: Kit) -> None:
    """'1 T/L', '2-4 T/L', '5+ T/L' with a truckload put in pounds by a legend; asking is right too."""
    sheet = kit.plan.sheet("Tariff")
    top = kit.title_block(sheet, 0, 0, "short_ton", say="vdl") + 1
    items = kit.range(2)
    load = 40000 * LB
    bounds = ((load, 2 * load), (2 * load, 5 * load), (5 * load, None))
    columns = _sized(kit, items)
    prices = [[kit.price(item, "short_ton", factor=1.04 - 0.02 * step) for item in items] for step in range(3)]
    columns += [
        price_column(kit, amounts, head, head)
        for amounts, head in zip(prices, ("1 T/L", "2-4 T/L", "5+ T/L"), strict=True)
    ]
    placed = place(sheet, top, 0, columns)
    sheet.put(placed.below + 1, 0, "T/L = truckload = 40,000 lb")
    for index, (row, item) in enumerate(zip(placed.rows, items, strict=True)):
        for step, (low, below) in enumerate(bounds):
            kit.plan.either(
                sheet, row, 3 + step, kit.intent(item, prices[step][index], "short_ton", from_kg=low, below_kg=below)
            )


CURRENT_NEW = {
    "en": ("Current price", "Increase", "New price"),
    "de": ("Aktueller Preis", "Erhöhung", "Neuer Preis"),
    "fr": ("Prix actuel", "Hausse", "Nouveau prix"),
    "es": ("Precio actual", "Subida", "Precio nuevo"),
    "sv": ("Nuvarande pris", "Höjning", "Nytt pris"),
}


@family("price_adjustment", ALL)
def price_adjustment(kit: Kit) -> None:
    """Current price, increase, new price: the new one is the offer."""
    sheet = kit.plan.sheet("Adjustment")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    items = kit.range(3)
    new = [kit.price(item, basis) for item in items]
    step = 50 * (10 if kit.currency == "SEK" else 1)
    heads = CURRENT_NEW[kit.lang.code]
    columns = [*_sized(kit, items), price_column(kit, [price - step for price in new], heads[0], "old")]
    columns += [price_column(kit, [Decimal(step)] * len(items), heads[1], "step"), price_column(kit, new, heads[2])]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, new, strict=True):
        kit.plan.accept(sheet, row, 5, kit.intent(item, price, basis))


@family("years_across", ALL)
def years_across(kit: Kit) -> None:
    """Last years' prices as columns headed by the year, this year's last."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    items = kit.range(3)
    now = [kit.price(item, basis) for item in items]
    word = {"en": "Price {}", "de": "Preis {}", "fr": "Prix {}", "es": "Precio {}", "sv": "Pris {}"}[kit.lang.code]
    columns = _sized(kit, items)
    for year, share in ((2024, "0.92"), (2025, "0.96")):
        columns.append(
            price_column(
                kit, [(price * Decimal(share)).quantize(Decimal(1)) for price in now], word.format(year), str(year)
            )
        )
    columns.append(price_column(kit, now, word.format(2026)))
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, now, strict=True):
        kit.plan.either(sheet, row, 5, kit.intent(item, price, basis))


WEEK = {
    "en": ("week {}", "wk {}"),
    "de": ("KW {}", "KW{}"),
    "fr": ("semaine {}", "S{}"),
    "es": ("semana {}",),
    "sv": ("vecka {}", "v. {}"),
}


@family("week_numbers", ALL)
def week_numbers(kit: Kit) -> None:
    """'week 24' is a week of the calendar, no duration."""
    sheet = kit.plan.sheet("Offer")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0, say="vd") + 1
    items = kit.range(2)
    prices = [kit.price(item, basis) for item in items]
    form = kit.pick(WEEK[kit.lang.code])
    columns = [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]
    columns.append(
        Column("lead", kit.pick(kit.lang.headers["lead"]), [form.format(kit.rng.randint(20, 40)) for _ in items])
    )
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis), ("lead-time-unread",))


@family("m_weight_column", ALL, ("en-us",))
def m_weight_column(kit: Kit) -> None:
    """Pounds per 1,000 sheets stand beside the basis weight."""
    sheet = kit.plan.sheet("Sheets")
    row = kit.title_block(sheet, 0, 0) + 1
    sheet.row(row, 0, ["Board", kit.caliper_head(), "lb/MSF", "Size", "M wt (lb)", "Price $/CWT"], bold=True)
    for plain in kit.range(3):
        row += 1
        size, item = sheeted(kit, plain, "in")
        area = item.sheet[0] * item.sheet[1] / 144
        amount = kit.price(item, "cwt")
        sheet.row(row, 0, [item.words, item.caliper, item.weight, size, (item.weight * area).quantize(Decimal("0.1"))])
        sheet.cells[row, 5] = money_cell(kit, amount)
        line = kit.plan.accept(sheet, row, 5, kit.intent(item, amount, "cwt"))
        line["sheet_mm"] = {"any_of": [line["sheet_mm"], None]}


@family("two_prices_in_a_cell", ALL)
def two_prices_in_a_cell(kit: Kit) -> None:
    """'1190 / 1260' in one cell: which one is asked."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(2)
    columns = _sized(kit, items)
    prices = [kit.price(item, basis) for item in items]
    columns.append(Column("price", kit.price_head(basis), [f"{price} / {price + 70}" for price in prices]))
    for row in place(sheet, top, 0, columns).rows:
        kit.plan.ask(sheet, row, 3, "number-ambiguous")


@family("mail_pasted", SHEETS, ("en-us", "en"))
def mail_pasted(kit: Kit) -> None:
    """A mail in column A: greeting, an offer a line, signature."""
    sheet = kit.plan.sheet("Sheet1")
    kit.facts.vendor = kit.plan.vendor = kit.vendor
    for row, line in enumerate(
        (f"From: {kit.vendor}", "Subject: board prices", "", "Hello, please find our prices below.", "")
    ):
        if line:
            sheet.put(row, 0, line)
    row = 5
    for item in kit.range(2):
        basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
        amount = kit.price(item, basis)
        board = f"{item.words} {caliper_text(kit, item)} {weight_text(kit, item)}"
        sheet.put(row, 0, f"{board}, {price_words(kit, amount, basis, kit.currency)}")
        kit.plan.accept(sheet, row, 0, kit.intent(item, amount, basis))
        row += 1
    sheet.put(row + 1, 0, "Best regards")
    sheet.put(row + 2, 0, "Sales desk, tel. 555 0188")


@family("zone_table_beside", SHEETS)
def zone_table_beside(kit: Kit) -> None:
    """A freight table by zone right of the price list."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    top = kit.title_block(sheet, 0, 0, basis, say="vl") + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.head("price"))])
    zone, freight = {
        "en": ("Zone", "Freight"),
        "de": ("Zone", "Fracht"),
        "fr": ("Zone", "Transport"),
        "es": ("Zona", "Portes"),
        "sv": ("Zon", "Frakt"),
    }[kit.lang.code]
    sheet.row(top, 6, [zone, f"{freight} {kit.currency}/{'cwt' if kit.us else 't'}"], bold=True)
    for step in range(4):
        sheet.row(top + 1 + step, 6, [f"{zone} {step + 1}", Decimal(kit.rng.randint(20, 60))])
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        line = kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))
        for name in ("charges", "delivered_per_tonne", "delivered_per_msf", "delivered"):
            line.pop(name, None)
