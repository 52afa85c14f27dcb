"""Rows, columns and sheets that a person does not see are read, with a note."""

from tests.corpus.columns import caliper_column, place, price_column, product_column, simple_table, weight_column
from tests.corpus.kit import Kit
from tests.corpus.registry import SHEETS, family


@family("hidden_rows", SHEETS)
def hidden_rows(kit: Kit) -> None:
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    placed = place(sheet, top, 0, columns)
    hidden = set(kit.rng.sample(placed.rows, 2))
    sheet.hidden_rows |= hidden
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis), ("hidden",) if row in hidden else ())


@family("hidden_bracket_column", SHEETS)
def hidden_bracket_column(kit: Kit) -> None:
    """The column of the largest order is hidden."""
    sheet = kit.plan.sheet("Prices")
    basis, unit, edge = ("short_ton", "lb", 20000) if kit.us else ("tonne", "t", 10)
    top = kit.title_block(sheet, 0, 0, basis) + 1
    items = kit.range(3)
    split = edge * kit.mass_unit(unit)
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    small = [kit.price(item, basis, factor=1.04) for item in items]
    large = [kit.price(item, basis) for item in items]
    columns += [price_column(kit, small, f"< {edge} {unit}"), price_column(kit, large, f"> {edge} {unit}", "large")]
    placed = place(sheet, top, 0, columns)
    sheet.hidden_columns.add(4)
    for row, item, first, second in zip(placed.rows, items, small, large, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, first, basis, below_kg=split))
        kit.plan.accept(sheet, row, 4, kit.intent(item, second, basis, from_kg=split), ("hidden",))


@family("hidden_sheet", SHEETS)
def hidden_sheet(kit: Kit) -> None:
    """A second price sheet is hidden."""
    shown = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(shown, 0, 0) + 1
    first, second, third = (kit.series(grade, 3) for grade in kit.grades(3))
    simple_table(kit, shown, top, 0, [*first, *second], basis, extras=False)
    hidden = kit.plan.sheet("Specials")
    hidden.hidden = True
    simple_table(kit, hidden, 0, 0, third, basis, extras=False, notes=("hidden",))
    _unsaid_terms(kit, hidden.name)


def _unsaid_terms(kit: Kit, sheet: str) -> None:
    """Whether the first sheet's terms reach another sheet is open: both are right."""
    for line in kit.plan.lines:
        if line["sheet"] != sheet:
            continue
        for name in ("vendor", "lead_days", "valid_until", "delivered", "minimum_kg"):
            if line.get(name) is not None:
                line[name] = {"any_of": [line[name], None]}
        for name in ("delivered_per_tonne", "delivered_per_msf"):
            if line.get(name) is not None:
                line[name] = {"any_of": [line[name], None]}
