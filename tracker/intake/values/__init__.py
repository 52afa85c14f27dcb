"""Small grammars: a text from a vendor's sheet -> every reading it allows, never a guess.

Each module is one grammar. All take the text as written (any case, any kind of space or dash) and know nothing of
grids. A result with more than one reading is ambiguous and stays so until the caller settles it with evidence from
elsewhere in the file. `None` or `()` means: this text is not of that kind. Every result carries `words`, the piece of
the text that it was read from. The words themselves live in resources/words/*.toml.

`…_text(text)` reads a cell that holds that kind of value and nothing else; `find_…(text)` looks inside a description,
a header or a sentence.

What each reads its own first line says:

figures      numbers, numbers_in_words, lengths, spans, halves, rates, formats, sheetsize
prices       money, pricewalk, currency, basis, counted_units, ton_kinds, reams, multiples, tax, payment_terms, was_now,
             indicative, price_kinds, exchange
board        grade, open_grades, caliper, weight
orders       masses, ordinals, brackets, bracket_pieces, brackets_in_kg, worded_brackets, counted_orders, loads,
             loads_charged, loads_priced, orders_priced, small_orders, terms_by_size, minimum, usual_orders,
             weights_in_words
time         dates, validity, validity_cell, open_validity, held_apart, lead, lead_sentences, lead_by_itself,
             lead_remarked, lead_unread, lead_units
freight      delivery, place_behind, freight_of_prices, charges, charge_names, charge_parts, charges_apart,
             told_with_price, relieved_charges, costs_told, added_on_top, freight_lanes
heads        header, role_words, roles, shares, column_legend, columns_meant
whose        company, titled_firms, firm_papers, bidders, firm_goods, legal_forms, form_fields, addresses
notes        statements, note_signs, clauses, denials, unless, legends, board_words, board_ahead, boards_meant,
             boards_excepted, boards_behind, boards_named, marks_apart, lines_meant, held_for_all, lettered_lines,
             lines_apart, of_all_and_some, board_behind, ways, list_boards, totals, topics, line_defaults,
             open_headings, list_age, old_prices, no_offers, list_numbers, others_prices, change_logs, withdrawn,
             offered_instead, price_sentences, clauses_of_others, units_of_parts, price_changes, price_rises,
             rises_shown, units_denied, reductions, discounts, corrections
prose        price_within, priced_prose, amounts_named
"""
