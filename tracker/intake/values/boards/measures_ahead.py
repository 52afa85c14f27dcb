"""Boards that a text begins with by what they measure: 'weights above 350 g/m²', 'alles über 24 pt'."""

from tracker.intake.values.boards.boards_meant import boards_meant
from tracker.intake.values.figures.spans import figure_spans
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases

_BOARDS = (Role.CALIPER, Role.WEIGHT, Role.PRODUCT, Role.GRADE, Role.ITEM)
_BESIDE = ("weight_words", "all_goods", "articles", "about_lines")


def measures_ahead(text: str) -> tuple[str, str]:
    """The words of such boards, and what goes on behind them; '' where it begins with none, or names others too."""
    spans = [span for section in ("caliper_units", "weight_units") for span in figure_spans(text, section)]
    first = min(spans, key=lambda span: span.start, default=None)
    if first is None or not _names_boards(text[: first.start]) or not boards_meant(text[: first.stop]).spans:
        return "", text
    return text[: first.stop].strip(), text[first.stop :].strip()


def _names_boards(ahead: str) -> bool:
    """'The weights', 'boards that are': no word but those for board and for what it measures."""
    return all(map(_is_of_boards, rest_of(ahead, (), *_BESIDE).split()))


def _is_of_boards(word: str) -> bool:
    roles = header_roles(word)
    return (bool(roles) and roles[0].role in _BOARDS) or phrases("open_measures").whole(word) is not None
