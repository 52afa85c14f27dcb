"""Tables beside each other in one sheet, and what else stands beside the boards."""
