"""Four whole lists to lay out otherwise, and what is read of each by price.

Prices are unique in each sheet here, so that an offer is known by its price wherever its cell has gone.
"""

from dataclasses import dataclass, field

from tests.intake.sheets import book, grid
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers


@dataclass
class Sheet:
    """Rows of values, the header's row, and what a sheet says beside its cells."""

    rows: list
    header: int
    prices: tuple
    name: str = "Prices"
    formats: dict = field(default_factory=dict)
    hidden_rows: frozenset = frozenset()
    hidden_columns: frozenset = frozenset()

    def lines(self):
        made = grid(
            self.rows,
            self.name,
            self.formats,
            hidden_rows=self.hidden_rows,
            hidden_columns=self.hidden_columns,
        )
        return read_workbook(book(made), Answers()).lines

    def with_rows(self, rows, **changes):
        same = {"formats": self.formats, "hidden_rows": self.hidden_rows, "hidden_columns": self.hidden_columns}
        return Sheet(rows, changes.pop("header", self.header), self.prices, **{"name": self.name, **same, **changes})


def american():
    rows = [
        ["Harlow Bend Board, Inc."],
        ["FOB mill. Lead time 4 weeks. Valid until 2026-09-30."],
        [],
        ["Grade", "Caliper (pt)", "Basis weight (lb/MSF)", "Price (USD/short ton)"],
        ["SBS C1S", 16, 69, 1175],
        ["SBS C1S", 18, 78, 1165],
        ["CCNB", 18, 69, 905],
        ["CCNB", 20, 78, 895],
    ]
    return Sheet(rows, 3, (3,))


def european():
    rows = [
        ["Lindmoor Karton GmbH"],
        ["Preise frei Haus, Mindestmenge 2 t"],
        [],
        ["Sorte", "Dicke µm", "g/m²", "EUR/t < 5 t", "EUR/t ab 5 t", "Lieferzeit"],
        ["GC2", 380, 235, 1260, 1205, "3-4 Wochen"],
        ["GC2", 440, 275, 1250, 1195, "4 Wochen"],
        ["GD2", 400, 300, 900, 845, "4 Wochen"],
    ]
    return Sheet(rows, 3, (3, 4))


def sheeted():
    rows = [
        ["Overstrand Board Ltd"],
        [],
        ["Board", "g/m²", "Caliper (µm)", "Size (mm)", "£ per 1000 sheets"],
        ["GC1 folding boxboard", 250, 405, "700 x 1000", 185.06],
        ["GC1 folding boxboard", 300, 485, "720 x 1020", 249.84],
        ["SBB C2S", 280, 345, "720 x 1020", 287.78],
    ]
    return Sheet(rows, 2, (4,))


def swedish():
    rows = [
        ["Älvrike Kartong AB"],
        ["Priserna gäller till 2026-10-16"],
        [],
        ["Kvalitet", "Tjocklek (µm)", "Ytvikt (g/m²)", "Pris SEK/ton"],
        ["Vikkartong GC2", 350, 215, 13535],
        ["Vikkartong GC2", 400, 250, 13240],
        ["Gråkartong", 595, 400, 8415],
    ]
    return Sheet(rows, 3, (3,))


SHEETS = (american, european, sheeted, swedish)


def facts(sheet):
    """What is read, by price."""
    read = {}
    for line in sheet.lines():
        o = line.offer
        read[o.price] = (
            line.state, o.vendor, o.grade, o.coated_sides, o.caliper_um, o.grammage_gsm, o.currency, o.basis,
            o.sheet_mm, o.from_kg, o.below_kg, o.minimum_kg, o.lead_days, o.valid_until, o.delivered, o.charges,
        )  # fmt: skip
    return read


def table_rows(sheet):
    return range(sheet.header, len(sheet.rows))
