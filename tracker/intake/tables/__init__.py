"""Grid -> tables: where on a sheet offers stand, what heads their columns and what stands around them.

`find` takes a `view` of a sheet and finds its `table`s and the `words` around them; `marked` finds those that a person
marked. Where what they ask stands:

headers     what heads a table: words, values and units over its columns, and keys that explain them
rows        what stands below a header: boards, sub-headings, notes, boards of several lines
lying       tables on their side, and forms
parts       tables and rates beside each other in one sheet
headerless  offers that no header leads to: letters, mail, rows that say all
"""
