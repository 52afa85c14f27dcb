"""Tables on their side and forms: labels down a column, boards in the columns beside it."""
