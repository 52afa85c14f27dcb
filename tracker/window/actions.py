"""What can be done, as data: id, words, keys. The window makes its QActions and the list of all commands from here."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget


@dataclass(frozen=True, slots=True)
class Action:
    """One thing a user can do. `does` names a method of the window or of one that it has for a task; `keys` may be
    empty."""

    key: str
    title: str
    keys: str
    does: str
    about: str = ""


ACTIONS: tuple[Action, ...] = (
    Action("today", "Go to Today", "Ctrl+1", "go_today", "what needs you"),
    Action("quotes", "Go to Quotes", "Ctrl+2", "go_quotes", "every offer on one footing"),
    Action("samples", "Go to Samples", "Ctrl+3", "go_samples", "who owes what"),
    Action("reference", "Go to Reference", "Ctrl+4", "go_reference", "the grades and where the facts come from"),
    Action("sheets", "Go to Sheets", "Ctrl+5", "go_sheets", "files taken in, and what you answered about them"),
    Action("yardsticks", "See bands, verdicts and rates", "Ctrl+B", "go_yardsticks", "what prices are held against"),
    Action("take-in", "Take in a price sheet…", "Ctrl+O", "choose_sheets", "or drop files on the window"),
    Action("back-to-sheet", "Go back to the sheet being taken in", "Ctrl+6", "back_to_sheet", "with all its answers"),
    Action("mark", "Mark the sheet's table by hand", "Ctrl+Shift+M", "mark_by_hand", "while taking it in"),
    Action("log-sample", "Log a sample request", "Ctrl+N", "log_sample"),
    Action("template", "Log a request from a template", "Ctrl+Shift+N", "log_from_template"),
    Action("number", "Open a sample by its number", "Ctrl+G", "find_sample", "typed, or scanned from its label"),
    Action("find", "Find a vendor or board", "Ctrl+F", "find_offer"),
    Action("show-sheet", "Show the selected price in its sheet", "Ctrl+E", "show_in_sheet"),
    Action("per", "Switch between per MSF and per tonne", "Ctrl+M", "switch_per"),
    Action("units", "Switch between US and metric units", "Ctrl+U", "switch_units"),
    Action("delivered", "Switch between delivered and as quoted", "Ctrl+D", "switch_delivered"),
    Action("weight", "Switch between claimed and measured weight", "Ctrl+W", "switch_weight"),
    Action("current", "Switch between current offers and all", "Ctrl+L", "switch_current"),
    Action("theme", "Switch between light and dark", "Ctrl+Shift+L", "switch_theme"),
    Action("look", "Look for what others changed", "F5", "look_for_changes", "done by itself when you come back"),
    Action("undo", "Undo", "Ctrl+Z", "undo"),
    Action("redo", "Do again", "Ctrl+Shift+Z", "redo"),
    Action("do", "All commands…", "Ctrl+K", "open_do", "find any of these by its words"),
    Action("keys", "Show the keys", "F1", "show_keys", "of the window and of each place"),
    Action("demo", "Open the demo", "", "open_demo", "invented vendors, nothing of yours is touched"),
    Action("chases", "Draft chases for overdue samples…", "Ctrl+Shift+C", "draft_chases", "nothing is sent"),
    Action("labels", "Print labels for samples…", "Ctrl+Shift+P", "print_labels", "number as text and as a code"),
    Action("calendar", "Write what is owed as a calendar file…", "", "write_calendar", "for your own calendar"),
    Action("offers", "Save the offers shown…", "Ctrl+S", "save_offers", "as a spreadsheet or CSV"),
    Action("picture", "Save the picture…", "Ctrl+Shift+S", "save_picture", "as PNG, SVG or the data behind it"),
    Action("report", "Write the buyer's report…", "Ctrl+P", "write_report", "as PDF or spreadsheet"),
    Action("back-up", "Back up everything…", "", "back_up", "a consistent copy, also while in use"),
    Action("restore", "Restore a backup…", "", "restore", "a copy of what is here is kept"),
    Action("log", "Show where the log is", "", "show_log"),
    Action("close", "Close the window", "Ctrl+Q", "close"),
)


def actions_of(window: QWidget, doers: Sequence[QObject]) -> dict[str, QAction]:
    """The window's QActions by key; each is done by the first of `doers` that has the method it names."""
    made = {}
    for action in ACTIONS:
        item = QAction(action.title, window)
        if action.keys:
            item.setShortcut(QKeySequence(action.keys))
        item.setToolTip(action.about)
        item.triggered.connect(next(getattr(doer, action.does) for doer in doers if hasattr(doer, action.does)))
        window.addAction(item)
        made[action.key] = item
    return made
