"""The number that a firm is taxed under, beside a word for it that is a term of delivery as well."""

import re

_NUMBER = re.compile(
    r"(?:\s*/\s*[A-Z]{2,4})?[\s.:]*(?:n\s?[.ºo°]{1,2}\s*)?(?:[A-Z]{2}[\s-]?)?[A-Z]?[\s.-]{0,2}"
    r"(?:\d{7,8}|\d{1,2}(?:\.\d{3}){2})(?:-?[A-Z])?(?![\d.,]*\d|\w)"
)


def is_before_a_tax_number(text: str, end: int) -> bool:
    """The CIF of 'CIF B-00000000', 'C.I.F.: A12345678' and 'CIF/NIF: 12345678-Z'; 'CIF Bilbao' is a term."""
    return _NUMBER.match(text, end) is not None
