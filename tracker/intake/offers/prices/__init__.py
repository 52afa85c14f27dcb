"""The price of a row: amount, currency, unit, and whether it is the one to pay."""
