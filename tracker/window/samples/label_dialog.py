"""Which labels to print, and on which sheet."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QDialog, QWidget

from tracker.desk.sample_papers import label_sheets
from tracker.desk.trouble import Trouble
from tracker.window.look.figures import counted
from tracker.window.pieces import button, column, one_of, row, words
from tracker.window.where_to import where_to

_ON_EACH = "The number stands on each as text and as a QR code; scanning it into the number field opens the record."


class LabelDialog(QDialog):
    """`wanted` carries the numbers, the key of the sheet, and the file to write."""

    wanted = Signal(object, str, object)

    def __init__(self, chosen: int, shown: Sequence[int], parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("Labels")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._of = ([chosen] if chosen in shown or chosen > 0 else [], sorted(shown))
        self.which, which = one_of((f"No. {chosen} only", f"all {counted(len(shown), 'sample')} shown"), self)
        self.sheet = QComboBox()
        self.sheet.setAccessibleName("Label size")
        for key, name in label_sheets().items():
            self.sheet.addItem(name, key)
        write = button("Write the PDF…", "main")
        write.setDefault(True)
        write.clicked.connect(self._write)
        leave = button("Leave")
        leave.clicked.connect(self.reject)
        self._told = words(_ON_EACH, "small", wrap=True)
        self.setLayout(
            column(
                words("Labels for samples", "heading"), row(which, None), self.sheet, self._told,
                row(None, leave, write, gap=8), margins=18, gap=10,
            )
        )  # fmt: skip
        self.resize(420, self.sizeHint().height())
        self.sheet.setFocus()

    def _write(self) -> None:
        try:
            path, _ = where_to(self, "Labels", "labels.pdf", "PDF (*.pdf)")
        except Trouble as trouble:
            self._told.setText(str(trouble))
            return
        if path is not None:
            self.wanted.emit(self._of[self.which.checkedId()], str(self.sheet.currentData()), path)
            self.accept()
