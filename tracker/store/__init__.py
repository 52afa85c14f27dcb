"""Tables, migrations, queries and the change log."""
