"""Short texts that may be a board's own title, and those that say something else."""

from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.legends import LegendEntry
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.statements import SaysWeightBasis, statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import phrases


def states_more_than_a_board(text: str, *but: type[object]) -> bool:
    """'Prices per hundredweight (100 lb)' and '24 pt on request, lead time 45 days' are about other things, where
    'Basis weight 250 g/m²' is the board's own. `but`: kinds of statements that do not count either."""
    return any(not isinstance(said, (LegendEntry, SaysWeightBasis, *but)) for said in statements(text))


def of_some_measures(text: str) -> bool:
    """'Minimum caliper 18 pt', 'tolerance 5 % on 18 pt' and '18 pt on request' are no line's own."""
    return any(phrases(section).find(text) for section in ("minimum", "optional", "tolerances"))


def calls_a_board(text: str) -> bool:
    """'GC2 250 g/m², 405 µm - EUR/t DAP' is a board's own title, though it says as well what its prices are in.

    It begins with the grade, and has no figure but the measures: 'GC2 from 300 g/m² 20 EUR/t more' is about others.
    """
    grade = find_grade(text)
    measures = [weight.words for weight in find_weights(text)] + [caliper.words for caliper in find_calipers(text)]
    if grade is None or not grade.grades or not measures:
        return False
    if states_more_than_a_board(text, SaysCurrency, SaysBasis, Delivery):
        return False
    rest = text
    for words in (grade.words, *measures):
        rest = rest.replace(words, " ", 1)
    between = text.partition(grade.words)[2].partition(measures[0])[0]
    return text.startswith(grade.words) and not any(map(str.isdecimal, rest)) and not phrases("bracket").find(between)
