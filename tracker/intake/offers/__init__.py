"""Columns -> offers: one line for every price cell, with what said each field and what spoke against it.

`workbook` reads the sheets of a file, `lines` the rows of a table, each price into a `draft` that the rest fills:

boards   the board of a row: grade, measures, names explained
prices   the price of a row: amount, currency, unit, and whether it is the one to pay
orders   the order size of a price, and what it decides
charges  what is charged beside a price
terms    lead time, validity, smallest order, delivery and vendor
notes    what stands around a row, and for which rows it holds
rows     which rows offer anything, and what else a row is
"""
