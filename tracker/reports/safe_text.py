"""Text from vendors' files, written out so that no spreadsheet runs it."""

# The characters that make a spreadsheet take a cell for a formula (OWASP, "CSV Injection").
_STARTS_A_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")


def spreadsheet_text(text: str) -> str:
    """Text for a CSV field: what could start a formula gets an apostrophe before it. Not for numbers: -5 is one."""
    return f"'{text}" if text.startswith(_STARTS_A_FORMULA) else text
