"""Plain lists: one table, one price a row, with or without a letterhead, anywhere on the sheet."""

from tests.corpus.columns import simple_table
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family


@family("plain_list", ALL)
def plain_list(kit: Kit) -> None:
    sheet = kit.plan.sheet("Sheet1")
    simple_table(kit, sheet, 0, 0, kit.range(kit.rng.randint(3, 4)), kit.natural_basis())


@family("plain_anywhere", SHEETS)
def plain_anywhere(kit: Kit) -> None:
    """The table starts somewhere inside the sheet."""
    sheet = kit.plan.sheet(kit.pick(("Sheet1", "Prices", "Tabelle1", "Feuil1", "2026 Q2")))
    simple_table(kit, sheet, kit.rng.randint(2, 14), kit.rng.randint(1, 9), kit.range(3), kit.natural_basis())


@family("title_block", ALL)
def title_block(kit: Kit) -> None:
    """Letterhead and terms above; the price's header says only 'price'."""
    sheet = kit.plan.sheet(kit.pick(("Price List", "List", "Offer")))
    basis = kit.natural_basis()
    row = kit.title_block(sheet, 0, 0, basis) + kit.rng.randint(1, 2)
    placed = simple_table(kit, sheet, row, 0, kit.range(3), basis, head=kit.head("price"))
    kit.footer(sheet, placed.below + 1, 0)


@family("terms_below", ALL)
def terms_below(kit: Kit) -> None:
    """Vendor on top, terms in footnotes under the table."""
    sheet = kit.plan.sheet("Quote")
    sheet.put(0, 0, kit.vendor)
    sheet.put(1, 0, kit.pick(kit.lang.title).format(n=7))
    kit.facts.vendor = kit.plan.vendor = kit.vendor
    lines = kit.terms("vdlm", share=0.9)
    basis = kit.natural_basis()
    placed = simple_table(kit, sheet, 3, 0, kit.range(2), basis)
    for offset, line in enumerate([*lines, kit.pick(kit.lang.noise)]):
        sheet.put(placed.below + 1 + offset, 0, kit.pick(("* ", "", f"{offset + 1}) ")) + line)


@family("written_once", ALL)
def written_once(kit: Kit) -> None:
    """The grade is written on the first row of its group only."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    row = kit.title_block(sheet, 0, 0, basis) + 1
    simple_table(kit, sheet, row, 0, kit.range(3, 2, 4), basis, once=True)


@family("merged_grade", SHEETS)
def merged_grade(kit: Kit) -> None:
    """The grade's cell is merged over its rows."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    row = kit.title_block(sheet, 1, 1, basis) + 1
    simple_table(kit, sheet, row, 1, kit.range(3, 2, 4), basis, once=True, merged=True)


@family("gaps_between_grades", ALL)
def gaps_between_grades(kit: Kit) -> None:
    """Empty rows between groups of one table."""
    sheet = kit.plan.sheet("Tarif")
    items = kit.range(3, 2, 4)
    starts = {index for index in range(1, len(items)) if items[index].words != items[index - 1].words}
    row = kit.title_block(sheet, 0, 0) + 1
    simple_table(kit, sheet, row, 0, items, kit.natural_basis(), gaps=starts)
