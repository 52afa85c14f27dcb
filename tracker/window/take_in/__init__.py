"""Taking in a vendor's sheet: as it was sent, beside what was understood; nothing stored until the user agrees."""
