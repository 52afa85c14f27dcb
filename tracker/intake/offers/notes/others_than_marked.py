"""'All others 4 weeks' in a line of its own below the footnote '* from stock': said of the lines without the star."""

from collections.abc import Callable
from dataclasses import replace

from tracker.intake.tables.table import Words
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.freight.relieved_charges import NoCharge
from tracker.intake.values.notes.marks_apart import said_of_the_others
from tracker.intake.values.notes.note_signs import NOT, sign_ahead, without_sign
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import LeastUnread
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_unread import LeadUnread
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases

_MATTERS = ((LeadTime, LeadUnread), (SaysMinimum, LeastUnread), (Delivery,), (Validity,), (ChargeWords, NoCharge))


def others_than_marked(texts: tuple[Words, ...], carried: Callable[[], frozenset[str]]) -> tuple[Words, ...]:
    """The texts with each that begins with the others as a note on the lines without the signs that footnotes beside it
    say the same matter of; as they are where a text names boards of that matter too, whose others may be meant.

    `carried`: the signs that lines carry.
    """
    signed = [words for words in texts if sign_ahead(words.text) and not sign_ahead(words.text).startswith(NOT)]
    others = [words for words in texts if signed and not sign_ahead(words.text) and said_of_the_others(words.text, "")]
    if not others:
        return texts
    known = carried()
    signed = [words for words in signed if sign_ahead(words.text) in known]
    named = [words for words in texts if boards_named(words.text).some]
    told = {words: _of_the_unmarked(words.text, signed, named) for words in others}
    # Below '* from stock' alone it is not told who all the others are that are 'FOB mill'.
    open_ = {words for words in others if signed and not (told[words] or named) and _tells_delivery(words.text)}
    return tuple(
        replace(words, text=told.get(words) or words.text, unsure=words.unsure or words in open_) for words in texts
    )


def _of_the_unmarked(text: str, signed: list[Words], named: list[Words]) -> str:
    """The note behind the signs of all that tells the same matter: '[not *,**] Lead time: 4 weeks'; '' for none."""
    signs, said = [], ""
    for footnote in signed:
        matters = _matters(without_sign(footnote.text))
        rest = said_of_the_others(text, footnote.text)
        if phrases("no_price").find(rest) and not any(map(str.isdigit, rest)):
            # 'Other grades on request' is of grades that the list has not.
            continue
        if matters & _matters(rest):
            signs.append(sign_ahead(footnote.text))
            said = rest
    if not signs or any(_matters(without_sign(words.text)) & _matters(said) for words in named):
        return ""
    return f"[{NOT}{','.join(dict.fromkeys(signs))}] {said}"


def _matters(text: str) -> frozenset[int]:
    """What a text is about, by its place in the list of matters: times, least orders, delivery …"""
    said = [*statements(text), lead_remarked(text)]
    found = {n for n, kinds in enumerate(_MATTERS) if any(isinstance(one, kinds) for one in said)}
    # '* no energy surcharge'.
    denied = charges_named(text) and phrases("negations").find(text)
    return frozenset(found | ({len(_MATTERS) - 1} if denied else set()))


def _tells_delivery(text: str) -> bool:
    return any(isinstance(one, Delivery) for one in statements(text))
