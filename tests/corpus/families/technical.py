"""Columns that vendors add: test values, pallets, line numbers, a size said twice or in one cell with another."""

from decimal import Decimal
from fractions import Fraction

from tests.corpus.columns import Column, caliper_column, place, price_column, product_column, weight_column
from tests.corpus.families.questions import TRADE_NAMES
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import GSM_PER, UM_PER, text
from tests.corpus.words.units import UNIT_WORDS

SPECS = {
    "en": ("Brightness %", "Taber MD", "Taber CD", "Moisture %", "PPS µm", "Sheets per pallet", "Max roll OD in"),
    "de": (
        "Weiße %",
        "Biegesteifigkeit längs mN",
        "Biegesteifigkeit quer mN",
        "Feuchte %",
        "PPS µm",
        "Bogen je Palette",
        "Glanz %",
    ),
    "fr": (
        "Blancheur %",
        "Rigidité SM mN",
        "Rigidité ST mN",
        "Humidité %",
        "PPS µm",
        "Feuilles par palette",
        "Brillant %",
    ),
    "es": ("Blancura %", "Rigidez DM mN", "Rigidez DT mN", "Humedad %", "PPS µm", "Hojas por palé", "Brillo %"),
    "sv": ("Ljushet %", "Styvhet MD mN", "Styvhet CD mN", "Fukt %", "PPS µm", "Ark per pall", "Glans %"),
}
SPEC_VALUES = ((78, 92), (110, 420), (60, 240), (5, 8), (1, 3), (1200, 2400), (40, 72))


def _sized(kit: Kit, items) -> list[Column]:
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


@family("spec_columns", ALL)
def spec_columns(kit: Kit) -> None:
    """Four to seven columns of test values around the price."""
    sheet = kit.plan.sheet("Range")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    specs = [
        Column(name, name, [kit.rng.randint(low, high) for _ in items])
        for name, (low, high) in zip(SPECS[kit.lang.code], SPEC_VALUES, strict=True)
    ]
    kit.rng.shuffle(specs)
    cut = kit.rng.randint(0, 4)
    columns = [
        *_sized(kit, items),
        *specs[:cut],
        price_column(kit, prices, kit.price_head(basis)),
        *specs[cut : cut + 3],
    ]
    placed = place(sheet, top, 0, columns)
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, placed.columns["price"], kit.intent(item, price, basis))


@family("price_first", ALL)
def price_first(kit: Kit) -> None:
    """Line number and price stand left of the board."""
    sheet = kit.plan.sheet("Range")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    number = {"en": "No.", "de": "Pos.", "fr": "N°", "es": "N.º", "sv": "Nr"}[kit.lang.code]
    columns = [
        Column("number", number, list(range(1, len(items) + 1))),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    for row, item, price in zip(place(sheet, top, 0, [*columns, *_sized(kit, items)]).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 1, kit.intent(item, price, basis))


@family("weight_said_twice", ALL, ("en-us", "en"))
def weight_said_twice(kit: Kit) -> None:
    """lb/MSF and g/m² side by side, rounded: either may be worked from."""
    sheet = kit.plan.sheet("Range")
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, say="vl") + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    other = "gsm" if kit.us else "lb_msf"
    places = 0 if other == "gsm" else 1
    rounded = [Decimal(str(round(float(item.gsm / GSM_PER[other]), places))) for item in items]
    if not places:
        rounded = [value.quantize(Decimal(1)) for value in rounded]
    columns = [*_sized(kit, items), Column("other", f"{kit.head('weight')} {kit.pick(UNIT_WORDS[other])}", rounded)]
    columns.append(price_column(kit, prices, kit.price_head(basis)))
    placed = place(sheet, top, 0, columns)
    for row, item, price, again in zip(placed.rows, items, prices, rounded, strict=True):
        line = kit.plan.accept(sheet, row, 4, kit.intent(item, price, basis))
        second = kit.intent(item, price, basis, gsm=GSM_PER[other] * Fraction(again))
        line["grammage_gsm"] = {"any_of": [line["grammage_gsm"], text(second.gsm)]}
        line["per_msf"] = {"any_of": [line["per_msf"], text(second.per_msf())]}


@family("caliper_said_twice", ALL, ("en-us", "en", "de"))
def caliper_said_twice(kit: Kit) -> None:
    """Points and millimetres side by side, rounded."""
    sheet = kit.plan.sheet("Range")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    other = "mm" if kit.us else "pt"
    again = [Decimal(str(round(float(item.caliper_um / UM_PER[other]), 2 if other == "mm" else 1))) for item in items]
    sized = _sized(kit, items)
    sized.insert(2, Column("other", f"{kit.head('caliper')} ({other})", again))
    sized.append(price_column(kit, prices, kit.price_head(basis)))
    for row, item, price, value in zip(place(sheet, top, 0, sized).rows, items, prices, again, strict=True):
        add = kit.plan.accept if kit.us else kit.plan.either  # beside points, 't' may be asked
        line = add(sheet, row, 4, kit.intent(item, price, basis))
        line["caliper_um"] = {"any_of": [line["caliper_um"], text(UM_PER[other] * Fraction(value))]}


@family("size_in_one_cell", ALL)
def size_in_one_cell(kit: Kit) -> None:
    """Caliper and weight share a cell: '18 pt / 78 lb/MSF'."""
    sheet = kit.plan.sheet("Range")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    join = kit.pick((" / ", "/", ", ", " – "))
    units = ("pt", "lb/MSF") if kit.us else ("µm", "g/m²")
    head = f"{kit.head('caliper')} / {kit.head('weight' if kit.us else 'grammage')}"
    cells = [f"{item.caliper} {units[0]}{join}{item.weight} {units[1]}" for item in items]
    columns = [
        product_column(kit, items),
        Column("size", head, cells),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 2, kit.intent(item, price, basis))


@family("code_and_trade_name", ALL)
def code_and_trade_name(kit: Kit) -> None:
    """A grade column explains the mill's own name beside it."""
    sheet = kit.plan.sheet("Range")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    codes = ("SBS", "CUK", "CRB", "URB") if kit.us else ("GC1", "GC2", "GD2", "GT2", "SBS")
    grade_of = {"GC1": "FBB", "GC2": "FBB", "GD2": "CRB", "GT2": "CRB"}
    rows = []
    for code, name in zip(kit.rng.sample(codes, 3), kit.rng.sample(TRADE_NAMES, 3), strict=True):
        grade = grade_of.get(code, code)
        sides = None if code == "SBS" else "bare" if code == "URB" else "coat"
        rows += [(code, name, item) for item in kit.series(grade, 3, (name, sides))]
    items = [item for _, _, item in rows]
    prices = [kit.price(item, basis) for item in items]
    grade_head = {"en": "Grade", "de": "Sorte", "fr": "Qualité", "es": "Calidad", "sv": "Kvalitet"}[kit.lang.code]
    name_head = {"en": "Brand", "de": "Marke", "fr": "Marque", "es": "Marca", "sv": "Märke"}[kit.lang.code]
    columns = [
        Column("brand", name_head, [name for _, name, _ in rows]),
        Column("grade", grade_head, [code for code, _, _ in rows]),
    ]
    columns += [caliper_column(kit, items), weight_column(kit, items), price_column(kit, prices, kit.price_head(basis))]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 4, kit.intent(item, price, basis))


@family("calipers_in_mixed_units", SHEETS, ("en-us", "en"))
def calipers_in_mixed_units(kit: Kit) -> None:
    """Each row's caliper in its own unit, said in the cell."""
    sheet = kit.plan.sheet("Range")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    cells, microns = [], []
    for item in items:
        points = round(float(item.caliper_um) / 25.4)
        unit, value = kit.pick(
            (
                ("pt", Decimal(points)),
                ("in", Decimal(points) / 1000),
                ("mm", Decimal(round(points * 2.54)) / 100),
                ("um", Decimal(round(points * 25.4))),
            )
        )
        mark = {"pt": " pt", "in": '"', "mm": " mm", "um": " µm"}[unit]
        cells.append(f"{format(value, 'f')}{mark}")
        microns.append(UM_PER[unit] * Fraction(value))
    columns = [product_column(kit, items), Column("caliper", kit.head("caliper"), cells), weight_column(kit, items)]
    columns.append(price_column(kit, prices, kit.price_head(basis)))
    for row, item, price, um in zip(place(sheet, top, 0, columns).rows, items, prices, microns, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, caliper_um=um))


@family("comments_on_cells", ("xlsx", "xlsxw"))
def comments_on_cells(kit: Kit) -> None:
    """Cell comments talk of other prices; the cells count."""
    sheet = kit.plan.sheet("Range")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index % 3 == 0:
            sheet.cells[row, 3].comment = f"was {price - 35} until last quarter"
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("calipers_in_mils", ALL, ("en-us",))
def calipers_in_mils(kit: Kit) -> None:
    """A mil is a point."""
    sheet = kit.plan.sheet("Range")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    columns = [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]
    if kit.chance(0.5):
        columns[1] = Column(
            "caliper", kit.pick(("Caliper (mils)", "Thickness, mil", "Cal. mils")), [item.caliper for item in items]
        )
    else:
        columns[1] = Column("caliper", kit.head("caliper"), [f"{item.caliper} mil" for item in items])
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("price_on_another_basis", SHEETS, ("en-us", "en", "de"))
def price_on_another_basis(kit: Kit) -> None:
    """One price is typed per cwt or per kg in a column per ton: taken as written, or asked; never mended in silence."""
    sheet = kit.plan.sheet("Range")
    basis, slip = ("short_ton", "cwt") if kit.us else ("tonne", "kg")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis).quantize(Decimal("0.01")) for item in items]
    odd = kit.rng.randrange(len(items))
    prices[odd] = kit.price(items[odd], slip, places=2)
    placed = place(sheet, top, 0, [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))])
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        add = kit.plan.either if index == odd else kit.plan.accept
        add(sheet, row, 3, kit.intent(item, price, basis))
