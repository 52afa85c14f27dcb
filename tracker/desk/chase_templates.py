"""The words of a chase in each language: the user's own file in the data folder before the shipped one."""

from __future__ import annotations

import json
from dataclasses import fields
from datetime import UTC, datetime, timedelta
from pathlib import Path

from tracker.desk.trouble import Trouble
from tracker.reports.message import LANGUAGES, Owed, chase_message, chase_template
from tracker.reports.message import ChaseTemplate as ChaseTemplate
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


def original(language: str) -> ChaseTemplate:
    """The words as they are shipped."""
    return chase_template(_known(language))


def example(template: ChaseTemplate) -> str:
    """What a message in these words would say of two invented samples. Trouble where a word or field is wrong."""
    day = datetime(2026, 11, 2, tzinfo=UTC)
    late, early = day.date() - timedelta(40), day.date() - timedelta(10)
    owed = (
        Owed("S-0012", "SBS 18 pt", late, late + timedelta(14), late + timedelta(20), 26),
        Owed("S-0015", "FBB 16 pt", early, None),
    )
    if "$list" not in template.body:
        raise Trouble("The message must hold $list, where the samples stand.")
    try:
        mail = chase_message(owed, template, buyer="(your name)", contact="(contact)", made=day)
    except ValueError as problem:
        raise Trouble(f"{problem}") from problem
    body = mail.get_body()
    return f"{mail['Subject']}\n\n{body.get_content().strip() if body is not None else ''}"


def keep_own(language: str, template: ChaseTemplate, folder: Path | None = None) -> Path | None:
    """Keeps the user's own words of a language, or none where they are the shipped ones; gives the file.

    The words that were kept before stay beside it as LANGUAGE.before.toml. Trouble, and nothing is changed, for words
    that make no message or a folder that can't be written.
    """
    own = (folder or own_folder()) / f"{_known(language)}.toml"
    example(template)
    try:
        own.parent.mkdir(parents=True, exist_ok=True)
        if own.exists():
            own.replace(own.with_suffix(".before.toml"))
        if template == original(language):
            return None
        own.write_text(_toml(template), encoding="utf-8")
    except OSError as problem:
        raise Trouble(f"{own} can't be written ({problem.strerror}).") from problem
    return own


def _toml(template: ChaseTemplate) -> str:
    """A line each; what JSON writes between quotes is a TOML string too, but for one character."""
    said = {each.name: json.dumps(getattr(template, each.name), ensure_ascii=False) for each in fields(template)}
    return "".join(f"{name} = {text}\n".replace("\x7f", "\\u007f") for name, text in said.items())


def _known(language: str) -> str:
    if language not in LANGUAGES:
        raise Trouble(f"There is no template in “{language}”: the languages are {', '.join(LANGUAGES)}.")
    return language
