"""What Alembic runs; the connection comes from the server."""

from alembic import context

from server.store.models import Base

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=Base.metadata,
    render_as_batch=True,
)
# The caller's transaction holds the lock, so no other is begun here.
context.run_migrations()
