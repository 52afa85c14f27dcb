"""Units and currencies spelt as people spell them, and lists that have lapsed."""

from datetime import date

from tests.corpus.columns import caliper_column, place, price_column, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, family

TONS = {
    "en-us": (
        ("$/st", "short_ton"),
        ("USD/s.t.", "short_ton"),
        ("US$ per sh. ton", "short_ton"),
        ("$ / short tons", "short_ton"),
        ("USD/mt", "tonne"),
        ("$ per metric tonne", "tonne"),
        ("USD/M.T.", "tonne"),
        ("$ per 100 lbs", "cwt"),
        ("USD / c.w.t.", "cwt"),
        ("$/cwt.", "cwt"),
    ),
    "en": (
        ("GBP/tonne", "tonne"),
        ("£ per metric ton", "tonne"),
        ("£/MT", "tonne"),
        ("GBP p. tonne", "tonne"),
        ("£/1000kg", "tonne"),
        ("£ per kilogram", "kg"),
        ("£/sq.m", "m2"),
    ),
    "de": (
        ("€/t", "tonne"),
        ("EUR je Tonne", "tonne"),
        ("€ / 1.000 kg", "tonne"),
        ("EUR/kg", "kg"),
        ("€ pro 1.000 m²", "1000m2"),
        ("€/qm", "m2"),
    ),
    "fr": (
        ("€/T", "tonne"),
        ("EUR la tonne", "tonne"),
        ("€ / 1 000 kg", "tonne"),
        ("€ le kg", "kg"),
        ("€ les 1000 m²", "1000m2"),
        ("€/m2", "m2"),
    ),
    "es": (
        ("€/t", "tonne"),
        ("EUR la tonelada", "tonne"),
        ("€ / 1.000 kg", "tonne"),
        ("€ el kg", "kg"),
        ("€ los 1.000 m²", "1000m2"),
        ("€/m2", "m2"),
    ),
    "sv": (
        ("SEK/ton", "tonne"),
        ("SEK per 1 000 kg", "tonne"),
        ("SEK/kg", "kg"),
        ("SEK per 1000 m²", "1000m2"),
        ("SEK/kvm", "m2"),
    ),
}


@family("basis_spellings", ALL)
def basis_spellings(kit: Kit) -> None:
    """The basis in the header as people abbreviate it; for '€/T' and 'c.w.t.' asking is right too."""
    place_name = "en-us" if kit.us else kit.lang.code
    kit.currency = {"en-us": "USD", "en": "GBP", "sv": "SEK"}.get(place_name, "EUR")
    words, basis = kit.pick(TONS[place_name])
    sheet = kit.plan.sheet("Prices")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(price_column(kit, prices, f"{kit.head('price')} {words}"))
    add = kit.plan.either if words.endswith(("/T", "c.w.t.")) else kit.plan.accept
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        add(sheet, row, 3, kit.intent(item, price, basis))


CURRENCIES = {
    "en-us": (
        ("All prices in US dollars.", "USD"),
        ("Prices quoted in Canadian dollars", "CAD"),
        ("U.S. funds", "USD"),
    ),
    "en": (
        ("All prices in pounds sterling.", "GBP"),
        ("Prices in euros", "EUR"),
        ("Prices quoted in Swiss francs", "CHF"),
    ),
    "de": (
        ("Alle Preise in Euro.", "EUR"),
        ("Preise in Schweizer Franken", "CHF"),
        ("Preise in US-Dollar", "USD"),
        ("Währung: EUR", "EUR"),
    ),
    "fr": (
        ("Prix en euros.", "EUR"),
        ("Prix en francs suisses", "CHF"),
        ("Prix en dollars US", "USD"),
        ("Devise : EUR", "EUR"),
    ),
    "es": (("Precios en euros.", "EUR"), ("Precios en dólares USA", "USD"), ("Moneda: EUR", "EUR")),
    "sv": (("Alla priser i svenska kronor.", "SEK"), ("Priser i euro", "EUR"), ("Valuta: SEK", "SEK")),
}


@family("currency_in_words", ALL)
def currency_in_words(kit: Kit) -> None:
    """A note names the currency in words; the header says only the basis."""
    words, code = kit.pick(CURRENCIES["en-us" if kit.us else kit.lang.code])
    sheet = kit.plan.sheet("Prices")
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 2
    note_below = kit.chance(0.4)
    items = kit.range(3)
    prices = [kit.price(item, basis, code) for item in items]
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    columns.append(price_column(kit, prices, f"{kit.head('price')} {kit.each(basis)}"))
    placed = place(sheet, top, 0, columns)
    sheet.put(placed.below + 1 if note_below else top - 2, 0, words)
    for row, item, price in zip(placed.rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, currency=code))


@family("lapsed_list", ALL)
def lapsed_list(kit: Kit) -> None:
    """An old list that does not call itself superseded: read with its date, which lies in the past."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0, say="dl")
    day = date(2024, kit.rng.randint(3, 12), kit.rng.randint(13, 28))
    sheet.put(top, 0, kit.pick(kit.lang.valid_until).format(date=kit.date_words(day)))
    items = kit.range(3)
    prices = [kit.price(item, basis) for item in items]
    columns = [
        product_column(kit, items),
        caliper_column(kit, items),
        weight_column(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
    ]
    for row, item, price in zip(place(sheet, top + 2, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, valid=day))
