"""What the order sizes of a title are of, by its words: a form, a board, a delivery, a mill, each with its own."""

import re
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.words.lists import phrases, without_words


class Thing(NamedTuple):
    """What a text says that is quoted. `name`: what else it says beside the size, which may name a mill."""

    forms: frozenset[str] = frozenset()
    grades: tuple[str, ...] = ()
    delivered: bool | None = None
    name: str = ""

    def within(self, around: "Thing") -> "Thing":
        """The same, and what the headings above say of what it leaves open."""
        delivered = around.delivered if self.delivered is None else self.delivered
        name = self.name or around.name
        return Thing(self.forms or around.forms, self.grades or around.grades, delivered, name)


@lru_cache(maxsize=4096)
def thing_of(text: str, size: Bracket | None = None) -> Thing:
    """What a title or heading names, beside its order size if it says one."""
    board = find_grade(text)
    delivery = find_delivery(text)
    grades = tuple(map(str, board.grades)) if board is not None else ()
    delivered = delivery.delivered if delivery is not None else None
    return Thing(forms_in(text), grades, delivered, _name(text) if size is not None else "")


def forms_in(text: str) -> frozenset[str]:
    """Whether board comes in rolls or sheets, as far as a text says so."""
    return frozenset(match.value for match in phrases("forms").find(text))


def is_apart(one: Thing, other: Thing) -> bool:
    """Whether they are two forms or two boards for certain. What is delivered may go on with what is collected."""
    forms = bool(one.forms and other.forms and one.forms != other.forms)
    return forms or bool(one.grades and other.grades and one.grades != other.grades)


def may_hold_for(one: Thing, other: Thing) -> bool:
    """Whether what is said of the one is said of the other as well, for all that it names, while it names less."""
    named = [mine in (theirs, empty) for mine, theirs, empty in zip(one, other, Thing(), strict=True)]
    return one != other and all(named)


def words_beside_size(text: str) -> str:
    """What stands beside a size, 'north mill' of 'North mill < 5 t'. '2.000 kg' and '8 t' are sizes of one scale."""
    said = _WORDS.findall(without_words(text, "bracket").casefold())
    return " ".join(word for word in said if not find_mass_units(word))


_WORDS = re.compile(r"[^\W\d_]+")


def _name(text: str) -> str:
    return words_beside_size(without_words(text, "order_words", "price_words", "forms"))
