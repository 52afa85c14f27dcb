"""Data in, a file out: the report as PDF and XLSX, chases as mail drafts, labels, a calendar."""
