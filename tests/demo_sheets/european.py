"""The demo's European mills: tonnes, grammages, micrometres, and each country's own way with words and numbers."""

import csv
from pathlib import Path

import xlwt

from tests.demo_sheets.book import new_book
from tests.demo_sheets.market import Board, Vendor
from tracker.trade.basis import Basis

EUROS = '#,##0" €"'


def lauterfels(folder: Path) -> None:
    """A German list as a 1252-encoded CSV with semicolons and decimal commas."""
    vendor = Vendor("Lauterfels Karton GmbH", "EUR", 1.03)
    qualities = [
        ("GC1", "Faltschachtelkarton, weiße Rückseite", "FBB", [200, 220, 235, 250, 270, 300, 325, 350]),
        ("GC2", "Faltschachtelkarton, cremefarbene Rückseite", "FBB", [210, 230, 250, 275, 300, 330, 350]),
        ("GD2", "Chromoduplexkarton, graue Rückseite", "CRB", [250, 280, 300, 320, 350, 400, 450]),
        ("GT2", "Chromoduplexkarton, cremefarbene Rückseite", "CRB", [260, 290, 320, 350]),
    ]
    with (folder / "Lauterfels Preisliste 11-2026.csv").open("w", encoding="cp1252", newline="") as file:
        rows = csv.writer(file, delimiter=";", lineterminator="\r\n")
        rows.writerow(["Lauterfels Karton GmbH", "", "", "", "", "", ""])
        rows.writerow(["Preisliste gültig bis 31.03.2027, Preise frei Haus", "", "", "", "", "", ""])
        rows.writerow([""] * 7)
        heads = [
            "Qualität",
            "Bezeichnung",
            "Grammatur g/m²",
            "Dicke µm",
            "Preis EUR/t",
            "Lieferzeit",
            "Mindestmenge kg",
        ]
        rows.writerow(heads)
        for code, words, grade, grammages in qualities:
            for board in vendor.in_grams(grade, grammages):
                price = f"{vendor.price(board, Basis.TONNE, 2.5):,.2f}".translate(str.maketrans(",.", ".,"))
                weeks = vendor.chance().choice(["3 Wochen", "4-5 Wochen", "4 Wochen"])
                rows.writerow([code, words, board.gsm, round(board.um), price, weeks, "5000"])


def valbrune(folder: Path) -> None:
    """A French tariff: order sizes across in tonnes, prices as text with a comma, carriage paid."""
    vendor = Vendor("Cartonnerie de Valbrune SAS", "EUR", 1.02)
    boards = [
        *(("FBB (carton pliant GC1)", board) for board in vendor.in_grams("FBB", [215, 235, 255, 280, 305, 340])),
        *(("SBS (carton blanchi GZ)", board) for board in vendor.in_grams("SBS", [240, 280, 320, 360])),
        *(("Duplex GD2", board) for board in vendor.in_grams("CRB", [280, 320, 350, 400])),
    ]
    with new_book(folder / "Tarif Valbrune 2026-2.xlsx") as pen:
        sheet = pen.sheet("Tarif", [28, 14, 14, 16, 16, 16, 14])
        pen.row(sheet, 0, ["Cartonnerie de Valbrune SAS"], "title")
        pen.row(sheet, 1, ["Tarif en euros par tonne (1 000 kg), franco, valable jusqu'au 28/02/2027"])
        heads = ["Qualité", "Grammage g/m²", "Épaisseur µm", "moins de 5 t", "5 à 20 t", "plus de 20 t", "Délai"]
        pen.row(sheet, 3, heads, "head")
        for row, (name, board) in enumerate(boards, 4):
            asked = vendor.brackets(board, Basis.TONNE, 2.5, (0.05, 0.02, -0.01))
            texts = [f"{price:,.2f}".translate(str.maketrans({",": "\u202f", ".": ","})) for price in asked]
            weeks = vendor.chance().choice(["3 semaines", "4 semaines", "5 semaines"])
            pen.row(sheet, row, [name, board.gsm, round(board.um), *texts, weeks])


def myrtorp(folder: Path) -> None:
    """A Swedish list in crowns: the currency is only in the heading, the thousands are set apart by spaces."""
    vendor = Vendor("Myrtorps Kartong AB", "SEK", 0.99)
    groups = [
        ("Falskartong (FBB)", vendor.in_grams("FBB", [200, 225, 250, 280, 310, 340])),
        ("Solid blekt kartong (SBS)", vendor.in_grams("SBS", [230, 260, 290, 330, 370])),
        ("Bestruken oblekt kraftkartong (CUK)", vendor.in_grams("CUK", [280, 320, 360, 400, 440])),
    ]
    with new_book(folder / "Myrtorp prislista.xlsx") as pen:
        sheet = pen.sheet("Prislista", [34, 12, 14, 18, 14])
        pen.row(sheet, 0, ["Myrtorps Kartong AB"], "title")
        pen.row(sheet, 1, ["Prislista från 2026-10-15, giltig till 2027-01-31. Fritt fabrik."])
        pen.row(sheet, 3, ["Kvalitet", "Ytvikt g/m²", "Tjocklek µm", "Pris SEK per 1000 kg", "Leveranstid"], "head")
        row = 4
        for name, boards in groups:
            for place, board in enumerate(boards):
                price = vendor.price(board, Basis.TONNE, 25)
                weeks = vendor.chance().choice(["4 veckor", "5 veckor", "6 veckor"])
                values = [None if place else name, board.gsm, round(board.um), price, weeks]
                pen.row(sheet, row, values, ["plain", "0", "0", "# ##0", "plain"])
                row += 1


def ullingstow(folder: Path) -> None:
    """A British list in the old .xls format, one sheet a grade; only the number format says pounds sterling."""
    vendor = Vendor("Ullingstow Board Ltd", "GBP", 1.015)
    grades = {
        "SBS": ("SBS, coated one side", vendor.in_grams("SBS", [235, 255, 285, 315, 345, 380])),
        "FBB": ("Folding boxboard (FBB), coated one side", vendor.in_grams("FBB", [215, 235, 260, 285, 315, 345])),
        "WLC": ("White-lined chipboard (WLC)", vendor.in_grams("CRB", [280, 320, 360, 400, 450])),
        "Greyboard": ("Greyboard (URB)", vendor.in_grams("URB", [350, 400, 450, 500])),
    }
    book = xlwt.Workbook(encoding="utf-8")
    pounds = xlwt.easyxf(num_format_str="[$£-809]#,##0.00")
    bold = xlwt.easyxf("font: bold on")
    for title, (name, boards) in grades.items():
        sheet = book.add_sheet(title)
        sheet.col(0).width = 11000
        sheet.write(0, 0, "Ullingstow Board Ltd", bold)
        sheet.write(1, 0, "Delivered UK mainland. Valid to 31 March 2027. Lead time 3 weeks.")
        for column, head in enumerate(["Grade", "Grammage (gsm)", "Caliper (micron)", "Price per tonne"]):
            sheet.write(3, column, head, bold)
        for row, board in enumerate(boards, 4):
            _ullingstow_row(sheet, row, name, board, vendor, pounds)
    book.save(str(folder / "ULLINGSTOW.xls"))


def _ullingstow_row(
    sheet: xlwt.Worksheet, row: int, name: str, board: Board, vendor: Vendor, pounds: xlwt.XFStyle
) -> None:
    for column, value in enumerate([name, board.gsm, round(board.um)]):
        sheet.write(row, column, value)
    sheet.write(row, 3, vendor.price(board, Basis.TONNE, 2.5), pounds)
