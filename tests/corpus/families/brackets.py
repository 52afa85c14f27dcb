"""Prices by order size: bracket columns and bracket rows, in the vendor's own units."""

from decimal import Decimal
from fractions import Fraction

from tests.corpus.boards import Board
from tests.corpus.columns import FORMATS, caliper_column, place, product_column, weight_column
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.truth import KG_PER

Bracket = tuple[str, Fraction | None, Fraction | None]


IN_WORDS = {
    "en": (
        ("under {} {}", "{} to {} {}", "{} {} and over"),
        ("less than {} {}", "{} to under {} {}", "{} {} or more"),
        ("below {} {}", "{} - {} {}", "min. {} {}"),
    ),
    "de": (("unter {} {}", "{} bis {} {}", "über {} {}"), ("unter {} {}", "{} bis unter {} {}", "mind. {} {}")),
    "fr": (("moins de {} {}", "de {} à {} {}", "{} {} et plus"), ("moins de {} {}", "{} à {} {}", "plus de {} {}")),
    "es": (("menos de {} {}", "de {} a {} {}", "{} {} o más"), ("menos de {} {}", "{} a {} {}", "más de {} {}")),
    "sv": (("under {} {}", "{} till {} {}", "{} {} och mer"), ("under {} {}", "{} till {} {}", "minst {} {}")),
}


def weight_brackets(kit: Kit) -> tuple[str, list[Bracket]]:
    """Three or four order sizes in words with their bounds in kg; the unit is said in each."""
    unit = kit.pick(("lb", "lb", "cwt")) if kit.us else kit.pick(("t", "t", "kg"))
    per = {"lb": KG_PER["lb"], "cwt": KG_PER["cwt"], "t": Fraction(1000), "kg": Fraction(1)}[unit]
    edges = {"lb": (5000, 20000, 40000), "cwt": (50, 200, 400), "t": (3, 10, 20), "kg": (1000, 5000, 10000)}[unit]

    def n(value: int) -> str:
        return f"{value:,}" if kit.us and unit == "lb" else str(value)

    style = kit.pick(("signs", "open", "from", "words"))
    low, mid, high = (Fraction(edge) * per for edge in edges)
    a, b, c = (n(edge) for edge in edges)
    if style == "signs":
        words = [f"< {a} {unit}", f"{a}–{b} {unit}", f"{b}-{c} {unit}", f"> {c} {unit}"]
        return unit, list(zip(words, (None, low, mid, high), (low, mid, high, None), strict=True))
    if style == "words":
        under, between, above = kit.pick(IN_WORDS[kit.lang.code])
        words = [under.format(a, unit), between.format(a, b, unit), between.format(b, c, unit), above.format(c, unit)]
        return unit, list(zip(words, (None, low, mid, high), (low, mid, high, None), strict=True))
    upto, start, over = {
        "en": ("up to {} ", "from {} ", "{} {}+"),
        "de": ("bis {} ", "ab {} ", "ab {} {}"),
        "fr": ("jusqu'à {} ", "à partir de {} ", "> {} {}"),
        "es": ("hasta {} ", "desde {} ", "más de {} {}"),
        "sv": ("upp till {} ", "från {} ", "över {} {}"),
    }[kit.lang.code]
    if style == "open":
        words = [upto.format(a) + unit, f"{a}-{b} {unit}", f"{b}-{c} {unit}", over.format(c, unit)]
        return unit, list(zip(words, (None, low, mid, high), (low, mid, high, None), strict=True))
    words = [start.format(a) + unit, start.format(b) + unit, start.format(c) + unit]
    return unit, list(zip(words, (low, mid, high), (mid, high, None), strict=True))


def _board_columns(kit: Kit, items: list[Board]):
    return [product_column(kit, items), caliper_column(kit, items), weight_column(kit, items)]


def _bracket_prices(
    kit: Kit, sheet, row: int, left: int, item: Board, brackets: list[Bracket], basis: str, fmt: str | None = None
) -> None:
    top = kit.price(item, basis, factor=1.06)
    step = Decimal("0.97")
    for offset, (_, low, below) in enumerate(brackets):
        digits = -top.as_tuple().exponent if top.as_tuple().exponent < 0 else 0
        amount = (top * step**offset).quantize(Decimal(1).scaleb(-digits))
        sheet.put(
            row, left + offset, amount, fmt=kit.pick(FORMATS[digits]) if fmt is None else fmt, places=digits or None
        )
        kit.plan.accept(sheet, row, left + offset, kit.intent(item, amount, basis, from_kg=low, below_kg=below))


@family("bracket_columns", SHEETS)
def bracket_columns(kit: Kit) -> None:
    """A merged price heading over bracket columns."""
    sheet = kit.plan.sheet("Tariff")
    basis = kit.pick(("short_ton", "cwt")) if kit.us else kit.pick(("tonne", "kg"))
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3)
    _, brackets = weight_brackets(kit)
    placed = place(sheet, top + 1, 0, _board_columns(kit, items))
    for column in range(3):
        sheet.cells[top, column] = sheet.cells.pop((top + 1, column))
        sheet.merge(top, column, top + 1, column)
    sheet.put(top, 3, kit.price_head(basis), bold=True)
    sheet.merge(top, 3, top, 2 + len(brackets))
    sheet.row(top + 1, 3, [words for words, _, _ in brackets], bold=True)
    for row, item in zip(placed.rows, items, strict=True):
        _bracket_prices(kit, sheet, row, 3, item, brackets, basis)


@family("bracket_columns_flat", ALL)
def bracket_columns_flat(kit: Kit) -> None:
    """Bracket columns in the one header row; currency and basis in the title block."""
    sheet = kit.plan.sheet("Tariff")
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis) + 1
    items = kit.range(3)
    _, brackets = weight_brackets(kit)
    placed = place(sheet, top, 0, _board_columns(kit, items))
    sheet.row(top, 3, [words for words, _, _ in brackets], bold=True)
    for row, item in zip(placed.rows, items, strict=True):
        _bracket_prices(kit, sheet, row, 3, item, brackets, basis, "General")


@family("bracket_rows", ALL)
def bracket_rows(kit: Kit) -> None:
    """A row for each order size; the board may be written once for its rows."""
    sheet = kit.plan.sheet("Tariff")
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, say="vdl") + 1
    _, brackets = weight_brackets(kit)
    once = kit.chance(0.5)
    sheet.row(
        top,
        0,
        [kit.head("product"), kit.caliper_head(), kit.weight_head(), kit.head("quantity"), kit.price_head(basis)],
        bold=True,
    )
    row = top + 1
    for item in kit.range(2, 2, 3):
        for offset, (words, low, below) in enumerate(brackets):
            if offset == 0 or not once:
                sheet.row(row, 0, [item.words, item.caliper, item.weight])
            amount = kit.price(item, basis, factor=1.06 - 0.03 * offset)
            sheet.put(row, 3, words)
            sheet.put(row, 4, amount, places=max(0, -amount.as_tuple().exponent) or None)
            kit.plan.accept(sheet, row, 4, kit.intent(item, amount, basis, from_kg=low, below_kg=below))
            row += 1
