"""Data in, a file out: PDF and XLSX."""
