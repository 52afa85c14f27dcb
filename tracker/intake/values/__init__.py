"""Small grammars: a text from a vendor's sheet -> every reading it allows, never a guess.

Each module is one grammar. All take the text as written (any case, any kind of space or dash) and know nothing of
grids. A result with more than one reading is ambiguous and stays so until the caller settles it with evidence from
elsewhere in the file. `None` or `()` means: this text is not of that kind.

Every result carries `words`, the piece of the text that it was read from.

numbers      number_readings(text) -> tuple[NumberReading, ...]        all values of a text that is just one number
             number_range(text) -> NumberRange | None                  '12.50-13.75', '1,210 – 1,240'
             percent(text) -> tuple[NumberReading, ...]                '3 %', '2,5%'
             decimal_sign(texts) -> DecimalSign | None                 what a column or a file settles ('.', ',' or None)
             sign_evidence(texts) -> SignEvidence                      (point, comma) counts; conflict when both
             settled(readings, sign) -> tuple[NumberReading, ...]      only the readings that agree with that sign
money        price_text(text) -> PriceText | None                      a cell that holds a price, or says there is none
             price_unit(text) -> PriceUnit | None                      'USD/ST', '¢/LB', '€ per 1000 sheets': no number
             find_price_unit(text) -> PriceUnit | None                 the same inside a header, title or sentence
formats      number_format_currency(code) -> CurrencyReading | None    '[$€-407] #,##0.00', '"USD" 0.00' (first section)
             format_words(code) -> str                                 the format's literal words: 'USD/t', 'pt', 'wks'
currency     currency_text(text) -> CurrencyReading | None             a text that is just a currency
             find_currencies(text) -> tuple[CurrencyReading, ...]      every currency named in a sentence
             countries(text) -> frozenset[str]                         ISO countries that an address names ('Ontario' -> CA)
             dollar_countries(text) -> frozenset[str]                  the dollars of those countries
basis        basis_text(text) -> BasisReading | None                   a text that is just what a price is per ('ST', 'M SHEETS')
             find_basis(text) -> BasisReading | None                   the same inside a header or sentence ('per ton', '/cwt')
             ton_definition(text) -> MassUnit | None                   'ton = 2,000 lb', 'tons are metric' …
masses       mass_text(text, units=())  -> Mass | None                 '5 t', '20,000 lb', bare number with the header's unit
caliper      caliper_text(text, unit=None) -> CaliperText | None       a cell; unit from the header settles a bare number
             find_calipers(text) -> tuple[CaliperReading, ...]         in a description, only with their unit
             bare_caliper(value) -> CaliperReading | None              a unitless number by what board can be
             caliper_unit(text) -> CaliperUnit | None                  'pt', 'µm', '(mm)'
weight       weight_text(text, units=()) -> WeightText | None          a cell; units from the header settle a bare number
             find_weights(text) -> tuple[WeightReading, ...]           in a description, only with their unit
             weight_units(text) -> tuple[WeightUnit, ...]              'lb/MSF' -> one, 'lb' -> two, 'g/m²' -> one
             possible(readings, caliper_um, low, high) -> tuple[WeightReading, ...]   those whose density lies in [low, high] g/cm³
sheetsize    sheet_text(text, unit=None) -> tuple[SheetSize, ...]      a cell
             find_sheet_sizes(text) -> tuple[SheetSize, ...]           in a description
             length_unit(text) -> LengthUnit | None                    'Size (cm)'
lead         lead_text(text, unit=None) -> LeadTime | None             days as (shortest, longest); unit 'day' 'week' 'business day'
             find_lead(text) -> LeadTime | None                        in a sentence that speaks of lead time or dispatch
             lead_unit(text) -> LeadUnit | None                        from a header
dates        date_readings(text) -> tuple[date, ...]                   a text that is just one date, all readings
             find_dates(text) -> tuple[DateReading, ...]               every date in a text, each with its readings
             date_order(texts) -> DateOrder | None                     'dmy' or 'mdy' when some text of the file proves it
             ordered(DateReading, order) -> tuple[date, ...]
validity     validity(text) -> Validity | None                         in a sentence: 'valid until …', '30 days from …'; .last_day(order, list_date)
             validity_text(text) -> Validity | None                    a cell under 'Valid until'
brackets     bracket_text(text, unit=None) -> Bracket | None           one order-size bracket, perhaps not in weight
             joined(brackets) -> tuple[Bracket, ...]                   overlaps and open ends settled by the neighbours
minimum      find_minimum(text) -> Mass | None                         'Minimum order 10,000 lb per item'
charges      charge_header(text) -> ChargeWords | None                 'Freight US$/cwt'
             find_charges(text) -> tuple[ChargeWords, ...]             'plus 3 % energy surcharge'
delivery     find_delivery(text) -> Delivery | None                    Incoterms and words: delivered True or False
grade        find_grade(text) -> GradeReading | None                   candidates and coated sides
             legend(text) -> tuple[LegendEntry, ...]                   'Fenlight White = SBS C1S'
header       header(text) -> Header                                    roles of a header text with units, currency, basis…
             header_roles(text) -> tuple[RoleReading, ...]
company      company_name(text) -> str | None                          'Mirrowgate Board Ltd – tariff' -> 'Mirrowgate Board Ltd'
statements   statements(text) -> tuple[Statement, ...]                 all that a title, note or footnote says
             says(text) -> frozenset[Remark]                           indicative, superseded, total, contact, hidden…
"""
