"""The foot of the window: what the database holds, and over it the message of the moment."""

import numpy as np
from PySide6.QtWidgets import QGridLayout, QWidget

from tracker.window.look.figures import counted
from tracker.window.message_bar import MessageBar
from tracker.window.pieces import words
from tracker.window.session import Session


class Foot(QWidget):
    """One line high whether a message stands in it or not, so that nothing above it ever moves."""

    def __init__(self, session: Session, message: MessageBar, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.held = words("", "small")
        self.held.setContentsMargins(20, 4, 20, 4)
        layout = QGridLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.held, 0, 0)
        layout.addWidget(message, 0, 0)
        message.raise_()
        session.compared.connect(self._tell)
        session.samples_changed.connect(self._tell)

    def _tell(self) -> None:
        comparison, samples = self._session.comparison, self._session.samples
        if comparison is None:
            # Before the offers were read none can be counted: "0 offers" would read as if they were lost.
            self.held.clear()
            return
        quoting = comparison.snapshot.vendor
        offers, vendors = len(quoting), len(np.unique(quoting[quoting >= 0]))
        owed = sum(sample.state.outstanding for sample in samples)
        parts = [
            f"{counted(offers, 'offer')} of {counted(vendors, 'vendor')}",
            f"{counted(len(samples), 'sample')}, {owed:,} still owed",
            "F1 shows the keys",
        ]
        self.held.setText("   ·   ".join(parts))
