"""What is charged on all boards but some, named before it: 'On all grades except SBS we add an energy surcharge of
3 %'."""

from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import statements
from tracker.intake.words.lists import joined, phrases, without_article

_STOPS = " ,;:.–-"


def charged_but(text: str) -> tuple[str, ...]:
    """Its text with the exception behind the charge; () where it says nothing of the kind, or not for certain."""
    if len(clauses(text)) != 1:
        return ()
    on = next((match for match in phrases("charged_on").find(text) if match.start == 0), None)
    but = next(iter(joined("excepted", "exceptions").find(text)), None)
    if on is None or but is None or rest_of(text[on.end : but.start], (), "all_of_them", "made_so.boards", "all_goods"):
        return ()
    boards, rest = boards_ahead(without_article(text[but.end :].strip()))
    said = rest.strip(_STOPS)
    told = [one for one in statements(said) if isinstance(one, ChargeWords)] if boards else []
    charges = len(told) == 1 and bool(told[0].amounts) and not boards_named(said).some
    return (f"{said} except {boards}",) if charges else ()
