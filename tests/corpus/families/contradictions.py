"""Sheets that contradict themselves or say too little: nothing here may be accepted as if it were certain."""

from decimal import Decimal

from tests.corpus.boards import Board
from tests.corpus.columns import Column, caliper_column, money_cell, place, price_column, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import AnyOf


def _sized(kit: Kit, items: list[Board]) -> list[Column]:
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


def _basis(kit: Kit) -> str:
    return "short_ton" if kit.us else "tonne"


OTHER_CURRENCY = {
    "en": "All prices in {}.",
    "de": "Alle Preise in {}.",
    "fr": "Tous les prix en {}.",
    "es": "Todos los precios en {}.",
    "sv": "Alla priser i {}.",
}


@family("currency_contradicted", ALL)
def currency_contradicted(kit: Kit) -> None:
    """The header names one currency, a sentence another."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0, say="vl")
    basis = _basis(kit)
    other = "CAD" if kit.currency == "USD" else "USD"
    sheet.put(top, 0, OTHER_CURRENCY[kit.lang.code].format(other))
    items = kit.range(2)
    prices = [kit.price(item, basis) for item in items]
    head = f"{kit.head('price')} {kit.currency}/{kit.per(basis)}"
    for row in place(sheet, top + 2, 0, [*_sized(kit, items), price_column(kit, prices, head)]).rows:
        kit.plan.ask(sheet, row, 3, AnyOf(("currency-unknown", "prices-disagree")))


@family("basis_contradicted", ALL, ("en-us", "en"))
def basis_contradicted(kit: Kit) -> None:
    """The header says one ton, a sentence the other."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0, say="vl")
    sheet.put(top, 0, "All prices per metric ton." if kit.us else "All prices per short ton of 2,000 lb.")
    items = kit.range(2)
    basis = _basis(kit)
    prices = [kit.price(item, basis) for item in items]
    head = f"{kit.head('price')} {kit.currency}/{'short ton' if kit.us else 'tonne'}"
    for row in place(sheet, top + 2, 0, [*_sized(kit, items), price_column(kit, prices, head)]).rows:
        kit.plan.ask(sheet, row, 3, AnyOf(("basis-unknown", "prices-disagree")))


@family("capital_t_beside_pounds", ALL, ("en-us",))
def capital_t_beside_pounds(kit: Kit) -> None:
    """'T' in a file of points and pounds throughout: a short ton by its units, or asked; never a tonne."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0, say="v") + 1
    items = kit.range(2)
    prices = [kit.price(item, "short_ton") for item in items]
    head = kit.pick(("Price USD/T", "USD/T", "$/T"))
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, head)])
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.either(sheet, row, 3, kit.intent(item, price, "short_ton"))


@family("mistyped_numbers", SHEETS)
def mistyped_numbers(kit: Kit) -> None:
    """A letter O for a zero, two separators in a row, a stray point: no number to rely on."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index % 3 != 1:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))
            continue
        whole = str(price)
        sheet.put(
            row,
            3,
            kit.pick(
                (f"{whole[:-1]}O", f"{whole[0]},,{whole[1:]}", f"{whole}.5.0", f"{whole[:-2]}x{whole[-1]}", f"{whole}?")
            ),
        )
        kit.plan.ask(sheet, row, 3, AnyOf(("number-ambiguous", "price-not-positive", "error-cell")), state="question")


@family("slash_m_without_size", SHEETS, ("en-us",))
def slash_m_without_size(kit: Kit) -> None:
    """'/M' and no sheet size anywhere."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(2)
    prices = [kit.price(item, "msf", factor=7) for item in items]
    for row in place(
        sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.pick(("Price $/M", "USD/M")))]
    ).rows:
        kit.plan.ask(sheet, row, 3, "basis-unknown")


@family("sheets_without_size", SHEETS)
def sheets_without_size(kit: Kit) -> None:
    """Per 1,000 sheets with no size said: the price stands, nothing can be compared; asking is right too."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(2)
    prices = [kit.price(item, "msf" if kit.us else "1000m2", factor=0.7) for item in items]
    head = kit.price_head("1000sheets")
    for row, item, price in zip(
        place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, head)]).rows, items, prices, strict=True
    ):
        kit.plan.either(sheet, row, 3, kit.intent(item, price, "1000sheets"))


@family("weight_in_the_wrong_unit", ALL)
def weight_in_the_wrong_unit(kit: Kit) -> None:
    """g/m² under a header in lb/MSF, or the other way round: a density no board has."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(2)
    prices = [kit.price(item, basis) for item in items]
    columns = [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]
    columns[2].cells = [
        Decimal(round(float(item.gsm))) if kit.us else Decimal(round(float(item.gsm) / 4.88)) for item in items
    ]
    for row in place(sheet, top, 0, columns).rows:
        kit.plan.ask(sheet, row, 3, AnyOf(("weight-implausible", "weight-basis-unknown", "caliper-unknown")))


NAMELESS = {
    "en": ("C1S board", "Coated board", "White board C2S", "Premium carton board", "Liner"),
    "de": ("Karton gestrichen", "weißer Karton C1S", "Karton Premium"),
    "fr": ("carton couché", "carton blanc C1S", "carton premium"),
    "es": ("cartón estucado", "cartón blanco C1S", "cartón premium"),
    "sv": ("bestruken kartong", "vit kartong C1S", "kartong premium"),
}


@family("grade_unsaid", ALL)
def grade_unsaid(kit: Kit) -> None:
    """Words that name no grade, under a letterhead that names none either."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    sheet.put(0, 0, kit.vendor)
    sheet.put(1, 0, kit.address)
    kit.facts.vendor = kit.plan.vendor = kit.vendor
    top = 3
    items = [
        item for grade in kit.grades(3) for item in kit.series(grade, 2, (kit.pick(NAMELESS[kit.lang.code]), None))
    ]
    prices = [kit.price(item, basis) for item in items]
    for row in place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]).rows:
        kit.plan.ask(sheet, row, 3, "grade-unknown")


@family("board_named_twice", ALL, ("en-us", "en"))
def board_named_twice(kit: Kit) -> None:
    """A grade column and a description that name different grades."""
    sheet = kit.plan.sheet("Prices")
    basis = _basis(kit)
    top = kit.title_block(sheet, 0, 0) + 1
    row = top
    sheet.row(top, 0, ["Grade", "Description", kit.caliper_head(), kit.weight_head(), kit.price_head(basis)], bold=True)
    for index, item in enumerate([*kit.series("SBS", 3, ("SBS C1S", 1)), *kit.series("CRB", 3, ("CRB C1S", 1))]):
        row += 1
        amount = kit.price(item, basis)
        code = item.grade if index != 4 else "SBS"
        sheet.row(row, 0, [code, item.words, item.caliper, item.weight])
        sheet.cells[row, 4] = money_cell(kit, amount)
        if index == 4:
            kit.plan.ask(sheet, row, 4, AnyOf(("grade-unknown", "prices-disagree")))
        else:
            kit.plan.accept(sheet, row, 4, kit.intent(item, amount, basis))
