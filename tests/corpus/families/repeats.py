"""Rows that repeat or contradict each other, and files with more than one vendor."""

from tests.corpus.columns import (
    Column,
    caliper_column,
    place,
    price_column,
    product_column,
    simple_table,
    weight_column,
)
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.vendors import VENDORS


@family("duplicate_rows", ALL)
def duplicate_rows(kit: Kit) -> None:
    """A row stands twice, the same in every field: given once."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(2, 3, 3)
    items.insert(4, items[1])
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    placed = place(sheet, top, 0, columns)
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index == 4:
            continue
        line = kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))
        if index == 1:
            line["or"] = [{"cell": f"D{placed.rows[4] + 1}"}]


@family("contradicting_rows", ALL)
def contradicting_rows(kit: Kit) -> None:
    """The same board twice at prices 4 % apart: both asked."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(2, 3, 3)
    items.append(items[0])
    prices = [kit.price(item, basis) for item in items]
    prices[-1] += 50
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    placed = place(sheet, top, 0, columns)
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index not in (0, len(items) - 1):
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))
            continue
        line = kit.plan.ask(sheet, row, 3, "prices-disagree")
        if index:
            line["optional"] = True


@family("two_vendors_column", ALL)
def two_vendors_column(kit: Kit) -> None:
    """A merchant's round-up: the vendor stands in each row."""
    sheet = kit.plan.sheet("Quotes")
    basis = "short_ton" if kit.us else "tonne"
    names = kit.rng.sample([name for name, _ in (VENDORS["US"] if kit.us else VENDORS["GB"] + VENDORS["DE"])], 2)
    items = kit.range(3)
    who = [kit.pick(names) for _ in items]
    prices = [kit.price(item, basis) for item in items]
    columns = [
        Column("vendor", kit.head("vendor"), list(who)),
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
    ]
    columns.append(price_column(kit, prices, kit.price_head(basis)))
    kit.plan.vendor = {"any_of": [None, *names]}
    for row, item, price, name in zip(place(sheet, 0, 0, columns).rows, items, prices, who, strict=True):
        kit.plan.accept(sheet, row, 4, kit.intent(item, price, basis, vendor=name))


@family("two_vendors_sheets", SHEETS)
def two_vendors_sheets(kit: Kit) -> None:
    """Two letterheads in one file, a sheet each."""
    names = kit.rng.sample(VENDORS["US" if kit.us else "DE" if kit.lang.code == "de" else "GB"], 2)
    for index, (name, address) in enumerate(names):
        kit.vendor, kit.address = name, address
        kit.facts.valid = kit.facts.lead = kit.facts.delivered = kit.facts.minimum_kg = None
        sheet = kit.plan.sheet(f"Offer {index + 1}")
        top = kit.title_block(sheet, 0, 0) + 1
        simple_table(kit, sheet, top, 0, kit.range(2), kit.natural_basis(), extras=False)
    kit.plan.vendor = {"any_of": [None, *(name for name, _ in names)]}
