"""Cindervale's open-document file: one sheet a grade, freight in a column of its own, conditions on the last sheet."""

from pathlib import Path
from typing import Any

from odf.namespaces import OFFICENS
from odf.opendocument import OpenDocumentSpreadsheet
from odf.table import Table, TableCell, TableRow
from odf.text import P

from tests.demo_sheets.market import Vendor
from tracker.trade.basis import Basis

GRADES = {
    "CRB": ("Coated recycled board (CRB), coated one side", [16, 18, 20, 22, 24, 26, 30]),
    "URB": ("Uncoated recycled board (URB)", [18, 20, 24, 26, 28, 30]),
    "UUK": ("Uncoated unbleached kraft (UUK)", [16, 18, 20, 24, 28, 30]),
}
HEADS = ["Grade", "Caliper (pt)", "Weight (lb/MSF)", "USD/short ton", "Freight USD/short ton", "Lead time (weeks)"]
CONDITIONS = [
    "Conditions",
    "Prices f.o.b. mill; freight to your dock is quoted beside each price.",
    "Payment 30 days net. Weights as invoiced.",
    "Valid until 28 February 2027.",
]


def cindervale(folder: Path) -> None:
    """20 prices; one weight is given on 3,000 ft² under a heading that says 1,000."""
    vendor = Vendor("Cindervale Recycled Board Corp.", dearness=0.99)
    document = OpenDocumentSpreadsheet()
    for grade, (name, points) in GRADES.items():
        table = _table(document, grade)
        _row(table, [f"{vendor.name}: {name}"])
        _row(table, ["Quotation of 4 November 2026, valid until 28 February 2027"])
        _row(table, [])
        _row(table, HEADS)
        for board in vendor.in_pounds(grade, points):
            weight = round(board.lb_msf) * (3 if grade == "UUK" and board.pt == 30 else 1)
            lead = vendor.chance().choice([3, 4, 5])
            _row(table, [name, board.pt, weight, vendor.price(board, Basis.SHORT_TON, 5), 62, lead])
    conditions = _table(document, "Conditions")
    for text in CONDITIONS:
        _row(conditions, [text])
    document.save(str(folder / "Cindervale quotation.ods"))


def _table(document: OpenDocumentSpreadsheet, name: str) -> Table:
    table = Table(name=name)
    document.spreadsheet.addElement(table)
    return table


def _row(table: Table, values: list[Any]) -> None:
    row = TableRow()
    for value in values:
        row.addElement(_cell(value))
    table.addElement(row)


def _cell(value: Any) -> TableCell:
    if isinstance(value, str):
        cell = TableCell(valuetype="string")
        cell.addElement(P(text=value))
        return cell
    cell = TableCell(valuetype="float", value=f"{value:g}")
    cell.setAttrNS(OFFICENS, "value", f"{value:g}")
    cell.addElement(P(text=f"{value:g}"))
    return cell
