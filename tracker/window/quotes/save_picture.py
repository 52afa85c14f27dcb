"""The picture as a file: PNG as shown at twice the resolution, SVG with its letters as letters, its data as CSV."""

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPoint, QRect, QSize, Qt
from PySide6.QtGui import QColor, QImage, QPainter

from tracker.desk.collecting import let_go
from tracker.desk.export import write_csv
from tracker.desk.trouble import Trouble
from tracker.window.quotes.copies import Copies, with_copies
from tracker.window.quotes.picture_pane import PicturePane

_FINER = 2
_MARGIN, _FOOT = 16, 44


def to_save(picture: PicturePane, path: Path) -> Callable[[], str]:
    """Draws the picture as it stands; what is handed back writes it, away from the interface, and says where it is.
    The format follows the file's ending (.svg, .csv for its data, else PNG)."""
    ending = path.suffix.casefold()
    if ending == ".csv":
        return partial(_write_data, picture.behind(), path)
    if ending == ".svg":
        return partial(_write_svg, _shapes(picture), picture.plot.copies(), path)
    return partial(_write_png, _pixels(picture), path if path.suffix else path.with_suffix(".png"))


def _write_data(rows: Callable[[], list[dict[str, Any]]], path: Path) -> str:
    behind = rows()
    try:
        write_csv(behind, path)
    except Trouble as problem:
        return str(problem)
    finally:
        let_go(behind)
    return f"What the picture shows is in {path}."


def _write_png(drawn: QImage, path: Path) -> str:
    return _said(path, written=drawn.save(str(path)))


def _said(path: Path, *, written: bool) -> str:
    if written:
        return f"The picture is in {path}."
    return f"The picture could not be written to {path}: choose another folder."


def _pixels(picture: PicturePane) -> QImage:
    drawn = QImage(_whole(picture) * _FINER, QImage.Format.Format_ARGB32_Premultiplied)
    drawn.setDevicePixelRatio(_FINER)
    painter = QPainter(drawn)
    _paint(picture, painter)
    painter.end()
    return drawn


def _write_svg(drawn: QByteArray, copies: list[Copies], path: Path) -> str:
    try:
        path.write_text(with_copies(bytes(drawn.data()).decode(), copies), encoding="utf-8")
    except OSError:
        return _said(path, written=False)
    return _said(path, written=True)


def _shapes(picture: PicturePane) -> QByteArray:
    from PySide6.QtSvg import QSvgGenerator

    drawn = QBuffer()
    drawn.open(QIODevice.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator()
    generator.setOutputDevice(drawn)
    generator.setSize(_whole(picture))
    generator.setViewBox(QRect(QPoint(0, 0), _whole(picture)))
    generator.setTitle("Paperboard prices")
    painter = QPainter(generator)
    _paint(picture, painter)
    painter.end()
    return drawn.data()


def _whole(picture: PicturePane) -> QSize:
    """With a margin round it and a line at the foot."""
    return picture.size() + QSize(2 * _MARGIN, 2 * _MARGIN + _FOOT)


def _paint(picture: PicturePane, painter: QPainter) -> None:
    """The picture without what can be pressed in it, above what its prices mean: who gets the file has no window."""
    palette = picture.plot.theme.palette
    painter.fillRect(QRect(QPoint(0, 0), _whole(picture)), QColor(palette.ground))
    with picture.bare():
        picture.render(painter, QPoint(_MARGIN, _MARGIN))
    painter.setFont(picture.font())
    painter.setPen(QColor(palette.quiet))
    foot = QRect(_MARGIN, _MARGIN + picture.height(), picture.width(), _FOOT)
    painter.drawText(foot, int(Qt.AlignmentFlag.AlignVCenter.value | Qt.TextFlag.TextWordWrap.value), picture.meaning())
