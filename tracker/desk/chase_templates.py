"""The words of a chase in each language: the user's own file in the data folder before the shipped one."""

from __future__ import annotations

from pathlib import Path

from tracker.desk.trouble import Trouble
from tracker.reports.message import LANGUAGES, ChaseTemplate, chase_template
from tracker.trade.resources import resource


def own_folder() -> Path:
    """Where a user's own templates lie, one file a language, named like the shipped ones."""
    from platformdirs import user_data_path

    return user_data_path("paperboard-tracker", appauthor=False) / "chase"


def template_in(language: str, folder: Path | None = None) -> ChaseTemplate:
    """The template of a language. Trouble, naming the file, where the user's own can't be used."""
    own = (folder or own_folder()) / f"{_known(language)}.toml"
    try:
        return chase_template(language, own if own.is_file() else None)
    except ValueError as problem:
        raise Trouble(f"{problem} Mend or delete {own}.") from problem


def make_own(language: str, folder: Path | None = None) -> Path:
    """Puts a copy of the shipped template where the user can change it; one that is there stays. Gives its path."""
    own = (folder or own_folder()) / f"{_known(language)}.toml"
    try:
        if not own.exists():
            own.parent.mkdir(parents=True, exist_ok=True)
            own.write_text(resource("chase", f"{language}.toml").read_text(encoding="utf-8"), encoding="utf-8")
    except OSError as problem:
        raise Trouble(f"{own} can't be written ({problem.strerror}).") from problem
    return own


def _known(language: str) -> str:
    if language not in LANGUAGES:
        raise Trouble(f"There is no template in “{language}”: the languages are {', '.join(LANGUAGES)}.")
    return language
