"""Tables over columns in memory: columns as objects, one model with its own row order, one quiet way to draw rows."""
