"""The demo's mills and sellers in the United States: short tons, hundredweights, points and pounds per 1,000 ft²."""

import csv
from datetime import date
from pathlib import Path

from tests.demo_sheets.book import new_book
from tests.demo_sheets.market import LEVEL_USD_PER_TONNE, Vendor
from tracker.trade.bands import ratio
from tracker.trade.basis import Basis
from tracker.trade.exact import MM_PER_INCH

PER_TON, CENTS = '"$"#,##0', '"$"#,##0.00'


def brackendell(folder: Path) -> None:
    """A plain list under a title block, in autumn and again in November; one line hidden, one typed per cwt."""
    _brackendell_list(folder / "Brackendell autumn list.xlsx", date(2026, 8, 17), date(2026, 12, 31), 0.975)
    _brackendell_list(folder / "Brackendell price list Nov 2026.xlsx", date(2026, 11, 2), date(2027, 3, 31), 1.0)


def _brackendell_list(path: Path, issued: date, until: date, level: float) -> None:
    vendor = Vendor("Brackendell Mills Inc.", dearness=1.005 * level)
    boards = [
        *(("SBS C1S", 1, board) for board in vendor.in_pounds("SBS", [10, 12, 14, 16, 18, 20, 24])),
        *(("SBS C2S", 2, board) for board in vendor.in_pounds("SBS", [10, 12, 14, 16, 18])),
        *(("Coated unbleached kraft", 1, board) for board in vendor.in_pounds("CUK", [14, 16, 18, 20, 21, 24, 28])),
        *(("Uncoated unbleached kraft", 0, board) for board in vendor.in_pounds("UUK", [16, 18, 20, 24, 28])),
    ]
    november = level == 1.0
    with new_book(path) as pen:
        sheet = pen.sheet("Price list", [27, 8, 10, 13, 13, 13, 14])
        pen.row(sheet, 0, ["Brackendell Mills Inc."], "title")
        pen.row(sheet, 1, ["Folding carton price list, rolls, f.o.b. mill, prices in US dollars"])
        pen.row(sheet, 2, ["Issued", issued], ["plain", "date"])
        pen.row(sheet, 3, ["Valid until", until], ["plain", "date"])
        heads = ["Grade", "Coated sides", "Caliper (pt)", "Basis weight (lb/MSF)", "Price per short ton"]
        pen.row(sheet, 5, [*heads, "Lead time", "Minimum order (lb)"], "head")
        looks = ["plain", "plain", "0", "0", PER_TON, "plain", "#,##0"]
        for row, (name, sides, board) in enumerate(boards, 6):
            lead = vendor.chance().choice(["3 weeks", "4 weeks", "4-5 weeks", "5-6 weeks"])
            price = vendor.price(board, Basis.SHORT_TON, 5)
            if november and name == "SBS C1S" and board.pt == 20:
                price /= 20
            minimum = 20000 if board.grade == "SBS" else 40000
            pen.row(sheet, row, [name, sides, board.pt, round(board.lb_msf), price, lead, minimum], looks)
            if november and name == "SBS C2S" and board.pt == 16:
                sheet.set_row(row, None, None, {"hidden": True})
        end = 7 + len(boards)
        pen.row(sheet, end, ["Prices subject to our conditions of sale. Ask for samples, they are free."], "quiet")


def pell_hollow(folder: Path) -> None:
    """Grades one below the other, order-size brackets across, per hundredweight."""
    vendor = Vendor("Pell Hollow Paperboard Co.", dearness=0.985)
    groups = [
        ("COATED RECYCLED BOARD (CCNB), coated one side", vendor.in_pounds("CRB", [14, 16, 18, 20, 22, 24, 28])),
        ("UNCOATED RECYCLED BOARD (chipboard)", vendor.in_pounds("URB", [18, 20, 22, 24, 28, 30])),
        ("SOLID BLEACHED SULFATE (SBS), coated one side", vendor.in_pounds("SBS", [12, 14, 16, 18, 20, 24])),
    ]
    with new_book(folder / "PellHollow_brackets.xlsx") as pen:
        sheet = pen.sheet("Brackets", [16, 18, 17, 20, 17, 14])
        pen.row(sheet, 0, ["PELL HOLLOW PAPERBOARD CO."], "title")
        pen.row(sheet, 1, ["Prices in US$ per cwt (100 lb), delivered, by size of order. Good through March 31, 2027."])
        row = 3
        for name, boards in groups:
            pen.row(sheet, row, [name], "group")
            brackets = ["Under 10,000 lb", "10,000 - 39,999 lb", "40,000 lb and up"]
            pen.row(sheet, row + 1, ["Caliper (pt)", "Basis wt (lb/MSF)", *brackets, "Lead time"], "head")
            for row, board in enumerate(boards, row + 2):  # noqa: B020 # the next group starts below this one
                prices = vendor.brackets(board, Basis.CWT, 0.05, (0.08, 0.05, 0.02))
                values = [board.pt, round(board.lb_msf), *prices, "2-3 weeks"]
                pen.row(sheet, row, values, ["0", "0", CENTS, CENTS, CENTS, "plain"])
            row += 2


def kestrelby(folder: Path) -> None:
    """A stock offer: one line of words a board, price per hundredweight; one board 45 % above its band."""
    vendor = Vendor("Kestrelby Carton Stock LLC", dearness=1.02)
    described = [
        *(("C1S SBS", board) for board in vendor.in_pounds("SBS", [10, 12, 14, 16, 18, 20, 22, 24])),
        *(("C1S CCNB", board) for board in vendor.in_pounds("CRB", [16, 18, 20, 22, 24, 26, 30])),
        *(("C1S CUK", board) for board in vendor.in_pounds("CUK", [18, 21, 24])),
        *(("Chipboard", board) for board in vendor.in_pounds("URB", [20, 22, 24, 26, 30])),
    ]
    too_dear = round(LEVEL_USD_PER_TONNE * float(ratio("CRB").high) * 1.45 / 22.0462, 2)
    with new_book(folder / "Kestrelby stock offer.xlsx") as pen:
        sheet = pen.sheet("Stock", [8, 46, 14, 16, 16])
        pen.row(sheet, 0, ["Kestrelby Carton Stock LLC, stock offer of November 9, 2026"], "title")
        pen.row(sheet, 1, ["All prices USD per cwt, f.o.b. our warehouse. Offer expires January 31, 2027."])
        pen.row(sheet, 3, ["Item", "Description", "Rolls in stock", "Price USD/cwt", "Ships"], "head")
        for row, (words, board) in enumerate(described, 4):
            width = vendor.chance().choice(["28", "36", "40", "44 1/2"])
            text = f'{words} {board.pt:g}pt {round(board.lb_msf)}#/MSF {width}" rolls'
            planted = words == "C1S CCNB" and board.pt == 20
            price = too_dear if planted else vendor.price(board, Basis.CWT, 0.05)
            rolls, ships = (
                vendor.chance().randint(2, 40),
                vendor.chance().choice(["from stock", "1 week", "from stock"]),
            )
            pen.row(sheet, row, [f"K{row + 96}", text, rolls, price, ships], ["plain", "plain", "0", CENTS, "plain"])


def fennimoor(folder: Path) -> None:
    """Calipers across, grades down, per 1,000 ft² and not a word of basis weight: what it weighs is an estimate."""
    vendor = Vendor("Fennimoor Board Inc.", dearness=0.995)
    points = [12, 14, 16, 18, 20, 22, 24, 26, 28, 30]
    kept = {"SBS": points[:7], "CUK": points[2:9], "UUK": points[2:8], "CRB": points[1:], "URB": points[3:]}
    names = {
        "SBS": "SBS C1S",
        "CUK": "Coated unbleached kraft C1S",
        "UUK": "Uncoated unbleached kraft",
        "CRB": "Coated recycled (CRB) C1S",
        "URB": "Uncoated recycled (URB)",
    }
    with new_book(folder / "fennimoor_msf_grid.xlsx") as pen:
        sheet = pen.sheet("MSF prices", [30, *[9] * len(points)])
        pen.row(sheet, 0, ["Fennimoor Board Inc."], "title")
        pen.row(
            sheet, 1, ["US$ per MSF (1,000 square feet), f.o.b. mill, valid until December 4, 2026, lead time 4 weeks"]
        )
        pen.row(sheet, 3, ["Grade", *(f"{pt} pt" for pt in points)], "head")
        for row, (grade, name) in enumerate(names.items(), 4):
            boards = {board.pt: board for board in vendor.in_pounds(grade, kept[grade])}
            asked = [vendor.price(boards[pt], Basis.MSF, 0.05) if pt in boards else "-" for pt in points]
            pen.row(sheet, row, [name, *asked], ["plain", *[CENTS] * len(points)])


def tresk_ambler(folder: Path) -> None:
    """Sheets by the thousand, of a stated size; one price is a formula that nobody ever calculated."""
    vendor = Vendor("Tresk & Ambler Converting Inc.", dearness=1.045)
    sizes = [(28, 40), (25, 38), (23, 35)]
    boards = [
        *(("SBS C1S", board) for board in vendor.in_pounds("SBS", [12, 14, 16, 18, 20, 24])),
        *(("CRB C1S", board) for board in vendor.in_pounds("CRB", [16, 18, 20, 22, 24, 28])),
        *(("FBB C1S", board) for board in vendor.in_pounds("FBB", [12, 14, 16, 18, 20])),
    ]
    with new_book(folder / "Tresk-Ambler sheets.xlsx") as pen:
        sheet = pen.sheet("Sheeted stock", [12, 12, 14, 15, 22, 14])
        pen.row(sheet, 0, ["Tresk & Ambler Converting Inc."], "title")
        pen.row(sheet, 1, ["Sheeted board. Prices in USD per 1,000 sheets, delivered. Valid until 2027-01-31."])
        heads = ["Grade", "Caliper, pt", "Weight, lb/MSF", "Sheet size, in", "USD per 1,000 sheets", "Lead time"]
        pen.row(sheet, 3, heads, "head")
        for row, (name, board) in enumerate(boards, 4):
            width, length = sizes[row % 3]
            sheet_mm = (width * MM_PER_INCH, length * MM_PER_INCH)
            price = vendor.price(board, Basis.THOUSAND_SHEETS, 0.5, sheet_mm)
            values = [name, board.pt, round(board.lb_msf), f"{width} x {length}", price, "10 business days"]
            pen.row(sheet, row, values, ["plain", "0", "0", "plain", CENTS, "plain"])
            if name == "CRB C1S" and board.pt == 22:
                sheet.write_formula(row, 4, f"=E{row}*1.035", pen.look(CENTS), "")


def halvern(folder: Path) -> None:
    """An importer's list of folding boxboard in points and grams, per 'ton': which one, the file does not say."""
    vendor = Vendor("Halvern Trade Board LLC", dearness=0.985)
    with new_book(folder / "Halvern FBB offer.xlsx") as pen:
        sheet = pen.sheet("Offer", [24, 14, 14, 16, 12])
        pen.row(sheet, 0, ["Halvern Trade Board LLC"], "title")
        pen.row(sheet, 1, ["Imported folding boxboard, delivered east coast, valid until 28 February 2027"])
        pen.row(sheet, 3, ["Board", "Caliper pt", "Grammage g/m²", "Price USD/ton", "Lead time"], "head")
        for row, board in enumerate(vendor.in_grams("FBB", [200, 215, 230, 250, 270, 300, 325, 350]), 4):
            price = vendor.price(board, Basis.TONNE, 5)
            values = ["Folding boxboard (FBB) C1S", round(board.pt, 1), board.gsm, price, "9 weeks"]
            pen.row(sheet, row, values, ["plain", "0.0", "0", PER_TON, "plain"])


def drummelow(folder: Path) -> None:
    """Last summer's list: every price in it has lapsed."""
    vendor = Vendor("Drummelow Paper Sales Inc.", dearness=0.94)
    groups = {
        "SBS C1S": vendor.in_pounds("SBS", [12, 14, 16, 18, 20, 24]),
        "FBB": vendor.in_pounds("FBB", [12, 14, 16, 18, 20, 22]),
    }
    heads = [
        "Vendor",
        "Grade",
        "Caliper pt",
        "Basis weight lb/MSF",
        "Price",
        "Currency",
        "Per",
        "Lead time",
        "Valid until",
    ]
    with (folder / "drummelow_summer.csv").open("w", encoding="utf-8-sig", newline="") as file:
        rows = csv.writer(file)
        rows.writerow(heads)
        for name, boards in groups.items():
            for board in boards:
                price = f"{vendor.price(board, Basis.SHORT_TON, 5):,.2f}"
                weight = round(board.lb_msf)
                line = [vendor.name, name, f"{board.pt:g}", weight, price, "USD", "short ton", "3 weeks", "2026-09-30"]
                rows.writerow(line)
