"""Freight, validity, lead time and charges are told in one line before one agrees, and what was not said is too."""

from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from tests.window.conftest import settle
from tracker.trade.basis import Basis
from tracker.trade.offer import OPEN, Charge, Evidence, Line, Note, NoteCode, Offer, Source, State
from tracker.window.main_window import MainWindow
from tracker.window.take_in.terms_told import terms_words

_OFFER = Offer(Source("P", "D5"))
_BARE = "No freight terms read · no last day read · no lead time read · no charges read"


def _line(state: State = State.ACCEPTED, notes=(), evidence=(), **said) -> Line:
    return Line(replace(_OFFER, **said), state, notes, evidence)


def test_what_all_lines_share_is_said_once_with_the_sheets_words() -> None:
    terms = {
        "delivered": False,
        "valid_until": date(2026, 12, 4),
        "lead_days": (28, 28),
        "charges": (Charge("energy surcharge", Decimal("4.0"), None, None),),
    }
    lines = [_line(**terms, evidence=(Evidence("delivered", "A2", "FOB mill"),))] * 3
    assert terms_words(lines) == (
        "Freight not included (“FOB mill”) · valid until 4 Dec 2026 · lead time 4 wk · charge: energy surcharge 4 %"
    )


def test_what_is_not_said_is_told_to_be_missing() -> None:
    assert terms_words([_line(), _line()]) == _BARE
    assert terms_words([]) == terms_words([_line(State.REFUSED)]) == ""
    assert terms_words([_line(), _line(State.REFUSED, delivered=True)]) == _BARE


def test_what_stands_there_unread_is_not_said_to_be_missing() -> None:
    notes = (Note(NoteCode.LEAD_TIME_UNREAD, "A3", "?"), Note(NoteCode.DATE_AMBIGUOUS, "A4", "?"))
    assert terms_words([_line(notes=notes)]) == (
        "No freight terms read · last day not certain · lead time not certain · no charges read"
    )


def test_what_lines_differ_in_is_told_of_how_many() -> None:
    freight = Charge("freight", Decimal("2.1"), "USD", Basis.CWT, freight=True)
    doubtful = Charge("storage", Decimal(0), OPEN, Basis.CWT)
    lines = [
        _line(delivered=True, valid_until=date(2026, 12, 4), lead_days=(14, 21)),
        _line(delivered=True, valid_until=date(2026, 12, 31), lead_days=(28, 28), charges=(freight, doubtful)),
        _line(valid_until=date(2026, 12, 31), charges=(freight,)),
    ]
    assert terms_words(lines) == (
        "Freight included in 2, no freight terms read in 1 · valid until 4 Dec 2026 to 31 Dec 2026 · "
        "lead time 2–4 wk on 2 of 3 lines · charges: freight $2.10 /cwt on 2 lines, "
        "storage (amount not certain) on 1 line"
    )


@pytest.mark.gui
def test_the_terms_stand_under_the_vendor_before_one_agrees(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    path = tmp_path / "ostrel.csv"
    path.write_text(
        "Ostrel Karton Ltd,,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
        'Fenlight 16,SBS,16,300,1216,USD/t\n\n"FOB mill, valid until December 4, 2026, lead time 4 weeks",,,,,\n',
        encoding="utf-8",
    )
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    terms = real_window.take_in.understood.terms
    assert terms.isVisible()
    assert terms.text() == "Freight not included · valid until 4 Dec 2026 · lead time 4 wk · no charges read"
