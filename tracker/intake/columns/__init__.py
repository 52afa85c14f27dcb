"""Tables -> columns: what each column of a table says, from its header, its cells and their formats.

`assign` gives every column its role and its unit; what comes of it is a `column`. Where what it asks stands:

roles    what a column is, by its head, its unit and its cells
priced   which columns hold prices, and which of these are offered
units    units that stand apart from their figures
sizes    order sizes, packs and forms that columns tell apart
groups   columns that belong together: of one vendor, place, board or way of selling
"""
