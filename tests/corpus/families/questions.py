"""What a sheet leaves open and a person must settle, beside what something else in the sheet settles."""

from decimal import Decimal

from tests.corpus.boards import Board
from tests.corpus.columns import caliper_column, place, price_column, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import AnyOf
from tests.corpus.vendors import VENDORS


def _table(kit: Kit, sheet, top: int, items, prices, head: str):
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, head),
    ]
    return place(sheet, top, 0, columns)


def _letterhead(kit: Kit, sheet) -> int:
    sheet.put(0, 0, kit.vendor)
    kit.facts.vendor = kit.plan.vendor = kit.vendor
    return 2


def in_inches(kit: Kit, items: list[Board]) -> None:
    """The same boards with their caliper in inches."""
    for item in items:
        item.caliper, item.caliper_unit = item.caliper / 1000, "in"
    kit.units = ("in", kit.units[1])


@family("ton_open", ALL, ("en",))
def ton_open(kit: Kit) -> None:
    """'ton' beside points and g/m²: either ton, so it is asked."""
    sheet = kit.plan.sheet("Offer")
    top = _letterhead(kit, sheet)
    items = kit.range(3)
    for item in items:
        item.caliper, item.caliper_unit = Decimal(round(float(item.caliper_um) / 25.4)), "pt"
    kit.units = ("pt", "gsm")
    prices = [kit.price(item, "tonne", "USD") for item in items]
    placed = _table(
        kit, sheet, top, items, prices, kit.pick(("Price USD/ton", "USD per ton", "Price (USD/T)", "US$/ton"))
    )
    for row in placed.rows:
        kit.plan.ask(sheet, row, 3, "basis-unknown")


@family("ton_defined", ALL, ("en-us", "en"))
def ton_defined(kit: Kit) -> None:
    """'ton' in the header, defined in a note."""
    sheet = kit.plan.sheet("Offer")
    top = _letterhead(kit, sheet)
    items = kit.range(3)
    basis = kit.pick(("short_ton", "tonne"))
    note = {
        "short_ton": ("Ton = 2,000 lb.", "All tons are short tons of 2,000 lb.", "1 ton = 2000 lbs"),
        "tonne": ("Ton = 1,000 kg.", "All tons are metric tonnes.", "ton means metric ton of 1000 kg"),
    }
    prices = [kit.price(item, basis) for item in items]
    placed = _table(kit, sheet, top, items, prices, f"{kit.head('price')} {kit.currency}/ton")
    sheet.put(placed.below + 1, 0, kit.pick(note[basis]))
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("ton_by_units", ALL, ("en-us", "en"))
def ton_by_units(kit: Kit) -> None:
    """'ton' in a file of inches and pounds throughout, or of µm and g/m² throughout: the units settle it."""
    sheet = kit.plan.sheet("Offer")
    top = _letterhead(kit, sheet)
    items = kit.range(3)
    basis = "short_ton" if kit.us else "tonne"
    if kit.us:
        in_inches(kit, items)
    prices = [kit.price(item, basis) for item in items]
    placed = _table(kit, sheet, top, items, prices, f"{kit.head('price')} {kit.currency}/ton")
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("swedish_ton", ALL, ("sv",))
def swedish_ton(kit: Kit) -> None:
    """kr/ton is asked for its crown, unless the file names SEK."""
    sheet = kit.plan.sheet("Offert")
    top = _letterhead(kit, sheet)
    items = kit.range(3)
    prices = [kit.price(item, "tonne", "SEK") for item in items]
    named = kit.chance(0.5)
    if named:
        sheet.put(1, 0, kit.pick(("Alla priser i SEK.", "Priser i svenska kronor (SEK)")))
        top = 3
    placed = _table(kit, sheet, top, items, prices, kit.pick(("Pris kr/ton", "kr/ton", "Pris (kr per ton)")))
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        if named:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, "tonne", currency="SEK"))
        else:
            kit.plan.ask(sheet, row, 3, "currency-unknown")


@family("pounds_without_area", ALL, ("en-us",))
def pounds_without_area(kit: Kit) -> None:
    """'lb' alone: with a caliper only one area is possible; without one it is asked."""
    sheet = kit.plan.sheet("Offer")
    top = _letterhead(kit, sheet)
    per_3000 = kit.chance(0.5)
    kit.units = ("pt", "lb_3000" if per_3000 else "lb_msf")
    items = kit.range(3)
    prices = [kit.price(item, "short_ton") for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head("short_ton")),
    ]
    columns[2].head = kit.pick(("Basis Wt (lb)", "Wt, lb", "BW lbs", "Basis weight #"))
    for index, item in enumerate(items):
        if kit.chance(0.2):
            columns[1].cells[index] = None
            item.caliper = None
    placed = place(sheet, top, 0, columns)
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        if item.caliper is None:
            kit.plan.ask(sheet, row, 3, "weight-basis-unknown")
        else:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, "short_ton"))


@family("dollar_abroad", ALL, ("en-us",))
def dollar_abroad(kit: Kit) -> None:
    """A bare '$' from a Canadian or Australian address: asked, unless the file names the dollar."""
    sheet = kit.plan.sheet("Quote")
    country, code = kit.pick((("CA", "CAD"), ("CA", "CAD"), ("AU", "AUD")))
    kit.vendor, address = kit.pick(VENDORS[country])
    top = _letterhead(kit, sheet)
    sheet.put(1, 0, address)
    named = kit.pick((None, code, "USD"))
    if named:
        say = {
            "CAD": ("All prices in Canadian dollars.", "Prices in CAD"),
            "AUD": ("All prices in AUD.", "Australian dollars"),
            "USD": ("All prices in US dollars.", "Prices are in USD."),
        }
        sheet.put(2, 0, kit.pick(say[named]))
    items = kit.range(3)
    prices = [kit.price(item, "short_ton", named or code) for item in items]
    placed = _table(
        kit, sheet, top + 2, items, prices, kit.pick(("Price $/short ton", "$/ST", "Price ($ per short ton)"))
    )
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        if named:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, "short_ton", currency=named))
        else:
            kit.plan.ask(sheet, row, 3, "currency-unknown")


@family("no_currency", ALL)
def no_currency(kit: Kit) -> None:
    """Nothing anywhere says a currency."""
    sheet = kit.plan.sheet("Sheet1")
    items = kit.range(2)
    basis = "short_ton" if kit.us else "tonne"
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, f"{kit.head('price')} {kit.each(basis)}"),
    ]
    for row in place(sheet, 0, 0, columns).rows:
        kit.plan.ask(sheet, row, 3, "currency-unknown")


@family("no_basis", SHEETS)
def no_basis(kit: Kit) -> None:
    """A currency, but nothing says what the price is per."""
    sheet = kit.plan.sheet("Sheet1")
    items = kit.range(2)
    prices = [kit.price(item, "short_ton" if kit.us else "tonne") for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, f"{kit.head('price')} ({kit.currency})"),
    ]
    for row in place(sheet, 0, 0, columns).rows:
        kit.plan.ask(sheet, row, 3, "basis-unknown")


TRADE_NAMES = ("Corraline White", "Hushfold", "Tavistone Carrier", "Ivernal 2", "Brindlecote", "Marlowe Natural")
KRAFT = {
    "en": "Unbleached kraft board",
    "de": "Kraftkarton ungebleicht",
    "fr": "Carton kraft écru",
    "es": "Cartón kraft crudo",
    "sv": "Oblekt kraftkartong",
}


@family("trade_names", ALL)
def trade_names(kit: Kit) -> None:
    """Mill names: some explained in a legend, some not; kraft that is neither coated nor uncoated."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    basis = kit.natural_basis()
    names = kit.rng.sample(TRADE_NAMES, 3)
    legend, rows = {}, []
    for index, grade in enumerate(kit.grades(3)):
        words = kit.pick(kit.lang.boards[grade])
        for item in kit.series(grade, 2, words):
            item.words = names[index]
            rows.append((item, index < 2))
        legend[names[index]] = words[0]
    for item in kit.series("CUK", 1):
        item.words = KRAFT[kit.lang.code]
        rows.append((item, False))
    items = [item for item, _ in rows]
    prices = [kit.price(item, basis) for item in items]
    placed = _table(kit, sheet, top, items, prices, kit.price_head(basis))
    for offset, name in enumerate(names[:2]):
        sheet.put(placed.below + 1 + offset, 0, f"{name}{kit.pick((' = ', ': ', ' – '))}{legend[name]}")
    for row, (item, explained), price in zip(placed.rows, rows, prices, strict=True):
        if explained:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))
        else:
            kit.plan.ask(sheet, row, 3, "grade-unknown")


@family("implausible_weight", ALL)
def implausible_weight(kit: Kit) -> None:
    """Some rows' weight and caliper give a density no board has."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    basis = "short_ton" if kit.us else "tonne"
    items = kit.range(3, 3, 4)
    bad = set(kit.rng.sample(range(len(items)), 2))
    for index in bad:
        items[index].weight = items[index].weight * (kit.pick((4, 5)) if kit.us else 3)
    prices = [kit.price(item, basis) for item in items]
    placed = _table(kit, sheet, top, items, prices, kit.price_head(basis))
    for index, (row, item, price) in enumerate(zip(placed.rows, items, prices, strict=True)):
        if index in bad:
            kit.plan.ask(sheet, row, 3, "weight-implausible")
        else:
            kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("no_size", SHEETS)
def no_size(kit: Kit) -> None:
    """Neither caliper nor weight: nothing to compare by."""
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    basis = "short_ton" if kit.us else "tonne"
    sheet.row(top, 0, [kit.head("item"), kit.head("product"), kit.price_head(basis)], bold=True)
    for row, item in enumerate([kit.series(grade, 1)[0] for grade in kit.grades(3)], start=top + 1):
        sheet.row(row, 0, [f"A-{row}", item.words, kit.price(item, basis)])
        kit.plan.ask(sheet, row, 2, AnyOf(("caliper-unknown", "weight-basis-unknown")))
