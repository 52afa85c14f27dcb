"""Tables -> columns: what each column of a table says, from its header, its cells and their formats."""
