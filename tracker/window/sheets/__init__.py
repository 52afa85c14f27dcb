"""Price sheets that were taken in, and what is remembered of their vendors."""
