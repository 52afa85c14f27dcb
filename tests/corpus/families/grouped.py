"""Grades said outside the row: sub-headings, a sheet a grade, tables beside and under each other."""

from tests.corpus.columns import groups, simple_table
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family


@family("sub_headings", ALL)
def sub_headings(kit: Kit) -> None:
    """One header, then a line with the grade's name above each group."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    row = kit.title_block(sheet, 0, 0, basis) + 1
    _one_header_many_groups(kit, sheet, row, basis)


def _one_header_many_groups(kit: Kit, sheet, row: int, basis: str) -> None:
    items = kit.range(3, 2, 4)
    prices = [kit.price(item, basis) for item in items]
    heads = [kit.caliper_head(), kit.weight_head(), kit.price_head(basis)]
    sheet.row(row, 0, heads, bold=True)
    row += 1
    at = 0
    for group in groups(items):
        sheet.put(row, 0, group[0].words, bold=True)
        row += 1
        for item in group:
            sheet.row(row, 0, [item.caliper, item.weight])
            amount = prices[at]
            sheet.put(row, 2, amount, places=max(0, -amount.as_tuple().exponent) or None)
            kit.plan.accept(sheet, row, 2, kit.intent(item, amount, basis))
            row, at = row + 1, at + 1


@family("stacked_tables", ALL)
def stacked_tables(kit: Kit) -> None:
    """A table a grade, each under a heading with the grade, each with its own header and its own basis."""
    sheet = kit.plan.sheet("Offer")
    row = kit.title_block(sheet, 0, 0) + 1
    for grade in kit.grades(3):
        items = kit.series(grade, kit.rng.randint(2, 4))
        sheet.put(row, 0, items[0].words, bold=True)
        basis = kit.natural_basis()
        placed = simple_table(kit, sheet, row + 1, 0, items, basis, product=False, extras=False)
        row = placed.below + kit.rng.randint(1, 2)


@family("side_by_side", SHEETS)
def side_by_side(kit: Kit) -> None:
    """Two or three tables beside each other, each with its own basis."""
    sheet = kit.plan.sheet("Offer")
    row = kit.title_block(sheet, 0, 0) + 2
    left = 0
    for grade in kit.grades(kit.rng.randint(2, 3)):
        items = kit.series(grade, kit.rng.randint(2, 4))
        placed = simple_table(kit, sheet, row, left, items, kit.natural_basis(), extras=False)
        left = max(placed.columns.values()) + 2


@family("side_by_side_headed", SHEETS)
def side_by_side_headed(kit: Kit) -> None:
    """Tables beside each other, the grade only in a merged heading over each."""
    sheet = kit.plan.sheet("Offer")
    row = kit.title_block(sheet, 0, 0) + 2
    left = 0
    for grade in kit.grades(2):
        items = kit.series(grade, 3)
        sheet.put(row, left, items[0].words, bold=True)
        placed = simple_table(kit, sheet, row + 1, left, items, kit.natural_basis(), product=False, extras=False)
        last = max(placed.columns.values())
        sheet.merge(row, left, row, last)
        left = last + 2


@family("sheet_per_grade", SHEETS)
def sheet_per_grade(kit: Kit) -> None:
    """Terms on a sheet of their own, then one sheet a grade; the grade only in the sheet's name."""
    terms = kit.plan.sheet("Terms")
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    kit.title_block(terms, 0, 0, basis)
    for grade in kit.grades(3):
        short = [words for words in kit.lang.boards[grade] if len(words[0]) <= 31]
        items = kit.series(grade, kit.rng.randint(2, 4), kit.pick(short))
        name = "".join(letter for letter in items[0].words if letter not in "[]:*?/\\")[:31].strip()
        if name in {sheet.name for sheet in kit.plan.sheets}:
            continue
        simple_table(
            kit,
            kit.plan.sheet(name),
            0,
            0,
            items,
            basis,
            head=kit.head("price"),
            product=False,
            extras=False,
            textual=False,
        )
