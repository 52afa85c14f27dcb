"""A draft of what to ask the vendor, to be copied into the user's own mail; nothing is sent from here."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QPlainTextEdit, QWidget

from tracker.trade.offer import Question
from tracker.window.pieces import button, column, row, words


class VendorWordsDialog(QDialog):
    """Shows the draft, which can be changed before it is copied."""

    def __init__(self, file: str, questions: Sequence[Question], parent: QWidget) -> None:
        from tracker.desk.vendor_words import words_to_vendor

        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("Ask the vendor")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.text = QPlainTextEdit(words_to_vendor(file, questions))
        self.text.setAccessibleName("Draft of a message to the vendor")
        self.copy_words = button("Copy", "main")
        self.copy_words.clicked.connect(self._copy)
        leave = button("Close")
        leave.clicked.connect(self.reject)
        told = words("A draft for your own mail; nothing is sent from here.", "small")
        foot = row(told, None, leave, self.copy_words, gap=10)
        self.setLayout(column(words("Ask the vendor", "heading"), self.text, foot, margins=18, gap=10, grow=1))
        self.resize(560, 380)

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.text.toPlainText())
        self.accept()
