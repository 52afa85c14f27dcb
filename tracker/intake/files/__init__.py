"""From a vendor's file of any format to a Workbook of plain grids."""

from tracker.intake.files.opening import open_workbook

__all__ = ["open_workbook"]
