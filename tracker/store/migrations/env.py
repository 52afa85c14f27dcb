"""Where Alembic enters: on the connection that store/schema.py hands over, inside its transaction."""

from alembic import context

from tracker.store.tables import metadata


def run() -> None:
    """Configures Alembic for the open connection and runs what it was asked for."""
    context.configure(
        connection=context.config.attributes["connection"],
        target_metadata=metadata,
        # SQLite can't alter most things in place; batch mode copies the table instead.
        render_as_batch=True,
        transaction_per_migration=False,
    )
    context.run_migrations()


run()
