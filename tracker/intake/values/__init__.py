"""Small grammars: a text from a vendor's sheet -> every reading it allows, never a guess.

Each module is one grammar. All take the text as written (any case, any kind of space or dash) and know nothing of
grids. A result with more than one reading is ambiguous and stays so until the caller settles it with evidence from
elsewhere in the file. `None` or `()` means: this text is not of that kind. Every result carries `words`, the piece of
the text that it was read from. The words themselves live in resources/words/*.toml.

`…_text(text)` reads a cell that holds that kind of value and nothing else; `find_…(text)` looks inside a description,
a header or a sentence.

numbers      number_readings, percent; sign_evidence, decimal_sign, settled: the decimal sign of a column
money        price_text: a price cell; price_unit: 'USD/ST'; find_price_unit: the same in a sentence
formats      number_format_currency, format_words: what a spreadsheet's number format says
currency     currency_text, find_currencies; countries: whose dollar '$' is
basis        basis_text, find_basis; ton_definition: 'ton = 2,000 lb'
masses       mass_text, find_masses, mass_units: order sizes in kg once ton and decimal sign are known
caliper      caliper_text, find_calipers, caliper_unit; bare_caliper: by what board can be
weight       weight_text, find_weights, weight_units; possible: what physics leaves
sheetsize    sheet_text, find_sheet_sizes, length_unit
lead         lead_text, find_lead, lead_unit: calendar days; clauses: the sentences of a note
dates        date_readings, find_dates; date_order, ordered: the order of day and month in a file
validity     validity: in a sentence; validity_text: a cell
brackets     bracket_text, in_kg; joined: a row of brackets without gaps
worded_brackets  bracket_behind_words: "Kleinmenge (< 1 t)"
loads        load_definitions: 'TL: 40,000 lb or more', '1 pallet = 800 kg'
minimum      find_minimum
charges      charge_header, find_charges
delivery     find_delivery, delivery_text
grade        find_grade; legend: 'Fenlight White = SBS C1S'
header       header, header_roles: what a column holds, with its units
company      company_name
statements   statements: all that a title, note or footnote says; says: what kind of text it is
"""
