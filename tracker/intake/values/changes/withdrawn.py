"""What notes and remarks say of prices that are offers no more: 'withdrawn', 'no longer offered', 'under review'."""

from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, outside


@lru_cache(maxsize=16384)
def withdrawn(text: str) -> bool:
    """Whether a text says of what it stands beside that it is not offered at this price any more.

    'No longer offered in rolls', 'not valid below 5 t' and 'withdrawn if not accepted by 30 June' do not.
    """
    if not _found(text):
        return False
    return any(_says_so(part) for clause in clauses(text) if not _hangs(clause) for part in COMMA.split(clause))


def no_longer_made(text: str) -> bool:
    """Whether a board is withdrawn only because no more of it is made: 'discontinued', 'utgår'. What lies in stock is
    sold off at the price beside these words; a price that is not from stock they call off."""
    return withdrawn(text) and all(match.value == "made" for match in _found(text))


@lru_cache(maxsize=16384)
def will_go(text: str) -> bool:
    """Whether a board 'is to be discontinued', and neither 'is not to be discontinued' nor replaces one that is.

    A surcharge, a discount or a price that goes is no board.
    """
    if not phrases("going_out").find(text):
        return False
    return any(
        not denied(clause, match) and not _hangs(clause[: match.end]) and not _goes_itself(clause[: match.start])
        for clause in clauses(text)
        for match in phrases("going_out").find(clause)
    )


def _goes_itself(ahead: str) -> bool:
    """The 'Preisbindung' of 'Preisbindung läuft aus', the 'remise' of 'la remise sera supprimée'."""
    return any(phrases(kind).find(ahead) for kind in ("charges", "reductions", "price_words", "valid"))


def _found(text: str) -> list[Found[str]]:
    """The words that call a price off; a board that 'is to be discontinued' is offered as yet, and so it is until 'the
    end of June', which Swedish calls 'utgången'."""
    found = phrases("withdrawn").find(text)
    if not found:
        return []
    later = [match for match in phrases("going_out").find(text) if match.value == "any"]
    return outside(found, [*later, *phrases("end_of").find(text)])


def _hangs(clause: str) -> bool:
    """On a condition, or it is said of earlier prices or of what this takes the place of."""
    return any(phrases(kind).find(clause) for kind in ("only_if", "replaces", "earlier"))


def _says_so(part: str) -> bool:
    found = _found(part)
    return bool(found) and not _of_something_else(part) and any(_holds(part, match) for match in found)


def _of_something_else(part: str) -> bool:
    """'Energy surcharge suspended', 'discount withdrawn', 'thereafter withdrawn', 'no longer offered after 30 June'."""
    if phrases("charges").find(part) or phrases("reductions").find(part):
        return True
    later = {match.value for match in phrases("afterwards").find(part)}
    return "then" in later or ("day" in later and bool(find_dates(part)))


def _holds(part: str, said: Found[str]) -> bool:
    before, behind = part[: said.start], part[said.end :]
    if denied(part, said):
        return False
    if said.value == "sold":
        return not (behind.strip(" .!)*") or phrases("only_these").find(before) or _tells_how(before))
    return said.value != "offered" or not (_limited(before) or _limited(behind) or _names_board(behind))


def _tells_how(ahead: str) -> bool:
    """'Wird ab Werk verkauft', 'wird in Rollen verkauft': the German verb stands behind how it is sold."""
    return _limited(ahead) or any(phrases(kind).find(ahead) for kind in ("delivery", "incoterms", "currency"))


def _limited(words: str) -> bool:
    """'In rolls', 'for orders below 5 t', 'from stock', 'in October': the board itself is still offered."""
    of_a_form = any(match.value in ("roll", "sheet", "pallet") for match in phrases("basis").find(words))
    told = any(phrases(kind).find(words) for kind in ("forms", "small_orders", "stores"))
    for_a_while = phrases("months").find(words) and not phrases("since").find(words)
    return of_a_form or told or bool(for_a_while) or bool(find_masses(words))


def _names_board(words: str) -> bool:
    """'Not available in C2S'."""
    grade = find_grade(words)
    return grade is not None and grade.tells_board
