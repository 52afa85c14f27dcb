"""Prices as vendors type them by hand, and terms in words."""

import calendar
from datetime import date, timedelta
from decimal import Decimal

from tests.corpus.columns import Column, caliper_column, place, price_column, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, family


def _sized(kit: Kit, items) -> list[Column]:
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


@family("dash_for_cents", ALL, ("de", "de", "sv"))
def dash_for_cents(kit: Kit) -> None:
    """'1.150,-' and '11 450:-': the dash stands for no cents."""
    sheet = kit.plan.sheet("Preise")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, "tonne") for item in items]
    if kit.lang.code == "sv":
        shown = [f"{price:,}".replace(",", " ") + ":-" for price in prices]
    else:
        sign, point = ("'", ".") if kit.country == "CH" else (".", ",")
        tail = kit.pick((f"{point}-", f"{point}--", f"{point}–"))
        shown = [f"{price:,}".replace(",", sign) + tail for price in prices]
    columns = [*_sized(kit, items), Column("price", kit.price_head("tonne"), shown)]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, "tonne"))


@family("currency_in_cell", ALL)
def currency_in_cell(kit: Kit) -> None:
    """The cell says number and currency; the header says the basis."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis).quantize(Decimal("0.01")) for item in items]
    money = kit.money()
    if kit.lang.code == "en" or kit.country == "CH":
        shown = [f"{money} {price:,}".replace(",", "'" if kit.country == "CH" else ",") for price in prices]
    else:
        sign = "." if kit.lang.code in ("de", "es") else "\u00a0"
        shown = [f"{price:,}".replace(",", "_").replace(".", ",").replace("_", sign) + f" {money}" for price in prices]
    columns = [*_sized(kit, items), Column("price", f"{kit.head('price')} {kit.each(basis)}", shown)]
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("currency_column", ALL)
def currency_column(kit: Kit) -> None:
    """A currency column; rows differ."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    codes = [kit.pick(("USD", "CAD") if kit.us else ("EUR", "GBP", "USD", "SEK")) for _ in items]
    prices = [kit.price(item, basis, code) for item, code in zip(items, codes, strict=True)]
    columns = [*_sized(kit, items), price_column(kit, prices, f"{kit.head('price')} {kit.each(basis)}")]
    columns.append(Column("currency", kit.head("currency"), list(codes)))
    for row, item, price, code in zip(place(sheet, top, 0, columns).rows, items, prices, codes, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis, currency=code))


DAYS_FROM = {
    "en": ("Prices valid {n} days from {date}", "Valid for {n} days from {date}"),
    "de": ("Preise gültig {n} Tage ab {date}", "gültig {n} Tage ab dem {date}"),
    "fr": ("Prix valables {n} jours à compter du {date}",),
    "es": ("Precios válidos {n} días desde el {date}",),
    "sv": ("Priserna gäller {n} dagar från {date}",),
}


@family("valid_for_days", ALL)
def valid_for_days(kit: Kit) -> None:
    """Valid so many days from a date that the line names."""
    day, n = kit.day((3, 8)), kit.pick((30, 60, 90))
    words = kit.pick(DAYS_FROM[kit.lang.code]).format(n=n, date=kit.date_words(day))
    _with_validity(kit, words, (day + timedelta(days=n)).isoformat())


MONTH_END = {
    "en": "Prices valid until end of {month} {y}",
    "de": "Preise gültig bis Ende {month} {y}",
    "fr": "Prix valables jusqu'à fin {month} {y}",
    "es": "Precios válidos hasta finales de {month} de {y}",
    "sv": "Priserna gäller t.o.m. slutet av {month} {y}",
}


@family("valid_to_month_end", ALL)
def valid_to_month_end(kit: Kit) -> None:
    """Valid to the end of a month in words: the last day, or left open."""
    month = kit.rng.randint(6, 12)
    last = date(2026, month, calendar.monthrange(2026, month)[1])
    words = MONTH_END[kit.lang.code].format(month=kit.lang.months[month - 1], y=2026)
    _with_validity(kit, words, {"any_of": [last.isoformat(), None]})


UNREAD = {
    "en": "Prices valid until further notice",
    "de": "Preise gültig bis auf Widerruf",
    "fr": "Prix valables jusqu'à nouvel ordre",
    "es": "Precios válidos hasta nuevo aviso",
    "sv": "Priserna gäller tills vidare",
}


@family("valid_until_notice", ALL)
def valid_until_notice(kit: Kit) -> None:
    """'Until further notice' gives no date."""
    _with_validity(kit, UNREAD[kit.lang.code], None)


def _with_validity(kit: Kit, words: str, valid) -> None:
    sheet = kit.plan.sheet("Offer")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0, say="dm")
    sheet.put(top, 0, words)
    items = kit.range(2)
    prices = [kit.price(item, basis) for item in items]
    columns = [*_sized(kit, items), price_column(kit, prices, kit.price_head(basis))]
    for row, item, price in zip(place(sheet, top + 2, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))["valid_until"] = valid


LEADS = {
    "en": (
        ("4 to 6 weeks", (28, 42)),
        ("four weeks", None),
        ("6-8 wks ARO", (42, 56)),
        ("2 weeks", (14, 14)),
        ("ex-stock", (0, 0)),
        ("10 - 12 days", (10, 12)),
        ("3–5 business days", (5, 7)),
        ("next production run", None),
    ),
    "de": (
        ("4 bis 6 Wochen", (28, 42)),
        ("3-4 Wo. ab Auftrag", (21, 28)),
        ("Lager", (0, 0)),
        ("10-12 Tage", (10, 12)),
        ("5 Arbeitstage", (7, 7)),
        ("nächste Anfertigung", None),
    ),
    "fr": (
        ("4 à 6 semaines", (28, 42)),
        ("3-4 sem. après commande", (21, 28)),
        ("10 à 12 jours", (10, 12)),
        ("5 jours ouvrés", (7, 7)),
        ("prochaine fabrication", None),
    ),
    "es": (
        ("4 a 6 semanas", (28, 42)),
        ("3-4 sem.", (21, 28)),
        ("de 10 a 12 días", (10, 12)),
        ("5 días laborables", (7, 7)),
        ("próxima fabricación", None),
    ),
    "sv": (
        ("4 till 6 veckor", (28, 42)),
        ("3-4 v", (21, 28)),
        ("10–12 dagar", (10, 12)),
        ("5 arbetsdagar", (7, 7)),
        ("nästa körning", None),
    ),
}


@family("lead_times_in_words", ALL)
def lead_times_in_words(kit: Kit) -> None:
    """Lead times as people write them; some give no number."""
    sheet = kit.plan.sheet("Offer")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0, say="vd") + 1
    items = kit.range(4)
    leads = [kit.pick(LEADS[kit.lang.code]) for _ in items]
    prices = [kit.price(item, basis) for item in items]
    columns = [
        *_sized(kit, items),
        price_column(kit, prices, kit.price_head(basis)),
        Column("lead", kit.head("lead"), [words for words, _ in leads]),
    ]
    for row, item, price, (words, days) in zip(place(sheet, top, 0, columns).rows, items, prices, leads, strict=True):
        line = kit.plan.accept(
            sheet,
            row,
            3,
            kit.intent(item, price, basis, lead=days),
            () if days or words == "four weeks" else ("lead-time-unread",),
        )
        if words == "four weeks":
            line["lead_days"] = {"any_of": [None, [28, 28]]}
