"""Prices in a grid: caliper, weight, grade or destination across."""

from decimal import Decimal

from tests.corpus.boards import Board
from tests.corpus.columns import FORMATS
from tests.corpus.kit import Kit
from tests.corpus.model import SheetPlan
from tests.corpus.registry import ALL, SHEETS, family
from tests.corpus.words.units import UNIT_WORDS


def _without_weight(item: Board) -> Board:
    item.weight = None
    return item


def _without_caliper(item: Board) -> Board:
    item.caliper = None
    return item


def _grid_price(kit: Kit, sheet: SheetPlan, row: int, column: int, item: Board, basis: str, fmt: str, **over) -> None:
    if kit.chance(0.12):
        sheet.put(row, column, kit.pick(("-", "–", "n/a" if kit.lang.code == "en" else "-")))
        kit.plan.no_price(sheet, row, column)
        return
    amount = kit.price(item, basis, factor=1.05 - 0.015 * (column % 7))
    sheet.put(row, column, amount, fmt=fmt, places=max(0, -amount.as_tuple().exponent) or None)
    kit.plan.accept(sheet, row, column, kit.intent(item, amount, basis, **over))


@family("caliper_across", ALL)
def caliper_across(kit: Kit) -> None:
    """Grades down, calipers across; no weight quoted."""
    sheet = kit.plan.sheet("Matrix")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis) + 1
    sizes = (12, 14, 16, 18, 20, 24) if kit.us else (250, 300, 350, 400)
    units = [kit.pick(("{} pt", "{}pt", '.0{}"')) if kit.us else "{} µm"][0]
    calipers = [Decimal(size) if kit.us else Decimal(round(size * 1.4 / 10) * 10) for size in sizes]
    sheet.put(top, 0, kit.head("product"))
    fmt = kit.pick(FORMATS[2 if basis == "cwt" else 0])
    for offset, caliper in enumerate(calipers):
        sheet.put(top, 1 + offset, units.format(caliper), bold=True)
    for line, grade in enumerate(kit.grades(4)):
        words = kit.pick(kit.lang.boards[grade])
        sheet.put(top + 1 + line, 0, words[0])
        for offset, caliper in enumerate(calipers):
            item = _without_weight(kit.series(grade, 1, words)[0])
            item.caliper = caliper
            _grid_price(kit, sheet, top + 1 + line, 1 + offset, item, basis, fmt)
    kit.footer(sheet, top + 7, 0)


@family("caliper_across_bare", SHEETS)
def caliper_across_bare(kit: Kit) -> None:
    """Calipers across as bare numbers under a merged heading that says caliper and unit."""
    sheet = kit.plan.sheet("Matrix")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "msf")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis) + 1
    calipers = [Decimal(n) for n in ((14, 16, 18, 20) if kit.us else (380, 440, 500, 560))]
    sheet.put(top, 1, f"{kit.pick(kit.lang.headers['caliper'])} ({kit.pick(UNIT_WORDS[kit.units[0]])})", bold=True)
    sheet.merge(top, 1, top, len(calipers))
    sheet.put(top, 0, kit.head("product"))
    sheet.merge(top, 0, top + 1, 0)
    sheet.row(top + 1, 1, calipers, bold=True)
    for line, grade in enumerate(kit.grades(3)):
        words = kit.pick(kit.lang.boards[grade])
        sheet.put(top + 2 + line, 0, words[0])
        for offset, caliper in enumerate(calipers):
            item = _without_weight(kit.series(grade, 1, words)[0])
            item.caliper = caliper
            _grid_price(kit, sheet, top + 2 + line, 1 + offset, item, basis, "General")


@family("weight_across", ALL)
def weight_across(kit: Kit) -> None:
    """Grades down, basis weights across; no caliper quoted."""
    sheet = kit.plan.sheet("Matrix")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "cwt", "msf")) if kit.us else kit.pick(("tonne", "1000m2"))
    top = kit.title_block(sheet, 0, 0, basis) + 1
    unit = kit.pick(UNIT_WORDS[kit.units[1]])
    weights = [Decimal(n) for n in ((60, 70, 80, 90) if kit.us else (230, 250, 300, 350, 400))]
    sheet.put(top, 0, kit.head("product"))
    for offset, weight in enumerate(weights):
        sheet.put(top, 1 + offset, f"{weight} {unit}", bold=True)
    fmt = kit.pick(FORMATS[0 if basis in ("short_ton", "tonne") else 2])
    for line, grade in enumerate(kit.grades(3)):
        words = kit.pick(kit.lang.boards[grade])
        sheet.put(top + 1 + line, 0, words[0])
        for offset, weight in enumerate(weights):
            item = _without_caliper(kit.series(grade, 1, words)[0])
            item.weight = weight
            _grid_price(kit, sheet, top + 1 + line, 1 + offset, item, basis, fmt)


@family("grade_across", SHEETS)
def grade_across(kit: Kit) -> None:
    """Calipers down, grades across under a header row."""
    sheet = kit.plan.sheet("Matrix")
    kit.ton_is_settled = False
    basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
    top = kit.title_block(sheet, 0, 0, basis) + 1
    calipers = [Decimal(n) for n in ((14, 16, 18, 20, 24) if kit.us else (380, 440, 500, 560))]
    sheet.put(top, 0, kit.caliper_head())
    chosen = [(grade, kit.pick(kit.lang.boards[grade])) for grade in kit.grades(3)]
    for offset, (_, words) in enumerate(chosen):
        sheet.put(top, 1 + offset, words[0], bold=True)
    for line, caliper in enumerate(calipers):
        sheet.put(top + 1 + line, 0, caliper)
        for offset, (grade, words) in enumerate(chosen):
            item = _without_weight(kit.series(grade, 1, words)[0])
            item.caliper = caliper
            _grid_price(kit, sheet, top + 1 + line, 1 + offset, item, basis, "#,##0.00")
