"""The screens can be drawn without a display, with letters on them."""

import pytest
from PySide6.QtGui import QImage

from tests.window.fixtures.invented_door import InventedDoor
from tracker.window.application import make_application
from tracker.window.look.theme import Theme
from tracker.window.render import PLACES, OpenWindow

pytestmark = pytest.mark.gui


@pytest.mark.parametrize(("look", "offers"), [("light", 0), ("dark", 10)])
def test_every_place_is_drawn_with_words_on_it(qapp, tmp_path, look: str, offers: int) -> None:
    make_application()
    opened = OpenWindow(InventedDoor(offers), Theme(qapp, look), (1280, 800))
    try:
        for title, show in PLACES.items():
            show(opened.window)
            picture = QImage(str(opened.grab(tmp_path / f"{title}.png")))
            assert (picture.width(), picture.height()) == (1280, 800)
            # Without a font, or with a widget that fails to paint, hardly a colour is left.
            sampled = {picture.pixel(x, y) for x in range(0, 1280, 3) for y in range(0, 800, 3)}
            assert len(sampled) > 40, title
    finally:
        opened.close()
