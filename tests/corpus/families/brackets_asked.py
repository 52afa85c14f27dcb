"""Order sizes that can or can't be put in weight, and brackets crossed with sizes."""

from decimal import Decimal
from fractions import Fraction

from tests.corpus.columns import Column, caliper_column, money_cell, place, price_column, product_column, weight_column
from tests.corpus.families.brackets import weight_brackets
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import LB, AnyOf

LOOSE = {
    "en-us": (("Less than truckload", "Full truckload"), ("1-4 rolls", "5+ rolls"), ("1-2 skids", "3+ skids")),
    "en": (("part load", "full load"), ("1-3 pallets", "4+ pallets"), ("1-4 reels", "5+ reels")),
    "de": (("1-3 Paletten", "ab 4 Paletten"), ("Teilladung", "Komplettladung"), ("1-4 Rollen", "ab 5 Rollen")),
    "fr": (("1-3 palettes", "4 palettes et plus"), ("camion partiel", "camion complet")),
    "es": (("1-3 palés", "desde 4 palés"), ("camión parcial", "camión completo")),
    "sv": (("1-3 pallar", "från 4 pallar"), ("dellast", "hel bil")),
}


def _boards(kit: Kit, items):
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


@family("loose_brackets", ALL)
def loose_brackets(kit: Kit) -> None:
    """Truckloads, pallets and rolls that nothing puts in weight: asked."""
    sheet = kit.plan.sheet("Tariff")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    items = kit.range(3)
    pair = kit.pick(LOOSE["en-us" if kit.us else kit.lang.code])
    columns = _boards(kit, items)
    for name, factor in zip(pair, (1.05, 1.0), strict=True):
        columns.append(price_column(kit, [kit.price(item, basis, factor=factor) for item in items], name, name))
    for row in place(sheet, top, 0, columns).rows:
        kit.plan.ask(sheet, row, 3, "bracket-unread")
        kit.plan.ask(sheet, row, 4, "bracket-unread")


@family("truckload_defined", ALL, ("en-us",))
def truckload_defined(kit: Kit) -> None:
    """A truckload that a note puts in pounds."""
    sheet = kit.plan.sheet("Tariff")
    top = kit.title_block(sheet, 0, 0, "short_ton", say="vdl") + 1
    items = kit.range(3)
    columns = _boards(kit, items)
    less = [kit.price(item, "short_ton", factor=1.05) for item in items]
    full = [kit.price(item, "short_ton") for item in items]
    columns += [price_column(kit, less, "Less than truckload (LTL)"), price_column(kit, full, "Truckload (TL)", "full")]
    placed = place(sheet, top, 0, columns)
    sheet.put(
        placed.below + 1,
        0,
        kit.pick(("Truckload = 40,000 lb minimum.", "TL: 40,000 lb or more; LTL: under 40,000 lb.")),
    )
    for row, item, first, second in zip(placed.rows, items, less, full, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, first, "short_ton", below_kg=40000 * LB))
        kit.plan.accept(sheet, row, 4, kit.intent(item, second, "short_ton", from_kg=40000 * LB))


@family("single_quantity", ALL)
def single_quantity(kit: Kit) -> None:
    """A price for one stated quantity."""
    sheet = kit.plan.sheet("Offer")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, say="vdl") + 1
    items = kit.range(2)
    amounts = [kit.pick((20000, 40000)) if kit.us else kit.pick((5, 10, 20)) for _ in items]
    shown = [f"{amount:,} lb" if kit.us else f"{amount} t" for amount in amounts]
    prices = [kit.price(item, basis) for item in items]
    columns = [
        *_boards(kit, items),
        Column(
            "quantity",
            kit.pick(
                {"en": ("Quantity",), "de": ("Menge",), "fr": ("Quantité",), "es": ("Cantidad",), "sv": ("Kvantitet",)}[
                    kit.lang.code
                ]
            ),
            shown,
        ),
    ]
    columns.append(price_column(kit, prices, kit.price_head(basis)))
    for row, item, price, amount in zip(place(sheet, top, 0, columns).rows, items, prices, amounts, strict=True):
        kg = Fraction(amount) * (LB if kit.us else 1000)
        kit.plan.accept(sheet, row, 4, kit.intent(item, price, basis, from_kg=AnyOf((kg, None))))


@family("bracket_grid", SHEETS)
def bracket_grid(kit: Kit) -> None:
    """Brackets down, calipers across, the grade in a heading above each block."""
    sheet = kit.plan.sheet("Tariff")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    row = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    _, brackets = weight_brackets(kit)
    calipers = [Decimal(n) for n in ((14, 18, 24) if kit.us else (380, 450, 560))]
    for grade in kit.grades(2):
        words = kit.pick(kit.lang.boards[grade])
        sheet.put(row, 0, words[0], bold=True)
        sheet.put(row + 1, 0, kit.head("quantity"))
        sheet.row(row + 1, 1, [f"{caliper} {'pt' if kit.us else 'µm'}" for caliper in calipers])
        row += 2
        for step, (name, low, below) in enumerate(brackets):
            sheet.put(row, 0, name)
            for offset, caliper in enumerate(calipers):
                item = kit.series(grade, 1, words)[0]
                item.caliper, item.weight = caliper, None
                amount = kit.price(item, basis, factor=1.06 - 0.03 * step - 0.01 * offset)
                sheet.cells[row, 1 + offset] = money_cell(kit, amount)
                kit.plan.accept(sheet, row, 1 + offset, kit.intent(item, amount, basis, from_kg=low, below_kg=below))
            row += 1
        row += 1


@family("from_to_columns", ALL)
def from_to_columns(kit: Kit) -> None:
    """Bracket bounds in two number columns with their unit in the header."""
    sheet = kit.plan.sheet("Tariff")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, say="vdl") + 1
    unit, edges = ("lb", (0, 10000, 40000)) if kit.us else ("t", (0, 5, 20))
    low_word, high_word = {
        "en": ("From", "To below"),
        "de": ("von", "bis unter"),
        "fr": ("de", "à moins de"),
        "es": ("desde", "hasta menos de"),
        "sv": ("från", "till under"),
    }[kit.lang.code]
    sheet.row(
        top,
        0,
        [
            kit.head("product"),
            kit.caliper_head(),
            kit.weight_head(),
            f"{low_word} ({unit})",
            f"{high_word} ({unit})",
            kit.price_head(basis),
        ],
        bold=True,
    )
    row = top + 1
    for item in kit.range(2, 2, 2):
        for step, edge in enumerate(edges):
            below = edges[step + 1] if step + 1 < len(edges) else None
            amount = kit.price(item, basis, factor=1.06 - 0.03 * step)
            sheet.row(row, 0, [item.words, item.caliper, item.weight, edge, below, amount])
            weigh = kit.mass_unit(unit)
            low = Fraction(edge) * weigh if edge else AnyOf((None, Fraction(0)))
            kit.plan.accept(
                sheet,
                row,
                5,
                kit.intent(item, amount, basis, from_kg=low, below_kg=None if below is None else below * weigh),
            )
            row += 1
