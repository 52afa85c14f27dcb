"""The board of a row: grade, measures, names explained."""
