"""Small grammars: a text from a vendor's sheet -> every reading it allows, never a guess.

Each module is one grammar. All take the text as written (any case, any kind of space or dash) and know nothing of
grids. A result with more than one reading is ambiguous and stays so until the caller settles it with evidence from
elsewhere in the file. `None` or `()` means: this text is not of that kind. Every result carries `words`, the piece of
the text that it was read from. The words themselves live in resources/words/*.toml.

`…_text(text)` reads a cell that holds that kind of value and nothing else; `find_…(text)` looks inside a description,
a header or a sentence.

Where a grammar stands, by what it reads:

figures  numbers, lengths and rates as they are written
prices   prices, their currency and what they are per
boards   grade, coating and measures of board, and of which boards a text speaks
orders   order sizes, loads and smallest orders
times    dates, validity and lead times
freight  delivery, and what is charged beside a price
heads    what the head of a column names
firms    who quotes, by name and address
changes  what changes a price, and which list is in force
notes    what a note says, and of which lines
"""
