"""The lines of a list that a note is about and no others: 'Item 2: lead time 6 weeks', '20 pt only: min. 20 tons'."""

import re
from collections import Counter
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.boards.board_ahead import board_ahead, kind_ahead
from tracker.intake.values.boards.board_behind import is_aside_of_all
from tracker.intake.values.boards.boards_behind import boards_behind, names_of_a_kind
from tracker.intake.values.boards.boards_excepted import boards_ahead, boards_excepted, said_of_boards_alone
from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.coated_boards import coated_ahead
from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.values.boards.kinds_meant import boards_called, kind_meant
from tracker.intake.values.boards.legends import LegendEntry
from tracker.intake.values.boards.not_only import not_of_these_only
from tracker.intake.values.changes.line_corrections import lines_corrected
from tracker.intake.values.changes.price_changes import ChangesPrice
from tracker.intake.values.figures.sheetsize import find_sheet_sizes
from tracker.intake.values.freight.charged_measures import charged_measure
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.charged_boards import Charged, charged_boards
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.lettered_lines import letters_as_numbers
from tracker.intake.values.notes.lines_counted import (
    JOINED,
    count_ahead,
    line_words,
    lines_counted,
    of_all_lines,
    once_called,
)
from tracker.intake.values.notes.numbered_lines import before_a_denial, ending_with, of_all_others, tells_again
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.notes.topics import goes_on_about_excepted, of_excepted
from tracker.intake.values.notes.units_by_measure import unit_of_measured
from tracker.intake.values.notes.units_told_apart import excepts_of_units, tells_units_apart
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.orders.small_orders import DearerIfSmall
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_of_some
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases, without_article
from tracker.intake.words.phrases import outside, tokens_of


@dataclass(frozen=True, slots=True)
class LinesMeant:
    """Lines by their `numbers`, or by the board that `name` names and `boards` tells; `rest`: what is said of them.

    `of_contract`: the numbers may as well be those of a contract's articles. `others`: what is said of all but them.
    `corrects`: the list is wrong there, or the lines are withdrawn. `unsure`: what is charged on them is not certain.
    """

    rest: str
    numbers: frozenset[int] = frozenset()
    of_contract: bool = False
    name: str = ""
    boards: BoardsMeant | None = None
    others: str = ""
    corrects: bool = False
    unsure: bool = False


@lru_cache(maxsize=4096)
def lines_meant(text: str, *, note: bool) -> LinesMeant | None:
    """Of which lines a text states terms; None where of all, of none, or of some and others beside them.

    `note`: it stands below a table. There a board that begins it is what it is about ('CRB delivered'); elsewhere that
    is a title, unless a colon or 'only' follows.
    """
    corrected = lines_corrected(text)
    if corrected is not None:
        return LinesMeant(text, corrected.numbers, corrected.of_contract, corrects=True)
    if not_of_these_only(text):
        return None
    others = phrases("the_others").find(text)
    if others:
        return _held_for_some(text, others[0].start)
    if (charged := charged_boards(text)) is not None and _charges(charged):
        return LinesMeant(charged.said, boards=charged.boards, unsure=charged.unsure)
    meant = _by_number(once_called(letters_as_numbers(text))) or _of_others(text)
    if meant is None and not (excepts_of_units(text) or tells_units_apart(text)):
        meant = _of_boards(text, note=note)
    return meant if meant is not None and _states_terms(text, meant.others or meant.rest or text) else None


def _charges(charged: Charged) -> bool:
    """Whether it charges one amount, and changes no price beside that."""
    said = statements(charged.said)
    changes = any(isinstance(one, ChangesPrice) for one in said)
    return len([one for one in said if isinstance(one, ChargeWords)]) == 1 and (charged.unsure or not changes)


def _of_others(text: str) -> LinesMeant | None:
    """'Lead time 4 weeks except SBS'."""
    found = boards_excepted(text)
    if found is None or excepts_of_units(text):
        return None
    if _tells_others(boards_named(found.behind)):
        # Of 'except SBS: 5 t, and CUK: 3 t' it is not told apart for whom the rest holds.
        return LinesMeant("", boards=found.boards)
    return LinesMeant(of_excepted(found.others, found.behind), boards=found.boards, others=found.others)


def _held_for_some(text: str, others: int) -> LinesMeant | None:
    """'Priset på GD2 gäller t.o.m. 15 september, övriga tills vidare': a last day of the boards named alone. Lead times
    and minimums of some grades and the others are told apart where they are read."""
    said = statements(text[:others])
    held = any(isinstance(one, Validity) and not one.unread for one in said)
    boards = boards_named(text[:others])
    if not held or not boards.some or any(isinstance(one, LeadTime | SaysMinimum | LeastUnread) for one in said):
        return None
    return LinesMeant(text[:others].strip(" ,;"), boards=boards)


_NEAR = 40


def _by_number(text: str) -> LinesMeant | None:
    """'Items 1 and 3: …', 'Lead time for Pos. 2-4: …', 'All lines 4 weeks, except line 5'."""
    for match in line_words(text):
        of_contract = match.value == "article"
        before, behind = text[: match.start].rstrip(), text[match.end :].removeprefix(".")
        but = next(iter(phrases("excepted").find(behind)), None)
        if but is not None and not behind[: but.start].strip():
            # 'All lines except 3: lead time 4 weeks'.
            counted = count_ahead(behind[but.end :])
            if counted is not None:
                others = f"{text[: match.end]} {behind[but.end + counted.end() :].strip(' :')}"
                return LinesMeant("", lines_counted(counted[1]), of_contract, others=others)
        counted = count_ahead(behind)
        if counted is None or of_all_lines(text[: match.end], text[match.start : match.end]):
            continue
        if phrases("contact").find(text[max(0, match.start - _NEAR) : match.start]):
            # 'Contact : service commercial, poste 218' is a telephone's.
            continue
        rest, numbers = behind[counted.end() :], lines_counted(counted[1])
        if not before and (but := phrases("excepted").at(tokens_of(rest), 0)) is not None:
            said = rest[but.end :].lstrip()
            if said.startswith((",", ":")):
                # 'Item 3 excepted, all prices are delivered'.
                return LinesMeant("", numbers, of_contract, others=of_all_others(said))
        excepted = ending_with(before, "excepted")
        if excepted is not None:
            others = before[: excepted.start].rstrip(" ,;(–-")
            if not (others or goes_on_about_excepted(rest)):
                return LinesMeant("", numbers, of_contract, others=of_all_others(rest))
            return LinesMeant(of_excepted(others, rest), numbers, of_contract, others=others)
        leading = ending_with(before, "about_lines")
        before = before if leading is None else before[: leading.start]
        if (spared := before_a_denial(before)) is not None:
            return LinesMeant("", numbers, of_contract, others=spared)
        said = "" if tells_again(before, rest) else f"{before.strip()} {rest.strip(' :,–-')}".strip()
        return LinesMeant(said, numbers, of_contract)
    return None


def _of_boards(text: str, *, note: bool) -> LinesMeant | None:
    head, colon, rest = text.partition(":")
    if is_aside_of_all(head):
        return None
    said, alone = said_of_boards_alone(text)
    if alone:
        return LinesMeant(said, boards=boards_named(alone))
    if colon and phrases("charges").whole(head.strip()) is not None:
        # 'Freight: $40/ST, on SBS only'.
        return _of_boards(f"{head.strip()}{rest}", note=note)
    only = next(iter(phrases("only_these").find(text)), None) if not colon else None
    if only is not None:
        head, rest = text[: only.start], text[only.end :]
    begins = note and bool(board_ahead(without_article(text.strip()))[0])
    coated = coated_ahead(text) if note and not (begins or colon or only) else None
    if coated is not None:
        # 'Coated board is sold delivered'; of 'uncoated board (CRB)' it is not told which is meant.
        return LinesMeant(coated[1].strip(), boards=coated[0], unsure=boards_named(coated[1]).some)
    behind = _behind_words(text) if not begins else None
    if behind is not None:
        return behind
    if not colon and only is None:
        # 'The recycled grades, CRB and URB, are sold ex works'.
        measured, unit = unit_of_measured(text) if note else ("", "")
        if measured:
            return LinesMeant(unit, boards=boards_named(measured))
        words, rest = names_of_a_kind(text)
        words, rest = (words, rest.lstrip(" ,")) if words else boards_ahead(without_article(text.strip()))
        return _without_others(words, rest) if note else None
    boards = boards_called(head) if colon else boards_named(head)
    if len(boards.spans) > 1 and not boards_named(rest).some:
        return LinesMeant(_of_each(boards, rest), boards=boards)
    if boards.some:
        return _without_others(head, _with_its_size(head, rest))
    # A name of the vendor's own, which a row may have.
    return LinesMeant(rest.strip(), name=head.strip()) if colon and not statements(head) else None


def _with_its_size(head: str, rest: str) -> str:
    """'Rolls under 24 in: surcharge $40/ST' of 'SBS rolls under 24 in: surcharge $40/ST': not all SBS bears it."""
    board, size = board_ahead(without_article(head.strip()))
    return f"{size.strip()}: {rest.strip()}" if board and charged_measure(f"{size}: {rest}") is not None else rest


def _of_each(boards: BoardsMeant, rest: str) -> str:
    """What is said of boards of several measures: of '18 pt and 24 pt' to both; of '24 pt C2S and lighter than 12 pt'
    it is not told apart whom it concerns, so to none."""
    exact = all(span.low == span.high for span in boards.spans)
    named = boards.rest.casefold()
    return rest.strip() if exact and not any(map(str.isalpha, re.sub(JOINED, " ", named))) else ""


def _behind_words(text: str) -> LinesMeant | None:
    """'Minimum for 20 pt: 10,000 lb', 'Energy surcharge of 3 % on SBS'; no 'a' of 'superiores a 350 g/m²', nor the 'in'
    of 'Preisliste in Kraft bis Jahresende'."""
    others = [*phrases("open_measures").find(text), *phrases("no_grades").find(text)]
    for match in outside(phrases("about_lines").find(text), others):
        if text[: match.start].rstrip()[-1:].isdigit():
            # '18 to 24 pt' is a span.
            continue
        board, rest = boards_behind(text[match.end :])
        ahead = text[: match.start].rstrip()
        if any(also.start == 0 for also in phrases("as_well").find(rest)) or ending_with(ahead, "as_well"):
            # 'On greyboard as well' is on all of them.
            return None
        if board and _goes_on_unread(ahead, rest):
            return None
        kind = kind_ahead(text[match.end :])
        if not board and kind is not None:
            return _of_kind(ahead, text[match.end :], kind)
        if board:
            only = next((found.end for found in phrases("only_these").find(rest) if found.start == 0), 0)
            if only and any(not rest[only : found.start].strip() for found in phrases("until").find(rest)):
                # 'Prices hold until 30 April, on SBS only until further notice': SBS ends otherwise than all others.
                return LinesMeant(rest[only:].strip(), boards=boards_named(board), others=ahead.rstrip(" ,;"))
            return _without_others(board, f"{text[: match.start].strip()} {rest[only:].strip(' :,')}")
    return None


def _of_kind(ahead: str, named: str, kind: GradeReading) -> LinesMeant:
    """'For recycled board' is of some boards, and mostly of which is not told. What is charged on 'recycled grades' is
    borne by those of the kind, and open where more is said of them."""
    said, meant = statements(ahead), kind_meant(named)
    if meant is None or not said or not all(isinstance(one, ChargeWords) for one in said):
        return LinesMeant("", boards=BoardsMeant(kind))
    grade = meant.boards.grade
    unsure = grade is None or not grade.grades or bool(rest_of(meant.behind, (), *_READ_BEHIND, "board_goods"))
    return LinesMeant(ahead, boards=meant.boards, unsure=unsure)


def _goes_on_unread(ahead: str, rest: str) -> bool:
    """'Energy surcharge $25/ST, insured on CRB rolls', 'buyer pays freight, on CRB the seller does': what is said of
    the boards is another thing than what stands before the comma."""
    *before, last = COMMA.split(ahead)
    said = statements(",".join(before)) if before else ()
    if not any(isinstance(one, Delivery | ChargeWords) for one in said) or boards_named(",".join(before)).some:
        return False
    return bool(rest_of(f"{last} {rest}", (), *_READ_BEHIND))


_READ_BEHIND = ("only_these", "no_other_boards", "charge_verbs", "copula", "added_on_top", "charge_filler")


def _without_others(board: str, rest: str) -> LinesMeant | None:
    """The board that a text is about, unless the rest of it is about others."""
    boards = boards_called(board)
    kinds = Counter(span.of_caliper for span in boards.spans)
    others = any(count > 1 for count in kinds.values()) or _tells_others(boards_named(rest))
    return LinesMeant(rest.strip(), boards=boards) if boards.some and not others else None


def _tells_others(rest: BoardsMeant) -> bool:
    """Not the '60,000 lb' of a smallest order: pounds alone leave open what they are of."""
    told = (span.of_caliper or max(len(span.low), len(span.high)) == 1 for span in rest.spans)
    return rest.grade is not None or any(told)


TERMS = (
    Delivery, LeadTime, LeadUnread, Validity, ChargeWords, SaysMinimum, LeastUnread, SaysBasis, SaysCurrency,
    DearerIfSmall,
)  # fmt: skip


def _states_terms(text: str, rest: str) -> bool:
    """Whether it says what prices come with or how large sheets are, defines nothing and changes no price: what does
    knows its boards itself."""
    said = statements(rest)
    defines = any(isinstance(one, LegendEntry) for one in said)
    if defines or any(isinstance(one, ChangesPrice) for one in (*said, *statements(text))):
        return False
    return any(isinstance(one, TERMS) for one in said) or bool(find_sheet_sizes(rest)) or lead_of_some(rest) is not None
