"""What stands below a header: boards, sub-headings, notes, and boards that take several lines."""
