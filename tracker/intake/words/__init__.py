"""The trade's words in five languages, read from resources/words/*.toml, and how they are found in a text."""
