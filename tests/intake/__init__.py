"""Tests of the reader of vendors' sheets. Where a behaviour is tested:

The steps of `tracker/intake/`, each by itself, in folders of the same names:
files tables columns values offers

Its modules that stand beside these steps (children, content, questions, answers, marked layouts …): the files here.

Whole sheets, rows in and offers out (`sheets.py` and `readings.py` read them), by what the sheet speaks of:
boards       names of grades and boards, their coating, headings over them and lines that describe them
measures     calipers, basis weights, reams, sizes of sheets
prices       which figure is the price: changed, multiplied, discounted, missing, of several times or kinds
units        what a price is per, and in which money
order_sizes  order sizes across, down and in words; loads, pallets and sheets; smallest orders
charges      freight, surcharges and tax: on top, in the price, of some prices, not certain
delivery     terms of delivery; prices by place and zone
lead_times   words for them, stock, times of some boards or columns
validity     last days, superseded lists
vendors      who quotes; firms' names; comparisons, bids and inquiries
notes        notes, marks, remarks and exceptions: which lines, columns or boards they hold for
heads        words that head a column, and what looks like a head
layouts      forms, letters, cross-tabs, tables beside, below and across each other
no_offers    figures that look like prices and are nobody's offer
"""
