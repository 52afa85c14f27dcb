"""The file itself as the difficulty: dialects, encodings, numbers as text, big and broken files."""

import io
import zipfile
from collections.abc import Iterator
from decimal import Decimal
from itertools import count, islice

from tests.corpus.boards import Board
from tests.corpus.columns import Column, caliper_column, place, product_column, simple_table, weight_column
from tests.corpus.kit import Kit
from tests.corpus.model import Csv, FilePlan
from tests.corpus.registry import family


@family("csv_dialects", ("csv",))
def csv_dialects(kit: Kit) -> None:
    """Odd delimiters and encodings, quoted line breaks in headers, every field quoted."""
    kit.plan.csv.quote_all = kit.chance(0.5)
    kit.plan.csv.encoding = kit.pick(("utf-16", "utf-8-sig", "cp1252", "utf-8"))
    kit.plan.csv.delimiter = kit.pick(";\t|") if kit.lang.code != "en" else kit.pick(",;\t|")
    sheet = kit.plan.sheet("x")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    simple_table(kit, sheet, top, 0, kit.range(3), basis, head=kit.price_head(basis).replace(" ", "\n", 1))


@family("csv_blank_records", ("csv",))
def csv_blank_records(kit: Kit) -> None:
    """Empty records before and between: each counts."""
    sheet = kit.plan.sheet("x")
    items = kit.range(3)
    gaps = {index for index in range(1, len(items)) if kit.chance(0.3)}
    simple_table(kit, sheet, kit.rng.randint(1, 4), 0, items, kit.natural_basis(), gaps=gaps)


@family("csv_comma_in_numbers", ("csv",), ("de", "fr", "es", "sv"))
def csv_comma_in_numbers(kit: Kit) -> None:
    """Comma between fields and inside quoted numbers."""
    kit.plan.csv = Csv(",", "utf-8", ",", "", "\r\n")
    sheet = kit.plan.sheet("x")
    items = kit.range(3)
    prices = [kit.price(item, "tonne") + Decimal("0.50") for item in items]
    simple_table(kit, sheet, 0, 0, items, "tonne", prices=prices)


PLAINEST = (
    "vendor,product,grade,coated_sides,caliper_pt,basis_weight_lb_msf,price,currency,basis,"
    "from_kg,below_kg,lead_days,valid_until,received"
)


@family("plainest_csv", ("csv",), ("en-us",))
def plainest_csv(kit: Kit) -> None:
    """The plain list for scripts that the commands name: read without a question."""
    kit.plan.csv = Csv(",", "utf-8", ".", "", "\n")
    sheet = kit.plan.sheet("x")
    sheet.row(0, 0, PLAINEST.split(","))
    kit.facts.vendor = kit.vendor
    kit.plan.vendor = {"any_of": [kit.vendor, None]}
    for row, item in enumerate(kit.range(4), start=1):
        basis = kit.pick(("short_ton", "tonne", "cwt", "lb", "msf", "1000m2", "kg", "m2"))
        amount = kit.price(item, basis)
        sides = item.sides if isinstance(item.sides, int) else 0 if item.grade in ("URB", "UUK") else 1
        low, below = kit.pick(((None, None), (None, 5000), (5000, 20000), (20000, None)))
        day = kit.day()
        lead = kit.pick((None, 0, 14, 35))
        values = [
            kit.vendor,
            item.words,
            item.grade,
            sides,
            item.caliper,
            item.weight,
            format(amount, "f"),
            "USD",
            basis,
        ]
        sheet.row(row, 0, [*values, low, below, lead, day.isoformat(), "2026-05-04"])
        over = {
            "sides": sides,
            "from_kg": low,
            "below_kg": below,
            "lead": None if lead is None else (lead, lead),
            "valid": day,
        }
        kit.plan.accept(sheet, row, 6, kit.intent(item, amount, basis, **over))


@family("numbers_as_text", ("xlsx", "xlsxw", "xls", "ods"))
def numbers_as_text(kit: Kit) -> None:
    """Every number is text, written as the vendor's country writes it."""
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    prices = [kit.price(item, basis) + Decimal("0.50") for item in items]
    sign = "'" if kit.country == "CH" else {"en": ",", "de": ".", "es": ".", "fr": " ", "sv": " "}[kit.lang.code]
    point = "." if kit.lang.code == "en" or sign == "'" else ","
    columns = [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]
    for column in columns[1:]:
        column.cells = [str(value) for value in column.cells]
    shown = [f"{price:,.2f}".replace(",", "_").replace(".", point).replace("_", sign) for price in prices]
    columns.append(Column("price", kit.price_head(basis), shown))
    for row, item, price in zip(place(sheet, top, 0, columns).rows, items, prices, strict=True):
        kit.plan.accept(sheet, row, 3, kit.intent(item, price, basis))


@family("macro_workbook", ("xlsm",))
def macro_workbook(kit: Kit) -> None:
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    simple_table(kit, sheet, kit.title_block(sheet, 0, 0, basis) + 1, 0, kit.range(3), basis)


@family("claims_a_million_rows", ("xlsx",))
def claims_a_million_rows(kit: Kit) -> None:
    """The used range says A1:XFD1048576; the list is short."""
    kit.plan.huge_dimension = True
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    simple_table(kit, sheet, kit.title_block(sheet, 0, 0, basis) + 1, 0, kit.range(3), basis)


@family("bulk_list", ("xlsxw", "csv"), ("en-us", "de"), resave=False, heavy=True)
def bulk_list(kit: Kit) -> None:
    """Twenty thousand rows."""
    kit.plan.bulk = True
    sheet = kit.plan.sheet("Prices")
    basis = "short_ton" if kit.us else "tonne"
    names = [kit.head("item"), kit.head("product"), kit.caliper_head(), kit.weight_head(), kit.price_head(basis)]
    sheet.row(0, 0, names)
    for row, item in enumerate(islice(_distinct(kit), 20_000), start=1):
        amount = kit.price(item, basis)
        sheet.row(row, 0, [f"B-{row:05}", item.words, item.caliper, item.weight, amount])
        kit.plan.accept(sheet, row, 4, kit.intent(item, amount, basis))


def _distinct(kit: Kit) -> Iterator[Board]:
    """Boards no two of which are the same: each size again, a little heavier."""
    for step in count():
        for grade in ("SBS", "CRB", "URB", "FBB", "CUK"):
            for words in kit.lang.boards[grade]:
                for item in kit.series(grade, 5, words):
                    item.weight += Decimal(step) / 10
                    yield item


ODD_LINES = (
    '=HYPERLINK("http://example.invalid","click")',
    "+1 555 0199",
    "@prices on request",
    "-- draft --",
    "\u05de\u05d7\u05d9\u05e8\u05d5\u05df 2026",
    "\u0627\u0644\u0623\u0633\u0639\u0627\u0631 1180",
    "board " * 3000,
    "\u202e0811 DSU\u202c",
    "price\u200b list",
)


@family("odd_text", ("xlsx", "xlsxw", "xls", "ods", "csv"))
def odd_text(kit: Kit) -> None:
    """Lines that look like formulas, run right to left, or never end, around a plain list."""
    sheet = kit.plan.sheet("Prices")
    basis = kit.natural_basis()
    top = kit.title_block(sheet, 0, 0) + 1
    placed = simple_table(kit, sheet, top, 0, kit.range(3), basis, extras=False)
    for offset, line in enumerate(kit.rng.sample(ODD_LINES, 4)):
        sheet.put(placed.below + 1 + offset, 0, line)


@family("no_prices", ("xlsx", "xlsxw", "xls", "ods", "csv"))
def no_prices(kit: Kit) -> None:
    """Readable, but holds no prices: no lines."""
    sheet = kit.plan.sheet("Terms")
    kit.title_block(sheet, 0, 0, say="vdlm")
    for offset, line in enumerate(kit.lang.noise):
        sheet.put(10 + offset, 0, line)


def _unreadable(kit: Kit, data: bytes, extension: str) -> FilePlan:
    return FilePlan(raw=data, extension=extension, unreadable=True)


def _small_zip() -> bytes:
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w") as archive:
        archive.writestr("readme.txt", "nothing of a workbook")
    return stream.getvalue()


@family("unreadable", resave=False)
def unreadable(kit: Kit) -> FilePlan:
    """Broken, empty, encrypted or not a workbook at all."""
    from tests.corpus.writers.openpyxl_book import write_xlsx

    sheet = kit.plan.sheet("Prices")
    simple_table(kit, sheet, 0, 0, kit.range(2), "short_ton" if kit.us else "tonne")
    good = write_xlsx(kit.plan)
    html = b"<html><head><title>Sign in</title></head><body><p>Your session has ended.</p></body></html>"
    picture = b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 4
    ole = bytes.fromhex("d0cf11e0a1b11ae1") + b"\0" * 24 + "EncryptedPackage".encode("utf-16-le") + b"\0" * 2000
    cases = (
        (good[: len(good) // 2], "xlsx"),
        (html, "xls"),
        (picture, "xlsx"),
        (b"", "xlsx"),
        (b"", "csv"),
        (ole, "xlsx"),
        (_small_zip(), "xlsx"),
        (b"\r\n\r\n", "csv"),
        (b"%PDF-1.4\n%\xe2\xe3\xcf\xd3\n1 0 obj\n<<>>\nendobj\n", "xlsx"),
        (good[200:], "ods"),
    )
    return _unreadable(kit, *kit.pick(cases))
