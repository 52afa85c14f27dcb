"""What changes a price, and which list is in force."""
