"""The states in which every screen is drawn: nothing, the demo, ten offers, ten thousand; light, dark; two sizes."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import cache, partial
from pathlib import Path

from tests.screens.sample_states import SAMPLE_STATES
from tests.window.fixtures.invented_door import InventedDoor
from tests.window.fixtures.invented_sheet import FILE
from tests.window.fixtures.strange_sheet import HEADS, NAMES, mark, strange_sheet
from tracker.trade.resources import sample_quotes
from tracker.window.application import make_application
from tracker.window.door import Door
from tracker.window.look.theme import Theme
from tracker.window.main_window import MainWindow
from tracker.window.render import PLACES, OpenWindow
from tracker.window.today.answer_dialog import AnswerDialog

SMALL, LARGE = (1280, 800), (1600, 1000)
Show = Callable[[MainWindow], None]


def pictures(folder: Path, work: Path, only: str) -> Iterator[Path]:
    """Draws every state whose name holds `only`; yields the files written."""
    theme = Theme(make_application(), "light")
    demo = partial(_demo_database, work)
    states: list[tuple[str, Callable[[], Door], str, tuple[int, int], dict[str, Show]]] = [
        ("empty", lambda: InventedDoor(0), "light", SMALL, _some("1-today", "2-quotes", "5-samples")),
        ("empty", lambda: InventedDoor(0), "dark", SMALL, _some("1-today", "2-quotes")),
        ("ten", lambda: InventedDoor(10), "light", SMALL, _some("1-today", "2-quotes", "3-price-explained")),
        ("invented", InventedDoor, "light", SMALL, {**_taking_in(), **_behind(), **_popups()}),
        ("invented", InventedDoor, "dark", SMALL, _taking_in()),
        ("invented-metric", InventedDoor, "light", SMALL, _metric()),
        ("ten-thousand", lambda: InventedDoor(10_000), "light", LARGE, _some(*list(PLACES)[:4])),
        ("ten-thousand", lambda: InventedDoor(10_000), "dark", SMALL, _some("2-quotes", "3-price-explained")),
    ]  # fmt: skip
    marked = partial(_marked_database, work)
    fresh = str(work / "fresh.sqlite")
    for name in ("light", "dark"):
        states.append(
            ("demo", lambda: Door(demo()), name, SMALL, {**PLACES, **_behind(), **_popups(), **SAMPLE_STATES})
        )
        states.append(("fresh", lambda: Door(fresh), name, SMALL, _real_sheets()))
        states.append(("marked", lambda: Door(marked()), name, SMALL, _by_hand(work)))
    states.append(("demo", lambda: Door(demo()), "light", LARGE, {**PLACES, **_behind()}))
    for state, door, look, size, shows in states:
        wanted = {title: show for title, show in shows.items() if only in f"{state}-{title}-{look}-{size[0]}"}
        if wanted:
            yield from _draw(folder, state, theme, look, door(), size, wanted)


def _draw(
    folder: Path, state: str, theme: Theme, look: str, door: Door, size: tuple[int, int], shows: dict[str, Show]
) -> Iterator[Path]:
    theme.choose(look)
    opened = OpenWindow(door, theme, size)
    for title, show in shows.items():
        show(opened.window)
        opened.settle()
        popup = opened.window.property("popup")
        yield opened.grab(folder / f"{state}-{title}-{look}-{size[0]}.png", popup)
        if popup is not None:
            popup.close()
            opened.window.setProperty("popup", None)
    opened.close()


@cache
def _demo_database(work: Path) -> str:
    from tracker.desk.demo import fresh_demo

    return fresh_demo(work)


def _some(*titles: str) -> dict[str, Show]:
    return {title: PLACES[title] for title in titles}


def _metric() -> dict[str, Show]:
    def metric(window: MainWindow) -> None:
        PLACES["3-price-explained"](window)
        window.switches.switch_units()
        window.switches.switch_per()

    return {"3-price-explained": metric}


def _taking_in() -> dict[str, Show]:
    """A sheet just read, with its question, and with one of its lines looked at."""

    def looked_at(window: MainWindow) -> None:
        window.take_in.understood.table.selectRow(6)

    return {"7-taking-in": lambda window: window.take_in_files([Path(FILE)]), "7-taking-in-line": looked_at}


def _behind() -> dict[str, Show]:
    """The vendor's sheet shown again behind an offer."""

    def behind(window: MainWindow) -> None:
        window.go_quotes()
        if window.session.selected < 0:
            window.session.select_offer(0)
        window.show_in_sheet()

    return {"8-behind-a-price": behind}


def _real_sheets() -> dict[str, Show]:
    """Each of the demo's files as it looks before it is taken in."""

    def reading(path: Path) -> Show:
        return lambda window: window.take_in_files([path])

    files = sorted(path for path in sample_quotes().iterdir() if path.is_file())
    return {f"7-{path.stem.split()[0].casefold()}-{number}": reading(path) for number, path in enumerate(files)}


def _by_hand(work: Path) -> dict[str, Show]:
    """A sheet that nothing understands: found so, marked by hand, a line of it looked at; then all files."""

    def nothing(window: MainWindow) -> None:
        window.take_in_files([strange_sheet(work)])

    def marked(window: MainWindow) -> None:
        mark(window)
        window.take_in.understood.vendor.named.emit("Vexholm Papir")

    def looked_at(window: MainWindow) -> None:
        window.take_in.understood.table.selectRow(1)

    return {
        "7-nothing-found": nothing,
        "7-marked": marked,
        "7-marked-line": looked_at,
        "9-sheets": lambda window: window.go_sheets(),
    }


@cache
def _marked_database(work: Path) -> str:
    """The demo with an answer and a layout remembered, and a file withdrawn."""
    from dataclasses import replace
    from datetime import date

    from tracker.desk import files, take_in
    from tracker.desk.opening import open_desk
    from tracker.trade.layout import Layout, MarkedColumn
    from tracker.trade.offer import Answers

    folder = work / "marked"
    folder.mkdir(exist_ok=True)
    from tracker.desk.demo import fresh_demo

    database = fresh_demo(folder)
    desk = open_desk(database)
    columns = tuple(MarkedColumn(place, role, unit) for place, (role, unit) in enumerate(NAMES))
    read = take_in.read(desk, strange_sheet(folder))
    layout = Layout(
        "Sheet",
        read.reading.sha256,
        columns,
        3,
        2,
        5,
        tuple(enumerate(HEADS)),
        "Zzz 5",
        "EUR",
        None,
        date(2026, 11, 24),
    )
    answers = Answers({"vendor": "Ostrel Karton", "ton": "short"}, None, (layout,))
    taken = take_in.read_again(desk, read, answers)
    take_in.store(
        desk, replace(taken), {"ton": "short", "grade:fenlight": "SBS"}, {"ton": "$/ton", "grade:fenlight": "Fenlight"}
    )
    files.withdraw(desk, files.files(desk)[2].id)
    desk.close()
    return database


def _popups() -> dict[str, Show]:
    def do_list(window: MainWindow) -> None:
        from tracker.window.do_list import DoList

        window.go_quotes()
        popup = DoList(window, window.actions_by_key, window.session.theme.palette)
        window.session.theme.dress(popup)
        popup.open_over(window)
        window.setProperty("popup", popup)

    def questions(window: MainWindow) -> None:
        window.go_today()
        tasks = window.today.questions.list.tasks
        if tasks:
            window.today.questions.list.wanted.emit(tasks[-1].target)
            window.setProperty("popup", window.today.findChild(AnswerDialog))

    def message(window: MainWindow) -> None:
        window.go_samples()
        window.message.warn(
            "Sample 11 was asked for on 30 Sep 2026, so nothing can have happened before: check the day."
        )

    def hovered(window: MainWindow) -> None:
        PLACES["3-price-explained"](window)
        plot = window.quotes.picture.plot
        plot._overlay.hover(len(plot.drawing.rows) // 2)

    def currency(window: MainWindow) -> None:
        window.go_quotes()
        menu = window.footing._currency.menu()
        menu.popup(window.footing._currency.mapToGlobal(window.footing._currency.rect().bottomLeft()))
        window.setProperty("popup", menu)

    def order(window: MainWindow) -> None:
        window.go_quotes()
        menu = window.footing._order.menu()
        menu.popup(window.footing._order.mapToGlobal(window.footing._order.rect().bottomLeft()))
        window.setProperty("popup", menu)

    def vendors(window: MainWindow) -> None:
        window.go_quotes()
        window.quotes.filters._open_vendors()
        window.setProperty("popup", window.quotes.filters._popup)

    more = {"9-hovered": hovered, "9-currency": currency, "9-order": order, "9-vendors": vendors}
    return {**more, "9-do": do_list, "9-questions": questions, "9-message": message}
