"""The picture as a file: PNG as shown at twice the resolution, SVG with its letters as letters, its data as CSV."""

from pathlib import Path

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPixmap

from tracker.desk.export import write_csv
from tracker.desk.trouble import Trouble
from tracker.window.quotes.picture_pane import PicturePane

_FINER = 2
_MARGIN, _FOOT = 16, 44


def save(picture: PicturePane, path: Path) -> str:
    """Writes the picture and says where; the format follows the file's ending (.svg, .csv for its data, else PNG)."""
    if path.suffix.casefold() == ".csv":
        try:
            write_csv(picture.data(), path)
        except Trouble as problem:
            return str(problem)
        return f"What the picture shows is in {path}."
    if path.suffix.casefold() == ".svg":
        written = _save_svg(picture, path)
    else:
        path = path if path.suffix else path.with_suffix(".png")
        written = _save_png(picture, path)
    return (
        f"The picture is in {path}."
        if written
        else f"The picture could not be written to {path}: choose another folder."
    )


def _save_png(picture: PicturePane, path: Path) -> bool:
    drawn = QPixmap(_whole(picture) * _FINER)
    drawn.setDevicePixelRatio(_FINER)
    painter = QPainter(drawn)
    _paint(picture, painter)
    painter.end()
    return drawn.save(str(path))


def _save_svg(picture: PicturePane, path: Path) -> bool:
    from PySide6.QtSvg import QSvgGenerator

    generator = QSvgGenerator()
    generator.setFileName(str(path))
    generator.setSize(_whole(picture))
    generator.setViewBox(QRect(QPoint(0, 0), _whole(picture)))
    generator.setTitle("Paperboard prices")
    painter = QPainter()
    if not painter.begin(generator):
        return False
    _paint(picture, painter)
    return painter.end()


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
