"""The Reference place: a grade's make-up, strengths, cautions, calipers and expected ratio, each with its source."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QListWidget,
    QListWidgetItem,
    QScrollArea,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from tracker.trade.bands import REFERENCE_GRADE, ratio
from tracker.trade.grades import Grade, grades
from tracker.trade.quantities import CaliperUnit, micrometres
from tracker.trade.sourced import Fact, Provenance
from tracker.window.look import figures
from tracker.window.look.figures import Units
from tracker.window.look.plies import draw_plies, plies_of
from tracker.window.look.theme import Theme
from tracker.window.pieces import clear, column, hairline, holder, panel, row, words
from tracker.window.reference.level_form import LevelForm, LevelTyped
from tracker.window.session import Session
from tracker.window.undo import push

if TYPE_CHECKING:
    from tracker.desk.edits import Edit
    from tracker.desk.levels import Level

_STUFF_WORDS = {
    "coat": "pigment coat", "bleached": "bleached chemical pulp", "kraft": "unbleached kraft",
    "grey": "recovered fibre", "mechanical": "mechanical pulp",
}  # fmt: skip
_LABEL_WIDTH, _SOURCE_WIDTH = 130, 250


class _Section(QWidget):
    """A grade's cross-section, large, its plies named."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._grade = ""
        self.setFixedHeight(150)
        self.setMinimumWidth(420)

    def show_grade(self, grade: str) -> None:
        self._grade = grade
        plies = ", ".join(_STUFF_WORDS[stuff.value] for stuff, _ in plies_of(grade))
        self.setAccessibleName(f"Cross-section of {grade}, print side first: {plies}")
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        board = QRectF(2, 8, 200, 132)
        draw_plies(painter, self._grade, board)
        painter.setPen(QColor(self._theme.palette.quiet))
        top = board.top()
        said = ""
        for stuff, share in plies_of(self._grade):
            height = board.height() * share
            name = _STUFF_WORDS[stuff.value]
            if name != said:
                painter.drawText(
                    QRectF(board.right() + 14, top, 300, max(height, 16)), Qt.AlignmentFlag.AlignVCenter, name
                )
            said = name
            top += height


class ReferencePlace(QWidget):
    """Chooses a grade at the left, reads it at the right."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._grade = next(iter(grades()))
        self._levels: tuple[Level, ...] = ()
        self.list = _GradeNames(session.theme)
        self.list.currentRowChanged.connect(self._choose)
        self._code = words("", "title")
        self._section = _Section(session.theme)
        self._facts = QGridLayout()
        self._facts.setHorizontalSpacing(20)
        self._facts.setVerticalSpacing(9)
        self._facts.setColumnStretch(1, 1)
        self.level = LevelForm()
        self.level.wanted.connect(self._set_level)
        inside = holder(
            column(
                self._code, self._section, hairline(), 4, self._facts, 8, hairline(), 4,
                words("Market level", "heading"), self.level, None, margins=(24, 18, 24, 24), gap=8,
            )
        )  # fmt: skip
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidget(inside)
        scroll.viewport().setAutoFillBackground(False)
        inside.setAutoFillBackground(False)
        self._scroll = scroll
        left = holder(column(words("Grade", "rail"), self.list, gap=6))
        left.setFixedWidth(250)
        self.setLayout(row(left, panel(column(scroll, margins=(1, 1, 1, 1))), margins=(20, 14, 20, 14), gap=20))
        session.units_changed.connect(self._show)
        session.theme.changed.connect(self._section.update)
        self.list.setCurrentRow(0)

    def ask_for_levels(self) -> None:
        """Fetches the levels set so far; they are shown once they are here."""
        self._session.work.ask(self._session.door.levels, self._show_levels)

    def show_level(self, grade: str) -> None:
        """Brings a grade's market level into view; for no grade that of the one all others hang on."""
        self.list.setCurrentRow(list(grades()).index(grade if grade in grades() else REFERENCE_GRADE))
        self._scroll.ensureWidgetVisible(self.level)
        self.level.per_tonne.setFocus()

    def _show_levels(self, levels: tuple[Level, ...]) -> None:
        self._levels = levels
        self.level.show_levels(self._grade, levels, self._session.footing.as_of)

    def _set_level(self, typed: LevelTyped) -> None:
        door = self._session.door
        self._session.work.ask(
            lambda: door.set_level(typed.grade, typed.per_tonne, typed.currency, typed.on, typed.source, typed.spread),
            self._was_set,
        )

    def _was_set(self, edit: Edit) -> None:
        self.level.begin_next()
        push(self._session, edit, self._refresh)

    def _refresh(self) -> None:
        self.ask_for_levels()
        self._session.reload()

    def _choose(self, place: int) -> None:
        self._grade = list(grades())[place]
        self._show()

    def _show(self) -> None:
        grade = grades()[self._grade]
        self._code.setText(f"{grade.code} · {grade.name.says}")
        self._section.show_grade(grade.code)
        self.level.show_levels(self._grade, self._levels, self._session.footing.as_of)
        clear(self._facts)
        for label, facts in (
            ("Also called", grade.other_names), ("Pulp", (grade.pulp,)), ("Plies", (grade.plies,)),
            ("Coating", (grade.coating,)), ("Print side", (grade.colour_front,)), ("Back", (grade.colour_back,)),
            ("Recycled content", (grade.recycled_content,)), ("Strengths", grade.strengths),
            ("Weaknesses", grade.weaknesses), ("Uses", grade.uses), ("Cautions", grade.cautions),
        ):  # fmt: skip
            self._add_facts(label, facts)
        self._add("Usual calipers", _calipers(grade, self._session.units), grade.calipers_source)
        self._add("Usual density", _densities(grade, self._session.units), grade.density_source)
        self._add("Expected price", *_ratio_words(grade.code))

    def _add_facts(self, label: str, facts: Sequence[Fact]) -> None:
        """Facts of one kind and one source read as one sentence; the source stands once."""
        by_source: dict[str, list[Fact]] = {}
        for fact in facts:
            by_source.setdefault(str(fact.source), []).append(fact)
        for number, group in enumerate(by_source.values()):
            joined = "; ".join(fact.says for fact in group)
            self._add(label if number == 0 else "", joined, group[0].source)

    def _add(self, label: str, text: str, source: Provenance | str) -> None:
        place = self._facts.rowCount()
        name = words(label, "quiet")
        name.setFixedWidth(_LABEL_WIDTH)
        said = words(text, wrap=True, selectable=True)
        whence = words(str(source), "small", wrap=True, selectable=True)
        whence.setFixedWidth(_SOURCE_WIDTH)
        if label == "Cautions":
            font = QFont(said.font())
            font.setWeight(QFont.Weight.DemiBold)
            said.setFont(font)
        for at, widget in enumerate((name, said, whence)):
            self._facts.addWidget(widget, place, at, Qt.AlignmentFlag.AlignTop)


def _calipers(grade: Grade, units: Units) -> str:
    each = [float(micrometres(points, CaliperUnit.POINT)) for points in grade.calipers_pt]
    shown = [figures.caliper(um, units).rpartition(" ")[0] for um in each]
    return f"{', '.join(shown)} {figures.caliper_unit(units)}"


def _densities(grade: Grade, units: Units) -> str:
    parts = []
    for point in grade.densities:
        caliper = figures.caliper(float(point.caliper_um), units)
        parts.append(f"{caliper}: {float(point.low):.2f}–{float(point.high):.2f}")
    return f"{'; '.join(parts)} g/cm³"


def _ratio_words(code: str) -> tuple[str, str]:
    band = ratio(code)
    if code == REFERENCE_GRADE:
        return "the level that the other grades are measured by, per weight", band.source
    low, high = (f"{float(end):.0%}".replace("%", " %") for end in (band.low, band.high))
    return f"{low} to {high} of the level of {REFERENCE_GRADE}, per weight", band.source


class _GradeNames(QListWidget):
    """Glyph, letters and full name of every grade."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "rail")
        self.setAccessibleName("Grade")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setItemDelegate(_NameDelegate(theme, self))
        for code, grade in grades().items():
            item = QListWidgetItem(f"{code} {grade.name.says}", self)
            item.setData(Qt.ItemDataRole.UserRole, (code, grade.name.says))
            item.setSizeHint(QSize(200, 50))


class _NameDelegate(QStyledItemDelegate):
    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        palette = self._theme.palette
        code, name = index.data(Qt.ItemDataRole.UserRole)
        box = QRectF(option.rect).adjusted(1, 2, -1, -2)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if option.state & QStyle.StateFlag.State_Selected:
            painter.setBrush(QColor(palette.selected))
            painter.setPen(QPen(QColor(palette.accent), 1.2))
            painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5)
        draw_plies(painter, code, QRectF(box.left() + 10, box.center().y() - 9, 32, 18))
        font = QFont(option.font)
        font.setWeight(QFont.Weight.DemiBold)
        painter.setFont(font)
        painter.setPen(QColor(palette.ink))
        painter.drawText(QRectF(box.left() + 54, box.top() + 5, 180, 18), Qt.AlignmentFlag.AlignVCenter, code)
        font.setWeight(QFont.Weight.Normal)
        painter.setFont(font)
        painter.setPen(QColor(palette.quiet))
        room = QRectF(box.left() + 54, box.top() + 23, box.width() - 60, 18)
        shown = painter.fontMetrics().elidedText(name, Qt.TextElideMode.ElideRight, int(room.width()))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter, shown)
        painter.restore()
