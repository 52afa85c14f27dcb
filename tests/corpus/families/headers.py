"""Headers as people write them: two and three rows, unit rows, repeated, bilingual, misspelt, abbreviated."""

from tests.corpus.columns import (
    FORMATS,
    caliper_column,
    place,
    price_column,
    product_column,
    simple_table,
    weight_column,
)
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.words import LANGUAGES
from tests.corpus.words.units import UNIT_WORDS


@family("unit_row", ALL)
def unit_row(kit: Kit) -> None:
    """Names in the header, units in the row under it."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    basis = kit.natural_basis()
    prices = [kit.price(item, basis) for item in items]
    names = [kit.head("product"), kit.head("caliper"), kit.head("weight" if kit.us else "grammage"), kit.head("price")]
    units = [None, *(kit.pick(UNIT_WORDS[unit]) for unit in kit.units), f"{kit.money()}/{kit.per(basis)}"]
    if kit.chance(0.5):
        units = [unit and f"({unit})" for unit in units]
    sheet.row(top, 0, names, bold=True)
    sheet.row(top + 1, 0, units)
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, ""),
    ]
    for column in columns:
        column.head = ""
    placed = place(sheet, top + 1, 0, columns)
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("two_row_header", SHEETS)
def two_row_header(kit: Kit) -> None:
    """Merged group headings 'board' and 'price' over the columns; two currencies, each an offer of its own."""
    sheet = kit.plan.sheet("Quotation")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(2, 2, 4)
    basis = "short_ton" if kit.us else "tonne"
    pair = ("USD", "CAD") if kit.us else ("EUR", "USD" if kit.currency == "EUR" else kit.currency)
    sheet.put(top, 0, {"en": "Board", "de": "Karton", "fr": "Carton", "es": "Cartón", "sv": "Kartong"}[kit.lang.code])
    sheet.merge(top, 0, top, 2)
    sheet.put(top, 3, f"{kit.head('price')} {kit.each(basis)}")
    sheet.merge(top, 3, top, 4)
    prices = [[kit.price(item, basis, code) for item in items] for code in pair]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns += [price_column(kit, amounts, code, code) for amounts, code in zip(prices, pair, strict=True)]
    placed = place(sheet, top + 1, 0, columns)
    for index, (row, item) in enumerate(zip(placed.rows, items, strict=True)):
        for offset, code in enumerate(pair):
            kit.plan.accept(sheet, row, 3 + offset, kit.intent(item, prices[offset][index], basis, currency=code))


@family("three_row_header", SHEETS)
def three_row_header(kit: Kit) -> None:
    """Group, name and unit each in a row; brackets under the price."""
    sheet = kit.plan.sheet("Tariff")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    basis = "short_ton" if kit.us else "tonne"
    edge, unit = (20000, "lb") if kit.us else (10, "t")
    split = edge * kit.mass_unit(unit)
    sheet.row(
        top,
        0,
        [kit.head("product"), kit.head("caliper"), kit.head("weight" if kit.us else "grammage"), kit.head("price")],
        bold=True,
    )
    sheet.merge(top, 3, top, 4)
    sheet.row(top + 1, 3, [f"< {edge} {unit}", f"≥ {edge} {unit}"])
    sheet.row(
        top + 2, 1, [*(kit.pick(UNIT_WORDS[name]) for name in kit.units), *[f"{kit.money()}/{kit.per(basis)}"] * 2]
    )
    for line, item in enumerate(items):
        row = top + 3 + line
        sheet.row(row, 0, [item.words, item.caliper, item.weight])
        for offset, (low, below) in enumerate(((None, split), (split, None))):
            amount = kit.price(item, basis, factor=1.04 - 0.04 * offset)
            sheet.put(row, 3 + offset, amount, fmt=kit.pick(FORMATS[0]))
            kit.plan.accept(sheet, row, 3 + offset, kit.intent(item, amount, basis, from_kg=low, below_kg=below))


@family("header_repeated", ALL)
def header_repeated(kit: Kit) -> None:
    """A long list broken into pages, the same header again on each, page lines between."""
    sheet = kit.plan.sheet("List")
    basis = kit.natural_basis()
    row = kit.title_block(sheet, 0, 0, basis) + 1
    head = kit.price_head(basis)
    page = {"en": "Page {}", "de": "Seite {}", "fr": "Page {}", "es": "Página {}", "sv": "Sida {}"}[kit.lang.code]
    names = [kit.head("product"), kit.caliper_head(), kit.weight_head(), head]
    for number, grade in enumerate(kit.grades(3), start=1):
        sheet.row(row, 0, names, bold=True)
        for item in kit.series(grade, 4):
            row += 1
            amount = kit.price(item, basis)
            sheet.row(row, 0, [item.words, item.caliper, item.weight])
            sheet.put(row, 3, amount, places=max(0, -amount.as_tuple().exponent) or None)
            kit.plan.accept(sheet, row, 3, kit.intent(item, amount, basis))
        sheet.put(row + 1, 0, page.format(number))
        row += 2


@family("bilingual_header", ALL, ("de", "fr", "es", "sv"))
def bilingual_header(kit: Kit) -> None:
    """Each header in two languages."""
    sheet = kit.plan.sheet("Offer")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    basis = "tonne"
    english = LANGUAGES["en"].headers
    join = kit.pick((" / ", "\n", " - "))
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.head("price")),
    ]
    for column, key, unit in zip(
        columns,
        ("product", "caliper", "grammage", "price"),
        ("", " [µm]", " [g/m²]", f" [{kit.currency}/t]"),
        strict=True,
    ):
        own = kit.pick(kit.lang.headers[key])
        column.head = f"{own}{join}{kit.pick(english[key])}{unit}"
    placed = place(sheet, top, 0, columns)
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


MISSPELT = {
    "en-us": (
        ("Grde", "Calipr (pt)", "Basis Weigth lb/MSF", "Prise $/short ton"),
        ("Desc.", "Cal. (pts)", "Bs. Wt. (lb/MSF)", "Prc. US$/ST"),
        ("Discription", "Caliber pt", "Basis wieght (lb/MSF)", "Price USD/shrt ton"),
    ),
    "en": (
        ("Grde", "Thicknes µm", "Gramage g/m²", "Prise £/tonne"),
        ("Descr.", "Thk. (µm)", "Subst. gsm", "Pr. GBP/t"),
    ),
    "de": (
        ("Bezeichng.", "Dikce µm", "Flächengewcht g/m²", "Pries EUR/t"),
        ("Bez.", "Stärk. (µm)", "Fl.-Gew. (g/m²)", "Pr. EUR/t"),
    ),
    "fr": (
        ("Désignaton", "Epaiseur µm", "Gramage g/m²", "Prx net EUR/t"),
        ("Désign.", "Ep. (µm)", "Gr. (g/m²)", "PU EUR/t"),
    ),
    "es": (
        ("Descripcion", "Espeser µm", "Grammage g/m²", "Presio EUR/t"),
        ("Descr.", "Esp. (µm)", "Gr. (g/m²)", "P. neto EUR/t"),
    ),
    "sv": (
        ("Benämnig", "Tjoklek µm", "Ytvkit g/m²", "Priss SEK/t"),
        ("Benämn.", "Tjl. (µm)", "Ytv. (g/m²)", "Nettopr. SEK/t"),
    ),
}


@family("misspelt_header", ALL)
def misspelt_header(kit: Kit) -> None:
    """Headers misspelt or cut short; the units in them are whole."""
    sheet = kit.plan.sheet("Sheet1")
    place_name = "en-us" if kit.us else kit.lang.code
    kit.currency = {"en-us": "USD", "en": "GBP", "sv": "SEK"}.get(place_name, "EUR")
    names = kit.pick(MISSPELT[place_name])
    sheet.row(0, 0, list(names))
    basis = "short_ton" if kit.us else "tonne"
    for row, item in enumerate(kit.range(3), start=1):
        amount = kit.price(item, basis)
        sheet.row(row, 0, [item.words, item.caliper, item.weight, amount])
        kit.plan.accept(sheet, row, 3, kit.intent(item, amount, basis))


@family("no_header_words", SHEETS)
def no_header_words(kit: Kit) -> None:
    """Units alone serve as headers."""
    sheet = kit.plan.sheet("Sheet1")
    basis = kit.natural_basis()
    row = kit.title_block(sheet, 0, 0) + 1
    placed = simple_table(
        kit, sheet, row, 0, kit.range(3), basis, head=f"{kit.money()}/{kit.per(basis)}", textual=False, extras=False
    )
    for column, unit in (("caliper", kit.units[0]), ("weight", kit.units[1])):
        sheet.put(row, placed.columns[column], kit.pick(UNIT_WORDS[unit]))
    del sheet.cells[row, placed.columns["product"]]
