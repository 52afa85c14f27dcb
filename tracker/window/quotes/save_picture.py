"""The picture as a file: PNG as shown at twice the resolution, SVG with its letters as letters, its data as CSV."""

from pathlib import Path

from PySide6.QtCore import QSize
from PySide6.QtGui import QPainter, QPixmap
from PySide6.QtWidgets import QWidget

from tracker.desk.export import write_csv
from tracker.desk.trouble import Trouble
from tracker.window.quotes.picture_pane import PicturePane

_FINER = 2


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
        drawn = QPixmap(picture.size() * _FINER)
        drawn.setDevicePixelRatio(_FINER)
        picture.render(drawn)
        written = drawn.save(str(path))
    return (
        f"The picture is in {path}."
        if written
        else f"The picture could not be written to {path}: choose another folder."
    )


def _save_svg(picture: QWidget, path: Path) -> bool:
    from PySide6.QtSvg import QSvgGenerator

    generator = QSvgGenerator()
    generator.setFileName(str(path))
    generator.setSize(QSize(picture.width(), picture.height()))
    generator.setViewBox(picture.rect())
    generator.setTitle("Paperboard prices")
    painter = QPainter()
    if not painter.begin(generator):
        return False
    picture.render(painter, picture.rect().topLeft())
    return painter.end()
