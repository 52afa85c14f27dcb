"""The encoding of delimited text: marks first, then UTF-16 by its zeros, strict UTF-8, and the old one-byte pages."""

from tracker.intake.files.sniff import looks_utf16

_OLD_PAGES = ("cp1252", "mac_roman", "cp850")
_EXPECTED = frozenset("äöüßÄÖÜéèêëàâîïôûùçœñáíóúåøæÉÈÊËÀÂÎÏÔÛÙÇŒÑÁÍÓÚÅØÆ²³µ°€£§±½–’“”„×¢•…¼¾®™«»¿¡ªº\u00a0")
"""What vendors' sheets in western European languages hold beyond ASCII."""
_BETWEEN_WORDS = frozenset("“”„«»…•–")
"""Signs that stand inside no word: 'CART”N' is read under the wrong page."""


def decoded(content: bytes) -> str:
    """Bytes as text. Never fails: an undecodable byte becomes a replacement character, which no number holds."""
    if content.startswith(b"\xef\xbb\xbf"):
        return content.decode("utf-8-sig", "replace")
    if content.startswith((b"\xff\xfe", b"\xfe\xff")):
        return content.decode("utf-16", "replace")
    without_mark = looks_utf16(content[:65536])
    if without_mark is not None:
        return content.decode(without_mark, "replace")
    try:
        return content.decode("utf-8")
    except UnicodeDecodeError:
        return _nearly_utf8(content) or _old_page(content)


def _nearly_utf8(content: bytes) -> str | None:
    """UTF-8 with a few broken bytes: far more whole sequences than broken ones."""
    text = content.decode("utf-8", "replace")
    broken = text.count("�")
    whole = sum(1 for character in text if ord(character) > 127) - broken
    return text if whole >= 5 * broken else None


def _old_page(content: bytes) -> str:
    """The one-byte page under which the most expected letters appear; Windows' own wins a tie."""
    texts = [content.decode(page, "replace") for page in _OLD_PAGES]
    return max(texts, key=_expected_share)


def _expected_share(text: str) -> float:
    beyond = [place for place, character in enumerate(text) if ord(character) > 127]
    return sum(_is_expected(text, place) for place in beyond) / max(1, len(beyond))


def _is_expected(text: str, place: int) -> bool:
    if text[place] in _BETWEEN_WORDS and text[place - 1 : place].isalpha() and text[place + 1 : place + 2].isalpha():
        return False
    return text[place] in _EXPECTED
