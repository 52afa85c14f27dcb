"""More ways of writing order sizes: unit in the heading, inclusive bounds, loads with weights, sheets."""

from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

from tests.corpus.columns import FORMATS, caliper_column, money_cell, place, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family

HEADING = {
    "en": "Price {unit}, order size in {mass}",
    "de": "Preis {unit} bei Abnahme in {mass}",
    "fr": "Prix {unit}, quantité en {mass}",
    "es": "Precio {unit}, cantidad en {mass}",
    "sv": "Pris {unit}, orderkvantitet i {mass}",
}


def _boards(kit: Kit, items):
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


def _grid(kit: Kit, sheet, rows: list[int], items, bounds, basis: str) -> None:
    for row, item in zip(rows, items, strict=True):
        for offset, (low, below) in enumerate(bounds):
            amount = kit.price(item, basis, factor=1.06 - 0.03 * offset)
            sheet.cells[row, 3 + offset] = money_cell(kit, amount)
            kit.plan.accept(sheet, row, 3 + offset, kit.intent(item, amount, basis, from_kg=low, below_kg=below))


@family("bracket_unit_in_heading", SHEETS)
def bracket_unit_in_heading(kit: Kit) -> None:
    """Bare numbers in the brackets; their unit stands in the merged heading."""
    sheet = kit.plan.sheet("Tariff")
    basis, mass, edges = ("short_ton", "lb", (5000, 20000)) if kit.us else ("tonne", "t", (5, 20))
    top = kit.title_block(sheet, 0, 0, say="vdl") + 1
    items = kit.range(3)
    placed = place(sheet, top + 1, 0, _boards(kit, items))
    sheet.put(top, 3, HEADING[kit.lang.code].format(unit=f"{kit.currency}/{kit.per(basis)}", mass=mass), bold=True)
    sheet.merge(top, 3, top, 5)
    low, high = (f"{edge:,}" if kit.us else str(edge) for edge in edges)
    sheet.row(top + 1, 3, [f"< {low}", f"{low} - {high}", f"> {high}"])
    first, second = (edge * kit.mass_unit(mass) for edge in edges)
    _grid(kit, sheet, placed.rows, items, ((None, first), (first, second), (second, None)), basis)


@family("bracket_inclusive_bounds", ALL)
def bracket_inclusive_bounds(kit: Kit) -> None:
    """'5,000-9,999 lb': the upper bound is written as the last pound below the next."""
    sheet = kit.plan.sheet("Tariff")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    items = kit.range(3)
    unit = "lb" if kit.us else "kg"
    sign = {"en": ",", "de": ".", "es": ".", "fr": " ", "sv": " "}[kit.lang.code] if kit.country != "CH" else "'"
    plus = kit.pick(("+", " +"))

    def n(value: int) -> str:
        return f"{value:,}".replace(",", sign)

    words = [f"1-{n(4999)} {unit}", f"{n(5000)}-{n(19999)} {unit}", f"{n(20000)} {unit}{plus}"]
    placed = place(sheet, top, 0, _boards(kit, items))
    sheet.row(top, 3, words, bold=True)
    first, second = (Fraction(edge) * kit.mass_unit(unit) for edge in (5000, 20000))
    _grid(kit, sheet, placed.rows, items, ((None, first), (first, second), (second, None)), basis)
    for line in kit.plan.lines:  # '1-4,999' starts at one pound, which nobody minds
        if line["cell"].startswith("D"):
            one = str(Decimal("0.45359237") if kit.us else Decimal(1))
            line["from_kg"] = {"any_of": [None, one]}


LOADS = {
    "en-us": ("LTL (under {e} lb)", "FTL ({e} lb)"),
    "en": ("part load (under {e} t)", "full load ({e} t)"),
    "de": ("Teilladung (unter {e} t)", "Komplettladung ({e} t)"),
    "fr": ("camion partiel (moins de {e} t)", "camion complet ({e} t)"),
    "es": ("carga parcial (menos de {e} t)", "camión completo ({e} t)"),
    "sv": ("dellast (under {e} t)", "full bil ({e} t)"),
}


@family("loads_with_weight", ALL)
def loads_with_weight(kit: Kit) -> None:
    """Part and full loads whose weight stands in the header."""
    sheet = kit.plan.sheet("Tariff")
    basis, unit, edge = ("short_ton", "lb", 40000) if kit.us else ("tonne", "t", 24)
    top = kit.title_block(sheet, 0, 0, basis, say="vdl") + 1
    items = kit.range(3)
    placed = place(sheet, top, 0, _boards(kit, items))
    shown = f"{edge:,}" if kit.us else str(edge)
    sheet.row(top, 3, [words.format(e=shown) for words in LOADS["en-us" if kit.us else kit.lang.code]], bold=True)
    split = edge * kit.mass_unit(unit)
    _grid(kit, sheet, placed.rows, items, ((None, split), (split, None)), basis)


@family("brackets_in_sheets", SHEETS, ("en", "de", "fr", "es", "sv"))
def brackets_in_sheets(kit: Kit) -> None:
    """Order sizes counted in sheets: size and weight let them be put in kg; asking is right too."""
    sheet = kit.plan.sheet("Sheets")
    top = kit.title_block(sheet, 0, 0, say="vdl") + 1
    ark = {"en": "sheets", "de": "Bogen", "fr": "feuilles", "es": "hojas", "sv": "ark"}[kit.lang.code]
    sheet.row(top, 0, [kit.head("product"), kit.caliper_head(), kit.weight_head(), kit.head("size")], bold=True)
    sheet.row(top, 4, [f"< 5000 {ark}", f"≥ 5000 {ark}"])
    sheet.put(top - 1, 4, kit.price_head("1000sheets"))
    sheet.merge(top - 1, 4, top - 1, 5)
    for row, plain in enumerate(kit.range(2), start=top + 1):
        item = replace(plain, sheet=(Decimal(700), Decimal(1000), "mm"))
        sheet.row(row, 0, [item.words, item.caliper, item.weight, "700 x 1000 mm"])
        split = 5000 * Fraction(7, 10) * item.gsm / 1000
        for offset, (low, below) in enumerate(((None, split), (split, None))):
            amount = kit.price(item, "1000sheets", factor=1.1 - 0.04 * offset)
            sheet.put(row, 4 + offset, amount, fmt=FORMATS[2][0])
            intent = kit.intent(item, amount, "1000sheets", from_kg=low, below_kg=below)
            kit.plan.either(sheet, row, 4 + offset, intent)
