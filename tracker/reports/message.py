"""A chase as a draft message: one vendor, all it owes, never a word of another. Written to a file, never sent."""

import re
import tomllib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from email.headerregistry import Address
from email.message import EmailMessage
from email.policy import SMTP
from email.utils import format_datetime, make_msgid
from pathlib import Path
from string import Template

from tracker.trade.resources import resource

LANGUAGES = ("en", "de", "fr", "es")


@dataclass(frozen=True, slots=True)
class Owed:
    """One sample this vendor owes. Dates are None where nothing was promised or needed; late: days overdue, 0 if not.

    What the sample is for stays out: it may name a customer or another vendor.
    """

    number: str
    board: str
    requested: date
    promised: date | None
    needed: date | None = None
    late: int = 0


@dataclass(frozen=True, slots=True)
class ChaseTemplate:
    """Words of a chase with $-fields: subject $count; body $greeting $list $buyer; line $number $board $requested.

    needed, late and sheets are empty in templates that users copied before there were such words. sheets: the word
    for one sheet and for several, 'feuille/feuilles'; empty where it is the English one.
    """

    subject: str
    body: str
    line: str
    promised: str
    greeting: str
    greeting_named: str
    day: str
    needed: str = ""
    late: str = ""
    sheets: str = ""

    def quantity(self, words: str) -> str:
        """'25 sheets 28 x 40 in' with this language's word for sheets."""
        one, _, several = self.sheets.partition("/")
        if not one:
            return words
        return _SHEETS.sub(lambda found: several or one if found[1] else one, words)


_SHEETS = re.compile(r"\bsheet(s)?\b", re.IGNORECASE)


def chase_template(language: str, own: Path | None = None) -> ChaseTemplate:
    """The template of a language, the user's own file before the shipped one. ValueError in a plain sentence."""
    path = own if own is not None else resource("chase", f"{language}.toml")
    try:
        return ChaseTemplate(**tomllib.loads(path.read_text(encoding="utf-8")))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError, TypeError) as error:
        raise ValueError(f"The chase template {path.name} can't be used: {error}.") from None


def chase_message(
    owed: Sequence[Owed],
    template: ChaseTemplate,
    *,
    buyer: str,
    contact: str = "",
    to: str = "",
    made: datetime,
) -> EmailMessage:
    """The draft. `to` may be empty: the user's mail program asks. ValueError for a wrong field or address."""
    message = EmailMessage(policy=SMTP)
    message["Subject"] = _filled(template.subject, count=len(owed))
    if to:
        message["To"] = _address(to, contact)
    message["Date"] = format_datetime(made)
    message["Message-ID"] = make_msgid(domain="draft.invalid")
    message["X-Unsent"] = "1"  # mail programs open the file as a draft
    greeting = _filled(template.greeting_named, contact=contact) if contact else template.greeting
    body = _filled(template.body, greeting=greeting, list=_list(owed, template), buyer=buyer)
    message.set_content(body)
    return message


def _list(owed: Sequence[Owed], template: ChaseTemplate) -> str:
    return "\n".join(_line(sample, template) for sample in owed)


def _line(sample: Owed, template: ChaseTemplate) -> str:
    line = _filled(
        template.line, number=sample.number, board=sample.board, requested=sample.requested.strftime(template.day)
    )
    if sample.promised is not None:
        line += _filled(template.promised, promised=sample.promised.strftime(template.day))
    if sample.needed is not None:
        line += _filled(template.needed, needed=sample.needed.strftime(template.day))
    return line + (_filled(template.late, days=sample.late) if sample.late > 0 else "")


def _filled(text: str, **fields: object) -> str:
    try:
        return Template(text).substitute(fields)
    except (KeyError, ValueError) as error:
        raise ValueError(f"The chase template has a field that is not known: {error}.") from None


def _address(to: str, contact: str) -> Address:
    try:
        return Address(display_name=contact, addr_spec=to)
    except Exception:
        # The parser raises several kinds, some of them its own defects.
        raise ValueError(f"'{to}' is not a mail address; write it like name@vendor.example.") from None
