"""XML read as a stream, with what a hostile file could abuse switched off.

expat itself never fetches anything; declaring an entity (the billion-laughs bomb, and every file inclusion) is refused
here, as defusedxml does.
"""

from collections.abc import Callable, Iterable
from typing import NoReturn
from xml.parsers import expat

Attributes = dict[str, str]


class Forbidden(Exception):
    """The markup declares entities, which no spreadsheet needs."""


def parse(
    chunks: Iterable[bytes],
    start: Callable[[str, Attributes], None],
    end: Callable[[str], None] | None = None,
    characters: Callable[[str], None] | None = None,
) -> None:
    """Walk the elements of a document by their local names; attributes keep only their local names too.

    Raises expat.ExpatError for what is not XML and Forbidden for entity declarations.
    """
    parser = expat.ParserCreate()
    parser.buffer_text = True
    parser.buffer_size = 1 << 16
    parser.EntityDeclHandler = _refuse
    parser.UnparsedEntityDeclHandler = _refuse
    local: dict[str, str] = {}

    def on_start(name: str, attributes: Attributes) -> None:
        known = local.get(name)
        if known is None:
            known = local[name] = name.rpartition(":")[2]
        start(known, attributes)

    parser.StartElementHandler = on_start
    if end is not None:
        on_end = end
        parser.EndElementHandler = lambda name: on_end(local[name])
    if characters is not None:
        parser.CharacterDataHandler = characters
    for chunk in chunks:
        parser.Parse(chunk, False)
    parser.Parse(b"", True)


def _refuse(*_: object) -> NoReturn:
    raise Forbidden("entity declaration")


def truth(text: str | None, default: bool = False) -> bool:
    """An XML boolean: '1', 'true' and 'on' are true, nothing is the default."""
    return default if text is None else text.lower() in ("1", "true", "on")


def local_attribute(attributes: Attributes, name: str) -> str | None:
    """An attribute by its local name, whatever prefix the file gave its namespace."""
    for key, value in attributes.items():
        if key.rpartition(":")[2] == name:
            return value
    return None
