"""What is said of every line, put into the boards of those that do not say their own."""

from tracker.intake.offers.boards.measures import Board
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.boards.coated_lines import coats_some_lines
from tracker.intake.values.boards.open_grades import UNCOATED, left_open
from tracker.intake.values.notes.line_defaults import LineDefault


def take_defaults(board: Board, scope: Scope) -> None:
    """Caliper, weight, coating and grade from what holds for every line, wherever the file says it."""
    for said in scope.defaults:
        default = said.value
        _take_grade(board, said)
        own = default.grade.grades if default.grade is not None else ()
        if own and board.grades and own != board.grades:
            continue
        if default.caliper is not None and not board.calipers and board.caliper_unread is None:
            board.calipers = (default.caliper.um,)
            board.caliper_said = Said(default.caliper.um, said.where, said.words)
        if default.weights and not board.weights and board.weight_unread is None:
            board.weights = default.weights
            board.weight_said = Said(default.weights[0], said.where, said.words)
        if default.grade is None or default.grade.coated_sides is None or board.coated_sides is not None:
            continue
        if _may_be_coated(board) and not coats_some_lines(_texts(scope), default.grade.coated_sides):
            board.coated_sides = default.grade.coated_sides


def _texts(scope: Scope) -> tuple[str, ...]:
    return tuple(words.cell.text for level in scope.levels for words in level.texts)


def _may_be_coated(board: Board) -> bool:
    return board.coated is not False and UNCOATED.isdisjoint(board.grades)


def _take_grade(board: Board, said: Said[LineDefault]) -> None:
    """A title that says so of every line leaves no doubt, though other lines are of other grades."""
    reading = said.value.grade
    if reading is None or reading.grade is None or left_open(board.open_kinds).isdisjoint(reading.grades):
        return
    if not board.grades or (board.grade_said is not None and board.grade_said.words == said.words):
        board.grades, board.grade_said = reading.grades, Said(reading, said.where, said.words)
