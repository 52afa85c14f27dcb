"""What a note says, and of which lines."""
