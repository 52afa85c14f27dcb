"""Colours and letters of the printed page: the light look, whose text reaches WCAG AA on paper white."""

from functools import cache

from tracker.reports.content import Mark
from tracker.trade.resources import resource

REGULAR, BOLD = "Board", "Board-Bold"

INK = "#1E2A32"
QUIET = "#56626B"
RIBBON = "#E7E0CE"
COLOUR_OF = {
    Mark.ABOVE: "#B84A00",
    Mark.BELOW: "#0072B2",
    Mark.SLIP: "#9A4478",
    Mark.IN_LINE: QUIET,
    Mark.ESTIMATED: INK,
    Mark.TOO_FEW: INK,
}


@cache
def register_letters() -> None:
    """Make the carried font known to the PDF writer, once a process: its own fonts lack vendors' accents."""
    from reportlab.pdfbase.pdfmetrics import registerFont, registerFontFamily
    from reportlab.pdfbase.ttfonts import TTFont

    registerFont(TTFont(REGULAR, str(resource("fonts", "DejaVuSans.ttf"))))
    registerFont(TTFont(BOLD, str(resource("fonts", "DejaVuSans-Bold.ttf"))))
    registerFontFamily(REGULAR, normal=REGULAR, bold=BOLD, italic=REGULAR, boldItalic=BOLD)
