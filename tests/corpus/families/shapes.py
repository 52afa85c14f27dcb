"""Layouts that are no list: transposed tables, key and value, letters, cards, one cell an offer."""

from tests.corpus.boards import Board
from tests.corpus.columns import caliper_text, money_cell, weight_text
from tests.corpus.families.bases import price_words
from tests.corpus.kit import Kit
from tests.corpus.registry import ALL, SHEETS, family


@family("transposed", ALL)
def transposed(kit: Kit) -> None:
    """Boards across, fields down."""
    sheet = kit.plan.sheet("Offer")
    top = kit.title_block(sheet, 0, 0) + 1
    items = kit.range(3, 1, 2)
    basis = kit.natural_basis()
    names = [kit.head("product"), kit.caliper_head(), kit.weight_head(), kit.price_head(basis)]
    for line, name in enumerate(names):
        sheet.put(top + line, 0, name, bold=True)
    for offset, item in enumerate(items, start=1):
        amount = kit.price(item, basis)
        for line, value in enumerate((item.words, item.caliper, item.weight)):
            sheet.put(top + line, offset, value)
        sheet.cells[top + 3, offset] = money_cell(kit, amount)
        kit.plan.accept(sheet, top + 3, offset, kit.intent(item, amount, basis))


@family("key_value", ALL)
def key_value(kit: Kit) -> None:
    """A letter of names and values, one offer."""
    sheet = kit.plan.sheet("Offer")
    row = kit.title_block(sheet, 0, 0, say="") + 1
    item = kit.series(kit.grades(1)[0], 1)[0]
    _card(kit, sheet, row, 0, item)


def _card(kit: Kit, sheet, row: int, left: int, item: Board) -> int:
    """One offer as names and values; returns the next free row."""
    basis = kit.natural_basis()
    amount = kit.price(item, basis)
    lead, days = kit.lead()
    colon = kit.pick((":", ""))
    pairs = [(kit.head("product"), item.words), (kit.head("caliper"), caliper_text(kit, item))]
    pairs += [
        (kit.head("weight" if kit.us else "grammage"), weight_text(kit, item)),
        (kit.head("price"), price_words(kit, amount, basis, kit.currency)),
        (kit.head("lead"), lead),
    ]
    for offset, (name, value) in enumerate(pairs):
        sheet.put(row + offset, left, f"{name}{colon}")
        sheet.put(row + offset, left + 1, value)
    kit.plan.accept(sheet, row + 3, left + 1, kit.intent(item, amount, basis, lead=days))
    return row + len(pairs)


@family("cards_down", ALL)
def cards_down(kit: Kit) -> None:
    """A block of names and values for each board, under each other."""
    sheet = kit.plan.sheet("Offers")
    row = kit.title_block(sheet, 0, 0, say="vd") + 1
    for grade in kit.grades(3):
        row = _card(kit, sheet, row, 0, kit.series(grade, 1)[0]) + 1


@family("cards_beside", SHEETS)
def cards_beside(kit: Kit) -> None:
    """The same blocks beside each other."""
    sheet = kit.plan.sheet("Offers")
    row = kit.title_block(sheet, 0, 0, say="vd") + 1
    for place, grade in enumerate(kit.grades(2)):
        _card(kit, sheet, row, 3 * place, kit.series(grade, 1)[0])


@family("letter", ALL, ("en-us", "en"))
def letter(kit: Kit) -> None:
    """Sentences, an offer in each."""
    sheet = kit.plan.sheet("Letter")
    kit.plan.csv.delimiter = ","  # a file of one column shows no other delimiter
    row = kit.title_block(sheet, 0, 0, say="") + 1
    sheet.put(row, 0, "Dear purchasing team, thank you for your enquiry. We are pleased to offer:")
    forms = (
        "{board}, {caliper}, {weight}: {price}",
        "{board} {caliper} {weight} at {price}",
        "- {board}, {caliper} / {weight}, {price}",
    )
    form = kit.pick(forms)
    for item in kit.range(2):
        row += 1
        basis = kit.pick(("short_ton", "cwt")) if kit.us else "tonne"
        amount = kit.price(item, basis)
        words = form.format(
            board=item.words,
            caliper=caliper_text(kit, item),
            weight=weight_text(kit, item),
            price=price_words(kit, amount, basis, kit.currency),
        )
        sheet.put(row, 0, words)
        kit.plan.accept(sheet, row, 0, kit.intent(item, amount, basis))
    sheet.put(row + 2, 0, "We look forward to your order. Yours sincerely, the sales desk")


@family("one_cell_an_offer", ALL, ("en-us", "en", "de", "fr", "es", "sv"))
def one_cell_an_offer(kit: Kit) -> None:
    """A board's words in one column, its price with unit in the next, no header at all."""
    sheet = kit.plan.sheet("Sheet1")
    row = kit.title_block(sheet, 0, 0, say="v") + 1
    for item in kit.range(3):
        basis = kit.pick(("short_ton", "cwt", "msf")) if kit.us else "tonne"
        amount = kit.price(item, basis)
        sheet.put(row, 0, f"{item.words}, {caliper_text(kit, item)}, {weight_text(kit, item)}")
        sheet.put(row, 1, price_words(kit, amount, basis, kit.currency))
        kit.plan.accept(sheet, row, 1, kit.intent(item, amount, basis))
        row += 1
