"""What a row says of its own price: in its remarks, in a freight column's words, in an order size's name."""

from decimal import Decimal
from fractions import Fraction

from tests.corpus.columns import Column, caliper_column, money_cell, place, price_column, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import Charge

AT_THE_MILL = {"en": "ex works", "de": "ab Werk", "fr": "départ usine", "es": "EXW", "sv": "fritt fabrik"}
FREIGHT_INCLUDED = {"de": ("inkl.", "frei"), "sv": ("ingår", "fritt"), "en": ("prepaid", "Prepaid")}
NAMED_SIZES = {
    "de": ("Kleinmenge", "Normalmenge", "Großmenge", "{0} bis {1}"),
    "en": ("Small order", "Standard order", "Bulk order", "{0} to {1}"),
    "sv": ("Småorder", "Volym", "Storparti", "{0} till {1}"),
}


def _boards(kit: Kit, items) -> list[Column]:
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


@family("delivery_in_remarks", ALL)
def delivery_in_remarks(kit: Kit) -> None:
    """Some rows' remarks say how those rows' boards are delivered, where the sheet says it of none."""
    sheet, lang, basis = kit.plan.sheet("List"), kit.lang.code, "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    remarks = [kit.pick((None, AT_THE_MILL[lang], "FSC Mix")) for _ in items]
    columns = [*_boards(kit, items), price_column(kit, prices, f"{kit.currency}/{kit.per(basis)}")]
    columns.append(Column("remarks", kit.head("remarks"), remarks))
    placed = place(sheet, top, 0, columns)
    for row, item, price, remark in zip(placed.rows, items, prices, remarks, strict=True):
        at_the_mill = False if remark == AT_THE_MILL[lang] else None
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, delivered=at_the_mill))


@family("freight_in_words_or_figures", ALL, ("en", "de", "sv"))
def freight_in_words_or_figures(kit: Kit) -> None:
    """A freight column with an amount in one row alone and 'included' in the others."""
    sheet, basis = kit.plan.sheet("List"), "tonne"
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    charged = kit.rng.randrange(len(items))
    amount = Decimal(kit.rng.randint(25, 60)) * (10 if kit.currency == "SEK" else 1)
    freights = [kit.pick(FREIGHT_INCLUDED[kit.lang.code]) for _ in items]
    freights[charged] = money_cell(kit, amount)
    columns = [*_boards(kit, items), price_column(kit, prices, f"{kit.currency}/{kit.per(basis)}")]
    columns.append(Column("freight", kit.head("freight"), freights))
    placed = place(sheet, top, 0, columns)
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        own = [Charge("Freight", amount, kit.currency, basis, freight=True)] if index == charged else []
        delivered = None if own else True
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, delivered=delivered, charges=own))


@family("order_sizes_with_names", SHEETS, ("en", "de", "sv"))
def order_sizes_with_names(kit: Kit) -> None:
    """'Kleinmenge (< 1 t)': each order size has a name, and its weight in brackets behind it."""
    sheet, basis = kit.plan.sheet("Tariff"), "tonne"
    top = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    items = kit.range(3)
    low, high = kit.pick(((1, 5), (2, 10), (5, 20)))
    small, usual, large, span = NAMED_SIZES[kit.lang.code]
    heads = [f"{small} (< {low} t)", f"{usual} ({span.format(low, high)} t)", f"{large} (> {high} t)"]
    first, second = (Fraction(1000 * edge) for edge in (low, high))
    bounds = ((None, first), (first, second), (second, None))
    amounts = [[kit.price(item, basis, factor=1.06 - 0.03 * step) for item in items] for step in range(3)]
    columns = [price_column(kit, amount, head, head) for amount, head in zip(amounts, heads, strict=True)]
    placed = place(sheet, top, 0, [*_boards(kit, items), *columns])
    for step, (from_kg, below_kg) in enumerate(bounds):
        for row, item, amount in zip(placed.rows, items, amounts[step], strict=True):
            kit.plan.accept(sheet, row, 3 + step, kit.intent(item, amount, basis, from_kg=from_kg, below_kg=below_kg))
