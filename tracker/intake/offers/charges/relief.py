"""Columns of charges that are no charge on top: their head or a note says that they are waived or in the price."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Columns, PriceColumn
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charge_names import ChargeKind
from tracker.intake.values.freight.charged_forms import OTHER_FORM
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.relieved_charges import NoCharge, no_charges, within_price
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

KIND_OF = {Role.FREIGHT: ChargeKind.FREIGHT, Role.ENERGY: ChargeKind.ENERGY, Role.SHEETING: ChargeKind.SHEETING}


def kind_of(column: Column) -> ChargeKind:
    """The kind of what a column of charges holds."""
    return KIND_OF.get(column.role or Role.CHARGE, ChargeKind.OTHER)


def free_for(scope: Scope, draft: Draft, facts: FileFacts) -> list[NoCharge]:
    """What is said around an offer not to be charged for a board of its grade, on its terms of delivery and on the day
    of its list."""
    around = (
        said.value
        for said in scope.all_of(NoCharge)
        if not (said.value.itself or said.value.form)
        and (not said.value.grades or draft.grade in said.value.grades)
        and said.value.delivered in (None, draft.delivered)
    )
    return free_on_its_day(around, facts)


def free_of_itself(words: str, facts: FileFacts) -> list[NoCharge]:
    """What the words that state a charge say of a time in which it is not charged."""
    return free_on_its_day((said for said in no_charges(words) if said.days and not said.grades), facts)


def free_on_its_day(free: Iterable[NoCharge], facts: FileFacts) -> list[NoCharge]:
    """Those that hold on the day of the list, or may."""
    left = (said.on(facts.list_date, facts.date_order) for said in free)
    return [said for said in left if said is not None]


def left_to_form(words: ChargeWords, ways: Callable[[], frozenset[str]]) -> ChargeWords | None:
    """None of a charge that another form of board bears than a row's, of whose `ways` its form is one; no amounts where
    that is not known."""
    if not words.form or words.form in (own := ways()):
        return words
    return None if OTHER_FORM[words.form] in own else replace(words, amounts=(), of_some=True)


def relieved_columns(columns: Columns, free: Iterable[NoCharge], offers: Sequence[PriceColumn]) -> frozenset[int]:
    """The columns of charges whose figures come on top of no price."""
    charged = columns.of(*ON_TOP)
    if not charged:
        return frozenset()
    by_head = {column.index for column in charged if within_price(column.text)}
    delivered = any(price.delivery is not None and price.delivery.delivered for price in offers)
    return frozenset(by_head).union(
        column.index
        for said in free if not (said.open or said.earlier)
        for column in _meant(said, charged)
        # Which of several prices bears the freight is told by their own heads.
        if not (delivered and column.role is Role.FREIGHT)
    )  # fmt: skip


def _meant(said: NoCharge, charged: Sequence[Column]) -> list[Column]:
    """The columns that a note is about: of several of a kind the one that it calls by its whole name."""
    alike = [column for column in charged if said.is_of(kind_of(column), label_of_column(column))]
    if said.kind is ChargeKind.FREIGHT and phrases("inbound").find(said.words):
        alike = [column for column in alike if phrases("inbound").find(column.text)]
    if len(alike) < 2 or said.general:
        return alike
    named = {_name(column): column for column in alike if f" {_name(column)} " in f" {fold(said.words)} "}
    return [column for name, column in named.items() if not any(name != other and name in other for other in named)]


def label_of_column(column: Column) -> str:
    """The name of what it charges for; its whole head where that names nothing known."""
    head = charge_header(column.text)
    return head.label if head is not None else column.text


def _name(column: Column) -> str:
    """The head's words without the unit: the 'freight in' of 'Freight in $/ST'."""
    unit = find_price_unit(column.text)
    bare = column.text.replace(unit.words, " ") if unit is not None else column.text
    return " ".join(fold(bare).strip(" %()[]:,/").split())
