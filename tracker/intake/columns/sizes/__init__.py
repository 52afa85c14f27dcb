"""Order sizes, packs and forms that the columns of a table tell apart."""
