"""Units that stand apart from their figures: in a corner, in a column of their own, over several columns at once."""
